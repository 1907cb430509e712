package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Alkalinity of a water: the acid that a titration to the end point takes up, in equivalents per volume.
 *
 * What aquarists call carbonate hardness or KH is this titration. Unlike hardness it can be negative, in water with mineral acid.
 *
 * <p>Immutable and thread-safe.
 */
public final class Alkalinity extends WaterQuantity<Alkalinity> {

    /** Milliequivalent of acid per litre (mval/L). */
    public static final Unit<Alkalinity> MILLIEQUIVALENT_PER_LITRE = scale("meq/L", "meq/L", Definition.ONE);

    /** Millimole of acid per litre: the acid capacity to pH 4.3 of ISO 9963-1, the same size as meq/L. */
    public static final Unit<Alkalinity> MILLIMOLE_PER_LITRE = scale("mmol/L", "mmol/L", Definition.ONE);

    /** Milligram per litre expressed as CaCO₃, one of which takes up two acids. */
    public static final Unit<Alkalinity> MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE =
            scale("mg/L CaCO3", "", Definition.under(Factor.CALCIUM_CARBONATE).times(Factor.CHARGE_TWO));

    /** Milligram per litre expressed as HCO₃⁻. */
    public static final Unit<Alkalinity> MILLIGRAM_PER_LITRE_BICARBONATE =
            scale("mg/L HCO3", "", Definition.under(Factor.BICARBONATE).times(1, "meq", "mmol"));

    /** Degree of carbonate hardness, the KH of aquarists: alkalinity equal to 10 mg of CaO per litre (common practice). */
    public static final Unit<Alkalinity> DEGREE_OF_CARBONATE_HARDNESS = scale(
            "°dKH",
            "",
            Definition.of(Factor.DEGREE_OF_CARBONATE_HARDNESS, Factor.CALCIUM_OXIDE)
                    .times(Factor.CHARGE_TWO));

    /** French degree of alkalinity (TAC): 10 mg of CaCO₃ per litre. */
    public static final Unit<Alkalinity> FRENCH_DEGREE = scale(
            "°fH",
            "",
            Definition.of(Factor.FRENCH_DEGREE, Factor.CALCIUM_CARBONATE).times(Factor.CHARGE_TWO));

    /** English degree of alkalinity: one grain of CaCO₃ per imperial gallon. */
    public static final Unit<Alkalinity> ENGLISH_DEGREE = scale(
            "°e",
            "",
            Definition.of(Factor.GRAIN, Factor.IMPERIAL_GALLON, Factor.CALCIUM_CARBONATE)
                    .times(Factor.CHARGE_TWO));

    /** Grain per US gallon expressed as CaCO₃. */
    public static final Unit<Alkalinity> GRAIN_PER_US_GALLON = scale(
            "gpg",
            "",
            Definition.of(Factor.GRAIN, Factor.US_GALLON, Factor.CALCIUM_CARBONATE)
                    .times(Factor.CHARGE_TWO));

    private Alkalinity(double value, Unit<Alkalinity> unit) {
        super(value, unit, Alkalinity.class, Coherent.MOLE_PER_CUBIC_METRE);
    }

    /**
     * Returns an alkalinity.
     *
     * @param value number in {@code unit}; finite; negative where there is mineral acid
     * @param unit a unit of alkalinity
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static Alkalinity of(double value, Unit<Alkalinity> unit) {
        return new Alkalinity(value, unit);
    }

    /**
     * Returns any library's alkalinity as ours.
     *
     * @param quantity an alkalinity
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static Alkalinity from(Quantity<Alkalinity> quantity) {
        return quantity instanceof Alkalinity ours ? ours : adopt(quantity, Alkalinity.class, Alkalinity::of);
    }

    /**
     * Reads an alkalinity as people write it, such as {@code 9.5 °dKH}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static Alkalinity parse(String text) {
        return QuantityText.parse(text, Text.NAMES, Alkalinity::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code mg/L CaCO3}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<Alkalinity> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<Alkalinity>> units() {
        return Text.NAMES.units();
    }

    @Override
    Alkalinity make(double value, Unit<Alkalinity> unit) {
        return new Alkalinity(value, unit);
    }

    private static Unit<Alkalinity> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(Alkalinity.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<Alkalinity> NAMES = new UnitNames<Alkalinity>("alkalinity")
                .unit(MILLIEQUIVALENT_PER_LITRE, "mval/L")
                .unit(MILLIMOLE_PER_LITRE, "mmol H+/L", "mmol acid/L")
                .unit(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE, "ppm CaCO3", "mg CaCO3/L")
                .unit(MILLIGRAM_PER_LITRE_BICARBONATE, "mg/L HCO3-", "ppm HCO3", "ppm HCO3-", "mg HCO3/L", "mg HCO3-/L")
                .unit(
                        DEGREE_OF_CARBONATE_HARDNESS,
                        "dKH",
                        "°KH",
                        "KH",
                        "°dH",
                        "dH",
                        "°d",
                        "German degree",
                        "German degrees")
                .unit(FRENCH_DEGREE, "°f", "fH", "°TAC", "French degree", "French degrees")
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
                .ambiguous("mg/L as CaCO3 (50.043 mg/meq) or as HCO3 (61.016 mg/meq): add one", "mg/L", "mg/l", "ppm")
                .ambiguous("French degrees (write °fH) or degrees Fahrenheit", "°F", "F", "degF")
                .ambiguous("grains per US gallon (write gpg) or grams", "gr", "grain", "grains")
                .ambiguous("German (°dKH), French (°fH) or English (°e) degrees", "°", "degree", "degrees", "deg");
    }
}
