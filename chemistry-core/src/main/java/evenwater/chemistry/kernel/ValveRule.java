package evenwater.chemistry.kernel;

/**
 * When a metered softener is to regenerate: not, at night, or at once; why, and what holds it back.
 *
 * <p>Own rule, from what is common practice (no source):
 *
 * <ul>
 *   <li>at once if no more than the settings' volume is left, where they allow it;
 *   <li>at night if nothing is left, or less than the {@linkplain UseLearning reserve};
 *   <li>at night by the calendar if the last regeneration would pass the longest age before the night after: {@code age at the opening of this
 *       window, or of the next one outside of it, + 1 day > longest age};
 *   <li>held back while the salt is missing, or as many regenerations in a row have failed as the settings allow and nobody has acknowledged it
 *       or started one by hand (a run that fails each time would use salt and water every night), or the shortest interval since the
 *       last regeneration has not passed, or, of one that is due at night, until the window is open.
 * </ul>
 *
 * <p>Functions read a state and change nothing. While a regeneration is under way, no other is due.
 */
public final class ValveRule {

    /** No regeneration is due. */
    public static final int NOT_DUE = 0;

    /** One is due in the night's window. */
    public static final int AT_NIGHT = 1;

    /** One is due at any time of day. */
    public static final int AT_ONCE = 2;

    /** The reason where none is due, and the hold where nothing holds. */
    public static final int NONE = 0;

    /** Nothing of the capacity is left. */
    public static final int EXHAUSTED = 1;

    /** No more than the settings' volume for a regeneration at once is left. */
    public static final int NEARLY_EXHAUSTED = 2;

    /** What is left does not cover the reserve. */
    public static final int RESERVE = 3;

    /** The last regeneration is too long ago. */
    public static final int CALENDAR = 4;

    /** Held back: no salt. */
    public static final int HELD_BY_SALT = 1;

    /** Held back: the last regeneration, good or failed, ended too short a time ago. */
    public static final int HELD_BY_INTERVAL = 2;

    /** Held back: the night's window is not open. */
    public static final int HELD_FOR_NIGHT = 3;

    /** Held back: too many regenerations in a row failed. */
    public static final int HELD_BY_FAILURES = 4;

    private ValveRule() {}

    /**
     * Returns when a regeneration is due.
     *
     * @param settings of the softener
     * @param state after the last step
     * @return {@link #NOT_DUE}, {@link #AT_NIGHT} or {@link #AT_ONCE}; {@code NOT_DUE} for a state that has not begun
     */
    public static int due(ValveSettings settings, ValveState state) {
        int reason = reason(settings, state);
        if (reason == NONE) {
            return NOT_DUE;
        }
        return isForAtOnce(settings, state) ? AT_ONCE : AT_NIGHT;
    }

    /**
     * Returns why a regeneration is due.
     *
     * @param settings of the softener
     * @param state after the last step
     * @return {@link #NONE}, {@link #EXHAUSTED}, {@link #NEARLY_EXHAUSTED}, {@link #RESERVE} or {@link #CALENDAR}: the first that is true
     */
    public static int reason(ValveSettings settings, ValveState state) {
        long[] n = state.counts;
        if (!state.hasBegun() || n[ValveState.REGENERATING] == 1) {
            return NONE;
        }
        long left = n[ValveState.LEFT];
        if (left == 0) {
            return EXHAUSTED;
        }
        if (isForAtOnce(settings, state)) {
            return NEARLY_EXHAUSTED;
        }
        if (left < UseLearning.reserveNanolitres(settings, state)) {
            return RESERVE;
        }
        return isOld(settings, state) ? CALENDAR : NONE;
    }

    private static boolean isForAtOnce(ValveSettings settings, ValveState state) {
        return state.counts[ValveState.LEFT] <= settings.values[ValveSettings.AT_ONCE];
    }

    private static boolean isOld(ValveSettings settings, ValveState state) {
        long longest = settings.values[ValveSettings.LONGEST_AGE];
        if (longest == 0) {
            return false;
        }
        long sinceOpening = secondsSinceOpening(settings, state);
        long toOpening = isNight(settings, sinceOpening) ? 0 : ValveKernel.DAY_SECONDS;
        long ageAtOpening = state.counts[ValveState.AGE] - sinceOpening + toOpening;
        return ageAtOpening + ValveKernel.DAY_SECONDS > longest;
    }

    /**
     * Returns what holds a regeneration back that is due.
     *
     * @param settings of the softener
     * @param state after the last step
     * @return {@link #NONE}, {@link #HELD_BY_SALT}, {@link #HELD_BY_FAILURES}, {@link #HELD_BY_INTERVAL} or {@link #HELD_FOR_NIGHT}: the first
     *     that is true
     */
    public static int hold(ValveSettings settings, ValveState state) {
        int due = due(settings, state);
        if (due == NOT_DUE) {
            return NONE;
        }
        if (state.counts[ValveState.SALT_MISSING] != 0) {
            return HELD_BY_SALT;
        }
        if (isHeldByFailures(settings, state)) {
            return HELD_BY_FAILURES;
        }
        if (state.counts[ValveState.SINCE_END] < settings.values[ValveSettings.INTERVAL]) {
            return HELD_BY_INTERVAL;
        }
        boolean waits = due == AT_NIGHT && !isNight(settings, secondsSinceOpening(settings, state));
        return waits ? HELD_FOR_NIGHT : NONE;
    }

    /**
     * Tells whether the valve is to start now.
     *
     * @param settings of the softener
     * @param state after the last step
     * @return whether a regeneration is due and nothing holds it back
     */
    public static boolean isToStart(ValveSettings settings, ValveState state) {
        return due(settings, state) != NOT_DUE && hold(settings, state) == NONE;
    }

    static boolean isHeldByFailures(ValveSettings settings, ValveState state) {
        return state.counts[ValveState.FAILURES] >= settings.values[ValveSettings.FAILURES];
    }

    private static boolean isNight(ValveSettings settings, long sinceOpening) {
        return sinceOpening < settings.values[ValveSettings.NIGHT_LASTS];
    }

    /** Since the night's window last opened; 0 to one day less a second. */
    private static long secondsSinceOpening(ValveSettings settings, ValveState state) {
        return (state.counts[ValveState.CLOCK] + ValveKernel.DAY_SECONDS - settings.values[ValveSettings.NIGHT])
                % ValveKernel.DAY_SECONDS;
    }
}
