package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WaterViscosityTest {

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({ // CRC Handbook, viscosity of water at 1 atm, in mPa s (from memory); the formula ends at 70 °C
        "0, 1.791, 0.001",
        "10, 1.306, 0.001",
        "15, 1.139, 0.001",
        "20, 1.002, 0.0005",
        "25, 0.890, 0.0005",
        "30, 0.7975, 0.0005",
        "50, 0.547, 0.001",
        "70, 0.404, 0.0006",
        "100, 0.282, 0.003"
    })
    void meetsTheHandbook(double celsius, double milliPascalSeconds, double tolerance) {
        assertEquals(milliPascalSeconds, WaterViscosity.pascalSeconds(celsius + 273.15) * 1000, tolerance);
    }
}
