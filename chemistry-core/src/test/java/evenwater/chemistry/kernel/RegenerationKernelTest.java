package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.DAY;
import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.RegenerationKernel.BAD_INPUT;
import static evenwater.chemistry.kernel.RegenerationKernel.CLOCK_CHANGED;
import static evenwater.chemistry.kernel.RegenerationKernel.DAY_LEARNED;
import static evenwater.chemistry.kernel.RegenerationKernel.LOW_DAY;
import static evenwater.chemistry.kernel.RegenerationKernel.METER_SILENT;
import static evenwater.chemistry.kernel.RegenerationKernel.NOT_BEGUN;
import static evenwater.chemistry.kernel.RegenerationKernel.OK;
import static evenwater.chemistry.kernel.RegenerationKernel.OUTLIER_DAY;
import static evenwater.chemistry.kernel.RegenerationKernel.TOTALS_FULL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RegenerationKernelTest {

    private final MeteredSoftener softener = new MeteredSoftener();

    @ParameterizedTest
    @EnumSource(RegenerationSetting.class)
    void aSettingOutOfItsRangeIsRefusedAndTheOneBeforeStays(RegenerationSetting setting) {
        RegenerationSettings settings = new RegenerationSettings();
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
        assertEquals(BAD_INPUT, RegenerationKernel.begin(softener.settings, softener.state, reading, clock, 0));
        softener.begun(0);
        RegenerationState before = softener.copy();
        assertEquals(BAD_INPUT, softener.step(reading, clock));
        assertEquals(BAD_INPUT, softener.restart(reading, clock));
        assertTrue(before.isSameAs(softener.state));
    }

    @Test
    void beginningWithMoreThanTheCapacityIsRefused() {
        for (long left : new long[] {-1, 1000 * LITRE + 1, Long.MAX_VALUE}) {
            assertEquals(BAD_INPUT, RegenerationKernel.begin(softener.settings, softener.state, 0, NOON, left));
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
        softener.begun(65_535, RegenerationKernel.LAST_CLOCK);
        assertEquals(RegenerationKernel.LAST_CLOCK, softener.clock());
        assertEquals(OK, RegenerationKernel.begin(softener.settings, softener.state, 0, 0, 0));
        assertEquals(0, softener.count(RegenerationCount.LEFT));
    }

    @Test
    void waterIsSoftenedUntilTheCapacityIsUsedAndHardAfter() {
        softener.begun(0);
        softener.steps(3, 300);
        assertEquals(100, softener.litres(RegenerationCount.LEFT));
        softener.steps(1, 300);
        assertEquals(0, softener.count(RegenerationCount.LEFT));
        assertEquals(200, softener.litres(RegenerationCount.OVERDRAWN));
        assertEquals(1000, softener.litres(RegenerationCount.TODAY_SOFTENED));
        assertEquals(200, softener.litres(RegenerationCount.TODAY_EXHAUSTED));

        RegenerationEvents.started(softener.state);
        softener.steps(1, 50);
        RegenerationEvents.finished(softener.state, 800 * LITRE);
        assertEquals(50, softener.litres(RegenerationCount.TODAY_BYPASSED));
        assertEquals(0, softener.litres(RegenerationCount.OVERDRAWN));
        assertEquals(800, softener.litres(RegenerationCount.CAPACITY));
        softener.steps(1, 10);
        assertEquals(790, softener.litres(RegenerationCount.LEFT));
        assertEquals(1010, softener.litres(RegenerationCount.TOTAL_SOFTENED));
        assertEquals(50, softener.litres(RegenerationCount.TOTAL_BYPASSED));
        assertEquals(200, softener.litres(RegenerationCount.TOTAL_EXHAUSTED));
        assertEquals(1260, softener.count(RegenerationCount.PULSES));
    }

    @Test
    void aDayRunsFromOneRegenerationHourToTheNext() {
        softener.begun(0); // noon: the first day is not whole
        assertEquals(OK, softener.steps(13, 10));
        assertEquals(130, softener.litres(RegenerationCount.TODAY_SOFTENED));
        assertEquals(OK, softener.steps(1, 10)); // two o'clock: the reading belongs to the new day
        assertEquals(10, softener.litres(RegenerationCount.TODAY_SOFTENED));
        assertEquals(1, softener.count(RegenerationCount.WHOLE_DAY));
        assertEquals(0, softener.count(RegenerationCount.DAYS));
        assertEquals(OK, softener.steps(23, 10));
        assertEquals(DAY_LEARNED, softener.steps(1, 10));
        assertEquals(240e9, softener.state.meanNanolitresPerDay());
        assertEquals(360, softener.reserve() / LITRE);
    }

    @Test
    void theFirstDayOfAllClocksEndsAtItsRegenerationHour() {
        softener.begun(0, HOUR);
        softener.steps(1, 0);
        assertEquals(1, softener.count(RegenerationCount.WHOLE_DAY));
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
        assertEquals(3, softener.count(RegenerationCount.DAYS));
    }

    @Test
    void aStepOverTwoRegenerationHoursEndsADayThatTeachesNothing() {
        softener.with(RegenerationSetting.COUNTER_BITS, 32).begun(0, NOON + 13 * HOUR + 1800); // half past one
        softener.steps(24, 10); // half past one again: a whole day is under way
        assertEquals(1, softener.count(RegenerationCount.WHOLE_DAY));
        assertEquals(OK, softener.step(300, softener.clock() + 25 * HOUR));
        assertEquals(0, softener.count(RegenerationCount.DAYS));
        assertEquals(0, softener.count(RegenerationCount.WHOLE_DAY));
    }

    @ParameterizedTest(name = "clock moved by {0} s")
    @CsvSource({"-1", "-3600", "-1773144000", "90001", "31536000"})
    void aChangedClockCreditsNoTimeAndCountsTheWater(long moved) {
        softener.with(RegenerationSetting.COUNTER_BITS, 32).begun(0);
        softener.steps(20, 10);
        long before = softener.clock();
        assertEquals(CLOCK_CHANGED, softener.step(230, before + moved));
        assertEquals(20 * HOUR, softener.count(RegenerationCount.AGE));
        assertEquals(before + moved, softener.clock());
        assertEquals(230, softener.count(RegenerationCount.PULSES));
        assertEquals(0, softener.count(RegenerationCount.WHOLE_DAY));
        assertEquals(OK, softener.step(240, before + moved + HOUR));
        assertEquals(21 * HOUR, softener.count(RegenerationCount.AGE));
    }

    @Test
    void aGapIsTimeUpToItsLimit() {
        softener.begun(0);
        assertEquals(0, softener.step(0, NOON + 25 * HOUR) & CLOCK_CHANGED);
        assertEquals(25 * HOUR, softener.count(RegenerationCount.AGE));
        assertEquals(0, softener.restart(0, NOON + 25 * HOUR + 1000 * DAY) & CLOCK_CHANGED);
        assertEquals(25 * HOUR + 1000 * DAY, softener.count(RegenerationCount.AGE));
    }

    @Test
    void allWaterOfADayIsLearnedWhateverBecameOfIt() {
        softener.begun(0);
        softener.steps(14, 0);
        softener.steps(10, 110); // 1000 L soft, 100 L hard
        RegenerationEvents.started(softener.state);
        softener.steps(3, 20);
        RegenerationEvents.finished(softener.state, 1000 * LITRE);
        assertEquals(DAY_LEARNED, softener.steps(11, 0));
        assertEquals(1160e9, softener.state.meanNanolitresPerDay());
    }

    @Test
    void anHourOfDaylightSavingInSpringLooksLikeTime() {
        softener.begun(0);
        assertEquals(OK, softener.step(10, NOON + 2 * HOUR));
        assertEquals(2 * HOUR, softener.count(RegenerationCount.AGE));
    }

    @Test
    void theDayOfAChangedClockTeachesNothingAndTheNextOneDoes() {
        softener.begun(0);
        softener.steps(14 + 20, 10);
        softener.step(softener.count(RegenerationCount.READING), softener.clock() - HOUR);
        assertEquals(OK, softener.steps(5, 10));
        assertEquals(0, softener.count(RegenerationCount.DAYS));
        assertEquals(1, softener.count(RegenerationCount.WHOLE_DAY));
        assertEquals(DAY_LEARNED, softener.steps(24, 10));
    }

    @Test
    void weeksWithoutPowerAgeTheRegenerationAndTeachNothing() {
        softener.begun(0);
        softener.steps(14, 10);
        assertEquals(OK, softener.restart(150, softener.clock() + DAY) & CLOCK_CHANGED);
        assertEquals(0, softener.count(RegenerationCount.DAYS));
        assertEquals(0, softener.count(RegenerationCount.WHOLE_DAY));
        softener.restart(160, softener.clock() + 21 * DAY);
        assertEquals(14 * HOUR + 22 * DAY, softener.count(RegenerationCount.AGE));
        assertEquals(160, softener.count(RegenerationCount.PULSES));
    }

    @Test
    void aRestartWithAClockThatWasNeverSetIsAChangedClock() {
        softener.with(RegenerationSetting.COUNTER_BITS, 32).begun(0);
        assertEquals(CLOCK_CHANGED, softener.restart(5, 0));
        assertEquals(CLOCK_CHANGED, softener.step(6, NOON));
        assertEquals(0, softener.count(RegenerationCount.AGE));
        assertEquals(6, softener.count(RegenerationCount.PULSES));
        assertEquals(CLOCK_CHANGED, softener.restart(6, NOON + 1000 * DAY + 1) & CLOCK_CHANGED);
        assertEquals(0, softener.count(RegenerationCount.AGE));
    }

    @Test
    void aMeterWithoutPulsesIsCalledSilentAfterItsTimeAndNotOnAHoliday() {
        softener.with(RegenerationSetting.SILENCE_SECONDS, 2 * DAY).begun(0);
        assertEquals(0, softener.steps(48, 0) & METER_SILENT);
        assertEquals(METER_SILENT, softener.steps(1, 0) & METER_SILENT);
        RegenerationEvents.holiday(softener.state, true);
        assertEquals(0, softener.steps(1, 0) & METER_SILENT);
        RegenerationEvents.holiday(softener.state, false);
        assertEquals(METER_SILENT, softener.steps(1, 0) & METER_SILENT);
        assertEquals(0, softener.steps(1, 1) & METER_SILENT);
        softener.state.counts[RegenerationState.SUSPECTS] = 3; // unclear which meter it is, which is said instead
        assertEquals(RegenerationKernel.METER_UNCLEAR, softener.steps(60, 0) & ~LOW_DAY);
        softener.with(RegenerationSetting.SILENCE_SECONDS, 0).begun(0);
        assertEquals(0, softener.steps(200, 0) & METER_SILENT);
    }

    @Test
    void aDeclaredHolidayTeachesNothingWhateverIsUsed() {
        softener.begun(0);
        softener.steps(14 + 24, 10);
        RegenerationEvents.holiday(softener.state, true);
        assertEquals(0, softener.steps(24 * 30, 1) & (DAY_LEARNED | LOW_DAY));
        assertEquals(240e9, softener.state.meanNanolitresPerDay());
    }

    @Test
    void aTotalThatIsFullStandsStillAndTheRestGoesOn() {
        softener.begun(0);
        softener.state.counts[RegenerationState.TOTAL_SOFTENED] = RegenerationKernel.FULL_NANOLITRES - 5 * LITRE;
        assertEquals(OK, softener.steps(1, 4));
        assertEquals(TOTALS_FULL, softener.steps(1, 4));
        assertEquals(TOTALS_FULL, softener.steps(1, 4));
        assertEquals(RegenerationKernel.FULL_NANOLITRES, softener.count(RegenerationCount.TOTAL_SOFTENED));
        assertEquals(4, softener.count(RegenerationCount.PULSES));
        assertEquals(988, softener.litres(RegenerationCount.LEFT));
        assertEquals(12, softener.litres(RegenerationCount.TODAY_SOFTENED));
    }

    @Test
    void theLargestSettingsOverflowNothing() {
        softener.with(RegenerationSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND, 10 * LITRE)
                .with(RegenerationSetting.READING_DELAY_SECONDS, DAY)
                .with(RegenerationSetting.PULSE_NANOLITRES, 1)
                .with(RegenerationSetting.COUNTER_BITS, 32)
                .begun(0, 0);
        assertEquals(
                RegenerationKernel.ROLLOVER_AMBIGUOUS,
                softener.restart(0xFFFF_FFFFL, RegenerationKernel.LONGEST_OFF_SECONDS));
        assertEquals(0xFFFF_FFFFL, softener.count(RegenerationCount.TOTAL_SOFTENED));
        softener.with(RegenerationSetting.PULSE_NANOLITRES, 1000 * LITRE);
        for (int i = 1; i < 10; i++) { // each time 1000 days of 10 L/s
            long reading = (0xFFFF_FFFFL + i * 864_000) & 0xFFFF_FFFFL;
            softener.restart(reading, (i + 1) * RegenerationKernel.LONGEST_OFF_SECONDS);
        }
        for (RegenerationCount count : RegenerationCount.values()) {
            assertTrue(softener.count(count) >= 0 && softener.count(count) <= count.most(), count::name);
        }
        assertEquals(RegenerationKernel.FULL_NANOLITRES, softener.count(RegenerationCount.TOTAL_EXHAUSTED));
    }
}
