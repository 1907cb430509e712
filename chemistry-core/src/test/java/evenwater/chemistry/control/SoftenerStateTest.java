package evenwater.chemistry.control;

import static evenwater.chemistry.control.Household.NOON;
import static evenwater.chemistry.control.Household.SETTINGS;
import static evenwater.chemistry.control.Household.hours;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.US_GALLON;
import static evenwater.chemistry.quantity.WaterUnits.volume;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.control.RegenerationDecision.Due;
import evenwater.chemistry.control.RegenerationDecision.Hold;
import evenwater.chemistry.control.RegenerationDecision.Reason;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An invented household: pulses of 1 L, a counter of 16 bits, 1000 L of capacity. */
class SoftenerStateTest {

    private final SoftenerState fresh = SoftenerState.regenerated(SETTINGS, 65_500, NOON);

    @Test
    void aReadingGivesTheNextStateAndLeavesTheOneBefore() {
        SoftenerState next = fresh.read(64, NOON.plusMinutes(10));
        assertEquals(volume(900, LITRE), next.left());
        assertEquals(volume(100, LITRE), next.today().softened());
        assertEquals(volume(100, LITRE), next.total().total());
        assertEquals(NOON.plusMinutes(10), next.time());
        assertEquals(Duration.ofMinutes(10), next.age());
        assertEquals(Set.of(), next.notices());
        assertEquals(List.of(), next.words());
        assertEquals(volume(1000, LITRE), fresh.left());
        assertEquals(volume(1000, LITRE), fresh.capacity());
        assertEquals(volume(0, LITRE), fresh.overdrawn());
        assertEquals(volume(400, LITRE), fresh.reserve());
        assertEquals(Optional.empty(), fresh.usualDay());
    }

    @Test
    void aRegenerationFromWishToEnd() {
        SoftenerState used = hours(fresh, 13, 50);
        assertEquals(
                "2026-03-11T01:00: regeneration due at night from 02:00: 350 L left do not cover the reserve of 400 L",
                used.toString());
        assertEquals(used.decision().words(), used.decision().toString());
        assertFalse(used.decision().isToStart());
        SoftenerState night = hours(used, 1, 10);
        assertTrue(night.decision().isToStart());
        assertEquals(
                new RegenerationDecision(
                        Due.AT_NIGHT,
                        Reason.RESERVE,
                        Hold.NONE,
                        "regeneration due now: 340 L left do not cover the reserve of 400 L"),
                night.decision());

        SoftenerState running = hours(night.regenerationStarted(), 1, 5);
        assertTrue(running.isRegenerating());
        assertEquals("a regeneration is under way", running.decision().words());
        assertEquals(List.of("regenerating for 1 h: water passes hard"), running.words());
        assertEquals(volume(5, LITRE), running.today().bypassed());

        SoftenerState done = running.regenerationFinished(volume(200, US_GALLON));
        assertEquals(volume(757.0823568, LITRE), done.left());
        assertEquals(Duration.ZERO, done.age());
        assertEquals(
                "no regeneration is due: 757.1 L left, reserve 400 L",
                done.decision().words());
        assertEquals(volume(1000, LITRE), running.regenerationFinished().left());
        assertFalse(done.isRegenerating());
    }

    @Test
    void whatTheHouseholdUsesIsLearned() {
        SoftenerState state = hours(fresh, 14 + 24, 10);
        assertEquals(Set.of(SoftenerNotice.DAY_LEARNED), state.notices());
        assertEquals(Optional.of(volume(240, LITRE)), state.usualDay());
        assertEquals(volume(400, LITRE), state.reserve());
        assertEquals(List.of("a day was learned from: usual use 240 L, reserve 400 L"), state.words());
    }

