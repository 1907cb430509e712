package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExchangeEquilibriumTest {

    private static final double[] CALCIUM_AND_SODIUM = {2.6, 1};
    private static final int[] CHARGE = {2, 1};

    /**
     * Half of the resin calcium: with K = 2.6 and 2 eq/L, x(Na) solves {@code (C/(K Q)) 2 x² + x = 1} and the separation factor is {@code x(Na)/x(Ca)}. Worked by
     * hand to six digits.
     */
    @ParameterizedTest(name = "{0} eq/L")
    @CsvSource({"0.005, 520.998", "0.01, 260.996", "0.1, 26.9642", "1.8, 2.12438", "5.2, 1"})
    void brineTakesThePreferenceAway(double strength, double expected) {
        double s = ExchangeEquilibrium.ratioOverResin(CALCIUM_AND_SODIUM, CHARGE, new double[] {1, 1}, strength);
        double calcium = 1 / ExchangeEquilibrium.distribution(2.6, 2, s);
        double sodium = 1 / ExchangeEquilibrium.distribution(1, 1, s);
        assertEquals(strength, calcium + sodium, 1e-15 * strength);
        assertEquals(expected, sodium / calcium, 3e-6 * expected);
    }

    /** The law as it is printed, with equivalent fractions. */
    @Test
    void massActionHoldsInFractions() {
        double[] constant = {2.6, 1.7, 1, 1.5};
        int[] charge = {2, 2, 1, 1};
        double[] water = {0.002, 0.001, 0.003, 0.0001};
        double strength = Beds.sum(water);
        double s = ExchangeEquilibrium.ratioOverWater(constant, charge, water, 2);
        double held = 0;
        double sodium = s * water[2] / 2;
        for (int i = 0; i < 4; i++) {
            double y = ExchangeEquilibrium.distribution(constant[i], charge[i], s) * water[i] / 2;
            held += y;
            double printed = y
                    / Math.pow(sodium, charge[i])
                    * (Math.pow(water[2] / strength, charge[i]) / (water[i] / strength))
                    * Math.pow(strength / 2, charge[i] - 1);
            assertEquals(constant[i], printed, 1e-14 * constant[i]);
        }
        assertEquals(1, held, 1e-15);
    }

    @Test
    void noSodiumIsNeeded() {
        double s = ExchangeEquilibrium.ratioOverWater(
                new double[] {2.6, 1.7}, new int[] {2, 2}, new double[] {0.002, 0.001}, 2);
        double calcium = ExchangeEquilibrium.distribution(2.6, 2, s) * 0.002;
        double magnesium = ExchangeEquilibrium.distribution(1.7, 2, s) * 0.001;
        assertEquals(2, calcium + magnesium, 1e-15);
        assertEquals(2.6 / 1.7, calcium / 0.002 / (magnesium / 0.001), 1e-15);
    }

    @Test
    void aTraceIsHeldInProportion() {
        double[] constant = {2.6, 1};
        double once = ExchangeEquilibrium.ratioOverWater(constant, CHARGE, new double[] {1e-12, 0.005}, 2);
        assertEquals(400, once, 1e-4);
        assertTrue(ExchangeEquilibrium.ratioOverWater(constant, CHARGE, new double[] {1e-300, 0.005}, 2) > 0);
    }
}
