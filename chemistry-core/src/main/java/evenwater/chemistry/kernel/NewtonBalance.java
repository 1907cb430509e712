package evenwater.chemistry.kernel;

/** Newton's method in logarithms for the sums of {@link MassBalances}, at one ionic strength. */
final class NewtonBalance {

    /** A step this small leaves an error of its square. */
    static final double SMALL_STEP = 1e-8;

    private static final int STEPS = 100;

    /** Steps in logarithms are cut to this: a factor of 55. */
    private static final double LONGEST_STEP = 4;

    /** No water has unknowns beyond these logarithms. */
    private static final double FARTHEST_ACID = 100;

    private static final double FARTHEST_CARBON_DIOXIDE = 700;

    private NewtonBalance() {}

    /** Starts from the unknowns in the state, and leaves them and all species there. */
    static int solve(
            SpeciationState state,
            Given given,
            double first,
            double second,
            double smallStep,
            ActivityLaw law,
            double ionicStrength) {
        double[] values = state.values;
        double[] sums = state.sums;
        values[SpeciationState.IONIC_STRENGTH] = ionicStrength;
        TemperatureConstants constants = state.constants();
        law.fill(ionicStrength, constants.debyeHueckelA, constants.debyeHueckelB, state.gamma, state.speciesCount());
        ConditionalConstants.fill(state);
        double sulfate = state.totals[Component.SULFATE.place()];
        boolean hasCarbon = given.hasCarbon(second);
        double u = -values[SpeciationState.LN_ACID];
        double v = values[SpeciationState.LN_CARBON_DIOXIDE];
        double w = values[SpeciationState.LN_SULFATE];
        double h = values[SpeciationState.ACID];
        double a = hasCarbon ? values[SpeciationState.CARBON_DIOXIDE] : 0;
        double s = sulfate > 0 ? values[SpeciationState.SULFATE] : 0;
        double size = Double.MAX_VALUE;
        for (int step = 0; step <= STEPS; step++) {
            values[SpeciationState.ITERATIONS]++;
            MassBalances.evaluate(state, h, a, s, !(size <= smallStep));
            if (size <= smallStep) {
                values[SpeciationState.LN_ACID] = -u;
                values[SpeciationState.LN_CARBON_DIOXIDE] = hasCarbon ? v : Double.NEGATIVE_INFINITY;
                values[SpeciationState.LN_SULFATE] = w;
                values[SpeciationState.ACID] = h;
                values[SpeciationState.CARBON_DIOXIDE] = a;
                values[SpeciationState.SULFATE] = s;
                return SpeciationKernel.CONVERGED;
            }
            double aa = sums[MassBalances.AA];
            double ac = sums[MassBalances.AC];
            double cc = sums[MassBalances.CC];
            double lackA = given.alkalinity ? given.alkalinity(first, second) - sums[MassBalances.ALKALINITY] : 0;
            double lackC = given.carbon ? given.carbon(first, second) - sums[MassBalances.CARBON] : 0;
            double as = 0;
            double cs = 0;
            double lackS = 0;
            if (sulfate > 0) { // always solved for: take it out first
                double perSulfate = 1 / sums[MassBalances.SS];
                lackS = (sulfate - sums[MassBalances.SULFATE]) * perSulfate;
                as = sums[MassBalances.AS] * perSulfate;
                cs = sums[MassBalances.CS] * perSulfate;
                aa -= as * sums[MassBalances.AS];
                ac -= as * sums[MassBalances.CS];
                cc -= cs * sums[MassBalances.CS];
                lackA -= sums[MassBalances.AS] * lackS;
                lackC -= sums[MassBalances.CS] * lackS;
            }
            double du = 0;
            double dv = 0;
            if (!given.acid && !given.carbonDioxide && hasCarbon) {
                double share = ac / cc;
                du = cut((lackA - share * lackC) / (aa - share * ac));
                dv = cut((lackC - ac * du) / cc);
            } else if (!given.acid) {
                du = cut(given.alkalinity ? lackA / aa : lackC / ac);
            } else if (!given.carbonDioxide && hasCarbon) {
                dv = cut(given.alkalinity ? lackA / ac : lackC / cc);
            }
            double dw = cut(lackS - as * du - cs * dv);
            u += du;
            v += dv;
            w += dw;
            size = Math.max(Math.abs(du), Math.max(Math.abs(dv), Math.abs(dw)));
            if (!(size <= LONGEST_STEP) // so that NaN leaves too
                    || Math.abs(u) > FARTHEST_ACID
                    || (hasCarbon && Math.abs(v) > FARTHEST_CARBON_DIOXIDE)) {
                return SpeciationKernel.NO_SUCH_WATER;
            }
            // what is known stays: no exponential for it
            h = given.acid ? h : Math.exp(-u);
            a = given.carbonDioxide || !hasCarbon ? a : Math.exp(v);
            s = sulfate > 0 ? Math.exp(w) : 0;
        }
        return SpeciationKernel.NOT_CONVERGED;
    }

    /** By comparisons, which cost less than minimum and maximum; NaN stays. */
    private static double cut(double step) {
        return step > LONGEST_STEP ? LONGEST_STEP : step < -LONGEST_STEP ? -LONGEST_STEP : step;
    }
}
