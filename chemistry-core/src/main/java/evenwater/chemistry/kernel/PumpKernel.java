package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpMemory.ACCRUED;
import static evenwater.chemistry.kernel.PumpMemory.CARRY;
import static evenwater.chemistry.kernel.PumpMemory.DUE;
import static evenwater.chemistry.kernel.PumpMemory.FILLED;
import static evenwater.chemistry.kernel.PumpMemory.FLAGS;
import static evenwater.chemistry.kernel.PumpMemory.OWED;
import static evenwater.chemistry.kernel.PumpMemory.PENDING;
import static evenwater.chemistry.kernel.PumpMemory.PENDING_SINCE;
import static evenwater.chemistry.kernel.PumpMemory.PRIMED_SINCE;
import static evenwater.chemistry.kernel.PumpMemory.STEP;

import java.util.Arrays;

/**
 * Runs of a dosing pump: what to do at a tick of the clock, and what becomes of a run.
 *
 * <p>Settings {@code s} lie in the places of {@link PumpSettings}, memory {@code m} in those of {@link PumpMemory}; it changes in place. A run
 * is ordered by {@link #RUN}: save the memory, then let the pump make {@code m[PENDING]} steps, then report by {@link #dosed} with the number of the
 * run, {@code m[RUN]}. A run whose end nobody reports counts as made in full.
 *
 * <p><b>Clocks.</b> {@code local} is the wall clock in seconds since 1970-01-01T00:00 local time; it may be set at will. {@code uptime} is a
 * count of whole seconds that only rises while the processor runs (no wall clock). Both 0 to {@link PumpMemory#LATEST}.
 *
 * <p><b>The cap.</b> Within any 24 hours of true time, ordered runs move no more than the cap into the tank, whatever the wall clock says, if:
 *
 * <ul>
 *   <li>the uptime, and the time certainly off that {@link #restarted} is told, never run ahead of the true time;
 *   <li>a run moves no more than its steps, a step no more than its calibration, and the pump has stopped when the end of the run is reported, when
 *       it counts as made in full for want of a report, and when settings change or the processor starts again;
 *   <li>fewer steps than ordered are reported only if no more were made;
 *   <li>the memory is saved before each run and not lost, and {@link #start} is told what went into the tank in the 24 hours before;
 *   <li>the cap of the settings was the same for those 24 hours.
 * </ul>
 *
 * <p>If reports of fewer steps are false, no more than three times the cap flows: of what runs were reported short, no more than one cap is
 * believed on a day of accrued time, and beyond it they count as made in full; own rule. What flows without an order counts, but nothing can hold
 * it back. On a calendar day the cap holds under the same conditions, as long as the wall clock is not set.
 *
 * <p>Functions never throw on arrays of the right length whose contents {@link #start} made or {@link PumpMemory#isUsable} accepted, and
 * allocate nothing. {@link #BAD_INPUT} leaves the memory as it was; a memory that was never started, all zeros, is answered with it.
 */
public final class PumpKernel {

    /** The event was taken. */
    public static final int DONE = 0;

    /** Nothing is due. */
    public static final int NOTHING_DUE = 1;

    /** Make {@code m[PENDING]} steps now. */
    public static final int RUN = 2;

    /** A run is under way; its end was not reported yet. */
    public static final int AWAITING = 3;

    /** Stopped by a person. */
    public static final int STOPPED = 4;

    /** Stopped since a run failed. */
    public static final int STOPPED_BY_FAILURE = 5;

    /** The cap leaves less than a step, or less than was asked for by hand. */
    public static final int HELD_BY_CAP = 6;

    /** There may be air in the tube. */
    public static final int UNPRIMED = 7;

    /** The reservoir holds less than a step above the intake, or less than was asked for by hand. */
    public static final int EMPTY = 8;

    /** Less than a step was asked for. */
    public static final int TOO_SMALL = 9;

    /** More was asked for than one event may bring. */
    public static final int TOO_MUCH = 10;

    /** A number is out of range; nothing has changed. */
    public static final int BAD_INPUT = 11;

    /** A report is of another run than the one under way; nothing has changed. */
    public static final int OTHER_RUN = 12;

    /** Flag: a run whose end nobody reported was counted in full. */
    public static final long UNCONFIRMED = 1;

