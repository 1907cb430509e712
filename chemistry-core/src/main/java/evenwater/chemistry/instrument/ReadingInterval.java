package evenwater.chemistry.instrument;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;

/**
 * The range in which the truth lies, given what a test kit shows; the upper end belongs to it.
 *
 * <p>Ends that agree to 1e-12 of themselves are the same, so that the unit of a truth does not decide whether it is on an end.
 *
 * @param <Q> the kind, such as {@code Hardness}
 * @param least the lower end; 0 or more
 * @param most the upper end; not below {@code least}
 * @param isLeastExcluded whether the truth is more than {@code least}, and not {@code least} itself
 */
public record ReadingInterval<Q extends WaterQuantity<Q>>(Q least, Q most, boolean isLeastExcluded) {

    private static final double ROUNDING = 1e-12;

    /**
     * Checks the order.
     *
     * @param least see the record
     * @param most see the record
     * @param isLeastExcluded see the record
     */
    public ReadingInterval {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(most, "most");
        if (least.getValue() < 0) {
            throw new IllegalArgumentException("least must not be negative, but was " + least);
        }
        int order = least.compareTo(most);
        if (order > 0 || (order == 0 && isLeastExcluded)) {
            throw new IllegalArgumentException("ends of a reading must be in order, but were "
                    + (isLeastExcluded ? "more than " : "") + least + " and " + most);
        }
    }

    /**
     * Returns what a number means that was rounded to a step: half a step to either side, at least 0, both ends included.
     *
     * @param shown the rounded number; 0 or more
     * @param step what it is rounded to; 0 or more
     * @param <Q> the kind
     * @return the range of the truth
     * @throws IllegalArgumentException if an argument is negative
     */
    public static <Q extends WaterQuantity<Q>> ReadingInterval<Q> ofRounded(Q shown, Q step) {
        Objects.requireNonNull(shown, "shown");
        Objects.requireNonNull(step, "step");
        if (shown.getValue() < 0 || step.getValue() < 0) {
            throw new IllegalArgumentException(
                    "a rounded reading and its step must not be negative, but were " + shown + " and " + step);
        }
        Q half = step.divide(2.0);
        Q least = shown.compareTo(half) <= 0 ? shown.multiply(0.0) : shown.subtract(half);
        return new ReadingInterval<>(least, shown.add(half), false);
    }

    /**
     * Tells whether a value may be the truth.
     *
     * @param value any value of the kind
     * @return true if it lies in this range
     */
    public boolean contains(Quantity<Q> value) {
        Objects.requireNonNull(value, "value");
        return !isBelow(value) && !isAbove(value);
    }

    boolean isBelow(Quantity<Q> value) {
        return isLeastExcluded
                ? least.multiply(1 + ROUNDING).compareTo(value) >= 0
                : least.multiply(1 - ROUNDING).compareTo(value) > 0;
    }

    boolean isAbove(Quantity<Q> value) {
        return most.multiply(1 + ROUNDING).compareTo(value) < 0;
    }

    /**
     * Returns the range for people, such as {@code more than 4 and at most 5 °dH} or {@code from 4.5 to 5.5 °dH}.
     *
     * @param locale whose decimal sign to use
     * @param significantDigits digits to keep; 1 to 17
     * @return rounded text; not meant to be read back
     */
    public String toText(Locale locale, int significantDigits) {
        return text(least.toText(locale, significantDigits), most.toText(locale, significantDigits));
    }

    /** The unit is said once if both have the same. */
    private String text(String from, String to) {
        String unit = " " + most.getUnit().getSymbol();
        boolean oneUnit = least.getUnit().equals(most.getUnit()) && from.endsWith(unit);
        String start = oneUnit ? from.substring(0, from.length() - unit.length()) : from;
        return isLeastExcluded ? "more than " + start + " and at most " + to : "from " + start + " to " + to;
    }

    /** Returns the range with all digits, such as {@code more than 4 and at most 5 °dH}. */
    @Override
    public String toString() {
        return text(least.toString(), most.toString());
    }
}
