package evenwater.chemistry.recipe;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Objects;

/**
 * How much of one ion there is for one of another, by amount or by mass: 2 : 1 of chloride to sulfate by amount is 0.738 : 1 by mass.
 *
 * @param ion the ion that is counted; a reference form
 * @param perIon the ion that is 1; another reference form
 * @param ratio the first over the second as stated; no unit; above 0 and finite
 * @param byMass true if the ratio is one of masses
 */
public record IonRatio(Ion ion, Ion perIon, double ratio, boolean byMass) {

    /**
     * Checks the parts.
     *
     * @param ion see the record
     * @param perIon see the record
     * @param ratio see the record
     * @param byMass see the record
     * @throws IllegalArgumentException if the ions are the same or have no total of their own, or the ratio is out of range
     */
    public IonRatio {
        Objects.requireNonNull(ion, "ion");
        Objects.requireNonNull(perIon, "perIon");
        Water.pure().total(ion); // refuses what is counted elsewhere
        Water.pure().total(perIon);
        if (ion.equals(perIon)) {
            throw new IllegalArgumentException("ratio of " + ion + " to itself says nothing");
        }
        if (!(ratio > 0 && ratio <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "ratio of " + ion + " to " + perIon + " must be positive, but was " + ratio);
        }
    }

    /**
     * Returns a ratio of amounts.
     *
     * @param ion the ion that is counted
     * @param perIon the ion that is 1
     * @param ratio mol per mol; no unit; above 0
     * @return the ratio
     * @throws IllegalArgumentException as the constructor
     */
    public static IonRatio byAmount(Ion ion, Ion perIon, double ratio) {
        return new IonRatio(ion, perIon, ratio, false);
    }

    /**
     * Returns a ratio of masses, of the ions as their formulas say: of sulfate as SO₄²⁻, of nitrate as NO₃⁻.
     *
     * @param ion the ion that is counted
     * @param perIon the ion that is 1
     * @param ratio g per g; no unit; above 0
     * @return the ratio
     * @throws IllegalArgumentException as the constructor
     */
    public static IonRatio byMass(Ion ion, Ion perIon, double ratio) {
        return new IonRatio(ion, perIon, ratio, true);
    }

    /**
     * Returns a ratio of calcium to magnesium.
     *
     * @param ratio by amount or by mass
     * @return the same ratio
     */
    public static IonRatio from(CalciumToMagnesium ratio) {
        return new IonRatio(Ion.CALCIUM, Ion.MAGNESIUM, ratio.ratio(), ratio.byMass());
    }

    /** What a ratio of amounts is multiplied by to be one of this kind. */
    private double perRatioOfAmounts() {
        return byMass ? ion.molarMass().ratioTo(perIon.molarMass()) : 1;
    }

    double ofAmounts() {
        return ratio / perRatioOfAmounts();
    }

    /** The same kind of ratio with another value, which is one of amounts. */
    IonRatio withAmounts(double ofAmounts) {
        return new IonRatio(ion, perIon, ofAmounts * perRatioOfAmounts(), byMass);
    }

    /** Returns the ratio with its kind, such as {@code 2 : 1 by amount}. */
    @Override
    public String toString() {
        String number = ratio == Math.rint(ratio) && ratio < 1e6 ? Long.toString((long) ratio) : Double.toString(ratio);
        return number + " : 1 " + (byMass ? "by mass" : "by amount");
    }
}
