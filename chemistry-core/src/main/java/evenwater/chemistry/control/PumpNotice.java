package evenwater.chemistry.control;

import evenwater.chemistry.kernel.PumpKernel;
import evenwater.chemistry.kernel.PumpMemory;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** Something that a person should know about a dosing pump. */
public enum PumpNotice {

    /** The end of a run was never reported, so the run counts as made in full. */
    RUN_NOT_CONFIRMED(PumpKernel.UNCONFIRMED),

    /** A run failed; the pump stands until it is resumed. */
    RUN_FAILED(PumpKernel.FAILED),

    /** A person has stopped the pump. */
    PAUSED(PumpKernel.PAUSED),

    /** There may be air in the tube. */
    PRIMING_NEEDED(PumpKernel.PRIMING_NEEDED),

    /** The reservoir is empty. */
    RESERVOIR_EMPTY(PumpKernel.RESERVOIR_EMPTY),

    /** The reservoir will be empty within the days of the settings. */
    RESERVOIR_LOW(0),

    /** The wall clock was set. */
    CLOCK_CHANGED(PumpKernel.CLOCK_CHANGED),

    /** The pump moved more than was ordered, or something that nobody ordered. */
    RAN_TOO_LONG(PumpKernel.OVERRUN),

    /** The calibration differs much from the one before; the tube may be worn. */
    CALIBRATION_DRIFTED(PumpKernel.CALIBRATION_DRIFTED),

    /** Portions were missed, in whole or in part. */
    PORTIONS_MISSED(PumpKernel.PORTIONS_MISSED),

    /** Runs were reported short by more than the daily cap in a day; the last of them count as made in full. */
    RUNS_ENDED_SHORT(PumpKernel.SHORT_RUNS);

    private final long flag;

    PumpNotice(long flag) {
        this.flag = flag;
    }

    static Set<PumpNotice> of(DosingPumpState state) {
        EnumSet<PumpNotice> notices = EnumSet.noneOf(PumpNotice.class);
        for (PumpNotice notice : values()) {
            boolean set = notice == RESERVOIR_LOW
                    ? state.pump().isLow(state.memory())
                    : (state.memory()[PumpMemory.FLAGS] & notice.flag) != 0;
            if (set) {
                notices.add(notice);
            }
        }
        return Collections.unmodifiableSet(notices);
    }

    /**
     * Tells whether reading it is enough, so that {@link DosingPumpState#acknowledged} takes it away. The others stay until their cause is gone.
     *
     * @return true for news, false for a condition
     */
    public boolean isNews() {
        return (flag & PumpKernel.NEWS) != 0;
    }
}
