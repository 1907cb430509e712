package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeciationKernelTest {

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({ // pH(S) of Staples and Bates 1969; a reference file worked without sodium pairs finds the same within
        // 0.016
        "0, 10.317",
        "20, 10.062",
        "25, 10.012",
        "30, 9.966",
        "50, 9.828"
    })
    void carbonateBufferWithoutPairs(double celsius, double expected) {
        SpeciationState state = new SpeciationState();
        state.temperature(celsius + 273.15);
        state.inert(0.075); // sodium as an ion that forms no pairs
        solve(state, Given.ALKALINITY_AND_CARBON, 0.075, 0.050);
        assertEquals(expected, pH(state), 0.02);
    }

    /** The constant of NaCO₃⁻ (1.27) is doubtful: with it the buffer of 0.075 mol/kg of sodium lies 0.14 below its pH(S) of 10.012. */
    @Test
    void carbonateBufferWithSodiumPairs() {
        SpeciationState state = new SpeciationState();
        state.total(Component.SODIUM, 0.075);
        solve(state, Given.ALKALINITY_AND_CARBON, 0.075, 0.050);
        assertEquals(10.012 - 0.144, pH(state), 0.002);
    }

    @Test
    void idealSodiumCarbonate() { // 1e-3 mol/L Na₂CO₃ by h³ + … with K2 10^-10.329 and Kw 10^-14: 10.56; activities
        // take 0.02
        SpeciationState state = new SpeciationState();
        solve(state, Given.ALKALINITY_AND_CARBON, 2e-3, 1e-3);
        assertEquals(10.56, pH(state), 0.03);
    }

    @Test
    void seaWaterConverges() {
        SpeciationState state = new SpeciationState();
        state.total(Component.CALCIUM, 0.01066);
        state.total(Component.MAGNESIUM, 0.05474);
        state.total(Component.SODIUM, 0.48606);
        state.total(Component.POTASSIUM, 0.01058);
        state.total(Component.SULFATE, 0.02926);
        state.total(Component.BORATE, 0.000431);
        state.inert(0.5658);
        solve(state, Given.ALKALINITY_AND_CARBON, 0.00239, 0.00208);
        assertTrue(state.residual() <= 1e-12);
        assertEquals(0.67, state.ionicStrength(), 0.06); // 0.72 without pairs
        assertEquals(8.1, pH(state), 0.3); // the stated loss of accuracy
    }

    @Test
    void carbonThatTheAlkalinityCannotHoldIsNoWater() {
        SpeciationState state = new SpeciationState();
        assertEquals(
                SpeciationKernel.NO_SUCH_WATER,
                SpeciationKernel.solve(state, ActivityLaw.DAVIES, Given.PH_AND_ALKALINITY, 10, 1e-5));
        assertEquals(
                SpeciationKernel.NO_SUCH_WATER,
                SpeciationKernel.solve(state, ActivityLaw.DAVIES, Given.CARBON_AND_CARBON_DIOXIDE, 1e-3, 2e-3));
    }

    @ParameterizedTest
    @CsvSource({"NaN, 0.001", "0.001, NaN", "Infinity, 0.001", "0.001, -0.001", "30, 0.001"})
    void badInputIsSaid(double alkalinity, double carbon) {
        SpeciationState state = new SpeciationState();
        assertEquals(
                SpeciationKernel.BAD_INPUT,
                SpeciationKernel.solve(
                        state, ActivityLaw.TRUESDELL_JONES, Given.ALKALINITY_AND_CARBON, alkalinity, carbon));
        assertEquals(Double.POSITIVE_INFINITY, state.residual());
    }

    @Test
    void aStateIsAsGoodAsNewForTheNextWater() {
        SpeciationState used = new SpeciationState();
        used.total(Component.PHOSPHATE, 1e-3);
        used.total(Component.SULFATE, 1e-2);
        solve(used, Given.ALKALINITY_AND_CARBON, 3e-3, 1e-3);
        used.total(Component.PHOSPHATE, 0);
        used.total(Component.SULFATE, 0);
        SpeciationState fresh = new SpeciationState();
        solve(used, Given.ALKALINITY_AND_CARBON, 2e-3, 2e-3);
        solve(fresh, Given.ALKALINITY_AND_CARBON, 2e-3, 2e-3);
        for (Species s : Species.values()) {
            assertEquals(fresh.molality(s), used.molality(s), s::symbol);
        }
    }

    private static void solve(SpeciationState state, Given given, double first, double second) {
        assertEquals(
                SpeciationKernel.CONVERGED,
                SpeciationKernel.solve(state, ActivityLaw.TRUESDELL_JONES, given, first, second));
    }

    private static double pH(SpeciationState state) {
        return -state.lnAcid() / Math.log(10);
    }
}
