package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SolventWaterTest {

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({ // CRC Handbook, density of water at 1 atm (from memory); the formula runs 3e-5 above, 1e-4 at 40 to 50
        // °C
        "0, 0.99984, 0.00004",
        "5, 0.99997, 0.00004",
        "25, 0.99705, 0.00004",
        "50, 0.98804, 0.0001"
    })
    void density(double celsius, double expected, double tolerance) {
        assertEquals(expected, SolventWater.density(celsius + 273.15), tolerance);
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({ // Malmberg and Maryott 1956 (from memory); the formula itself, worked by hand at 50 °C
        "0, 87.740, 0.0005",
        "25, 78.303, 0.001",
        "50, 69.91, 0.005"
    })
    void dielectricConstant(double celsius, double expected, double tolerance) {
        assertEquals(expected, SolventWater.dielectricConstant(celsius + 273.15), tolerance);
    }

    @ParameterizedTest(name = "{0} °C")
    @CsvSource({ // by 1.82483e6 ρ^½ (εT)^-1.5 and 50.2916 ρ^½ (εT)^-½ of Truesdell and Jones 1974 (from memory), which
        // are 1e-5 and 2.5e-5 above
        "0, 0.49181, 0.32484",
        "25, 0.51082, 0.32866",
        "50, 0.53421, 0.33260"
    })
    void debyeHueckelSlopes(double celsius, double a, double b) {
        double kelvin = celsius + 273.15;
        assertEquals(a, SolventWater.debyeHueckelA(kelvin) / Math.log(10), 0.00002);
        assertEquals(b, SolventWater.debyeHueckelB(kelvin), 0.00002);
    }
}
