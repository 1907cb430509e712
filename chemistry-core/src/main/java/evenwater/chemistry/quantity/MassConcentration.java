package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;

/**
 * True mass per volume: dissolved solids, brine, a dose, a density.
 *
 * Milligrams per litre of one analyte are not this but a unit of {@link AmountConcentration}, because they need a basis.
 *
 * <p>Immutable and thread-safe.
 */
public final class MassConcentration extends WaterQuantity<MassConcentration> {

    /** Gram per litre. */
    public static final Unit<MassConcentration> GRAM_PER_LITRE = scale("g/L", "g/L", Definition.ONE);

    /** Milligram per litre. */
    public static final Unit<MassConcentration> MILLIGRAM_PER_LITRE =
            scale("mg/L", "mg/L", Definition.under(Factor.MILLIGRAMS));

    /** Microgram per litre. */
    public static final Unit<MassConcentration> MICROGRAM_PER_LITRE =
            scale("µg/L", "ug/L", Definition.under(Factor.MICROGRAMS, Factor.MILLIGRAMS));

    /** Kilogram per litre, as densities are stated. */
    public static final Unit<MassConcentration> KILOGRAM_PER_LITRE =
            scale("kg/L", "kg/L", Definition.ONE.times(Factor.GRAMS));

    /** Kilogram per cubic metre; the same size as g/L. */
    public static final Unit<MassConcentration> KILOGRAM_PER_CUBIC_METRE = scale("kg/m³", "kg/m3", Definition.ONE);

    /** Milligram per cubic metre; the same size as µg/L. */
    public static final Unit<MassConcentration> MILLIGRAM_PER_CUBIC_METRE =
            scale("mg/m³", "mg/m3", Definition.under(Factor.LITRES, Factor.MILLIGRAMS));

    /** Grain per US gallon. */
    public static final Unit<MassConcentration> GRAIN_PER_US_GALLON =
            scale("gr/gal(US)", "[gr]/[gal_us]", Definition.of(Factor.GRAIN, Factor.US_GALLON, Factor.MILLIGRAMS));

    /** Pound per US gallon, as brine is stated. */
    public static final Unit<MassConcentration> POUND_PER_US_GALLON =
            scale("lb/gal(US)", "[lb_av]/[gal_us]", Definition.of(Factor.POUND, Factor.US_GALLON));

    /**
     * Returns the mass per volume of something stated by mass: {@code fraction · density}.
     *
     * <p>Parts per million by mass (mg/kg) and mg/L differ by the density of the solution: 0.3 % in fresh water at 25 °C, 3 % in sea
     * water, 20 % in saturated brine. There is no conversion without it.
     *
     * @param fraction mass of the substance per mass of solution, such as {@code 35 mg/kg}; 0 to 1
     * @param density mass of solution per volume of solution; above 0
     * @return the mass concentration in mg/L
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static MassConcentration ofMassFraction(
            Quantity<Dimensionless> fraction, Quantity<MassConcentration> density) {
        double part = WaterUnits.share(fraction).in(WaterUnits.ONE);
        double milligramsPerLitre = from(density).in(MILLIGRAM_PER_LITRE);
        if (!(part >= 0 && part <= 1)) {
            throw new IllegalArgumentException("mass fraction must be from 0 to 1, but was " + fraction);
        }
        if (!(milligramsPerLitre > 0)) {
            throw new IllegalArgumentException("density must be positive, but was " + density);
        }
        return of(part * milligramsPerLitre, MILLIGRAM_PER_LITRE);
    }

    private MassConcentration(double value, Unit<MassConcentration> unit) {
        super(value, unit, MassConcentration.class, Coherent.KILOGRAM_PER_CUBIC_METRE);
    }

    /**
     * Returns a mass concentration.
     *
     * @param value number in {@code unit}; finite; a negative one is a difference
     * @param unit a unit of mass concentration
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static MassConcentration of(double value, Unit<MassConcentration> unit) {
        return new MassConcentration(value, unit);
    }

    /**
     * Returns any library's mass concentration as ours.
     *
     * @param quantity a mass concentration
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static MassConcentration from(Quantity<MassConcentration> quantity) {
        return quantity instanceof MassConcentration ours
                ? ours
                : adopt(quantity, MassConcentration.class, MassConcentration::of);
    }

    /**
     * Reads a mass concentration as people write it, such as {@code 250 mg/L}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static MassConcentration parse(String text) {
        return QuantityText.parse(text, Text.NAMES, MassConcentration::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code g/L}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<MassConcentration> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<MassConcentration>> units() {
        return Text.NAMES.units();
    }

    @Override
    MassConcentration make(double value, Unit<MassConcentration> unit) {
        return new MassConcentration(value, unit);
    }

    private static Unit<MassConcentration> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(MassConcentration.class, Coherent.KILOGRAM_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<MassConcentration> NAMES = new UnitNames<MassConcentration>("mass concentration")
                .unit(GRAM_PER_LITRE)
                .unit(MILLIGRAM_PER_LITRE)
                .unit(MICROGRAM_PER_LITRE)
                .unit(KILOGRAM_PER_LITRE, "g/mL", "g/cm3")
                .unit(KILOGRAM_PER_CUBIC_METRE, "kg/m^3")
                .unit(MILLIGRAM_PER_CUBIC_METRE, "mg/m^3")
                .unit(GRAIN_PER_US_GALLON, "gpg")
                .unit(POUND_PER_US_GALLON)
                .ambiguous("grains per US gallon (write gr/gal(US)) or per imperial gallon", "gr/gal", "grains/gal")
                .ambiguous("pounds per US gallon (write lb/gal(US)) or per imperial gallon", "lb/gal", "lbs/gal")
                .ambiguous(
                        "mg/L in dilute water or mg/kg, which needs a density: see MassConcentration.ofMassFraction",
                        "ppm",
                        "mg/kg",
                        "ppb",
                        "µg/kg");
    }
}
