package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Waters;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of waters and the changes that they undergo. */
class ChangedWaterPropertiesTest {

    /** Relative rounding of a few operations. */
    private static final double ROUNDING = 1e-14;

    private static final List<Ion> CATIONS =
            List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.POTASSIUM, Ion.AMMONIUM, Ion.STRONTIUM, Ion.ALUMINIUM, Waters.LEAD);

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Change> additions() {
        return Waters.additions();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    private static double size(Water water) {
        return chargesIn(water) + of(Ion.SILICA, water) + of(Waters.UREA, water) + 50; // and carbon
    }

    private static void assertAlike(Water expected, Water actual, double size) {
        Set<Ion> ions = new TreeSet<>(expected.ions());
        ions.addAll(actual.ions());
        for (Ion ion : ions) {
            assertEquals(of(ion, expected), of(ion, actual), ROUNDING * size, ion::symbol);
        }
        assertEquals(alkalinityOf(expected), alkalinityOf(actual), ROUNDING * size);
        assertEquals(unmeasuredOf(expected), unmeasuredOf(actual), ROUNDING * size);
        assertEquals(carbonOf(expected), carbonOf(actual), ROUNDING * size);
    }

    @Property
    void aChangeAddsEveryElementAndTheCharge(@ForAll("waters") Water water, @ForAll("additions") Change change) {
        Water after = water.plus(change);
        Set<Element> elements = EnumSet.noneOf(Element.class);
        elements.addAll(elementsOf(water).keySet());
        elements.addAll(elementsOf(change).keySet());
        if (water.carbon().isEmpty()) {
            elements.remove(Element.CARBON);
        }
        for (Element element : elements) {
            assertEquals(
                    elementsOf(water).getOrDefault(element, 0.0)
                            + elementsOf(change).getOrDefault(element, 0.0),
                    elementsOf(after).getOrDefault(element, 0.0),
                    ROUNDING * size(after),
                    element::symbol);
        }
        assertEquals(alkalinityOf(water) + change.alkalinity().getValue(), alkalinityOf(after));
        assertEquals(
                0,
                after.netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE),
                1e-12 * (chargesIn(water) + chargesIn(change)));
    }

    @Property
    void aChemicalChangeLeavesUnmeasuredChargeBitForBit(
            @ForAll("waters") Water water, @ForAll("additions") Change change) {
        Water after = water.plus(change).plus(change.times(-0.5)).plus(change.times(0.1));
        assertEquals(water.unmeasuredCharge(), after.unmeasuredCharge());
        assertEquals(water.temperature(), after.temperature());
    }

    @Property
    void changesOneAfterTheOtherAreTheirSum(
            @ForAll("waters") Water water, @ForAll("additions") Change a, @ForAll("additions") Change b) {
        Water after = water.plus(a).plus(b);
        assertAlike(after, water.plus(a.plus(b)), size(after));
        assertAlike(after, water.plus(b).plus(a), size(after));
    }

    @Property
    void aChangeCanBeUndone(@ForAll("waters") Water water, @ForAll("additions") Change change) {
        assertAlike(water, water.plus(change).plus(change.times(-1)), size(water) + chargesIn(change));
    }

    @Property
    void theDifferenceAddedToTheStartIsTheEnd(@ForAll("waters") Water before, @ForAll("waters") Water after) {
        Change change = Change.between(before, after);
        Water known = before.carbon().isPresent() || after.carbon().isEmpty() ? after : withoutCarbon(after);
        assertAlike(known, before.plus(change), size(before) + size(after));
        assertEquals(
                before.carbon().isPresent() && after.carbon().isPresent(),
                change.carbon().isPresent());
        assertEquals(0, change.netCharge().getValue(), 1e-12 * (chargesIn(before) + chargesIn(after)));
    }

    private static Water withoutCarbon(Water water) {
        WaterBuilder builder = Water.builder().temperature(water.temperature()).alkalinity(water.alkalinity());
        water.ions().forEach(ion -> builder.total(ion, water.total(ion)));
        return builder.build();
    }

    @Property
    void theDifferenceToItselfIsNoChange(@ForAll("waters") Water water) {
        Change none = Change.between(water, water);
        assertEquals(List.of(), none.ions());
        assertEquals(0, none.alkalinity().getValue());
        assertEquals(0, none.unmeasuredCharge().getValue());
        assertEquals(0, none.carbon().map(c -> c.getValue()).orElse(0.0));
    }

    @Property
    void allOfAnIonLeavesExactlyZeroAndMoreIsRefused(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 1e-9, max = 10) @Scale(12) double more) {
        for (Ion ion : water.ions()) {
            if (ion.chargeNumber() > 0 && !ion.equals(Ion.SODIUM)) {
                Water without = water.plus(Change.exchanging(ion, Ion.SODIUM, water.total(ion)));
                assertEquals(mmol(0), without.total(ion));
                double tooMuch = of(ion, water) * (1 + more);
                IllegalArgumentException refusal = assertThrows(
                        IllegalArgumentException.class,
                        () -> water.plus(Change.exchanging(ion, Ion.SODIUM, mmol(tooMuch))));
                assertEquals(
                        "cannot take " + tooMuch + " mmol/L of " + ion + " out of a water that holds " + of(ion, water)
                                + " mmol/L",
                        refusal.getMessage());
            }
        }
    }

    @Property
    void exchangingAShareLeavesTheOtherShare(@ForAll("waters") Water water, @ForAll("shares") double share) {
        Change exchange = Change.exchanging(water, CATIONS, Ion.SODIUM, share);
        Water after = water.plus(exchange);
        double equivalents = 0;
        for (Ion ion : CATIONS) {
            assertEquals((1 - share) * of(ion, water), of(ion, after), ROUNDING * of(ion, water), ion::symbol);
            equivalents += ion.chargeNumber() * (of(ion, water) - of(ion, after));
        }
        assertEquals(equivalents, of(Ion.SODIUM, exchange), ROUNDING * chargesIn(water));
        assertEquals(water.alkalinity(), after.alkalinity());
        assertEquals(water.unmeasuredCharge(), after.unmeasuredCharge());
        assertEquals(carbonOf(water), carbonOf(after));
    }

    @Property
    void aWaterIsNeverShortOfWhatItHolds(@ForAll("waters") Water water, @ForAll("additions") Change change) {
        Water after = water.plus(change);
        assertTrue(after.ions().containsAll(water.ions()));
        water.ions().forEach(ion -> assertTrue(of(ion, after) >= of(ion, water)));
    }

    @Property
    void mixingAndChangingCommute(
            @ForAll("waters") Water a,
            @ForAll("waters") Water b,
            @ForAll("additions") Change change,
            @ForAll("shares") double share) {
        Assume.that(share > 0 && share < 1);
        Water changedFirst = a.plus(change).mixedWith(b.plus(change), share);
        Water mixedFirst = a.mixedWith(b, share).plus(change);
        assertAlike(changedFirst, mixedFirst, size(a) + size(b) + chargesIn(change));
    }

    @Property
    void amountsThatCancelInAMapChangeNothing(@ForAll("waters") Water water) {
        assertEquals(
                water.plus(Change.of(Map.of())),
                water.plus(Change.of(Map.of(Ion.HYDROGEN, mmol(3), Ion.HYDROXIDE, mmol(3), Ion.WATER, mmol(-2)))));
    }
}
