package evenwater.chemistry.kernel;

/**
 * What the valve and its owner report, at the time of the last step: take a reading first, so that the water is counted with the valve as
 * it stood.
 *
 * <p>Each function answers with bits of {@link ValveKernel} and changes nothing where it answers {@code NOT_BEGUN},
 * {@code DOES_NOT_FIT} or {@code BAD_INPUT}.
 */
public final class ValveEvents {

    private static final long MOST_COUNTED = 1_000_000;

    private ValveEvents() {}

    /**
     * Reports that a regeneration has started: from now on water passes hard. While failures hold the automatic start back, somebody started it by
     * hand, and their row begins anew.
     *
     * @param settings of the softener
     * @param state changed in place
     * @return {@code OK}, or {@code DOES_NOT_FIT} if one is under way
     */
    public static int started(ValveSettings settings, ValveState state) {
        long[] n = state.counts;
        if (!state.hasBegun()) {
            return ValveKernel.NOT_BEGUN;
        }
        if (n[ValveState.REGENERATING] == 1) {
            return ValveKernel.DOES_NOT_FIT;
        }
        if (ValveRule.isHeldByFailures(settings, state)) {
            n[ValveState.FAILURES] = 0;
        }
        n[ValveState.SALT_MISSING] =
                Math.min(1, n[ValveState.SALT_MISSING]); // from here on it is missing for this run too
        n[ValveState.REGENERATING] = 1;
        n[ValveState.REGENERATING_FOR] = 0;
        n[ValveState.TIMED_OUT] = 0;
        state.taken();
        return ValveKernel.OK;
    }

    /**
     * Reports that a regeneration went to its end. If the salt was missing when it started, and nobody filled it in since, it counts as failed, and what
     * was left stays; a run that uses up the last of the salt is a good one. The end of
     * a run that was taken as interrupted is believed too, once, while no other has started: the valve says that it finished, and
     * what was drawn before that was counted as hard, as it passed.
     *
     * @param settings of the softener
     * @param state changed in place
     * @param capacityNanolitres that it gave, by the dose of salt; 1 to {@link ValveKernel#LARGEST_CAPACITY}, and more than what is left
     *     for a regeneration at once, or the next would follow at once
     * @return {@code OK}, {@code FINISHED_LATE}, {@code WITHOUT_SALT}, {@code BAD_INPUT}, or {@code DOES_NOT_FIT} if none was under way
     */
    public static int finished(ValveSettings settings, ValveState state, long capacityNanolitres) {
        long[] n = state.counts;
        if (capacityNanolitres < 1
                || capacityNanolitres > ValveKernel.LARGEST_CAPACITY
                || capacityNanolitres <= settings.values[ValveSettings.AT_ONCE]) {
            return ValveKernel.BAD_INPUT;
        }
        boolean late = n[ValveState.TIMED_OUT] == 1;
        int refusal = notRegenerating(state);
        if (refusal != ValveKernel.OK && !late) {
            return refusal;
        }
        state.taken();
        if (n[ValveState.SALT_MISSING] == 1) {
            long failures = n[ValveState.FAILURES];
            end(n, true);
            n[ValveState.FAILURES] = late ? failures : n[ValveState.FAILURES]; // once for each run
            return ValveKernel.WITHOUT_SALT;
        }
        end(n, false);
        n[ValveState.CAPACITY] = capacityNanolitres;
        n[ValveState.LEFT] = capacityNanolitres;
        n[ValveState.OVERDRAWN] = 0;
        n[ValveState.AGE] = 0;
        return late ? ValveKernel.FINISHED_LATE : ValveKernel.OK;
    }

    /**
     * Reports that a regeneration failed or was interrupted.
     *
     * @param state changed in place
     * @param brineDrawn whether brine had reached the resin, so that nobody knows what is left: nothing is taken to be
     * @return {@code OK}, or {@code DOES_NOT_FIT} if none was under way
     */
    public static int failed(ValveState state, boolean brineDrawn) {
        int refusal = notRegenerating(state);
        if (refusal != ValveKernel.OK) {
            return refusal;
        }
        state.taken();
        end(state.counts, true);
        state.counts[ValveState.LEFT] = brineDrawn ? 0 : state.counts[ValveState.LEFT];
        return ValveKernel.OK;
    }

