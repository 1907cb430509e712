package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpRig.DAY;
import static evenwater.chemistry.kernel.PumpRig.HOUR;
import static evenwater.chemistry.kernel.PumpRig.ML;
import static evenwater.chemistry.kernel.PumpRig.UL;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Missed portions, clocks that are set, and doses for added water. */
class PumpScheduleTest {

    /** Four portions of 2 mL at 4, 10, 16 and 22 o'clock. */
    private static PumpRig fourPortions(long capMl, long catchUp) {
        return new PumpRig(capMl, 8, 4, 10, 16, 22)
                .with(PumpSettings.CATCH_UP, catchUp)
                .start();
    }

    /**
     * Off from 22:30 for three days: twelve portions pass, the last of them half an hour late, within the grace. Eleven were missed; with each
     * portion one of them is made up, so that no portion is more than doubled. With a cap of 10 mL: 4 at 22:31, 4 at 4:00, 2 at 10:00, nothing at
     * 16:00, 4 again at 22:32, and so on.
     */
    @ParameterizedTest(name = "cap {0} mL, {1} made up: {2} µL at once, then {3}, {4}, {5} µL a day")
    @CsvSource({
        "20,  0, 2000,  8000,  8000,  8000",
        "20,  1, 4000,  8000,  8000,  8000",
        "20,  4, 4000, 14000,  8000,  8000",
        "20, 12, 4000, 16000, 16000, 12000",
        "10, 12, 4000, 10000, 10000, 10000",
    })
    void threeDaysWithoutPower(long cap, long catchUp, long atOnce, long first, long second, long third) {
        PumpRig rig = fourPortions(cap, catchUp);
        assertEquals(8000, rig.live(22 * HOUR + 1800));
        rig.restart(3 * DAY, 3 * DAY);
        assertEquals(atOnce, rig.live(1800));
        assertEquals(11, rig.m[PumpMemory.MISSED]);
        assertEquals(first, rig.live(DAY));
        assertEquals(second, rig.live(DAY));
        assertEquals(third, rig.live(DAY));
    }

