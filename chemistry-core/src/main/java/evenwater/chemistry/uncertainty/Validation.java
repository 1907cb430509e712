package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/**
 * Whether the law of propagation is good enough for a computation: its interval beside that of Monte Carlo.
 *
 * <p>The law's interval is {@code y ± k u} with the k that a normal distribution has for the coverage probability of the run, 1.96 for
 * 95 % and not 2; Monte Carlo's is the probabilistically symmetric one. Both ends have to agree within a numerical tolerance
 * {@code δ = ½ · 10^l}, where {@code u = c · 10^l} with a whole number c of as many digits as matter (JCGM 101:2008 7.9.2 and 8.1).
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> type of the result
 */
public final class Validation<Q extends WaterQuantity<?>> {

    private final Stated<Q> unit;
    private final double low;
    private final double high;
    private final double tolerance;
    private final double standardError;

    Validation(Stated<Q> unit, double value, double uncertainty, UncertainResult<Q> monteCarlo, int significantDigits) {
        CoverageInterval<Q> interval = monteCarlo.symmetricInterval();
        double half = StandardNormal.coverageFactor(interval.probability()) * uncertainty;
        this.unit = unit;
        this.low = Math.abs(value - half - unit.read(interval.low()));
        this.high = Math.abs(value + half - unit.read(interval.high()));
        this.tolerance = uncertainty == 0 ? 0 : tolerance(uncertainty, significantDigits);
        this.standardError = unit.readDifference(monteCarlo.standardErrorOfEnds());
    }

    private static double tolerance(double uncertainty, int digits) {
        BigDecimal rounded = new BigDecimal(uncertainty).round(new MathContext(digits));
        int l = rounded.precision() - rounded.scale() - digits;
        return new BigDecimal("0.5").scaleByPowerOfTen(l).doubleValue();
    }

    /**
     * Returns how far the lower ends are apart, d_low.
     *
     * @return a difference; 0 or more
     */
    public Q lowDifference() {
        return unit.difference(low);
    }

    /**
     * Returns how far the upper ends are apart, d_high.
     *
     * @return a difference; 0 or more
     */
    public Q highDifference() {
        return unit.difference(high);
    }

    /**
     * Returns the numerical tolerance δ.
     *
     * @return a difference; 0 if the law finds no uncertainty
     */
    public Q tolerance() {
        return unit.difference(tolerance);
    }

    /**
     * Tells whether both ends agree within the tolerance.
     *
     * @return true if the law of propagation serves as well as Monte Carlo
     */
    public boolean isValidated() {
        return low <= tolerance && high <= tolerance;
    }

    /**
     * Tells whether there were draws enough for the answer: the standard error of the ends is at most a fifth of the tolerance (own rule;
     * JCGM 101:2008 8.2 asks for a fifth of δ as tolerance of the Monte Carlo run). With 10 000 draws that is so for one digit of an u that
     * begins with 1 to 3, seldom else.
     *
     * @return false if more draws may change the answer
     */
    public boolean isConclusive() {
        return standardError <= tolerance / 5;
    }

    /** Returns both differences and the tolerance, for logs. */
    @Override
    public String toString() {
        return (isValidated() ? "validated" : "not validated")
                + (isConclusive() ? "" : ", as far as so few draws tell")
                + ": ends differ by "
                + lowDifference().toText(Locale.ROOT, 2) + " and "
                + highDifference().toText(Locale.ROOT, 2) + ", tolerance "
                + tolerance().toText(Locale.ROOT, 1);
    }
}
