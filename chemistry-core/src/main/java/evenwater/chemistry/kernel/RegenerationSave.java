package evenwater.chemistry.kernel;

/**
 * A {@link RegenerationState} as plain whole numbers that survive a power cut, and back.
 *
 * <p>In order: version, fingerprint of the settings, the counts, the bits of the learned doubles, and a 64-bit cyclic redundancy check of
 * all before. A save of which one number is wrong is always seen; one whose halves are from two saves is missed once in 2⁶⁴. Keep two places and
 * write them in turn: then one of them is whole at any time.
 */
public final class RegenerationSave {

    /** The save was read. */
    public static final int OK = 0;

    /** Too few or too many numbers. */
    public static final int WRONG_LENGTH = 1;

    /** Made by another version, or no save at all. */
    public static final int UNKNOWN_VERSION = 2;

    /** The check does not fit: the save is torn or damaged. */
    public static final int TORN = 3;

    /** Made under other settings. */
    public static final int OTHER_SETTINGS = 4;

    /** A number is out of its range, although the check fits. */
    public static final int OUT_OF_RANGE = 5;

    /** Version of the layout and of the meaning of its numbers. */
    public static final long VERSION = 1;

    private static final int FINGERPRINT = 1;
    private static final int COUNTS = 2;
    private static final int LEARNED = COUNTS + RegenerationState.COUNT;
    private static final int CHECK = LEARNED + RegenerationState.LEARNED;

    /** How many numbers a save has. */
    public static final int LENGTH = CHECK + 1;

    private static final RegenerationCount[] RANGES = RegenerationCount.values();

    private RegenerationSave() {}

    /**
     * Writes a state.
     *
     * @param settings under which it runs
     * @param state to be saved; has begun
     * @param save receives {@link #LENGTH} numbers
     * @return {@link #OK}; {@link #WRONG_LENGTH} if it does not have room for exactly these; {@link #OUT_OF_RANGE} if the state has not
     *     begun; then nothing is written
     */
    public static int write(RegenerationSettings settings, RegenerationState state, long[] save) {
        if (save.length != LENGTH) {
            return WRONG_LENGTH;
        }
        if (!state.hasBegun()) {
            return OUT_OF_RANGE;
        }
        save[0] = VERSION;
        save[FINGERPRINT] = settings.fingerprint();
        for (int i = 0; i < RegenerationState.COUNT; i++) {
            save[COUNTS + i] = state.counts[i];
        }
        for (int i = 0; i < RegenerationState.LEARNED; i++) {
            save[LEARNED + i] = Double.doubleToRawLongBits(state.learned[i]);
        }
        save[CHECK] = CyclicRedundancyCheck.of(save, CHECK);
        return OK;
    }

    /**
     * Reads a state that was saved under the same settings.
     *
     * @param settings under which it goes on
     * @param state receives the numbers; as it was if the save cannot be used
     * @param save as written
     * @return {@link #OK} or why it cannot be used
     */
    public static int read(RegenerationSettings settings, RegenerationState state, long[] save) {
        int status = check(settings, save);
        if (status == OK && save[FINGERPRINT] != settings.fingerprint()) {
            return OTHER_SETTINGS;
        }
        if (status == OK) {
            fill(state, save);
        }
        return status;
    }

    /**
     * Reads a state under settings that were changed on purpose. Volumes stay as they are; the day under way is not learned from, and
     * the pulses of before keep the volume that they had.
     *
     * @param settings under which it goes on
     * @param state receives the numbers; as it was if the save cannot be used
     * @param save as written under any settings
     * @return {@link #OK} or why it cannot be used; {@link #OUT_OF_RANGE} also if the reading is too large for the counter of these settings
     */
    public static int readUnderOtherSettings(RegenerationSettings settings, RegenerationState state, long[] save) {
        int status = check(settings, save);
        if (status == OK) {
            fill(state, save);
            state.counts[RegenerationState.WHOLE_DAY] = 0;
        }
        return status;
    }

    private static int check(RegenerationSettings settings, long[] save) {
        if (save.length != LENGTH) {
            return WRONG_LENGTH;
        }
        if (save[0] != VERSION) {
            return UNKNOWN_VERSION;
        }
        if (save[CHECK] != CyclicRedundancyCheck.of(save, CHECK)) {
            return TORN;
        }
        return isInRange(settings, save) ? OK : OUT_OF_RANGE;
    }

    private static boolean isInRange(RegenerationSettings settings, long[] save) {
        boolean inRange = true;
        for (RegenerationCount count : RANGES) {
            long value = save[COUNTS + count.place()];
            inRange &= value >= 0 && value <= count.most();
        }
        for (int i = 0; i < RegenerationState.LEARNED; i++) {
            double value = Double.longBitsToDouble(save[LEARNED + i]);
            inRange &= value >= 0 && value <= UseLearning.MOST_NANOLITRES; // NaN fails
        }
        return inRange
                && save[COUNTS + RegenerationState.CAPACITY] > 0
                && save[COUNTS + RegenerationState.LEFT] <= save[COUNTS + RegenerationState.CAPACITY]
                && MeterCounter.isReading(settings, save[COUNTS + RegenerationState.READING])
                && MeterCounter.isReading(settings, save[COUNTS + RegenerationState.SUSPECT]);
    }

    private static void fill(RegenerationState state, long[] save) {
        for (int i = 0; i < RegenerationState.COUNT; i++) {
            state.counts[i] = save[COUNTS + i];
        }
        for (int i = 0; i < RegenerationState.LEARNED; i++) {
            state.learned[i] = Double.longBitsToDouble(save[LEARNED + i]);
        }
    }
}
