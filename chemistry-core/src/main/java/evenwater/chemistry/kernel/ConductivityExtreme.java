package evenwater.chemistry.kernel;

/**
 * The least and the largest conductivity of the compositions within {@link CompositionRanges} at a pH of a range.
 *
 * <p>Conductivity is nearly linear in the amounts, but not monotone in all of them: by its pairs with Ca²⁺ and Mg²⁺ sulfate can make it
 * lowest at some share of the anions, and a pH near 7. So a search starts from ends that differ in what prevails, and follows the best
 * by {@link ConductivityAscent}. In 2250 random cases, the weak ones among them, it missed what sixty random starts found by 0.11 % of the
 * conductivity once and else by less than 0.01 %; before starts by a metal alone, and before those with other alkalinity were followed always, a few with hardness or
 * alkalinity open were missed by 5 % and far more. Not thread-safe.
 */
final class ConductivityExtreme {

    private static final int AMOUNTS = CompositionRanges.AMOUNTS;

    /** How strongly a start prefers an ion, in S cm²/eq: more than the ions differ. */
    private static final double PREFERENCE = 100;

    /** What an equivalent brings, roughly, in S cm², where the search starts. */
    private static final double[] ROUGH = {50, 45, 48, 71, 42, 74, 65, 69};

    /** What the starts prefer: a metal and a strong anion, or one ion alone. */
    private static final int[][] STARTS = {
        {KitQuantity.CALCIUM.place(), KitQuantity.CHLORIDE.place()},
        {KitQuantity.CALCIUM.place(), KitQuantity.SULFATE.place()},
        {KitQuantity.CALCIUM.place(), KitQuantity.NITRATE.place()},
        {KitQuantity.MAGNESIUM.place(), KitQuantity.CHLORIDE.place()},
        {KitQuantity.MAGNESIUM.place(), KitQuantity.SULFATE.place()},
        {KitQuantity.MAGNESIUM.place(), KitQuantity.NITRATE.place()},
        {KitQuantity.CALCIUM.place(), KitQuantity.CHLORIDE.place()},
        {KitQuantity.MAGNESIUM.place(), KitQuantity.SULFATE.place()},
        {KitQuantity.CALCIUM.place(), KitQuantity.CALCIUM.place()},
        {KitQuantity.MAGNESIUM.place(), KitQuantity.MAGNESIUM.place()},
        {KitQuantity.SODIUM.place(), KitQuantity.SODIUM.place()},
        {KitQuantity.MAGNESIUM.place(), KitQuantity.SULFATE.place()},
        {KitQuantity.ALKALINITY.place(), KitQuantity.ALKALINITY.place()}
    };

    /** From here the starts have the other end of the alkalinity: H⁺ and OH⁻ make it better than it looks. */
    private static final int OTHER_ALKALINITY = 6;

    /** From here they may exchange hardness for alkali metals and alkalinity for strong anions, where the ranges leave that open. */
    private static final int OTHER_METAL = 8;

    /** The start with alkalinity in the place of strong anions, even where those look as if they conducted more. */
    private static final int MOST_ALKALINITY = 12;

    /** Where starts are tried beside the ends of the pH, in rising order: with least H⁺ and OH⁻, and with most pairs of carbonate. */
    private static final double[] BETWEEN = {7, 9.5};

    /** Relative; starts that differ by less are one. */
    private static final double SAME = 1e-9;

    /** From this range of pH on there is more to follow. */
    private static final double WIDE = 1;

    /** How many of all starts are followed, the best first. Then the best of those with other alkalinity are: they begin low and may end high. */
    private static final int REFINED = 2;

    private static final int REFINED_IF_WIDE = 4;

    private final CompositionConductivity conductivity;
    private final ConductivityAscent ascent;
    private final double mostPH;
    private final int refined;
    private final double[] startPH = new double[BETWEEN.length + 2];
    private final int phCount;
    private final double[] gain = new double[AMOUNTS];
    private final double[][] starts = new double[STARTS.length][AMOUNTS + 1];
    private final double[] startValue = new double[STARTS.length];
    private final CompositionRanges other = new CompositionRanges();

