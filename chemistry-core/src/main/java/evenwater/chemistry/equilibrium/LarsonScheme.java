package evenwater.chemistry.equilibrium;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;

/**
 * Who calls which Larson ratio corrosive to steel: bounds in print, each with its own figures.
 *
 * <p>A ratio within 1e-9 of a bound is on it and belongs to the middle class. All bounds are from memory.
 */
public enum LarsonScheme {
    /**
     * Low below 0.2, moderate to 0.5, high above: after Larson and Skold 1958, Corrosion 14, 285. Authors who cite them end the middle
     * class anywhere from 0.4 to 1.
     */
    LARSON_AND_SKOLD_1958(0.2, 0.5),

    /** Low below 0.8, moderate to 1.2, high above: a study of Great Lakes waters, without a source that could be named. */
    GREAT_LAKES(0.8, 1.2);

    /** A bound that is reached by arithmetic misses the last digits. */
    private static final double ROUNDING = 1e-9;

    private final double low;
    private final double high;

    LarsonScheme(double low, double high) {
        this.low = low;
        this.high = high;
    }

    /**
     * Returns the class of a water.
     *
     * @param water with chloride or sulfate, and an alkalinity above 0
     * @return "low", "moderate" or "high"
     * @throws NoAnswerException if the water has no {@linkplain CorrosionRatios#larson Larson ratio}
     */
    public String classOf(Water water) {
        return classOf(CorrosionRatios.larson(water));
    }

    /**
     * Returns the class of a ratio.
     *
     * @param ratio {@linkplain CorrosionRatios#larson Larson ratio}; no unit; 0 or more
     * @return "low", "moderate" or "high"
     * @throws IllegalArgumentException if the ratio is negative or not a number
     */
    public String classOf(double ratio) {
        if (!(ratio >= 0)) {
            throw new IllegalArgumentException("Larson ratio must be 0 or more, but was " + ratio);
        }
        if (ratio < low * (1 - ROUNDING)) {
            return "low";
        }
        return ratio <= high * (1 + ROUNDING) ? "moderate" : "high";
    }
}
