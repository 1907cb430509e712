package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Objects;

/**
 * An interval that holds a result with a probability.
 *
 * @param <Q> type of the result
 * @param low the lower end
 * @param high the upper end
 * @param probability the coverage probability; above 0 and below 1
 */
public record CoverageInterval<Q extends WaterQuantity<?>>(Q low, Q high, double probability) {

    /**
     * Checks order and probability.
     *
     * @param low see the record
     * @param high see the record
     * @param probability see the record
     */
    public CoverageInterval {
        Objects.requireNonNull(low, "low");
        Objects.requireNonNull(high, "high");
        if (!(new Stated<>(high).read(low) <= high.getValue())) {
            throw new IllegalArgumentException("ends must be in order, but were " + low + " and " + high);
        }
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must be between 0 and 1, but was " + probability);
        }
    }

    /** Returns both ends with all digits and the probability, for logs. */
    @Override
    public String toString() {
        return low + " to " + high + " with probability " + probability;
    }
}