    /** The gap is only what the wall clock says: what was dosed before it still counts. */
    @Test
    void timeOffThatIsNotCertainDoesNotFreeTheCap() {
        PumpRig rig = fourPortions(8, 0);
        assertEquals(8000, rig.live(22 * HOUR + 1800));
        rig.restart(3 * DAY, 0);
        assertEquals(0, rig.live(1800));
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(1));
    }

    @Test
    void aPortionThatIsLateWithinTheGraceIsGivenAndOneBeyondItIsMissed() {
        PumpRig rig = fourPortions(20, 0);
        assertEquals(2000, rig.pass(4 * HOUR + 3600).run());
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(6 * HOUR + 1));
        assertTrue(rig.flag(PumpKernel.PORTIONS_MISSED));
        assertEquals(1, rig.m[PumpMemory.MISSED]);
        PumpServiceKernel.acknowledged(rig.m, PumpKernel.NEWS);
        assertFalse(rig.flag(PumpKernel.PORTIONS_MISSED));
        assertEquals(1, rig.m[PumpMemory.MISSED]);
    }

    /** Started at 7:59:30; the first tick comes at 8:00:30. */
    @Test
    void aPortionSoonAfterTheStartIsGiven() {
        PumpRig rig = new PumpRig(10, 6, 8, 20);
        rig.pass(8 * HOUR - 30);
        assertEquals(PumpKernel.DONE, PumpKernel.start(rig.s, rig.m, rig.local, rig.uptime, UL, 500 * ML, 0));
        PumpServiceKernel.tubeSeenFull(rig.m);
        assertEquals(3000, rig.pass(60).run());
        assertEquals(0, rig.m[PumpMemory.MISSED]);
    }

    @Test
    void aPumpThatIsNotAskedForHoursAfterItsStartHasMissedAPortion() {
        PumpRig rig = new PumpRig(10, 6, 8, 20);
        assertEquals(PumpKernel.DONE, PumpKernel.start(rig.s, rig.m, rig.local, rig.uptime, UL, 500 * ML, 0));
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(10 * HOUR));
        assertTrue(rig.flag(PumpKernel.PORTIONS_MISSED));
        assertEquals(1, rig.m[PumpMemory.MISSED]);
    }

    @ParameterizedTest(name = "ticks during the pause: {0}")
    @ValueSource(booleans = {true, false})
    void aPortionSoonAfterThePauseIsGivenAndOneWithinItIsNot(boolean ticks) {
        PumpRig rig = new PumpRig(10, 6, 8, 20).start();
        rig.pass(7 * HOUR).tick();
        PumpServiceKernel.paused(rig.m);
        rig.pass(HOUR + 60); // over 8:00
        if (ticks) {
            assertEquals(PumpKernel.STOPPED, rig.tick());
        }
        rig.pass(60).resume();
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(60));
        rig.pass(12 * HOUR - 210).tick(); // 19:59:30
        PumpServiceKernel.paused(rig.m);
        rig.pass(10).resume();
        assertEquals(3000, rig.pass(60).run());
        assertEquals(0, rig.m[PumpMemory.MISSED]);
    }

    @Test
    void whatTheCapHoldsBackWaitsForTheGraceAndIsThenMissed() {
        PumpRig rig = fourPortions(8, 2);
        assertEquals(PumpKernel.RUN, rig.byHand(7000));
        rig.confirm();
        assertEquals(1000, rig.pass(4 * HOUR).run());
        assertEquals(PumpKernel.HELD_BY_CAP, rig.tickAfter(HOUR));
        assertEquals(1000, rig.ul(PumpMemory.DUE));
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(1));
        assertEquals(1000, rig.ul(PumpMemory.DEBT));
        assertEquals(1, rig.m[PumpMemory.MISSED]);
    }

    @Test
    void theCapHoldsFor24HoursToTheSecond() {
        PumpRig rig = new PumpRig(8, 0).start();
        rig.pass(1).byHand(8000);
        rig.confirm();
        rig.pass(DAY);
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(1));
        rig.pass(1);
        assertEquals(PumpKernel.RUN, rig.byHand(8000));
    }

    @Test
    void theCapHoldsForACalendarDayOf25Hours() {
        PumpRig rig = new PumpRig(8, 0).start();
        rig.byHand(8000);
        rig.confirm();
        rig.pass(2 * HOUR).tick();
        rig.local -= HOUR; // summer time ends
        rig.pass(23 * HOUR - 1);
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(1)); // 23:59:59, 24:59:59 later
        rig.pass(1);
        assertEquals(PumpKernel.RUN, rig.byHand(8000));
    }

    @Test
    void settingTheClockOverMidnightAgainAndAgainGivesNothingMore() {
        PumpRig rig = fourPortions(10, 12);
        long given = rig.live(DAY);
        for (int i = 0; i < 100; i++) {
            rig.local += (i % 3 - 1) * 31 * HOUR;
            given += rig.live(600);
        }
        assertTrue(given <= 8000 + 10_000, () -> given(rig));
        assertTrue(rig.flag(PumpKernel.CLOCK_CHANGED));
    }

    private static String given(PumpRig rig) {
        return rig.ul(PumpMemory.DOSED) + " µL";
    }

    @Test
    void aClockSetBackDoesNotRepeatAPortion() {
        PumpRig rig = fourPortions(20, 0);
        assertEquals(2000, rig.pass(4 * HOUR).run());
        rig.local -= HOUR;
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(2 * HOUR));
        assertTrue(rig.flag(PumpKernel.CLOCK_CHANGED));
        assertEquals(2000, rig.pass(5 * HOUR).run());
    }

    @Test
    void aClockSetForwardOverAPortionDoesNotLoseIt() {
        PumpRig rig = new PumpRig(20, 8, 2).with(PumpSettings.CATCH_UP, 2).start();
        rig.pass(2 * HOUR - 60).tick();
        rig.local += HOUR;
        assertEquals(8000, rig.run());
        assertEquals(0, rig.m[PumpMemory.MISSED]);
    }

    @Test
    void aClockSetForwardByDaysOwesNothing() {
        PumpRig rig = fourPortions(20, 12);
        rig.tick();
        rig.local += 5 * DAY + 6 * HOUR;
        assertEquals(PumpKernel.NOTHING_DUE, rig.tick());
        assertEquals(0, rig.m[PumpMemory.MISSED]);
        assertEquals(0, rig.m[PumpMemory.DEBT]);
    }

    @Test
    void aClockThatWasWrongByYearsDoesNotStopTheScheduleWhenItIsSetRight() {
        PumpRig rig = fourPortions(20, 0);
        rig.local += 3650 * DAY;
        rig.tick();
        rig.local -= 3650 * DAY;
        rig.tick();
        assertEquals(2000, rig.pass(4 * HOUR).run());
        rig.restart(-rig.local, 0); // the battery of the clock is flat: 1970
        assertEquals(PumpKernel.NOTHING_DUE, rig.tick());
        assertTrue(rig.flag(PumpKernel.CLOCK_CHANGED));
        assertEquals(2000, rig.pass(4 * HOUR).run());
    }

    @Test
    void aSlowClockIsNoClockThatWasSet() {
        PumpRig rig = fourPortions(20, 0);
        for (int i = 0; i < 1000; i++) {
            rig.local += i % 2 == 0 ? 100 : -100;
            rig.pass(60).tick();
        }
        assertFalse(rig.flag(PumpKernel.CLOCK_CHANGED));
    }

    /** 2 mL for each litre: 0.3 L want 600 µL, and 3 · 0.0000005 L want 3 pL in all. */
    @Test
    void addedWaterIsDosedInProportion() {
        PumpRig rig = new PumpRig(20, 0).with(PumpSettings.PER_LITRE, 2 * ML).start();
        assertEquals(PumpKernel.DONE, PumpServiceKernel.waterAdded(rig.s, rig.m, 300_000));
        assertEquals(600, rig.run());
        rig.with(PumpSettings.PER_LITRE, 1_333_333);
        for (int i = 0; i < 3_000; i++) {
            PumpServiceKernel.waterAdded(rig.s, rig.m, 1);
        }
        assertEquals(3_999, rig.m[PumpMemory.OWED]); // 3 mL times 1.333333 µL/L
        assertEquals(999_000, rig.m[PumpMemory.WATER_REST]);
    }

    @Test
    void addedWaterThatWantsMoreThanTheCapIsRefusedAndWhatIsOwedWaits() {
        PumpRig rig = new PumpRig(20, 0).with(PumpSettings.PER_LITRE, 2 * ML).start();
        assertEquals(PumpKernel.TOO_MUCH, PumpServiceKernel.waterAdded(rig.s, rig.m, 10_000_001));
        rig.pass(1).byHand(15_000);
        rig.confirm();
        assertEquals(PumpKernel.DONE, PumpServiceKernel.waterAdded(rig.s, rig.m, 10_000_000));
        assertEquals(5000, rig.run());
        assertEquals(PumpKernel.HELD_BY_CAP, rig.tickAfter(DAY));
        assertEquals(15_000, rig.pass(1).run());
    }

    @Test
    void aCalibrationChangesWhatAStepIsAndNothingThatWasCounted() {
        PumpRig rig = fourPortions(20, 0);
        assertEquals(2000, rig.pass(4 * HOUR).run());
        assertEquals(PumpKernel.DONE, PumpServiceKernel.calibrated(rig.s, rig.m, UL * 110 / 100));
        assertFalse(rig.flag(PumpKernel.CALIBRATION_DRIFTED)); // 10 % and no more
        assertEquals(PumpKernel.DONE, PumpServiceKernel.calibrated(rig.s, rig.m, 2 * UL));
        assertTrue(rig.flag(PumpKernel.CALIBRATION_DRIFTED));
        assertEquals(2 * ML, rig.m[PumpMemory.DOSED]);
        assertEquals(PumpKernel.RUN, rig.tickAfter(6 * HOUR));
        assertEquals(1000, rig.m[PumpMemory.PENDING]);
        assertEquals(PumpKernel.AWAITING, PumpServiceKernel.calibrated(rig.s, rig.m, UL));
        assertEquals(PumpKernel.AWAITING, PumpServiceKernel.refilled(rig.s, rig.m, ML));
    }

    @Test
    void otherSettingsKeepWhatWasCounted() {
        PumpRig rig = fourPortions(20, 0);
        rig.live(23 * HOUR);
        rig.with(PumpSettings.CAP, 8 * ML).with(PumpSettings.DAILY, 4 * ML);
        assertEquals(PumpKernel.DONE, rig.changeSettings(UL));
        assertEquals(0, PumpServiceKernel.allowed(rig.s, rig.m));
        rig.with(PumpSettings.RESERVOIR, ML);
        assertEquals(PumpKernel.BAD_INPUT, rig.changeSettings(UL));
    }

    /** A run of the whole cap ends an hour after its order, nothing ticks meanwhile, and then settings are stored: its day begins there. */
    @Test
    void aRunThatOtherSettingsEndCountsFromThen() {
        PumpRig rig = new PumpRig(20, 0).with(PumpSettings.CONFIRM_WITHIN, HOUR).start();
        rig.pass(100);
        assertEquals(PumpKernel.RUN, rig.byHand(20_000));
        rig.pass(HOUR);
        assertEquals(PumpKernel.DONE, rig.changeSettings(UL));
        rig.pass(23 * HOUR + 1);
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(1));
        rig.pass(HOUR + 1);
        assertEquals(PumpKernel.RUN, rig.byHand(20_000));
    }

    /** 2000 steps of 1 µL are under way when a step becomes 10 µL. */
    @Test
    void otherSettingsCountTheRunUnderWayByTheOldCalibration() {
        PumpRig rig = fourPortions(20, 0);
        assertEquals(PumpKernel.RUN, rig.tickAfter(4 * HOUR));
        assertEquals(PumpKernel.BAD_INPUT, rig.changeSettings(0));
        assertEquals(PumpKernel.DONE, rig.changeSettings(10 * UL));
        assertEquals(2000, rig.ul(PumpMemory.DOSED));
        assertTrue(rig.flag(PumpKernel.UNCONFIRMED));
        assertTrue(rig.flag(PumpKernel.CALIBRATION_DRIFTED));
        assertEquals(0, rig.m[PumpMemory.PENDING]);
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(1));
        assertEquals(PumpKernel.RUN, rig.tickAfter(6 * HOUR));
        assertEquals(200, rig.m[PumpMemory.PENDING]);
    }

    /** 8 mL a day: 56 mL last for a week; 20 mL in the last 24 hours make it 2.8 days. */
    @Test
    void theReservoirIsLowBelowTheDaysOfUse() {
        PumpRig rig = new PumpRig(20, 8, 4).start(UL, 56 * ML);
        assertFalse(PumpServiceKernel.isLow(rig.s, rig.m));
        PumpServiceKernel.refilled(rig.s, rig.m, 56 * ML - 1);
        assertTrue(PumpServiceKernel.isLow(rig.s, rig.m));
        PumpServiceKernel.refilled(rig.s, rig.m, 159 * ML);
        rig.byHand(20_000);
        rig.confirm();
        assertEquals(20 * ML, PumpServiceKernel.dailyUse(rig.s, rig.m));
        assertTrue(PumpServiceKernel.isLow(rig.s, rig.m)); // 139 mL for 7 · 20 mL
    }
}
