package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.DAY;
import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.ValveRule.AT_NIGHT;
import static evenwater.chemistry.kernel.ValveRule.AT_ONCE;
import static evenwater.chemistry.kernel.ValveRule.CALENDAR;
import static evenwater.chemistry.kernel.ValveRule.EXHAUSTED;
import static evenwater.chemistry.kernel.ValveRule.HELD_BY_INTERVAL;
import static evenwater.chemistry.kernel.ValveRule.HELD_BY_SALT;
import static evenwater.chemistry.kernel.ValveRule.HELD_FOR_NIGHT;
import static evenwater.chemistry.kernel.ValveRule.NEARLY_EXHAUSTED;
import static evenwater.chemistry.kernel.ValveRule.NONE;
import static evenwater.chemistry.kernel.ValveRule.NOT_DUE;
import static evenwater.chemistry.kernel.ValveRule.RESERVE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Capacity 1000 L, first reserve 400 L, the night from 2:00 to 5:00, at least 6 h between two, at most 14 days. */
class ValveRuleTest {

    private final MeteredSoftener softener = new MeteredSoftener();

    private void assertDecision(int due, int reason, int hold) {
        assertEquals(due + " " + reason + " " + hold, softener.decision());
        assertEquals(due != NOT_DUE && hold == NONE, softener.isToStart());
    }

    /** With so much left, at an hour of the day after the beginning. */
    private void left(long litres, long clock) {
        softener.begun(0, clock - HOUR);
        softener.step(1000 - litres, clock);
    }

    @ParameterizedTest(name = "{0} L left at {1} h, at once from {2} L: due {3}, reason {4}, hold {5}")
    @CsvSource({
        "1000,  3,  -1, 0, 0, 0",
        " 400,  3,  -1, 0, 0, 0",
        " 399,  3,  -1, 1, 3, 0",
        " 399, 12,  -1, 1, 3, 3",
        " 399,  1,  -1, 1, 3, 3",
        " 399,  2,  -1, 1, 3, 0",
        " 399,  5,  -1, 1, 3, 3",
        "   0, 12,  -1, 1, 1, 3",
        "   0, 12,   0, 2, 1, 0",
        "   1, 12,   0, 1, 3, 3",
        "  30, 12,  30, 2, 2, 0",
        "  31, 12,  30, 1, 3, 3",
        "  31,  4,  30, 1, 3, 0"
    })
    void whatIsLeftAndTheHourDecide(long litres, long hour, long atOnce, int due, int reason, int hold) {
        softener.with(ValveSetting.AT_ONCE_NANOLITRES, atOnce < 0 ? -1 : atOnce * LITRE)
                .with(ValveSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND, LITRE);
        left(litres, NOON + (12 + hour) * HOUR);
        assertDecision(due, reason, hold);
    }

    @Test
    void theCodesOfTheTable() {
        assertEquals("0 1 2", NOT_DUE + " " + AT_NIGHT + " " + AT_ONCE);
        assertEquals("0 1 2 3 4", NONE + " " + EXHAUSTED + " " + NEARLY_EXHAUSTED + " " + RESERVE + " " + CALENDAR);
        assertEquals("1 2 3", HELD_BY_SALT + " " + HELD_BY_INTERVAL + " " + HELD_FOR_NIGHT);
    }

    @Test
    void nothingIsDueBeforeTheBeginningOrDuringARegeneration() {
        assertDecision(NOT_DUE, NONE, NONE);
        left(0, NOON + 15 * HOUR);
        assertDecision(AT_NIGHT, EXHAUSTED, NONE);
        ValveEvents.started(softener.settings, softener.state);
        assertDecision(NOT_DUE, NONE, NONE);
    }

    @Test
    void whereNoReserveIsWantedAnExhaustedSoftenerIsDueAllTheSame() {
        softener.with(ValveSetting.FIRST_RESERVE_NANOLITRES, 0);
        left(1, NOON + 15 * HOUR);
        assertDecision(NOT_DUE, NONE, NONE);
        left(0, NOON + 15 * HOUR);
        assertDecision(AT_NIGHT, EXHAUSTED, NONE);
    }

    @Test
    void missingSaltHoldsBack() {
        left(0, NOON + 15 * HOUR);
        ValveEvents.salt(softener.state, true);
        assertDecision(AT_NIGHT, EXHAUSTED, HELD_BY_SALT);
        ValveEvents.salt(softener.state, false);
        assertDecision(AT_NIGHT, EXHAUSTED, NONE);
    }

