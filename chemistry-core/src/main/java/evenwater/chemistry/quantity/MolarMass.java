package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Mass of one mole of a substance.
 *
 * <p>Immutable and thread-safe.
 */
public final class MolarMass extends WaterQuantity<MolarMass> {

    /** Gram per mole. */
    public static final Unit<MolarMass> GRAM_PER_MOLE = scale("g/mol", "g/mol", Definition.under(Factor.GRAMS));

    /** Kilogram per mole. */
    public static final Unit<MolarMass> KILOGRAM_PER_MOLE = scale("kg/mol", "kg/mol", Definition.ONE);

    private MolarMass(double value, Unit<MolarMass> unit) {
        super(value, unit, MolarMass.class, Coherent.KILOGRAM_PER_MOLE);
    }

    /**
     * Returns a molar mass.
     *
     * @param value number in {@code unit}; finite; above 0 in practice
     * @param unit a unit of molar mass
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static MolarMass of(double value, Unit<MolarMass> unit) {
        return new MolarMass(value, unit);
    }

    /**
     * Returns any library's molar mass as ours.
     *
     * @param quantity a molar mass
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static MolarMass from(Quantity<MolarMass> quantity) {
        return quantity instanceof MolarMass ours ? ours : adopt(quantity, MolarMass.class, MolarMass::of);
    }

    /**
     * Reads a molar mass as people write it, such as {@code 58.44 g/mol}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static MolarMass parse(String text) {
        return QuantityText.parse(text, Text.NAMES, MolarMass::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code g/mol}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<MolarMass> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<MolarMass>> units() {
        return Text.NAMES.units();
    }

    @Override
    MolarMass make(double value, Unit<MolarMass> unit) {
        return new MolarMass(value, unit);
    }

    private static Unit<MolarMass> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(MolarMass.class, Coherent.KILOGRAM_PER_MOLE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<MolarMass> NAMES = new UnitNames<MolarMass>("molar mass")
                .unit(GRAM_PER_MOLE, "mg/mmol")
                .unit(KILOGRAM_PER_MOLE);
    }
}
