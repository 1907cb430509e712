package evenwater.chemistry.kernel;

/**
 * What the owner of a metered softener decides, as whole numbers: nanolitres (nL), seconds, counts.
 *
 * <p>In nanolitres a tenth of a litre, a US gallon (3 785 411 784 nL), an imperial gallon and a cubic foot are all whole. The
 * limits are such that no sum of {@link ValveKernel} can leave the range of a {@code long}.
 */
public enum ValveSetting {
    /** Volume of one pulse of the meter: 1 nL to 1000 L. */
    PULSE_NANOLITRES(ValveSettings.PULSE, 1, Limits.CUBIC_METRE, 100_000_000),
    /** Width of the meter's cumulative counter, which rolls over at 2 to this power: 8 to 32. */
    COUNTER_BITS(ValveSettings.BITS, 8, 32, 32),
    /** Largest flow that the meter can see, per second: 1 nL to 10 L. */
    LARGEST_FLOW_NANOLITRES_PER_SECOND(ValveSettings.FLOW, 1, 10 * Limits.LITRE, Limits.LITRE),
    /** How much older a reading may be than the clock that comes with it, in seconds: 0 to one day. */
    READING_DELAY_SECONDS(ValveSettings.DELAY, 0, Limits.DAY, 60),
    /** Longest time between two readings while the controller runs, in seconds; beyond, the clock was changed: one minute to 30 days. */
    LONGEST_GAP_SECONDS(ValveSettings.GAP, 60, 30 * Limits.DAY, 25 * 3600),
    /** How many refused readings that agree with each other make it certain that the meter was exchanged: 2 to 1000. */
    AGREEING_READINGS(ValveSettings.AGREEING, 2, 1000, 3),
    /** Time without a pulse after which the meter is called silent, in seconds; 0 for never, else to 1000 days. */
    SILENCE_SECONDS(ValveSettings.SILENCE, 0, 1000 * Limits.DAY, 7 * Limits.DAY),
    /** Volume that a full regeneration gives, at the beginning: 1 nL to 1000 m³. */
    CAPACITY_NANOLITRES(ValveSettings.CAPACITY, 1, Limits.VOLUME, 1000 * Limits.LITRE),
    /** Reserve of the first week of learning, and a use that is never an outlier: 0 to 1000 m³. */
    FIRST_RESERVE_NANOLITRES(ValveSettings.FIRST_RESERVE, 0, Limits.VOLUME, 400 * Limits.LITRE),
    /** Reserve that the learned one does not go below: 0 to 1000 m³; -1 for a quarter of the first reserve. */
    LEAST_RESERVE_NANOLITRES(ValveSettings.LEAST_RESERVE, -1, Limits.VOLUME, -1),
    /** With so much left or less a regeneration is due at once: 0 to 1000 m³; -1 for never at once. To be kept well below every capacity,
     * or one regeneration follows the other at the shortest interval. */
    AT_ONCE_NANOLITRES(ValveSettings.AT_ONCE, -1, Limits.VOLUME, -1),
    /** Time of day when the night's window opens and a day of learning ends, in seconds after midnight: below one day. */
    NIGHT_BEGINS_SECONDS(ValveSettings.NIGHT, 0, Limits.DAY - 1, 2 * 3600),
    /** Length of the night's window, in seconds: one minute to one day. */
    NIGHT_LASTS_SECONDS(ValveSettings.NIGHT_LASTS, 60, Limits.DAY, 3 * 3600),
    /** Age of a regeneration that is not to be passed, in seconds; 0 for none, else one to 1000 days. */
    LONGEST_AGE_SECONDS(ValveSettings.LONGEST_AGE, 0, 1000 * Limits.DAY, 14 * Limits.DAY),
    /** Shortest time from the end of a regeneration, good or failed, to the next, in seconds: 0 to 30 days. */
    SHORTEST_INTERVAL_SECONDS(ValveSettings.INTERVAL, 0, 30 * Limits.DAY, 6 * 3600),
    /** Longest time that a regeneration takes; one that does not report its end counts as interrupted, in seconds: one minute to one day. */
    LONGEST_REGENERATION_SECONDS(ValveSettings.DURATION, 60, Limits.DAY, 4 * 3600),
    /** After how many failed regenerations in a row none starts by itself until a person has seen to it: 1 to 1000. */
    MOST_FAILURES(ValveSettings.FAILURES, 1, 1000, 3);

    /** In the units of the settings. A class of its own, since an enum's constants come before its fields. */
    private static final class Limits {
        static final long LITRE = 1_000_000_000L;
        static final long CUBIC_METRE = 1000 * LITRE;
        static final long VOLUME = 1000 * CUBIC_METRE;
        static final long DAY = 86_400;
    }

    private final int place;
    private final long least;
    private final long most;
    private final long usual;

    ValveSetting(int place, long least, long most, long usual) {
        this.place = place;
        this.least = least;
        this.most = most;
        this.usual = usual;
    }

    int place() {
        return place;
    }

    /**
     * Returns the smallest value that is allowed.
     *
     * @return in the unit of the setting
     */
    public long least() {
        return least;
    }

    /**
     * Returns the largest value that is allowed.
     *
     * @return in the unit of the setting
     */
    public long most() {
        return most;
    }

    /**
     * Returns the value of settings that were just made; own rule, apart from the 14 days of age: common practice, no source.
     *
     * @return in the unit of the setting
     */
    public long usual() {
        return usual;
    }
}
