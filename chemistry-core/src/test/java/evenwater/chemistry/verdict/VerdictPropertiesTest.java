package evenwater.chemistry.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.Hardness;
import java.util.List;
import java.util.Optional;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class VerdictPropertiesTest {

    private static final Requirement<Hardness> RANGE =
            Requirement.between(Parameter.GENERAL_HARDNESS, degrees(5), degrees(15));

    private static Hardness degrees(double value) {
        return Hardness.of(value, Hardness.GERMAN_DEGREE);
    }

    @Provide
    static Arbitrary<Double> hardness() {
        return Arbitraries.doubles().between(0, 30).ofScale(6);
    }

    @Provide
    static Arbitrary<Unit<Hardness>> units() {
        return Arbitraries.of(List.of(
                Hardness.GERMAN_DEGREE,
                Hardness.FRENCH_DEGREE,
                Hardness.GRAIN_PER_US_GALLON,
                Hardness.MILLIMOLE_PER_LITRE));
    }

    private static Bounds<Hardness> range(double a, double b) {
        return new Bounds<>(degrees(Math.min(a, b)), degrees((a + b) / 2), degrees(Math.max(a, b)));
    }

    /** An interval is inside only if every value of it is, and outside only if none is. */
    @Property
    void anIntervalIsDecidedOnlyWhereEveryValueOfItAgrees(
            @ForAll("hardness") double a, @ForAll("hardness") double b, @ForAll("hardness") double share) {
        Standing whole = RANGE.standing(range(a, b));
        double value = Math.min(a, b) + Math.abs(a - b) * share / 30;
        Standing one = RANGE.standing(range(value, value));
        assertNotEquals(Standing.UNDECIDED, one);
        if (whole != Standing.UNDECIDED) {
            assertEquals(whole, one);
        }
    }

    @Property
    void knowingLessNeverDecidesMore(
            @ForAll("hardness") double a, @ForAll("hardness") double b, @ForAll("hardness") double wider) {
        Standing narrow = RANGE.standing(range(a, b));
        Standing wide = RANGE.standing(range(Math.max(0, Math.min(a, b) - wider), Math.max(a, b) + wider));
        assertTrue(wide == narrow || wide == Standing.UNDECIDED);
        Bounds<Hardness> open = new Bounds<>(degrees(a), degrees(a), degrees(a), false, true);
        Standing opened = RANGE.standing(open);
        assertTrue(opened == Standing.UNDECIDED || opened == Standing.ABOVE);
    }

    @Property
    void theUnitOfAReadingDoesNotMatter(@ForAll("hardness") double value, @ForAll("units") Unit<Hardness> unit) {
        Hardness stated = degrees(value).to(unit);
        Bounds<Hardness> may = new Bounds<>(stated, stated, stated);
        Finding<Hardness> finding = Finding.of(RANGE, Optional.of(may));
        assertEquals(RANGE.standing(range(value, value)), finding.standing());
        double outside = Math.max(Math.max(5 - value, value - 15), 0);
        assertEquals(
                outside,
                finding.outsideBy().map(Parameter.GENERAL_HARDNESS::number).orElse(0.0),
                1e-9);
    }
}
