package evenwater.chemistry.kernel;

/** The whole numbers of a {@link RegenerationState}: nanolitres (nL), seconds, pulses, days, and 1 or 0 for yes or no. */
public enum RegenerationCount {
    /** Local wall clock of the last step, in seconds since 1970-01-01T00:00. */
    CLOCK(RegenerationState.CLOCK, RegenerationKernel.LAST_CLOCK),
    /** Last reading of the meter's counter that was believed. */
    READING(RegenerationState.READING, 0xFFFF_FFFFL),
    /** Seconds since that reading, as far as they are known. */
    SINCE_READING(RegenerationState.SINCE_READING, RegenerationKernel.LONGEST_SECONDS),
    /** Last reading that was refused. */
    REFUSED_READING(RegenerationState.SUSPECT, 0xFFFF_FFFFL),
    /** How many refused readings in a row agree with each other. */
    REFUSED_READINGS(RegenerationState.SUSPECTS, 1000),
    /** Seconds since the last pulse. */
    WITHOUT_PULSE(RegenerationState.WITHOUT_PULSE, RegenerationKernel.LONGEST_SECONDS),
    /** Pulses since the beginning. */
    PULSES(RegenerationState.PULSES, 3 * RegenerationKernel.FULL_NANOLITRES),
    /** Whether a regeneration is under way, so that what is drawn passes hard. */
    REGENERATING(RegenerationState.REGENERATING, 1),
    /** Seconds that the regeneration under way has taken. */
    REGENERATING_FOR(RegenerationState.REGENERATING_FOR, RegenerationKernel.LONGEST_SECONDS),
    /** Whether the salt is reported missing. */
    SALT_MISSING(RegenerationState.SALT_MISSING, 1),
    /** Whether the last regeneration failed or was interrupted. */
    FAILED(RegenerationState.FAILED, 1),
    /** Seconds since the last good regeneration ended. */
    AGE(RegenerationState.AGE, RegenerationKernel.LONGEST_SECONDS),
    /** Seconds since the last regeneration ended, good or failed. */
    SINCE_END(RegenerationState.SINCE_END, RegenerationKernel.LONGEST_SECONDS),
    /** Volume that the last good regeneration gave. */
    CAPACITY(RegenerationState.CAPACITY, RegenerationKernel.LARGEST_CAPACITY),
    /** What is left of it. */
    LEFT(RegenerationState.LEFT, RegenerationKernel.LARGEST_CAPACITY),
    /** Hard water drawn since it was exhausted. */
    OVERDRAWN(RegenerationState.OVERDRAWN, RegenerationKernel.FULL_NANOLITRES),
    /** Softened on the day under way. */
    TODAY_SOFTENED(RegenerationState.TODAY_SOFTENED, RegenerationKernel.FULL_NANOLITRES),
    /** Passed hard during a regeneration on the day under way. */
    TODAY_BYPASSED(RegenerationState.TODAY_BYPASSED, RegenerationKernel.FULL_NANOLITRES),
    /** Passed hard through the exhausted resin on the day under way. */
    TODAY_EXHAUSTED(RegenerationState.TODAY_EXHAUSTED, RegenerationKernel.FULL_NANOLITRES),
    /** Softened since the beginning. */
    TOTAL_SOFTENED(RegenerationState.TOTAL_SOFTENED, RegenerationKernel.FULL_NANOLITRES),
    /** Passed hard during regenerations since the beginning. */
    TOTAL_BYPASSED(RegenerationState.TOTAL_BYPASSED, RegenerationKernel.FULL_NANOLITRES),
    /** Passed hard through the exhausted resin since the beginning. */
    TOTAL_EXHAUSTED(RegenerationState.TOTAL_EXHAUSTED, RegenerationKernel.FULL_NANOLITRES),
    /** Whether the day under way has been seen from its start without a trouble of clock, power or meter. */
    WHOLE_DAY(RegenerationState.WHOLE_DAY, 1),
    /** Whether a holiday is declared. */
    HOLIDAY(RegenerationState.AWAY, 1),
    /** Days that were learned from. */
    DAYS(RegenerationState.DAYS, UseLearning.MOST_DAYS),
    /** Days of little use in a row. */
    LOW_DAYS(RegenerationState.LOW_DAYS, UseLearning.MOST_DAYS);

    private final int place;
    private final long most;

    RegenerationCount(int place, long most) {
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