    @Test
    void exhaustedAndWithoutSalt() {
        SoftenerState state = SoftenerState.exhausted(SETTINGS, 65_500, NOON).withSaltMissing(true);
        state = hours(state, 1, 30);
        assertEquals(volume(30, LITRE), state.overdrawn());
        assertEquals(volume(30, LITRE), state.today().exhausted());
        assertEquals(List.of("exhausted: 30 L passed hard since", "the salt is missing"), state.words());
        assertEquals(
                "regeneration due at night from 02:00: nothing is left, 30 L passed hard since; held back, the salt is missing",
                state.decision().words());
        assertEquals(Hold.NO_SALT, state.decision().hold());

        state = state.regenerationStarted().regenerationFinished();
        assertEquals(Set.of(SoftenerNotice.REGENERATION_WITHOUT_SALT), state.notices());
        assertEquals(
                List.of(
                        "the regeneration ended while the salt was missing: taken as failed",
                        "exhausted: 30 L passed hard since",
                        "the last regeneration failed: 0 L taken to be left",
                        "the salt is missing"),
                state.words());
        assertEquals(
                "regeneration due at night from 02:00: nothing is left, 30 L passed hard since; held back, the last one ended "
                        + "0 s ago, at least 6 h wanted",
                state.withSaltMissing(false).decision().words());
    }

    @Test
    void atOnceWhereTheSettingsAllowIt() {
        SoftenerSettings settings = SoftenerSettings.builder(volume(1, LITRE), volume(1000, LITRE))
                .atOnceBelow(volume(50, LITRE))
                .build();
        SoftenerState state = SoftenerState.regenerated(settings, 0, NOON).read(960, NOON.plusHours(1));
        assertEquals(Due.AT_ONCE, state.decision().due());
        assertEquals(
                "regeneration due now: 40 L left, at once from 50 L",
                state.decision().words());
        SoftenerState failed = state.regenerationStarted().regenerationFailed(false);
        assertEquals(
                "regeneration due at once: 40 L left, at once from 50 L; held back, the last one ended 0 s ago, at least 6 h "
                        + "wanted",
                failed.decision().words());
        assertEquals(List.of("the last regeneration failed: 40 L taken to be left"), failed.words());
        assertEquals(
                volume(0, LITRE),
                state.regenerationStarted().regenerationFailed(true).left());
    }

    @Test
    void theCalendarOverrides() {
        SoftenerState state = hours(fresh, 13 * 24 + 14, 0);
        assertEquals(Reason.CALENDAR, state.decision().reason());
        assertEquals(
                "regeneration due now: the last one is 13 d 14 h old, at most 14 d allowed",
                state.decision().words());
    }

    @Test
    void everyNoticeOfTheMeterHasItsWords() {
        SoftenerState refused = fresh.read(40_000, NOON.plusMinutes(1));
        assertEquals(
                List.of("reading 40000 is refused and not counted: the last believed one is 65500"), refused.words());
        SoftenerState unclear = refused.read(40_001, NOON.plusMinutes(2)).read(40_002, NOON.plusMinutes(3));
        assertEquals(Set.of(SoftenerNotice.READING_REFUSED, SoftenerNotice.METER_UNCLEAR), unclear.notices());
        assertEquals(
                "readings do not go on from 65500: no water is counted until an exchange of the meter is declared",
                unclear.words().get(1));
        assertEquals(
                "no regeneration is due: 1,000 L left, reserve 400 L; no water is counted until an exchange of the meter is "
                        + "declared, so more may be used up",
                unclear.decision().words());
        SoftenerState exchanged = unclear.meterExchanged(40_002).read(40_010, NOON.plusMinutes(4));
        assertEquals(volume(992, LITRE), exchanged.left());
        assertEquals(List.of(), exchanged.words());

        SoftenerState repeated = fresh.read(65_500, NOON);
        assertEquals(Set.of(SoftenerNotice.READING_REPEATED), repeated.notices());
        assertEquals(
                List.of("reading 65500 came again with the same time: a message came twice, or the clock stands"),
                repeated.words());
        SoftenerState gap = fresh.restarted(65_501, NOON.plusHours(26));
        assertEquals(Set.of(SoftenerNotice.LONG_GAP, SoftenerNotice.ROLLOVER_AMBIGUOUS), gap.notices());
        assertEquals(
                "more than the longest gap of 1 d 1 h since the reading before: readings are missing, or the clock was put forward",
                gap.words().get(0));

        SoftenerState ambiguous = fresh.read(65_500, NOON.plusHours(19));
        assertEquals(
                List.of(
                        "the counter may have rolled over once more than counted, which would be 65,540 L more: the least volume "
                                + "was taken"),
                ambiguous.words());
        SoftenerState silent = hours(fresh, 7 * 24 + 1, 0);
        assertEquals(
                List.of(
                        "no pulse for 7 d 1 h: the meter is stuck or nobody is there, which cannot be told; the calendar goes on"),
                silent.words());
        assertEquals(
                List.of("holiday: the reserve stays at 400 L"),
                silent.withHoliday(true).words());
        assertEquals(List.of(), silent.withHoliday(false).words());
    }

