package evenwater.chemistry.kernel;

/**
 * Finds the molality of every species of a water: ions, pairs and weak acids, with activity coefficients at the ionic strength that
 * the species themselves make.
 *
 * <p>Inside, at a fixed ionic strength, Newton's method in logarithms on at most three sums ({@link MassBalances}); outside, a secant on
 * the ionic strength, kept between bounds. Charge balances because totals and alkalinity do: for every water {@code Σ z m} is the charge of
 * the totals less the alkalinity. One exponential for each kind of ion and round; nothing is allocated.
 *
 * <p>Made for 0 to 50 °C, pH 3 to 11 and ionic strengths to 0.1 mol/kg. In sea water (0.7 mol/kg) at 25 °C, against the constants made for sea
 * water alone: partial pressure of CO₂ 13 % low, −lg of the total H⁺ 0.01 low, calcite index 0.05 high.
 */
public final class SpeciationKernel {

    /** All balances hold to 1e-12. */
    public static final int CONVERGED = 0;

    /** No water has these two figures, for example less carbon than its alkalinity at that pH takes. */
    public static final int NO_SUCH_WATER = 1;

    /** The iteration did not reach 1e-12; {@link SpeciationState#residual} tells how far it came. */
    public static final int NOT_CONVERGED = 2;

    /** An input was no finite number or negative where that has no meaning. */
    public static final int BAD_INPUT = 3;

    /** Far beyond every model of activity, in mol/kg. */
    private static final double HIGHEST = 20;

    private static final double TOLERANCE = 1e-12;

    private SpeciationKernel() {}

    /**
     * Solves a water.
     *
     * @param state temperature, totals and inert ions; receives the solution
     * @param law of the activity coefficients
     * @param given what the next two figures are
     * @param first pH, or alkalinity or carbon in mol/kg, as {@code given} names them in this order
     * @param second alkalinity, carbon or activity of CO₂, in mol/kg
     * @return {@link #CONVERGED} or why not; never an exception, and never a silent NaN
     */
    public static int solve(SpeciationState state, ActivityLaw law, Given given, double first, double second) {
        state.values[SpeciationState.ITERATIONS] = 0;
        state.values[SpeciationState.RESIDUAL] = Double.POSITIVE_INFINITY;
        if (!usable(state, given, first, second)) {
            return BAD_INPUT;
        }
        state.prepare();
        Guess.write(state, given, first, second);
        int status = SelfConsistency.reach(state, law, given, first, second);
        if (status == CONVERGED) {
            return judge(state, given, first, second);
        }
        if (given == Given.PH_AND_CARBON || given == Given.PH_AND_CARBON_DIOXIDE) {
            return status;
        }
        status = Bisection.search(state, law, given, first, second);
        return status == CONVERGED ? judge(state, given, first, second) : status;
    }

    private static boolean usable(SpeciationState state, Given given, double first, double second) {
        for (double total : state.totals) {
            if (!(total >= 0 && total <= HIGHEST)) {
                return false;
            }
        }
        double inert = state.values[SpeciationState.INERT];
        double kelvin = state.constants().kelvin;
        return inert >= 0
                && inert <= HIGHEST
                && Math.abs(first) <= HIGHEST
                && Math.abs(second) <= HIGHEST
                && kelvin >= 273.15 - 1e-9
                && kelvin <= 373.15 + 1e-9
                && (given == Given.PH_AND_ALKALINITY || second >= 0)
                && (given != Given.CARBON_AND_CARBON_DIOXIDE || first >= 0);
    }

    private static int judge(SpeciationState state, Given given, double first, double second) {
        double residual = residual(state, given, first, second);
        state.values[SpeciationState.RESIDUAL] = residual;
        return residual <= TOLERANCE ? CONVERGED : NOT_CONVERGED;
    }

    static double residual(SpeciationState state, Given given, double first, double second) {
        double[] sums = state.sums;
        double worst = 0;
        if (given.alkalinity) {
            double alkalinity = given.alkalinity(first, second);
            double gross = Math.max(sums[MassBalances.GROSS_ALKALINITY], Math.abs(alkalinity));
            worst = Math.abs(sums[MassBalances.ALKALINITY] - alkalinity) / gross;
        }
        if (given.carbon) {
            worst = Math.max(worst, relative(sums[MassBalances.CARBON], given.carbon(first, second)));
        }
        double sulfate = state.totals[Component.SULFATE.place()];
        return sulfate > 0 ? Math.max(worst, relative(sums[MassBalances.SULFATE], sulfate)) : worst;
    }

    private static double relative(double found, double wanted) {
        return found == wanted ? 0 : Math.abs(found - wanted) / wanted;
    }
}
