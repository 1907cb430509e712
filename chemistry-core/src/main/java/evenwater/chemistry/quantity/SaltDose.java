package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Salt used for one regeneration, per volume of resin.
 *
 * <p>Immutable and thread-safe.
 */
public final class SaltDose extends WaterQuantity<SaltDose> {

    /** Gram of salt per litre of resin. */
    public static final Unit<SaltDose> GRAM_PER_LITRE = scale("g/L", "g/L", Definition.ONE);

    /** Pound of salt per cubic foot of resin. */
    public static final Unit<SaltDose> POUND_PER_CUBIC_FOOT =
            scale("lb/ft³", "[lb_av]/[cft_i]", Definition.of(Factor.POUND, Factor.CUBIC_FOOT));

    private SaltDose(double value, Unit<SaltDose> unit) {
        super(value, unit, SaltDose.class, Coherent.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Returns a salt dose.
     *
     * @param value number in {@code unit}; finite; 0 or more in practice
     * @param unit a unit of salt dose
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static SaltDose of(double value, Unit<SaltDose> unit) {
        return new SaltDose(value, unit);
    }

    /**
     * Returns any library's salt dose as ours.
     *
     * @param quantity a salt dose
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static SaltDose from(Quantity<SaltDose> quantity) {
        return quantity instanceof SaltDose ours ? ours : adopt(quantity, SaltDose.class, SaltDose::of);
    }

    /**
     * Reads a salt dose as people write it, such as {@code 6 lb/ft³}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static SaltDose parse(String text) {
        return QuantityText.parse(text, Text.NAMES, SaltDose::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code g/L}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<SaltDose> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<SaltDose>> units() {
        return Text.NAMES.units();
    }

    @Override
    SaltDose make(double value, Unit<SaltDose> unit) {
        return new SaltDose(value, unit);
    }

    private static Unit<SaltDose> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(SaltDose.class, Coherent.KILOGRAM_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<SaltDose> NAMES = new UnitNames<SaltDose>("salt dose")
                .unit(GRAM_PER_LITRE, "kg/m3")
                .unit(POUND_PER_CUBIC_FOOT, "lb/cu ft", "lbs/ft3", "lbs/cu ft", "pounds/cubic foot", "lb/ft^3");
    }
}
