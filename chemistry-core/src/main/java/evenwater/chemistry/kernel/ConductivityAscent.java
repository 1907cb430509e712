package evenwater.chemistry.kernel;

/**
 * A way from one composition and pH to higher and higher conductivity, or to lower and lower, until no exchange helps.
 *
 * <p>Along the gradient to the end where a linear function would be largest (Frank and Wolfe), or part of the way by a parabola; where that
 * promises more than it gives, each exchange by itself. The pH goes to the ends of its range and by halves between. Not thread-safe.
 */
final class ConductivityAscent {

    private static final int AMOUNTS = CompositionRanges.AMOUNTS;

    /** Relative; what a step may still promise when the way ends. */
    private static final double PROMISE = 1e-4;

    /** Relative; what a round must have brought to be followed by another. */
    private static final double PROGRESS = 1e-5;

    private static final int ROUNDS = 12;

    /** Of what it promises, what a step must give to be believed; a single exchange is asked less of than all together. */
    private static final double KEPT = 0.25;

    private static final double KEPT_BY_ONE = 0.125;

    /** Equivalents of a step for a derivative, relative to those of the water, and at least, in eq/L. */
    private static final double DIFFERENCE = 1e-4;

    private static final double LEAST_DIFFERENCE = 1e-8;

    /** Where a bend is no longer looked for, as a share of the way; and how often it is narrowed down. */
    private static final double SHORTEST = 1e-4;

    private static final int SECTIONS = 8;

    /** Conductivity changes by less than 1e-4 of itself within this near its least; in units of pH. */
    private static final double FINEST_PH = 0.02;

    private final CompositionConductivity conductivity;
    private final double leastPH;
    private final double mostPH;
    private final double[] probe = new double[AMOUNTS];
    private final double[] end = new double[AMOUNTS];
    private final double[] gain = new double[AMOUNTS];
    private final double[] between = new double[AMOUNTS];

    ConductivityAscent(CompositionConductivity conductivity, double leastPH, double mostPH) {
        this.conductivity = conductivity;
        this.leastPH = leastPH;
        this.mostPH = mostPH;
    }

    /**
     * Moves amounts and pH, and returns the conductivity reached times the sign.
     *
     * @param sign 1 to go up, -1 to go down
     * @param z amounts in eq/L, then the pH
     * @param start the conductivity there times the sign
     */
    double follow(CompositionRanges ranges, int sign, double[] z, double start) {
        double value = start;
        for (int round = 0; round < ROUNDS; round++) {
            double before = value;
            writeGain(z, sign, value);
            System.arraycopy(z, 0, end, 0, AMOUNTS);
            double promise = ranges.raise(end, gain);
            if (promise > PROMISE * Math.abs(value)) {
                double raised = towardsEnd(z, sign, value, promise);
                // a bend on the way, as where the last carbonate ends, hides what an exchange by itself can do
                value = raised > value + KEPT * promise ? raised : exchanges(ranges, z, sign, raised);
            }
            if (mostPH > leastPH) {
                value = stepOfPH(z, sign, value);
            }
            if (!(value > before + PROGRESS * Math.abs(before))) {
                break;
            }
        }
        return value;
    }

    /** Goes to the end, or part of the way there by a parabola; returns the value, moved or not. */
    private double towardsEnd(double[] z, int sign, double value, double promise) {
        double atEnd = sign * conductivity.of(end, z[AMOUNTS]);
        double curvature = atEnd - value - promise;
        double best = value;
        double share = 0;
        if (atEnd > best) {
            best = atEnd;
            share = 1;
        }
        double middle = -promise / (2 * curvature);
        if (curvature < 0 && middle < 1) {
            blend(z, end, middle);
            double there = sign * conductivity.of(between, z[AMOUNTS]);
            if (there > best) {
                best = there;
                share = middle;
            }
        }
        if (share > 0) {
            blend(z, end, share);
            System.arraycopy(between, 0, z, 0, AMOUNTS);
        }
        return best;
    }

