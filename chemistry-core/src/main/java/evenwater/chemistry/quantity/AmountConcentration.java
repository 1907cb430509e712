package evenwater.chemistry.quantity;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * Amount of one substance per volume.
 *
 * A milligram per litre of a substance is a unit of its amount too, made by the substance with the basis in its name: milligrams of
 * nitrate and of nitrate nitrogen are different units of the same kind. The room {@code substance} makes and reads them.
 *
 * <p>Immutable and thread-safe.
 */
public final class AmountConcentration extends WaterQuantity<AmountConcentration> {

    /** Mole per litre. */
    public static final Unit<AmountConcentration> MOLE_PER_LITRE =
            scale("mol/L", "mol/L", Definition.ONE.times(1000, "mmol", "mol"));

    /** Millimole per litre. */
    public static final Unit<AmountConcentration> MILLIMOLE_PER_LITRE = scale("mmol/L", "mmol/L", Definition.ONE);

    /** Micromole per litre. */
    public static final Unit<AmountConcentration> MICROMOLE_PER_LITRE =
            scale("µmol/L", "umol/L", Definition.ONE.over(1000, "µmol", "mmol"));

    /** Nanomole per litre. */
    public static final Unit<AmountConcentration> NANOMOLE_PER_LITRE =
            scale("nmol/L", "nmol/L", Definition.ONE.over(1000_000, "nmol", "mmol"));

    /** Mole per cubic metre; the same size as mmol/L. */
    public static final Unit<AmountConcentration> MOLE_PER_CUBIC_METRE = scale("mol/m³", "mol/m3", Definition.ONE);

    /**
     * Returns a mass of a basis per volume as a unit of amount: what a substance uses to make "mg/L N" of nitrate.
     *
     * <p>{@code 1 unit = mass / basisPerMole}. With a basis of 14.007 g of nitrogen for each mole of nitrate, 1 mg/L N is
     * 1/14.007 mmol/L.
     *
     * @param massUnit mass per volume, one of the units of {@link MassConcentration}
     * @param basis what is weighed, such as "N"; becomes part of the symbol
     * @param basisPerMole mass of the basis that stands for one mole of the substance; above 0
     * @return the unit, printed as {@code mg/L N}
     * @throws IllegalArgumentException if the mass is not positive
     */
    public static Unit<AmountConcentration> ofMass(
            Unit<MassConcentration> massUnit, String basis, Quantity<MolarMass> basisPerMole) {
        Objects.requireNonNull(basis, "basis");
        double gramsPerMole = MolarMass.from(basisPerMole).in(MolarMass.GRAM_PER_MOLE);
        if (!(gramsPerMole >= 1e-3 && gramsPerMole <= 1e5)) {
            throw new IllegalArgumentException(
                    "mass of " + basis + " must be from 0.001 to 100000 g/mol, but was " + basisPerMole);
        }
        KindScale<MassConcentration> mass =
                KindScale.of(massUnit, MassConcentration.class, Coherent.KILOGRAM_PER_CUBIC_METRE);
        return mass.amountUnit(basis, gramsPerMole);
    }

    private AmountConcentration(double value, Unit<AmountConcentration> unit) {
        super(value, unit, AmountConcentration.class, Coherent.MOLE_PER_CUBIC_METRE);
    }

    /**
     * Returns an amount concentration.
     *
     * @param value number in {@code unit}; finite; a negative one is a difference
     * @param unit a unit of amount concentration
     * @return the quantity as stated
     * @throws IllegalArgumentException if the value is NaN or infinite, or the unit is of another kind
     */
    public static AmountConcentration of(double value, Unit<AmountConcentration> unit) {
        return new AmountConcentration(value, unit);
    }

    /**
     * Returns any library's amount concentration as ours.
     *
     * @param quantity an amount concentration
     * @return the quantity itself if it is ours, else its value and unit
     * @throws IllegalArgumentException if it is of another kind
     */
    public static AmountConcentration from(Quantity<AmountConcentration> quantity) {
        return quantity instanceof AmountConcentration ours
                ? ours
                : adopt(quantity, AmountConcentration.class, AmountConcentration::of);
    }

    /**
     * Reads an amount concentration as people write it, such as {@code 0.3 mmol/L}.
     *
     * @param text a number with a decimal point and a unit
     * @return the quantity as stated
     * @throws UnreadableTextException if the number or the unit cannot be read, or the unit may be two
     */
    public static AmountConcentration parse(String text) {
        return QuantityText.parse(text, Text.NAMES, AmountConcentration::of);
    }

    /**
     * Returns the unit that a spelling means.
     *
     * @param spelling such as {@code µmol/L}; spaces and capitals make no difference
     * @return the unit
     * @throws UnreadableTextException if the spelling is unknown or may be two units
     */
    public static Unit<AmountConcentration> parseUnit(String spelling) {
        return Text.NAMES.find(spelling, 0);
    }

    /**
     * Returns all units of this kind that this class has.
     *
     * @return the units that are constants of this class, in their order
     */
    public static List<Unit<AmountConcentration>> units() {
        return Text.NAMES.units();
    }

    /**
     * Returns what a concentration weighs that is stated as a mass.
     *
     * @return such as "N" for {@code mg/L N}; empty for moles
     */
    public Optional<String> basis() {
        return scale().basis.isEmpty() ? Optional.empty() : Optional.of(scale().basis);
    }

    /**
     * Returns how much of its basis a concentration that is stated as a mass takes for a mole.
     *
     * @return mass of the basis per mole of the substance; empty for moles
     */
    public Optional<MolarMass> basisPerMole() {
        return scale().basis.isEmpty()
                ? Optional.empty()
                : Optional.of(MolarMass.of(scale().divisor, MolarMass.GRAM_PER_MOLE));
    }

    @Override
    AmountConcentration make(double value, Unit<AmountConcentration> unit) {
        return new AmountConcentration(value, unit);
    }

    private static Unit<AmountConcentration> scale(String symbol, String ucumCode, Definition definition) {
        return KindScale.unit(AmountConcentration.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, ucumCode, definition);
    }

    /** Loaded when text is read or units are listed, not before. */
    private static final class Text {
        static final UnitNames<AmountConcentration> NAMES = new UnitNames<AmountConcentration>("amount concentration")
                .unit(MOLE_PER_LITRE)
                .unit(MILLIMOLE_PER_LITRE)
                .unit(MICROMOLE_PER_LITRE)
                .unit(NANOMOLE_PER_LITRE)
                .unit(MOLE_PER_CUBIC_METRE, "mol/m^3")
                .hint("a mass such as mg/L needs the substance and the basis: ask the ion to read it");
    }
}
