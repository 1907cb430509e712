package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpRig.DAY;
import static evenwater.chemistry.kernel.PumpRig.HOUR;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Reports of runs: of the one under way, of others, of more and of less than was ordered. */
class PumpReportTest {

    private static PumpRig twoPortions() {
        return new PumpRig(10, 6, 8, 20).start();
    }

    @Test
    void moreStepsThanOrderedAreCountedAndFlagged() {
        PumpRig rig = twoPortions();
        rig.pass(8 * HOUR).tick();
        rig.dosed(8000);
        assertTrue(rig.flag(PumpKernel.OVERRUN));
        assertEquals(8000, rig.ul(PumpMemory.DOSED));
        assertEquals(2000, rig.pass(12 * HOUR).run()); // what the cap leaves
    }

    @Test
    void stepsThatNobodyOrderedCountAgainstTheCap() {
        PumpRig rig = twoPortions();
        rig.unordered(9000);
        assertTrue(rig.flag(PumpKernel.OVERRUN));
        assertEquals(1000, rig.pass(8 * HOUR).run());
        assertEquals(PumpKernel.HELD_BY_CAP, rig.tick());
    }

    @Test
    void aReportOfAnotherRunChangesNothing() {
        PumpRig rig = twoPortions();
        long[] before = rig.m.clone();
        assertEquals(PumpKernel.OTHER_RUN, rig.report(1, 500)); // none was ordered yet
        assertArrayEquals(before, rig.m);
        rig.byHand(4000);
        rig.confirm();
        before = rig.m.clone();
        assertEquals(PumpKernel.OTHER_RUN, rig.report(1, 4000)); // repeated
        assertArrayEquals(before, rig.m);
        rig.byHand(5000);
        before = rig.m.clone();
        assertEquals(PumpKernel.OTHER_RUN, rig.report(1, 0)); // late and repeated, while the second runs
        assertEquals(PumpKernel.OTHER_RUN, rig.fail(1));
        assertEquals(PumpKernel.OTHER_RUN, rig.report(3, 0));
        assertArrayEquals(before, rig.m);
        assertEquals(PumpKernel.DONE, rig.report(2, 5000));
        assertEquals(9000, rig.ul(PumpMemory.DOSED));
    }

    @Test
    void aReportThatComesAfterTheRunWasCountedInFullChangesNothing() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.tickAfter(8 * HOUR));
        rig.tickAfter(901);
        assertEquals(PumpKernel.OTHER_RUN, rig.report(1, 10));
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
    }

    @Test
    void aReportThatFindsTheRunCutByARestartCountsItOnce() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.tickAfter(8 * HOUR));
        rig.uptime = 0;
        assertEquals(PumpKernel.DONE, rig.report(1, 3000));
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
        assertFalse(rig.flag(PumpKernel.OVERRUN));
    }

    @Test
    void aLateFailureStopsThePumpToo() {
        PumpRig rig = twoPortions();
        rig.pass(8 * HOUR).run();
        assertEquals(PumpKernel.DONE, rig.fail(1));
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
        assertEquals(PumpKernel.STOPPED_BY_FAILURE, rig.tick());
    }

    @Test
    void whatNobodyOrderedDoesNotEndTheRunUnderWay() {
        PumpRig rig = twoPortions();
        assertEquals(PumpKernel.RUN, rig.tickAfter(8 * HOUR));
        rig.unordered(500);
        assertEquals(PumpKernel.AWAITING, rig.tick());
        rig.confirm();
        assertEquals(3500, rig.ul(PumpMemory.DOSED));
    }

    /** Twenty times 90 of 100 mL by hand, each reported as not made: 90 mL are believed, 90 mL count, and then the cap holds. */
    @Test
    void reportsOfNothingAreBelievedUpToTheCap() {
        PumpRig rig = new PumpRig(100, 0).start();
        long ordered = 0;
        for (int i = 0; i < 20; i++) {
            if (rig.byHand(90_000) == PumpKernel.RUN) {
                ordered += 90;
                rig.pass(60).dosed(0);
            }
        }
        assertEquals(180, ordered);
        assertEquals(90_000, rig.ul(PumpMemory.WINDOW_SUM));
        assertTrue(rig.flag(PumpKernel.SHORT_RUNS));
        rig.pass(DAY + 1);
        assertEquals(PumpKernel.RUN, rig.byHand(100_000)); // a day later all of it is believed again
        rig.dosed(0);
        assertEquals(90_000, rig.ul(PumpMemory.DOSED));
    }

    @Test
    void aPortionThatIsAlwaysReportedAsNotMadeIsNotOrderedForEver() {
        PumpRig rig = twoPortions();
        rig.pass(8 * HOUR);
        long ordered = 0;
        for (int i = 0; i < 1000 && rig.tick() == PumpKernel.RUN; i++) {
            ordered += rig.m[PumpMemory.PENDING];
            rig.dosed(0);
        }
        assertEquals(4 * 3000, ordered); // three times 3 of 10 mL are believed
        assertEquals(3000, rig.ul(PumpMemory.DOSED));
    }
}
