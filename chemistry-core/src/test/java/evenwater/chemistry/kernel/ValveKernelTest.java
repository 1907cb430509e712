package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.DAY;
import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.ValveKernel.BAD_INPUT;
import static evenwater.chemistry.kernel.ValveKernel.CLOCK_CHANGED;
import static evenwater.chemistry.kernel.ValveKernel.DAY_LEARNED;
import static evenwater.chemistry.kernel.ValveKernel.LONG_GAP;
import static evenwater.chemistry.kernel.ValveKernel.LOW_DAY;
import static evenwater.chemistry.kernel.ValveKernel.METER_SILENT;
import static evenwater.chemistry.kernel.ValveKernel.NOT_BEGUN;
import static evenwater.chemistry.kernel.ValveKernel.OK;
import static evenwater.chemistry.kernel.ValveKernel.OUTLIER_DAY;
import static evenwater.chemistry.kernel.ValveKernel.TOTALS_FULL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ValveKernelTest {

    private final MeteredSoftener softener = new MeteredSoftener();

    @ParameterizedTest
    @EnumSource(ValveSetting.class)
    void aSettingOutOfItsRangeIsRefusedAndTheOneBeforeStays(ValveSetting setting) {
        ValveSettings settings = new ValveSettings();
        assertEquals(setting.usual(), settings.value(setting));
        assertEquals(OK, settings.put(setting, setting.least()));
        assertEquals(OK, settings.put(setting, setting.most()));
        for (long outside : new long[] {setting.least() - 1, setting.most() + 1, Long.MIN_VALUE, Long.MAX_VALUE}) {
            assertEquals(BAD_INPUT, settings.put(setting, outside));
            assertEquals(setting.most(), settings.value(setting));
        }
    }

    @ParameterizedTest(name = "reading {0}, clock {1}")
    @CsvSource({
        "    -1,                   0",
        " 65536,                   0",
        "     0,                  -1",
        "     0,        253402300800",
        "     0, 9223372036854775807",
        "     0, -9223372036854775808",
        "9223372036854775807,      0",
        "-9223372036854775808,     0"
    })
    void whatNoMeterOrClockShowsIsRefusedAndChangesNothing(long reading, long clock) {
        assertEquals(BAD_INPUT, ValveKernel.begin(softener.settings, softener.state, reading, clock, 0));
        softener.begun(0);
        ValveState before = softener.copy();
        assertEquals(BAD_INPUT, softener.step(reading, clock));
        assertEquals(BAD_INPUT, softener.restart(reading, clock));
        assertTrue(before.isSameAs(softener.state));
    }

    @Test
    void beginningWithMoreThanTheCapacityIsRefused() {
        for (long left : new long[] {-1, 1000 * LITRE + 1, Long.MAX_VALUE}) {
            assertEquals(BAD_INPUT, ValveKernel.begin(softener.settings, softener.state, 0, NOON, left));
        }
        assertEquals(NOT_BEGUN, softener.step(0, NOON));
        assertEquals(NOT_BEGUN, softener.restart(0, NOON));
    }

    @Test
    void beginningAnewForgetsEverything() {
        softener.begun(0);
        softener.steps(14 + 48, 30);
        softener.begun(7, 0);
        assertTrue(new MeteredSoftener().begun(7, 0).state.isSameAs(softener.state));
        softener.begun(65_535, ValveKernel.LAST_CLOCK);
        assertEquals(ValveKernel.LAST_CLOCK, softener.clock());
        assertEquals(OK, ValveKernel.begin(softener.settings, softener.state, 0, 0, 0));
        assertEquals(0, softener.count(ValveCount.LEFT));
    }

    @Test
    void waterIsSoftenedUntilTheCapacityIsUsedAndHardAfter() {
        softener.begun(0);
        softener.steps(3, 300);
        assertEquals(100, softener.litres(ValveCount.LEFT));
        softener.steps(1, 300);
        assertEquals(0, softener.count(ValveCount.LEFT));
        assertEquals(200, softener.litres(ValveCount.OVERDRAWN));
        assertEquals(1000, softener.litres(ValveCount.TODAY_SOFTENED));
        assertEquals(200, softener.litres(ValveCount.TODAY_EXHAUSTED));

        ValveEvents.started(softener.settings, softener.state);
        softener.steps(1, 50);
        ValveEvents.finished(softener.settings, softener.state, 800 * LITRE);
        assertEquals(50, softener.litres(ValveCount.TODAY_BYPASSED));
        assertEquals(0, softener.litres(ValveCount.OVERDRAWN));
        assertEquals(800, softener.litres(ValveCount.CAPACITY));
        softener.steps(1, 10);
        assertEquals(790, softener.litres(ValveCount.LEFT));
        assertEquals(1010, softener.litres(ValveCount.TOTAL_SOFTENED));
        assertEquals(50, softener.litres(ValveCount.TOTAL_BYPASSED));
        assertEquals(200, softener.litres(ValveCount.TOTAL_EXHAUSTED));
        assertEquals(1260, softener.count(ValveCount.PULSES));
    }

    @Test
    void aDayRunsFromOneRegenerationHourToTheNext() {
        softener.begun(0); // noon: the first day is not whole
        assertEquals(OK, softener.steps(13, 10));
        assertEquals(130, softener.litres(ValveCount.TODAY_SOFTENED));
        assertEquals(OK, softener.steps(1, 10)); // two o'clock: the reading belongs to the new day
        assertEquals(10, softener.litres(ValveCount.TODAY_SOFTENED));
        assertEquals(1, softener.count(ValveCount.WHOLE_DAY));
        assertEquals(0, softener.count(ValveCount.DAYS));
        assertEquals(OK, softener.steps(23, 10));
        assertEquals(DAY_LEARNED, softener.steps(1, 10));
        assertEquals(240e9, softener.state.meanNanolitresPerDay());
        assertEquals(400, softener.reserve() / LITRE); // 240 + 2 · 60 is less than the first reserve
    }

    @Test
    void theFirstDayOfAllClocksEndsAtItsRegenerationHour() {
        softener.begun(0, HOUR);
        softener.steps(1, 0);
        assertEquals(1, softener.count(ValveCount.WHOLE_DAY));
    }

    @Test
    void aDayOfLittleUseAndAnOutlierAreNoticedWhenTheyEnd() {
        softener.begun(0);
        softener.steps(14 + 24 * 8, 5);
        assertEquals(LOW_DAY, softener.steps(24, 0) & ~DAY_LEARNED);
        assertEquals(OUTLIER_DAY | DAY_LEARNED, softener.steps(24, 50) | softener.steps(1, 0));
    }

    @Test
    void readingOnceADayTeachesDaysAsWell() {
        softener.begun(0);
        int notices = 0;
        for (int day = 1; day <= 4; day++) {
            notices |= softener.step(day * 200L, NOON + day * DAY);
        }
        assertEquals(DAY_LEARNED, notices & DAY_LEARNED);
        assertEquals(200e9, softener.state.meanNanolitresPerDay());
        assertEquals(3, softener.count(ValveCount.DAYS));
    }

    @Test
    void aStepOverTwoRegenerationHoursEndsADayThatTeachesNothing() {
        softener.with(ValveSetting.COUNTER_BITS, 32).begun(0, NOON + 13 * HOUR + 1800); // half past one
        softener.steps(24, 10); // half past one again: a whole day is under way
        assertEquals(1, softener.count(ValveCount.WHOLE_DAY));
        assertEquals(OK, softener.step(300, softener.clock() + 25 * HOUR));
        assertEquals(0, softener.count(ValveCount.DAYS));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
    }

    @ParameterizedTest(name = "clock moved by {0} s")
    @CsvSource({"-1", "-3600", "-1773144000", "90001", "31536000"})
    void aChangedClockCreditsNoTimeAndCountsTheWater(long moved) {
        softener.with(ValveSetting.COUNTER_BITS, 32).begun(0);
        softener.steps(20, 10);
        long before = softener.clock();
        assertEquals(CLOCK_CHANGED | (moved > 0 ? LONG_GAP : OK), softener.step(230, before + moved));
        assertEquals(20 * HOUR, softener.count(ValveCount.AGE));
        assertEquals(before + moved, softener.clock());
        assertEquals(230, softener.count(ValveCount.PULSES));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
        assertEquals(OK, softener.step(240, before + moved + HOUR));
        assertEquals(21 * HOUR, softener.count(ValveCount.AGE));
    }

    @Test
    void aGapIsTimeUpToItsLimit() {
        softener.begun(0);
        assertEquals(0, softener.step(0, NOON + 25 * HOUR) & CLOCK_CHANGED);
        assertEquals(25 * HOUR, softener.count(ValveCount.AGE));
        assertEquals(0, softener.restart(0, NOON + 25 * HOUR + 1000 * DAY) & CLOCK_CHANGED);
        assertEquals(25 * HOUR + 1000 * DAY, softener.count(ValveCount.AGE));
    }

    @Test
    void allWaterOfADayIsLearnedWhateverBecameOfIt() {
        softener.begun(0);
        softener.steps(14, 0);
        softener.steps(10, 110); // 1000 L soft, 100 L hard
        ValveEvents.started(softener.settings, softener.state);
        softener.steps(3, 20);
        ValveEvents.finished(softener.settings, softener.state, 1000 * LITRE);
        assertEquals(DAY_LEARNED, softener.steps(11, 0));
        assertEquals(1160e9, softener.state.meanNanolitresPerDay());
    }

    @Test
    void anHourOfDaylightSavingInSpringLooksLikeTime() {
        softener.begun(0);
        assertEquals(OK, softener.step(10, NOON + 2 * HOUR));
        assertEquals(2 * HOUR, softener.count(ValveCount.AGE));
    }

    @Test
    void theDayOfAChangedClockTeachesNothingAndTheNextOneDoes() {
        softener.begun(0);
        softener.steps(14 + 20, 10);
        softener.step(softener.count(ValveCount.READING), softener.clock() - HOUR);
        assertEquals(OK, softener.steps(5, 10));
        assertEquals(0, softener.count(ValveCount.DAYS));
        assertEquals(1, softener.count(ValveCount.WHOLE_DAY));
        assertEquals(DAY_LEARNED, softener.steps(24, 10));
    }

    @Test
    void weeksWithoutPowerAgeTheRegenerationAndTeachNothing() {
        softener.begun(0);
        softener.steps(14, 10);
        assertEquals(OK, softener.restart(150, softener.clock() + DAY) & CLOCK_CHANGED);
        assertEquals(0, softener.count(ValveCount.DAYS));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
        softener.restart(160, softener.clock() + 21 * DAY);
        assertEquals(14 * HOUR + 22 * DAY, softener.count(ValveCount.AGE));
        assertEquals(160, softener.count(ValveCount.PULSES));
    }

    @Test
    void aRestartWithAClockThatWasNeverSetIsAChangedClock() {
        softener.with(ValveSetting.COUNTER_BITS, 32).begun(0);
        assertEquals(CLOCK_CHANGED, softener.restart(5, 0));
        assertEquals(CLOCK_CHANGED | LONG_GAP, softener.step(6, NOON));
        assertEquals(0, softener.count(ValveCount.AGE));
        assertEquals(6, softener.count(ValveCount.PULSES));
        assertEquals(CLOCK_CHANGED, softener.restart(6, NOON + 1000 * DAY + 1) & CLOCK_CHANGED);
        assertEquals(0, softener.count(ValveCount.AGE));
    }

    @Test
    void aMeterWithoutPulsesIsCalledSilentAfterItsTimeAndNotOnAHoliday() {
        softener.with(ValveSetting.SILENCE_SECONDS, 2 * DAY).begun(0);
        assertEquals(0, softener.steps(48, 0) & METER_SILENT);
        assertEquals(METER_SILENT, softener.steps(1, 0) & METER_SILENT);
        ValveEvents.holiday(softener.state, true);
        assertEquals(0, softener.steps(1, 0) & METER_SILENT);
        ValveEvents.holiday(softener.state, false);
        assertEquals(METER_SILENT, softener.steps(1, 0) & METER_SILENT);
        assertEquals(0, softener.steps(1, 1) & METER_SILENT);
        softener.state.counts[ValveState.SUSPECTS] = 3; // unclear which meter it is, which is said instead
        assertEquals(ValveKernel.METER_UNCLEAR, softener.steps(60, 0) & ~LOW_DAY);
        softener.with(ValveSetting.SILENCE_SECONDS, 0).begun(0);
        assertEquals(0, softener.steps(200, 0) & METER_SILENT);
    }

    @Test
    void aDeclaredHolidayTeachesNothingWhateverIsUsed() {
        softener.begun(0);
        softener.steps(14 + 24, 10);
        ValveEvents.holiday(softener.state, true);
        assertEquals(0, softener.steps(24 * 30, 1) & (DAY_LEARNED | LOW_DAY));
        assertEquals(240e9, softener.state.meanNanolitresPerDay());
    }

    @Test
    void aTotalThatIsFullStandsStillAndTheRestGoesOn() {
        softener.begun(0);
        softener.state.counts[ValveState.TOTAL_SOFTENED] = ValveKernel.FULL_NANOLITRES - 5 * LITRE;
        assertEquals(OK, softener.steps(1, 4));
        assertEquals(TOTALS_FULL, softener.steps(1, 4));
        assertEquals(TOTALS_FULL, softener.steps(1, 4));
        assertEquals(ValveKernel.FULL_NANOLITRES, softener.count(ValveCount.TOTAL_SOFTENED));
        assertEquals(4, softener.count(ValveCount.PULSES));
        assertEquals(988, softener.litres(ValveCount.LEFT));
        assertEquals(12, softener.litres(ValveCount.TODAY_SOFTENED));
    }

    @Test
    void theLargestSettingsOverflowNothing() {
        softener.with(ValveSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND, 10 * LITRE)
                .with(ValveSetting.READING_DELAY_SECONDS, DAY)
                .with(ValveSetting.PULSE_NANOLITRES, 1)
                .with(ValveSetting.COUNTER_BITS, 32)
                .begun(0, 0);
        assertEquals(
                ValveKernel.ROLLOVER_AMBIGUOUS | LONG_GAP,
                softener.restart(0xF000_0000L, ValveKernel.LONGEST_OFF_SECONDS));
        assertEquals(0xF000_0000L, softener.count(ValveCount.TOTAL_SOFTENED));
        softener.with(ValveSetting.PULSE_NANOLITRES, 1000 * LITRE);
        for (int i = 1; i < 10; i++) { // each time 1000 days of 10 L/s
            long reading = (0xF000_0000L + i * 864_000) & 0xFFFF_FFFFL;
            softener.restart(reading, (i + 1) * ValveKernel.LONGEST_OFF_SECONDS);
        }
        for (ValveCount count : ValveCount.values()) {
            assertTrue(softener.count(count) >= 0 && softener.count(count) <= count.most(), count::name);
        }
        assertEquals(ValveKernel.FULL_NANOLITRES, softener.count(ValveCount.TOTAL_EXHAUSTED));
    }
}
