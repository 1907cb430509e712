package evenwater.chemistry.kernel;

/**
 * A {@link ValveState} as plain whole numbers that survive a power cut, and back.
 *
 * <p>A block of {@link SavedNumbers}: version, fingerprint of the settings, the counts, the bits of the learned doubles, checksum. Keep two
 * places and write them in turn: then one of them is whole at any time, and {@link ValveCount#SEQUENCE} tells which is newer.
 */
public final class ValveSave {

    /** The save was read. */
    public static final int OK = SavedNumbers.WHOLE;

    /** Too few or too many numbers. */
    public static final int WRONG_LENGTH = SavedNumbers.WRONG_LENGTH;

    /** Made by another version, or no save of a softener at all. */
    public static final int OTHER_VERSION = SavedNumbers.OTHER_VERSION;

    /** The check does not fit: the save is torn or damaged. */
    public static final int TORN = SavedNumbers.TORN;

    /** Made under other settings. */
    public static final int OTHER_SETTINGS = SavedNumbers.OTHER_FINGERPRINT;

    /** A number is out of its range, although the check fits. */
    public static final int OUT_OF_RANGE = 5;

    /** Kind ("vlve" in ASCII) and version of the layout and of the meaning of its numbers. */
    public static final long VERSION = 0x766c7665_0000_0001L;

    private static final int CONTENTS = ValveState.COUNT + ValveState.LEARNED;

    /** How many numbers a save has. */
    public static final int LENGTH = CONTENTS + SavedNumbers.OVERHEAD;

    private static final ValveCount[] RANGES = ValveCount.values();

    private ValveSave() {}

    /**
     * Writes a state.
     *
     * @param settings under which it runs
     * @param state to be saved; has begun
     * @param save receives {@link #LENGTH} numbers
     * @return {@link #OK}; {@link #WRONG_LENGTH} if it does not have room for exactly these; {@link #OUT_OF_RANGE} if the state has not
     *     begun; then nothing is written
     */
    public static int write(ValveSettings settings, ValveState state, long[] save) {
        if (!state.hasBegun()) {
            return OUT_OF_RANGE;
        }
        long[] numbers = new long[CONTENTS];
        System.arraycopy(state.counts, 0, numbers, 0, ValveState.COUNT);
        for (int i = 0; i < ValveState.LEARNED; i++) {
            numbers[ValveState.COUNT + i] = Double.doubleToRawLongBits(state.learned[i]);
        }
        return SavedNumbers.write(VERSION, settings.fingerprint(), numbers, save);
    }

    /**
     * Reads a state that was saved under the same settings.
     *
     * @param settings under which it goes on
     * @param state receives the numbers; as it was if the save cannot be used
     * @param save as written
     * @return {@link #OK} or why it cannot be used
     */
    public static int read(ValveSettings settings, ValveState state, long[] save) {
        return read(settings, state, save, false);
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
    public static int readUnderNewSettings(ValveSettings settings, ValveState state, long[] save) {
        return read(settings, state, save, true);
    }

    private static int read(ValveSettings settings, ValveState state, long[] save, boolean newSettings) {
        long[] numbers = new long[CONTENTS];
        int status = SavedNumbers.read(VERSION, settings.fingerprint(), save, numbers);
        if (status != OK && !(newSettings && status == OTHER_SETTINGS)) {
            return status;
        }
        if (!isInRange(settings, numbers)) {
            return OUT_OF_RANGE;
        }
        System.arraycopy(numbers, 0, state.counts, 0, ValveState.COUNT);
        for (int i = 0; i < ValveState.LEARNED; i++) {
            state.learned[i] = Double.longBitsToDouble(numbers[ValveState.COUNT + i]);
        }
        if (newSettings) {
            state.counts[ValveState.WHOLE_DAY] = 0;
        }
        return OK;
    }

    private static boolean isInRange(ValveSettings settings, long[] numbers) {
        boolean inRange = true;
        for (ValveCount count : RANGES) {
            long value = numbers[count.place()];
            inRange &= value >= 0 && value <= count.most();
        }
        for (int i = 0; i < ValveState.LEARNED; i++) {
            double value = Double.longBitsToDouble(numbers[ValveState.COUNT + i]);
            inRange &= value >= 0 && value <= UseLearning.MOST_NANOLITRES; // NaN fails
        }
        return inRange
                && numbers[ValveState.CAPACITY] > 0
                && numbers[ValveState.LEFT] <= numbers[ValveState.CAPACITY]
                && MeterCounter.isReading(settings, numbers[ValveState.READING])
                && MeterCounter.isReading(settings, numbers[ValveState.SUSPECT]);
    }
}
