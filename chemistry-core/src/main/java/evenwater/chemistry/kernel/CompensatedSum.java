package evenwater.chemistry.kernel;

/**
 * Sums of products whose terms nearly cancel, as the charges of a water do.
 *
 * <p>Neumaier's variant of Kahan summation: the rounding error of each addition is carried in a second double, so the result is as
 * exact as if it had been summed in about twice the precision and rounded once.
 *
 * @see "A. Neumaier, Rundungsfehleranalyse einiger Verfahren zur Summation endlicher Summen, Z. Angew. Math. Mech. 54 (1974) 39"
 */
public final class CompensatedSum {

    private CompensatedSum() {}

    /**
     * Returns {@code Σ weight[i] · value[i]} with compensated rounding.
     *
     * @param weight small integers such as charge numbers; no unit; the products with {@code value} should be exact or nearly so
     * @param value amounts, any one unit; same length as {@code weight}
     * @return the sum in the unit of {@code value}; 0 for empty arrays
     * @throws IllegalArgumentException if the lengths differ
     */
    public static double ofProducts(double[] weight, double[] value) {
        if (weight.length != value.length) {
            throw new IllegalArgumentException(
                    "weights and values must be as many, but were " + weight.length + " and " + value.length);
        }
        double sum = 0;
        double lost = 0;
        for (int i = 0; i < value.length; i++) {
            double term = weight[i] * value[i];
            double next = sum + term;
            lost += Math.abs(sum) >= Math.abs(term) ? (sum - next) + term : (term - next) + sum;
            sum = next;
        }
        return sum + lost;
    }
}
