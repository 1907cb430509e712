package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Refusals.assertRefused;
import static evenwater.chemistry.quantity.WaterUnits.CELSIUS;
import static evenwater.chemistry.quantity.WaterUnits.FAHRENHEIT;
import static evenwater.chemistry.quantity.WaterUnits.KELVIN;
import static evenwater.chemistry.quantity.WaterUnits.temperature;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

class TemperatureTest {

    /** Promise of the library; beside 459.67 a double keeps 6e-14. */
    private static final double PROMISED = 1e-12;

    @ParameterizedTest(name = "{0} °C = {1} °F = {2} K")
    @CsvSource({ // fixed points of the scales: t(°F) = 9/5 t(°C) + 32, T(K) = t(°C) + 273.15
        "25, 77, 298.15",
        "-40, -40, 233.15",
        "0, 32, 273.15",
        "100, 212, 373.15",
        "37, 98.6, 310.15",
        "-273.15, -459.67, 0"
    })
    void theThreeScalesAgree(double celsius, double fahrenheit, double kelvin) {
        assertEquals(celsius, temperature(fahrenheit, FAHRENHEIT).in(CELSIUS), PROMISED);
        assertEquals(celsius, temperature(kelvin, KELVIN).in(CELSIUS), PROMISED);
        assertEquals(fahrenheit, temperature(celsius, CELSIUS).in(FAHRENHEIT), PROMISED);
        assertEquals(fahrenheit, temperature(kelvin, KELVIN).in(FAHRENHEIT), PROMISED);
        assertEquals(kelvin, temperature(celsius, CELSIUS).in(KELVIN), PROMISED);
        assertEquals(kelvin, temperature(fahrenheit, FAHRENHEIT).in(KELVIN), PROMISED);
    }

    @Test
    void theStatedUnitGivesTheStatedNumberBack() {
        assertEquals(20.1, temperature(20.1, CELSIUS).in(CELSIUS));
        assertEquals("20.1 °C", temperature(20.1, CELSIUS).toString());
    }

    @Test
    void aSumIsWhatPeopleMean() {
        assertEquals(temperature(25, CELSIUS), temperature(20, CELSIUS).add(temperature(5, KELVIN)));
        assertEquals(temperature(15, CELSIUS), temperature(20, CELSIUS).subtract(temperature(5, KELVIN)));
        assertEquals(temperature(305, KELVIN), temperature(300, KELVIN).add(temperature(5, KELVIN)));
        assertEquals(temperature(-5, KELVIN), temperature(300, KELVIN).subtract(temperature(305, KELVIN)));
    }

    @Test
    void kelvinsCountNineFifthsInFahrenheit() {
        Temperature warmer = temperature(68, FAHRENHEIT).add(temperature(5, KELVIN));
        assertSame(FAHRENHEIT, warmer.getUnit());
        assertEquals(77, warmer.getValue().doubleValue(), PROMISED);
        Temperature colder = temperature(68, FAHRENHEIT).subtract(temperature(5, KELVIN));
        assertEquals(59, colder.getValue().doubleValue(), PROMISED);
    }

    @Test
    void twoTemperaturesDifferByKelvins() {
        Temperature difference = temperature(25, CELSIUS).subtract(temperature(20, CELSIUS));
        assertSame(KELVIN, difference.getUnit());
        assertEquals(5, difference.getValue().doubleValue(), PROMISED);
        Temperature mixed = temperature(20, CELSIUS).subtract(temperature(77, FAHRENHEIT));
        assertSame(KELVIN, mixed.getUnit());
        assertEquals(-5, mixed.getValue().doubleValue(), PROMISED);
    }

    @Test
    void aDifferenceStatedInDegreesIsRefused() {
        String message = "a temperature difference must be stated in K, but was 5 °C";
        assertRefused(message, () -> temperature(20, CELSIUS).add(temperature(5, CELSIUS)));
        assertRefused(message, () -> temperature(300, KELVIN).add(temperature(5, CELSIUS)));
        assertRefused(message, () -> temperature(300, KELVIN).subtract(temperature(5, CELSIUS)));
        assertRefused(
                "a temperature difference must be stated in K, but was 9 °F",
                () -> temperature(20, CELSIUS).add(temperature(9, FAHRENHEIT)));
    }

    @Test
    void nothingIsColderThanAbsoluteZero() {
        assertEquals(0, temperature(-459.67, FAHRENHEIT).in(KELVIN), PROMISED);
        assertEquals(0, temperature(-273.15, CELSIUS).in(KELVIN), PROMISED);
        assertRefused(
                "temperature must not be below absolute zero, but was -273.16 °C", () -> temperature(-273.16, CELSIUS));
        assertRefused(
                "temperature must not be below absolute zero, but was -460 °F", () -> temperature(-460, FAHRENHEIT));
    }

    @Test
    void aMultipleOfDegreesDependsOnTheirZero() {
        Map<String, Executable> calls = Map.of(
                "20 °C times 2.0",
                () -> temperature(20, CELSIUS).multiply(2),
                "20 °C divided by 2.0",
                () -> temperature(20, CELSIUS).divide(2),
                "68 °F times -1",
                () -> temperature(68, FAHRENHEIT).negate());
        calls.forEach((what, call) -> assertEquals(
                what + " depends on the zero of its scale: convert it to K first",
                assertThrows(ArithmeticException.class, call).getMessage()));
        assertEquals(temperature(600, KELVIN), temperature(300, KELVIN).multiply(2));
    }

