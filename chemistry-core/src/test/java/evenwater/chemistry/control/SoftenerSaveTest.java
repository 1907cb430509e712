package evenwater.chemistry.control;

import static evenwater.chemistry.control.Household.NOON;
import static evenwater.chemistry.control.Household.SETTINGS;
import static evenwater.chemistry.control.Household.hours;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.US_GALLON;
import static evenwater.chemistry.quantity.WaterUnits.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;

import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** Saves of an invented household: pulses of 1 L, a counter of 16 bits, 1000 L of capacity. */
class SoftenerSaveTest {

    private final SoftenerState fresh = SoftenerState.regenerated(SETTINGS, 65_500, NOON);

    @Test
    void aSaveGoesOnAsIfNothingHadHappened() {
        SoftenerState state = hours(fresh, 100, 7);
        SoftenerState restored = SETTINGS.restore(state.save());
        assertEquals(hours(state, 30, 6), hours(restored, 30, 6));
        assertEquals(
                Duration.ofHours(100).plusDays(30),
                restored.restarted(700 - 36, state.time().plusDays(30)).age());
    }

    @Test
    void ofTwoSavesTheNewerOneIsTold() {
        long[][] places = new long[2][];
        SoftenerState state = fresh;
        for (int i = 1; i <= 5; i++) {
            state = hours(state, 1, 0);
            places[i % 2] = state.save();
        }
        assertEquals(5, state.sequence());
        assertEquals(4, SETTINGS.restore(places[0]).sequence());
        assertEquals(state.sequence(), SETTINGS.restore(places[1]).sequence());
        assertEquals(6, state.regenerationStarted().sequence());
        assertEquals(5, state.regenerationFinished().sequence()); // does not fit, and was not taken
        assertEquals(5, state.withHoliday(false).sequence());
        assertEquals(6, state.withHoliday(true).sequence());
        assertEquals(6, state.meterExchanged(3).sequence());
        assertEquals(6, state.withSaltMissing(true).sequence());
        assertEquals(6, state.failuresAcknowledged().sequence());
    }

    @Test
    void unusableSavesAreRefused() {
        long[] save = fresh.save();
        long[] torn = save.clone();
        torn[5]++;
        unusable("saved state is torn or damaged: its check does not fit its numbers", torn);
        long[] old = save.clone();
        old[0] = 0;
        unusable("saved state is of another version or kind", old);
        unusable("saved state must have 35 numbers, but had 0", new long[0]);

        SoftenerSettings others = SoftenerSettings.builder(volume(1, US_GALLON), volume(1000, LITRE))
                .counterBits(16)
                .build();
        UnusableSaveException refusal = assertThrowsExactly(UnusableSaveException.class, () -> others.restore(save));
        assertEquals(
                "saved state was made under other settings: restore it under new settings if that is meant",
                refusal.getMessage());
        assertEquals(volume(1000, LITRE), others.restoreUnderNewSettings(save).left());
        SoftenerSettings narrow = SoftenerSettings.builder(volume(1, LITRE), volume(1000, LITRE))
                .counterBits(8)
                .build();
        assertEquals(
                "saved state has a number out of its range",
                assertThrowsExactly(UnusableSaveException.class, () -> narrow.restoreUnderNewSettings(save))
                        .getMessage());
    }

    private static void unusable(String message, long[] save) {
        assertEquals(
                message,
                assertThrowsExactly(UnusableSaveException.class, () -> SETTINGS.restore(save))
                        .getMessage());
    }

    @Test
    void noSaveIsNamed() {
        Refused.asNull("saved", () -> SETTINGS.restore(null));
        Refused.asNull("saved", () -> SETTINGS.restoreUnderNewSettings(null));
    }
}