    /** Flag: a run failed; nothing runs until {@link PumpServiceKernel#resumed}. */
    public static final long FAILED = 1 << 1;

    /** Flag: a person stopped the pump. */
    public static final long PAUSED = 1 << 2;

    /** Flag: there may be air in the tube. */
    public static final long PRIMING_NEEDED = 1 << 3;

    /** Flag: the reservoir is empty until it is declared refilled. */
    public static final long RESERVOIR_EMPTY = 1 << 4;

    /** Flag: the wall clock was set, or ran away by more than two minutes. */
    public static final long CLOCK_CHANGED = 1 << 5;

    /** Flag: the pump moved more than was ordered, or something that nobody ordered. */
    public static final long OVERRUN = 1 << 6;

    /** Flag: a calibration differs from the one before by more than the settings allow. */
    public static final long CALIBRATION_DRIFTED = 1 << 7;

    /** Flag: portions were missed. */
    public static final long PORTIONS_MISSED = 1 << 8;

    /** Flag: runs were reported short by more than the cap in a day, so the last of them count as made in full. */
    public static final long SHORT_RUNS = 1 << 9;

    /** Flags that are news, which {@link PumpServiceKernel#acknowledged} takes away; the others are conditions. */
    public static final long NEWS =
            UNCONFIRMED | CLOCK_CHANGED | OVERRUN | CALIBRATION_DRIFTED | PORTIONS_MISSED | SHORT_RUNS;

    static final long ALL_FLAGS = (1 << 10) - 1;

    /** Purpose: there is no run. */
    public static final int NO_RUN = 0;

    /** Purpose: portions of the schedule and doses for added water. */
    public static final int DOSE = 1;

    /** Purpose: a dose asked for by a person. */
    public static final int DOSE_BY_HAND = 2;

    /** Purpose: filling the tube, its end outside the tank. */
    public static final int PRIMING = 3;

    /** Purpose: filling the tube, its end in the tank; counts as dose. */
    public static final int PRIMING_INTO_TANK = 4;

    private PumpKernel() {}

    /**
     * Fills a memory for a pump that begins: with air in its tube, and today's portions so far left out.
     *
     * @param s settings
     * @param m receives the memory
     * @param local wall clock in s
     * @param uptime in s
     * @param picolitresPerStep calibration in pL; 1 to {@link PumpMemory#LARGEST_STEP}
     * @param level what the reservoir holds in pL; 0 to what it can
     * @param givenBefore what may have got into the tank in the last 24 hours in pL, for a memory that was lost; 0 to the cap
     * @return {@link #DONE} or {@link #BAD_INPUT}
     */
    public static int start(
            long[] s, long[] m, long local, long uptime, long picolitresPerStep, long level, long givenBefore) {
        if (!PumpSettings.areUsable(s)
                || m.length != PumpMemory.LENGTH
                || !PumpSettings.in(picolitresPerStep, 1, PumpMemory.LARGEST_STEP)
                || !PumpSettings.in(level, 0, s[PumpSettings.RESERVOIR])
                || !PumpSettings.in(givenBefore, 0, s[PumpSettings.CAP])
                || !PumpSettings.in(local, 0, PumpMemory.LATEST)
                || !PumpSettings.in(uptime, 0, PumpMemory.LATEST)) {
            return BAD_INPUT;
        }
        Arrays.fill(m, 0);
        m[STEP] = picolitresPerStep;
        m[PumpMemory.LOCAL] = local;
        m[PumpMemory.DAY] = local / PumpSettings.DAY;
        m[PumpMemory.UPTIME] = uptime + 1;
        m[PumpMemory.LEVEL] = level;
        m[FILLED] = level;
        m[FLAGS] = PRIMING_NEEDED;
        m[PumpMemory.SEQUENCE] = 1;
        PumpSchedule.letGo(s, m);
        PumpRun.count(m, givenBefore);
        return DONE;
    }

    /**
     * Tells a memory that the processor has started again. A run that was under way counts as made in full.
     *
     * @param s settings
     * @param m memory
     * @param local wall clock in s
     * @param uptime in s, counted anew
     * @param secondsOff for how long the power was certainly off in s; 0 if only the wall clock says so
     * @return {@link #DONE} or {@link #BAD_INPUT}
     */
    public static int restarted(long[] s, long[] m, long local, long uptime, long secondsOff) {
        if (!PumpClock.isUsable(m, local, uptime) || !PumpSettings.in(secondsOff, 0, PumpMemory.LATEST)) {
            return BAD_INPUT;
        }
        PumpClock.restart(s, m, local, uptime, secondsOff);
        return DONE;
    }

