package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class BoundsTest {

    private static Hardness degrees(double value) {
        return Hardness.of(value, Hardness.GERMAN_DEGREE);
    }

    private static Hardness millimoles(double value) {
        return Hardness.of(value, Hardness.MILLIMOLE_PER_LITRE);
    }

    @Test
    void textIsForPeople() {
        Bounds<Hardness> open = new Bounds<>(degrees(1.2345), degrees(2), degrees(3.5));
        assertEquals("2 °dH (1.23 to 3.5 °dH)", open.toText(Locale.ROOT, 3));
        assertEquals("2 °dH (1,2 to 3,5 °dH)", open.toText(Locale.GERMANY, 2));
        assertEquals("2 °dH", new Bounds<>(degrees(2), degrees(2), degrees(2)).toText(Locale.ROOT, 3));
    }

    @Test
    void anOpenEndIsSaid() {
        Bounds<Hardness> least = new Bounds<>(degrees(1), degrees(2), degrees(3), false, true);
        assertEquals("2 °dH (1 to 3 °dH or more)", least.toText(Locale.ROOT, 3));
        Bounds<Hardness> most = new Bounds<>(degrees(1), degrees(2), degrees(3.5), true, false);
        assertEquals("2 °dH (1 to 3,5 °dH or less)", most.toText(Locale.GERMANY, 3));
        Bounds<Hardness> neither = new Bounds<>(degrees(2), degrees(2), degrees(2), true, true);
        assertEquals("2 °dH (or more, or less)", neither.toText(Locale.ROOT, 3));
        assertFalse(new Bounds<>(degrees(2), degrees(2), degrees(2), false, true).isExact());
        assertFalse(new Bounds<>(degrees(2), degrees(2), degrees(2), true, false).isExact());
    }

    @Test
    void exactMeansTheSameAmountAtBothEnds() {
        assertTrue(new Bounds<>(degrees(2), degrees(2), degrees(2)).isExact());
        assertTrue(new Bounds<>(millimoles(1), millimoles(1), Hardness.of(2, Hardness.MILLIEQUIVALENT_PER_LITRE))
                .isExact());
        assertFalse(new Bounds<>(degrees(2), degrees(2), degrees(2.1)).isExact());
        assertFalse(new Bounds<>(degrees(1.9), degrees(2), degrees(2)).isExact());
    }

    @Test
    void boundsAreInOrder() {
        assertEquals(degrees(10), new Bounds<>(degrees(0), degrees(10), millimoles(2)).value());
        assertIllegal(
                "bounds must be in order, but were 3 °dH, 2 °dH, 4 °dH",
                () -> new Bounds<>(degrees(3), degrees(2), degrees(4)));
        assertIllegal(
                "bounds must be in order, but were 1 °dH, 10 °dH, 1 mmol/L",
                () -> new Bounds<>(degrees(1), degrees(10), millimoles(1)));
    }

    @Test
    void nullIsRefusedByName() {
        assertNullRefused("low", () -> new Bounds<>(null, degrees(2), degrees(4)));
        assertNullRefused("value", () -> new Bounds<>(degrees(2), null, degrees(4)));
        assertNullRefused("high", () -> new Bounds<>(degrees(2), degrees(2), null));
    }
}
