package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.quantity.EquivalentConcentration;
import java.util.Objects;

/**
 * The measured charges of a water on both sides.
 *
 * <p>Alkalinity counts as an anion; negative alkalinity, mineral acid, as a cation. What the sides differ by is the unmeasured charge
 * of the water: errors of measurement and ions that nobody measured.
 *
 * @param cations sum of the cations in meq/L
 * @param anions sum of the anions in meq/L, without sign
 */
public record IonBalance(EquivalentConcentration cations, EquivalentConcentration anions) {

    /**
     * Checks that both are there and none is negative.
     *
     * @param cations see the record; 0 or more
     * @param anions see the record; 0 or more
     */
    public IonBalance {
        refuseNegative(Objects.requireNonNull(cations, "cations"), "cations");
        refuseNegative(Objects.requireNonNull(anions, "anions"), "anions");
    }

    private static void refuseNegative(EquivalentConcentration sum, String name) {
        if (sum.getValue() < 0) {
            throw new IllegalArgumentException("sum of " + name + " must not be negative, but was " + sum);
        }
    }

    static IonBalance of(Balance balance) {
        double cations = Math.max(0, -balance.alkalinity);
        double anions = Math.max(0, balance.alkalinity);
        for (int i = 0; i < balance.ions().length; i++) {
            double charge = balance.ions()[i].chargeNumber() * balance.at(i);
            cations += Math.max(0, charge);
            anions += Math.max(0, -charge);
        }
        return new IonBalance(
                EquivalentConcentration.of(cations, MILLIEQUIVALENT_PER_LITRE),
                EquivalentConcentration.of(anions, MILLIEQUIVALENT_PER_LITRE));
    }

    /**
     * Returns cations minus anions.
     *
     * @return the difference in meq/L; positive where anions are missing
     */
    public EquivalentConcentration difference() {
        return cations.subtract(anions);
    }

    /**
     * Returns the difference in percent of the sum: {@code 100 (Σ cations − Σ anions) / (Σ cations + Σ anions)}.
     *
     * @return percent difference; no unit, −100 to 100; 0 for a water without ions
     * @see "Standard Methods for the Examination of Water and Wastewater, 1030 E (from memory)"
     */
    public double percentDifference() {
        double c = cations.in(MILLIEQUIVALENT_PER_LITRE);
        double a = anions.in(MILLIEQUIVALENT_PER_LITRE);
        return c + a == 0 ? 0 : 100 * ((c - a) / (c + a)); // in this order never beyond 100
    }
}
