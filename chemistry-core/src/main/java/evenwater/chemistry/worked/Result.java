package evenwater.chemistry.worked;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A number that was asked for.
 *
 * @param name what it is; empty where the question says it
 * @param value the number
 * @param unit its unit; empty for a plain number
 */
public record Result(String name, double value, String unit) {

    /**
     * Checks that everything is there.
     *
     * @param name see the record
     * @param value see the record
     * @param unit see the record
     */
    public Result {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(unit, "unit");
    }

    static <Q extends Quantity<Q>> Result of(String name, WaterQuantity<Q> quantity, Unit<Q> unit) {
        return new Result(name, quantity.in(unit), unit.toString());
    }

    /**
     * Returns name, number and unit as text.
     *
     * @param significantDigits 1 to 17
     * @return such as {@code sodium 168.4 mg/L Na⁺}
     * @throws IllegalArgumentException if the digits are out of range
     */
    public String toText(int significantDigits) {
        WorkedText.checkDigits(significantDigits);
        String number = Term.rounded(value, unit).text(significantDigits);
        return name.isEmpty() ? number : name + " " + number;
    }
}
