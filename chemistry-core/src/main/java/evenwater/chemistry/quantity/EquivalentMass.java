package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Mass that carries or exchanges one mole of charge: a molar mass divided by the charges that one mole exchanges.
 *
 * <p>Immutable and thread-safe.
 */
public final class EquivalentMass extends WaterQuantity<EquivalentMass> {

    /** Gram per equivalent. */
    public static final Unit<EquivalentMass> GRAM_PER_EQUIVALENT =
            scale("g/eq", "g/eq", Definition.under(Factor.GRAMS));

    /** Kilogram per equivalent. */
    public static final Unit<EquivalentMass> KILOGRAM_PER_EQUIVALENT = scale("kg/eq", "kg/eq", Definition.ONE);

    private EquivalentMass(double value, Unit<EquivalentMass> unit) {
        super(value, unit, EquivalentMass.class, Coherent.KILOGRAM_PER_MOLE);
    }

    /**
     * Returns an equivalent mass.
     *
     * @param value number in {@code unit}; finite; above 0 in practice
     * @param unit a unit of equivalent mass
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static EquivalentMass of(double value, Unit<EquivalentMass> unit) {
        return new EquivalentMass(value, unit);
    }

    /**
     * Returns any library's equivalent mass as ours.
     *
     * @param quantity an equivalent mass
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static EquivalentMass from(Quantity<EquivalentMass> quantity) {
        return quantity instanceof EquivalentMass ours
                ? ours
                : adopt(quantity, EquivalentMass.class, EquivalentMass::of);
    }

    /**
     * Reads an equivalent mass as people write it, such as {@code 50.043 g/eq}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static EquivalentMass parse(String text) {
        return QuantityText.parse(text, Text.NAMES, EquivalentMass::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code mg/meq}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<EquivalentMass> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<EquivalentMass>> units() {
        return Text.NAMES.units();
    }

    @Override
    EquivalentMass make(double value, Unit<EquivalentMass> unit) {
        return new EquivalentMass(value, unit);
    }

    private static Unit<EquivalentMass> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(EquivalentMass.class, Coherent.KILOGRAM_PER_MOLE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<EquivalentMass> NAMES = new UnitNames<EquivalentMass>("equivalent mass")
                .unit(GRAM_PER_EQUIVALENT, "mg/meq", "g/val")
                .unit(KILOGRAM_PER_EQUIVALENT);
    }
}
