package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class StandardMethods2510KernelTest {

    private static final double[] CHARGE = {1, -1};
    private static final double[] CHLORIDE = {50.08, 76.31};

    @Test
    void sodiumChlorideByHand() {
        double[] millimoles = {10, 10};
        // I = 0.01: √I = 0.1, y² = 10^(−(0.1/1.1 − 0.003)) = 10^−0.0879091
        assertEquals(
                1263.9,
                StandardMethods2510Kernel.microsiemensPerCentimetreAtInfiniteDilution(2, millimoles, CHARGE, CHLORIDE),
                1e-9);
        assertEquals(0.8167533, StandardMethods2510Kernel.squaredActivityCoefficient(2, millimoles, CHARGE), 1e-7);
        assertEquals(
                1032.2945, StandardMethods2510Kernel.microsiemensPerCentimetre(2, millimoles, CHARGE, CHLORIDE), 1e-4);
    }

    @Test
    void chargesCountSquaredInTheIonicStrength() {
        // 5 mmol/L of CaCl2: I = (4 · 5 + 10) / 2000 = 0.015
        assertEquals(
                0.7859390,
                StandardMethods2510Kernel.squaredActivityCoefficient(2, new double[] {5, 10}, new double[] {2, -1}),
                1e-7);
    }

    @Test
    void pureWaterConductsNothing() {
        assertEquals(0, StandardMethods2510Kernel.microsiemensPerCentimetre(2, new double[2], CHARGE, CHLORIDE));
    }
}
