package evenwater.chemistry.kernel;

/**
 * How a softener learns what a household uses in a day, and what it keeps in reserve for the next one.
 *
 * <p>Own rule. With m the mean and d the mean absolute deviation so far, and u the use of the n-th day that teaches:
 *
 * <ul>
 *   <li>a day without any use teaches nothing: nobody was there, or the meter is stuck;
 *   <li>first day: {@code m = u, d = u / 4};
 *   <li>after seven days, a day of little use, {@code u < 0.2 m}, teaches nothing either, unless 14 such days in a row came before it:
 *       then the household has shrunk for good (days without any use are left out of the row);
 *   <li>after seven days, an outlier is cut: {@code u' = min(u, m + 3 max(d, 0.1 m))}, before that {@code u' = u};
 *   <li>{@code a = max(1/8, 1/n)}, then {@code m' = m + a (u' − m)} and {@code d' = d + a (|u' − m| − d)}.
 * </ul>
 *
 * <p>So the first week is a plain mean, whatever its first day was like. The reserve is {@code m + 2 d}: of a normally distributed use, whose mean
 * absolute deviation is 0.8 standard deviations, it covers some 94 days of 100. A use of d = 0.08 m that trebles for good is covered after 9
 * days, one that grows tenfold after 16; a week of a burst pipe at 200 m raises the mean by half, not a hundredfold.
 */
public final class UseLearning {

    static final long MOST_DAYS = 1_000_000;

    /** No day's use and hence neither mean nor deviation comes near, in nL. */
    static final double MOST_NANOLITRES = 1e19;

    private static final double FIRST_DEVIATION = 0.25;
    private static final int SETTLED_DAYS = 7;
    private static final double LOW = 0.2;
    private static final int LOW_DAYS = 14;
    private static final double OUTLIER = 3;
    private static final double LEAST_DEVIATION = 0.1;
    private static final double SHARE = 0.125;
    private static final double COVER = 2;

    private UseLearning() {}

    /**
     * Learns from a whole day.
     *
     * @param state whose mean, deviation and rows of days are changed
     * @param use of the day in nL; 0 or more
     * @return bits of {@link RegenerationKernel}: {@code DAY_LEARNED}, {@code LOW_DAY}, {@code OUTLIER_DAY}
     */
    static int learn(RegenerationState state, double use) {
        long[] n = state.counts;
        double m = state.learned[RegenerationState.MEAN];
        double d = state.learned[RegenerationState.DEVIATION];
        if (use == 0) {
            return RegenerationKernel.LOW_DAY;
        }
        if (n[RegenerationState.DAYS] == 0) {
            n[RegenerationState.DAYS] = 1;
            state.learned[RegenerationState.MEAN] = use;
            state.learned[RegenerationState.DEVIATION] = use * FIRST_DEVIATION;
            return RegenerationKernel.DAY_LEARNED;
        }
        int notices = RegenerationKernel.DAY_LEARNED;
        boolean settled = n[RegenerationState.DAYS] >= SETTLED_DAYS;
        if (settled && use < LOW * m) {
            n[RegenerationState.LOW_DAYS] = Math.min(n[RegenerationState.LOW_DAYS] + 1, MOST_DAYS);
            if (n[RegenerationState.LOW_DAYS] <= LOW_DAYS) {
                return RegenerationKernel.LOW_DAY;
            }
            notices |= RegenerationKernel.LOW_DAY;
        } else {
            n[RegenerationState.LOW_DAYS] = 0;
        }
        double most = settled ? m + OUTLIER * Math.max(d, LEAST_DEVIATION * m) : use;
        if (use > most) {
            notices |= RegenerationKernel.OUTLIER_DAY;
        }
        n[RegenerationState.DAYS] = Math.min(n[RegenerationState.DAYS] + 1, MOST_DAYS);
        double a = Math.max(SHARE, 1.0 / n[RegenerationState.DAYS]);
        double difference = Math.min(use, most) - m;
        state.learned[RegenerationState.MEAN] = m + a * difference;
        state.learned[RegenerationState.DEVIATION] = d + a * (Math.abs(difference) - d);
        return notices;
    }

    /**
     * Returns what is to be left at the regeneration hour so that the next day is covered.
     *
     * @param settings first and least reserve
     * @param state what was learned
     * @return nL; {@code max(least, ⌈m + 2 d⌉)}, or the first reserve before a day was learned; never above the capacity
     */
    public static long reserveNanolitres(RegenerationSettings settings, RegenerationState state) {
        long least = settings.values[RegenerationSettings.LEAST_RESERVE];
        long wanted = state.counts[RegenerationState.DAYS] == 0
                ? settings.values[RegenerationSettings.FIRST_RESERVE]
                : (long) Math.ceil(
                        state.learned[RegenerationState.MEAN] + COVER * state.learned[RegenerationState.DEVIATION]);
        return Math.min(Math.max(wanted, least), state.counts[RegenerationState.CAPACITY]);
    }
}
