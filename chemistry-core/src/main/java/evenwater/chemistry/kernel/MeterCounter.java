package evenwater.chemistry.kernel;

/**
 * What the cumulative counter of a meter says: how many pulses came since the reading before, whether that can be, and what became of the
 * water.
 *
 * <p>{@code pulses = (reading − last) mod 2^bits}. They can have come if they are at most {@code flow × (seconds since the last believed reading +
 * delay) / pulse + 1}, with the largest flow. The seconds are the larger of what was credited and of what the clock shows since that reading,
 * to 1000 days: so the water of an outage that nobody reported is counted, although its time is not credited. An old message that comes again out of
 * order, or another meter, asks for almost a whole turn of the counter, and is refused. So is, whatever time has passed, a reading less than
 * a hundredth of a turn behind the last believed one (own rule): an old message is far likelier than so nearly a whole turn of use, which is
 * refused with it. A refused reading that comes again unchanged stays refused: time alone makes nothing believable. Refused readings that go
 * on from each other make it certain that the meter is another one.
 *
 * <p>A narrow counter has its limit: a meter that is exchanged in silence, and then rests for longer than a whole turn takes at largest
 * flow, cannot be told from use; nor can a wrong reading right after a changed clock: set back, the longest gap may have passed; set forward, all
 * that it shows, so that one wrong reading of a narrow counter is believed; and at a restart with a clock that makes no sense, 1000 days.
 */
final class MeterCounter {

    /** A step back is small below this part of a turn. */
    private static final long STEP_BACK = 100;

    private MeterCounter() {}

    static boolean isReading(ValveSettings settings, long reading) {
        return reading >= 0 && reading < turn(settings);
    }

    private static long turn(ValveSettings settings) {
        return 1L << settings.values[ValveSettings.BITS];
    }

    private static long between(ValveSettings settings, long earlier, long later) {
        return (later - earlier) & (turn(settings) - 1);
    }

    /** At most some 8.6e17 nL of water, and one pulse, since the seconds never pass 1000 days and a day. */
    private static long possible(ValveSettings settings, long seconds) {
        long[] s = settings.values;
        return s[ValveSettings.FLOW] * (seconds + s[ValveSettings.DELAY]) / s[ValveSettings.PULSE] + 1;
    }

    /**
     * Takes a reading.
     *
     * @param settings of the softener
     * @param state changed in place
     * @param reading within the counter's width
     * @param seconds that may have passed since the step before; 0 to 1000 days
     * @return bits of {@link ValveKernel}
     */
    static int take(ValveSettings settings, ValveState state, long reading, long seconds) {
        long[] n = state.counts;
        long agreeing = settings.values[ValveSettings.AGREEING];
        if (n[ValveState.SUSPECTS] >= agreeing) {
            n[ValveState.WHOLE_DAY] = 0;
            return ValveKernel.METER_UNCLEAR;
        }
        long shown =
                Math.min(state.counts[ValveState.CLOCK] - n[ValveState.READING_CLOCK], ValveKernel.LONGEST_OFF_SECONDS);
        n[ValveState.SINCE_READING] = Math.min(n[ValveState.SINCE_READING] + seconds, ValveKernel.LONGEST_OFF_SECONDS);
        long pulses = between(settings, n[ValveState.READING], reading);
        boolean again = n[ValveState.SUSPECTS] > 0 && reading == n[ValveState.SUSPECT];
        if (again) {
            return ValveKernel.READING_REFUSED;
        }
        long possible = possible(settings, Math.max(n[ValveState.SINCE_READING], shown));
        if (pulses > possible || isStepBack(settings, pulses)) {
            return refuse(settings, n, reading, seconds);
        }
        n[ValveState.SUSPECTS] = 0;
        n[ValveState.SUSPECT] = 0;
        n[ValveState.READING] = reading;
        n[ValveState.READING_CLOCK] = n[ValveState.CLOCK];
        n[ValveState.SINCE_READING] = 0;
        int notices = possible >= pulses + turn(settings) ? ValveKernel.ROLLOVER_AMBIGUOUS : 0;
        return pulses == 0 ? notices : notices | use(settings, n, pulses);
    }

    private static boolean isStepBack(ValveSettings settings, long pulses) {
        return (turn(settings) - pulses) * STEP_BACK < turn(settings);
    }

    private static int refuse(ValveSettings settings, long[] n, long reading, long seconds) {
        boolean goesOn = n[ValveState.SUSPECTS] > 0
                && between(settings, n[ValveState.SUSPECT], reading) <= possible(settings, seconds);
        n[ValveState.SUSPECTS] = goesOn ? n[ValveState.SUSPECTS] + 1 : 1;
        n[ValveState.SUSPECT] = reading;
        if (n[ValveState.SUSPECTS] < settings.values[ValveSettings.AGREEING]) {
            return ValveKernel.READING_REFUSED;
        }
        n[ValveState.WHOLE_DAY] = 0;
        return ValveKernel.READING_REFUSED | ValveKernel.METER_UNCLEAR;
    }

    private static int use(ValveSettings settings, long[] n, long pulses) {
        n[ValveState.WITHOUT_PULSE] = 0;
        long volume = pulses * settings.values[ValveSettings.PULSE];
        long bypassed = n[ValveState.REGENERATING] * volume;
        long softened = Math.min(volume - bypassed, n[ValveState.LEFT]);
        long exhausted = volume - bypassed - softened;
        n[ValveState.LEFT] -= softened;
        n[ValveState.OVERDRAWN] = sum(n[ValveState.OVERDRAWN], exhausted);
        n[ValveState.TODAY_SOFTENED] = sum(n[ValveState.TODAY_SOFTENED], softened);
        n[ValveState.TODAY_BYPASSED] = sum(n[ValveState.TODAY_BYPASSED], bypassed);
        n[ValveState.TODAY_EXHAUSTED] = sum(n[ValveState.TODAY_EXHAUSTED], exhausted);
        n[ValveState.TOTAL_SOFTENED] = sum(n[ValveState.TOTAL_SOFTENED], softened);
        n[ValveState.TOTAL_BYPASSED] = sum(n[ValveState.TOTAL_BYPASSED], bypassed);
        n[ValveState.TOTAL_EXHAUSTED] = sum(n[ValveState.TOTAL_EXHAUSTED], exhausted);
        boolean full = n[ValveState.TOTAL_SOFTENED] == ValveKernel.FULL_NANOLITRES
                || n[ValveState.TOTAL_BYPASSED] == ValveKernel.FULL_NANOLITRES
                || n[ValveState.TOTAL_EXHAUSTED] == ValveKernel.FULL_NANOLITRES;
        if (full) {
            return ValveKernel.TOTALS_FULL;
        }
        n[ValveState.PULSES] += pulses;
        return ValveKernel.OK;
    }

    private static long sum(long total, long volume) {
        return Math.min(total + volume, ValveKernel.FULL_NANOLITRES);
    }
}
