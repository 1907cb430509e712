package evenwater.chemistry.kernel;

/**
 * The least and the most that a water may hold of each ion if hardness, alkalinity, pH and conductivity lie in given ranges.
 *
 * <p>For one quantity held at q, the conductivity goes from a least to a largest one over all compositions with that q; q is possible if
 * the two enclose some of the range of the reading. The bound is the last q that is: found between one that is and one that is not, and
 * answered from the side that is not.
 *
 * <p>The extremes are found by a search from many starts, not proved. The range of the reading is therefore widened by
 * {@link #MARGIN}, which is more than the search was ever seen to miss.
 */
public final class KitKernel {

    /** The bounds are found. */
    public static final int FOUND = 0;

    /** The ranges of the amounts leave no composition that balances. */
    public static final int NO_BALANCE = 1;

    /** Every composition conducts more than the reading. */
    public static final int CONDUCTS_MORE = 2;

    /** Every composition conducts less than the reading. */
    public static final int CONDUCTS_LESS = 3;

    /** The species of some composition could not be found. */
    public static final int NOT_SOLVED = 4;

    /** At the lowest pH of the range, OH⁻ alone is more than the largest alkalinity. */
    public static final int PH_TOO_HIGH = 5;

    /** Relative; by which the range of the reading is widened for the search. */
    public static final double MARGIN = 2e-3;

    /** What no alkalinity at all may lack of what the pH asks for, in eq/L: pH 7 by a meter is not that of pure water. */
    private static final double LITTLE_ALKALINITY = 1e-6;

    private static final double ROUNDING = 1e-13;
    private static final int AMOUNTS = CompositionRanges.AMOUNTS;

    private KitKernel() {}

    /**
     * Finds whether there is any composition, and the conductivities that there are.
     *
     * @param state ranges of the amounts, pH and conductivity; receives the extremes and a composition within all ranges
     * @return {@link #FOUND} or why there is none
     */
    public static int prepare(KitState state) {
        CompositionRanges ranges = state.ranges;
        int alkalinity = KitQuantity.ALKALINITY.place();
        double ofHydroxide = state.leastAlkalinity();
        if (ofHydroxide > ranges.most[alkalinity] + LITTLE_ALKALINITY) {
            return PH_TOO_HIGH;
        }
        ranges.least[alkalinity] = Math.max(ranges.least[alkalinity], Math.min(ranges.most[alkalinity], ofHydroxide));
        ConductivityExtreme search = state.search();
        double low = search.find(ranges, -1, state.lowest);
        if (Double.isNaN(low)) {
            return ranges.writeFirst(state.trial) ? NOT_SOLVED : NO_BALANCE;
        }
        double high = search.find(ranges, 1, state.highest);
        if (Double.isNaN(high)) {
            return NOT_SOLVED;
        }
        state.extremes[0] = low;
        state.extremes[1] = high;
        double least = state.reading[0] * (1 - MARGIN);
        double most = state.reading[1] * (1 + MARGIN);
        if (low > most) {
            return CONDUCTS_MORE;
        }
        if (high < least) {
            return CONDUCTS_LESS;
        }
        return writeWitness(state, least, most);
    }

    /** Between the composition that conducts least and the one that conducts most, one with the reading. */
    private static int writeWitness(KitState state, double least, double most) {
        double target = Math.max(state.extremes[0], Math.min(state.extremes[1], (least + most) / 2));
        double from = 0;
        double to = 1;
        double share = 0;
        for (int round = 0; round < 60; round++) {
            share = round == 0 ? 0 : round == 1 ? 1 : (from + to) / 2;
            for (int i = 0; i <= AMOUNTS; i++) {
                state.witness[i] = state.lowest[i] + share * (state.highest[i] - state.lowest[i]);
            }
            double found = state.conductivity().of(state.witness, state.witness[AMOUNTS]);
            if (Double.isNaN(found)) {
                return NOT_SOLVED;
            }
            if (found >= least && found <= most) {
                return FOUND;
            }
            if (found < target) {
                from = share;
            } else {
                to = share;
            }
        }
        return NOT_SOLVED;
    }

    /**
     * Returns a bound of a quantity; after {@link #prepare} has found a composition.
     *
     * @param state as prepared
     * @param quantity what is asked for
     * @param sign -1 for the least, 1 for the most
     * @return eq/L; NaN if the species of some composition could not be found
     */
    public static double bound(KitState state, KitQuantity quantity, int sign) {
        int place = quantity.place();
        double gross = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            gross += state.witness[i];
        }
        // outwards by what sums of the amounts are rounded by, but never beyond what was measured
        double found = search(state, place, sign);
        double bound = found == 0 ? 0 : found + sign * ROUNDING * gross;
        return sign < 0 ? Math.max(state.ranges.least[place], bound) : Math.min(state.ranges.most[place], bound);
    }

    private static double search(KitState state, int place, int sign) {
        CompositionRanges held = state.held;
        held.copy(state.ranges);
        double possible = CompositionRanges.valueOf(state.witness, place);
        for (int i = 0; i < AMOUNTS; i++) {
            state.gain[i] = CompositionRanges.belongsTo(i, place) ? sign : 0;
            state.trial[i] = state.witness[i];
        }
        held.raise(state.trial, state.gain);
        double outer = CompositionRanges.valueOf(state.trial, place);
        double tolerance = 5e-9 * state.reading[1];
        if (sign * (outer - possible) <= tolerance) {
            return outer;
        }
        double least = state.reading[0] * (1 - MARGIN);
        double most = state.reading[1] * (1 + MARGIN);
        int which = -1; // which extreme ends it: the least conductivity above the reading, or the largest below
        double excessOuter = excess(state, place, outer, which, least, most);
        if (excessOuter <= 0) {
            which = 1;
            excessOuter = excess(state, place, outer, which, least, most);
            if (excessOuter <= 0) {
                return outer;
            }
        }
        double excessPossible = excess(state, place, possible, which, least, most);
        double bad = outer;
        double good = possible;
        double atBad = excessOuter;
        double atGood = Math.min(0, excessPossible);
        for (int round = 0; round < 40 && sign * (bad - good) > tolerance; round++) {
            double share = atGood / (atGood - atBad);
            double width = bad - good;
            // a little beyond the guess, on alternate sides, so that both ends close in
            double guess = good + share * width + (round % 2 == 0 ? 0.4 : -0.4) * sign * tolerance;
            if (round % 4 == 3 || !(sign * (guess - good) > 0 && sign * (bad - guess) > 0)) {
                guess = good + width / 2;
            }
            double found = excess(state, place, guess, which, least, most);
            if (Double.isNaN(found)) {
                return Double.NaN;
            }
            if (found > 0) {
                bad = guess;
                atBad = found;
            } else {
                good = guess;
                atGood = found;
            }
        }
        return bad;
    }

    /** How far the nearer extreme is outside the reading, in µS/cm; 0 or less if the quantity may be this. */
    private static double excess(KitState state, int place, double value, int which, double least, double most) {
        state.held.least[place] = value;
        state.held.most[place] = value;
        double extreme = state.search().find(state.held, which, state.trial);
        return which < 0 ? extreme - most : least - extreme;
    }
}
