package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.DAY;
import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.RegenerationKernel.METER_UNCLEAR;
import static evenwater.chemistry.kernel.RegenerationKernel.OK;
import static evenwater.chemistry.kernel.RegenerationKernel.READING_REFUSED;
import static evenwater.chemistry.kernel.RegenerationKernel.ROLLOVER_AMBIGUOUS;
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
        MeteredSoftener softener = new MeteredSoftener()
                .with(RegenerationSetting.COUNTER_BITS, bits)
                .begun(before);
        assertEquals(OK, softener.step(after, NOON + 60));
        assertEquals(pulses, softener.count(RegenerationCount.PULSES));
        assertEquals(pulses * LITRE, softener.count(RegenerationCount.TOTAL_SOFTENED));
    }

    @Test
    void tenMillionPulsesOfATenthOfALitreAreAMillionLitresOverManyTurnsOfTheCounter() {
        MeteredSoftener softener = new MeteredSoftener()
                .with(RegenerationSetting.PULSE_NANOLITRES, LITRE / 10)
                .begun(65_000);
        long clock = NOON;
        long reading = 65_000;
        for (int i = 0; i < 10_000_000; i++) {
            reading = (reading + 1) & 0xFFFF;
            softener.step(reading, ++clock);
        }
        assertEquals(10_000_000, softener.count(RegenerationCount.PULSES));
        assertEquals(
                1_000_000 * LITRE,
                softener.count(RegenerationCount.TOTAL_SOFTENED) + softener.count(RegenerationCount.TOTAL_EXHAUSTED));
        assertEquals(1000 * LITRE, softener.count(RegenerationCount.TOTAL_SOFTENED));
        assertEquals(999_000 * LITRE, softener.count(RegenerationCount.OVERDRAWN));
    }

    @Test
    void aThousandGallonPulsesAreExactlyAThousandGallons() {
        MeteredSoftener softener = new MeteredSoftener()
                .with(RegenerationSetting.PULSE_NANOLITRES, ExactUnits.US_GALLON_IN_1E_9_LITRE)
                .with(RegenerationSetting.CAPACITY_NANOLITRES, 4000 * LITRE)
                .begun(0);
        assertEquals(OK, softener.step(1000, NOON + 2 * HOUR));
        assertEquals(3785_411_784_000L, softener.count(RegenerationCount.TODAY_SOFTENED));
    }

    @Test
    void aRepeatedReadingMovesOnlyTheClock() {
        MeteredSoftener softener = new MeteredSoftener().begun(10);
        softener.step(30, NOON + 60);
        RegenerationState before = softener.copy();
        assertEquals(OK, softener.step(30, NOON + 60));
        assertTrue(before.isSameAs(softener.state));
        assertEquals(OK, softener.step(30, NOON + 90));
        assertEquals(20, softener.litres(RegenerationCount.TODAY_SOFTENED));
        assertEquals(90, softener.count(RegenerationCount.AGE));
        assertEquals(30, softener.count(RegenerationCount.WITHOUT_PULSE));
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
        assertEquals(believed ? pulses : 0, softener.litres(RegenerationCount.TODAY_SOFTENED));
    }

    @Test
    void oneWrongReadingDoesNoHarm() {
        MeteredSoftener softener = new MeteredSoftener().begun(500);
        softener.step(520, NOON + 60);
        assertEquals(READING_REFUSED, softener.step(510, NOON + 70)); // an old message, once more
        assertEquals(510, softener.count(RegenerationCount.REFUSED_READING));
        assertEquals(READING_REFUSED, softener.step(31_000, NOON + 80)); // a torn one
        assertEquals(1, softener.count(RegenerationCount.REFUSED_READINGS));
        assertEquals(OK, softener.step(540, NOON + 120));
        assertEquals(40, softener.litres(RegenerationCount.TODAY_SOFTENED));
        assertEquals(0, softener.count(RegenerationCount.REFUSED_READINGS));
    }

    @Test
    void timeAloneMakesNoRefusedReadingTrue() {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        assertEquals(
                READING_REFUSED, softener.step(0, NOON + 60)); // 5536 L: would be possible after an hour and a half
        for (int hour = 1; hour <= 12; hour++) {
            assertEquals(READING_REFUSED, softener.step(0, NOON + hour * HOUR));
        }
        assertEquals(1, softener.count(RegenerationCount.REFUSED_READINGS));
        assertEquals(0, softener.count(RegenerationCount.PULSES));
    }

    @Test
    void readingsThatAgreeSayThatTheMeterIsAnotherUntilItIsDeclared() {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        assertEquals(READING_REFUSED, softener.step(3, NOON + 60));
        assertEquals(READING_REFUSED, softener.step(4, NOON + 120));
        assertEquals(READING_REFUSED | METER_UNCLEAR, softener.step(6, NOON + 180));
        assertEquals(METER_UNCLEAR, softener.step(60_010, NOON + 240)); // too late: which meter is it?
        assertEquals(0, softener.count(RegenerationCount.PULSES));

        assertEquals(OK, RegenerationEvents.meterExchanged(softener.settings, softener.state, 9));
        assertEquals(OK, softener.step(29, NOON + 300));
        assertEquals(20, softener.litres(RegenerationCount.TODAY_SOFTENED));
        assertEquals(0, softener.count(RegenerationCount.WHOLE_DAY));
    }

    @ParameterizedTest(name = "{0} after 3: {1} in a row")
    @CsvSource({"64, 2", "65, 1", "2, 1"}) // 61 pulses are possible in no time
    void aRefusedReadingGoesOnFromAnotherByNoMoreThanTheLargestFlow(long reading, long inARow) {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        softener.step(3, NOON + 60);
        assertEquals(READING_REFUSED, softener.step(reading, NOON + 60));
        assertEquals(inARow, softener.count(RegenerationCount.REFUSED_READINGS));
    }

    @Test
    void refusedReadingsThatDoNotAgreeStartAnewEachTime() {
        MeteredSoftener softener = new MeteredSoftener().begun(60_000);
        for (int i = 1; i <= 20; i++) {
            assertEquals(READING_REFUSED, softener.step(i % 2 == 0 ? 3000 : 30_000, NOON + i));
            assertEquals(1, softener.count(RegenerationCount.REFUSED_READINGS));
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
        assertEquals(100, other.litres(RegenerationCount.TODAY_SOFTENED));
    }

    @Test
    void ofAWideCounterNoGapHidesATurn() {
        MeteredSoftener softener =
                new MeteredSoftener().with(RegenerationSetting.COUNTER_BITS, 32).begun(7);
        assertEquals(OK, softener.restart(107, NOON + 1000 * DAY));
        assertEquals(100, softener.count(RegenerationCount.PULSES));
    }
}
