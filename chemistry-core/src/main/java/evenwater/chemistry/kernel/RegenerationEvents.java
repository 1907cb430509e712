package evenwater.chemistry.kernel;

/**
 * What the valve and its owner report, at the time of the last step: take a reading first, so that the water is counted with the valve as
 * it stood.
 *
 * <p>Each function answers with bits of {@link RegenerationKernel} and changes nothing where it answers {@code NOT_BEGUN},
 * {@code DOES_NOT_FIT} or {@code BAD_INPUT}.
 */
public final class RegenerationEvents {

    private RegenerationEvents() {}

    /**
     * Reports that a regeneration has started: from now on water passes hard.
     *
     * @param state changed in place
     * @return {@code OK}, or {@code DOES_NOT_FIT} if one is under way
     */
    public static int started(RegenerationState state) {
        long[] n = state.counts;
        if (!state.hasBegun()) {
            return RegenerationKernel.NOT_BEGUN;
        }
        if (n[RegenerationState.REGENERATING] == 1) {
            return RegenerationKernel.DOES_NOT_FIT;
        }
        n[RegenerationState.REGENERATING] = 1;
        n[RegenerationState.REGENERATING_FOR] = 0;
        return RegenerationKernel.OK;
    }

    /**
     * Reports that a regeneration went to its end. With the salt reported missing it counts as failed, and what was left stays.
     *
     * @param state changed in place
     * @param capacityNanolitres that it gave, by the dose of salt; 1 to {@link RegenerationKernel#LARGEST_CAPACITY}
     * @return {@code OK}, {@code WITHOUT_SALT}, {@code BAD_INPUT}, or {@code DOES_NOT_FIT} if none was under way
     */
    public static int finished(RegenerationState state, long capacityNanolitres) {
        long[] n = state.counts;
        if (capacityNanolitres < 1 || capacityNanolitres > RegenerationKernel.LARGEST_CAPACITY) {
            return RegenerationKernel.BAD_INPUT;
        }
        int refusal = notRegenerating(state);
        if (refusal != RegenerationKernel.OK) {
            return refusal;
        }
        if (n[RegenerationState.SALT_MISSING] == 1) {
            end(n, true);
            return RegenerationKernel.WITHOUT_SALT;
        }
        end(n, false);
        n[RegenerationState.CAPACITY] = capacityNanolitres;
        n[RegenerationState.LEFT] = capacityNanolitres;
        n[RegenerationState.OVERDRAWN] = 0;
        n[RegenerationState.AGE] = 0;
        return RegenerationKernel.OK;
    }

    /**
     * Reports that a regeneration failed or was interrupted.
     *
     * @param state changed in place
     * @param brineDrawn whether brine had reached the resin, so that nobody knows what is left: nothing is taken to be
     * @return {@code OK}, or {@code DOES_NOT_FIT} if none was under way
     */
    public static int failed(RegenerationState state, boolean brineDrawn) {
        int refusal = notRegenerating(state);
        if (refusal != RegenerationKernel.OK) {
            return refusal;
        }
        end(state.counts, true);
        state.counts[RegenerationState.LEFT] = brineDrawn ? 0 : state.counts[RegenerationState.LEFT];
        return RegenerationKernel.OK;
    }

    private static int notRegenerating(RegenerationState state) {
        if (!state.hasBegun()) {
            return RegenerationKernel.NOT_BEGUN;
        }
        return state.counts[RegenerationState.REGENERATING] == 1
                ? RegenerationKernel.OK
                : RegenerationKernel.DOES_NOT_FIT;
    }

    static void end(long[] n, boolean failed) {
        n[RegenerationState.REGENERATING] = 0;
        n[RegenerationState.REGENERATING_FOR] = 0;
        n[RegenerationState.SINCE_END] = 0;
        n[RegenerationState.FAILED] = failed ? 1 : 0;
    }

    /**
     * Reports that the salt is missing, or was filled in.
     *
     * @param state changed in place
     * @param missing whether it is
     * @return {@code OK} or {@code NOT_BEGUN}
     */
    public static int salt(RegenerationState state, boolean missing) {
        if (!state.hasBegun()) {
            return RegenerationKernel.NOT_BEGUN;
        }
        state.counts[RegenerationState.SALT_MISSING] = missing ? 1 : 0;
        return RegenerationKernel.OK;
    }

    /**
     * Declares a holiday, or its end: its days, the first and the last included, teach nothing, and a meter without pulses is no trouble.
     *
     * @param state changed in place
     * @param away whether nobody is there
     * @return {@code OK} or {@code NOT_BEGUN}
     */
    public static int holiday(RegenerationState state, boolean away) {
        if (!state.hasBegun()) {
            return RegenerationKernel.NOT_BEGUN;
        }
        state.counts[RegenerationState.AWAY] = away ? 1 : 0;
        state.counts[RegenerationState.WHOLE_DAY] = 0;
        return RegenerationKernel.OK;
    }

    /**
     * Declares that the meter was exchanged or set back: its counter goes on from here, and the day is not learned from. Water
     * since the last believed reading is not counted: nobody knows how much it was.
     *
     * @param settings of the softener
     * @param state changed in place
     * @param reading of the new counter now
     * @return {@code OK}, {@code NOT_BEGUN} or {@code BAD_INPUT}
     */
    public static int meterExchanged(RegenerationSettings settings, RegenerationState state, long reading) {
        if (!MeterCounter.isReading(settings, reading)) {
            return RegenerationKernel.BAD_INPUT;
        }
        if (!state.hasBegun()) {
            return RegenerationKernel.NOT_BEGUN;
        }
        long[] n = state.counts;
        n[RegenerationState.READING] = reading;
        n[RegenerationState.SINCE_READING] = 0;
        n[RegenerationState.SUSPECT] = 0;
        n[RegenerationState.SUSPECTS] = 0;
        n[RegenerationState.WITHOUT_PULSE] = 0;
        n[RegenerationState.WHOLE_DAY] = 0;
        return RegenerationKernel.OK;
    }
}
