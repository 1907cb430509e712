package evenwater.chemistry.kernel;

/**
 * What the cumulative counter of a meter says: how many pulses came since the reading before, whether that can be, and what became of the
 * water.
 *
 * <p>{@code pulses = (reading − last) mod 2^bits}. They can have come if they are at most {@code flow × (seconds since the last believed reading +
 * delay) / pulse + 1}, with the largest flow. An old message that comes again out of order, or another meter, asks for almost a whole turn of
 * the counter, and is refused. A refused reading that comes again unchanged stays refused: time alone makes nothing
 * believable. Refused readings that go on from each other make it certain that the meter is another one.
 *
 * <p>A narrow counter has its limit: a meter that is exchanged in silence, and then rests for longer than a whole turn takes at largest
 * flow, cannot be told from use; nor can a wrong reading right after a changed clock, since then the longest gap may have passed.
 */
final class MeterCounter {

    private MeterCounter() {}

    static boolean isReading(RegenerationSettings settings, long reading) {
        return reading >= 0 && reading < turn(settings);
    }

    private static long turn(RegenerationSettings settings) {
        return 1L << settings.values[RegenerationSettings.BITS];
    }

    private static long between(RegenerationSettings settings, long earlier, long later) {
        return (later - earlier) & (turn(settings) - 1);
    }

    /** At most some 8.6e17 nL of water, and one pulse, since the seconds never pass 1000 days and a day. */
    private static long possible(RegenerationSettings settings, long seconds) {
        long[] s = settings.values;
        return s[RegenerationSettings.FLOW] * (seconds + s[RegenerationSettings.DELAY]) / s[RegenerationSettings.PULSE]
                + 1;
    }

    /**
     * Takes a reading.
     *
     * @param settings of the softener
     * @param state changed in place
     * @param reading within the counter's width
     * @param seconds that may have passed since the step before; 0 to 1000 days
     * @return bits of {@link RegenerationKernel}
     */
    static int take(RegenerationSettings settings, RegenerationState state, long reading, long seconds) {
        long[] n = state.counts;
        long agreeing = settings.values[RegenerationSettings.AGREEING];
        if (n[RegenerationState.SUSPECTS] >= agreeing) {
            n[RegenerationState.WHOLE_DAY] = 0;
            return RegenerationKernel.METER_UNCLEAR;
        }
        n[RegenerationState.SINCE_READING] =
                Math.min(n[RegenerationState.SINCE_READING] + seconds, RegenerationKernel.LONGEST_OFF_SECONDS);
        long pulses = between(settings, n[RegenerationState.READING], reading);
        boolean again = n[RegenerationState.SUSPECTS] > 0 && reading == n[RegenerationState.SUSPECT];
        if (again) {
            return RegenerationKernel.READING_REFUSED;
        }
        long possible = possible(settings, n[RegenerationState.SINCE_READING]);
        if (pulses > possible) {
            return refuse(settings, n, reading, seconds);
        }
        n[RegenerationState.SUSPECTS] = 0;
        n[RegenerationState.SUSPECT] = 0;
        n[RegenerationState.READING] = reading;
        n[RegenerationState.SINCE_READING] = 0;
        int notices = possible >= pulses + turn(settings) ? RegenerationKernel.ROLLOVER_AMBIGUOUS : 0;
        return pulses == 0 ? notices : notices | use(settings, n, pulses);
    }

    private static int refuse(RegenerationSettings settings, long[] n, long reading, long seconds) {
        boolean goesOn = n[RegenerationState.SUSPECTS] > 0
                && between(settings, n[RegenerationState.SUSPECT], reading) <= possible(settings, seconds);
        n[RegenerationState.SUSPECTS] = goesOn ? n[RegenerationState.SUSPECTS] + 1 : 1;
        n[RegenerationState.SUSPECT] = reading;
        if (n[RegenerationState.SUSPECTS] < settings.values[RegenerationSettings.AGREEING]) {
            return RegenerationKernel.READING_REFUSED;
        }
        n[RegenerationState.WHOLE_DAY] = 0;
        return RegenerationKernel.READING_REFUSED | RegenerationKernel.METER_UNCLEAR;
    }

    private static int use(RegenerationSettings settings, long[] n, long pulses) {
        n[RegenerationState.WITHOUT_PULSE] = 0;
        long volume = pulses * settings.values[RegenerationSettings.PULSE];
        long bypassed = n[RegenerationState.REGENERATING] * volume;
        long softened = Math.min(volume - bypassed, n[RegenerationState.LEFT]);
        long exhausted = volume - bypassed - softened;
        n[RegenerationState.LEFT] -= softened;
        n[RegenerationState.OVERDRAWN] = sum(n[RegenerationState.OVERDRAWN], exhausted);
        n[RegenerationState.TODAY_SOFTENED] = sum(n[RegenerationState.TODAY_SOFTENED], softened);
        n[RegenerationState.TODAY_BYPASSED] = sum(n[RegenerationState.TODAY_BYPASSED], bypassed);
        n[RegenerationState.TODAY_EXHAUSTED] = sum(n[RegenerationState.TODAY_EXHAUSTED], exhausted);
        n[RegenerationState.TOTAL_SOFTENED] = sum(n[RegenerationState.TOTAL_SOFTENED], softened);
        n[RegenerationState.TOTAL_BYPASSED] = sum(n[RegenerationState.TOTAL_BYPASSED], bypassed);
        n[RegenerationState.TOTAL_EXHAUSTED] = sum(n[RegenerationState.TOTAL_EXHAUSTED], exhausted);
        boolean full = n[RegenerationState.TOTAL_SOFTENED] == RegenerationKernel.FULL_NANOLITRES
                || n[RegenerationState.TOTAL_BYPASSED] == RegenerationKernel.FULL_NANOLITRES
                || n[RegenerationState.TOTAL_EXHAUSTED] == RegenerationKernel.FULL_NANOLITRES;
        if (full) {
            return RegenerationKernel.TOTALS_FULL;
        }
        n[RegenerationState.PULSES] += pulses;
        return RegenerationKernel.OK;
    }

    private static long sum(long total, long volume) {
        return Math.min(total + volume, RegenerationKernel.FULL_NANOLITRES);
    }
}
