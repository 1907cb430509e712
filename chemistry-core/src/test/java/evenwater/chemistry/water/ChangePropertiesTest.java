package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.addElements;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of changes among themselves. */
class ChangePropertiesTest {

    /** Relative rounding of a few operations. */
    private static final double ROUNDING = 1e-14;

    @Provide
    Arbitrary<Map<Ion, AmountConcentration>> neutral() {
        return Waters.neutralAmounts(-5, 5);
    }

    @Provide
    Arbitrary<Change> changes() {
        return Waters.changes();
    }

    @Provide
    Arbitrary<Compound> compounds() {
        return Arbitraries.of(Compound.all());
    }

    @Provide
    Arbitrary<Ion> charged() {
        return Arbitraries.of(Ion.all()).filter(ion -> ion.chargeNumber() != 0);
    }

    private static double size(Change... changes) {
        double size = 0;
        for (Change change : changes) {
            size += chargesIn(change) + 50; // neutral solutes and carbon, up to eight of 5 mmol/L
        }
        return size;
    }

    private static void assertAlike(Change expected, Change actual, double size) {
        Set<Ion> ions = new TreeSet<>(expected.ions());
        ions.addAll(actual.ions());
        for (Ion ion : ions) {
            assertEquals(of(ion, expected), of(ion, actual), ROUNDING * size, ion::symbol);
        }
        assertEquals(expected.alkalinity().getValue(), actual.alkalinity().getValue(), ROUNDING * size);
        assertEquals(
                expected.unmeasuredCharge().getValue(),
                actual.unmeasuredCharge().getValue(),
                ROUNDING * size);
        assertEquals(
                expected.carbon().orElseThrow().getValue(),
                actual.carbon().orElseThrow().getValue(),
                ROUNDING * size);
    }

    @Property
    void elementsOfTheIonsAreElementsOfTheChange(@ForAll("neutral") Map<Ion, AmountConcentration> amounts) {
        Map<Element, Double> stated = new EnumMap<>(Element.class);
        amounts.forEach((ion, n) -> addElements(stated, ion, n.in(MILLIMOLE_PER_LITRE)));
        Change change = Change.of(amounts);
        Set<Element> elements = EnumSet.copyOf(stated.keySet());
        elements.addAll(elementsOf(change).keySet());
        for (Element element : elements) {
            assertEquals(
                    stated.getOrDefault(element, 0.0),
                    elementsOf(change).getOrDefault(element, 0.0),
                    ROUNDING * size(change),
                    element::symbol);
        }
    }

    @Property
    void aChemicalChangeBalancesWithoutUnmeasuredCharge(@ForAll("neutral") Map<Ion, AmountConcentration> amounts) {
        Change change = Change.of(amounts);
        double moved = amounts.entrySet().stream()
                .mapToDouble(
                        e -> Math.abs(e.getKey().chargeNumber() * e.getValue().getValue()))
                .sum();
        assertEquals(0, change.unmeasuredCharge().getValue());
        assertEquals(0, change.netCharge().getValue(), 1e-12 * moved); // as promised
    }

