package evenwater.chemistry.exchange;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;

/**
 * How much hardness a regeneration takes for its salt.
 *
 * @param shareOfTheory charges of hardness taken per charge of salt used; no unit; 0 or more, 1 where no salt is wasted (above it, hardness that was loaded before left the resin)
 */
public record SaltEfficiency(double shareOfTheory) {

    /**
     * Checks the share.
     *
     * @param shareOfTheory see the record
     */
    public SaltEfficiency {
        if (!(shareOfTheory >= 0 && shareOfTheory <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("salt efficiency must not be negative, but was " + shareOfTheory);
        }
    }

    /**
     * Returns the efficiency of a capacity that a dose of sodium chloride gives.
     *
     * @param capacity hardness taken per volume of resin; 0 or more
     * @param sodiumChloride salt used per volume of resin; above 0
     * @return the efficiency
     * @throws IllegalArgumentException if one is out of range
     */
    public static SaltEfficiency of(Quantity<ExchangeCapacity> capacity, Quantity<SaltDose> sodiumChloride) {
        double grams = SaltDose.from(sodiumChloride).in(SaltDose.GRAM_PER_LITRE);
        if (!(grams > 0)) {
            throw new IllegalArgumentException("salt dose must be positive, but was " + sodiumChloride);
        }
        double equivalents = ExchangeCapacity.from(capacity).in(ExchangeCapacity.EQUIVALENT_PER_LITRE);
        return new SaltEfficiency(equivalents * molarMass(Compound.SODIUM_CHLORIDE) / grams);
    }

    /**
     * Returns the efficiency as the trade states it; potassium chloride counts by its equivalents of sodium chloride, as NSF/ANSI 44 does.
     *
     * <p>{@code share · M(CaCO₃) / (2 M(NaCl))}: 5994 grains per pound where no salt is wasted.
     *
     * @return mass of hardness as CaCO₃ over mass of sodium chloride, in grains per pound
     */
    public WaterQuantity<Dimensionless> perSalt() {
        double mass = molarMass(Compound.CALCIUM_CARBONATE) / (2 * molarMass(Compound.SODIUM_CHLORIDE));
        return WaterUnits.share(
                WaterUnits.share(shareOfTheory * mass, WaterUnits.ONE).in(WaterUnits.GRAIN_PER_POUND),
                WaterUnits.GRAIN_PER_POUND);
    }

    /**
     * Tells whether the limit that a rule sets for salt is kept; the rule may ask for more.
     *
     * @param standard the rule
     * @return true at or above what it asks
     */
    public boolean meets(EfficiencyStandard standard) {
        return perSalt().compareTo(standard.least()) >= 0;
    }

    private static double molarMass(Compound compound) {
        return compound.molarMass().in(MolarMass.GRAM_PER_MOLE);
    }

    /** Returns both figures, rounded, such as {@code 3333 grain/lb, 55.6 % of theory}. */
    @Override
    public String toString() {
        return perSalt().toText(Locale.ROOT, 4) + ", "
                + WaterUnits.share(100 * shareOfTheory, WaterUnits.PERCENT).toText(Locale.ROOT, 3) + " of theory";
    }
}