    @Test
    void everyNoticeOfClockAndDaysHasItsWords() {
        SoftenerState changed = fresh.read(65_500, NOON.minusHours(1));
        assertEquals(Set.of(SoftenerNotice.CLOCK_CHANGED, SoftenerNotice.ROLLOVER_AMBIGUOUS), changed.notices());
        assertEquals(
                "the clock was changed, now 2026-03-10T11:00: no time is credited, and the day is not learned from",
                changed.words().get(0));
        SoftenerState usual = hours(fresh, 14 + 8 * 24 - 1, 10); // 1:00, at the end of the eighth whole day
        // all days of 240 L: d = 60 (1/2 · 2/3 · … · 7/8) = 7.5, reserve 255 L
        SoftenerState empty = hours(usual, 25, 0);
        assertEquals(Set.of(SoftenerNotice.LOW_DAY), empty.notices());
        assertEquals(
                "a day of no use or little, 0 with little in a row: reserve 255 L",
                empty.words().get(0));
        // a day of 960 L: cut at the first reserve of 400 L, m = 240 + 160 / 8 = 260, d = 7.5 + (160 - 7.5) / 8 =
        // 26.5625
        SoftenerState party = hours(hours(usual, 24, 40), 1, 0);
        assertEquals(Set.of(SoftenerNotice.DAY_LEARNED, SoftenerNotice.OUTLIER_DAY), party.notices());
        assertEquals(
                "a day of uncommon use was cut for learning: reserve 313.1 L",
                party.words().get(1));
    }

    @Test
    void aTotalThatIsFullIsSaid() {
        SoftenerSettings waterworks = SoftenerSettings.builder(volume(1000, LITRE), volume(1_000_000, LITRE))
                .largestFlow(FlowRate.of(600, FlowRate.LITRE_PER_MINUTE))
                .build();
        SoftenerState state = SoftenerState.exhausted(waterworks, 0, NOON);
        for (int i = 1; i <= 4; i++) { // 1000 days of 10 L/s each
            state = state.restarted(i * 864_000L, NOON.plusDays(1000L * i));
        }
        assertEquals(Set.of(SoftenerNotice.LONG_GAP, SoftenerNotice.TOTALS_FULL), state.notices());
        assertEquals(
                "a total has reached 3,000,000,000 L and stands still",
                state.words().get(1));
        assertEquals(volume(3e9, LITRE), state.total().exhausted());
    }

    @Test
    void reportsThatDoNotFitAreIgnoredWithANotice() {
        SoftenerState state = fresh.regenerationFinished();
        assertEquals(List.of("the report does not fit and is ignored: no regeneration is under way"), state.words());
        assertEquals(fresh.left(), state.left());
        assertEquals(
                "the report does not fit and is ignored: a regeneration is under way already",
                fresh.regenerationStarted().regenerationStarted().words().get(0));
        assertEquals(
                Set.of(SoftenerNotice.REPORT_DOES_NOT_FIT),
                fresh.regenerationFailed(true).notices());
    }

    @Test
    void aRegenerationThatNeverEndsIsInterrupted() {
        SoftenerState state = hours(fresh.regenerationStarted(), 5, 0);
        assertEquals(
                List.of(
                        "the regeneration did not report its end within 4 h: taken as interrupted, with nothing left",
                        "the last regeneration failed: 0 L taken to be left"),
                state.words());
    }

