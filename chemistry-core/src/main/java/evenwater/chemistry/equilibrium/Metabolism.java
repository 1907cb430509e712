package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import javax.measure.Quantity;

/**
 * What animals, plants and bacteria do to the ions of a water, as electroneutral changes.
 *
 * <p>Living things take up and give off ions against H⁺, so alkalinity moves with nitrogen: food that ends as 10 mg/L of nitrate costs about 0.45
 * °dKH, and plants that take the nitrate up give it back. Carbon, phosphorus and sulfur of the food, and whatever a filter stores, are
 * left out unless a method names them.
 */
public final class Metabolism {

    private Metabolism() {}

    /**
     * Returns the change by which bacteria turn ammonium into nitrate: {@code NH₄⁺ + 2 O₂ → NO₃⁻ + 2 H⁺ + H₂O}.
     *
     * @param ammonium that is oxidised; 0 or more
     * @return the change; two equivalents of alkalinity go for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change nitrifying(Quantity<AmountConcentration> ammonium) {
        double n = amount(Ion.AMMONIUM, ammonium);
        return change(n, Map.of(Ion.AMMONIUM, -1, Ion.NITRATE, 1, Ion.HYDROGEN, 2));
    }

    /**
     * Returns the change by which food ends as nitrate: {@code N(organic) → NO₃⁻ + H⁺}, over ammonia that bacteria oxidise.
     *
     * @param nitrate that is made; 0 or more
     * @return the change; one equivalent of alkalinity goes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change nitrateFromFood(Quantity<AmountConcentration> nitrate) {
        double n = amount(Ion.NITRATE, nitrate);
        return change(n, Map.of(Ion.NITRATE, 1, Ion.HYDROGEN, 1));
    }

    /**
     * Returns the change by which animals give off ammonia: {@code N(organic) → NH₃}, counted as NH₄⁺.
     *
     * @param ammonium ammonia and ammonium together; 0 or more
     * @return the change; one equivalent of alkalinity comes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change ammoniaFromFood(Quantity<AmountConcentration> ammonium) {
        double n = amount(Ion.AMMONIUM, ammonium);
        return change(n, Map.of(Ion.AMMONIUM, 1, Ion.HYDROGEN, -1));
    }

    /**
     * Returns the change by which plants take up nitrate, with a proton for each: {@code NO₃⁻ + H⁺ → N(organic)}.
     *
     * @param nitrate that is taken up; 0 or more
     * @return the change; one equivalent of alkalinity comes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change takingUpNitrate(Quantity<AmountConcentration> nitrate) {
        return nitrateFromFood(nitrate).times(-1);
    }

    /**
     * Returns the change by which plants take up ammonium and give off a proton: {@code NH₄⁺ → N(organic) + H⁺}.
     *
     * @param ammonium that is taken up; 0 or more
     * @return the change; one equivalent of alkalinity goes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change takingUpAmmonium(Quantity<AmountConcentration> ammonium) {
        return ammoniaFromFood(ammonium).times(-1);
    }

    /**
     * Returns the change by which plants take up phosphate, as H₂PO₄⁻ with a proton.
     *
     * @param phosphate that is taken up, counted as H₂PO₄⁻; 0 or more
     * @return the change; one equivalent of alkalinity comes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change takingUpPhosphate(Quantity<AmountConcentration> phosphate) {
        double n = amount(Ion.DIHYDROGEN_PHOSPHATE, phosphate);
        return change(n, Map.of(Ion.DIHYDROGEN_PHOSPHATE, -1, Ion.HYDROGEN, -1));
    }

    /**
     * Returns the change by which plants take up potassium and give off a proton.
     *
     * @param potassium that is taken up; 0 or more
     * @return the change; one equivalent of alkalinity goes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change takingUpPotassium(Quantity<AmountConcentration> potassium) {
        double n = amount(Ion.POTASSIUM, potassium);
        return change(n, Map.of(Ion.POTASSIUM, -1, Ion.HYDROGEN, 1));
    }

    /**
     * Returns the change by which bacteria without oxygen turn nitrate into nitrogen gas: {@code NO₃⁻ + H⁺ → ½ N₂ + …}.
     *
     * @param nitrate that is lost; 0 or more
     * @return the change; one equivalent of alkalinity comes for each mole
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change denitrifying(Quantity<AmountConcentration> nitrate) {
        return takingUpNitrate(nitrate);
    }

    /**
     * Returns the change by breathing: CO₂ comes, nothing else.
     *
     * @param carbonDioxide that is given off; 0 or more
     * @return the change; no alkalinity
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change breathing(Quantity<AmountConcentration> carbonDioxide) {
        return change(amount(Ion.CARBON_DIOXIDE, carbonDioxide), Map.of(Ion.CARBON_DIOXIDE, 1));
    }

    /**
     * Returns the change by photosynthesis: CO₂ goes, nothing else. Plants that take their carbon from HCO₃⁻ come to the same.
     *
     * @param carbonDioxide that is taken up; 0 or more
     * @return the change; no alkalinity
     * @throws IllegalArgumentException if the amount is negative
     */
    public static Change takingUpCarbonDioxide(Quantity<AmountConcentration> carbonDioxide) {
        return breathing(carbonDioxide).times(-1);
    }

    private static double amount(Ion ion, Quantity<AmountConcentration> stated) {
        Objects.requireNonNull(stated, ion.name());
        double millimoles = ion.concentration(stated).in(MILLIMOLE_PER_LITRE);
        if (!(millimoles >= 0)) {
            throw new IllegalArgumentException("amount of " + ion.name() + " must not be negative, but was " + stated);
        }
        return millimoles;
    }

    /** So many of each ion for each of the amount. */
    private static Change change(double amount, Map<Ion, Integer> numbers) {
        SortedMap<Ion, AmountConcentration> moved = new TreeMap<>();
        numbers.forEach((ion, n) -> moved.put(ion, AmountConcentration.of(amount * n, MILLIMOLE_PER_LITRE)));
        return Change.of(moved);
    }
}
