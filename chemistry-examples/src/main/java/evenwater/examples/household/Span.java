package evenwater.examples.household;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * What a result may be, in one unit.
 *
 * @param low the least; minus infinity where nobody can say
 * @param value the best guess
 * @param high the most; infinity where nobody can say
 */
record Span(double low, double value, double high) {

    static <K extends Quantity<K>> Span of(Bounds<? extends WaterQuantity<K>> bounds, Unit<K> unit) {
        return new Span(
                bounds.openBelow() ? Double.NEGATIVE_INFINITY : bounds.low().in(unit),
                bounds.value().in(unit),
                bounds.openAbove() ? Double.POSITIVE_INFINITY : bounds.high().in(unit));
    }

    boolean isBelow(double limit) {
        return high < limit;
    }

    boolean isAbove(double limit) {
        return low > limit;
    }

    boolean isWithin(double from, double to) {
        return low >= from && high <= to;
    }

    /** True if the best guess is only the least that it can be. */
    boolean isLeast() {
        return Double.isInfinite(high) && low == value;
    }

    /** Whether all of it is there, or none, is for nobody to say: nothing was measured that would tell. */
    boolean isUnknown() {
        return Double.isInfinite(high) && low <= 0;
    }

    /** Whether it may be less or more by what nobody measured, as what a neutralizer dissolves: the best guess is all there is. */
    boolean isGuess() {
        return Double.isInfinite(low) && Double.isInfinite(high);
    }

    /** The value, with a sign where it is only the least. */
    String valueText() {
        return least() + Page.number(value);
    }

    String least() {
        return isLeast() ? "≥ " : "";
    }

    /** From where to where; empty if that is nothing but the value. */
    String rangeText() {
        return rangeText("");
    }

    /** The same with a unit. */
    String rangeText(String unit) {
        String from = Page.number(low);
        String to = (Page.number(high) + " " + unit).strip();
        if (Double.isInfinite(low)) {
            return Double.isInfinite(high) ? "cannot be told" : to + " or less";
        }
        if (Double.isInfinite(high)) {
            return (from + " " + unit).strip() + " or more";
        }
        return from.equals(Page.number(high)) ? "" : from + " to " + to;
    }
}
