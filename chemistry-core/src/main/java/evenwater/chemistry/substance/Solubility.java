package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.WaterUnits.GRAM_PER_KILOGRAM;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
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
        if (sold.hasSameAtomsAs(basis)) {
            return WaterUnits.share(massPerMassOfWater.in(GRAM_PER_KILOGRAM), GRAM_PER_KILOGRAM);
        }
        double r = basis.molarMassInGramsPerMole() / sold.molarMassInGramsPerMole();
        if (!isHydrate(sold)) {
            throw new IllegalArgumentException(sold + " is not " + basis + " nor a hydrate of it");
        }
        double s = massPerMassOfWater.in(WaterUnits.ONE);
        double rest = r - s * (1 - r);
        if (rest <= 0) {
            throw new IllegalArgumentException(sold + " dissolves in its own water of crystallisation in any amount");
        }
        return WaterUnits.share(s / rest * 1000, GRAM_PER_KILOGRAM);
    }

    private boolean isHydrate(Formula sold) {
        double water = sold.count(Element.OXYGEN) - basis.count(Element.OXYGEN);
        return Basis.sameAtomsButHydrogenAndOxygen(basis, sold)
                && water >= 0
                && sold.count(Element.HYDROGEN) - basis.count(Element.HYDROGEN) == 2 * water;
    }
}
