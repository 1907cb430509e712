package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.ValveKernel.BAD_INPUT;
import static evenwater.chemistry.kernel.ValveKernel.DOES_NOT_FIT;
import static evenwater.chemistry.kernel.ValveKernel.FINISHED_LATE;
import static evenwater.chemistry.kernel.ValveKernel.INTERRUPTED;
import static evenwater.chemistry.kernel.ValveKernel.NOT_BEGUN;
import static evenwater.chemistry.kernel.ValveKernel.OK;
import static evenwater.chemistry.kernel.ValveKernel.WITHOUT_SALT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ValveEventsTest {

    private static final long CAPACITY = 900 * LITRE;

    private final MeteredSoftener softener = new MeteredSoftener();
    private final ValveState state = softener.state;

    @Test
    void nothingHappensToAStateThatHasNotBegun() {
        ValveState before = softener.copy();
        assertEquals(NOT_BEGUN, ValveEvents.started(softener.settings, state));
        assertEquals(NOT_BEGUN, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(NOT_BEGUN, ValveEvents.failed(state, true));
        assertEquals(NOT_BEGUN, ValveEvents.salt(state, true));
        assertEquals(NOT_BEGUN, ValveEvents.failuresAcknowledged(state));
        assertEquals(NOT_BEGUN, ValveEvents.holiday(state, true));
        assertEquals(NOT_BEGUN, ValveEvents.meterExchanged(softener.settings, state, 0));
        assertTrue(before.isSameAs(state));
    }

    @Test
    void anEventThatDoesNotFitChangesNothing() {
        softener.begun(0);
        ValveState before = softener.copy();
        assertEquals(DOES_NOT_FIT, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(DOES_NOT_FIT, ValveEvents.failed(state, true));
        assertEquals(BAD_INPUT, ValveEvents.meterExchanged(softener.settings, state, 65_536));
        assertEquals(BAD_INPUT, ValveEvents.meterExchanged(softener.settings, state, -1));
        assertTrue(before.isSameAs(state));

        assertEquals(OK, ValveEvents.started(softener.settings, state));
        before = softener.copy();
        assertEquals(DOES_NOT_FIT, ValveEvents.started(softener.settings, state));
        for (long capacity : new long[] {0, -1, ValveKernel.LARGEST_CAPACITY + 1, Long.MAX_VALUE}) {
            assertEquals(BAD_INPUT, ValveEvents.finished(softener.settings, state, capacity));
        }
        assertTrue(before.isSameAs(state));
    }

    @Test
    void aGoodRegenerationRestoresTheCapacityThatItGives() {
        softener.begun(0);
        softener.steps(5, 30);
        ValveEvents.started(softener.settings, state);
        softener.steps(1, 0);
        assertEquals(OK, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(CAPACITY, softener.count(ValveCount.LEFT));
        assertEquals(CAPACITY, softener.count(ValveCount.CAPACITY));
        assertEquals(0, softener.count(ValveCount.AGE));
        assertEquals(0, softener.count(ValveCount.SINCE_END));
        assertEquals(0, softener.count(ValveCount.FAILED));
    }

    @Test
    void theSmallestAndTheLargestCapacityAreTaken() {
        softener.begun(0);
        for (long capacity : new long[] {1, ValveKernel.LARGEST_CAPACITY}) {
            ValveEvents.started(softener.settings, state);
            assertEquals(OK, ValveEvents.finished(softener.settings, state, capacity));
            assertEquals(capacity, softener.count(ValveCount.LEFT));
        }
    }

    @Test
    void aFailureBeforeTheBrineKeepsWhatWasLeftAndOneAfterItNothing() {
        softener.begun(0);
        softener.steps(5, 30);
        ValveEvents.started(softener.settings, state);
        assertEquals(OK, ValveEvents.failed(state, false));
        assertEquals(850, softener.litres(ValveCount.LEFT));
        assertEquals(1, softener.count(ValveCount.FAILED));
        assertEquals(5 * HOUR, softener.count(ValveCount.AGE));
        assertEquals(0, softener.count(ValveCount.SINCE_END));

        ValveEvents.started(softener.settings, state);
        assertEquals(OK, ValveEvents.failed(state, true));
        assertEquals(0, softener.count(ValveCount.LEFT));
        assertEquals(1000, softener.litres(ValveCount.CAPACITY));
    }

    @Test
    void aRegenerationWithoutSaltGivesNothing() {
        softener.begun(0);
        softener.steps(5, 30);
        ValveEvents.salt(state, true);
        ValveEvents.started(softener.settings, state);
        assertEquals(WITHOUT_SALT, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(850, softener.litres(ValveCount.LEFT));
        assertEquals(1, softener.count(ValveCount.FAILED));

        ValveEvents.salt(state, false);
        ValveEvents.started(softener.settings, state);
        assertEquals(OK, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(900, softener.litres(ValveCount.LEFT));
        assertEquals(0, softener.count(ValveCount.FAILED));
    }

    @Test
    void aRegenerationThatNeverReportsItsEndIsInterruptedWithNothingLeft() {
        softener.begun(0);
        ValveEvents.started(softener.settings, state);
        assertEquals(OK, softener.steps(4, 2));
        assertEquals(INTERRUPTED, softener.steps(1, 2));
        assertEquals(10, softener.litres(ValveCount.TODAY_BYPASSED)); // as the valve stood
        assertEquals(0, softener.count(ValveCount.LEFT));
        assertEquals(1, softener.count(ValveCount.FAILED));
        assertEquals(OK, softener.steps(1, 2));
        assertEquals(2, softener.litres(ValveCount.TODAY_EXHAUSTED));
    }

    @Test
    void theLateEndOfARunThatTimedOutRestoresTheCapacityOnce() {
        softener.begun(0);
        softener.steps(3, 300);
        ValveEvents.started(softener.settings, state);
        assertEquals(INTERRUPTED, softener.steps(5, 2));
        assertEquals(1, softener.count(ValveCount.FAILURES));
        softener.steps(1, 7);
        assertEquals(FINISHED_LATE, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(CAPACITY, softener.count(ValveCount.LEFT));
        assertEquals(0, softener.count(ValveCount.OVERDRAWN));
        assertEquals(0, softener.count(ValveCount.AGE));
        assertEquals(0, softener.count(ValveCount.SINCE_END));
        assertEquals(0, softener.count(ValveCount.FAILED));
        assertEquals(0, softener.count(ValveCount.FAILURES));
        assertEquals(7, softener.litres(ValveCount.TOTAL_EXHAUSTED));
        assertEquals(DOES_NOT_FIT, ValveEvents.finished(softener.settings, state, CAPACITY));
    }

    @Test
    void aNewStartForgetsTheRunThatTimedOut() {
        softener.begun(0);
        ValveEvents.started(softener.settings, state);
        softener.steps(5, 0);
        ValveEvents.started(softener.settings, state);
        assertEquals(OK, ValveEvents.failed(state, true));
        assertEquals(DOES_NOT_FIT, ValveEvents.finished(softener.settings, state, CAPACITY));
    }

    @Test
    void aRunThatUsesUpTheLastSaltIsGoodAndHoldsTheNext() {
        softener.begun(0);
        ValveEvents.started(softener.settings, state);
        ValveEvents.salt(state, true);
        assertEquals(OK, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(CAPACITY, softener.count(ValveCount.LEFT));
        ValveEvents.salt(state, true); // said again
        ValveEvents.started(softener.settings, state);
        assertEquals(WITHOUT_SALT, ValveEvents.finished(softener.settings, state, CAPACITY));
        ValveEvents.started(softener.settings, state);
        ValveEvents.salt(state, false);
        assertEquals(OK, ValveEvents.finished(softener.settings, state, CAPACITY));
    }

    @Test
    void aLateEndWithoutSaltStaysOneFailure() {
        softener.begun(0);
        ValveEvents.salt(state, true);
        ValveEvents.started(softener.settings, state);
        softener.steps(5, 0);
        assertEquals(WITHOUT_SALT, ValveEvents.finished(softener.settings, state, CAPACITY));
        assertEquals(0, softener.count(ValveCount.LEFT));
        assertEquals(1, softener.count(ValveCount.FAILURES));
    }

    @Test
    void aCapacityAtWhichTheNextIsDueAtOnceIsRefused() {
        softener.with(ValveSetting.AT_ONCE_NANOLITRES, 50 * LITRE).begun(0);
        ValveEvents.started(softener.settings, state);
        assertEquals(BAD_INPUT, ValveEvents.finished(softener.settings, state, 50 * LITRE));
        assertEquals(OK, ValveEvents.finished(softener.settings, state, 50 * LITRE + 1));
    }

    /** Starts and fails so many times. */
    private void fail(int times) {
        for (int i = 0; i < times; i++) {
            ValveEvents.started(softener.settings, state);
            ValveEvents.failed(state, true);
        }
    }

    @Test
    void afterThreeFailuresInARowNoneStartsByItselfUntilAPersonActs() {
        softener.with(ValveSetting.AT_ONCE_NANOLITRES, 0)
                .with(ValveSetting.SHORTEST_INTERVAL_SECONDS, 0)
                .begun(0);
        fail(2);
        assertTrue(softener.isToStart());
        fail(1);
        assertEquals(3, softener.count(ValveCount.FAILURES));
        assertEquals(ValveRule.HELD_BY_FAILURES, ValveRule.hold(softener.settings, state));
        softener.steps(48, 0);
        assertFalse(softener.isToStart());
        assertEquals(OK, ValveEvents.failuresAcknowledged(state));
        assertTrue(softener.isToStart());

        fail(3);
        assertFalse(softener.isToStart());
        fail(1); // started by hand
        assertEquals(1, softener.count(ValveCount.FAILURES));
        assertTrue(softener.isToStart());
    }

    @Test
    void aGoodRunEndsTheRowOfFailures() {
        softener.begun(0);
        fail(2);
        ValveEvents.started(softener.settings, state);
        ValveEvents.finished(softener.settings, state, CAPACITY);
        fail(2);
        assertEquals(2, softener.count(ValveCount.FAILURES));
    }

    @Test
    void aPowerCutInTheMiddleOfARegenerationIsSeenByTheTimeThatPassed() {
        softener.begun(0);
        ValveEvents.started(softener.settings, state);
        softener.steps(1, 0);
        MeteredSoftener shortCut = new MeteredSoftener();
        shortCut.state.copyFrom(state);
        assertEquals(OK, shortCut.restart(0, NOON + 2 * HOUR));
        assertEquals(1, shortCut.count(ValveCount.REGENERATING));
        assertEquals(INTERRUPTED, softener.restart(0, NOON + 12 * HOUR) & INTERRUPTED);
        assertEquals(0, softener.count(ValveCount.REGENERATING));
    }

    @Test
    void aHolidayThatIsDeclaredOrEndedOnceMoreChangesNothing() {
        softener.begun(0);
        softener.steps(20, 10); // a whole day is under way
        ValveState before = softener.copy();
        assertEquals(OK, ValveEvents.holiday(state, false));
        assertTrue(before.isSameAs(state));
        softener.steps(24, 10);
        assertEquals(1, softener.count(ValveCount.DAYS));

        ValveEvents.holiday(state, true);
        before = softener.copy();
        assertEquals(OK, ValveEvents.holiday(state, true));
        assertTrue(before.isSameAs(state));
    }

    @Test
    void aHolidayLeavesTheDayUnlearnedAtBothItsEnds() {
        softener.begun(0);
        softener.steps(14, 10);
        assertEquals(1, softener.count(ValveCount.WHOLE_DAY));
        assertEquals(OK, ValveEvents.holiday(state, true));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
        softener.steps(24, 10);
        assertEquals(OK, ValveEvents.holiday(state, false));
        assertEquals(0, softener.count(ValveCount.WHOLE_DAY));
        softener.steps(24, 10);
        assertEquals(0, softener.count(ValveCount.DAYS));
    }
}