    @Test
    void theShortestIntervalHoldsBackAfterAFailureToo() {
        softener.with(ValveSetting.AT_ONCE_NANOLITRES, 0);
        left(0, NOON);
        ValveEvents.started(softener.settings, softener.state);
        ValveEvents.failed(softener.state, true);
        assertDecision(AT_ONCE, EXHAUSTED, HELD_BY_INTERVAL);
        softener.steps(5, 0);
        assertDecision(AT_ONCE, EXHAUSTED, HELD_BY_INTERVAL);
        softener.steps(1, 0);
        assertDecision(AT_ONCE, EXHAUSTED, NONE);
    }

    /** Regenerated at three; read each hour; nothing used. */
    private long daysUntilCalendarStarts(long longestDays) {
        softener.with(ValveSetting.LONGEST_AGE_SECONDS, longestDays * DAY)
                .with(ValveSetting.SILENCE_SECONDS, 0)
                .begun(0, NOON - 9 * HOUR);
        for (int hour = 1; hour < 40 * 24; hour++) {
            softener.steps(1, 0);
            if (softener.isToStart()) {
                assertDecision(AT_NIGHT, CALENDAR, NONE);
                return hour;
            }
        }
        return 0;
    }

    @ParameterizedTest(name = "at most {0} days: starts after {1} hours")
    @CsvSource({ // at 2:00 the age is one hour short of whole days
        "0,    0", "1,   23", "4,   95", "14, 335"
    })
    void theCalendarStartsInTheLastNightBeforeTheLongestAge(long days, long hours) {
        assertEquals(hours, daysUntilCalendarStarts(days));
    }

    @Test
    void theCalendarTakesTheNightBeforeIfTheNextWouldBeTooLate() {
        softener.with(ValveSetting.LONGEST_AGE_SECONDS, 4 * DAY).begun(0, NOON + 6 * HOUR); // at 18:00
        int hours = 0;
        while (!softener.isToStart()) {
            softener.steps(1, 0);
            hours++;
        }
        assertEquals(3 * 24 + 8, hours); // another day would make it 4 days and 8 hours
    }

    @Test
    void theCalendarSaysTheDayBeforeThatItWillBeDueAtNight() {
        softener.with(ValveSetting.LONGEST_AGE_SECONDS, 4 * DAY)
                .with(ValveSetting.SILENCE_SECONDS, 0)
                .begun(0, NOON - 9 * HOUR); // at 3:00
        softener.steps(3 * 24 + 1, 0); // at 4:00, in the window of the third night
        assertDecision(NOT_DUE, NONE, NONE);
        softener.steps(1, 0); // at 5:00 the window has closed; the next is the last in time
        assertDecision(AT_NIGHT, CALENDAR, HELD_FOR_NIGHT);
    }

    @Test
    void theCalendarSurvivesChangedClocks() {
        softener.with(ValveSetting.LONGEST_AGE_SECONDS, 4 * DAY).begun(0, NOON - 9 * HOUR);
        softener.steps(48, 0);
        softener.step(0, 0); // clock lost
        softener.steps(10, 0);
        softener.step(0, NOON + 30 * DAY); // and set again
        assertEquals(58 * HOUR, softener.count(ValveCount.AGE));
        int hours = 0;
        while (!softener.isToStart()) {
            softener.steps(1, 0);
            hours++;
        }
        assertEquals(38, hours); // 72 h old in the first night, just four days in the second
        assertTrue(softener.count(ValveCount.AGE) <= 4 * DAY);
    }

    @ParameterizedTest(name = "{0} h after the clocks began")
    @CsvSource({"0, false", "1, false", "2, true", "4, true", "5, false", "26, true"})
    void aClockThatWasNeverSetHasItsNightsToo(long hour, boolean night) {
        softener.begun(0, 0);
        ValveKernel.begin(softener.settings, softener.state, 0, hour * HOUR, 0);
        assertEquals(night, softener.isToStart());
    }

    @Test
    void aNightOverMidnightIsOneNight() {
        softener.with(ValveSetting.NIGHT_BEGINS_SECONDS, 23 * HOUR).with(ValveSetting.NIGHT_LASTS_SECONDS, 2 * HOUR);
        for (int hour = 0; hour < 24; hour++) {
            left(100, NOON + 12 * HOUR + hour * HOUR);
            assertEquals(hour == 23 || hour == 0, softener.isToStart(), "at " + hour);
        }
    }

    @Test
    void aWindowOfAWholeDayIsAlwaysOpen() {
        softener.with(ValveSetting.NIGHT_LASTS_SECONDS, DAY);
        left(399, NOON);
        assertTrue(softener.isToStart());
        left(400, NOON);
        assertFalse(softener.isToStart());
    }
}
