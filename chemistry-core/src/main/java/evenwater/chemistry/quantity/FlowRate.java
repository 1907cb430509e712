package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Volume per time.
 *
 * <p>Immutable and thread-safe.
 */
public final class FlowRate extends WaterQuantity<FlowRate> {

    /** Litre per minute. */
    public static final Unit<FlowRate> LITRE_PER_MINUTE =
            scale("L/min", "L/min", Definition.under(Factor.SECONDS, Factor.LITRES));

    /** Litre per hour. */
    public static final Unit<FlowRate> LITRE_PER_HOUR =
            scale("L/h", "L/h", Definition.under(Factor.MINUTES, Factor.SECONDS, Factor.LITRES));

    /** Cubic metre per hour. */
    public static final Unit<FlowRate> CUBIC_METRE_PER_HOUR =
            scale("m³/h", "m3/h", Definition.of(Factor.LITRES, Factor.MINUTES, Factor.SECONDS, Factor.LITRES));

    /** US gallon per minute. */
    public static final Unit<FlowRate> US_GALLON_PER_MINUTE =
            scale("gal(US)/min", "[gal_us]/min", Definition.of(Factor.US_GALLON, Factor.SECONDS, Factor.LITRES));

    /** Imperial gallon per minute. */
    public static final Unit<FlowRate> IMPERIAL_GALLON_PER_MINUTE =
            scale("gal(imp)/min", "[gal_br]/min", Definition.of(Factor.IMPERIAL_GALLON, Factor.SECONDS, Factor.LITRES));

    /** US gallon per day. */
    public static final Unit<FlowRate> US_GALLON_PER_DAY = scale(
            "gal(US)/d",
            "[gal_us]/d",
            Definition.of(Factor.US_GALLON, Factor.HOURS, Factor.MINUTES, Factor.SECONDS, Factor.LITRES));

    /** Litre per day. */
    public static final Unit<FlowRate> LITRE_PER_DAY =
            scale("L/d", "L/d", Definition.under(Factor.HOURS, Factor.MINUTES, Factor.SECONDS, Factor.LITRES));

    private FlowRate(double value, Unit<FlowRate> unit) {
        super(value, unit, FlowRate.class, Coherent.CUBIC_METRE_PER_SECOND);
    }

    /**
     * Returns a flow rate.
     *
     * @param value number in {@code unit}; finite; 0 or more in practice
     * @param unit a unit of flow rate
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static FlowRate of(double value, Unit<FlowRate> unit) {
        return new FlowRate(value, unit);
    }

    /**
     * Returns any library's flow rate as ours.
     *
     * @param quantity a flow rate
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static FlowRate from(Quantity<FlowRate> quantity) {
        return quantity instanceof FlowRate ours ? ours : adopt(quantity, FlowRate.class, FlowRate::of);
    }

    /**
     * Reads a flow rate as people write it, such as {@code 12 L/min}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static FlowRate parse(String text) {
        return QuantityText.parse(text, Text.NAMES, FlowRate::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code m³/h}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<FlowRate> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<FlowRate>> units() {
        return Text.NAMES.units();
    }

    @Override
    FlowRate make(double value, Unit<FlowRate> unit) {
        return new FlowRate(value, unit);
    }

    private static Unit<FlowRate> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(FlowRate.class, Coherent.CUBIC_METRE_PER_SECOND, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<FlowRate> NAMES = new UnitNames<FlowRate>("flow rate")
                .unit(LITRE_PER_MINUTE)
                .unit(LITRE_PER_HOUR, "L/hr")
                .unit(CUBIC_METRE_PER_HOUR, "m^3/h")
                .unit(US_GALLON_PER_MINUTE, "US gpm", "gpm US", "US gal/min", "gal/min US")
                .unit(IMPERIAL_GALLON_PER_MINUTE, "imp gpm", "gpm imp", "imp gal/min", "UK gal/min")
                .unit(US_GALLON_PER_DAY, "US gpd", "gpd US", "US gal/d", "US gal/day")
                .unit(LITRE_PER_DAY, "L/day")
                .ambiguous(
                        "US gallons (write gal(US)/min) or imperial gallons (write gal(imp)/min) per minute",
                        "gpm",
                        "gal/min")
                .ambiguous("US gallons (write gal(US)/d) or imperial gallons per day", "gpd", "gal/d", "gal/day");
    }
}
