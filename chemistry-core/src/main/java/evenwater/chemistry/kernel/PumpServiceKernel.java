package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpKernel.AWAITING;
import static evenwater.chemistry.kernel.PumpKernel.BAD_INPUT;
import static evenwater.chemistry.kernel.PumpKernel.DONE;
import static evenwater.chemistry.kernel.PumpMemory.FILLED;
import static evenwater.chemistry.kernel.PumpMemory.FLAGS;
import static evenwater.chemistry.kernel.PumpMemory.LEVEL;
import static evenwater.chemistry.kernel.PumpMemory.OWED;
import static evenwater.chemistry.kernel.PumpMemory.PENDING;
import static evenwater.chemistry.kernel.PumpMemory.STEP;
import static evenwater.chemistry.kernel.PumpMemory.WATER_REST;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_SUM;

/**
 * What people do to a dosing pump and tell it: water added, reservoir refilled, tube calibrated, pausing, doses
 * beside the program. No event here makes the pump run.
 *
 * <p>Arrays and rules as in {@link PumpKernel}.
 */
public final class PumpServiceKernel {

    /** 10 m³ in µL. */
    private static final long MOST_WATER = 10_000_000_000L;

    private static final long MICROLITRES_PER_LITRE = 1_000_000;

    private PumpServiceKernel() {}

    /**
     * Tells that water was added, so that its share of stock is owed; what is less than a picolitre is carried on.
     *
     * @param s settings
     * @param m memory
     * @param microlitres of water; 1 to 10 m³
     * @return {@link PumpKernel#DONE}, {@link PumpKernel#TOO_MUCH} if more than the cap of a day would be owed (then nothing is), or
     *     {@link PumpKernel#BAD_INPUT}
     */
    public static int waterAdded(long[] s, long[] m, long microlitres) {
        if (!PumpSettings.in(microlitres, 1, MOST_WATER) || !wasStarted(m)) {
            return BAD_INPUT;
        }
        long perLitre = s[PumpSettings.PER_LITRE];
        long litres = microlitres / MICROLITRES_PER_LITRE;
        long part = (microlitres - litres * MICROLITRES_PER_LITRE) * perLitre + m[WATER_REST];
        long owed = m[OWED] + litres * perLitre + part / MICROLITRES_PER_LITRE;
        if (owed > s[PumpSettings.CAP]) {
            return PumpKernel.TOO_MUCH;
        }
        m[PumpMemory.SEQUENCE]++;
        m[OWED] = owed;
        m[WATER_REST] = part % MICROLITRES_PER_LITRE;
        return DONE;
    }

    /**
     * Tells what the reservoir holds, after refilling or measuring it. Air that may be in the tube stays a reason to prime.
     *
     * @param s settings
     * @param m memory
     * @param level in pL; 0 to what the reservoir can hold
     * @return {@link PumpKernel#DONE}, {@link PumpKernel#AWAITING} during a run, or {@link PumpKernel#BAD_INPUT}
     */
    public static int refilled(long[] s, long[] m, long level) {
        if (!PumpSettings.in(level, 0, s[PumpSettings.RESERVOIR])
                || !wasStarted(m)
                || m[FILLED] > PumpMemory.LARGEST_TOTAL - PumpMemory.LARGEST_RUN) {
            return BAD_INPUT;
        }
        if (m[PENDING] > 0) {
            return AWAITING;
        }
        m[PumpMemory.SEQUENCE]++;
        m[FILLED] += level - m[LEVEL];
        m[LEVEL] = level;
        m[FLAGS] &= ~PumpKernel.RESERVOIR_EMPTY;
        return DONE;
    }

    /**
     * Tells a new calibration. What was counted stays counted.
     *
     * @param s settings
     * @param m memory
     * @param picolitresPerStep in pL; 1 to {@link PumpMemory#LARGEST_STEP}
     * @return {@link PumpKernel#DONE}, {@link PumpKernel#AWAITING} during a run, or {@link PumpKernel#BAD_INPUT}
     */
    public static int calibrated(long[] s, long[] m, long picolitresPerStep) {
        if (!PumpSettings.in(picolitresPerStep, 1, PumpMemory.LARGEST_STEP) || !wasStarted(m)) {
            return BAD_INPUT;
        }
        if (m[PENDING] > 0) {
            return AWAITING;
        }
        m[PumpMemory.SEQUENCE]++;
        calibrate(s, m, picolitresPerStep);
        return DONE;
    }

    private static void calibrate(long[] s, long[] m, long picolitresPerStep) {
        if (Math.abs(picolitresPerStep - m[STEP]) * 1000 > s[PumpSettings.DRIFT_PER_MILLE] * m[STEP]) {
            m[FLAGS] |= PumpKernel.CALIBRATION_DRIFTED;
        }
        m[STEP] = picolitresPerStep;
    }

    private static boolean wasStarted(long[] m) {
        return m[STEP] >= 1;
    }

    /**
     * Tells that the tube is full of liquid to its end, as seen by a person.
     *
     * @param m memory
     */
    public static void tubeSeenFull(long[] m) {
        m[PumpMemory.SEQUENCE]++;
        m[FLAGS] &= ~PumpKernel.PRIMING_NEEDED;
    }

