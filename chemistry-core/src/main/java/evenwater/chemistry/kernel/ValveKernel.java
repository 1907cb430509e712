package evenwater.chemistry.kernel;

/**
 * The state of a metered softener, step by step: the meter's reading and the clock go in, what was used and what is left come out.
 *
 * <p>Every function answers with bits: {@link #OK} or what was noticed; never an exception, and never a silent NaN. With one of
 * {@link #BAD_INPUT}, {@link #NOT_BEGUN} and {@link #DOES_NOT_FIT} the state is as it was. Nothing is allocated. All that is counted is a
 * whole number, so that ten million pulses of 0.1 L are a million litres; only what is learned is double. Events
 * of the valve are in {@link ValveEvents}, the decision in {@link ValveRule}, saving in {@link ValveSave}.
 *
 * <p><b>Clock.</b> The caller gives local wall time in seconds since 1970-01-01T00:00. A difference from 0 to the longest gap is time that
 * has passed. Any other means that the clock was changed: the step credits no time, and the day is not learned from. Its water
 * counts if it can have flown in the time that the clock shows: readings may have been missing.
 * A {@link #restart} credits a gap to 1000 days. Daylight saving looks like one hour more in spring, and like a changed clock in autumn. A clock
 * that is put forward by less than the longest gap cannot be told from time that passed.
 *
 * <p><b>Day.</b> Days of learning run from the regeneration hour to the next, since that is what the reserve must cover. Water belongs to the day in
 * which its reading came. A day teaches if it began and ended by steps over one regeneration hour each, with nothing wrong between.
 *
 * <p>Left out: twin tanks, water that the valve itself uses behind the meter, resin that ages. A decision is a wish: it replaces no safety of
 * the appliance.
 */
public final class ValveKernel {

    /** Nothing to notice. */
    public static final int OK = 0;

    /** An argument was out of its range. */
    public static final int BAD_INPUT = 1;

    /** The state has not been begun. */
    public static final int NOT_BEGUN = 1 << 1;

    /** An event that cannot follow the state, such as the end of a regeneration that never started. */
    public static final int DOES_NOT_FIT = 1 << 2;

    /** The clock was changed: no time was credited. */
    public static final int CLOCK_CHANGED = 1 << 3;

    /** More pulses than the largest flow lets pass, a small step back, or the same refused reading again: not counted. */
    public static final int READING_REFUSED = 1 << 4;

    /** Refused readings agree with each other: no reading counts until an exchange of the meter is declared. */
    public static final int METER_UNCLEAR = 1 << 5;

    /** The counter may have rolled over once more than counted: the least volume was taken. */
    public static final int ROLLOVER_AMBIGUOUS = 1 << 6;

    /** The regeneration never reported its end: taken as interrupted after the brine was drawn, with nothing left. */
    public static final int INTERRUPTED = 1 << 7;

    /** A regeneration was reported finished while the salt was missing: taken as failed. */
    public static final int WITHOUT_SALT = 1 << 8;

    /** A day ended and was learned from. */
    public static final int DAY_LEARNED = 1 << 9;

    /** A day ended with no use or little. */
    public static final int LOW_DAY = 1 << 10;

    /** A day ended with so much use that it was cut for learning. */
    public static final int OUTLIER_DAY = 1 << 11;

    /** No pulse for too long: the meter is stuck, or nobody is there. Never during a declared holiday. */
    public static final int METER_SILENT = 1 << 12;

    /** A total, of water or of pulses, has reached its limit and stands still; all else goes on. */
    public static final int TOTALS_FULL = 1 << 13;

    /** A regeneration that had been taken as interrupted reported its end after all: the capacity is restored. */
    public static final int FINISHED_LATE = 1 << 14;

    /** The last believed reading again with the same time: a message that came twice, or a clock that stands. */
    public static final int REPEATED = 1 << 15;

    /** More time than the longest gap since the step before: readings are missing, or the clock was put forward. */
    public static final int LONG_GAP = 1 << 16;

    /** Where totals stand still: 3e18 nL, three million cubic metres. */
    public static final long FULL_NANOLITRES = 3_000_000_000_000_000_000L;

    /** Largest capacity of a regeneration: 1000 m³ in nL. */
    public static final long LARGEST_CAPACITY = 1_000_000_000_000_000L;

    /** End of the year 9999 in seconds since 1970. */
    public static final long LAST_CLOCK = 253_402_300_799L;

    static final long DAY_SECONDS = 86_400;

    /** Spans of time stop growing here, some 300 years: no limit of theirs is as long. */
    static final long LONGEST_SECONDS = 10_000_000_000L;

    /** Longest time without power that is credited: 1000 days. Times the largest flow it stays far within a long. */
    static final long LONGEST_OFF_SECONDS = 1000 * DAY_SECONDS;

    private ValveKernel() {}

    /**
     * Begins with a new state, in service.
     *
     * @param settings of the softener
     * @param state to be filled; what it was before is forgotten
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param clock in seconds, see above; 0 to {@link #LAST_CLOCK}
     * @param leftNanolitres of the capacity of the settings; that capacity after a regeneration, 0 if nobody knows
     * @return {@link #OK} or {@link #BAD_INPUT}
     */
    public static int begin(ValveSettings settings, ValveState state, long reading, long clock, long leftNanolitres) {
        long capacity = settings.values[ValveSettings.CAPACITY];
        if (!isUsable(settings, reading, clock) || leftNanolitres < 0 || leftNanolitres > capacity) {
            return BAD_INPUT;
        }
        long[] n = state.counts;
        for (int i = 0; i < ValveState.COUNT; i++) {
            n[i] = 0;
        }
        for (int i = 0; i < ValveState.LEARNED; i++) {
            state.learned[i] = 0;
        }
        n[ValveState.CLOCK] = clock;
        n[ValveState.READING] = reading;
        n[ValveState.READING_CLOCK] = clock;
        n[ValveState.CAPACITY] = capacity;
        n[ValveState.LEFT] = leftNanolitres;
        n[ValveState.SINCE_END] = LONGEST_SECONDS; // no regeneration is known that the next must keep away from
        return OK;
    }