    private static int notRegenerating(ValveState state) {
        if (!state.hasBegun()) {
            return ValveKernel.NOT_BEGUN;
        }
        return state.counts[ValveState.REGENERATING] == 1 ? ValveKernel.OK : ValveKernel.DOES_NOT_FIT;
    }

    static void end(long[] n, boolean failed) {
        n[ValveState.REGENERATING] = 0;
        n[ValveState.REGENERATING_FOR] = 0;
        n[ValveState.SINCE_END] = 0;
        n[ValveState.FAILED] = failed ? 1 : 0;
        n[ValveState.FAILURES] = failed ? Math.min(n[ValveState.FAILURES] + 1, MOST_COUNTED) : 0;
        n[ValveState.TIMED_OUT] = 0;
    }

    /**
     * Reports that a person has seen to the failed regenerations: their row begins anew, and the next may start by itself.
     *
     * @param state changed in place
     * @return {@code OK} or {@code NOT_BEGUN}
     */
    public static int failuresAcknowledged(ValveState state) {
        if (!state.hasBegun()) {
            return ValveKernel.NOT_BEGUN;
        }
        state.taken();
        state.counts[ValveState.FAILURES] = 0;
        return ValveKernel.OK;
    }

    /**
     * Reports that the salt is missing, or was filled in.
     *
     * @param state changed in place
     * @param missing whether it is
     * @return {@code OK} or {@code NOT_BEGUN}
     */
    public static int salt(ValveState state, boolean missing) {
        if (!state.hasBegun()) {
            return ValveKernel.NOT_BEGUN;
        }
        state.taken();
        long[] n = state.counts;
        boolean run = n[ValveState.REGENERATING] == 1 || n[ValveState.TIMED_OUT] == 1;
        if (!missing) {
            n[ValveState.SALT_MISSING] = 0;
        } else if (n[ValveState.SALT_MISSING] == 0) {
            n[ValveState.SALT_MISSING] = run ? ValveState.SINCE_THE_RUN_BEGAN : 1;
        }
        return ValveKernel.OK;
    }

    /**
     * Declares a holiday, or its end: its days, the first and the last included, teach nothing, and a meter without pulses is no trouble.
     * What is so already changes nothing.
     *
     * @param state changed in place
     * @param away whether nobody is there
     * @return {@code OK} or {@code NOT_BEGUN}
     */
    public static int holiday(ValveState state, boolean away) {
        if (!state.hasBegun()) {
            return ValveKernel.NOT_BEGUN;
        }
        long before = state.counts[ValveState.AWAY];
        state.counts[ValveState.AWAY] = away ? 1 : 0;
        if (before != state.counts[ValveState.AWAY]) {
            state.taken();
            state.counts[ValveState.WHOLE_DAY] = 0;
        }
        return ValveKernel.OK;
    }

    /**
     * Declares that the meter was exchanged or set back: its counter goes on from here, and the day is not learned from. Water
     * between the last believed reading and this one is lost to all counts: nobody knows how much it was. So totals are too low, and what is left
     * is too high by as much; where that may matter, regenerate.
     *
     * @param settings of the softener
     * @param state changed in place
     * @param reading of the new counter now
     * @return {@code OK}, {@code NOT_BEGUN} or {@code BAD_INPUT}
     */
    public static int meterExchanged(ValveSettings settings, ValveState state, long reading) {
        if (!MeterCounter.isReading(settings, reading)) {
            return ValveKernel.BAD_INPUT;
        }
        if (!state.hasBegun()) {
            return ValveKernel.NOT_BEGUN;
        }
        long[] n = state.counts;
        n[ValveState.READING] = reading;
        n[ValveState.READING_CLOCK] = n[ValveState.CLOCK];
        n[ValveState.SINCE_READING] = 0;
        n[ValveState.SUSPECT] = 0;
        n[ValveState.SUSPECTS] = 0;
        n[ValveState.WITHOUT_PULSE] = 0;
        n[ValveState.WHOLE_DAY] = 0;
        state.taken();
        return ValveKernel.OK;
    }
}
