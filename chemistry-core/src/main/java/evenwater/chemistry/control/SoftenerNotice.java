package evenwater.chemistry.control;

import evenwater.chemistry.kernel.ValveKernel;

/** What a {@link SoftenerState} noticed in the step that led to it. */
public enum SoftenerNotice {
    /** The clock was set back, or forward by more than the longest gap: no time was credited, and the day teaches nothing. */
    CLOCK_CHANGED(ValveKernel.CLOCK_CHANGED),
    /** More time than the longest gap since the reading before: readings are missing, or the clock was put forward. */
    LONG_GAP(ValveKernel.LONG_GAP),
    /** The last believed reading came again with the same time: a message that came twice, or a clock that stands. */
    READING_REPEATED(ValveKernel.REPEATED),
    /**
     * The reading asks for more water than the largest flow lets pass, is a little behind the last believed one, or is one that was refused before:
     * it was not counted.
     */
    READING_REFUSED(ValveKernel.READING_REFUSED),
    /** Refused readings go on from each other: no water is counted until an exchange of the meter is declared. */
    METER_UNCLEAR(ValveKernel.METER_UNCLEAR),
    /** The counter may have rolled over once more than counted: the least volume was taken. */
    ROLLOVER_AMBIGUOUS(ValveKernel.ROLLOVER_AMBIGUOUS),
    /** No pulse for so long that the meter is stuck or nobody is there; it cannot be told which. */
    METER_SILENT(ValveKernel.METER_SILENT),
    /** A regeneration did not report its end in time: taken as interrupted, with nothing left. */
    REGENERATION_INTERRUPTED(ValveKernel.INTERRUPTED),
    /** A regeneration ended while the salt was missing: taken as failed. */
    REGENERATION_WITHOUT_SALT(ValveKernel.WITHOUT_SALT),
    /** A regeneration that had been taken as interrupted reported its end after all: the capacity is restored. */
    REGENERATION_FINISHED_LATE(ValveKernel.FINISHED_LATE),
    /** What was reported cannot follow the state, such as the end of a regeneration that never started: ignored. */
    REPORT_DOES_NOT_FIT(ValveKernel.DOES_NOT_FIT),
    /** A whole day ended and was learned from. */
    DAY_LEARNED(ValveKernel.DAY_LEARNED),
    /** A whole day ended with no use or so little that it teaches nothing, unless such days become many. */
    LOW_DAY(ValveKernel.LOW_DAY),
    /** A whole day ended with so much use that it was cut for learning. */
    OUTLIER_DAY(ValveKernel.OUTLIER_DAY),
    /** A total has reached three million cubic metres and stands still. */
    TOTALS_FULL(ValveKernel.TOTALS_FULL);

    private final int bit;

    SoftenerNotice(int bit) {
        this.bit = bit;
    }

    boolean isIn(int bits) {
        return (bits & bit) != 0;
    }
}
