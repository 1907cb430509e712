package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Charge of ions per volume, counted in equivalents: a mole of a double-charged ion is two.
 *
 * It shares a dimension with amounts and does not mix with them; an ion converts one into the other.
 *
 * <p>Immutable and thread-safe.
 */
public final class EquivalentConcentration extends WaterQuantity<EquivalentConcentration> {

    /** Equivalent per litre. */
    public static final Unit<EquivalentConcentration> EQUIVALENT_PER_LITRE =
            scale("eq/L", "eq/L", Definition.ONE.times(1000, "meq", "eq"));

    /** Milliequivalent per litre. */
    public static final Unit<EquivalentConcentration> MILLIEQUIVALENT_PER_LITRE =
            scale("meq/L", "meq/L", Definition.ONE);

    /** Microequivalent per litre. */
    public static final Unit<EquivalentConcentration> MICROEQUIVALENT_PER_LITRE =
            scale("µeq/L", "ueq/L", Definition.ONE.over(1000, "µeq", "meq"));

    /** Equivalent per cubic metre; the same size as meq/L. */
    public static final Unit<EquivalentConcentration> EQUIVALENT_PER_CUBIC_METRE =
            scale("eq/m³", "eq/m3", Definition.ONE);

    private EquivalentConcentration(double value, Unit<EquivalentConcentration> unit) {
        super(value, unit, EquivalentConcentration.class, Coherent.MOLE_PER_CUBIC_METRE);
    }

    /**
     * Returns an equivalent concentration.
     *
     * @param value number in {@code unit}; finite; signed where a net charge is meant
     * @param unit a unit of equivalent concentration
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static EquivalentConcentration of(double value, Unit<EquivalentConcentration> unit) {
        return new EquivalentConcentration(value, unit);
    }

    /**
     * Returns any library's equivalent concentration as ours.
     *
     * @param quantity an equivalent concentration
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static EquivalentConcentration from(Quantity<EquivalentConcentration> quantity) {
        return quantity instanceof EquivalentConcentration ours
                ? ours
                : adopt(quantity, EquivalentConcentration.class, EquivalentConcentration::of);
    }

    /**
     * Reads an equivalent concentration as people write it, such as {@code 3.4 meq/L}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static EquivalentConcentration parse(String text) {
        return QuantityText.parse(text, Text.NAMES, EquivalentConcentration::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code µeq/L}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<EquivalentConcentration> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<EquivalentConcentration>> units() {
        return Text.NAMES.units();
    }

    @Override
    EquivalentConcentration make(double value, Unit<EquivalentConcentration> unit) {
        return new EquivalentConcentration(value, unit);
    }

    private static Unit<EquivalentConcentration> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(
                EquivalentConcentration.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<EquivalentConcentration> NAMES = new UnitNames<EquivalentConcentration>(
                        "equivalent concentration")
                .unit(EQUIVALENT_PER_LITRE, "val/L")
                .unit(MILLIEQUIVALENT_PER_LITRE, "mval/L")
                .unit(MICROEQUIVALENT_PER_LITRE, "µval/L")
                .unit(EQUIVALENT_PER_CUBIC_METRE, "eq/m^3");
    }
}
