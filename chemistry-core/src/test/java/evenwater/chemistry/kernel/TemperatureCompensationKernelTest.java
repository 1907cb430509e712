package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TemperatureCompensationKernelTest {

    @ParameterizedTest(name = "{0} °C, {1} per kelvin")
    @CsvSource({ // 1 + α (t − 25), by hand
        "25, 0.0191, 1",
        "15, 0.02, 0.8",
        "35, 0.02, 1.2",
        "0, 0.04, 0",
        "5, 0, 1"
    })
    void linearRatio(double celsius, double perKelvin, double expected) {
        assertEquals(expected, TemperatureCompensationKernel.linearRatio(celsius, perKelvin));
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvFileSource(resources = "/reference/iso-7888.csv", numLinesToSkip = 5)
    void wholeDegreesHaveThePrintedFigure(double celsius, double printed) {
        assertEquals(printed, TemperatureCompensationKernel.naturalWaterFactor(celsius));
    }

    @Test
    void tenthsAreFiguresOfThreeDecimalsThatFall() {
        double warmer = Double.POSITIVE_INFINITY;
        for (int tenth = 0; tenth <= 359; tenth++) {
            double factor = TemperatureCompensationKernel.naturalWaterFactor(tenth / 10.0);
            assertEquals(Math.rint(1000 * factor) / 1000, factor, 1e-15);
            assertTrue(factor < warmer, tenth + " tenths");
            warmer = factor;
        }
        assertEquals(0.808, warmer);
    }

    /** The printed figures alone, with their logarithm taken as straight between two degrees, tell the tenths nearly as well. */
    @Test
    void tenthsLieBetweenTheirDegreesAsThePrintedFiguresAloneHaveThem() {
        for (int degree = 0; degree < 35; degree++) {
            double cold = TemperatureCompensationKernel.naturalWaterFactor(degree);
            double warm = TemperatureCompensationKernel.naturalWaterFactor(degree + 1);
            for (int tenth = 1; tenth < 10; tenth++) {
                double straight = cold * Math.pow(warm / cold, tenth / 10.0);
                double factor = TemperatureCompensationKernel.naturalWaterFactor(degree + tenth / 10.0);
                // half a last digit of the tenth, half of one of the degrees, and 0.0003 of curvature
                assertEquals(straight, factor, 0.0013, degree + " degrees and " + tenth + " tenths");
            }
        }
    }

    @Test
    void betweenTwoTenthsTheFactorIsInterpolated() {
        double cold = TemperatureCompensationKernel.naturalWaterFactor(22.5);
        double warm = TemperatureCompensationKernel.naturalWaterFactor(22.6);
        assertEquals((cold + warm) / 2, TemperatureCompensationKernel.naturalWaterFactor(22.55), 1e-14);
    }
}
