package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.kernel.EquilibriumConstant;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Washing soda closed to the air: the weak base of the textbooks, and how far activities and pairs lead from it. */
class SodiumCarbonateTest {

    private static final double MOLES_PER_MILLIMOLE = 1e-3;

    /** 10.56: the equation below with pK₂ 10.329 and pKw 14.00, worked out by hand. */
    @Test
    void theIdealSolutionHasThePHOfTheTextbook() {
        assertEquals(10.56, idealPH(1), 0.01);
    }

    /**
     * Activities make CO₃²⁻ the weaker base, for {@code Kw/K₂ · γ₂/γ₁²} is what counts, and pairs with Na⁺ hold 3 % of it. By hand, with γ 0.943 and 0.79,
     * activities take 0.046. With both, the
     * equation of the ideal solution leads to the pH of the solver.
     */
    @Test
    void activitiesAndPairsLowerItByAFewHundredths() {
        Speciation real = Speciation.of(soda(1));
        Solution active = new Solution(
                real.activityCoefficient(Species.HYDROXIDE),
                real.activityCoefficient(Species.BICARBONATE),
                real.activityCoefficient(Species.CARBONATE),
                0,
                0);
        double ofBicarbonate = ratio(real, Species.SODIUM_BICARBONATE, Species.BICARBONATE);
        double ofCarbonate = ratio(real, Species.SODIUM_CARBONATE, Species.CARBONATE);
        Solution paired =
                new Solution(active.hydroxide, active.bicarbonate, active.carbonate, ofBicarbonate, ofCarbonate);
        assertEquals(0.03, ofCarbonate, 0.005);
        assertEquals(-0.043, active.pH(1) - idealPH(1), 0.001);
        assertEquals(-0.048, paired.pH(1) - idealPH(1), 0.001);
        assertEquals(real.pH(), paired.pH(1), 1e-6);
    }

    private static double ratio(Speciation found, Species pair, Species free) {
        return found.concentration(pair).getValue() / found.concentration(free).getValue();
    }

    /** Both leave as the solution is diluted, so the ideal one is the limit. */
    @ParameterizedTest(name = "{0} mmol/L")
    @CsvSource({"1e-1, 0.015", "1e-2, 0.003", "1e-3, 0.001", "1e-4, 1e-3", "1e-6, 1e-4"})
    void theIdealSolutionIsTheLimit(double millimoles, double apart) {
        double difference = Speciation.of(soda(millimoles)).pH() - idealPH(millimoles);
        assertTrue(Math.abs(difference) <= apart, () -> "apart by " + difference);
    }

    private static Water soda(double millimoles) {
        return Water.pure().plus(Change.of(Map.of(Ion.SODIUM, mmol(2 * millimoles), Ion.CARBONATE, mmol(millimoles))));
    }

    private static double idealPH(double millimoles) {
        return new Solution(1, 1, 1, 0, 0).pH(millimoles);
    }

    /** Activity coefficients, and pairs for each free ion; written down apart from the solver. */
    private record Solution(
            double hydroxide, double bicarbonate, double carbonate, double bicarbonatePairs, double carbonatePairs) {

        /** {@code 2 c = c (b + 2 d) / (a + b + d) + Kw/h − h} with CO₂ a, HCO₃⁻ b, CO₃²⁻ d, by halving. */
        double pH(double millimoles) {
            double c = millimoles * MOLES_PER_MILLIMOLE;
            double k1 = constant(EquilibriumConstant.CARBONIC_ACID_1);
            double k2 = constant(EquilibriumConstant.CARBONIC_ACID_2);
            double kw = constant(EquilibriumConstant.WATER);
            double low = 0;
            double high = 14;
            while (high - low > 1e-12) {
                double pH = (low + high) / 2;
                double h = Math.pow(10, -pH);
                double b = k1 / h / bicarbonate * (1 + bicarbonatePairs);
                double d = k1 * k2 / (h * h) / carbonate * (1 + carbonatePairs);
                double alkalinity = c * (b + 2 * d) / (1 + b + d) + kw / h / hydroxide - h;
                if (alkalinity < 2 * c) {
                    low = pH;
                } else {
                    high = pH;
                }
            }
            return low;
        }
    }

    private static double constant(EquilibriumConstant which) {
        return Math.exp(which.ln(298.15));
    }
}