    /**
     * Decides what to do now. Call it every few seconds to minutes. A run that cap or reservoir do not allow in full is cut to what they allow; the
     * rest stays due. The reservoir is empty when less than a step is left above the intake, and by an own rule the tube is to be primed then, since
     * a level that is counted may be a little off.
     *
     * @param s settings
     * @param m memory
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link #RUN}, {@link #NOTHING_DUE}, or why what is due waits
     */
    public static int tick(long[] s, long[] m, long local, long uptime) {
        if (!PumpClock.isUsable(m, local, uptime)) {
            return BAD_INPUT;
        }
        PumpClock.advance(s, m, local, uptime);
        if (m[PENDING] > 0) {
            if (m[ACCRUED] - m[PENDING_SINCE] <= longestRun(s, m)) {
                return AWAITING;
            }
            m[FLAGS] |= UNCONFIRMED;
            PumpRun.settle(s, m, m[PENDING]);
        }
        if ((m[FLAGS] & (PAUSED | FAILED)) != 0) {
            PumpSchedule.letGo(s, m);
            return stopped(m);
        }
        PumpSchedule.look(s, m);
        return m[DUE] + m[OWED] == 0 ? NOTHING_DUE : give(s, m);
    }

    private static long longestRun(long[] s, long[] m) {
        return s[PumpSettings.CONFIRM_WITHIN] + m[PENDING] * s[PumpSettings.MILLISECONDS_PER_STEP] / 1000;
    }

    private static int give(long[] s, long[] m) {
        long wanted = m[DUE] + m[OWED] + m[CARRY];
        if (wanted < m[STEP]) {
            PumpRun.take(m, wanted, 0);
            return NOTHING_DUE;
        }
        long steps = Math.min(wanted, PumpRun.allowed(s, m)) / m[STEP];
        if (steps == 0) {
            return HELD_BY_CAP;
        }
        steps = Math.min(steps, PumpRun.reachable(s, m)); // the rest waits for a refill
        if ((m[FLAGS] & RESERVOIR_EMPTY) != 0 || steps == 0) {
            m[FLAGS] |= RESERVOIR_EMPTY | PRIMING_NEEDED;
            m[PRIMED_SINCE] = 0;
            return EMPTY;
        }
        if ((m[FLAGS] & PRIMING_NEEDED) != 0) {
            return UNPRIMED;
        }
        PumpRun.take(m, wanted, steps * m[STEP]);
        return PumpRun.order(m, DOSE, steps);
    }

    /**
     * Orders a dose that a person asks for: all of it now, or nothing.
     *
     * @param s settings
     * @param m memory
     * @param volume in pL; 1 to {@link PumpSettings#LARGEST_CAP}
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link #RUN} or why not
     */
    public static int doseByHand(long[] s, long[] m, long volume, long local, long uptime) {
        if (!PumpSettings.in(volume, 1, PumpSettings.LARGEST_CAP) || !PumpClock.isUsable(m, local, uptime)) {
            return BAD_INPUT;
        }
        PumpClock.advance(s, m, local, uptime);
        long allowed = PumpRun.allowed(s, m);
        long wanted = volume + m[CARRY];
        long steps = Math.min(wanted, allowed) / m[STEP];
        int status = readiness(m);
        if (status == DONE && (m[FLAGS] & PRIMING_NEEDED) != 0) {
            status = UNPRIMED;
        }
        if (status == DONE) {
            status = wanted < m[STEP] ? TOO_SMALL : volume > allowed || steps == 0 ? HELD_BY_CAP : DONE;
        }
        if (status != DONE || !PumpRun.fits(s, m, steps)) {
            return status == DONE ? EMPTY : status;
        }
        m[CARRY] = Math.min(wanted - steps * m[STEP], m[STEP] - 1);
        return PumpRun.order(m, DOSE_BY_HAND, steps);
    }

