package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.testing.Csv;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Twelve waters of a second implementation with the same constants: rounding of the constants decides how near the two come. */
class ComputedWatersReferenceTest {

    /** What conserved quantities and carbonates agree to, relative. */
    private static final double SAME = 2e-6;

    /** Relative: products with calcium, at a slope of Debye and Hückel that differs by 1e-5. */
    private static final double PAIRS = 1e-5;

    /** A slope that differs by 1e-5 moves lg γ of HCO₃⁻ by 1e-6 to 2e-6 at the 0.03 to 0.045 mol/kg of the brackish waters. */
    private static final double PH = 3e-6;

    private static List<Map<String, String>> waters() {
        return Csv.rows("computed-waters.csv");
    }

    @ParameterizedTest
    @MethodSource("waters")
    void truesdellAndJones(Map<String, String> row) {
        SpeciationState state = state(row);
        double pH = number(row, "pH");
        double alkalinity = number(row, "alkalinity [meq/L]") / 1000;
        solve(state, ActivityLaw.TRUESDELL_JONES, Given.PH_AND_ALKALINITY, pH, alkalinity);
        same(row, "tj.I [mol/kg]", state.ionicStrength(), SAME);
        same(row, "tj.DIC [mmol/kg]", state.carbon() * 1000, SAME);
        same(row, "tj.pCO2 [atm]", pressure(state), SAME);
        same(row, "tj.m.CO2 [mmol/kg]", state.molality(Species.CARBON_DIOXIDE) * 1000, SAME);
        same(row, "tj.m.HCO3 [mmol/kg]", state.molality(Species.BICARBONATE) * 1000, SAME);
        same(row, "tj.m.CO3 [mmol/kg]", state.molality(Species.CARBONATE) * 1000, PAIRS);
        if (number(row, "Ca [mmol/L]") > 0) {
            same(row, "tj.m.Ca [mmol/kg]", state.molality(Species.CALCIUM) * 1000, SAME);
            same(row, "tj.m.CaHCO3 [mmol/kg]", state.molality(Species.CALCIUM_BICARBONATE) * 1000, PAIRS);
            same(row, "tj.m.CaSO4 [mmol/kg]", state.molality(Species.CALCIUM_SULFATE) * 1000, PAIRS);
            same(row, "tj.m.MgSO4 [mmol/kg]", state.molality(Species.MAGNESIUM_SULFATE) * 1000, PAIRS);
            assertEquals(number(row, "tj.SI.calcite"), index(state, EquilibriumConstant.CALCITE), PAIRS / 2);
            assertEquals(number(row, "tj.SI.aragonite"), index(state, EquilibriumConstant.ARAGONITE), PAIRS / 2);
        }
        double carbon = state.carbon();
        solve(state, ActivityLaw.TRUESDELL_JONES, Given.ALKALINITY_AND_CARBON, alkalinity, carbon);
        assertEquals(pH, pH(state), 1e-12);

        double air = 420e-6 * Math.exp(state.lnConstant(EquilibriumConstant.CARBON_DIOXIDE_GAS));
        solve(state, ActivityLaw.TRUESDELL_JONES, Given.ALKALINITY_AND_CARBON_DIOXIDE, alkalinity, air);
        assertEquals(number(row, "tj.open420.pH"), pH(state), PH);

        double softened = 2 * (number(row, "Ca [mmol/L]") + number(row, "Mg [mmol/L]")) + number(row, "Na [mmol/L]");
        state.total(Component.CALCIUM, 0);
        state.total(Component.MAGNESIUM, 0);
        state.total(Component.SODIUM, softened / 1000);
        solve(state, ActivityLaw.TRUESDELL_JONES, Given.ALKALINITY_AND_CARBON, alkalinity, carbon);
        assertEquals(number(row, "tj.softened.pH"), pH(state), PH);
    }

    @ParameterizedTest
    @MethodSource("waters")
    void davies(Map<String, String> row) {
        SpeciationState state = state(row);
        double alkalinity = number(row, "alkalinity [meq/L]") / 1000;
        solve(state, ActivityLaw.DAVIES, Given.PH_AND_ALKALINITY, number(row, "pH"), alkalinity);
        same(row, "davies.pCO2 [atm]", pressure(state), SAME);
        if (number(row, "Ca [mmol/L]") > 0) {
            assertEquals(number(row, "davies.SI.calcite"), index(state, EquilibriumConstant.CALCITE), PAIRS / 2);
        }
    }

    private static SpeciationState state(Map<String, String> row) {
        SpeciationState state = new SpeciationState();
        state.temperature(number(row, "temperature [C]") + 273.15);
        state.total(Component.CALCIUM, number(row, "Ca [mmol/L]") / 1000);
        state.total(Component.MAGNESIUM, number(row, "Mg [mmol/L]") / 1000);
        state.total(Component.SODIUM, number(row, "Na [mmol/L]") / 1000);
        state.total(Component.POTASSIUM, number(row, "K [mmol/L]") / 1000);
        state.total(Component.SULFATE, number(row, "SO4 [mmol/L]") / 1000);
        state.inert((number(row, "Cl [mmol/L]") + number(row, "NO3 [mmol/L]")) / 1000);
        return state;
    }

    private static void solve(SpeciationState state, ActivityLaw law, Given given, double first, double second) {
        assertEquals(SpeciationKernel.CONVERGED, SpeciationKernel.solve(state, law, given, first, second));
    }

    private static void same(Map<String, String> row, String column, double actual, double relative) {
        double expected = number(row, column);
        assertEquals(expected, actual, expected * relative, column);
    }

    private static double index(SpeciationState state, EquilibriumConstant mineral) {
        double product = state.molality(Species.CALCIUM)
                * state.gamma(Species.CALCIUM)
                * state.molality(Species.CARBONATE)
                * state.gamma(Species.CARBONATE);
        return (Math.log(product) - state.lnConstant(mineral)) / Math.log(10);
    }

    private static double pressure(SpeciationState state) {
        return state.carbonDioxideActivity() / Math.exp(state.lnConstant(EquilibriumConstant.CARBON_DIOXIDE_GAS));
    }

    private static double pH(SpeciationState state) {
        return -state.lnAcid() / Math.log(10);
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