    /**
     * Tells that there may be air in the tube.
     *
     * @param m memory
     */
    public static void tubeDrained(long[] m) {
        m[PumpMemory.SEQUENCE]++;
        m[FLAGS] |= PumpKernel.PRIMING_NEEDED;
        m[PumpMemory.PRIMED_SINCE] = 0;
    }

    /**
     * Stops the pump: portions that pass are let go and not made up. What added water is owed stays.
     *
     * @param m memory
     */
    public static void paused(long[] m) {
        m[PumpMemory.SEQUENCE]++;
        m[FLAGS] |= PumpKernel.PAUSED;
        m[PumpMemory.DEBT] = 0;
        m[PumpMemory.DUE] = 0;
    }

    /**
     * Lets the pump go on after a pause or a failure, with the first portion after now.
     *
     * @param s settings
     * @param m memory
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link PumpKernel#DONE} or {@link PumpKernel#BAD_INPUT}
     */
    public static int resumed(long[] s, long[] m, long local, long uptime) {
        if (!PumpClock.isUsable(m, local, uptime)) {
            return BAD_INPUT;
        }
        PumpClock.advance(s, m, local, uptime);
        if ((m[FLAGS] & (PumpKernel.PAUSED | PumpKernel.FAILED)) != 0) {
            PumpSchedule.letGo(s, m);
        }
        m[FLAGS] &= ~(PumpKernel.PAUSED | PumpKernel.FAILED);
        return DONE;
    }

    /**
     * Counts steps that nobody ordered, such as by a button on the pump, as a dose and flags them. A run under way stays so.
     *
     * @param s settings
     * @param m memory
     * @param steps made; 0 or more, 1000 L at most
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link PumpKernel#DONE} or {@link PumpKernel#BAD_INPUT}, also if the totals are full after 4 million litres
     */
    public static int dosedUnordered(long[] s, long[] m, long steps, long local, long uptime) {
        if (!PumpKernel.canCount(m, steps, local, uptime)) {
            return BAD_INPUT;
        }
        PumpClock.advance(s, m, local, uptime);
        m[FLAGS] |= PumpKernel.OVERRUN;
        PumpRun.dose(m, steps * m[STEP]);
        return DONE;
    }

    /**
     * Takes news away that a person has read.
     *
     * @param m memory
     * @param flags sum of flags; those that are conditions stay
     */
    public static void acknowledged(long[] m, long flags) {
        m[PumpMemory.SEQUENCE]++;
        m[FLAGS] &= ~(flags & PumpKernel.NEWS);
    }

    /**
     * Takes other settings over, and the calibration that belongs to them: a run under way counts as made in full by the old one, now, so the
     * pump must have stopped; what is due or missed by the old schedule is dropped, what was counted stays. The new schedule holds from now on.
     *
     * @param s new settings
     * @param m memory
     * @param picolitresPerStep in pL; 1 to {@link PumpMemory#LARGEST_STEP}
     * @param local wall clock in s
     * @param uptime in s
     * @return {@link PumpKernel#DONE}, or {@link PumpKernel#BAD_INPUT} if settings, calibration or clocks are unusable, or the reservoir of the
     *     new ones could not hold what is in it
     */
    public static int settingsChanged(long[] s, long[] m, long picolitresPerStep, long local, long uptime) {
        long pending = m[PENDING] * m[STEP];
        if (!PumpSettings.areUsable(s)
                || !PumpSettings.in(picolitresPerStep, 1, PumpMemory.LARGEST_STEP)
                || !PumpClock.isUsable(m, local, uptime)
                || m[LEVEL] - pending > s[PumpSettings.RESERVOIR]) {
            return BAD_INPUT;
        }
        PumpClock.advance(s, m, local, uptime);
        if (m[PENDING] > 0) {
            m[FLAGS] |= PumpKernel.UNCONFIRMED;
            PumpRun.settle(s, m, m[PENDING]);
        }
        calibrate(s, m, picolitresPerStep);
        PumpSchedule.letGo(s, m);
        m[PumpMemory.DEBT] = 0;
        m[OWED] = Math.min(m[OWED], s[PumpSettings.CAP]);
        return DONE;
    }

    /**
     * Returns what may still get into the tank now.
     *
     * @param s settings
     * @param m memory, as of its last event with clocks
     * @return volume in pL; 0 or more
     */
    public static long allowed(long[] s, long[] m) {
        return PumpRun.allowed(s, m);
    }

    /**
     * Returns what the intake can still reach.
     *
     * @param s settings
     * @param m memory
     * @return volume in pL; 0 or more
     */
    public static long usable(long[] s, long[] m) {
        return Math.max(0, m[LEVEL] - s[PumpSettings.UNUSABLE]);
    }

    /**
     * Returns the use of a day: the dose of the schedule, or what the last 24 hours took if that is more.
     *
     * @param s settings
     * @param m memory
     * @return volume in pL; 0 if nothing is used
     */
    public static long dailyUse(long[] s, long[] m) {
        return Math.max(s[PumpSettings.DAILY], Math.min(m[WINDOW_SUM], PumpMemory.LARGEST_RUN));
    }

    /**
     * Tells whether the reservoir lasts for fewer days than the settings want to be warned of.
     *
     * @param s settings
     * @param m memory
     * @return true if it is low
     */
    public static boolean isLow(long[] s, long[] m) {
        return usable(s, m) < s[PumpSettings.LOW_DAYS] * dailyUse(s, m);
    }
}
