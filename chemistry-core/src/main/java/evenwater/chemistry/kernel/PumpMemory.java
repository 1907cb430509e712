package evenwater.chemistry.kernel;

/**
 * Places of what a dosing pump remembers in an array of whole numbers; volumes in picolitres (10⁻¹² L), times in seconds.
 *
 * <p>{@link PumpKernel#start} fills it, events of the {@link PumpKernel} change it in place. To keep it over a loss of power, write it with
 * {@link SavedNumbers} and check with {@link #isUsable} what was read.
 */
public final class PumpMemory {

    /** Version of this layout for {@link SavedNumbers}. */
    public static final long VERSION = 0x70756d70_0000_0002L;

    /** What one step moves; 1 to {@link #LARGEST_STEP}. */
    public static final int STEP = 0;

    /** Wall clock at the last event, since 1970-01-01T00:00 local time. */
    public static final int LOCAL = 1;

    /** Uptime up to which time was credited. */
    public static final int UPTIME = 2;

    /** Time that has certainly passed since the start; never more than the true one. */
    public static final int ACCRUED = 3;

    /** Calendar day, days since 1970-01-01. */
    public static final int DAY = 4;

    /** Stock into the tank on this calendar day. */
    public static final int GIVEN_TODAY = 5;

    /** The last portion of the schedule that was looked at or let go, as day × portions + place; −1 before the first of all. */
    public static final int SLOT = 6;

    /** What the schedule wants and did not get yet. */
    public static final int DUE = 7;

    /** Accrued time at which it was due; may be negative. */
    public static final int DUE_SINCE = 8;

    /** What added water wants and did not get yet. */
    public static final int OWED = 9;

    /** What was wanted and is less than a step, carried to the next run. */
    public static final int CARRY = 10;

    /** Missed stock that later portions shall make up. */
    public static final int DEBT = 11;

    /** Rest of the last multiplication for added water, in 10⁻⁶ pL. */
    public static final int WATER_REST = 12;

    /** Steps of the run under way; 0 if none is. */
    public static final int PENDING = 13;

    /** What the run under way is for: one of the purposes of {@link PumpKernel}. */
    public static final int PURPOSE = 14;

    /** Accrued time at which it was ordered. */
    public static final int PENDING_SINCE = 15;

    /** Sum of {@link PumpKernel}'s flags. */
    public static final int FLAGS = 16;

    /** What is in the reservoir. */
    public static final int LEVEL = 17;

    /** All that was ever in it: level + dosed + primed. */
    public static final int FILLED = 18;

    /** All that went into the tank. */
    public static final int DOSED = 19;

    /** All that priming moved to elsewhere. */
    public static final int PRIMED = 20;

    /** What priming moved since it became necessary. */
    public static final int PRIMED_SINCE = 21;

    /** Portions that were missed, in whole or in part. */
    public static final int MISSED = 22;

    /** 1 if the clock was set forward since the schedule was last looked at. */
    public static final int JUMPED = 23;

    /** Sum of the window of 24 hours. */
    public static final int WINDOW_SUM = 24;

    /** Number of the run ordered last, which is the one under way if any is; 0 before the first, and growing with each. */
    public static final int RUN = 25;

    /** What runs into the tank were reported short of their order, and believed, on the day {@link #SHORT_DAY}. */
    public static final int SHORT = 26;

    /** Day of accrued time. */
    public static final int SHORT_DAY = 27;

    /** Number of the last event that was taken; grows, so that of two whole saves the newer is told by it. */
    public static final int SEQUENCE = 28;

    /** Wall clock of the portion after {@link #SLOT}, so that a tick before it need not look at the schedule; 0 without portions. */
    static final int NEXT = 29;

    static final int WINDOW_HEAD = 30;
    static final int WINDOW_COUNT = 31;
    static final int WINDOW_TIMES = 32;
    static final int WINDOW_SIZE = 50;
    static final int WINDOW_VOLUMES = WINDOW_TIMES + WINDOW_SIZE;

    /** Numbers of the memory. */
    public static final int LENGTH = WINDOW_VOLUMES + WINDOW_SIZE;

    /** 10 mL. */
    public static final long LARGEST_STEP = 10_000_000_000L;

    /** Last second of the year 9999; also the longest uptime. */
    public static final long LATEST = 253_402_300_799L;

    /** 4 million litres. */
    static final long LARGEST_TOTAL = 4_000_000_000_000_000_000L;

    /** What one run, asked for or not, may have moved: 1000 L. */
    static final long LARGEST_RUN = PumpSettings.LARGEST_RESERVOIR;

    private PumpMemory() {}

    /**
     * Tells whether a memory is one that events can have made, as far as its numbers show.
     *
     * @param m memory, for example as read from a save
     * @return true if {@link PumpKernel} can work with it
     */
    public static boolean isUsable(long[] m) {
        return m.length == LENGTH
                && clocksAreUsable(m)
                && volumesAreUsable(m)
                && runIsUsable(m)
                && PumpWindow.isUsable(m);
    }

    private static boolean clocksAreUsable(long[] m) {
        return in(m[LOCAL], LATEST)
                && in(m[UPTIME], LATEST + 1)
                && in(m[ACCRUED], LARGEST_TOTAL)
                && m[DAY] == m[LOCAL] / PumpSettings.DAY
                && m[SLOT] >= -1
                && m[SLOT] <= (LATEST / PumpSettings.DAY + 1) * PumpSettings.MOST_PORTIONS
                && m[DUE_SINCE] >= -PumpSettings.DAY
                && m[DUE_SINCE] <= m[ACCRUED]
                && in(m[PENDING_SINCE], m[ACCRUED])
                && in(m[NEXT], LATEST + 2 * PumpSettings.DAY)
                && in(m[SEQUENCE], LARGEST_TOTAL)
                && in(m[MISSED], LARGEST_TOTAL)
                && in(m[JUMPED], 1);
    }

    private static boolean volumesAreUsable(long[] m) {
        return m[STEP] >= 1
                && in(m[STEP], LARGEST_STEP)
                && in(m[GIVEN_TODAY], LARGEST_TOTAL)
                && in(m[DUE], LARGEST_RUN)
                && in(m[OWED], LARGEST_RUN)
                && in(m[CARRY], LARGEST_STEP)
                && in(m[DEBT], LARGEST_RUN * PumpSettings.MOST_PORTIONS)
                && in(m[WATER_REST], 999_999)
                && in(m[LEVEL], PumpSettings.LARGEST_RESERVOIR)
                && in(m[FILLED], LARGEST_TOTAL)
                && in(m[DOSED], LARGEST_TOTAL)
                && in(m[PRIMED], LARGEST_TOTAL)
                && in(m[PRIMED_SINCE], LARGEST_TOTAL)
                && m[FILLED] - m[DOSED] - m[PRIMED] == m[LEVEL];
    }

    private static boolean runIsUsable(long[] m) {
        return in(m[PENDING], LARGEST_RUN / m[STEP])
                && in(m[PURPOSE], PumpKernel.PRIMING_INTO_TANK)
                && in(m[RUN], LARGEST_TOTAL)
                && (m[RUN] > 0 || m[PENDING] == 0)
                && in(m[SHORT], PumpSettings.LARGEST_CAP)
                && in(m[SHORT_DAY], LARGEST_TOTAL)
                && (m[PENDING] > 0) == (m[PURPOSE] != PumpKernel.NO_RUN)
                && in(m[FLAGS], PumpKernel.ALL_FLAGS);
    }

    private static boolean in(long number, long most) {
        return number >= 0 && number <= most;
    }
}
