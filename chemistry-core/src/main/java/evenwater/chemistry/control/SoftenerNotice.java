package evenwater.chemistry.control;

import evenwater.chemistry.kernel.RegenerationKernel;

/** What a {@link SoftenerState} noticed in the step that led to it. */
public enum SoftenerNotice {
    /** The clock was set back, or forward by more than the longest gap: no time was credited, and the day teaches nothing. */
    CLOCK_CHANGED(RegenerationKernel.CLOCK_CHANGED),
    /** The reading asks for more water than the largest flow lets pass, or is one that was refused before: it was not counted. */
    READING_REFUSED(RegenerationKernel.READING_REFUSED),
    /** Refused readings go on from each other: no water is counted until an exchange of the meter is declared. */
    METER_UNCLEAR(RegenerationKernel.METER_UNCLEAR),
    /** The counter may have rolled over once more than counted: the least volume was taken. */
    ROLLOVER_AMBIGUOUS(RegenerationKernel.ROLLOVER_AMBIGUOUS),
    /** No pulse for so long that the meter is stuck or nobody is there; it cannot be told which. */
    METER_SILENT(RegenerationKernel.METER_SILENT),
    /** A regeneration did not report its end in time: taken as interrupted, with nothing left. */
    REGENERATION_INTERRUPTED(RegenerationKernel.INTERRUPTED),
    /** A regeneration ended while the salt was missing: taken as failed. */
    REGENERATION_WITHOUT_SALT(RegenerationKernel.WITHOUT_SALT),
    /** What was reported cannot follow the state, such as the end of a regeneration that never started: ignored. */
    REPORT_DOES_NOT_FIT(RegenerationKernel.DOES_NOT_FIT),
    /** A whole day ended and was learned from. */
    DAY_LEARNED(RegenerationKernel.DAY_LEARNED),
    /** A whole day ended with no use or so little that it teaches nothing, unless such days become many. */
    LOW_DAY(RegenerationKernel.LOW_DAY),
    /** A whole day ended with so much use that it was cut for learning. */
    OUTLIER_DAY(RegenerationKernel.OUTLIER_DAY),
    /** A total has reached three million cubic metres and stands still. */
    TOTALS_FULL(RegenerationKernel.TOTALS_FULL);

    private final int bit;

    SoftenerNotice(int bit) {
        this.bit = bit;
    }

    boolean isIn(int bits) {
        return (bits & bit) != 0;
    }
}
