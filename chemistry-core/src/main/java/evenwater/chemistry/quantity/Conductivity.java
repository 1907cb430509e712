package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Electrical conductivity of a water at a stated temperature.
 *
 * <p>Immutable and thread-safe.
 */
public final class Conductivity extends WaterQuantity<Conductivity> {

    /** Microsiemens per centimetre, the usual unit for fresh water. */
    public static final Unit<Conductivity> MICROSIEMENS_PER_CENTIMETRE =
            scale("µS/cm", "uS/cm", Definition.ONE.over(1000_000, "µS", "S").times(100, "cm", "m"));

    /** Millisiemens per centimetre. */
    public static final Unit<Conductivity> MILLISIEMENS_PER_CENTIMETRE =
            scale("mS/cm", "mS/cm", Definition.ONE.over(1000, "mS", "S").times(100, "cm", "m"));

    /** Millisiemens per metre. */
    public static final Unit<Conductivity> MILLISIEMENS_PER_METRE =
            scale("mS/m", "mS/m", Definition.ONE.over(1000, "mS", "S"));

    /** Siemens per metre. */
    public static final Unit<Conductivity> SIEMENS_PER_METRE = scale("S/m", "S/m", Definition.ONE);

    private Conductivity(double value, Unit<Conductivity> unit) {
        super(value, unit, Conductivity.class, Coherent.SIEMENS_PER_METRE);
    }

    /**
     * Returns a conductivity.
     *
     * @param value number in {@code unit}; finite; 0 or more in practice
     * @param unit a unit of conductivity
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static Conductivity of(double value, Unit<Conductivity> unit) {
        return new Conductivity(value, unit);
    }

    /**
     * Returns any library's conductivity as ours.
     *
     * @param quantity a conductivity
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static Conductivity from(Quantity<Conductivity> quantity) {
        return quantity instanceof Conductivity ours ? ours : adopt(quantity, Conductivity.class, Conductivity::of);
    }

    /**
     * Reads a conductivity as people write it, such as {@code 640 µS/cm}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static Conductivity parse(String text) {
        return QuantityText.parse(text, Text.NAMES, Conductivity::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code mS/m}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<Conductivity> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<Conductivity>> units() {
        return Text.NAMES.units();
    }

    @Override
    Conductivity make(double value, Unit<Conductivity> unit) {
        return new Conductivity(value, unit);
    }

    private static Unit<Conductivity> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(Conductivity.class, Coherent.SIEMENS_PER_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<Conductivity> NAMES = new UnitNames<Conductivity>("conductivity")
                .unit(MICROSIEMENS_PER_CENTIMETRE, "µmho/cm")
                .unit(MILLISIEMENS_PER_CENTIMETRE, "dS/m", "mmho/cm")
                .unit(MILLISIEMENS_PER_METRE)
                .unit(SIEMENS_PER_METRE)
                .ambiguous("µS/cm or µS/m: add the length", "µS", "uS")
                .ambiguous("mS/cm or mS/m: add the length", "mS");
    }
}
