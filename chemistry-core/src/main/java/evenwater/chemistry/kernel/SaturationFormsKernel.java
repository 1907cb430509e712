package evenwater.chemistry.kernel;

/**
 * Two forms of the calcium carbonate saturation index that need no solver: the textbook short form and the factor table of pool
 * operators.
 *
 * <p>They are approximations of their own: for the same water they differ from each other by up to 0.2 and below pH 9 from an index by activities by up to 0.46
 * (computed; more above, where CO₃²⁻ and OH⁻ take much of the alkalinity).
 * Calcium hardness and alkalinity are in mg/L as CaCO₃, and a water needs some of both.
 *
 * @see "Short form: Carrier Air Conditioning Company, Handbook of Air Conditioning System Design, McGraw-Hill, 1965 (from memory)"
 * @see "Factor table: training of pool operators (common practice; the temperatures are from memory)"
 */
public final class SaturationFormsKernel {

    /** Temperatures in °F of the factor table, and the factor at each. */
    private static final double[] FAHRENHEIT = {32, 37, 46, 53, 60, 66, 76, 84, 94, 105, 128};

    private static final double[] TEMPERATURE_FACTOR = {0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0};

    private SaturationFormsKernel() {}

    /**
     * Returns term A of the short form, for dissolved solids: {@code A = (lg S − 1) / 10}.
     *
     * @param solidsInMilligramsPerLitre dissolved solids S in mg/L; above 0
     * @return A; no unit
     */
    public static double shortFormSolidsTerm(double solidsInMilligramsPerLitre) {
        return (Math.log10(solidsInMilligramsPerLitre) - 1) / 10;
    }

    /**
     * Returns term B of the short form, for temperature: {@code B = 34.55 − 13.12 lg T}.
     *
     * @param temperatureInKelvin temperature T in K; 273.15 to 363.15. Some print {@code t + 273}, which makes B up to 0.004 higher
     * @return B; no unit
     */
    public static double shortFormTemperatureTerm(double temperatureInKelvin) {
        return 34.55 - 13.12 * Math.log10(temperatureInKelvin);
    }

    /**
     * Returns the factor of calcium hardness in both forms: {@code lg C − 0.4}.
     *
     * @param calciumInMilligramsCalciumCarbonate calcium hardness C in mg/L as CaCO₃; above 0
     * @return the factor; no unit
     */
    public static double calciumFactor(double calciumInMilligramsCalciumCarbonate) {
        return Math.log10(calciumInMilligramsCalciumCarbonate) - 0.4;
    }

    /**
     * Returns the factor of alkalinity in both forms: {@code lg M}.
     *
     * @param alkalinityInMilligramsCalciumCarbonate alkalinity M in mg/L as CaCO₃; above 0
     * @return the factor; no unit
     */
    public static double alkalinityFactor(double alkalinityInMilligramsCalciumCarbonate) {
        return Math.log10(alkalinityInMilligramsCalciumCarbonate);
    }

    /**
     * Returns the pH of saturation by the short form: {@code pHs = (9.3 + A + B) − (C + D)}.
     *
     * <p>The index is {@code pH − pHs}. Below pH 9 it lies up to 0.34 from the index by activities.
     *
     * @param solidsInMilligramsPerLitre dissolved solids in mg/L; above 0
     * @param temperatureInKelvin temperature in K; 273.15 to 363.15
     * @param calciumInMilligramsCalciumCarbonate calcium hardness in mg/L as CaCO₃; above 0
     * @param alkalinityInMilligramsCalciumCarbonate alkalinity in mg/L as CaCO₃; above 0
     * @return pHs; no unit
     */
    public static double shortFormSaturationPH(
            double solidsInMilligramsPerLitre,
            double temperatureInKelvin,
            double calciumInMilligramsCalciumCarbonate,
            double alkalinityInMilligramsCalciumCarbonate) {
        return 9.3
                + shortFormSolidsTerm(solidsInMilligramsPerLitre)
                + shortFormTemperatureTerm(temperatureInKelvin)
                - calciumFactor(calciumInMilligramsCalciumCarbonate)
                - alkalinityFactor(alkalinityInMilligramsCalciumCarbonate);
    }

    /**
     * Returns the temperature factor of the factor table, linear between its entries.
     *
     * @param fahrenheit temperature in °F; 32 to 128
     * @return the factor; no unit, 0 to 1
     */
    public static double factorTableTemperature(double fahrenheit) {
        int i = 1;
        while (i < FAHRENHEIT.length - 1 && fahrenheit > FAHRENHEIT[i]) {
            i++;
        }
        double share = (fahrenheit - FAHRENHEIT[i - 1]) / (FAHRENHEIT[i] - FAHRENHEIT[i - 1]);
        return TEMPERATURE_FACTOR[i - 1] + share * (TEMPERATURE_FACTOR[i] - TEMPERATURE_FACTOR[i - 1]);
    }

    /**
     * Returns the saturation index by the factor table: {@code SI = pH + TF + CF + AF − 12.1}.
     *
     * <p>12.1 stands for the dissolved solids of an ordinary pool, below some 1000 mg/L. Alkalinity is that of the carbonates: pool
     * operators first take off what cyanuric acid brings.
     *
     * @param pH no unit
     * @param fahrenheit temperature in °F; 32 to 128
     * @param calciumInMilligramsCalciumCarbonate calcium hardness in mg/L as CaCO₃; above 0
     * @param alkalinityInMilligramsCalciumCarbonate alkalinity in mg/L as CaCO₃; above 0
     * @return the index; no unit, 0 at saturation, positive where scale may form
     */
    public static double factorTableIndex(
            double pH,
            double fahrenheit,
            double calciumInMilligramsCalciumCarbonate,
            double alkalinityInMilligramsCalciumCarbonate) {
        return pH
                + factorTableTemperature(fahrenheit)
                + calciumFactor(calciumInMilligramsCalciumCarbonate)
                + alkalinityFactor(alkalinityInMilligramsCalciumCarbonate)
                - 12.1;
    }
}
