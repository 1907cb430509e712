package evenwater.chemistry.kernel;

/** The whole numbers of a {@link ValveState}: nanolitres (nL), seconds, pulses, days, and 1 or 0 for yes or no. */
public enum ValveCount {
    /** Local wall clock of the last step, in seconds since 1970-01-01T00:00. */
    CLOCK(ValveState.CLOCK, ValveKernel.LAST_CLOCK),
    /** Last reading of the meter's counter that was believed. */
    READING(ValveState.READING, 0xFFFF_FFFFL),
    /** Seconds since that reading, as far as they are known. */
    SINCE_READING(ValveState.SINCE_READING, ValveKernel.LONGEST_SECONDS),
    /** What the clock showed when that reading came. */
    READING_CLOCK(ValveState.READING_CLOCK, ValveKernel.LAST_CLOCK),
    /** Last reading that was refused. */
    REFUSED_READING(ValveState.SUSPECT, 0xFFFF_FFFFL),
    /** How many refused readings in a row agree with each other. */
    REFUSED_READINGS(ValveState.SUSPECTS, 1000),
    /** Seconds since the last pulse. */
    WITHOUT_PULSE(ValveState.WITHOUT_PULSE, ValveKernel.LONGEST_SECONDS),
    /** Pulses since the beginning. */
    PULSES(ValveState.PULSES, 3 * ValveKernel.FULL_NANOLITRES),
    /** Whether a regeneration is under way, so that what is drawn passes hard. */
    REGENERATING(ValveState.REGENERATING, 1),
    /** Seconds that the regeneration under way has taken. */
    REGENERATING_FOR(ValveState.REGENERATING_FOR, ValveKernel.LONGEST_SECONDS),
    /** Whether the salt is reported missing: 1, or 2 if it has been since the regeneration under way began. */
    SALT_MISSING(ValveState.SALT_MISSING, ValveState.SINCE_THE_RUN_BEGAN),
    /** Whether the last regeneration failed or was interrupted. */
    FAILED(ValveState.FAILED, 1),
    /** Seconds since the last good regeneration ended. */
    AGE(ValveState.AGE, ValveKernel.LONGEST_SECONDS),
    /** Seconds since the last regeneration ended, good or failed. */
    SINCE_END(ValveState.SINCE_END, ValveKernel.LONGEST_SECONDS),
    /** Volume that the last good regeneration gave. */
    CAPACITY(ValveState.CAPACITY, ValveKernel.LARGEST_CAPACITY),
    /** What is left of it. */
    LEFT(ValveState.LEFT, ValveKernel.LARGEST_CAPACITY),
    /** Hard water drawn since it was exhausted. */
    OVERDRAWN(ValveState.OVERDRAWN, ValveKernel.FULL_NANOLITRES),
    /** Softened on the day under way. */
    TODAY_SOFTENED(ValveState.TODAY_SOFTENED, ValveKernel.FULL_NANOLITRES),
    /** Passed hard during a regeneration on the day under way. */
    TODAY_BYPASSED(ValveState.TODAY_BYPASSED, ValveKernel.FULL_NANOLITRES),
    /** Passed hard through the exhausted resin on the day under way. */
    TODAY_EXHAUSTED(ValveState.TODAY_EXHAUSTED, ValveKernel.FULL_NANOLITRES),
    /** Softened since the beginning. */
    TOTAL_SOFTENED(ValveState.TOTAL_SOFTENED, ValveKernel.FULL_NANOLITRES),
    /** Passed hard during regenerations since the beginning. */
    TOTAL_BYPASSED(ValveState.TOTAL_BYPASSED, ValveKernel.FULL_NANOLITRES),
    /** Passed hard through the exhausted resin since the beginning. */
    TOTAL_EXHAUSTED(ValveState.TOTAL_EXHAUSTED, ValveKernel.FULL_NANOLITRES),
    /** Whether the day under way has been seen from its start without a trouble of clock, power or meter. */
    WHOLE_DAY(ValveState.WHOLE_DAY, 1),
    /** Whether a holiday is declared. */
    HOLIDAY(ValveState.AWAY, 1),
    /** Days that were learned from. */
    DAYS(ValveState.DAYS, UseLearning.MOST_DAYS),
    /** Days of little use in a row. */
    LOW_DAYS(ValveState.LOW_DAYS, UseLearning.MOST_DAYS),
    /** Failed regenerations in a row; see {@link ValveSetting#MOST_FAILURES}. */
    FAILURES(ValveState.FAILURES, 1_000_000),
    /** Whether the last regeneration was taken as interrupted because it did not report its end, so that its end may still come. */
    TIMED_OUT(ValveState.TIMED_OUT, 1),
    /** Steps and events since the beginning: of two whole saves the newer one has more. */
    SEQUENCE(ValveState.SEQUENCE, ValveState.MOST_EVENTS);

    private final int place;
    private final long most;

    ValveCount(int place, long most) {
        this.place = place;
        this.most = most;
    }

    int place() {
        return place;
    }

    /** The largest value that the kernel ever writes; all are 0 or more. */
    long most() {
        return most;
    }
}
