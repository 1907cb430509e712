package evenwater.chemistry.kernel;

/**
 * How a softener learns what a household uses in a day, and what it keeps in reserve for the next one.
 *
 * <p>Own rule. With m the mean and d the mean absolute deviation so far, u the use of the n-th day that teaches, and F the first reserve, which the
 * owner states:
 *
 * <ul>
 *   <li>a day without any use teaches nothing: nobody was there, or the meter is stuck;
 *   <li>first day: {@code m = u, d = u / 4};
 *   <li>after seven days, a day of little use, {@code u < 0.2 m}, teaches nothing either, unless 14 such days in a row came before it
 *       (days without any use are left out of the row): then it teaches slowly, since a dripping tap of an empty house looks like a household
 *       that has shrunk;
 *   <li>after seven days, an outlier is cut: {@code u' = min(u, max(F, m + 3 max(d, 0.1 m)))}, before that {@code u' = u}; up to F no use is an
 *       outlier, so that a mean that fell too low recovers within days;
 *   <li>{@code a = 1/32} for a low day that teaches, else {@code a = max(1/8, 1/n)}; then {@code m' = m + a (u' − m)} and
 *       {@code d' = d + a (|u' − m| − d)}.
 * </ul>
 *
 * <p>The reserve for the next day is
 *
 * <ul>
 *   <li>{@code max(F, m + 2 d)} until seven days were learned, as the first of them may be anything;
 *   <li>{@code max(floor, m + 2 d)} from then on, the floor being the least reserve, or F / 4 if none was stated.
 * </ul>
 *
 * <p>The first week is a plain mean, whatever its first day was like. Of a normally distributed use, whose mean absolute deviation is 0.8
 * standard deviations, {@code m + 2 d} covers some 94 days of 100. With F no larger than m, a use of d = 0.08 m that trebles for good
 * is covered after 9 days, one that grows tenfold after 16; a week of a burst pipe at 200 m raises the mean by half, not a hundredfold. A household that
 * shrinks to an eighth for good needs 14 days, 20 slow ones and some weeks at the usual pace.
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
    private static final double SLOW_SHARE = 0.03125;
    private static final long FLOOR_OF_FIRST = 4;
    private static final double COVER = 2;

    private UseLearning() {}

    /**
     * Learns from a whole day.
     *
     * @param settings first reserve
     * @param state whose mean, deviation and rows of days are changed
     * @param use of the day in nL; 0 or more
     * @return bits of {@link ValveKernel}: {@code DAY_LEARNED}, {@code LOW_DAY}, {@code OUTLIER_DAY}
     */
    static int learn(ValveSettings settings, ValveState state, double use) {
        long[] n = state.counts;
        double m = state.learned[ValveState.MEAN];
        double d = state.learned[ValveState.DEVIATION];
        if (use == 0) {
            return ValveKernel.LOW_DAY;
        }
        if (n[ValveState.DAYS] == 0) {
            n[ValveState.DAYS] = 1;
            state.learned[ValveState.MEAN] = use;
            state.learned[ValveState.DEVIATION] = use * FIRST_DEVIATION;
            return ValveKernel.DAY_LEARNED;
        }
        int notices = ValveKernel.DAY_LEARNED;
        boolean settled = n[ValveState.DAYS] >= SETTLED_DAYS;
        if (settled && use < LOW * m) {
            n[ValveState.LOW_DAYS] = Math.min(n[ValveState.LOW_DAYS] + 1, MOST_DAYS);
            if (n[ValveState.LOW_DAYS] <= LOW_DAYS) {
                return ValveKernel.LOW_DAY;
            }
            notices |= ValveKernel.LOW_DAY;
        } else {
            n[ValveState.LOW_DAYS] = 0;
        }
        double limit = m + OUTLIER * Math.max(d, LEAST_DEVIATION * m);
        double most = settled ? Math.max(limit, (double) settings.values[ValveSettings.FIRST_RESERVE]) : use;
        if (use > most) {
            notices |= ValveKernel.OUTLIER_DAY;
        }
        n[ValveState.DAYS] = Math.min(n[ValveState.DAYS] + 1, MOST_DAYS);
        boolean slow = n[ValveState.LOW_DAYS] > 0;
        double a = slow ? SLOW_SHARE : Math.max(SHARE, 1.0 / n[ValveState.DAYS]);
        double difference = Math.min(use, most) - m;
        state.learned[ValveState.MEAN] = m + a * difference;
        state.learned[ValveState.DEVIATION] = d + a * (Math.abs(difference) - d);
        return notices;
    }

    /**
     * Returns what is to be left at the regeneration hour so that the next day is covered.
     *
     * @param settings first and least reserve
     * @param state what was learned
     * @return nL; see above, rounded up; never above the capacity
     */
    public static long reserveNanolitres(ValveSettings settings, ValveState state) {
        long first = settings.values[ValveSettings.FIRST_RESERVE];
        long stated = settings.values[ValveSettings.LEAST_RESERVE];
        long floor = stated < 0 ? first / FLOOR_OF_FIRST : stated;
        long days = state.counts[ValveState.DAYS];
        long least = days < SETTLED_DAYS ? Math.max(first, floor) : floor;
        long learned = (long) Math.ceil(state.learned[ValveState.MEAN] + COVER * state.learned[ValveState.DEVIATION]);
        return Math.min(Math.max(learned, least), state.counts[ValveState.CAPACITY]);
    }
}
