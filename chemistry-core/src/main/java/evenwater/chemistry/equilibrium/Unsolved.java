package evenwater.chemistry.equilibrium;

import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** Says in words why the solver has no answer. */
final class Unsolved {

    private Unsolved() {}

    static NoAnswerException exception(
            Water water, int status, Given given, double first, double second, SpeciationState state) {
        String figures = figures(given, first, second);
        return switch (status) {
            case SpeciationKernel.NO_SUCH_WATER ->
                new NoAnswerException("no water with these ions at " + water.temperature() + " can have " + figures
                        + ": the two contradict each other");
            case SpeciationKernel.BAD_INPUT ->
                new NoAnswerException("the equilibrium of a water with " + figures
                        + " cannot be computed: amounts must be from 0 to 20 mol/L each, and pH from 0 to 14");
            default ->
                Double.isInfinite(state.residual())
                        ? new NoAnswerException("the equilibrium of a water with " + figures
                                + " cannot be computed: its ions would be far too strong")
                        : new NoAnswerException(
                                "the equilibrium of a water with " + figures + " did not converge after "
                                        + state.iterations() + " iterations, relative residual " + state.residual());
        };
    }

    private static String figures(Given given, double first, double second) {
        return switch (given) {
            case PH_AND_ALKALINITY -> "pH " + first + " and " + alkalinity(second);
            case PH_AND_CARBON -> "pH " + first + " and inorganic carbon " + amount(second);
            case PH_AND_CARBON_DIOXIDE -> "pH " + first + " and CO₂ " + amount(second);
            case ALKALINITY_AND_CARBON -> alkalinity(first) + " and inorganic carbon " + amount(second);
            case ALKALINITY_AND_CARBON_DIOXIDE -> alkalinity(first) + " and CO₂ " + amount(second);
            case CARBON_AND_CARBON_DIOXIDE -> "inorganic carbon " + amount(first) + " and CO₂ " + amount(second);
        };
    }

    private static String alkalinity(double equivalents) {
        return "alkalinity "
                + Alkalinity.of(equivalents / SolverInput.MOLES_PER_MILLIMOLE, Alkalinity.MILLIEQUIVALENT_PER_LITRE)
                        .toText(Locale.ROOT, 6);
    }

    private static String amount(double moles) {
        return SolverInput.concentration(moles).toText(Locale.ROOT, 6);
    }
}