    /** Looks for a bend on the way to the end: halves the way until it gets worse again, then sections it. */
    private double towardsBend(double[] z, int sign, double start) {
        double best = start;
        double share = 0;
        for (double at = 0.5; at > SHORTEST; at /= 2) {
            blend(z, end, at);
            double there = sign * conductivity.of(between, z[AMOUNTS]);
            if (there > best) {
                best = there;
                share = at;
            } else if (share > 0) {
                break;
            }
        }
        double factor = Math.sqrt(2);
        for (int round = 0; round < SECTIONS && share > 0; round++) {
            for (int side = -1; side <= 1; side += 2) {
                double at = side < 0 ? share / factor : Math.min(1, share * factor);
                blend(z, end, at);
                double there = sign * conductivity.of(between, z[AMOUNTS]);
                if (there > best) {
                    best = there;
                    share = at;
                    break;
                }
            }
            factor = Math.sqrt(factor);
        }
        blend(z, end, share);
        System.arraycopy(between, 0, z, 0, AMOUNTS);
        return best;
    }

    private double exchanges(CompositionRanges ranges, double[] z, int sign, double start) {
        double value = start;
        for (int i = 0; i < AMOUNTS; i++) {
            for (int j = 0; j < AMOUNTS; j++) {
                for (int signI = 1; signI >= -1; signI -= 2) {
                    double rate = ranges.rate(gain, i, j, signI);
                    double promise = rate > 0 ? rate * ranges.exchange(z, i, j, signI, end) : 0;
                    if (promise > PROMISE * Math.abs(value)) {
                        double raised = towardsEnd(z, sign, value, promise);
                        value = raised > value + KEPT_BY_ONE * promise ? raised : towardsBend(z, sign, raised);
                    }
                }
            }
        }
        return value;
    }

    private void blend(double[] z, double[] other, double share) {
        for (int i = 0; i < AMOUNTS; i++) {
            between[i] = z[i] + share * (other[i] - z[i]);
        }
    }

    /** To both ends, then by halves of the range around the best. */
    private double stepOfPH(double[] z, int sign, double start) {
        double value = start;
        double best = z[AMOUNTS];
        double around = (leastPH + mostPH) / 2;
        for (double span = (mostPH - leastPH) / 2; span > FINEST_PH / 2; span /= 2) {
            for (int side = -1; side <= 1; side += 2) {
                double there = around + side * span;
                if (there >= leastPH && there <= mostPH && there != best) {
                    double found = sign * conductivity.of(z, there);
                    if (found > value) {
                        value = found;
                        best = there;
                    }
                }
            }
            around = best;
        }
        z[AMOUNTS] = best;
        return value;
    }

    /** Derivatives, for each equivalent that comes in as a salt with one ion of the other sign. */
    private void writeGain(double[] z, int sign, double value) {
        double total = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            total += z[i] / 2;
        }
        double step = Math.max(LEAST_DIFFERENCE, DIFFERENCE * total);
        int cation = largest(z, true);
        int anion = largest(z, false);
        for (int i = 0; i < AMOUNTS; i++) {
            boolean isCation = CompositionRanges.isCation(i);
            if (i != anion) {
                System.arraycopy(z, 0, probe, 0, AMOUNTS);
                probe[i] += step;
                probe[isCation ? anion : cation] += step;
                gain[i] = (sign * conductivity.of(probe, z[AMOUNTS]) - value) / step;
            }
        }
        for (int i = 0; i < AMOUNTS; i++) {
            if (i != anion && !CompositionRanges.isCation(i)) {
                gain[i] -= gain[cation];
            }
        }
        gain[anion] = 0;
    }

    private static int largest(double[] z, boolean cation) {
        int found = -1;
        for (int i = 0; i < AMOUNTS; i++) {
            if (CompositionRanges.isCation(i) == cation && (found < 0 || z[i] > z[found])) {
                found = i;
            }
        }
        return found;
    }
}
