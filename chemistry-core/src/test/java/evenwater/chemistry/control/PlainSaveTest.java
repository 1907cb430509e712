package evenwater.chemistry.control;

import static evenwater.chemistry.control.Household.NOON;
import static evenwater.chemistry.control.Household.SETTINGS;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;

import evenwater.chemistry.testing.Json;
import evenwater.chemistry.testing.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the texts of a save look like, and what is refused when they are read. */
class PlainSaveTest {

    private static final long[] SAVE = {Long.MIN_VALUE, -1, 0, (1L << 53) + 1, Long.MAX_VALUE};

    @Test
    void allBitsSurviveAnyReader() {
        PlainSave plain = PlainSave.of(SAVE);
        assertEquals(
                "{\"version\":1,\"numbers\":[\"-9223372036854775808\",\"-1\",\"0\",\"9007199254740993\",\"9223372036854775807\"]}",
                Json.writtenByJackson(plain));
        assertArrayEquals(SAVE, Json.throughJackson(plain, PlainSave.class).toSave());
        assertArrayEquals(SAVE, Json.throughGson(plain, PlainSave.class).toSave());
        assertArrayEquals(SAVE, Json.throughDoubles(plain, PlainSave.class).toSave());
    }

    @Test
    void asNumbersASaveWouldNotSurviveAReaderWithDoubles() { // the reason for the texts
        long[] save = SoftenerState.regenerated(SETTINGS, 65_500, NOON).save();
        long[] read = Arrays.stream(save).map(number -> (long) (double) number).toArray();
        assertNotEquals(save[0], read[0]);
        assertThrows(UnusableSaveException.class, () -> SETTINGS.restore(read));
    }

    @Test
    void theListIsCopiedAndNotToBeChanged() {
        List<String> numbers = new ArrayList<>(List.of("7"));
        PlainSave plain = new PlainSave(1, numbers);
        numbers.clear();
        assertArrayEquals(new long[] {7}, plain.toSave());
        assertThrows(UnsupportedOperationException.class, () -> plain.numbers().clear());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1.0", "0x10", "9223372036854775808", " 1", "1e3", "NaN", "one", "+5", "٣"})
    void whatIsNoWholeNumberOf64BitsIsRefused(String text) {
        unusable(
                "plain save: number 1 must be a whole number of 64 bits, but was '" + text + "'",
                new PlainSave(1, List.of("5", text)));
    }

    @Test
    void whatIsMissingOrNewerIsRefused() {
        unusable("plain save lacks version", new PlainSave(null, List.of()));
        unusable("plain save lacks numbers", new PlainSave(1, null));
        unusable(
                "plain save: number 0 must be a whole number of 64 bits, but was missing",
                new PlainSave(1, Arrays.asList((String) null)));
        unusable("plain save: version must be 1, but was 2, of a newer library", new PlainSave(2, List.of()));
        Refused.asNull("saved", () -> PlainSave.of(null));
    }

    private static void unusable(String message, PlainSave plain) {
        assertEquals(
                message,
                assertThrowsExactly(UnusableSaveException.class, plain::toSave).getMessage());
    }

    @Test
    void aDigitThatWasChangedIsSeenByTheChecksum() {
        SoftenerState state = SoftenerState.regenerated(SETTINGS, 65_500, NOON);
        List<String> numbers = new ArrayList<>(PlainSave.of(state.save()).numbers());
        numbers.set(16, "999999999999"); // what is left, of 1000 L = 1e12 nL
        assertEquals(
                "saved state is torn or damaged: its check does not fit its numbers",
                assertThrowsExactly(
                                UnusableSaveException.class, () -> SETTINGS.restore(new PlainSave(1, numbers).toSave()))
                        .getMessage());
    }
}
