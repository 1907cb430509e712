package evenwater.chemistry.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javax.measure.Quantity;

/**
 * How a quantity is converted: what is added for another zero, the exact factors in their order, what is taken off.
 *
 * <p>{@code result = (value + added) · Π factors − subtracted}. The factors are those that the two units are defined by, so this
 * chain and {@link WaterQuantity#in} cannot disagree but for rounding.
 *
 * @param added in the unit of the quantity; 0 unless its scale has a zero of its own, as 273.15 for °C
 * @param factors in order; factors that both definitions share cancel and are left out
 * @param subtracted in the wanted unit; 0 unless its scale has a zero of its own
 */
public record UnitConversion(double added, List<ConversionFactor> factors, double subtracted) {

    /**
     * Copies the list.
     *
     * @param added see the record
     * @param factors see the record
     * @param subtracted see the record
     */
    public UnitConversion {
        factors = List.copyOf(factors);
    }

    static <Q extends Quantity<Q>> UnitConversion between(KindScale<Q> from, KindScale<Q> to) {
        if (from.offset == to.offset && from.toBase == to.toBase) {
            return new UnitConversion(0, List.of(), 0);
        }
        List<ConversionFactor> forth = new ArrayList<>(from.factors());
        List<ConversionFactor> back = new ArrayList<>(to.factors());
        for (ConversionFactor factor : from.factors()) {
            if (back.remove(factor)) {
                forth.remove(factor);
            }
        }
        Collections.reverse(back);
        back.forEach(factor -> forth.add(factor.inverse()));
        return new UnitConversion(from.offset, forth, to.offset);
    }
}
