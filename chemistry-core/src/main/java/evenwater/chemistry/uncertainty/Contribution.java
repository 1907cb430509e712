package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Objects;

/**
 * What one input adds to the uncertainty of a result.
 *
 * @param <Q> type of the result
 * @param input name of the input
 * @param sensitivity the slope of the result in this input: steps of the unit of the result for one step of the unit of the input
 * @param contribution the standard uncertainty of the result if the other inputs were exact: {@code |sensitivity| · u}; a difference
 * @param share part of the variance of the result; 0 to 1, all together 1; all 0 if the result has no uncertainty
 */
public record Contribution<Q extends WaterQuantity<?>>(String input, double sensitivity, Q contribution, double share) {

    /**
     * Checks that nothing is null.
     *
     * @param input see the record
     * @param sensitivity see the record
     * @param contribution see the record
     * @param share see the record
     */
    public Contribution {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(contribution, "contribution");
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of " + input + " must be from 0 to 1, but was " + share);
        }
    }
}
