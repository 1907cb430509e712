package evenwater.chemistry.kernel;

/**
 * Published water-quality criteria for aquatic life on plain doubles: total ammonia against pH and temperature, copper against hardness.
 *
 * <p>Functions of ammonia are stated for pH 6.5 to 9 and 0 to 30 °C (the ranges of their tables, from memory).
 *
 * @see "US EPA, 1999 Update of Ambient Water Quality Criteria for Ammonia, EPA-822-R-99-014 (equations read in a public rule that
 *     quotes them)"
 * @see "US EPA, Aquatic Life Ambient Water Quality Criteria for Ammonia - Freshwater, EPA-822-R-13-001, 2013 (from memory)"
 * @see "US EPA, 1995 Updates: Water Quality Criteria Documents for the Protection of Aquatic Life in Ambient Water, EPA-820-B-96-001,
 *     1996 (from memory)"
 */
public final class AquaticLifeKernel {

    private static final double LN_10 = Math.log(10);

    private AquaticLifeKernel() {}

    /**
     * Returns the acute criterion of 1999 where salmonids are present: {@code 0.275/(1 + 10^(7.204−pH)) + 39.0/(1 + 10^(pH−7.204))}.
     *
     * @param pH no unit; 6.5 to 9
     * @return total ammonia in mg/L as N
     */
    public static double acuteAmmonia1999SalmonidsPresent(double pH) {
        return ofPH(pH, 7.204, 0.275, 39.0);
    }

    /**
     * Returns the acute criterion of 1999 where salmonids are absent: {@code 0.411/(1 + 10^(7.204−pH)) + 58.4/(1 + 10^(pH−7.204))}.
     *
     * @param pH no unit; 6.5 to 9
     * @return total ammonia in mg/L as N
     */
    public static double acuteAmmonia1999SalmonidsAbsent(double pH) {
        return ofPH(pH, 7.204, 0.411, 58.4);
    }

    /**
     * Returns the chronic criterion of 1999 where early life stages of fish are present.
     *
     * <p>{@code (0.0577/(1 + 10^(7.688−pH)) + 2.487/(1 + 10^(pH−7.688))) · min(2.85, 1.45 · 10^(0.028 (25−t)))}
     *
     * @param pH no unit; 6.5 to 9
     * @param celsius temperature t in °C; 0 to 30
     * @return total ammonia in mg/L as N
     */
    public static double chronicAmmonia1999EarlyStagesPresent(double pH, double celsius) {
        return ofPH(pH, 7.688, 0.0577, 2.487) * Math.min(2.85, 1.45 * tenTo(0.028 * (25 - celsius)));
    }

    /**
     * Returns the chronic criterion of 1999 where early life stages of fish are absent.
     *
     * <p>{@code (0.0577/(1 + 10^(7.688−pH)) + 2.487/(1 + 10^(pH−7.688))) · 1.45 · 10^(0.028 (25−max(t, 7)))}
     *
     * @param pH no unit; 6.5 to 9
     * @param celsius temperature t in °C; 0 to 30
     * @return total ammonia in mg/L as N
     */
    public static double chronicAmmonia1999EarlyStagesAbsent(double pH, double celsius) {
        return ofPH(pH, 7.688, 0.0577, 2.487) * 1.45 * tenTo(0.028 * (25 - Math.max(celsius, 7)));
    }

    /**
     * Returns the acute criterion of 2013 where salmonids are present.
     *
     * <p>{@code min(C, P · 23.12 · 10^(0.036 (20−t)))} with C the acute criterion of 1999 where salmonids are present and
     * {@code P = 0.7249 (0.0114/(1 + 10^(7.204−pH)) + 1.6181/(1 + 10^(pH−7.204)))}; 23.12 stands for mussels.
     *
     * @param pH no unit; 6.5 to 9
     * @param celsius temperature t in °C; 0 to 30
     * @return total ammonia in mg/L as N
     */
    public static double acuteAmmonia2013SalmonidsPresent(double pH, double celsius) {
        return Math.min(acuteAmmonia1999SalmonidsPresent(pH), shapeOf2013(pH) * musselsOf2013(celsius));
    }

    /**
     * Returns the acute criterion of 2013 where salmonids are absent: {@code P · min(51.93, 23.12 · 10^(0.036 (20−t)))}.
     *
     * <p>{@code P = 0.7249 (0.0114/(1 + 10^(7.204−pH)) + 1.6181/(1 + 10^(pH−7.204)))}; 23.12 stands for mussels, 51.93 for fish.
     *
     * @param pH no unit; 6.5 to 9
     * @param celsius temperature t in °C; 0 to 30
     * @return total ammonia in mg/L as N
     */
    public static double acuteAmmonia2013SalmonidsAbsent(double pH, double celsius) {
        return shapeOf2013(pH) * Math.min(51.93, musselsOf2013(celsius));
    }

    /**
     * Returns the chronic criterion of 2013.
     *
     * <p>{@code 0.8876 (0.0278/(1 + 10^(7.688−pH)) + 1.1994/(1 + 10^(pH−7.688))) · 2.126 · 10^(0.028 (20−max(t, 7)))}
     *
     * @param pH no unit; 6.5 to 9
     * @param celsius temperature t in °C; 0 to 30
     * @return total ammonia in mg/L as N
     */
    public static double chronicAmmonia2013(double pH, double celsius) {
        return 0.8876 * ofPH(pH, 7.688, 0.0278, 1.1994) * 2.126 * tenTo(0.028 * (20 - Math.max(celsius, 7)));
    }

    private static double shapeOf2013(double pH) {
        return 0.7249 * ofPH(pH, 7.204, 0.0114, 1.6181);
    }

    private static double musselsOf2013(double celsius) {
        return 23.12 * tenTo(0.036 * (20 - celsius));
    }

    /**
     * Returns the acute copper criterion of 1995 by hardness: {@code 0.960 · exp(0.9422 ln H − 1.700)}.
     *
     * @param hardnessInMilligramsCalciumCarbonate hardness H in mg/L as CaCO₃; 25 to 400
     * @return dissolved copper in µg/L
     */
    public static double acuteCopper1995(double hardnessInMilligramsCalciumCarbonate) {
        return 0.960 * Math.exp(0.9422 * Math.log(hardnessInMilligramsCalciumCarbonate) - 1.700);
    }

    /**
     * Returns the chronic copper criterion of 1995 by hardness: {@code 0.960 · exp(0.8545 ln H − 1.702)}.
     *
     * @param hardnessInMilligramsCalciumCarbonate hardness H in mg/L as CaCO₃; 25 to 400
     * @return dissolved copper in µg/L
     */
    public static double chronicCopper1995(double hardnessInMilligramsCalciumCarbonate) {
        return 0.960 * Math.exp(0.8545 * Math.log(hardnessInMilligramsCalciumCarbonate) - 1.702);
    }

    /** {@code alkaline/(1 + 10^(pK−pH)) + acid/(1 + 10^(pH−pK))} by one power. */
    private static double ofPH(double pH, double pK, double alkaline, double acid) {
        double x = tenTo(pK - pH);
        return (alkaline + acid * x) / (1 + x);
    }

    private static double tenTo(double exponent) {
        return Math.exp(exponent * LN_10);
    }
}