    /**
     * Takes a reading. Lost readings do no harm, since the counter is cumulative; a repeated one only moves the clock
     * and the count of steps.
     *
     * @param settings of the softener
     * @param state changed in place
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param clock in seconds, see above; 0 to {@link #LAST_CLOCK}
     * @return what was noticed, as bits
     */
    public static int step(ValveSettings settings, ValveState state, long reading, long clock) {
        return advance(settings, state, reading, clock, false);
    }

    /**
     * Takes the first reading after the controller was without power.
     *
     * @param settings of the softener
     * @param state as restored; changed in place
     * @param reading of the meter's counter; 0 to 2 to the power of its bits, less 1
     * @param clock in seconds, see above; 0 to {@link #LAST_CLOCK}
     * @return what was noticed, as bits
     */
    public static int restart(ValveSettings settings, ValveState state, long reading, long clock) {
        return advance(settings, state, reading, clock, true);
    }

    private static boolean isUsable(ValveSettings settings, long reading, long clock) {
        return clock >= 0 && clock <= LAST_CLOCK && MeterCounter.isReading(settings, reading);
    }

    private static int advance(ValveSettings settings, ValveState state, long reading, long clock, boolean restarted) {
        if (!isUsable(settings, reading, clock)) {
            return BAD_INPUT;
        }
        if (!state.hasBegun()) {
            return NOT_BEGUN;
        }
        state.taken();
        long gap = settings.values[ValveSettings.GAP];
        long elapsed = clock - state.counts[ValveState.CLOCK];
        boolean changed = elapsed < 0 || elapsed > (restarted ? LONGEST_OFF_SECONDS : gap);
        int notices = changed ? CLOCK_CHANGED : OK;
        notices |= elapsed > gap ? LONG_GAP : OK;
        notices |= elapsed == 0 && reading == state.counts[ValveState.READING] ? REPEATED : OK;
        notices |= turnDay(settings, state, clock, changed || restarted);
        state.counts[ValveState.CLOCK] = clock;
        state.counts[ValveState.WITHOUT_PULSE] = later(state.counts[ValveState.WITHOUT_PULSE], changed ? 0 : elapsed);
        // what a changed clock may hide: the longest time between two readings, or, without power, the longest outage
        long hidden = restarted ? LONGEST_OFF_SECONDS : gap;
        notices |= MeterCounter.take(settings, state, reading, changed ? hidden : elapsed);
        return notices | credit(settings, state, changed ? 0 : elapsed);
    }

    private static int turnDay(ValveSettings settings, ValveState state, long clock, boolean disturbed) {
        long[] n = state.counts;
        long before = day(settings, n[ValveState.CLOCK]);
        long now = day(settings, clock);
        if (now == before) {
            n[ValveState.WHOLE_DAY] = disturbed ? 0 : n[ValveState.WHOLE_DAY];
            return OK;
        }
        int notices = OK;
        boolean ordinary = !disturbed && now == before + 1;
        if (ordinary && n[ValveState.WHOLE_DAY] == 1 && n[ValveState.AWAY] == 0) {
            double use = (double) n[ValveState.TODAY_SOFTENED]
                    + n[ValveState.TODAY_BYPASSED]
                    + n[ValveState.TODAY_EXHAUSTED];
            notices = UseLearning.learn(settings, state, use);
        }
        n[ValveState.TODAY_SOFTENED] = 0;
        n[ValveState.TODAY_BYPASSED] = 0;
        n[ValveState.TODAY_EXHAUSTED] = 0;
        n[ValveState.WHOLE_DAY] = ordinary ? 1 : 0;
        return notices;
    }

    /** Number of the day that began at the regeneration hour. */
    private static long day(ValveSettings settings, long clock) {
        return (clock + DAY_SECONDS - settings.values[ValveSettings.NIGHT]) / DAY_SECONDS;
    }

    /** Lets time pass, after the water that it brought was taken with the valve as it stood. */
    private static int credit(ValveSettings settings, ValveState state, long elapsed) {
        long[] n = state.counts;
        n[ValveState.AGE] = later(n[ValveState.AGE], elapsed);
        n[ValveState.SINCE_END] = later(n[ValveState.SINCE_END], elapsed);
        int notices = OK;
        if (n[ValveState.REGENERATING] == 1) {
            n[ValveState.REGENERATING_FOR] = later(n[ValveState.REGENERATING_FOR], elapsed);
            if (n[ValveState.REGENERATING_FOR] > settings.values[ValveSettings.DURATION]) {
                ValveEvents.end(n, true);
                n[ValveState.TIMED_OUT] = 1;
                n[ValveState.LEFT] = 0;
                notices = INTERRUPTED;
            }
        }
        long silence = settings.values[ValveSettings.SILENCE];
        boolean silent = silence > 0
                && n[ValveState.WITHOUT_PULSE] > silence
                && n[ValveState.AWAY] == 0
                && n[ValveState.SUSPECTS] < settings.values[ValveSettings.AGREEING];
        return silent ? notices | METER_SILENT : notices;
    }

    static long later(long seconds, long elapsed) {
        return Math.min(seconds + elapsed, LONGEST_SECONDS);
    }
}
