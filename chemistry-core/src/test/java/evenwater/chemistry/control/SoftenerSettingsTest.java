package evenwater.chemistry.control;

import static evenwater.chemistry.quantity.WaterUnits.CUBIC_FOOT;
import static evenwater.chemistry.quantity.WaterUnits.IMPERIAL_GALLON;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.US_GALLON;
import static evenwater.chemistry.quantity.WaterUnits.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;

class SoftenerSettingsTest {

    private static SoftenerSettingsBuilder builder() {
        return SoftenerSettings.builder(volume(0.1, LITRE), volume(1200, LITRE));
    }

    @Test
    void everyMeterIsWholeInNanolitres() {
        assertEquals(100_000_000, pulse(builder()));
        assertEquals(3_785_411_784L, pulse(SoftenerSettings.builder(volume(1, US_GALLON), volume(1, US_GALLON))));
        assertEquals(4_546_090_000L, pulse(SoftenerSettings.builder(volume(1, IMPERIAL_GALLON), volume(9, LITRE))));
        assertEquals(28_316_846_592L, pulse(SoftenerSettings.builder(volume(1, CUBIC_FOOT), volume(99, LITRE))));
    }

    private static long pulse(SoftenerSettingsBuilder builder) {
        return builder.build().value(ValveSetting.PULSE_NANOLITRES);
    }

    @Test
    void everythingThatIsStatedIsKept() {
        SoftenerSettings settings = builder()
                .counterBits(16)
                .largestFlow(FlowRate.of(90, FlowRate.LITRE_PER_MINUTE))
                .readingDelay(Duration.ofSeconds(20))
                .longestGap(Duration.ofHours(2))
                .silentAfter(Duration.ofDays(3))
                .firstReserve(volume(300, LITRE))
                .leastReserve(volume(80, LITRE))
                .atOnceBelow(volume(0, LITRE))
                .night(LocalTime.of(3, 30), Duration.ofHours(1))
                .longestAge(Duration.ofDays(4))
                .shortestInterval(Duration.ofHours(12))
                .longestRegeneration(Duration.ofMinutes(150))
                .mostFailures(5)
                .build();
        assertEquals(
                "softener settings: PULSE_NANOLITRES 100000000, COUNTER_BITS 16, LARGEST_FLOW_NANOLITRES_PER_SECOND 1500000000, "
                        + "READING_DELAY_SECONDS 20, LONGEST_GAP_SECONDS 7200, AGREEING_READINGS 3, SILENCE_SECONDS 259200, "
                        + "CAPACITY_NANOLITRES 1200000000000, FIRST_RESERVE_NANOLITRES 300000000000, "
                        + "LEAST_RESERVE_NANOLITRES 80000000000, AT_ONCE_NANOLITRES 0, NIGHT_BEGINS_SECONDS 12600, "
                        + "NIGHT_LASTS_SECONDS 3600, LONGEST_AGE_SECONDS 345600, SHORTEST_INTERVAL_SECONDS 43200, "
                        + "LONGEST_REGENERATION_SECONDS 9000, MOST_FAILURES 5",
                settings.toString());
        assertEquals(volume(0.1, LITRE), settings.pulse());
        assertEquals(volume(1200, LITRE), settings.capacity());
        assertEquals(LocalTime.of(3, 30), settings.nightBegins());
        assertEquals(Duration.ofHours(1), settings.nightLasts());
    }

    @Test
    void whatIsNotStatedIsAsUsual() {
        for (ValveSetting setting : ValveSetting.values()) {
            if (setting != ValveSetting.PULSE_NANOLITRES && setting != ValveSetting.CAPACITY_NANOLITRES) {
                assertEquals(setting.usual(), builder().build().value(setting));
            }
        }
    }

    @Test
    void aBuilderThatGoesOnChangesNothingThatWasBuilt() {
        SoftenerSettingsBuilder builder = builder();
        SoftenerSettings before = builder.build();
        SoftenerSettings after = builder.counterBits(16).build();
        assertEquals(builder().build(), before);
        assertEquals(builder().build().hashCode(), before.hashCode());
        assertNotEquals(before, after);
        assertNotEquals(before, "settings");
    }

