package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaturationFormsKernelTest {

    @ParameterizedTest(name = "{0} °F")
    @CsvSource({ // the entries of the table, and points between them by linear interpolation
        "32, 0.0",
        "37, 0.1",
        "46, 0.2",
        "53, 0.3",
        "60, 0.4",
        "66, 0.5",
        "76, 0.6",
        "84, 0.7",
        "94, 0.8",
        "105, 0.9",
        "128, 1.0",
        "34.5, 0.05",
        "80, 0.65",
        "116.5, 0.95"
    })
    void theFactorOfTemperatureIsThatOfTheTable(double fahrenheit, double factor) {
        assertEquals(factor, SaturationFormsKernel.factorTableTemperature(fahrenheit), 1e-15); // two roundings of 1
    }

    @Test
    void theFactorOfTemperatureRises() {
        double before = -1;
        for (double fahrenheit = 32; fahrenheit <= 128; fahrenheit += 0.25) {
            double factor = SaturationFormsKernel.factorTableTemperature(fahrenheit);
            assertTrue(factor > before, "at " + fahrenheit);
            before = factor;
        }
        assertEquals(1.0, before, 1e-15);
    }

    @Test
    void theShortFormOfRoundNumbers() {
        // S = 1000: A = 0.2; T = 100 K for a round logarithm: B = 34.55 − 26.24; C = 100: 1.6; M = 10: 1
        assertEquals(0.2, SaturationFormsKernel.shortFormSolidsTerm(1000), 1e-15);
        assertEquals(8.31, SaturationFormsKernel.shortFormTemperatureTerm(100), 1e-14);
        assertEquals(1.6, SaturationFormsKernel.calciumFactor(100), 1e-15);
        assertEquals(1.0, SaturationFormsKernel.alkalinityFactor(10), 1e-15);
        assertEquals(15.21, SaturationFormsKernel.shortFormSaturationPH(1000, 100, 100, 10), 1e-14);
    }

    @Test
    void theIndexByTheFactorTableOfRoundNumbers() {
        // 7.5 + 0.6 + (2 − 0.4) + 2 − 12.1
        assertEquals(-0.4, SaturationFormsKernel.factorTableIndex(7.5, 76, 100, 100), 2e-15);
    }

    @Test
    void theTwoFormsAreDifferentNumbers() {
        // the same water: pH 7.5, 25 °C (77 °F), 400 mg/L solids, 240 calcium, 196 alkalinity as CaCO₃
        double shortForm = 7.5 - SaturationFormsKernel.shortFormSaturationPH(400, 298.15, 240, 196);
        double table = SaturationFormsKernel.factorTableIndex(7.5, 77, 240, 196);
        assertEquals(0.227, shortForm, 0.0005);
        assertEquals(0.285, table, 0.0005);
    }
}
