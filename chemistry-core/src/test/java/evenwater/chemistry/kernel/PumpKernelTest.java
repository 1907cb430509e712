package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpRig.DAY;
import static evenwater.chemistry.kernel.PumpRig.HOUR;
import static evenwater.chemistry.kernel.PumpRig.ML;
import static evenwater.chemistry.kernel.PumpRig.UL;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PumpKernelTest {

    private static PumpRig twoPortions() {
        return new PumpRig(10, 6, 8, 20).start();
    }

    @Test
    void aPortionIsOrderedAtItsTimeAndCountedWhenItIsConfirmed() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(8 * HOUR - 1));
        assertEquals(PumpKernel.RUN, rig.tickAfter(1));
        assertEquals(3000, rig.m[PumpMemory.PENDING]);
        assertEquals(0, rig.m[PumpMemory.DOSED]);
        assertEquals(PumpKernel.AWAITING, rig.tickAfter(1));
        rig.dosed(3000);
        assertEquals(3 * ML, rig.m[PumpMemory.DOSED]);
        assertEquals(997 * ML, rig.m[PumpMemory.LEVEL]);
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(1));
        assertEquals(3000, rig.pass(12 * HOUR).run());
    }

    /** 1.0004 mL a day with steps of 0.7 µL: 1429.14 steps, so the seventh of a step must not be lost each time. */
    @Test
    void aThousandDosesAddUpToWithinAStep() {
        PumpRig rig = new PumpRig(10, 6, 8).with(PumpSettings.DAILY, 1_000_400_000L);
        rig.with(PumpSettings.RESERVOIR, 2000 * ML).start(700_000, 2000 * ML);
        rig.pass(9 * HOUR - 1800);
        for (int i = 0; i < 1000; i++) {
            assertEquals(PumpKernel.RUN, rig.tick());
            rig.confirm();
            rig.pass(DAY);
        }
        long missing = 1_000_400 * ML / 1000 - rig.m[PumpMemory.DOSED];
        assertTrue(missing >= 0 && missing < 700_000, () -> missing + " pL");
    }

    @Test
    void portionsOfADayAddUpToItsDose() {
        PumpRig rig = new PumpRig(10, 1, 1, 2, 3).with(PumpSettings.DAILY, 1_000_000_001L);
        long sum = 0;
        for (int i = 0; i < 3; i++) {
            sum += PumpSettings.portion(rig.s, i);
        }
        assertEquals(1_000_000_001L, sum);
    }

    @Test
    void portionsOfLessThanAStepAddUpBeforeTheyRun() {
        PumpRig rig = new PumpRig(10, 6, 1, 2, 3, 4).with(PumpSettings.DAILY, 4 * 400_000);
        rig.start();
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(HOUR)); // 0.4 µL
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(HOUR)); // 0.8
        assertEquals(PumpKernel.RUN, rig.tickAfter(HOUR)); // 1.2
        assertEquals(1, rig.m[PumpMemory.PENDING]);
        assertEquals(200_000, rig.m[PumpMemory.CARRY]);
    }

    @Test
    void aRunWhoseEndNobodyReportsCountsInFull() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.tickAfter(8 * HOUR));
        assertEquals(PumpKernel.AWAITING, rig.tickAfter(900));
        assertFalse(rig.flag(PumpKernel.UNCONFIRMED));
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(1));
        assertTrue(rig.flag(PumpKernel.UNCONFIRMED));
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
    }

    @Test
    void aRunThatTakesLongIsAwaitedForLonger() {
        PumpRig rig = new PumpRig(10, 6, 8)
                .with(PumpSettings.MILLISECONDS_PER_STEP, 1000)
                .start();
        assertEquals(PumpKernel.RUN, rig.tickAfter(8 * HOUR)); // 6000 steps of a second
        assertEquals(PumpKernel.AWAITING, rig.tickAfter(6900));
        assertEquals(PumpKernel.NOTHING_DUE, rig.tickAfter(1));
    }

    @ParameterizedTest(name = "declared: {0}")
    @ValueSource(booleans = {true, false})
    void aRunThatALossOfPowerCutsCountsInFull(boolean declared) {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.tickAfter(8 * HOUR));
        if (declared) {
            assertEquals(PumpKernel.DONE, rig.restart(60, 0));
        } else {
            rig.local += 60;
            rig.uptime = 0;
        }
        assertEquals(PumpKernel.NOTHING_DUE, rig.tick());
        assertTrue(rig.flag(PumpKernel.UNCONFIRMED));
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
    }

    @Test
    void fewerStepsLeaveTheRestDue() {
        PumpRig rig = twoPortions();
        rig.pass(8 * HOUR).tick();
        rig.dosed(1000);
        assertEquals(2000, rig.run());
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
        assertEquals(PumpKernel.NOTHING_DUE, rig.tick());
    }

    @Test
    void moreThanWasSaidToBeInTheReservoirMustHaveBeenInIt() {
        PumpRig rig = new PumpRig(10, 6, 8, 20).start(UL, 2 * ML);
        rig.unordered(5000);
        assertEquals(0, rig.m[PumpMemory.LEVEL]);
        assertEquals(5 * ML, rig.m[PumpMemory.FILLED]);
    }

    @Test
    void aFailedRunCountsInFullAndStopsThePumpUntilItIsResumed() {
        PumpRig rig = twoPortions();
        rig.pass(8 * HOUR).tick();
        assertEquals(PumpKernel.DONE, rig.fail(1));
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
        assertEquals(PumpKernel.STOPPED_BY_FAILURE, rig.tickAfter(12 * HOUR));
        assertEquals(PumpKernel.STOPPED_BY_FAILURE, rig.byHand(100));
        PumpServiceKernel.acknowledged(rig.m, PumpKernel.FAILED); // reading is not repairing
        assertEquals(PumpKernel.STOPPED_BY_FAILURE, rig.tick());
        rig.resume();
        assertEquals(PumpKernel.NOTHING_DUE, rig.tick()); // the portion of 20:00 was let go
        assertEquals(3000, rig.pass(12 * HOUR).run());
    }

    @Test
    void aPausedPumpLetsPortionsGo() {
        PumpRig rig = new PumpRig(20, 6, 8, 20).with(PumpSettings.CATCH_UP, 4).start();
        PumpServiceKernel.paused(rig.m);
        assertEquals(PumpKernel.STOPPED, rig.tickAfter(30 * HOUR));
        assertEquals(PumpKernel.STOPPED, rig.byHand(100));
        assertEquals(PumpKernel.STOPPED, rig.prime(100, false));
        rig.resume();
        assertEquals(PumpKernel.NOTHING_DUE, rig.tick());
        assertEquals(3000, rig.pass(2 * HOUR).run()); // nothing is made up
    }

    @Test
    void aDoseByHandRunsAtOnceOrNotAtAll() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.byHand(8000));
        assertEquals(PumpKernel.AWAITING, rig.byHand(1));
        rig.confirm();
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(2001));
        assertEquals(PumpKernel.RUN, rig.byHand(2000));
        rig.confirm();
        assertEquals(10_000, rig.ul(PumpMemory.DOSED));
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(1));
        assertEquals(PumpKernel.TOO_SMALL, PumpKernel.doseByHand(rig.s, rig.m, UL - 1, rig.local, rig.uptime));
    }

    @Test
    void primingElsewhereIsNoDoseAndPrimingIntoTheTankIsOne() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.prime(5000, false));
        rig.confirm();
        assertEquals(5000, rig.ul(PumpMemory.PRIMED));
        assertEquals(0, rig.ul(PumpMemory.WINDOW_SUM));
        assertEquals(PumpKernel.TOO_MUCH, rig.prime(5001, false));
        for (int i = 0; i < 2; i++) {
            assertEquals(PumpKernel.RUN, rig.prime(5000, true));
            rig.confirm();
        }
        assertEquals(10_000, rig.ul(PumpMemory.DOSED));
        assertEquals(PumpKernel.HELD_BY_CAP, rig.prime(1, true));
        assertEquals(PumpKernel.RUN, rig.prime(1, false));
        assertEquals(PumpKernel.AWAITING, rig.prime(1, false));
    }

    @Test
    void aPumpThatBeginsMustBePrimed() {
        PumpRig rig = twoPortions();
        PumpKernel.start(rig.s, rig.m, rig.local, rig.uptime, UL, 500 * ML, 0);
        rig.tick();
        assertEquals(PumpKernel.UNPRIMED, rig.tickAfter(8 * HOUR));
        assertEquals(PumpKernel.UNPRIMED, rig.byHand(100));
        rig.prime(3000, false);
        rig.confirm();
        assertEquals(PumpKernel.UNPRIMED, rig.tick());
        rig.prime(2000, false);
        rig.confirm();
        assertEquals(3000, rig.run());
    }

    @Test
    void anEmptyReservoirRefusesAndWantsPrimingAfterwards() {
        PumpRig rig =
                new PumpRig(10, 6, 8, 20).with(PumpSettings.UNUSABLE, 2 * ML).start(UL, 6 * ML);
        assertEquals(3000, rig.pass(8 * HOUR).run());
        assertEquals(PumpKernel.EMPTY, rig.byHand(1001));
        assertFalse(rig.flag(PumpKernel.RESERVOIR_EMPTY)); // asking for much draws no air
        assertEquals(1000, rig.pass(12 * HOUR).run()); // down to the intake
        assertFalse(rig.flag(PumpKernel.RESERVOIR_EMPTY));
        assertEquals(PumpKernel.EMPTY, rig.tick());
        assertEquals(PumpKernel.EMPTY, rig.byHand(1));
        assertEquals(PumpKernel.EMPTY, rig.prime(1, false));
        assertEquals(PumpKernel.DONE, PumpServiceKernel.refilled(rig.s, rig.m, 1000 * ML));
        assertEquals(PumpKernel.UNPRIMED, rig.tick());
        PumpServiceKernel.tubeSeenFull(rig.m);
        assertEquals(2000, rig.run()); // the rest of the portion
        assertEquals(6 + 998, rig.m[PumpMemory.FILLED] / ML); // 2 mL were left of the first 6
        PumpServiceKernel.tubeDrained(rig.m);
        assertEquals(PumpKernel.UNPRIMED, rig.byHand(1));
    }

    /** 60 mL are owed for added water, 50 mL are there: 50 mL run, 10 mL wait, and the portion of 2 mL comes after a refill in its grace. */
    @Test
    void aRunThatTheReservoirCannotFeedIsCutAndNoAirIsDeclared() {
        PumpRig rig = new PumpRig(100, 2, 8).with(PumpSettings.PER_LITRE, ML).start(10 * UL, 50 * ML);
        assertEquals(PumpKernel.DONE, PumpServiceKernel.waterAdded(rig.s, rig.m, 60_000_000));
        assertEquals(50_000, rig.pass(60).run());
        assertFalse(rig.flag(PumpKernel.PRIMING_NEEDED));
        assertFalse(rig.flag(PumpKernel.RESERVOIR_EMPTY));
        assertEquals(10_000, rig.ul(PumpMemory.OWED));
        PumpServiceKernel.refilled(rig.s, rig.m, 500 * ML);
        assertEquals(10_000, rig.pass(60).run());
        assertEquals(2000, rig.pass(8 * HOUR).run());
        assertEquals(62_000, rig.ul(PumpMemory.DOSED));
    }

    @Test
    void aMemoryThatWasLostBeginsWithTheCapSpent() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.DONE, PumpKernel.start(rig.s, rig.m, rig.local, rig.uptime, UL, 500 * ML, 10 * ML));
        PumpServiceKernel.tubeSeenFull(rig.m);
        rig.tick();
        assertEquals(PumpKernel.HELD_BY_CAP, rig.tickAfter(8 * HOUR));
        assertEquals(3000, rig.pass(24 * HOUR).run());
        assertEquals(3 * ML, rig.m[PumpMemory.DOSED]); // what was feared is no dose
    }

    @Test
    void numbersOutOfRangeAreAnsweredAndChangeNothing() {
        PumpRig rig = twoPortions();
        long[] before = rig.m.clone();
        long l = rig.local;
        long u = rig.uptime;
        long[] bad = {-1, Long.MIN_VALUE, Long.MAX_VALUE, PumpMemory.LATEST + 1};
        for (long x : bad) {
            assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.resumed(rig.s, rig.m, l, x));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.tick(rig.s, rig.m, x, u));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.tick(rig.s, rig.m, l, x));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.restarted(rig.s, rig.m, x, u, 0));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.restarted(rig.s, rig.m, l, u, x));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.failed(rig.s, rig.m, 1, x, u));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.dosed(rig.s, rig.m, 1, 1, x, u));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.doseByHand(rig.s, rig.m, 1, l, x));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.prime(rig.s, rig.m, 1, true, x, u));
        }
        for (long x : new long[] {-1, 1_000_000_001, Long.MIN_VALUE, Long.MAX_VALUE}) {
            assertEquals(PumpKernel.BAD_INPUT, rig.report(1, x)); // 1000 L are 10⁹ steps
            assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.dosedUnordered(rig.s, rig.m, x, l, u));
        }
        for (long x : new long[] {0, -1, Long.MIN_VALUE, Long.MAX_VALUE}) {
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.doseByHand(rig.s, rig.m, x, l, u));
            assertEquals(x < 1 ? PumpKernel.BAD_INPUT : PumpKernel.OTHER_RUN, rig.report(x, 1));
            assertEquals(x < 1 ? PumpKernel.BAD_INPUT : PumpKernel.OTHER_RUN, rig.fail(x));
            assertEquals(PumpKernel.BAD_INPUT, PumpKernel.prime(rig.s, rig.m, x, true, l, u));
            assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.waterAdded(rig.s, rig.m, x));
            assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.calibrated(rig.s, rig.m, x));
            assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.refilled(rig.s, rig.m, x == 0 ? -2 : x));
        }
        assertArrayEquals(before, rig.m);
    }

    @Test
    void everyEventThatIsTakenGrowsTheSequence() {
        PumpRig rig = twoPortions();
        long before = rig.m[PumpMemory.SEQUENCE];
        Runnable[] events = {
            rig::tick,
            () -> rig.byHand(1),
            rig::confirm,
            () -> rig.prime(1, false),
            () -> rig.fail(2),
            rig::resume,
            () -> rig.unordered(1),
            () -> rig.restart(1, 0),
            () -> PumpServiceKernel.waterAdded(rig.s, rig.m, 1),
            () -> PumpServiceKernel.refilled(rig.s, rig.m, ML),
            () -> PumpServiceKernel.calibrated(rig.s, rig.m, UL),
            () -> PumpServiceKernel.tubeSeenFull(rig.m),
            () -> PumpServiceKernel.tubeDrained(rig.m),
            () -> PumpServiceKernel.paused(rig.m),
            () -> PumpServiceKernel.acknowledged(rig.m, PumpKernel.NEWS),
            () -> rig.changeSettings(UL)
        };
        for (int i = 0; i < events.length; i++) {
            events[i].run();
            assertEquals(before + 1 + i, rig.m[PumpMemory.SEQUENCE], "event " + i);
        }
        assertEquals(PumpKernel.OTHER_RUN, rig.report(1, 1));
        assertEquals(before + events.length, rig.m[PumpMemory.SEQUENCE]);
    }

    @Test
    void aMemoryThatWasNeverStartedIsAnswered() {
        long[] s = new long[PumpSettings.LENGTH];
        long[] m = new long[PumpMemory.LENGTH];
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.tick(s, m, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.doseByHand(s, m, 5, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.prime(s, m, 5, false, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.dosed(s, m, 1, 5, 0, 0));
        s[PumpSettings.RESERVOIR] = ML;
        s[PumpSettings.CAP] = ML;
        s[PumpSettings.PER_LITRE] = 1;
        assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.waterAdded(s, m, 1));
        assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.refilled(s, m, ML));
        assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.calibrated(s, m, UL));
        assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.settingsChanged(s, m, UL, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.failed(s, m, 1, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.restarted(s, m, 0, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpServiceKernel.resumed(s, m, 0, 0));
        assertArrayEquals(new long[PumpMemory.LENGTH], m);
    }

    @Test
    void fullTotalsAreAnswered() {
        PumpRig rig = twoPortions();
        int times = 0;
        while (PumpServiceKernel.dosedUnordered(rig.s, rig.m, 1_000_000_000, rig.local, rig.uptime)
                == PumpKernel.DONE) {
            times++;
        }
        assertEquals(3999, times); // 4 million litres, 1000 L at a time, but for a run that may be under way
        assertTrue(PumpMemory.isUsable(rig.m));
        assertEquals(PumpKernel.BAD_INPUT, rig.report(1, 1));
        assertEquals(PumpKernel.HELD_BY_CAP, rig.byHand(1));
    }

    @Test
    void startRefusesWhatIsOutOfRange() {
        PumpRig rig = twoPortions();
        long[] m = rig.m;
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(rig.s, new long[3], 0, 0, UL, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(new long[3], m, 0, 0, UL, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(rig.s, m, -1, 0, UL, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(rig.s, m, 0, -1, UL, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(rig.s, m, 0, 0, 0, 0, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(rig.s, m, 0, 0, UL, 1001 * ML, 0));
        assertEquals(PumpKernel.BAD_INPUT, PumpKernel.start(rig.s, m, 0, 0, UL, 0, 11 * ML));
    }

    /** A restart at 2.9 s of uptime and a tick at 3.0 s are one second apart on the counter, and a tenth in truth. */
    @Test
    void noFractionOfASecondIsCreditedAtARestart() {
        PumpRig rig = twoPortions();
        long before = rig.m[PumpMemory.ACCRUED];
        PumpKernel.restarted(rig.s, rig.m, rig.local, 2, 0);
        PumpKernel.tick(rig.s, rig.m, rig.local, 3);
        assertEquals(before, rig.m[PumpMemory.ACCRUED]);
        PumpKernel.tick(rig.s, rig.m, rig.local, 4);
        assertEquals(before + 1, rig.m[PumpMemory.ACCRUED]);
    }

    @Test
    void settingsOutOfRangeAreUnusable() {
        PumpRig rig = twoPortions();
        assertTrue(PumpSettings.areUsable(rig.s));
        for (int place = 0; place < PumpSettings.TIMES + 2; place++) {
            for (long hostile : new long[] {-1, Long.MIN_VALUE, Long.MAX_VALUE}) {
                long[] s = rig.s.clone();
                s[place] = hostile;
                assertFalse(PumpSettings.areUsable(s), place + " " + hostile);
            }
        }
        rig.s[PumpSettings.TIMES + 1] = rig.s[PumpSettings.TIMES];
        assertFalse(PumpSettings.areUsable(rig.s)); // two portions at one time
    }
}
