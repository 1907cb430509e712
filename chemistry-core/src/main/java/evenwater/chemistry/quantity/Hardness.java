package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Hardness of a water: the amount of alkaline earth ions per volume, in the scales that people speak.
 *
 * One mmol/L of hardness is 2 meq/L. Scales that weigh CaCO₃ or CaO count one of them for each alkaline earth ion. Which ions a
 * figure counts is said where a water is asked for it.
 *
 * <p>Immutable and thread-safe.
 */
public final class Hardness extends WaterQuantity<Hardness> {

    /** Millimole of alkaline earths per litre; the unit of ISO 6059. */
    public static final Unit<Hardness> MILLIMOLE_PER_LITRE = scale("mmol/L", "mmol/L", Definition.ONE);

    /** Mole of alkaline earths per cubic metre; the same size as mmol/L. */
    public static final Unit<Hardness> MOLE_PER_CUBIC_METRE = scale("mol/m³", "mol/m3", Definition.ONE);

    /** Milliequivalent per litre (mval/L): half a millimole of a double-charged ion. */
    public static final Unit<Hardness> MILLIEQUIVALENT_PER_LITRE =
            scale("meq/L", "", Definition.under(Factor.CHARGE_TWO));

    /** Milligram per litre expressed as CaCO₃; the "ppm" of the trade. */
    public static final Unit<Hardness> MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE =
            scale("mg/L CaCO3", "", Definition.under(Factor.CALCIUM_CARBONATE));

    /** Milligram per litre expressed as CaO. */
    public static final Unit<Hardness> MILLIGRAM_PER_LITRE_CALCIUM_OXIDE =
            scale("mg/L CaO", "", Definition.under(Factor.CALCIUM_OXIDE));

    /** German degree: 10 mg of CaO per litre (DIN 38409-6, from memory). */
    public static final Unit<Hardness> GERMAN_DEGREE =
            scale("°dH", "", Definition.of(Factor.GERMAN_DEGREE, Factor.CALCIUM_OXIDE));

    /** French degree: 10 mg of CaCO₃ per litre. */
    public static final Unit<Hardness> FRENCH_DEGREE =
            scale("°fH", "", Definition.of(Factor.FRENCH_DEGREE, Factor.CALCIUM_CARBONATE));

    /** English (Clark) degree: one grain of CaCO₃ per imperial gallon. */
    public static final Unit<Hardness> ENGLISH_DEGREE =
            scale("°e", "", Definition.of(Factor.GRAIN, Factor.IMPERIAL_GALLON, Factor.CALCIUM_CARBONATE));

    /** Grain of CaCO₃ per US gallon, the gpg of the softening trade. */
    public static final Unit<Hardness> GRAIN_PER_US_GALLON =
            scale("gpg", "", Definition.of(Factor.GRAIN, Factor.US_GALLON, Factor.CALCIUM_CARBONATE));

    private Hardness(double value, Unit<Hardness> unit) {
        super(value, unit, Hardness.class, Coherent.MOLE_PER_CUBIC_METRE);
    }

    /**
     * Returns a hardness.
     *
     * @param value number in {@code unit}; finite; a negative one is a difference
     * @param unit a unit of hardness
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static Hardness of(double value, Unit<Hardness> unit) {
        return new Hardness(value, unit);
    }

    /**
     * Returns any library's hardness as ours.
     *
     * @param quantity a hardness
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static Hardness from(Quantity<Hardness> quantity) {
        return quantity instanceof Hardness ours ? ours : adopt(quantity, Hardness.class, Hardness::of);
    }

    /**
     * Reads a hardness as people write it, such as {@code 22 gpg}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static Hardness parse(String text) {
        return QuantityText.parse(text, Text.NAMES, Hardness::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code gr/gal}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<Hardness> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<Hardness>> units() {
        return Text.NAMES.units();
    }

    @Override
    Hardness make(double value, Unit<Hardness> unit) {
        return new Hardness(value, unit);
    }

    private static Unit<Hardness> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(Hardness.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<Hardness> NAMES = new UnitNames<Hardness>("hardness")
                .unit(MILLIMOLE_PER_LITRE, "mmol alkaline earths/L")
                .unit(MOLE_PER_CUBIC_METRE, "mol/m^3")
                .unit(MILLIEQUIVALENT_PER_LITRE, "mval/L", "mEq/L")
                .unit(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "ppm CaCO3", "mg CaCO3/L")
                .unit(MILLIGRAM_PER_LITRE_CALCIUM_OXIDE, "ppm CaO", "mg CaO/L")
                .unit(GERMAN_DEGREE, "dH", "°dGH", "dGH", "°GH", "GH", "°d", "German degree", "German degrees")
                .unit(FRENCH_DEGREE, "°f", "fH", "°TH", "French degree", "French degrees")
                .unit(
                        ENGLISH_DEGREE,
                        "°Clark",
                        "Clark",
                        "°eH",
                        "English degree",
                        "English degrees",
                        "Clark degree",
                        "Clark degrees",
                        "gr/imp gal",
                        "gr/UK gal",
                        "grain/imperial gallon",
                        "grains/imperial gallon")
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
                .ambiguous("mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one", "mg/L", "mg/l", "ppm")
                .ambiguous("French degrees (write °fH) or degrees Fahrenheit", "°F", "F", "degF")
                .ambiguous("grains per US gallon (write gpg) or grams", "gr", "grain", "grains")
                .ambiguous("German (°dH), French (°fH) or English (°e) degrees", "°", "degree", "degrees", "deg");
    }
}
