package evenwater.chemistry.kernel;

/** How ammonia divides between NH₄⁺ and NH₃, on plain doubles. */
public final class AmmoniaKernel {

    private static final double LN_10 = Math.log(10);

    private AmmoniaKernel() {}

    /**
     * Returns the un-ionised fraction of the ammonia in fresh water, by concentrations alone.
     *
     * <p>{@code f = 1 / (1 + 10^(pKa − pH))} with {@code pKa = 0.09018 + 2729.92 / T}. Activity is left out, as in the tables for fresh
     * water; the salts of a tap water lower f by 5 to 11 % of itself.
     *
     * @param pH no unit; 0 to 14
     * @param temperatureInKelvin temperature T in K; 273.15 to 323.15
     * @return NH₃ over NH₃ and NH₄⁺; no unit, above 0 and below 1
     * @see "K. Emerson, R. C. Russo, R. E. Lund and R. V. Thurston, Aqueous ammonia equilibrium calculations: effect of pH and
     *     temperature, J. Fish. Res. Board Can. 32 (1975) 2379 (coefficients read in public copies that cite it)"
     */
    public static double unionisedFraction(double pH, double temperatureInKelvin) {
        return 1 / (1 + Math.exp(-EquilibriumConstant.AMMONIUM.ln(temperatureInKelvin) - pH * LN_10));
    }
}
