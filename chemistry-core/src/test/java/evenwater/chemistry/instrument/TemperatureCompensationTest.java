package evenwater.chemistry.instrument;

import static evenwater.chemistry.instrument.TemperatureCompensation.ISO_7888;
import static evenwater.chemistry.instrument.TemperatureCompensation.linear;
import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.Conductivity.MILLISIEMENS_PER_METRE;
import static evenwater.chemistry.testing.Amounts.celsius;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureCompensationTest {

    private static Conductivity microsiemens(double value) {
        return Conductivity.of(value, MICROSIEMENS_PER_CENTIMETRE);
    }

    @Test
    void aLinearLawDividesByItsRatio() {
        assertEquals(microsiemens(1000), linear(0.02).toReference(microsiemens(800), celsius(15)));
        assertEquals(microsiemens(800), linear(0.02).fromReference(microsiemens(1000), celsius(15)));
        assertEquals(microsiemens(800), linear(0).toReference(microsiemens(800), celsius(15)));
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"0, 1.918", "20, 1.116", "25, 1", "30, 0.903", "35.9, 0.808"})
    void isoMultipliesByItsFactor(double degrees, double factor) {
        assertEquals(factor, ISO_7888.factor(celsius(degrees)));
        assertEquals(microsiemens(500 * factor), ISO_7888.toReference(microsiemens(500), celsius(degrees)));
    }

    @Test
    void namedLawsHaveTheirCoefficients() {
        assertEquals(linear(0.0191), TemperatureCompensation.STANDARD_METHODS_2510);
        assertEquals(linear(0.02), TemperatureCompensation.TWO_PERCENT_PER_KELVIN);
        assertEquals(linear(0.0212), TemperatureCompensation.SODIUM_CHLORIDE);
    }

    /** 0.01 mol/kg of KCl by K. W. Pratt et al. 2001; the laws are within a quarter of a percent of it from 15 °C on. */
    @Test
    void aCalibrationSolutionIsNearlyItself() {
        assertEquals(
                1408.23,
                TemperatureCompensation.STANDARD_METHODS_2510
                        .toReference(microsiemens(1141.45), celsius(15))
                        .in(MICROSIEMENS_PER_CENTIMETRE),
                0.0025 * 1408.23);
    }

    @Test
    void theUnitOfTheReadingIsKeptAndThatOfTheTemperatureDoesNotMatter() {
        Conductivity stated = Conductivity.of(44.8, MILLISIEMENS_PER_METRE);
        assertEquals(Conductivity.of(44.8 * 1.256, MILLISIEMENS_PER_METRE), ISO_7888.toReference(stated, celsius(15)));
        assertEquals(
                44.8 * 1.256,
                ISO_7888.toReference(stated, WaterUnits.temperature(59, WaterUnits.FAHRENHEIT))
                        .getValue(),
                1e-12);
        assertEquals(1, ISO_7888.factor(WaterUnits.temperature(298.15, WaterUnits.KELVIN)));
    }

    @Test
    void endsOfTheRangesBelongToThemInAnyUnit() {
        assertEquals(0.808, ISO_7888.factor(WaterUnits.temperature(35.9 + 273.15, WaterUnits.KELVIN)), 1e-12);
        assertEquals(1.918, ISO_7888.factor(WaterUnits.temperature(32, WaterUnits.FAHRENHEIT)), 1e-12);
        assertEquals(1 / 2.5, linear(0.02).factor(celsius(100)));
        assertEquals(2, linear(0.02).factor(celsius(0)));
    }

    @Test
    void outsideItsTableIsoHasNoFactor() {
        Refused.argument(
                "temperature must be from 0 °C to 35.9 °C for the factors of ISO 7888, but was 36 °C",
                () -> ISO_7888.factor(celsius(36)));
        Refused.argument(
                "temperature must be from 0 °C to 35.9 °C for the factors of ISO 7888, but was -0.5 °C",
                () -> ISO_7888.toReference(microsiemens(1), celsius(-0.5)));
        Refused.argument(
                "temperature must be from 0 °C to 35.9 °C for the factors of ISO 7888, but was 310 K",
                () -> ISO_7888.fromReference(microsiemens(1), WaterUnits.temperature(310, WaterUnits.KELVIN)));
    }

    @Test
    void aLinearLawIsForLiquidWater() {
        Refused.argument(
                "temperature must be from 0 °C to 100 °C, but was 120 °C",
                () -> linear(0.02).factor(celsius(120)));
        Refused.argument(
                "temperature must be from 0 °C to 100 °C, but was -1 °C",
                () -> linear(0.02).factor(celsius(-1)));
    }

    @Test
    void aLinearLawEndsWhereItReachesZero() {
        Refused.argument(
                "temperature must be above 5 °C for a compensation of 0.05 per kelvin, but was 5 °C",
                () -> linear(0.05).factor(celsius(5)));
        Refused.argument(
                "temperature must be above 8.333 °C for a compensation of 0.06 per kelvin, but was 4 °C",
                () -> linear(0.06).toReference(microsiemens(1), celsius(4)));
        assertEquals(20, linear(0.05).factor(celsius(6)), 1e-13);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 0.11, 2, Double.NaN, Double.POSITIVE_INFINITY})
    void aCoefficientIsAPartOfOne(double perKelvin) {
        Refused.argument(
                "temperature coefficient must be from 0 to 0.1 per kelvin, but was " + perKelvin
                        + " (2 % per kelvin is 0.02)",
                () -> linear(perKelvin));
    }

    @Test
    void conductivityIsNotNegative() {
        Refused.argument(
                "conductivity must not be negative, but was -1 µS/cm",
                () -> ISO_7888.toReference(microsiemens(-1), celsius(20)));
        Refused.argument(
                "conductivity must not be negative, but was -1 µS/cm",
                () -> ISO_7888.fromReference(microsiemens(-1), celsius(20)));
        assertEquals(microsiemens(0), ISO_7888.toReference(microsiemens(0), celsius(20)));
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("temperature", () -> ISO_7888.factor(null));
        Refused.asNull("measured", () -> ISO_7888.toReference(null, celsius(20)));
        Refused.asNull("at25Celsius", () -> ISO_7888.fromReference(null, celsius(20)));
    }

    @Test
    void equalLawsPrintAlike() {
        assertEquals("linear, 0.0191 per kelvin", TemperatureCompensation.STANDARD_METHODS_2510.toString());
        assertEquals("ISO 7888", ISO_7888.toString());
        assertEquals(linear(0), linear(-0.0));
        assertEquals(linear(0.02).hashCode(), TemperatureCompensation.TWO_PERCENT_PER_KELVIN.hashCode());
        assertNotEquals(linear(0.02), linear(0.021));
        assertNotEquals(linear(0.02).hashCode(), linear(0.021).hashCode());
        assertNotEquals(ISO_7888, linear(0.02));
        assertNotEquals(ISO_7888, "ISO 7888");
    }
}
