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

    /**
     * Sea water of salinity 35 at 25 °C with alkalinity 2.30 and carbon 2.00 mmol/kg: 396 µatm of CO₂, total-scale pH 8.046, calcite 5.13 times
     * saturated, by the constants of Lueker et al. 2000, Weiss 1974, Dickson 1990, Millero 1995 and Mucci 1983 (all from memory). The
     * differences are the loss of accuracy that the solver states.
     */
    @Test
    void seaWaterWithItsStatedLossOfAccuracy() {
        double perKilogramOfWater = 1 / 0.965;
        SpeciationState state = new SpeciationState();
        state.total(Component.CALCIUM, 0.01028 * perKilogramOfWater);
        state.total(Component.MAGNESIUM, 0.05282 * perKilogramOfWater);
        state.total(Component.SODIUM, 0.46906 * perKilogramOfWater);
        state.total(Component.POTASSIUM, 0.01021 * perKilogramOfWater);
        state.total(Component.SULFATE, 0.02824 * perKilogramOfWater);
        state.total(Component.BORATE, 0.0004157 * perKilogramOfWater);
        state.total(Component.FLUORIDE, 0.000068 * perKilogramOfWater);
        state.inert((0.54586 + 0.00084 + 4 * 0.00009) * perKilogramOfWater); // Cl⁻, Br⁻, Sr²⁺
        solve(state, Given.ALKALINITY_AND_CARBON, 0.00230 * perKilogramOfWater, 0.00200 * perKilogramOfWater);
        assertTrue(state.residual() <= 1e-12);
        double henry = Math.exp(state.lnConstant(EquilibriumConstant.CARBON_DIOXIDE_GAS));
        assertEquals(-0.13, state.carbonDioxideActivity() / henry / 395.8e-6 - 1, 0.01);
        double acid = (state.molality(Species.HYDROGEN) + state.molality(Species.BISULFATE)) / perKilogramOfWater;
        assertEquals(-0.01, -Math.log10(acid) - 8.046, 0.005);
        double product = state.molality(Species.CALCIUM)
                * state.gamma(Species.CALCIUM)
                * state.molality(Species.CARBONATE)
                * state.gamma(Species.CARBONATE);
        double index = (Math.log(product) - state.lnConstant(EquilibriumConstant.CALCITE)) / Math.log(10);
        assertEquals(0.05, index - Math.log10(5.13), 0.005);
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
