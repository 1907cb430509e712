package evenwater.chemistry.validation;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * A figure as its source prints it, with the interval around it that the same source leaves open: as a rule half a unit of the last
 * printed digit.
 *
 * <p>All in decimal arithmetic, so that a page made from it is the same on every machine. Immutable.
 */
final class Figure {

    /** A double holds 15 decimal digits; what lies beyond is rounding of the arithmetic. */
    private static final MathContext DOUBLE_DIGITS = new MathContext(15, RoundingMode.HALF_EVEN);

    private static final MathContext DEVIATION_DIGITS = new MathContext(2, RoundingMode.HALF_EVEN);
    private static final BigDecimal ROUNDING_OF_DOUBLES = new BigDecimal("1e-12");

    private final String text;
    private final String allowed;
    private final BigDecimal value;
    private final BigDecimal low;
    private final BigDecimal high;
    private final boolean isRange;

    private Figure(String text, String allowed, BigDecimal value, BigDecimal low, BigDecimal high, boolean isRange) {
        this.text = text;
        this.allowed = allowed;
        this.value = value;
        this.low = low;
        this.high = high;
        this.isRange = isRange;
    }

    /** Returns a rounded figure: open by half a unit of its last digit. */
    static Figure printed(String digits) {
        BigDecimal value = new BigDecimal(digits);
        return around(value, value.ulp().divide(BigDecimal.valueOf(2)));
    }

    /** Returns a figure that is open by an absolute amount, because its source rounds more than the last digit tells. */
    static Figure within(String digits, String absolute) {
        return around(new BigDecimal(digits), new BigDecimal(absolute));
    }

    private static Figure around(BigDecimal value, BigDecimal half) {
        return new Figure(value.toPlainString(), "± " + half, value, value.subtract(half), value.add(half), false);
    }

    /** Returns a figure that is exact by definition: open by 1e-12 of itself, the rounding of doubles. */
    static Figure exact(String digits) {
        BigDecimal value = new BigDecimal(digits);
        BigDecimal half = value.abs().multiply(ROUNDING_OF_DOUBLES);
        return new Figure(value.toPlainString(), "exact", value, value.subtract(half), value.add(half), false);
    }

    /** Returns a range that the source states, ends included. */
    static Figure range(String low, String high) {
        BigDecimal from = new BigDecimal(low);
        BigDecimal to = new BigDecimal(high);
        BigDecimal middle = from.add(to).divide(BigDecimal.valueOf(2));
        return new Figure(low + " to " + high, "the range", middle, from, to, true);
    }

    /** Tells whether a result lies in the interval, ends included. */
    boolean accepts(double result) {
        return accepts(decimal(result));
    }

    /** Tells whether a number lies in the interval, ends included. */
    boolean accepts(BigDecimal number) {
        return number.compareTo(low) >= 0 && number.compareTo(high) <= 0;
    }

    /** Returns the figure as printed. */
    String text() {
        return text;
    }

    /** Returns how far a result may be off, in words. */
    String allowed() {
        return allowed;
    }

    /** Returns a result with six digits, or as many as the figure has. */
    String rounded(double result) {
        BigDecimal exact = decimal(result);
        if (exact.abs().compareTo(ROUNDING_OF_DOUBLES) < 0) {
            return "0";
        }
        int digits = Math.max(6, isRange ? 0 : value.precision());
        BigDecimal rounded = stripped(exact.round(new MathContext(digits, RoundingMode.HALF_EVEN)));
        int places = isRange ? 0 : Math.max(0, value.scale());
        return (rounded.scale() < places ? rounded.setScale(places) : rounded).toPlainString();
    }

    /** Returns result minus figure with two digits and its sign, or on which side of a range the result is. */
    String deviation(double result) {
        if (isRange) {
            return accepts(result) ? "inside" : decimal(result).compareTo(low) < 0 ? "below" : "above";
        }
        BigDecimal difference = decimal(result).subtract(value);
        BigDecimal noise = ROUNDING_OF_DOUBLES.multiply(value.abs().max(BigDecimal.ONE));
        if (difference.abs().compareTo(noise) <= 0) {
            return "0";
        }
        String digits = stripped(difference.abs().round(DEVIATION_DIGITS)).toString();
        return (difference.signum() < 0 ? "−" : "+") + digits;
    }

    private static BigDecimal stripped(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    private static BigDecimal decimal(double result) {
        return new BigDecimal(result, DOUBLE_DIGITS);
    }

    @Override
    public String toString() {
        return text + " (" + allowed + ")";
    }
}
