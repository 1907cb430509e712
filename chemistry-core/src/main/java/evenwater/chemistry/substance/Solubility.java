package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.WaterUnits.GRAM_PER_KILOGRAM;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;

/**
 * How much of something dissolves in pure water, with the basis that the figure weighs.
 *
 * <p>Handbooks state grams per kilogram of water, not of solution, and for hydrates often the anhydrous salt: 745 g of anhydrous
 * CaCl₂ per kg of water is not 745 g of the dihydrate, which also brings water of its own.
 *
 * @param massPerMassOfWater mass of the basis per mass of water in the saturated solution, such as 745 g/kg; above 0
 * @param basis what is weighed, with or without its water of crystallisation
 * @param temperature of the saturated solution
 * @param note what the source adds; possibly empty
 */
public record Solubility(
        WaterQuantity<Dimensionless> massPerMassOfWater,
        Formula basis,
        WaterQuantity<Temperature> temperature,
        String note) {

    /** Density of water at 20 °C in kg/L, from memory: solutions of salt are denser. */
    private static final double LIGHTEST = 0.998;

    /**
     * Checks the parts.
     *
     * @param massPerMassOfWater mass of the basis per mass of water
     * @param basis what is weighed
     * @param temperature of the saturated solution
     * @param note what the source adds
     */
    public Solubility {
        Objects.requireNonNull(massPerMassOfWater, "massPerMassOfWater");
        if (!(massPerMassOfWater.in(WaterUnits.ONE) > 0)) {
            throw new IllegalArgumentException("solubility must be positive, but was " + massPerMassOfWater);
        }
        Objects.requireNonNull(basis, "basis");
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(note, "note");
    }

    /**
     * Returns how much of the substance as sold dissolves per mass of water that is poured to it.
     *
     * <p>With s the solubility per mass of water, r the mass of one formula unit of the basis over that of the substance, the
     * substance brings (1 − r) of its mass as water: {@code x = s / (r − s (1 − r))}. If the basis is the substance, x = s.
     *
     * @param sold formula of what is weighed out, the basis itself or a hydrate of it
     * @return mass of {@code sold} per mass of added water in g/kg
     * @throws IllegalArgumentException if the substance dissolves in its own water of crystallisation in any amount, or is not a
     *     hydrate of the basis
     */
    public WaterQuantity<Dimensionless> of(Formula sold) {
        double grams = gramsPerKilogram(sold);
        if (grams == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException(sold + " dissolves in its own water of crystallisation in any amount");
        }
        return WaterUnits.share(grams, GRAM_PER_KILOGRAM);
    }

    /** Infinite where the substance dissolves in its own water of crystallisation. */
    private double gramsPerKilogram(Formula sold) {
        if (sold.hasSameAtomsAs(basis)) {
            return massPerMassOfWater.in(GRAM_PER_KILOGRAM);
        }
        double r = basis.molarMassInGramsPerMole() / sold.molarMassInGramsPerMole();
        if (!isHydrate(sold)) {
            throw new IllegalArgumentException(sold + " is not " + basis + " nor a hydrate of it");
        }
        double s = massPerMassOfWater.in(WaterUnits.ONE);
        double rest = r - s * (1 - r);
        return rest <= 0 ? Double.POSITIVE_INFINITY : s / rest * 1000;
    }

    /**
     * Tells whether so much of the substance as sold dissolves in a finished solution of a litre, without knowing its density.
     *
     * <p>With x the grams of {@link #of} per kg of added water, the saturated solution holds {@code ρ x / (1 + x/1000)} g/L. A solution of salt is
     * denser than water, 0.998 kg/L at 20 °C (handbook figure, from memory), so up to 0.998 x / (1 + x/1000) g/L surely dissolve. A litre of
     * solution holds less than 1 kg of added water, even where ions draw water together, so more than x g/L surely do not. Between the two
     * the density decides: of sodium chloride 263.6 to 359 g/L are undecided, and 317 g/L saturate.
     *
     * @param sold formula of what is weighed out, the basis itself or a hydrate of it
     * @param inSolution mass of {@code sold} per volume of finished solution; 0 or more
     * @return whether it dissolves; it does in any amount if the substance dissolves in its own water of crystallisation
     * @throws IllegalArgumentException if the concentration is negative, or {@code sold} is not a hydrate of the basis
     */
    public Dissolving dissolving(Formula sold, Quantity<MassConcentration> inSolution) {
        double grams = MassConcentration.from(inSolution).in(MassConcentration.GRAM_PER_LITRE);
        if (!(grams >= 0)) {
            throw new IllegalArgumentException(
                    "concentration of " + sold + " must not be negative, but was " + inSolution);
        }
        double most = gramsPerKilogram(sold);
        double sure = most == Double.POSITIVE_INFINITY ? most : LIGHTEST * most / (1 + most / 1000);
        return grams <= sure
                ? Dissolving.DISSOLVES
                : grams > most ? Dissolving.DOES_NOT_DISSOLVE : Dissolving.MAY_NOT_DISSOLVE;
    }

    private boolean isHydrate(Formula sold) {
        double water = sold.count(Element.OXYGEN) - basis.count(Element.OXYGEN);
        return Basis.sameAtomsButHydrogenAndOxygen(basis, sold)
                && water >= 0
                && sold.count(Element.HYDROGEN) - basis.count(Element.HYDROGEN) == 2 * water;
    }
}
