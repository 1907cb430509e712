package evenwater.chemistry.control;

import static evenwater.chemistry.control.Household.SETTINGS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.testing.Json;
import evenwater.chemistry.testing.Refused;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What the plain form of softener settings looks like, and what is refused when one is read. */
class PlainSoftenerSettingsTest {

    @Test
    void theUnitStandsInEachName() { // pulses of 1 L, 16 bits, 1000 L; the rest as usual
        assertEquals(
                "{\"version\":1,\"numbers\":{\"PULSE_NANOLITRES\":1000000000,\"COUNTER_BITS\":16,"
                        + "\"LARGEST_FLOW_NANOLITRES_PER_SECOND\":1000000000,\"READING_DELAY_SECONDS\":60,\"LONGEST_GAP_SECONDS\":90000,"
                        + "\"AGREEING_READINGS\":3,\"SILENCE_SECONDS\":604800,\"CAPACITY_NANOLITRES\":1000000000000,"
                        + "\"FIRST_RESERVE_NANOLITRES\":400000000000,\"LEAST_RESERVE_NANOLITRES\":-1,\"AT_ONCE_NANOLITRES\":-1,"
                        + "\"NIGHT_BEGINS_SECONDS\":7200,\"NIGHT_LASTS_SECONDS\":10800,\"LONGEST_AGE_SECONDS\":1209600,"
                        + "\"SHORTEST_INTERVAL_SECONDS\":21600,\"LONGEST_REGENERATION_SECONDS\":14400,\"MOST_FAILURES\":3}}",
                Json.writtenByJackson(SETTINGS.toPlain()));
    }

    @ParameterizedTest
    @EnumSource
    void noNumberIsAboveWhatADoubleHolds(ValveSetting setting) {
        assertTrue(setting.most() <= 1L << 53);
    }

    @Test
    void mapsAreCopiedAndNotToBeChanged() {
        Map<String, Number> numbers = new LinkedHashMap<>(SETTINGS.toPlain().numbers());
        PlainSoftenerSettings plain = new PlainSoftenerSettings(1, numbers);
        numbers.clear();
        assertEquals(SETTINGS, SoftenerSettings.from(plain));
        assertThrows(UnsupportedOperationException.class, () -> plain.numbers().clear());
    }

    private static SoftenerSettings with(String name, Number number) {
        Map<String, Number> numbers = new LinkedHashMap<>(SETTINGS.toPlain().numbers());
        numbers.put(name, number);
        return SoftenerSettings.from(new PlainSoftenerSettings(1, numbers));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PULSE_NANOLITRES    | 0             | a whole number from 1 to 1000000000000, but was 0.0",
                "COUNTER_BITS        | 16.5          | a whole number from 8 to 32, but was 16.5",
                "COUNTER_BITS        | NaN           | a whole number from 8 to 32, but was NaN",
                "COUNTER_BITS        | 1e300         | a whole number from 8 to 32, but was 1.0E300",
                "CAPACITY_NANOLITRES | -5            | a whole number from 1 to 1000000000000000, but was -5.0",
                "LONGEST_AGE_SECONDS | 86399         | 0, for none, or 86400 or more, but was 86399",
            })
    void aNumberOutOfRangeIsNamed(String name, double number, String message) {
        Refused.argument("plain settings of a softener: " + name + " must be " + message, () -> with(name, number));
    }

    @Test
    void aRegenerationAtOnceAtTheWholeCapacityIsRefused() {
        Refused.argument(
                "plain settings of a softener: AT_ONCE_NANOLITRES must be below CAPACITY_NANOLITRES, but were 1000000000000 and "
                        + "1000000000000",
                () -> with("AT_ONCE_NANOLITRES", 1_000_000_000_000L));
    }

    @Test
    void whatIsMissingUnknownOrNewerIsRefused() {
        Refused.argument(
                "plain settings of a softener lack version",
                () -> SoftenerSettings.from(new PlainSoftenerSettings(null, Map.of())));
        Refused.argument(
                "plain settings of a softener lack numbers",
                () -> SoftenerSettings.from(new PlainSoftenerSettings(1, null)));
        Refused.argument(
                "plain settings of a softener lack PULSE_NANOLITRES",
                () -> SoftenerSettings.from(new PlainSoftenerSettings(1, Map.of())));
        Refused.argument("plain settings of a softener lack MOST_FAILURES", () -> with("MOST_FAILURES", null));
        Refused.argument(
                "plain settings of a softener: version must be 1, but was 2, of a newer library",
                () -> SoftenerSettings.from(new PlainSoftenerSettings(2, Map.of())));
        Refused.argument(
                "plain settings of a softener: version must be 1, but was -3",
                () -> SoftenerSettings.from(new PlainSoftenerSettings(-3, Map.of())));
        Refused.asNull("plain", () -> SoftenerSettings.from(null));
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> with("PULSE_LITRES", 1));
        assertTrue(
                refusal.getMessage()
                        .startsWith(
                                "plain settings of a softener have an unknown number PULSE_LITRES, but can have [PULSE_NANOLITRES,"));
    }
}