    /**
     * Orders a run that fills the tube. What it moves comes from the reservoir.
     *
     * @param s settings
     * @param m memory
     * @param volume in pL; 1 to what the tube holds by the settings
     * @param intoTank whether the end of the tube is in the tank, so that it counts as dose, under the cap
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link #RUN} or why not
     */
    public static int prime(long[] s, long[] m, long volume, boolean intoTank, long local, long uptime) {
        if (!PumpSettings.in(volume, 1, PumpSettings.LARGEST_CAP) || !PumpClock.isUsable(m, local, uptime)) {
            return BAD_INPUT;
        }
        PumpClock.advance(s, m, local, uptime);
        long steps = volume / m[STEP];
        int status = readiness(m);
        if (status == DONE) {
            status = volume > s[PumpSettings.TUBE] ? TOO_MUCH : steps == 0 ? TOO_SMALL : DONE;
        }
        if (status == DONE && intoTank && steps * m[STEP] > PumpRun.allowed(s, m)) {
            status = HELD_BY_CAP;
        }
        if (status != DONE || !PumpRun.fits(s, m, steps)) {
            return status == DONE ? EMPTY : status;
        }
        return PumpRun.order(m, intoTank ? PRIMING_INTO_TANK : PRIMING, steps);
    }

    private static int readiness(long[] m) {
        if (m[PENDING] > 0) {
            return AWAITING;
        }
        if ((m[FLAGS] & (PAUSED | FAILED)) != 0) {
            return stopped(m);
        }
        return (m[FLAGS] & RESERVOIR_EMPTY) != 0 ? EMPTY : DONE;
    }

    private static int stopped(long[] m) {
        return (m[FLAGS] & FAILED) != 0 ? STOPPED_BY_FAILURE : STOPPED;
    }

    /**
     * Takes the report that a run has ended. Fewer steps than ordered leave the rest of a portion due; more are counted and flagged: what is in the
     * tank is in the tank. A repeated report, and one that comes when the run has been counted in full for want of it, are of another run and
     * change nothing; so is one with a number larger than any ordered, which shows that the memory is older than the pump: start anew with the cap
     * spent. A run that is found cut by a restart at this very event counts in full.
     *
     * @param s settings
     * @param m memory
     * @param run number of the run; 1 or more
     * @param steps made; 0 or more, 1000 L at most
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link #DONE}, {@link #OTHER_RUN}, or {@link #BAD_INPUT}, also if the totals are full after 4 million litres
     */
    public static int dosed(long[] s, long[] m, long run, long steps, long local, long uptime) {
        if (run < 1 || !canCount(m, steps, local, uptime)) {
            return BAD_INPUT;
        }
        if (m[PENDING] == 0 || run != m[PumpMemory.RUN]) {
            return OTHER_RUN;
        }
        PumpClock.advance(s, m, local, uptime);
        if (m[PENDING] > 0) {
            m[FLAGS] |= steps > m[PENDING] ? OVERRUN : 0;
            PumpRun.settle(s, m, PumpRun.believed(s, m, steps));
        }
        return DONE;
    }

    /** Room is left for a run that may be under way besides. */
    static boolean canCount(long[] m, long steps, long local, long uptime) {
        return PumpClock.isUsable(m, local, uptime)
                && PumpSettings.in(steps, 0, PumpMemory.LARGEST_RUN / m[STEP])
                && m[FILLED] <= PumpMemory.LARGEST_TOTAL - 2 * PumpMemory.LARGEST_RUN;
    }

    /**
     * Takes the report that a run failed. It counts as made in full, and nothing runs until a person resumes. A failure of the run ordered last
     * stops the pump also when its end was counted before; of an older one it changes nothing.
     *
     * @param s settings
     * @param m memory
     * @param run number of the run; 1 or more
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link #DONE}, {@link #OTHER_RUN} or {@link #BAD_INPUT}
     */
    public static int failed(long[] s, long[] m, long run, long local, long uptime) {
        if (run < 1 || !PumpClock.isUsable(m, local, uptime)) {
            return BAD_INPUT;
        }
        if (run != m[PumpMemory.RUN]) {
            return OTHER_RUN;
        }
        PumpClock.advance(s, m, local, uptime);
        PumpRun.settle(s, m, m[PENDING]);
        m[FLAGS] |= FAILED;
        return DONE;
    }
}
