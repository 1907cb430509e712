package evenwater.chemistry.kernel;

/**
 * Places of the settings of a dosing pump in an array of whole numbers; volumes in picolitres (10⁻¹² L), times in seconds.
 *
 * <p>Picolitres, since a fine pump moves some hundred nanolitres with a step, and a step that is rounded to nanolitres would be some 0.3 %
 * off; a {@code long} holds 9 million litres of them.
 */
public final class PumpSettings {

    /** Most stock that may get into the tank in any 24 hours and on any calendar day; 1 to {@link #LARGEST_CAP}. */
    public static final int CAP = 0;

    /** Stock that the schedule gives a day; 0 to the cap. */
    public static final int DAILY = 1;

    /** Portions a day; 0 without a schedule, to {@link #MOST_PORTIONS}. */
    public static final int PORTIONS = 2;

    /** Stock for each litre of water that is added; 0 to {@link #LARGEST_PER_LITRE}. */
    public static final int PER_LITRE = 3;

    /** How many missed portions are made up at most; 0 to skip all, to {@link #MOST_PORTIONS}. */
    public static final int CATCH_UP = 4;

    /** How late a portion may be before it counts as missed; 60 to 86 400. */
    public static final int GRACE = 5;

    /** What a full reservoir holds; 1 to {@link #LARGEST_RESERVOIR}. */
    public static final int RESERVOIR = 6;

    /** What stays in the reservoir below the intake; 0 to less than the reservoir. */
    public static final int UNUSABLE = 7;

    /** What fills the tube, and the most that one priming may move; 0 to {@link #LARGEST_CAP}. */
    public static final int TUBE = 8;

    /** Days of use below which the reservoir is low; 0 to 366. */
    public static final int LOW_DAYS = 9;

    /** Thousandths by which a new calibration may differ before it is noted; 1 to 1000. */
    public static final int DRIFT_PER_MILLE = 10;

    /** How long the end of a run may be awaited, besides the run itself; 1 to 86 400. */
    public static final int CONFIRM_WITHIN = 11;

    /** Milliseconds that a step takes, 0 if unknown; to 1000. */
    public static final int MILLISECONDS_PER_STEP = 12;

    /** First of the times of day of the portions, rising, each 0 to 86 399; the rest 0. */
    public static final int TIMES = 13;

    /** Portions a day at most. */
    public static final int MOST_PORTIONS = 24;

    /** Numbers of the settings. */
    public static final int LENGTH = TIMES + MOST_PORTIONS;

    /** 100 L. */
    public static final long LARGEST_CAP = 100_000_000_000_000L;

    /** 1000 L. */
    public static final long LARGEST_RESERVOIR = 10 * LARGEST_CAP;

    /** 100 mL of stock for each litre. */
    public static final long LARGEST_PER_LITRE = 100_000_000_000L;

    static final long DAY = 86_400;

    private PumpSettings() {}

    /**
     * Tells whether settings are in the ranges that the places state.
     *
     * @param s settings
     * @return true if {@link PumpKernel} can work with them
     */
    public static boolean areUsable(long[] s) {
        return s.length == LENGTH
                && in(s[CAP], 1, LARGEST_CAP)
                && in(s[DAILY], 0, s[CAP])
                && in(s[PORTIONS], 0, MOST_PORTIONS)
                && (s[DAILY] == 0 || s[PORTIONS] > 0)
                && in(s[PER_LITRE], 0, LARGEST_PER_LITRE)
                && in(s[CATCH_UP], 0, MOST_PORTIONS)
                && in(s[GRACE], 60, DAY)
                && in(s[RESERVOIR], 1, LARGEST_RESERVOIR)
                && in(s[UNUSABLE], 0, s[RESERVOIR] - 1)
                && in(s[TUBE], 0, LARGEST_CAP)
                && in(s[LOW_DAYS], 0, 366)
                && in(s[DRIFT_PER_MILLE], 1, 1000)
                && in(s[CONFIRM_WITHIN], 1, DAY)
                && in(s[MILLISECONDS_PER_STEP], 0, 1000)
                && timesRise(s);
    }

    private static boolean timesRise(long[] s) {
        long before = -1;
        for (int i = 0; i < s[PORTIONS]; i++) {
            long time = s[TIMES + i];
            if (!in(time, before + 1, DAY - 1)) {
                return false;
            }
            before = time;
        }
        return true;
    }

    static boolean in(long number, long least, long most) {
        return number >= least && number <= most;
    }

    /** The volume of a portion: the shares of a day add up to the dose of the day, to the last picolitre. */
    static long portion(long[] s, int index) {
        long daily = s[DAILY];
        long n = s[PORTIONS];
        return daily * (index + 1) / n - daily * index / n;
    }
}
