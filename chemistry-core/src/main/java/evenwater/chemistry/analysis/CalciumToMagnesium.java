package evenwater.chemistry.analysis;

import evenwater.chemistry.substance.Ion;

/**
 * How much calcium there is for one magnesium, by amount or by mass: 3 : 1 by amount is 4.95 : 1 by mass.
 *
 * @param ratio calcium over magnesium as stated; no unit; above 0 and finite
 * @param byMass true if the ratio is one of masses
 */
public record CalciumToMagnesium(double ratio, boolean byMass) {

    /**
     * Checks the ratio.
     *
     * @param ratio see the record
     * @param byMass see the record
     */
    public CalciumToMagnesium {
        if (!(ratio > 0 && ratio <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("ratio of calcium to magnesium must be positive, but was " + ratio);
        }
    }

    /**
     * Returns a ratio of amounts.
     *
     * @param ratio mol of calcium per mol of magnesium; no unit; above 0
     * @return the ratio
     */
    public static CalciumToMagnesium byAmount(double ratio) {
        return new CalciumToMagnesium(ratio, false);
    }

    /**
     * Returns a ratio of masses.
     *
     * @param ratio g of calcium per g of magnesium; no unit; above 0
     * @return the ratio
     */
    public static CalciumToMagnesium byMass(double ratio) {
        return new CalciumToMagnesium(ratio, true);
    }

    /**
     * Returns the share of calcium in the hardness.
     *
     * @return amount of calcium over amount of both; no unit, 0 to 1
     */
    public double shareOfCalcium() {
        double amounts = byMass ? ratio * Ion.MAGNESIUM.molarMass().ratioTo(Ion.CALCIUM.molarMass()) : ratio;
        return amounts / (1 + amounts);
    }

    /** Returns the ratio with its kind, such as {@code 3 : 1 by amount}. */
    @Override
    public String toString() {
        String number = ratio == Math.rint(ratio) && ratio < 1e6 ? Long.toString((long) ratio) : Double.toString(ratio);
        return number + " : 1 " + (byMass ? "by mass" : "by amount");
    }
}