    @Test
    void roundingBesideAbsoluteZeroIsForgiven() {
        // 1e-9 K is far above rounding and far below any thermometer
        assertEquals(0, temperature(-459.67, FAHRENHEIT).to(CELSIUS).getValue().doubleValue() + 273.15, PROMISED);
        assertEquals(-273.1500000005, temperature(-273.1500000005, CELSIUS).in(CELSIUS));
        assertRefused(
                "temperature must not be below absolute zero, but was -273.150000002 °C",
                () -> temperature(-273.150000002, CELSIUS));
    }

    @Test
    void kelvinMayBeADifferenceAndThenNegative() {
        assertEquals("-5 K", temperature(-5, KELVIN).toString());
        assertRefused(
                "temperature must not be below absolute zero, but was -278.15 °C",
                () -> temperature(-5, KELVIN).to(CELSIUS));
    }

    @Test
    void orderAndRatioAreThoseOfKelvin() {
        assertTrue(temperature(20, CELSIUS).compareTo(temperature(50, FAHRENHEIT)) > 0);
        assertEquals(0, temperature(0, CELSIUS).compareTo(temperature(273.15, KELVIN)));
        // 293.15 K / 283.15 K
        assertEquals(293.15 / 283.15, temperature(20, CELSIUS).ratioTo(temperature(10, CELSIUS)), 1e-15);
        assertRefused(
                "ratio of 20 °C to -273.15 °C is not defined",
                () -> temperature(20, CELSIUS).ratioTo(temperature(-273.15, CELSIUS)));
    }

    @Test
    void degreesOfAnotherLibraryAreDegrees() {
        assertEquals(77, temperature(25, Units.CELSIUS).in(FAHRENHEIT), PROMISED);
        assertEquals(298.15, temperature(25, Units.CELSIUS).in(KELVIN), PROMISED);
        assertEquals(25, temperature(77, FAHRENHEIT).in(Units.CELSIUS), PROMISED);
        assertEquals(25, temperature(298.15, Units.KELVIN).in(CELSIUS), PROMISED);
        assertEquals(25, temperature(25, CELSIUS).in(Units.CELSIUS), PROMISED);
        assertEquals(
                "25 ℃", temperature(Quantities.getQuantity(25, Units.CELSIUS)).toString());
    }

    @Test
    void fahrenheitMadeByAnotherLibraryIsFahrenheit() {
        Unit<Temperature> theirs = Units.KELVIN.multiply(5).divide(9).shift(459.67);
        assertEquals(25, temperature(77, theirs).in(CELSIUS), PROMISED);
        assertEquals(77, temperature(25, CELSIUS).in(theirs), PROMISED);
    }

    @Test
    void aDifferenceOfAnotherLibraryIsAdded() {
        Quantity<Temperature> fiveKelvin = Quantities.getQuantity(5, Units.KELVIN);
        assertEquals(temperature(25, CELSIUS), temperature(20, CELSIUS).add(fiveKelvin));
        Quantity<Temperature> milli = Quantities.getQuantity(5000, MetricPrefix.MILLI(Units.KELVIN));
        assertEquals(25, temperature(20, CELSIUS).add(milli).getValue().doubleValue(), PROMISED);
        assertRefused(
                "a temperature difference must be stated in K, but was 5 ℃",
                () -> temperature(20, CELSIUS).add(Quantities.getQuantity(5, Units.CELSIUS)));
    }

    @Test
    void anotherLibraryReadsOurDegrees() {
        assertEquals(
                298.15,
                Quantities.getQuantity(77, FAHRENHEIT)
                        .to(Units.KELVIN)
                        .getValue()
                        .doubleValue(),
                PROMISED);
        assertEquals(
                77,
                Quantities.getQuantity(25, Units.CELSIUS)
                        .to(FAHRENHEIT)
                        .getValue()
                        .doubleValue(),
                PROMISED);
        assertEquals(
                77,
                Quantities.getQuantity(25, CELSIUS).to(FAHRENHEIT).getValue().doubleValue(),
                PROMISED);
    }

    @Test
    void valuesThatDoNotFitAreRefused() {
        assertEquals(Double.MAX_VALUE, temperature(Double.MAX_VALUE, KELVIN).in(CELSIUS)); // this one fits
        assertRefused(
                ArithmeticException.class,
                "1.5E308 °C is too large for a double in °F",
                () -> temperature(1.5e308, CELSIUS).in(FAHRENHEIT));
        assertRefused("temperature must be a finite number, but was NaN °C", () -> temperature(Double.NaN, CELSIUS));
    }

    @Test
    void whatAnotherLibraryCallsRelativeIsADifference() {
        Quantity<Temperature> warmer = Quantities.getQuantity(5, Units.CELSIUS, Quantity.Scale.RELATIVE);
        assertEquals(5, temperature(warmer).in(KELVIN), PROMISED);
        assertEquals(
                25, WaterUnits.temperature(temperature(20, CELSIUS).add(warmer)).in(CELSIUS), PROMISED);
        assertEquals(
                15,
                WaterUnits.temperature(temperature(20, CELSIUS).subtract(warmer))
                        .in(CELSIUS),
                PROMISED);
        Quantity<Temperature> absolute = Quantities.getQuantity(5, Units.CELSIUS);
        assertEquals(278.15, temperature(absolute).in(KELVIN));
    }

    @Test
    void almostNothingIsColderThanFrost() {
        assertTrue(temperature(1e-310, KELVIN).compareTo(temperature(-100, CELSIUS)) < 0);
        assertEquals(0, temperature(1e-310, KELVIN).ratioTo(temperature(0, CELSIUS)), 1e-300);
    }
}
