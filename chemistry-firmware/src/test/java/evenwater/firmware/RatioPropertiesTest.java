package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Laws of fractions and of the nearest small one. */
class RatioPropertiesTest {

    private static final BigInteger MOST = BigInteger.valueOf(Integer.MAX_VALUE);

    /** A convergent p/q is nearer to its number than 1/q² (Lagrange). */
    @Property
    void theNearestFractionIsNearerThanItsDenominatorSquared(
            @ForAll @LongRange(min = 1) long num, @ForAll @LongRange(min = 1) long den) {
        Ratio exact = Ratio.of(num, den);
        if (exact.compareTo(new Ratio(MOST, BigInteger.ONE)) > 0) {
            assertThrows(IllegalArgumentException.class, () -> exact.nearest(MOST));
            return;
        }
        Ratio nearest = exact.nearest(MOST);
        if (nearest.num().signum() > 0) { // not where the number itself is too small for such fractions
            Ratio limit = new Ratio(BigInteger.ONE, nearest.den().pow(2));
            assertTrue(nearest.minus(exact).abs().compareTo(limit) <= 0);
            assertTrue(nearest.num().compareTo(MOST) <= 0 && nearest.den().compareTo(MOST) <= 0);
        }
    }

    @Property
    void aFractionOfSmallNumbersIsItsOwnNearest(
            @ForAll @LongRange(min = 1, max = Integer.MAX_VALUE) long num,
            @ForAll @LongRange(min = 1, max = Integer.MAX_VALUE) long den) {
        assertEquals(Ratio.of(num, den), Ratio.of(num, den).nearest(MOST));
    }

    @Property
    void whatIsPrintedAsABoundIsNeverBelowIt(
            @ForAll @LongRange(min = 0, max = 1_000_000) long num, @ForAll @LongRange(min = 1) long den) {
        Ratio bound = Ratio.of(num, den);
        BigDecimal printed = new BigDecimal(bound.roundedUp(12));
        assertTrue(new Ratio(printed.movePointRight(12).toBigIntegerExact(), BigInteger.TEN.pow(12)).compareTo(bound)
                >= 0);
    }
}
