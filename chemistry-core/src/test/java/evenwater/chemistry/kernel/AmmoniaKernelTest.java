package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmmoniaKernelTest {

    @ParameterizedTest(name = "pH {0}, {1} K")
    @CsvSource({ // 1 / (1 + 10^(0.09018 + 2729.92/T − pH)), worked apart to six digits
        "7,   283.15, 0.00185253",
        "7,   298.15, 0.00563855",
        "8,   293.15, 0.0380713",
        "9,   298.15, 0.361859",
        "0,   273.15, 8.23388e-11",
        "14,  323.15, 0.999997",
        "9.246376545363074, 298.15, 0.5" // pH at pKa
    })
    void unionisedFraction(double pH, double kelvin, double expected) {
        assertEquals(expected, AmmoniaKernel.unionisedFraction(pH, kelvin), 3e-6 * expected);
    }

    @ParameterizedTest(name = "{0} K")
    @CsvSource({"273.15", "283.15", "298.15", "310.15", "323.15"})
    void twoFitsOfTheSameConstantAgree(double kelvin) {
        // Emerson et al. fitted the same measurements with one term less, which costs 0.0022 at most
        double emerson = EquilibriumConstant.AMMONIUM.ln(kelvin) / Math.log(10);
        double batesPinching = EquilibriumConstant.AMMONIUM_BATES_PINCHING.ln(kelvin) / Math.log(10);
        assertEquals(batesPinching, emerson, 0.003);
    }
}
