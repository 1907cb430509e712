package evenwater.chemistry.kernel;

/**
 * The estimate of conductivity at 25 °C in Standard Methods 2510 A, from analytical totals without ion pairs.
 *
 * <p>For comparison: it runs 8 to 18 % low in waters of sodium chloride and has 6 % rms on natural waters. Use {@link OnsagerFuoss} for
 * answers.
 *
 * @see "Standard Methods for the Examination of Water and Wastewater, 2510 A (from memory)"
 */
public final class StandardMethods2510Kernel {

    private static final double LN_10 = Math.log(10);

    private StandardMethods2510Kernel() {}

    /**
     * Returns the conductivity that the ions had at infinite dilution.
     *
     * <p>{@code k° = Σ |z| λ0 c}.
     *
     * @param n how many ions to read from the arrays
     * @param millimolesPerLitre totals c in mmol/L; 0 or more
     * @param chargeNumber charge numbers z; no unit
     * @param limitingConductivity λ0 at 25 °C in S cm²/eq
     * @return k° in µS/cm
     */
    public static double microsiemensPerCentimetreAtInfiniteDilution(
            int n, double[] millimolesPerLitre, double[] chargeNumber, double[] limitingConductivity) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += Math.abs(chargeNumber[i]) * limitingConductivity[i] * millimolesPerLitre[i];
        }
        return sum;
    }

    /**
     * Returns the factor that stands for the effect of ions on each other: a squared activity coefficient.
     *
     * <p>{@code y² = 10^(−(√I / (1 + √I) − 0.3 I))} with {@code I = Σ z² c / 2000}, for I below 0.5 mol/L.
     *
     * @param n how many ions to read from the arrays
     * @param millimolesPerLitre totals c in mmol/L; 0 or more
     * @param chargeNumber charge numbers z; no unit
     * @return y²; no unit
     */
    public static double squaredActivityCoefficient(int n, double[] millimolesPerLitre, double[] chargeNumber) {
        double strength = 0;
        for (int i = 0; i < n; i++) {
            strength += chargeNumber[i] * chargeNumber[i] * millimolesPerLitre[i] / 2000;
        }
        double root = Math.sqrt(strength);
        return Math.exp(-LN_10 * (root / (1 + root) - 0.3 * strength));
    }

    /**
     * Returns the conductivity at 25 °C.
     *
     * <p>{@code k = k° y²}.
     *
     * @param n how many ions to read from the arrays
     * @param millimolesPerLitre totals c in mmol/L; 0 or more
     * @param chargeNumber charge numbers z; no unit
     * @param limitingConductivity λ0 at 25 °C in S cm²/eq
     * @return k in µS/cm
     */
    public static double microsiemensPerCentimetre(
            int n, double[] millimolesPerLitre, double[] chargeNumber, double[] limitingConductivity) {
        return microsiemensPerCentimetreAtInfiniteDilution(n, millimolesPerLitre, chargeNumber, limitingConductivity)
                * squaredActivityCoefficient(n, millimolesPerLitre, chargeNumber);
    }
}
