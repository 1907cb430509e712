package evenwater.chemistry.instrument;

import static evenwater.chemistry.instrument.ConductivityReading.compensatedTo20Celsius;
import static evenwater.chemistry.instrument.ConductivityReading.compensatedTo25Celsius;
import static evenwater.chemistry.instrument.ConductivityReading.uncompensated;
import static evenwater.chemistry.instrument.TemperatureCompensation.ISO_7888;
import static evenwater.chemistry.instrument.TemperatureCompensation.linear;
import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.testing.Amounts.celsius;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.testing.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ConductivityReadingTest {

    private static Conductivity microsiemens(double value) {
        return Conductivity.of(value, MICROSIEMENS_PER_CENTIMETRE);
    }

    @Test
    void anUncompensatedReadingIsTakenTo25Degrees() {
        ConductivityReading reading = uncompensated(microsiemens(448), celsius(15));
        assertEquals(microsiemens(448 * 1.256), reading.at25Celsius(ISO_7888));
        assertEquals(microsiemens(560), reading.at25Celsius(linear(0.02)));
    }

    @Test
    void aCompensatedReadingIsNotCompensatedTwice() {
        ConductivityReading reading = compensatedTo25Celsius(microsiemens(640));
        assertEquals(microsiemens(640), reading.at25Celsius(ISO_7888));
        assertEquals(microsiemens(640), reading.at25Celsius(linear(0.1)));
    }

    @Test
    void aReadingFor20DegreesLacksTheRest() {
        ConductivityReading reading = compensatedTo20Celsius(microsiemens(1000));
        assertEquals(microsiemens(1116), reading.at25Celsius(ISO_7888));
        assertEquals(microsiemens(1000 / 0.9), reading.at25Celsius(linear(0.02)));
    }

    /** f20(t) = f25(t) / 1.116 */
    @ParameterizedTest
    @ValueSource(doubles = {0, 15, 25, 35})
    void twoStepsAreOne(double degrees) {
        double f20 = ISO_7888.factor(celsius(degrees)) / 1.116;
        assertEquals(
                uncompensated(microsiemens(500), celsius(degrees))
                        .at25Celsius(ISO_7888)
                        .getValue(),
                compensatedTo20Celsius(microsiemens(500 * f20))
                        .at25Celsius(ISO_7888)
                        .getValue(),
                1e-12);
    }

    @Test
    void textSaysWhatTheMeterDid() {
        assertEquals(
                "448 µS/cm at 15 °C, not compensated",
                uncompensated(microsiemens(448), celsius(15)).toString());
        assertEquals(
                "640 µS/cm, compensated to 25 °C",
                compensatedTo25Celsius(microsiemens(640)).toString());
        assertEquals(
                "640 µS/cm, compensated to 20 °C",
                compensatedTo20Celsius(microsiemens(640)).toString());
    }

    @Test
    void whatTheMeterDidIsPartOfTheReading() {
        assertEquals(compensatedTo25Celsius(microsiemens(640)), compensatedTo25Celsius(microsiemens(640)));
        assertNotEquals(compensatedTo25Celsius(microsiemens(640)), uncompensated(microsiemens(640), celsius(25)));
    }

    @Test
    void whatNoWaterHasIsRefused() {
        Refused.argument(
                "conductivity must not be negative, but was -5 µS/cm",
                () -> uncompensated(microsiemens(-5), celsius(20)));
        Refused.argument(
                "conductivity must not be negative, but was -5 µS/cm", () -> compensatedTo25Celsius(microsiemens(-5)));
        Refused.argument(
                "temperature must be from 0 °C to 100 °C, but was 101 °C",
                () -> uncompensated(microsiemens(5), celsius(101)));
        Refused.argument(
                "temperature must be from 0 °C to 35.9 °C for the factors of ISO 7888, but was 60 °C",
                () -> uncompensated(microsiemens(5), celsius(60)).at25Celsius(ISO_7888));
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("conductivity", () -> uncompensated(null, celsius(20)));
        Refused.asNull("temperature", () -> uncompensated(microsiemens(5), null));
        Refused.asNull("conductivity", () -> compensatedTo25Celsius(null));
        Refused.asNull("conductivity", () -> compensatedTo20Celsius(null));
        Refused.asNull("shown", () -> new ConductivityReading(null, celsius(20), true));
        Refused.asNull("temperature", () -> new ConductivityReading(microsiemens(5), null, true));
        Refused.asNull(
                "compensation", () -> compensatedTo25Celsius(microsiemens(5)).at25Celsius(null));
    }
}