    @Property
    void anyRestOfChargeIsRefused(
            @ForAll("neutral") Map<Ion, AmountConcentration> amounts,
            @ForAll("charged") Ion ion,
            @ForAll @DoubleRange(min = 1e-9, max = 5) @Scale(12) double tooMuch) {
        Map<Ion, AmountConcentration> wrong = new HashMap<>(amounts);
        double before = wrong.getOrDefault(ion, mmol(0)).getValue();
        wrong.put(ion, mmol(before + tooMuch));
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> Change.of(wrong));
        assertTrue(refusal.getMessage().startsWith("charges of a change must cancel, but {"));
        assertTrue(refusal.getMessage().contains(ion + "="));
    }

    @Property
    void theUnitOfAnAmountDoesNotMatter(@ForAll("neutral") Map<Ion, AmountConcentration> amounts) {
        Map<Ion, AmountConcentration> restated = new HashMap<>();
        amounts.forEach((ion, n) -> restated.put(ion, n.to(ion.milligramPerLitre())));
        Change change = Change.of(amounts);
        assertAlike(change, Change.of(restated), size(change));
    }

    @Property
    void changesAddUpInAnyOrder(@ForAll("changes") Change a, @ForAll("changes") Change b, @ForAll("changes") Change c) {
        assertEquals(a.plus(b), b.plus(a));
        assertAlike(a.plus(b).plus(c), a.plus(b.plus(c)), size(a, b, c));
    }

    @Property
    void noChangeChangesNothing(@ForAll("changes") Change a) {
        Change nothing = Change.of(Map.of());
        assertEquals(a, a.plus(nothing));
        assertEquals(a, nothing.plus(a));
        assertEquals(nothing, a.times(0));
        assertEquals(a, a.times(1));
        assertEquals(nothing, a.plus(a.times(-1)));
    }

    @Property
    void partsOfAChangeAddUp(
            @ForAll("changes") Change a,
            @ForAll("changes") Change b,
            @ForAll @DoubleRange(min = -10, max = 10) @Scale(4) double p,
            @ForAll @DoubleRange(min = -10, max = 10) @Scale(4) double q) {
        double size = size(a, b) * (1 + Math.abs(p)) * (1 + Math.abs(q));
        assertAlike(a.times(p + q), a.times(p).plus(a.times(q)), size);
        assertAlike(a.plus(b).times(p), a.times(p).plus(b.times(p)), size);
        assertAlike(a.times(p * q), a.times(p).times(q), size);
    }

    @Property
    void powersOfTwoScaleExactly(@ForAll("changes") Change a) {
        assertEquals(a.plus(a), a.times(2));
        assertEquals(a, a.times(0.25).times(4));
        assertEquals(a, a.times(-1).times(-1));
    }

    @Property
    void equalityHashAndTextAgree(@ForAll("neutral") Map<Ion, AmountConcentration> a, @ForAll("changes") Change b) {
        Change one = Change.of(a);
        Change same = Change.of(new HashMap<>(a));
        assertEquals(one, same);
        assertEquals(one.hashCode(), same.hashCode());
        assertEquals(one.toString(), same.toString());
        assertEquals(one.equals(b), one.toString().equals(b.toString()));
        assertEquals(one.equals(b), b.equals(one));
        assertTrue(!one.equals(b) || one.hashCode() == b.hashCode());
    }

    @Property
    void anExchangeTakesAsMuchChargeAsItGives(
            @ForAll("charged") Ion out,
            @ForAll("charged") Ion in,
            @ForAll @DoubleRange(min = 0, max = 10) @Scale(6) double amount) {
        Assume.that(out.chargeNumber() * in.chargeNumber() > 0 && !out.equals(in));
        Change exchange = Change.exchanging(out, in, mmol(amount));
        double entering = amount * out.chargeNumber() / in.chargeNumber();
        Change expected = Change.of(Map.of(out, mmol(-amount), in, mmol(entering)));
        assertEquals(expected, exchange);
        assertEquals(0, exchange.netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE), 1e-14 * amount);
    }

    @Property
    void dissolvingBringsTheElementsOfTheFormula(
            @ForAll("compounds") Compound compound, @ForAll @DoubleRange(min = 0, max = 1000) @Scale(3) double dose) {
        Change change = Change.dissolving(compound, MassConcentration.of(dose, MassConcentration.MILLIGRAM_PER_LITRE));
        double moles = dose / compound.molarMass().in(MolarMass.GRAM_PER_MOLE);
        for (Element element : compound.formula().elements()) {
            if (element != Element.HYDROGEN && element != Element.OXYGEN) {
                double expected = moles * compound.formula().count(element);
                assertEquals(
                        expected, elementsOf(change).getOrDefault(element, 0.0), ROUNDING * expected, element::symbol);
            }
        }
        assertEquals(0, change.unmeasuredCharge().getValue());
    }
}
