package evenwater.chemistry.kernel;

/**
 * The settings of a metered softener: one whole number for each {@link ValveSetting}, always within its limits.
 *
 * <p>Made once; the functions of {@link ValveKernel} only read them. Not thread-safe while they are put.
 */
public final class ValveSettings {

    static final int PULSE = 0;
    static final int BITS = 1;
    static final int FLOW = 2;
    static final int DELAY = 3;
    static final int GAP = 4;
    static final int AGREEING = 5;
    static final int SILENCE = 6;
    static final int FIRST_RESERVE = 7;
    static final int LEAST_RESERVE = 8;
    static final int AT_ONCE = 9;
    static final int NIGHT = 10;
    static final int NIGHT_LASTS = 11;
    static final int LONGEST_AGE = 12;
    static final int INTERVAL = 13;
    static final int DURATION = 14;
    static final int CAPACITY = 15;
    static final int FAILURES = 16;
    private static final int COUNT = 17;

    final long[] values = new long[COUNT];

    /** Creates settings with their usual values. */
    public ValveSettings() {
        for (ValveSetting setting : ValveSetting.values()) {
            values[setting.place()] = setting.usual();
        }
    }

    /**
     * Puts a value, or leaves the one before if it is out of range.
     *
     * @param setting which
     * @param value in its unit
     * @return {@link ValveKernel#OK}, or {@link ValveKernel#BAD_INPUT} if it is out of range
     */
    public int put(ValveSetting setting, long value) {
        if (value < setting.least() || value > setting.most()) {
            return ValveKernel.BAD_INPUT;
        }
        values[setting.place()] = value;
        return ValveKernel.OK;
    }

    /**
     * Returns a value.
     *
     * @param setting which
     * @return in its unit
     */
    public long value(ValveSetting setting) {
        return values[setting.place()];
    }

    /**
     * Returns a number that differs for other settings, so that a save tells under which it was made.
     *
     * @return a checksum of all values
     */
    public long fingerprint() {
        return CyclicRedundancyCheck.of(values, COUNT);
    }
}
