package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Charges that a resin can hold or has exchanged, per volume of settled resin.
 *
 * <p>Immutable and thread-safe.
 */
public final class ExchangeCapacity extends WaterQuantity<ExchangeCapacity> {

    /** Equivalent per litre of resin. */
    public static final Unit<ExchangeCapacity> EQUIVALENT_PER_LITRE =
            scale("eq/L", "eq/L", Definition.ONE.times(1000, "meq", "eq"));

    /** Kilograin of hardness as CaCO₃ per cubic foot of resin. */
    public static final Unit<ExchangeCapacity> KILOGRAIN_PER_CUBIC_FOOT = scale(
            "kgr/ft³",
            "",
            Definition.of(Factor.KILOGRAIN)
                    .times(Factor.GRAIN)
                    .over(Factor.CUBIC_FOOT)
                    .over(Factor.CALCIUM_CARBONATE)
                    .times(Factor.CHARGE_TWO));

    /** Gram of hardness as CaCO₃ per litre of resin. */
    public static final Unit<ExchangeCapacity> GRAM_PER_LITRE_CALCIUM_CARBONATE = scale(
            "g/L CaCO3",
            "",
            Definition.of(Factor.MILLIGRAMS, Factor.CALCIUM_CARBONATE).times(Factor.CHARGE_TWO));

    private ExchangeCapacity(double value, Unit<ExchangeCapacity> unit) {
        super(value, unit, ExchangeCapacity.class, Coherent.MOLE_PER_CUBIC_METRE);
    }

    /**
     * Returns an exchange capacity.
     *
     * @param value number in {@code unit}; finite; 0 or more in practice
     * @param unit a unit of exchange capacity
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static ExchangeCapacity of(double value, Unit<ExchangeCapacity> unit) {
        return new ExchangeCapacity(value, unit);
    }

    /**
     * Returns any library's exchange capacity as ours.
     *
     * @param quantity an exchange capacity
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static ExchangeCapacity from(Quantity<ExchangeCapacity> quantity) {
        return quantity instanceof ExchangeCapacity ours
                ? ours
                : adopt(quantity, ExchangeCapacity.class, ExchangeCapacity::of);
    }

    /**
     * Reads an exchange capacity as people write it, such as {@code 2.0 eq/L}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static ExchangeCapacity parse(String text) {
        return QuantityText.parse(text, Text.NAMES, ExchangeCapacity::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code kgr/ft3}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<ExchangeCapacity> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<ExchangeCapacity>> units() {
        return Text.NAMES.units();
    }

    @Override
    ExchangeCapacity make(double value, Unit<ExchangeCapacity> unit) {
        return new ExchangeCapacity(value, unit);
    }

    private static Unit<ExchangeCapacity> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(ExchangeCapacity.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<ExchangeCapacity> NAMES = new UnitNames<ExchangeCapacity>("exchange capacity")
                .unit(EQUIVALENT_PER_LITRE, "meq/mL", "val/L")
                .unit(
                        KILOGRAIN_PER_CUBIC_FOOT,
                        "kgr/cu ft",
                        "kilograin/ft3",
                        "kilograins/ft3",
                        "kilograins/cubic foot",
                        "kgr/ft^3")
                .unit(GRAM_PER_LITRE_CALCIUM_CARBONATE, "kg/m3 CaCO3", "g CaCO3/L");
    }
}
