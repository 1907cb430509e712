package evenwater.chemistry.quantity;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * One factor of a conversion by the factor-label method: so many of one unit for each one of another.
 *
 * @param number above 0; the exact definition, a molar mass from the standard atomic weights, or the double of another library's unit
 * @param unit what is counted, such as {@code mg}
 * @param perUnit for one of what, such as {@code grain}; empty where it is a plain number
 * @param divides whether the conversion divides by it instead of multiplying
 */
public record ConversionFactor(BigDecimal number, String unit, String perUnit, boolean divides) {

    /**
     * Checks that the number is positive.
     *
     * @param number see the record
     * @param unit see the record
     * @param perUnit see the record
     * @param divides see the record
     * @throws IllegalArgumentException if the number is not positive
     */
    public ConversionFactor {
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(perUnit, "perUnit");
        if (number.signum() <= 0) {
            throw new IllegalArgumentException("factor must be positive, but was " + number + " " + unit);
        }
    }

    static ConversionFactor of(Definition.Link link) {
        Factor factor = link.factor();
        return new ConversionFactor(factor.number(), factor.unit(), factor.perUnit(), link.divides());
    }

    /**
     * Returns the factor of the way back.
     *
     * @return the same number, divided by where this multiplies
     */
    public ConversionFactor inverse() {
        return new ConversionFactor(number, unit, perUnit, !divides);
    }

    /**
     * Returns what a value is multiplied by.
     *
     * @return the number or its inverse; above 0
     */
    public double value() {
        return divides ? 1 / number.doubleValue() : number.doubleValue();
    }

    /** Returns the operation, such as {@code × 64.79891 mg/grain}. */
    @Override
    public String toString() {
        return (divides ? "÷ " : "× ") + number.toPlainString() + " " + label();
    }

    /**
     * Returns the unit of the factor.
     *
     * @return such as {@code mg/grain}
     */
    public String label() {
        return perUnit.isEmpty() ? unit : unit + "/" + perUnit;
    }
}
