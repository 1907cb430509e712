package evenwater.examples.rooms;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Component;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import java.util.Locale;

/** The room of plain arithmetic: the pH of a water from numbers alone. */
public final class KernelRoom {

    private KernelRoom() {}

    /**
     * Prints a pH, solved without quantities.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        SpeciationState state = new SpeciationState(); // one for each thread, used again and again
        state.temperature(298.15); // kelvin
        state.total(Component.CALCIUM, 1.5e-3); // mol per kg of water
        state.total(Component.SODIUM, 1.0e-3);
        state.inert(2.0e-3); // chloride counts by its ionic strength alone: the sum of z² m

        int status =
                SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, Given.ALKALINITY_AND_CARBON, 2.0e-3, 2.1e-3);

        System.out.println(status == SpeciationKernel.CONVERGED);
        System.out.printf(Locale.ROOT, "pH %.2f%n", -state.lnAcid() / Math.log(10));
        // end
    }
}
