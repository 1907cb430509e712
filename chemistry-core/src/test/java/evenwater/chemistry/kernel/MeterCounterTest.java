package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.DAY;
import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.ValveKernel.METER_UNCLEAR;
import static evenwater.chemistry.kernel.ValveKernel.OK;
import static evenwater.chemistry.kernel.ValveKernel.READING_REFUSED;
import static evenwater.chemistry.kernel.ValveKernel.ROLLOVER_AMBIGUOUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeterCounterTest {

    @ParameterizedTest(name = "{0} bits: {1} to {2}")
    @CsvSource({
        " 8,        250,          3,   9",
        "16,          0,         40,  40",
        "16,      65530,          4,  10",
        "16,      65535,          0,   1",
        "16,      65535,      65535,   0",
        "32, 4294967290,          4,  10",
        "32, 4294967295, 4294967295,   0",
        "32,      65535,      65536,   1"
    })
    void theCounterRollsOverAtItsWidth(int bits, long before, long after, long pulses) {
        MeteredSoftener softener =
                new MeteredSoftener().with(ValveSetting.COUNTER_BITS, bits).begun(before);
        assertEquals(OK, softener.step(after, NOON + 60));
        assertEquals(pulses, softener.count(ValveCount.PULSES));
        assertEquals(pulses * LITRE, softener.count(ValveCount.TOTAL_SOFTENED));
    }

    @Test
    void tenMillionPulsesOfATenthOfALitreAreAMillionLitresOverManyTurnsOfTheCounter() {
        MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.PULSE_NANOLITRES, LITRE / 10)
                .begun(65_000);
        long clock = NOON;
        long reading = 65_000;
        for (int i = 0; i < 10_000_000; i++) {
            reading = (reading + 1) & 0xFFFF;
            softener.step(reading, ++clock);
        }
        assertEquals(10_000_000, softener.count(ValveCount.PULSES));
        assertEquals(
                1_000_000 * LITRE,
                softener.count(ValveCount.TOTAL_SOFTENED) + softener.count(ValveCount.TOTAL_EXHAUSTED));
        assertEquals(1000 * LITRE, softener.count(ValveCount.TOTAL_SOFTENED));
        assertEquals(999_000 * LITRE, softener.count(ValveCount.OVERDRAWN));
    }

    @Test
    void aThousandGallonPulsesAreExactlyAThousandGallons() {
        MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.PULSE_NANOLITRES, ExactUnits.US_GALLON_IN_1E_9_LITRE)
                .with(ValveSetting.CAPACITY_NANOLITRES, 4000 * LITRE)
                .begun(0);
        assertEquals(OK, softener.step(1000, NOON + 2 * HOUR));
        assertEquals(3785_411_784_000L, softener.count(ValveCount.TODAY_SOFTENED));
    }

    @Test
    void aRepeatedReadingMovesOnlyTheClock() {
        MeteredSoftener softener = new MeteredSoftener().begun(10);
        softener.step(30, NOON + 60);
        ValveState before = softener.copy();
        assertEquals(ValveKernel.REPEATED, softener.step(30, NOON + 60));
        before.counts[ValveState.SEQUENCE]++; // it was a step all the same
        assertTrue(before.isSameAs(softener.state));
        assertEquals(OK, softener.step(30, NOON + 90));
        assertEquals(20, softener.litres(ValveCount.TODAY_SOFTENED));
        assertEquals(90, softener.count(ValveCount.AGE));
        assertEquals(30, softener.count(ValveCount.WITHOUT_PULSE));
    }

    @ParameterizedTest(name = "{1} pulses in {0} s: {2}")
    @CsvSource({ // 1 L/s, readings up to 60 s late, and one pulse more: 1 (seconds + 60) / 1 + 1
        " 0,  61, true",
        " 0,  62, false",
        "40, 101, true",
        "40, 102, false"
    })
    void moreThanTheLargestFlowIsRefused(int seconds, int pulses, boolean believed) {
        MeteredSoftener softener = new MeteredSoftener().begun(500);
        assertEquals(believed ? OK : READING_REFUSED, softener.step(500 + pulses, NOON + seconds));
        assertEquals(believed ? pulses : 0, softener.litres(ValveCount.TODAY_SOFTENED));
    }

    @Test
    void oneWrongReadingDoesNoHarm() {
        MeteredSoftener softener = new MeteredSoftener().begun(500);
        softener.step(520, NOON + 60);
        assertEquals(READING_REFUSED, softener.step(510, NOON + 70)); // an old message, once more
        assertEquals(510, softener.count(ValveCount.REFUSED_READING));
        assertEquals(READING_REFUSED, softener.step(31_000, NOON + 80)); // a torn one
        assertEquals(1, softener.count(ValveCount.REFUSED_READINGS));
        assertEquals(OK, softener.step(540, NOON + 120));
        assertEquals(40, softener.litres(ValveCount.TODAY_SOFTENED));
        assertEquals(0, softener.count(ValveCount.REFUSED_READINGS));
    }

    @Test
    void timeAloneMakesNoRefusedReadingTrue() {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        assertEquals(
                READING_REFUSED, softener.step(0, NOON + 60)); // 5536 L: would be possible after an hour and a half
        for (int hour = 1; hour <= 12; hour++) {
            assertEquals(READING_REFUSED, softener.step(0, NOON + hour * HOUR));
        }
        assertEquals(1, softener.count(ValveCount.REFUSED_READINGS));
        assertEquals(0, softener.count(ValveCount.PULSES));
    }

    @ParameterizedTest(name = "{0} bits: {1} back after 3 h is refused: {2}")
    @CsvSource({ // below a hundredth of 65 536, 256 or 2^32
        "16,     10, true",
        "16,    655, true",
        "16,    656, false",
        " 8,      2, true",
        " 8,      3, false",
        "32,     10, true"
    })
    void aReadingALittleBehindTheLastIsRefusedWhateverTimeHasPassed(int bits, long back, boolean refused) {
        MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.COUNTER_BITS, bits)
                .with(ValveSetting.PULSE_NANOLITRES, LITRE / 10)
                .begun(5);
        long turn = 1L << bits;
        int status = softener.step((5 - back + turn) % turn, NOON + 3 * HOUR) & READING_REFUSED;
        assertEquals(refused ? READING_REFUSED : 0, status);
        assertEquals(refused ? 0 : turn - back, softener.count(ValveCount.PULSES));
        if (refused) {
            softener.step(9, NOON + 3 * HOUR + 60);
            assertEquals(4, softener.count(ValveCount.PULSES));
        }
    }

    @Test
    void aGapIsNoticedWhetherThePowerWasOffOrNot() {
        MeteredSoftener softener = new MeteredSoftener().begun(7);
        assertEquals(0, softener.step(7, NOON + 25 * HOUR) & ValveKernel.LONG_GAP);
        assertEquals(ValveKernel.LONG_GAP, softener.restart(7, softener.clock() + 26 * HOUR) & ~ROLLOVER_AMBIGUOUS);
        assertEquals(0, softener.restart(7, softener.clock() + HOUR));
    }

    @Test
    void readingsThatAgreeSayThatTheMeterIsAnotherUntilItIsDeclared() {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        assertEquals(READING_REFUSED, softener.step(3, NOON + 60));
        assertEquals(READING_REFUSED, softener.step(4, NOON + 120));
        assertEquals(READING_REFUSED | METER_UNCLEAR, softener.step(6, NOON + 180));
        assertEquals(METER_UNCLEAR, softener.step(60_010, NOON + 240)); // too late: which meter is it?
        assertEquals(0, softener.count(ValveCount.PULSES));

        assertEquals(OK, ValveEvents.meterExchanged(softener.settings, softener.state, 9));
        assertEquals(OK, softener.step(29, NOON + 300));
        assertEquals(20, softener.litres(ValveCount.TODAY_SOFTENED));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
    }

    @ParameterizedTest(name = "{0} L after {1} h without readings: {2}")
    @CsvSource({ // at most five minutes between readings; 1 L/s, up to 60 s late, and one pulse more
        "  800,  6, true",
        "21661,  6, true",
        "21662,  6, false",
        " 2000, -1, false",
        "  361, -1, true"
    })
    void theWaterOfAnOutageThatNobodyReportedIsCountedIfTheClockShowsTheTimeForIt(
            long litres, long hours, boolean believed) {
        MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.LONGEST_GAP_SECONDS, 300)
                .begun(500);
        int refused = believed ? OK : READING_REFUSED;
        int gap = hours > 0 ? ValveKernel.LONG_GAP : 0;
        assertEquals(ValveKernel.CLOCK_CHANGED | gap | refused, softener.step(500 + litres, NOON + hours * HOUR));
        assertEquals(believed ? litres : 0, softener.count(ValveCount.PULSES));
        assertEquals(0, softener.count(ValveCount.AGE));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
    }

    @Test
    void theTimeSinceTheLastBelievedReadingCountsNotThatSinceARefusedOne() {
        MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.LONGEST_GAP_SECONDS, 300)
                .begun(500);
        assertEquals(READING_REFUSED, softener.step(30_000, NOON + 6 * HOUR) & READING_REFUSED);
        assertEquals(OK, softener.step(1300, NOON + 6 * HOUR + 60));
        assertEquals(800, softener.count(ValveCount.PULSES));
    }

    @Test
    void afterAPowerCutThatTookTheClockTooTheWaterIsCounted() {
        MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.LONGEST_GAP_SECONDS, 300)
                .begun(500);
        assertEquals(0, softener.restart(1300, 0) & READING_REFUSED);
        assertEquals(800, softener.count(ValveCount.PULSES));
    }

    @ParameterizedTest(name = "{0} after 3: {1} in a row")
    @CsvSource({"64, 2", "65, 1", "2, 1"}) // 61 pulses are possible in no time
    void aRefusedReadingGoesOnFromAnotherByNoMoreThanTheLargestFlow(long reading, long inARow) {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        softener.step(3, NOON + 60);
        assertEquals(READING_REFUSED, softener.step(reading, NOON + 60));
        assertEquals(inARow, softener.count(ValveCount.REFUSED_READINGS));
    }

    @Test
    void refusedReadingsThatDoNotAgreeStartAnewEachTime() {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        for (int i = 1; i <= 20; i++) {
            assertEquals(READING_REFUSED, softener.step(i % 2 == 0 ? 3000 : 30_000, NOON + i));
            assertEquals(1, softener.count(ValveCount.REFUSED_READINGS));
        }
    }

    @Test
    void aGapThatMayHideAWholeTurnCountsTheLeastAndSaysSo() {
        // 65 536 L take 65 536 s at 1 L/s; with 60 s of delay and one pulse of edge the limit lies at 65 475 s
        MeteredSoftener softener = new MeteredSoftener().begun(7);
        assertEquals(OK, softener.step(7, NOON + 65_474));
        MeteredSoftener other = new MeteredSoftener().begun(7);
        assertEquals(ROLLOVER_AMBIGUOUS, other.step(7, NOON + 65_475));
        assertEquals(ROLLOVER_AMBIGUOUS, other.step(107, NOON + 65_475 + 19 * HOUR));
        assertEquals(100, other.litres(ValveCount.TODAY_SOFTENED));
    }

    @Test
    void ofAWideCounterNoGapHidesATurn() {
        MeteredSoftener softener =
                new MeteredSoftener().with(ValveSetting.COUNTER_BITS, 32).begun(7);
        assertEquals(ValveKernel.LONG_GAP, softener.restart(107, NOON + 1000 * DAY));
        assertEquals(100, softener.count(ValveCount.PULSES));
    }
}
