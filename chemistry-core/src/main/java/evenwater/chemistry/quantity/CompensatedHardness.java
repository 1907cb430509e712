package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Hardness with a surcharge for iron and manganese, as the softening trade uses it to size a softener.
 *
 * It is a planning figure (common practice, no source), not a property of the water: it never gives sodium, a blend or a recipe,
 * and therefore has a type of its own.
 *
 * <p>Immutable and thread-safe.
 */
public final class CompensatedHardness extends WaterQuantity<CompensatedHardness> {

    /** Grain of CaCO₃ per US gallon, the gpg of the softening trade. */
    public static final Unit<CompensatedHardness> GRAIN_PER_US_GALLON =
            scale("gpg", "", Definition.of(Factor.GRAIN, Factor.US_GALLON, Factor.CALCIUM_CARBONATE));

    /** Milligram per litre expressed as CaCO₃; the "ppm" of the trade. */
    public static final Unit<CompensatedHardness> MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE =
            scale("mg/L CaCO3", "", Definition.under(Factor.CALCIUM_CARBONATE));

    /** German degree: 10 mg of CaO per litre (DIN 38409-6, from memory). */
    public static final Unit<CompensatedHardness> GERMAN_DEGREE =
            scale("°dH", "", Definition.of(Factor.GERMAN_DEGREE, Factor.CALCIUM_OXIDE));

    private CompensatedHardness(double value, Unit<CompensatedHardness> unit) {
        super(value, unit, CompensatedHardness.class, Coherent.MOLE_PER_CUBIC_METRE);
    }

    /**
     * Returns a compensated hardness.
     *
     * @param value number in {@code unit}; finite; 0 or more in practice
     * @param unit a unit of compensated hardness
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static CompensatedHardness of(double value, Unit<CompensatedHardness> unit) {
        return new CompensatedHardness(value, unit);
    }

    /**
     * Returns any library's compensated hardness as ours.
     *
     * @param quantity a compensated hardness
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static CompensatedHardness from(Quantity<CompensatedHardness> quantity) {
        return quantity instanceof CompensatedHardness ours
                ? ours
                : adopt(quantity, CompensatedHardness.class, CompensatedHardness::of);
    }

    /**
     * Reads a compensated hardness as people write it, such as {@code 25 gpg}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static CompensatedHardness parse(String text) {
        return QuantityText.parse(text, Text.NAMES, CompensatedHardness::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code gpg}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<CompensatedHardness> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<CompensatedHardness>> units() {
        return Text.NAMES.units();
    }

    @Override
    CompensatedHardness make(double value, Unit<CompensatedHardness> unit) {
        return new CompensatedHardness(value, unit);
    }

    private static Unit<CompensatedHardness> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(CompensatedHardness.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<CompensatedHardness> NAMES = new UnitNames<CompensatedHardness>("compensated hardness")
                .unit(
                        GRAIN_PER_US_GALLON,
                        "gr/gal",
                        "gr/US gal",
                        "gr/gal US",
                        "gr/gal_us",
                        "grain/gal",
                        "grains/gal",
                        "grain/gallon",
                        "grains/gallon",
                        "grain/US gallon",
                        "grains/US gallon",
                        "grains/US gal",
                        "grain/US gal",
                        "gpg CaCO3",
                        "gr/gal CaCO3",
                        "grains per gallon CaCO3")
                .unit(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "ppm CaCO3", "mg CaCO3/L")
                .unit(GERMAN_DEGREE, "dH", "°dGH", "dGH", "°GH", "GH", "°d", "German degree", "German degrees");
    }
}
