package evenwater.chemistry.kernel;

/** Ionic strength and activity coefficients that agree with the species they make: a secant around {@link NewtonBalance}. */
final class SelfConsistency {

    private static final int SECANT_ROUNDS = 14;
    private static final int BISECTION_ROUNDS = 80;

    /** Far beyond every model of activity, in mol/kg. */
    private static final double HIGHEST = 20;

    /** Relative; rounding of the sum over species is some 1e-15. */
    private static final double TOLERANCE = 2e-13;

    /** Relative; what a search that ends between neighbouring doubles must have reached. */
    private static final double ACCEPTED = 1e-12;

    private static final double[] CHARGE_SQUARED = new double[SpeciationState.SPECIES];

    static {
        for (Species s : Species.values()) {
            CHARGE_SQUARED[s.place()] = (double) s.chargeNumber() * s.chargeNumber();
        }
    }

    private SelfConsistency() {}

    /** Starts from the unknowns in the state and leaves the solution there. */
    static int reach(SpeciationState state, ActivityLaw law, Given given, double first, double second) {
        double at = Guess.ionicStrength(state, given, first, second);
        double before = at;
        double lackBefore = 0;
        for (int round = 0; round < SECANT_ROUNDS; round++) {
            // far from the ionic strength there is no use in exact balances
            double small = round == 0 ? 0.1 : round == 1 ? 1e-4 : NewtonBalance.SMALL_STEP;
            int status = NewtonBalance.solve(state, given, first, second, small, law, at);
            if (status != SpeciationKernel.CONVERGED) {
                return status;
            }
            double found = ionicStrength(state);
            double lack = found - at;
            if (round > 1 && Math.abs(lack) <= TOLERANCE * at) {
                return SpeciationKernel.CONVERGED;
            }
            double next = found;
            if (round > 0 && lack != lackBefore) {
                double secant = at - lack * (at - before) / (lack - lackBefore);
                if (Math.abs(secant - found) <= found) { // a wild secant is worth less than the last value
                    next = secant;
                }
            }
            before = at;
            lackBefore = lack;
            at = Math.min(HIGHEST, next);
        }
        return bisect(state, law, given, first, second);
    }

    private static int bisect(SpeciationState state, ActivityLaw law, Given given, double first, double second) {
        double low = 0;
        double high = HIGHEST;
        for (int round = 0; round < BISECTION_ROUNDS; round++) {
            double at = (low + high) / 2;
            int status = NewtonBalance.solve(state, given, first, second, NewtonBalance.SMALL_STEP, law, at);
            if (status != SpeciationKernel.CONVERGED) {
                return status;
            }
            double lack = ionicStrength(state) - at;
            if (Math.abs(lack) <= ACCEPTED * at) {
                return SpeciationKernel.CONVERGED;
            }
            if (lack > 0) {
                low = at;
            } else {
                high = at;
            }
        }
        return SpeciationKernel.NOT_CONVERGED;
    }

    private static double ionicStrength(SpeciationState state) {
        double[] m = state.molality;
        double sum0 = state.values[SpeciationState.INERT];
        double sum1 = 0; // four sums wait for each other less than one
        double sum2 = 0;
        double sum3 = 0;
        int count = state.speciesCount();
        int i = 0;
        for (; i + 3 < count; i += 4) {
            sum0 += CHARGE_SQUARED[i] * m[i];
            sum1 += CHARGE_SQUARED[i + 1] * m[i + 1];
            sum2 += CHARGE_SQUARED[i + 2] * m[i + 2];
            sum3 += CHARGE_SQUARED[i + 3] * m[i + 3];
        }
        for (; i < count; i++) {
            sum0 += CHARGE_SQUARED[i] * m[i];
        }
        return (sum0 + sum1 + (sum2 + sum3)) / 2;
    }
}
