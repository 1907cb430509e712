package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.HOUR;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static evenwater.chemistry.kernel.RegenerationKernel.BAD_INPUT;
import static evenwater.chemistry.kernel.RegenerationKernel.DOES_NOT_FIT;
import static evenwater.chemistry.kernel.RegenerationKernel.INTERRUPTED;
import static evenwater.chemistry.kernel.RegenerationKernel.NOT_BEGUN;
import static evenwater.chemistry.kernel.RegenerationKernel.OK;
import static evenwater.chemistry.kernel.RegenerationKernel.WITHOUT_SALT;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class RegenerationEventsTest {

    private static final long CAPACITY = 900 * LITRE;

    private final MeteredSoftener softener = new MeteredSoftener();
    private final RegenerationState state = softener.state;

    @Test
    void nothingHappensToAStateThatHasNotBegun() {
        RegenerationState before = softener.copy();
        assertEquals(NOT_BEGUN, RegenerationEvents.started(state));
        assertEquals(NOT_BEGUN, RegenerationEvents.finished(state, CAPACITY));
        assertEquals(NOT_BEGUN, RegenerationEvents.failed(state, true));
        assertEquals(NOT_BEGUN, RegenerationEvents.salt(state, true));
        assertEquals(NOT_BEGUN, RegenerationEvents.holiday(state, true));
        assertEquals(NOT_BEGUN, RegenerationEvents.meterExchanged(softener.settings, state, 0));
        assertTrue(before.isSameAs(state));
    }

    @Test
    void anEventThatDoesNotFitChangesNothing() {
        softener.begun(0);
        RegenerationState before = softener.copy();
        assertEquals(DOES_NOT_FIT, RegenerationEvents.finished(state, CAPACITY));
        assertEquals(DOES_NOT_FIT, RegenerationEvents.failed(state, true));
        assertEquals(BAD_INPUT, RegenerationEvents.meterExchanged(softener.settings, state, 65_536));
        assertEquals(BAD_INPUT, RegenerationEvents.meterExchanged(softener.settings, state, -1));
        assertTrue(before.isSameAs(state));

        assertEquals(OK, RegenerationEvents.started(state));
        before = softener.copy();
        assertEquals(DOES_NOT_FIT, RegenerationEvents.started(state));
        for (long capacity : new long[] {0, -1, RegenerationKernel.LARGEST_CAPACITY + 1, Long.MAX_VALUE}) {
            assertEquals(BAD_INPUT, RegenerationEvents.finished(state, capacity));
        }
        assertTrue(before.isSameAs(state));
    }

    @Test
    void aGoodRegenerationRestoresTheCapacityThatItGives() {
        softener.begun(0);
        softener.steps(5, 30);
        RegenerationEvents.started(state);
        softener.steps(1, 0);
        assertEquals(OK, RegenerationEvents.finished(state, CAPACITY));
        assertEquals(CAPACITY, softener.count(RegenerationCount.LEFT));
        assertEquals(CAPACITY, softener.count(RegenerationCount.CAPACITY));
        assertEquals(0, softener.count(RegenerationCount.AGE));
        assertEquals(0, softener.count(RegenerationCount.SINCE_END));
        assertEquals(0, softener.count(RegenerationCount.FAILED));
    }

    @Test
    void theSmallestAndTheLargestCapacityAreTaken() {
        softener.begun(0);
        for (long capacity : new long[] {1, RegenerationKernel.LARGEST_CAPACITY}) {
            RegenerationEvents.started(state);
            assertEquals(OK, RegenerationEvents.finished(state, capacity));
            assertEquals(capacity, softener.count(RegenerationCount.LEFT));
        }
    }

    @Test
    void aFailureBeforeTheBrineKeepsWhatWasLeftAndOneAfterItNothing() {
        softener.begun(0);
        softener.steps(5, 30);
        RegenerationEvents.started(state);
        assertEquals(OK, RegenerationEvents.failed(state, false));
        assertEquals(850, softener.litres(RegenerationCount.LEFT));
        assertEquals(1, softener.count(RegenerationCount.FAILED));
        assertEquals(5 * HOUR, softener.count(RegenerationCount.AGE));
        assertEquals(0, softener.count(RegenerationCount.SINCE_END));

        RegenerationEvents.started(state);
        assertEquals(OK, RegenerationEvents.failed(state, true));
        assertEquals(0, softener.count(RegenerationCount.LEFT));
        assertEquals(1000, softener.litres(RegenerationCount.CAPACITY));
    }

    @Test
    void aRegenerationWithoutSaltGivesNothing() {
        softener.begun(0);
        softener.steps(5, 30);
        RegenerationEvents.salt(state, true);
        RegenerationEvents.started(state);
        assertEquals(WITHOUT_SALT, RegenerationEvents.finished(state, CAPACITY));
        assertEquals(850, softener.litres(RegenerationCount.LEFT));
        assertEquals(1, softener.count(RegenerationCount.FAILED));

        RegenerationEvents.salt(state, false);
        RegenerationEvents.started(state);
        assertEquals(OK, RegenerationEvents.finished(state, CAPACITY));
        assertEquals(900, softener.litres(RegenerationCount.LEFT));
        assertEquals(0, softener.count(RegenerationCount.FAILED));
    }

    @Test
    void aRegenerationThatNeverReportsItsEndIsInterruptedWithNothingLeft() {
        softener.begun(0);
        RegenerationEvents.started(state);
        assertEquals(OK, softener.steps(4, 2));
        assertEquals(INTERRUPTED, softener.steps(1, 2));
        assertEquals(10, softener.litres(RegenerationCount.TODAY_BYPASSED)); // as the valve stood
        assertEquals(0, softener.count(RegenerationCount.LEFT));
        assertEquals(1, softener.count(RegenerationCount.FAILED));
        assertEquals(OK, softener.steps(1, 2));
        assertEquals(2, softener.litres(RegenerationCount.TODAY_EXHAUSTED));
        assertEquals(DOES_NOT_FIT, RegenerationEvents.finished(state, CAPACITY));
    }

    @Test
    void aPowerCutInTheMiddleOfARegenerationIsSeenByTheTimeThatPassed() {
        softener.begun(0);
        RegenerationEvents.started(state);
        softener.steps(1, 0);
        MeteredSoftener shortCut = new MeteredSoftener();
        shortCut.state.copyFrom(state);
        assertEquals(OK, shortCut.restart(0, NOON + 2 * HOUR));
        assertEquals(1, shortCut.count(RegenerationCount.REGENERATING));
        assertEquals(INTERRUPTED, softener.restart(0, NOON + 12 * HOUR) & INTERRUPTED);
        assertEquals(0, softener.count(RegenerationCount.REGENERATING));
    }

    @Test
    void aHolidayLeavesTheDayUnlearnedAtBothItsEnds() {
        softener.begun(0);
        softener.steps(14, 10);
        assertEquals(1, softener.count(RegenerationCount.WHOLE_DAY));
        assertEquals(OK, RegenerationEvents.holiday(state, true));
        assertEquals(0, softener.count(RegenerationCount.WHOLE_DAY));
        softener.steps(24, 10);
        assertEquals(OK, RegenerationEvents.holiday(state, false));
        assertEquals(0, softener.count(RegenerationCount.WHOLE_DAY));
        softener.steps(24, 10);
        assertEquals(0, softener.count(RegenerationCount.DAYS));
    }
}
