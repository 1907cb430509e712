package evenwater.chemistry.kernel;

/**
 * What a metered softener remembers: whole numbers for all that is counted, two doubles for the use that was learned.
 *
 * <p>Made once by the caller and changed in place by {@link ValveKernel}, which allocates nothing. Not thread-safe.
 */
public final class ValveState {

    static final long SINCE_THE_RUN_BEGAN = 2;

    static final int CLOCK = 0;
    static final int READING = 1;
    static final int SINCE_READING = 2;
    static final int SUSPECT = 3;
    static final int SUSPECTS = 4;
    static final int WITHOUT_PULSE = 5;
    static final int PULSES = 6;
    static final int REGENERATING = 7;
    static final int REGENERATING_FOR = 8;
    /** 1 if it is missing, {@link #SINCE_THE_RUN_BEGAN} if a run began with it and has used it up. */
    static final int SALT_MISSING = 9;

    static final int FAILED = 10;
    static final int AGE = 11;
    static final int SINCE_END = 12;
    static final int CAPACITY = 13;
    static final int LEFT = 14;
    static final int OVERDRAWN = 15;
    static final int TODAY_SOFTENED = 16;
    static final int TODAY_BYPASSED = 17;
    static final int TODAY_EXHAUSTED = 18;
    static final int TOTAL_SOFTENED = 19;
    static final int TOTAL_BYPASSED = 20;
    static final int TOTAL_EXHAUSTED = 21;
    static final int WHOLE_DAY = 22;
    static final int AWAY = 23;
    static final int DAYS = 24;
    static final int LOW_DAYS = 25;
    static final int FAILURES = 26;
    static final int TIMED_OUT = 27;
    static final int READING_CLOCK = 28;
    static final int SEQUENCE = 29;
    static final int COUNT = 30;

    /** One in each microsecond would take thirty thousand years. */
    static final long MOST_EVENTS = 1_000_000_000_000_000_000L;

    /** Places in {@link #learned}. */
    static final int MEAN = 0;

    static final int DEVIATION = 1;
    static final int LEARNED = 2;

    final long[] counts = new long[COUNT];
    /** In nL a day. */
    final double[] learned = new double[LEARNED];

    /** Creates a state that knows nothing; {@link ValveKernel#begin} comes next. */
    public ValveState() {
        counts[CLOCK] = -1;
    }

    /**
     * Takes over all numbers of another state.
     *
     * @param other which stays as it is
     */
    public void copyFrom(ValveState other) {
        System.arraycopy(other.counts, 0, counts, 0, COUNT);
        System.arraycopy(other.learned, 0, learned, 0, LEARNED);
    }

    /**
     * Tells whether another state has the same numbers, bit for bit.
     *
     * @param other state
     * @return whether the two go on alike
     */
    public boolean isSameAs(ValveState other) {
        boolean same = true;
        for (int i = 0; i < COUNT; i++) {
            same &= counts[i] == other.counts[i];
        }
        for (int i = 0; i < LEARNED; i++) {
            same &= Double.doubleToRawLongBits(learned[i]) == Double.doubleToRawLongBits(other.learned[i]);
        }
        return same;
    }

    /** Counts a step or an event that was taken. */
    void taken() {
        counts[SEQUENCE] = Math.min(counts[SEQUENCE] + 1, MOST_EVENTS);
    }

    /** Whether {@link ValveKernel#begin} or a save has filled it. */
    boolean hasBegun() {
        return counts[CLOCK] >= 0;
    }

    /**
     * Returns one of the whole numbers.
     *
     * @param count which
     * @return in its unit
     */
    public long count(ValveCount count) {
        return counts[count.place()];
    }

    /**
     * Returns the learned mean of a day's use, m of {@link UseLearning}.
     *
     * @return nL a day; 0 before the first day was learned
     */
    public double meanNanolitresPerDay() {
        return learned[MEAN];
    }

    /**
     * Returns the learned mean deviation of a day's use, d of {@link UseLearning}.
     *
     * @return nL a day; 0 before the first day was learned
     */
    public double deviationNanolitresPerDay() {
        return learned[DEVIATION];
    }
}
