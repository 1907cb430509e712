package evenwater.firmware;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.ConversionFactor;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The scales of a kind of quantity, with their exact sizes as the core has them.
 *
 * @param name of the kind in C, such as {@code hardness}
 * @param units in the order of the core's constants
 */
record Scales(String name, List<Scale> units) {

    /** The largest number that a fixed-point value can be, and hence the largest of a fraction. */
    static final BigInteger LARGEST = BigInteger.valueOf(Integer.MAX_VALUE);

    /**
     * One scale.
     *
     * @param constant name of the core's constant
     * @param unit of the core
     * @param size of one unit in the first unit of the kind
     */
    record Scale(String constant, Unit<?> unit, Ratio size) {}

    private static final List<Scales> ALL = List.of(
            of("hardness", Hardness.class, Hardness.of(1, Hardness.MILLIMOLE_PER_LITRE)),
            of("alkalinity", Alkalinity.class, Alkalinity.of(1, Alkalinity.MILLIEQUIVALENT_PER_LITRE)),
            of("conductivity", Conductivity.class, Conductivity.of(1, Conductivity.MICROSIEMENS_PER_CENTIMETRE)),
            of("flow", FlowRate.class, FlowRate.of(1, FlowRate.LITRE_PER_MINUTE)));

    static List<Scales> all() {
        return ALL;
    }

    static Scales hardness() {
        return all().get(0);
    }

    private static <Q extends Quantity<Q>> Scales of(String name, Class<Q> kind, WaterQuantity<Q> base) {
        List<Scale> units = new ArrayList<>();
        for (Field field : kind.getFields()) {
            if (field.getType() == Unit.class && Modifier.isStatic(field.getModifiers())) {
                Unit<Q> unit = unit(field).asType(kind);
                units.add(new Scale(field.getName(), unit, size(base, unit)));
            }
        }
        return new Scales(name, List.copyOf(units));
    }

    private static Unit<?> unit(Field field) {
        try {
            return (Unit<?>) field.get(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The core keeps its factors as exact decimals, so that nothing is rounded on the way. */
    private static <Q extends Quantity<Q>> Ratio size(WaterQuantity<Q> base, Unit<Q> unit) {
        Ratio unitsInBase = Ratio.of(1, 1);
        for (ConversionFactor factor : base.conversionTo(unit).factors()) {
            Ratio number = Ratio.of(factor.number());
            unitsInBase = unitsInBase.times(factor.divides() ? number.inverse() : number);
        }
        return unitsInBase.inverse();
    }

    /** What a value in one unit is multiplied with to have it in another; exact. */
    Ratio exact(int from, int to) {
        return units.get(from).size().times(units.get(to).size().inverse());
    }

    /** The fraction that fixed point multiplies with. */
    Ratio used(int from, int to) {
        return exact(from, to).nearest(LARGEST);
    }

    /** The largest error of the fixed-point conversion of this kind, in last places of the result. */
    Ratio worstError() {
        Ratio worst = Ratio.HALF;
        for (int from = 0; from < units.size(); from++) {
            for (int to = 0; to < units.size(); to++) {
                Ratio error = worstError(exact(from, to), used(from, to));
                worst = worst.compareTo(error) < 0 ? error : worst;
            }
        }
        return worst;
    }

    /**
     * The largest error of {@code round(value · used)} against {@code value · exact}: half a place for the rounding, and what the two fractions
     * differ by, times the largest value whose answer is not saturated. A saturated answer is as near to the exact one as that
     * can be, but for the same difference.
     */
    static Ratio worstError(Ratio exact, Ratio used) {
        Ratio most = Ratio.of(1L << 31, 1);
        Ratio unsaturated = Ratio.of((1L << 31) + 1, 1).times(exact.inverse());
        Ratio largest = most.compareTo(unsaturated) < 0 ? most : unsaturated;
        return Ratio.HALF.plus(used.minus(exact).abs().times(largest));
    }
}
