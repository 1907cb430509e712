package evenwater.chemistry.kernel;

/**
 * The slow and sure way, where Newton's method finds nothing: pH and carbon always have a solution, so the unknown one of the two is
 * halved in between until the other figure is right.
 */
final class Bisection {

    private static final int HALVINGS = 200;
    private static final double LOWEST_PH = 1;
    private static final double HIGHEST_PH = 14;

    /** Search for carbon starts here, in mol/kg, and goes up by tens. */
    private static final double LITTLE_CARBON = 1e-12;

    private static final double MOST_CARBON = 10;

    /** Relative to what it is compared with; far below what any figure is known to. */
    private static final double TOLERANCE = 5e-13;

    private Bisection() {}

    static int search(SpeciationState state, ActivityLaw law, Given given, double first, double second) {
        boolean byCarbon = given == Given.PH_AND_ALKALINITY;
        boolean byAlkalinity = given.alkalinity;
        double low = byCarbon ? 0 : LOWEST_PH;
        double high = byCarbon ? LITTLE_CARBON : HIGHEST_PH;
        double wanted = byAlkalinity ? given.alkalinity(first, second) : second;
        if (!(lack(state, law, given, first, second, low, wanted) >= 0)) {
            return SpeciationKernel.NO_SUCH_WATER;
        }
        while (!(lack(state, law, given, first, second, high, wanted) <= 0)) {
            if (!byCarbon || high > MOST_CARBON) {
                return SpeciationKernel.NO_SUCH_WATER;
            }
            low = high;
            high *= 10;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = byCarbon && low > 0 ? Math.sqrt(low * high) : (low + high) / 2;
            double lack = lack(state, law, given, first, second, middle, wanted);
            if (Double.isNaN(lack)) {
                return SpeciationKernel.NOT_CONVERGED;
            }
            double scale =
                    byAlkalinity ? Math.max(state.sums[MassBalances.GROSS_ALKALINITY], Math.abs(wanted)) : wanted;
            if (Math.abs(lack) <= TOLERANCE * scale) {
                return SpeciationKernel.CONVERGED;
            }
            if (lack > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return SpeciationKernel.NOT_CONVERGED;
    }

    /** What the wanted figure has more than this try; falls with pH and with carbon, but for CO₂, which is turned round. NaN on failure. */
    private static double lack(
            SpeciationState state,
            ActivityLaw law,
            Given given,
            double first,
            double second,
            double tried,
            double wanted) {
        boolean byCarbon = given == Given.PH_AND_ALKALINITY;
        double pH = byCarbon ? first : tried;
        double carbon = byCarbon ? tried : given.carbon(first, second);
        Given simple = given == Given.ALKALINITY_AND_CARBON_DIOXIDE ? Given.PH_AND_CARBON_DIOXIDE : Given.PH_AND_CARBON;
        double other = simple == Given.PH_AND_CARBON ? carbon : second;
        Guess.write(state, simple, pH, other);
        if (SelfConsistency.reach(state, law, simple, pH, other) != SpeciationKernel.CONVERGED) {
            return Double.NaN;
        }
        return given == Given.CARBON_AND_CARBON_DIOXIDE
                ? state.carbonDioxideActivity() - wanted
                : wanted - state.sums[MassBalances.ALKALINITY];
    }
}
