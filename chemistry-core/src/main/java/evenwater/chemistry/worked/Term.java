package evenwater.chemistry.worked;

import evenwater.chemistry.quantity.ConversionFactor;
import evenwater.chemistry.quantity.WaterQuantity;
import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A number with its unit.
 *
 * @param value the number
 * @param exact all its digits, or empty if it is shown rounded
 * @param unit what is counted; empty for a plain number
 * @param perUnit for one of what; empty unless it is a factor
 */
record Term(double value, String exact, String unit, String perUnit) implements Expression {

    /** A quantity in a unit, shown rounded. */
    static <Q extends Quantity<Q>> Term of(WaterQuantity<Q> quantity, Unit<Q> unit) {
        return rounded(quantity.in(unit), unit.toString());
    }

    /** A quantity as it was stated, with all its digits. */
    static Term stated(WaterQuantity<?> quantity) {
        return exact(quantity.getValue(), quantity.getUnit().toString());
    }

    static Term rounded(double value, String unit) {
        return new Term(value, "", unit, "");
    }

    static Term exact(double value, String unit) {
        return factor(BigDecimal.valueOf(value), unit, "");
    }

    static Term factor(ConversionFactor factor) {
        return factor(factor.number(), factor.unit(), factor.perUnit());
    }

    static Term factor(double number, String unit, String perUnit) {
        return factor(BigDecimal.valueOf(number), unit, perUnit);
    }

    private static Term factor(BigDecimal number, String unit, String perUnit) {
        return new Term(number.doubleValue(), Numbers.exact(number), unit, perUnit);
    }

    @Override
    public double size() {
        return Math.abs(value);
    }

    @Override
    public String text(int digits) {
        String label = perUnit.isEmpty() ? unit : unit + "/" + perUnit;
        return label.isEmpty() ? number(digits) : number(digits) + " " + label;
    }

    @Override
    public String formula(int digits) {
        return Notation.quantity(number(digits), unit);
    }

    String number(int digits) {
        return exact.isEmpty() ? Numbers.rounded(value, digits) : exact;
    }
}
