package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.chargesIn;
import static evenwater.chemistry.testing.Amounts.elementsOf;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.testing.Waters;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of blending, diluting and concentrating. */
class MixingPropertiesTest {

    /** Relative rounding of a few operations. */
    private static final double ROUNDING = 1e-14;

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    /** Both hold the same in every field, within rounding of what their parts hold. */
    private static void assertAlike(Water expected, Water actual, double size) {
        Set<Ion> ions = new TreeSet<>(expected.ions());
        ions.addAll(actual.ions());
        for (Ion ion : ions) {
            assertEquals(of(ion, expected), of(ion, actual), ROUNDING * size, ion::symbol);
        }
        assertEquals(alkalinityOf(expected), alkalinityOf(actual), ROUNDING * size);
        assertEquals(unmeasuredOf(expected), unmeasuredOf(actual), ROUNDING * size);
        assertEquals(carbonOf(expected), carbonOf(actual), ROUNDING * size);
        assertEquals(kelvin(expected), kelvin(actual), ROUNDING * 400);
    }

    private static double kelvin(Water water) {
        return water.temperature().in(WaterUnits.KELVIN);
    }

    /** mmol/L and meq/L of all there is. */
    private static double size(Water... waters) {
        double size = 0;
        for (Water water : waters) {
            size += chargesIn(water) + of(Ion.SILICA, water) + of(Waters.UREA, water) + 15; // carbon up to 15 mmol/L
        }
        return size;
    }

    @Property
    void mixingCommutes(@ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        assertAlike(a.mixedWith(b, share), b.mixedWith(a, 1 - share), size(a, b));
    }

    @Property
    void mixingIsAssociative(
            @ForAll("waters") Water a,
            @ForAll("waters") Water b,
            @ForAll("waters") Water c,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(3) double volumeA,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(3) double volumeB,
            @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(3) double volumeC) {
        double all = volumeA + volumeB + volumeC;
        Water left = a.mixedWith(b, volumeB / (volumeA + volumeB)).mixedWith(c, volumeC / all);
        Water right = a.mixedWith(b.mixedWith(c, volumeC / (volumeB + volumeC)), (volumeB + volumeC) / all);
        assertAlike(left, right, size(a, b, c));
    }

    @Property
    void aBlendWithItselfIsTheSameWaterBitForBit(@ForAll("waters") Water a, @ForAll("shares") double share) {
        Water unread = a.plus(Change.of(Map.of())); // without the reading of pH
        assertEquals(unread, unread.mixedWith(unread, share));
    }

    @Property
    void aBlendStaysBetweenItsParts(
            @ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        Water blend = a.mixedWith(b, share);
        Set<Ion> ions = new TreeSet<>(a.ions());
        ions.addAll(b.ions());
        ions.forEach(ion -> assertBetween(a, b, blend, water -> of(ion, water)));
        assertBetween(a, b, blend, Amounts::alkalinityOf);
        assertBetween(a, b, blend, Amounts::unmeasuredOf);
        assertBetween(a, b, blend, Amounts::hardnessOf);
        assertBetween(a, b, blend, MixingPropertiesTest::kelvin);
        assertTrue(ions.containsAll(blend.ions()));
    }

    private static void assertBetween(Water a, Water b, Water blend, ToDoubleFunction<Water> view) {
        double low = Math.min(view.applyAsDouble(a), view.applyAsDouble(b));
        double high = Math.max(view.applyAsDouble(a), view.applyAsDouble(b));
        double slack = 4 * 0x1p-52 * Math.max(Math.abs(low), Math.abs(high)); // of one product and two sums
        double mixed = view.applyAsDouble(blend);
        assertTrue(mixed >= low - slack && mixed <= high + slack, () -> mixed + " of " + low + " and " + high);
    }

    @Property
    void amountsOfABlendAreNeverNegative(
            @ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        Water blend = a.mixedWith(b, share);
        for (Ion ion : blend.balance().ions()) {
            assertTrue(blend.balance().total(ion) >= 0, ion::symbol);
        }
        assertTrue(blend.carbon().isEmpty() || carbonOf(blend) >= 0);
    }

    @Property
    void mixingConservesElementsAndCharge(
            @ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        Water blend = a.mixedWith(b, share);
        if (share > 0 && share < 1 && a.carbon().isEmpty() != b.carbon().isEmpty()) {
            assertTrue(blend.carbon().isEmpty());
            return; // carbon of one part is not known, so the element carbon cannot be followed
        }
        Set<Element> elements = EnumSet.noneOf(Element.class);
        elements.addAll(elementsOf(a).keySet());
        elements.addAll(elementsOf(b).keySet());
        for (Element element : elements) {
            double expected = (1 - share) * elementsOf(a).getOrDefault(element, 0.0)
                    + share * elementsOf(b).getOrDefault(element, 0.0);
            assertEquals(
                    expected, elementsOf(blend).getOrDefault(element, 0.0), ROUNDING * size(a, b), element::symbol);
        }
        assertEquals(
                0,
                blend.netCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE),
                ROUNDING * chargesIn(blend) + 0x1p-50 * size(a, b));
    }

    @Property
    void carbonOfABlendIsKnownIfThatOfBothPartsIs(
            @ForAll("waters") Water a,
            @ForAll("waters") Water b,
            @ForAll @DoubleRange(min = 0.001, max = 0.999) @Scale(3) double share) {
        assertEquals(
                a.carbon().isPresent() && b.carbon().isPresent(),
                a.mixedWith(b, share).carbon().isPresent());
    }

    @Property
    void dilutionIsABlendWithPureWaterOfTheSameTemperature(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 1, max = 100) @Scale(3) double factor) {
        Water pure = Water.pure().with(water.temperature());
        assertAlike(water.mixedWith(pure, 1 - 1 / factor), water.dilutedBy(factor), size(water));
    }

    @Property
    void dilutionUndoesConcentration(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 1, max = 1e6) @Scale(3) double factor) {
        assertAlike(water, water.concentratedBy(factor).dilutedBy(factor), size(water));
        assertAlike(water, water.dilutedBy(factor).concentratedBy(factor), size(water));
    }

    @Property
    void dilutionsMultiply(
            @ForAll("waters") Water water,
            @ForAll @DoubleRange(min = 1, max = 100) @Scale(3) double first,
            @ForAll @DoubleRange(min = 1, max = 100) @Scale(3) double second) {
        assertAlike(water.dilutedBy(first * second), water.dilutedBy(first).dilutedBy(second), size(water));
    }

    @Property
    void dilutionScalesEveryView(
            @ForAll("waters") Water water, @ForAll @DoubleRange(min = 1, max = 100) @Scale(3) double factor) {
        Water diluted = water.dilutedBy(factor);
        assertEquals(
                water.ionicStrength().getValue() / factor,
                diluted.ionicStrength().getValue(),
                ROUNDING * size(water));
        assertEquals(
                water.dissolvedSolids().getValue() / factor,
                diluted.dissolvedSolids().getValue(),
                ROUNDING * water.dissolvedSolids().getValue());
        assertEquals(
                water.ionBalance().percentDifference(),
                diluted.ionBalance().percentDifference(),
                1e-9); // percent of sums that may be small
        assertEquals(
                water.hardnessForms(HardnessCount.EDTA_TITRATION).carbonate().getValue() / factor,
                diluted.hardnessForms(HardnessCount.EDTA_TITRATION).carbonate().getValue(),
                ROUNDING * size(water));
    }
}