    ConductivityExtreme(CompositionConductivity conductivity, double leastPH, double mostPH) {
        this.conductivity = conductivity;
        this.ascent = new ConductivityAscent(conductivity, leastPH, mostPH);
        this.mostPH = mostPH;
        this.refined = mostPH - leastPH >= WIDE ? REFINED_IF_WIDE : REFINED;
        int n = 0;
        startPH[n++] = leastPH;
        for (double pH : BETWEEN) {
            if (pH > leastPH && pH < mostPH) {
                startPH[n++] = pH;
            }
        }
        if (mostPH > leastPH) {
            startPH[n++] = mostPH;
        }
        phCount = n;
    }

    /**
     * Returns the extreme of κ in µS/cm and writes where it is: amounts in eq/L, then the pH.
     *
     * @param sign 1 for the largest, -1 for the least
     * @return NaN if there is no composition or its species cannot be found
     */
    double find(CompositionRanges ranges, int sign, double[] where) {
        for (int k = 0; k < STARTS.length; k++) {
            startValue[k] = writeStart(ranges, sign, k);
        }
        double best = Double.NEGATIVE_INFINITY;
        for (int round = 0; round < refined; round++) {
            best = follow(ranges, sign, 0, STARTS.length, best, where);
        }
        best = follow(ranges, sign, OTHER_ALKALINITY, OTHER_METAL, best, where);
        best = follow(ranges, sign, MOST_ALKALINITY, MOST_ALKALINITY + 1, best, where);
        return best == Double.NEGATIVE_INFINITY ? Double.NaN : sign * best;
    }

    /** Follows the best of some starts, unless all were, and returns the best so far. */
    private double follow(CompositionRanges ranges, int sign, int from, int to, double bestSoFar, double[] where) {
        int k = from;
        for (int other = from + 1; other < to; other++) {
            k = startValue[other] > startValue[k] ? other : k;
        }
        if (startValue[k] == Double.NEGATIVE_INFINITY) {
            return bestSoFar;
        }
        double value = ascent.follow(ranges, sign, starts[k], startValue[k]);
        startValue[k] = Double.NEGATIVE_INFINITY;
        if (value > bestSoFar) {
            System.arraycopy(starts[k], 0, where, 0, AMOUNTS + 1);
            return value;
        }
        return bestSoFar;
    }

    /** Writes a start with its best pH, and returns its conductivity times the sign; minus infinity if there is none, or an earlier one like it. */
    private double writeStart(CompositionRanges ranges, int sign, int k) {
        double[] z = starts[k];
        CompositionRanges of = k < OTHER_ALKALINITY || k >= OTHER_METAL ? ranges : withOtherAlkalinity(ranges, sign);
        double best = Double.NEGATIVE_INFINITY;
        if (!of.writeFirst(z)) {
            return best;
        }
        for (int i = 0; i < AMOUNTS; i++) {
            gain[i] = sign * ROUGH[i];
        }
        of.raise(z, gain);
        gain[STARTS[k][0]] += PREFERENCE;
        gain[STARTS[k][1]] += PREFERENCE;
        of.raise(z, gain, k < OTHER_METAL ? CompositionRanges.WITHIN_SUMS : CompositionRanges.ALIKE);
        if (isLikeAnEarlierOne(k)) {
            return best;
        }
        for (int p = 0; p < phCount; p++) {
            double value = sign * conductivity.of(z, startPH[p]);
            if (value >= best) { // the highest pH where none makes a difference: from there alkalinity can grow
                best = value;
                z[AMOUNTS] = startPH[p];
            }
        }
        return best;
    }

    private boolean isLikeAnEarlierOne(int k) {
        for (int earlier = 0; earlier < k; earlier++) {
            double difference = 0;
            double gross = 0;
            for (int i = 0; i < AMOUNTS; i++) {
                difference += Math.abs(starts[k][i] - starts[earlier][i]);
                gross += starts[k][i];
            }
            // where there was none, what stands there is of another search
            if (startValue[earlier] > Double.NEGATIVE_INFINITY && difference <= SAME * gross) {
                return true;
            }
        }
        return false;
    }

    /** For the least conductivity the least alkalinity there is, for the largest what OH⁻ makes of the highest pH. */
    private CompositionRanges withOtherAlkalinity(CompositionRanges ranges, int sign) {
        int place = KitQuantity.ALKALINITY.place();
        double ofHydroxide = sign < 0 ? 0 : conductivity.leastAlkalinity(mostPH);
        double held = Math.max(ranges.least[place], Math.min(ranges.most[place], ofHydroxide));
        other.copy(ranges);
        other.least[place] = held;
        other.most[place] = held;
        return other;
    }
}