    @Test
    void itsLateEndIsBelieved() {
        SoftenerState state =
                hours(fresh.regenerationStarted(), 5, 0).regenerationFinished().read(65_500, NOON.plusHours(6));
        assertEquals(volume(1000, LITRE), state.left());
        SoftenerState late = hours(fresh.regenerationStarted(), 5, 0).regenerationFinished();
        assertEquals(Set.of(SoftenerNotice.REGENERATION_FINISHED_LATE), late.notices());
        assertEquals(
                List.of("the regeneration that was taken as interrupted reported its end after all: 1,000 L left"),
                late.words());
    }

    @Test
    void failuresInARowHoldBackUntilAPersonActs() {
        SoftenerState state = fresh;
        for (int i = 0; i < 3; i++) {
            state = state.regenerationStarted().regenerationFailed(true);
        }
        assertEquals(Hold.FAILURES, state.decision().hold());
        assertEquals(
                "regeneration due at night from 02:00: nothing is left, 0 L passed hard since; held back, 3 in a row failed: "
                        + "acknowledge it or start one by hand",
                state.decision().words());
        assertEquals(
                List.of(
                        "the last regeneration failed: 0 L taken to be left",
                        "3 regenerations in a row failed: none starts by itself until that is acknowledged or one is started by "
                                + "hand"),
                state.words());
        assertEquals(
                Hold.SHORTEST_INTERVAL, state.failuresAcknowledged().decision().hold());
        assertEquals(
                Hold.SHORTEST_INTERVAL,
                state.regenerationStarted().regenerationFailed(true).decision().hold());
    }

    @Test
    void whatNoMeterOrClockShowsIsRefused() {
        String reading = "reading must be from 0 to 65535 of a counter of 16 bits, but was ";
        Refused.argument(reading + "65536", () -> SoftenerState.regenerated(SETTINGS, 65_536, NOON));
        Refused.argument(reading + "-1", () -> SoftenerState.exhausted(SETTINGS, -1, NOON));
        Refused.argument(reading + "65536", () -> fresh.read(65_536, NOON));
        Refused.argument(reading + "65536", () -> fresh.restarted(65_536, NOON));
        Refused.argument(reading + "65536", () -> fresh.meterExchanged(65_536));
        Refused.argument(
                "time must be in the years 1970 to 9999, but was 1969-12-31T23:59",
                () -> fresh.read(0, LocalDateTime.of(1969, 12, 31, 23, 59)));
        Refused.argument(
                "time must be in the years 1970 to 9999, but was +999999999-12-31T23:59:59.999999999",
                () -> fresh.restarted(0, LocalDateTime.MAX));
        Refused.argument(
                "capacity must be above 0 L and at most 1000000 L, but was 0 L",
                () -> fresh.regenerationFinished(volume(0, LITRE)));
        Refused.argument(
                "capacity must be above 0 L and at most 1000000 L, but was 1000001 L",
                () -> fresh.regenerationFinished(volume(1_000_001, LITRE)));
        SoftenerSettings atOnce = SoftenerSettings.builder(volume(1, LITRE), volume(1000, LITRE))
                .atOnceBelow(volume(50, LITRE))
                .build();
        Refused.argument(
                "capacity must be above 50 L, from which one is due at once, and at most 1000000 L, but was 50 L",
                () -> SoftenerState.regenerated(atOnce, 0, NOON).regenerationFinished(volume(50, LITRE)));
        Refused.asNull("at", () -> fresh.read(0, null));
        Refused.asNull("settings", () -> SoftenerState.regenerated(null, 0, NOON));
        Refused.asNull("settings", () -> SoftenerState.exhausted(null, 0, NOON));
    }

    @Test
    void statesAreEqualIfTheyGoOnAlikeAndNoticedTheSame() {
        SoftenerState same = SoftenerState.regenerated(SETTINGS, 65_500, NOON);
        assertEquals(fresh, same);
        assertEquals(fresh.hashCode(), same.hashCode());
        assertNotEquals(fresh, fresh.regenerationFinished()); // a notice
        assertNotEquals(fresh, fresh.read(65_501, NOON));
        assertNotEquals(fresh, fresh.toString());
        assertNotEquals(
                fresh,
                SoftenerState.regenerated(
                        SoftenerSettings.builder(volume(1, LITRE), volume(1000, LITRE))
                                .counterBits(17)
                                .build(),
                        65_500,
                        NOON));
    }
}
