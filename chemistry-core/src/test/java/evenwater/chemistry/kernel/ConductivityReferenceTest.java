package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.testing.Csv;
import evenwater.chemistry.testing.Deviations;
import evenwater.chemistry.testing.IonicSolution;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Measured conductivities of salts against the mixture law on the species of the solver. */
class ConductivityReferenceTest {

    private static List<Map<String, String>> salts() {
        return Csv.rows("conductivity-salts.csv").stream()
                .filter(row -> measured(row) <= 5000)
                .toList();
    }

    private static double measured(Map<String, String> row) {
        return 1000 * number(row, "concentration [eq/L]") * number(row, "lambda [S cm2/eq]");
    }

    @ParameterizedTest
    @MethodSource("salts")
    void aSaltIsWithinThreePercent(Map<String, String> row) {
        assertEquals(0, saltDeviation(row), 0.03);
    }

    @Test
    void saltsTogetherAreWithinOnePercent() {
        Deviations all = Deviations.of(
                salts().stream().map(ConductivityReferenceTest::saltDeviation).toList());
        assertEquals(67, all.count());
        assertTrue(all.rms() <= 0.0085, "rms " + all.rms());
    }

    private static double saltDeviation(Map<String, String> row) {
        return Salt.valueOf(row.get("salt").replace("(", "").replace(")", ""))
                                .solution(number(row, "concentration [eq/L]"))
                                .conductivity()
                        / measured(row)
                - 1;
    }

    /** What the salts of the table are made of, for one equivalent. */
    private enum Salt {
        NaCl,
        KCl,
        HCl,
        NaOH,
        CaCl2,
        MgCl2,
        Na2SO4,
        KHCO3,
        BaCl2,
        SrCl2,
        NH4Cl,
        KNO3,
        CaOH2,
        NaHCO3;

        IonicSolution solution(double c) {
            IonicSolution solution = IonicSolution.at(25);
            switch (this) {
                case NaCl, NaOH, NaHCO3, Na2SO4 -> solution.with(Component.SODIUM, c);
                case KCl, KHCO3, KNO3 -> solution.with(Component.POTASSIUM, c);
                case CaCl2, CaOH2 -> solution.with(Component.CALCIUM, c / 2);
                case MgCl2 -> solution.with(Component.MAGNESIUM, c / 2);
                case BaCl2 -> solution.with(LimitingConductivity.BARIUM, c / 2);
                case SrCl2 -> solution.with(LimitingConductivity.STRONTIUM, c / 2);
                case NH4Cl -> solution.with(Component.AMMONIA, c);
                case HCl -> {
                    // its cation is taken off the alkalinity below
                }
            }
            if (name().contains("Cl")) {
                solution.with(LimitingConductivity.CHLORIDE, c);
            }
            return switch (this) {
                case HCl -> solution.solved(Given.ALKALINITY_AND_CARBON, -c, 0);
                case NaOH, CaOH2 -> solution.solved(Given.ALKALINITY_AND_CARBON, c, 0);
                case NaHCO3, KHCO3 -> solution.solved(Given.ALKALINITY_AND_CARBON, c, c);
                case Na2SO4 -> solution.with(Component.SULFATE, c / 2).solved(Given.ALKALINITY_AND_CARBON, 0, 0);
                case KNO3 -> solution.with(LimitingConductivity.NITRATE, c).solved(Given.ALKALINITY_AND_CARBON, 0, 0);
                default -> solution.solved(Given.ALKALINITY_AND_CARBON, 0, 0);
            };
        }
    }

    private static List<Map<String, String>> standards() {
        return Csv.rows("conductivity-kcl.csv");
    }

    @ParameterizedTest
    @MethodSource("standards")
    void potassiumChlorideIsWithinOnePercentFromFreezingToFiftyDegrees(Map<String, String> row) {
        double molality = number(row, "concentration [mol/kg]");
        double measured = number(row, "conductivity [uS/cm]");
        assertEquals(
                measured, IonicSolution.potassiumChloride(molality, number(row, "temperature [C]")), measured * 0.01);
    }

    private static List<Map<String, String>> computed() {
        return Csv.rows("computed-waters.csv");
    }

    /** A second implementation of the law with a fixed 4 Å; its conductivities of charged pairs are not known. */
    @ParameterizedTest
    @MethodSource("computed")
    void theLawIsThatOfASecondImplementation(Map<String, String> row) {
        double celsius = number(row, "temperature [C]");
        double alkalinity = number(row, "alkalinity [meq/L]") / 1000;
        double carbon = invented(celsius, row, false)
                .solved(Given.PH_AND_ALKALINITY, number(row, "pH"), alkalinity)
                .carbon();
        for (boolean softened : new boolean[] {false, true}) {
            double expected = number(row, softened ? "softened.EC25.onsagers [uS/cm]" : "EC25.onsagers [uS/cm]");
            IonicSolution at25 = invented(25, row, softened).solved(Given.ALKALINITY_AND_CARBON, alkalinity, carbon);
            assertEquals(expected, at25.conductivity(4), expected * 1e-3);
        }
    }

    private static IonicSolution invented(double celsius, Map<String, String> row, boolean softened) {
        double calcium = number(row, "Ca [mmol/L]") / 1000;
        double magnesium = number(row, "Mg [mmol/L]") / 1000;
        double sodium = number(row, "Na [mmol/L]") / 1000;
        return IonicSolution.at(celsius)
                .with(Component.CALCIUM, softened ? 0 : calcium)
                .with(Component.MAGNESIUM, softened ? 0 : magnesium)
                .with(Component.SODIUM, softened ? sodium + 2 * (calcium + magnesium) : sodium)
                .with(Component.POTASSIUM, number(row, "K [mmol/L]") / 1000)
                .with(Component.SULFATE, number(row, "SO4 [mmol/L]") / 1000)
                .with(LimitingConductivity.CHLORIDE, number(row, "Cl [mmol/L]") / 1000)
                .with(LimitingConductivity.NITRATE, number(row, "NO3 [mmol/L]") / 1000);
    }

    /** The factor of the standard is one for all waters; a soft, a usual and a hard one come within 2.5 % of it. */
    @ParameterizedTest(name = "{0} times the usual water")
    @CsvSource({"0.2", "1", "2"})
    void temperatureActsAsOnTheWatersOfIso7888(double strength) {
        double at25 = river(25, strength);
        for (Map<String, String> row : Csv.rows("iso-7888.csv")) {
            double factor = number(row, "f25");
            double ours = at25 / river(number(row, "temperature_C"), strength);
            assertEquals(factor, ours, factor * 0.025, row.toString());
        }
    }

    private static double river(double celsius, double strength) {
        return IonicSolution.at(celsius)
                .with(Component.CALCIUM, 1.5e-3 * strength)
                .with(Component.MAGNESIUM, 0.4e-3 * strength)
                .with(Component.SODIUM, 0.6e-3 * strength)
                .with(Component.POTASSIUM, 0.1e-3 * strength)
                .with(Component.SULFATE, 0.4e-3 * strength)
                .with(LimitingConductivity.CHLORIDE, 0.9e-3 * strength)
                .solved(Given.ALKALINITY_AND_CARBON, 2.8e-3 * strength, 2.95e-3 * strength)
                .conductivity();
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }
}
