package evenwater.chemistry.control;

import evenwater.chemistry.kernel.PumpKernel;

/** What a dosing pump is to do after an event, or why it does nothing. */
public enum PumpStatus {

    /** The event was taken; there is nothing to do about it. */
    TAKEN(PumpKernel.DONE),

    /** Nothing is due. */
    NOTHING_DUE(PumpKernel.NOTHING_DUE),

    /** Save the state, run the pump, report the end. */
    RUN(PumpKernel.RUN),

    /** A run is under way; its end was not reported yet. */
    AWAITING_END_OF_RUN(PumpKernel.AWAITING),

    /** A person has stopped the pump. */
    PAUSED(PumpKernel.STOPPED),

    /** A run failed, and nobody has resumed since. */
    STOPPED_BY_FAILURE(PumpKernel.STOPPED_BY_FAILURE),

    /** The daily cap leaves no room. */
    HELD_BY_CAP(PumpKernel.HELD_BY_CAP),

    /** There may be air in the tube: prime it first. */
    PRIMING_NEEDED(PumpKernel.UNPRIMED),

    /** The reservoir holds less than a step above the intake, or less than was asked for by hand; the pump would draw air. */
    RESERVOIR_EMPTY(PumpKernel.EMPTY),

    /** Less than a step of the pump was asked for. */
    LESS_THAN_A_STEP(PumpKernel.TOO_SMALL),

    /** A priming of more than the tube holds was asked for, or added water wants more than the cap of a day. */
    MORE_THAN_ALLOWED(PumpKernel.TOO_MUCH),

    /** The report is of another run than the one under way, for example a repeated one; nothing has changed. */
    OTHER_RUN(PumpKernel.OTHER_RUN);

    private final int code;

    PumpStatus(int code) {
        this.code = code;
    }

    /** The status of a code of the kernel. All other numbers were checked before, so that a bad input can only be full totals. */
    static PumpStatus of(int code) {
        for (PumpStatus status : values()) {
            if (status.code == code) {
                return status;
            }
        }
        throw new IllegalArgumentException(
                "totals of the pump must stay below 4,000,000 L of stock, but are full: start it anew");
    }
}