    @Test
    void volumesOutOfRangeAreRefused() {
        Refused.argument(
                "volume of one pulse must be from 1.0E-9 L to 1000 L, but was 0 L",
                () -> SoftenerSettings.builder(volume(0, LITRE), volume(1, LITRE)));
        Refused.argument(
                "volume of one pulse must be from 1.0E-9 L to 1000 L, but was 1.0E300 L",
                () -> SoftenerSettings.builder(volume(1e300, LITRE), volume(1, LITRE)));
        Refused.argument(
                "capacity must be from 1.0E-9 L to 1000000 L, but was -5 L",
                () -> SoftenerSettings.builder(volume(1, LITRE), volume(-5, LITRE)));
        Refused.argument(
                "first reserve must be from 0 L to 1000000 L, but was -1 L",
                () -> builder().firstReserve(volume(-1, LITRE)));
        Refused.argument(
                "least reserve must be from 0 L to 1000000 L, but was 1000001 L",
                () -> builder().leastReserve(volume(1_000_001, LITRE)));
        Refused.argument(
                "least reserve must be from 0 L to 1000000 L, but was -1.0E-9 L",
                () -> builder().leastReserve(volume(-1e-9, LITRE)));
        Refused.argument(
                "what is left for a regeneration at once must be from 0 L to less than 1200 L, but was 1200 L",
                () -> builder().atOnceBelow(volume(1200, LITRE)));
        Refused.argument(
                "what is left for a regeneration at once must be from 0 L to less than 1200 L, but was -1 L",
                () -> builder().atOnceBelow(volume(-1, LITRE)));
    }

    @Test
    void timesOutOfRangeAreRefused() {
        Refused.argument(
                "delay of a reading must be from 0 s to 1 d, but was -1 s",
                () -> builder().readingDelay(Duration.ofSeconds(-1)));
        Refused.argument(
                "longest gap between readings must be from 1 min to 30 d, but was 59 s",
                () -> builder().longestGap(Duration.ofSeconds(59)));
        Refused.argument(
                "time without a pulse must be from 0 s to 1000 d, but was 86400001 s",
                () -> builder().silentAfter(Duration.ofDays(1000).plusSeconds(1)));
        Refused.argument(
                "length of the night's window must be from 1 min to 1 d, but was 0 s",
                () -> builder().night(LocalTime.MIDNIGHT, Duration.ZERO));
        Refused.argument(
                "longest age must be from 1 d to 1000 d, or zero for none, but was 86399 s",
                () -> builder().longestAge(Duration.ofDays(1).minusSeconds(1)));
        Refused.argument(
                "longest age must be from 0 s to 1000 d, but was 86486400 s",
                () -> builder().longestAge(Duration.ofDays(1001)));
        Refused.argument(
                "shortest interval must be from 0 s to 30 d, but was -60 s",
                () -> builder().shortestInterval(Duration.ofMinutes(-1)));
        Refused.argument(
                "longest regeneration must be from 1 min to 1 d, but was 172800 s",
                () -> builder().longestRegeneration(Duration.ofDays(2)));
        Refused.asNull("begins", () -> builder().night(null, Duration.ofHours(1)));
        Refused.asNull("age", () -> builder().longestAge(null));
        Refused.asNull("delay of a reading", () -> builder().readingDelay(null));
    }

    @Test
    void failuresOutOfRangeAreRefused() {
        for (int failures : new int[] {0, 1001}) {
            Refused.argument(
                    "most failures in a row must be from 1 to 1000, but were " + failures,
                    () -> builder().mostFailures(failures));
        }
    }

    @Test
    void aMeterOutOfRangeIsRefused() {
        for (int bits : new int[] {7, 33, -1}) {
            Refused.argument(
                    "width of the counter must be from 8 to 32 bits, but was " + bits,
                    () -> builder().counterBits(bits));
        }
        Refused.argument(
                "largest flow must be above 0 and at most 600 L/min, but was 0 L/min",
                () -> builder().largestFlow(FlowRate.of(0, FlowRate.LITRE_PER_MINUTE)));
        Refused.argument(
                "largest flow must be above 0 and at most 600 L/min, but was 37 m³/h",
                () -> builder().largestFlow(FlowRate.of(37, FlowRate.CUBIC_METRE_PER_HOUR)));
    }

    @Test
    void spansAreSaidInTwoUnits() {
        assertEquals("0 s", Spans.text(0));
        assertEquals("59 s", Spans.text(59));
        assertEquals("1 min 1 s", Spans.text(61));
        assertEquals("2 h", Spans.text(7259));
        assertEquals("2 h 1 min", Spans.text(7260));
        assertEquals("1 d", Spans.text(86_400 + 3599));
        assertEquals("14 d 3 h", Spans.text(14 * 86_400 + 3 * 3600));
    }
}
