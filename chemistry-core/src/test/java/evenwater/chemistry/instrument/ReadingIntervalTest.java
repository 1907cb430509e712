package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.testing.Refused;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class ReadingIntervalTest {

    private static Hardness degrees(double value) {
        return Hardness.of(value, GERMAN_DEGREE);
    }

    @Test
    void anExcludedEndDoesNotBelongToIt() {
        ReadingInterval<Hardness> interval = new ReadingInterval<>(degrees(4), degrees(5), true);
        assertFalse(interval.contains(degrees(4)));
        assertTrue(interval.contains(degrees(4.001)));
        assertTrue(interval.contains(degrees(5)));
        assertFalse(interval.contains(degrees(5.001)));
    }

    @Test
    void anIncludedEndBelongsToIt() {
        ReadingInterval<Hardness> interval = new ReadingInterval<>(degrees(4.5), degrees(5.5), false);
        assertTrue(interval.contains(degrees(4.5)));
        assertTrue(interval.contains(degrees(5.5)));
        assertFalse(interval.contains(degrees(4.499)));
        assertTrue(new ReadingInterval<>(degrees(0), degrees(1), false).contains(degrees(0)));
        assertFalse(new ReadingInterval<>(degrees(0), degrees(1), true).contains(degrees(0)));
        assertTrue(new ReadingInterval<>(degrees(2), degrees(2), false).contains(degrees(2)));
    }

    @Test
    void theUnitOfTheTruthDoesNotMatterOnAnEnd() {
        ReadingInterval<Hardness> below = new ReadingInterval<>(degrees(4), degrees(5), true);
        ReadingInterval<Hardness> above = new ReadingInterval<>(degrees(5), degrees(6), true);
        for (var unit : Hardness.units()) {
            assertTrue(below.contains(degrees(5).to(unit)), unit::toString);
            assertFalse(above.contains(degrees(5).to(unit)), unit::toString);
        }
    }

    @Test
    void textSaysWhichEndsBelongToIt() {
        assertEquals("more than 4 and at most 5 °dH", new ReadingInterval<>(degrees(4), degrees(5), true).toString());
        assertEquals("from 4.5 to 5.5 °dH", new ReadingInterval<>(degrees(4.5), degrees(5.5), false).toString());
        assertEquals(
                "more than 4,33 and at most 5 °dH",
                new ReadingInterval<>(degrees(4.3333), degrees(5), true).toText(Locale.GERMANY, 3));
        assertEquals(
                "from 1 mmol/L to 10 °dH",
                new ReadingInterval<>(Hardness.of(1, MILLIMOLE_PER_LITRE), degrees(10), false).toString());
    }

    @Test
    void endsAreInOrderAndNotNegative() {
        Refused.argument(
                "ends of a reading must be in order, but were 5 °dH and 4 °dH",
                () -> new ReadingInterval<>(degrees(5), degrees(4), false));
        Refused.argument(
                "ends of a reading must be in order, but were more than 5 °dH and 5 °dH",
                () -> new ReadingInterval<>(degrees(5), degrees(5), true));
        Refused.argument(
                "least must not be negative, but was -1 °dH",
                () -> new ReadingInterval<>(degrees(-1), degrees(5), true));
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("least", () -> new ReadingInterval<>(null, degrees(5), true));
        Refused.asNull("most", () -> new ReadingInterval<>(degrees(5), null, true));
        Refused.asNull("value", () -> new ReadingInterval<>(degrees(4), degrees(5), true).contains(null));
    }

    @Test
    void aRoundedNumberIsHalfAStepToEitherSide() {
        assertEquals(
                new ReadingInterval<>(degrees(4.75), degrees(5.25), false),
                ReadingInterval.ofRounded(degrees(5), degrees(0.5)));
        assertEquals(
                new ReadingInterval<>(degrees(0), degrees(0.25), false),
                ReadingInterval.ofRounded(degrees(0), degrees(0.5)));
        Refused.argument(
                "a rounded reading and its step must not be negative, but were 5 °dH and -1 °dH",
                () -> ReadingInterval.ofRounded(degrees(5), degrees(-1)));
        Refused.asNull("shown", () -> ReadingInterval.ofRounded(null, degrees(1)));
    }
}
