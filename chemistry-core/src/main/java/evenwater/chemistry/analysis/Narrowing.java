package evenwater.chemistry.analysis;

import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import java.util.Objects;

/**
 * By how much one more test would narrow what a kit leaves open.
 *
 * <p>The result of the test is not known yet, so several results are tried, evenly from the least to the most that the readings allow. The
 * mean of the widths left tells which test is worth most; the widest range left is what it is worth at worst.
 *
 * @param test the test
 * @param wanted what is asked for
 * @param before the range without the test
 * @param after the widest range that the test may leave; where it lies hangs on the result
 * @param meanWidthLeft mean width of the ranges left over the width before; no unit; 1 where the test tells nothing, or where there is nothing
 *     to narrow
 */
public record Narrowing(
        ExtraTest test,
        KitQuantity wanted,
        ReadingInterval<EquivalentConcentration> before,
        ReadingInterval<EquivalentConcentration> after,
        double meanWidthLeft) {

    /**
     * Checks that nothing is missing.
     *
     * @param test see the record
     * @param wanted see the record
     * @param before see the record
     * @param after see the record
     * @param meanWidthLeft see the record
     */
    public Narrowing {
        Objects.requireNonNull(test, "test");
        Objects.requireNonNull(wanted, "wanted");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        if (!(meanWidthLeft >= 0)) {
            throw new IllegalArgumentException("mean width left must be 0 or more, but was " + meanWidthLeft);
        }
    }

    /**
     * Returns the advice in words, such as {@code a sodium test would narrow sodium from 0 to 57.9 mg/L Na⁺ to 15 % of that on average, to 39.1
     * to 47.8 mg/L Na⁺ at worst}.
     */
    @Override
    public String toString() {
        return "a " + test + " would narrow " + wanted + " from " + KitIons.text(wanted, before) + " to "
                + Math.round(100 * meanWidthLeft) + " % of that on average, to " + KitIons.text(wanted, after)
                + " at worst";
    }
}
