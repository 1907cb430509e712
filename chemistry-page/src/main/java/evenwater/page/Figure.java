package evenwater.page;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A number of an answer.
 *
 * @param name within the answer; the same whatever was entered
 * @param label what it is, for people
 * @param value all digits, in {@code unit}; finite
 * @param text the value rounded, for people, without its unit
 * @param unit symbol of the unit; empty for a pH
 */
public record Figure(String name, String label, double value, String text, String unit) {

    /** Digits that people see; more than a kit or a report knows. */
    private static final int SHOWN_DIGITS = 4;

    /**
     * Checks that the value is a number.
     *
     * @param name see the record
     * @param label see the record
     * @param value see the record
     * @param text see the record
     * @param unit see the record
     */
    public Figure {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(unit, "unit");
        if (!Double.isFinite(value)) {
            throw new ArithmeticException(label + " must be a finite number, but was " + value + " " + unit);
        }
    }

    static <Q extends Quantity<Q>> Figure of(String name, String label, WaterQuantity<Q> quantity, Unit<Q> unit) {
        return of(name, label, quantity, unit, SHOWN_DIGITS);
    }

    static <Q extends Quantity<Q>> Figure of(
            String name, String label, WaterQuantity<Q> quantity, Unit<Q> unit, int digits) {
        double value = quantity.in(unit);
        return new Figure(name, label, value, PlainNumber.rounded(value, digits), unit.getSymbol());
    }

    static Figure ofPH(String name, String label, double pH) {
        return new Figure(name, label, pH, PlainNumber.withDecimals(pH, 2), "");
    }

    /** The rounded value with its unit, as in a sentence. */
    String inWords() {
        return unit.isEmpty() ? text : text + " " + unit;
    }
}
