package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Locale;
import java.util.Objects;

/**
 * A result and the range in which it may lie, given what the report leaves open.
 *
 * @param <Q> type of the result, such as {@code Hardness} or {@code WaterQuantity<Mass>}
 * @param low the least it may be
 * @param value the best guess: the middle of every interval and the assumptions as stated
 * @param high the most it may be
 * @param openBelow true if it may also be less than {@code low}, since something that was not measured lowers it
 * @param openAbove true if it may also be more than {@code high}, since something that was not measured raises it
 */
public record Bounds<Q extends WaterQuantity<?>>(Q low, Q value, Q high, boolean openBelow, boolean openAbove) {

    /**
     * Checks the order.
     *
     * @param low see the record
     * @param value see the record
     * @param high see the record
     * @param openBelow see the record
     * @param openAbove see the record
     */
    public Bounds {
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(high, "high");
        if (compare(low, value) > 0 || compare(value, high) > 0) {
            throw new IllegalArgumentException("bounds must be in order, but were " + low + ", " + value + ", " + high);
        }
    }

    /** Compares two of one kind; another kind is refused by name. */
    @SuppressWarnings({"unchecked", "rawtypes"}) // all three are a Q, which is of one kind
    private static int compare(WaterQuantity<?> a, WaterQuantity<?> b) {
        return ((WaterQuantity) a).compareTo(b);
    }

    /**
     * Creates a range with two ends.
     *
     * @param low see the record
     * @param value see the record
     * @param high see the record
     */
    public Bounds(Q low, Q value, Q high) {
        this(low, value, high, false, false);
    }

    /**
     * Tells whether the report leaves nothing open for this result.
     *
     * @return true if low and high are the same amount, and neither end is open
     */
    public boolean isExact() {
        return compare(low, high) == 0 && !openBelow && !openAbove;
    }

    /**
     * Returns the result for people, such as {@code 174 mg/L Na⁺ (173 to 175 mg/L Na⁺)}, or {@code 174 mg/L Na⁺ (173 mg/L Na⁺ or more)}
     * where it is open.
     *
     * @param locale whose decimal sign to use
     * @param significantDigits digits to keep; 1 to 17
     * @return rounded text; the value alone if it is exact
     */
    public String toText(Locale locale, int significantDigits) {
        String text = value.toText(locale, significantDigits);
        if (isExact()) {
            return text;
        }
        if (openBelow && openAbove) {
            return text + " (or more, or less)";
        }
        String from = low.toText(locale, significantDigits);
        String to = high.toText(locale, significantDigits);
        String range = from.equals(to) ? from : ends(from, to);
        return text + " (" + range + (openAbove ? " or more" : openBelow ? " or less" : "") + ")";
    }

    /** The unit is said once if both have the same. */
    private String ends(String from, String to) {
        String unit = " " + high.getUnit().getSymbol();
        boolean oneUnit = low.getUnit().equals(high.getUnit()) && from.endsWith(unit);
        return (oneUnit ? from.substring(0, from.length() - unit.length()) : from) + " to " + to;
    }
}
