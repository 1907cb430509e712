package evenwater.chemistry.kernel;

/**
 * How the water of a tank is replaced, and how much of each inflow is in it at any time; plain doubles.
 *
 * <p>Everything that is conserved moves linearly, so the content of a tank of volume 1 is a sum of five inflows, each with a weight that depends on
 * the rhythm alone: {@code w₀·start + w₁·change water + w₂·level water + w₃·daily rate + w₄·dose at a change}. With ε for the share of the volume that
 * evaporates in a day, d for the days between two changes, f for the fraction of the <em>full</em> volume that one changes, n for the changes behind and
 * s for the days since the last:
 *
 * <ul>
 *   <li><b>topped off</b>, daily or all the time: {@code C' = (1 − f)(C + d (ε Cₗ + r)) + f Cw + D}; pure water leaves, level water of
 *       concentration Cₗ makes up for it.
 *   <li><b>falling</b>: nothing makes up for it until the change, so f is drawn from a volume of {@code 1 − L, L = ε d}, and {@code L + f} is
 *       filled in: {@code C' = k (C + d r) + f Cw + L Cₗ + D} with {@code k = (1 − L − f)/(1 − L)}.
 *   <li><b>dripping</b>: fresh water comes in and tank water leaves without pause, a share p of the volume in a day, topped off:
 *       {@code dC/dt = p (Cw − C) + ε Cₗ + r}, so that {@code C = C* + exp(−p t)(C₀ − C*)}.
 * </ul>
 *
 * <p>The doses of an interval come evenly over it; the first change is due after d days. Immutable and thread-safe.
 */
public final class TankRhythm {

    /** Index of the weight of the water at the start. */
    public static final int START = 0;

    /** Index of the weight of the water of the changes. */
    public static final int CHANGE = 1;

    /** Index of the weight of the water that makes up for evaporation. */
    public static final int LEVEL = 2;

    /** Index of the weight of what comes in a day. */
    public static final int DAILY = 3;

    /** Index of the weight of what is dosed at each change. */
    public static final int DOSE = 4;

    /** Number of weights. */
    public static final int INFLOWS = 5;

    /** Times that differ by less than this share of an interval are one, so that 7 times 1/7 of a week is a week. */
    private static final double SAME_MOMENT = 1e-9;

    private final double fraction;
    private final double interval;
    private final double evaporation;
    private final boolean falls;
    /** Share of the volume that is exchanged without pause in a day, or 0. */
    private final double drip;

    private TankRhythm(double fraction, double interval, double evaporation, boolean falls, double drip) {
        this.fraction = fraction;
        this.interval = interval;
        this.evaporation = evaporation;
        this.falls = falls;
        this.drip = drip;
    }

    /**
     * Returns a rhythm of changes with the level kept.
     *
     * @param fraction f of the volume that one change replaces; no unit, 0 to 1
     * @param intervalInDays d between two changes; above 0; infinity for none
     * @param evaporatedShare ε of the volume that evaporates in a day and is topped off; 1/day, 0 or more
     * @return the rhythm
     */
    public static TankRhythm toppedOff(double fraction, double intervalInDays, double evaporatedShare) {
        return new TankRhythm(fraction, intervalInDays, evaporatedShare, false, 0);
    }

    /**
     * Returns a rhythm of changes between which the level falls.
     *
     * @param fraction f of the full volume that one change takes out; no unit, 0 to 1 − ε d
     * @param intervalInDays d between two changes; above 0; infinity for none
     * @param evaporatedShare ε of the full volume that evaporates in a day; 1/day, 0 or more and below 1/d
     * @return the rhythm
     */
    public static TankRhythm falling(double fraction, double intervalInDays, double evaporatedShare) {
        return new TankRhythm(fraction, intervalInDays, evaporatedShare, evaporatedShare > 0, 0);
    }

    /**
     * Returns an exchange without pause.
     *
     * @param exchangedShare p of the volume in a day; 1/day, above 0
     * @param evaporatedShare ε of the volume that evaporates in a day and is topped off; 1/day, 0 or more
     * @return the rhythm
     */
    public static TankRhythm dripping(double exchangedShare, double evaporatedShare) {
        return new TankRhythm(0, Double.POSITIVE_INFINITY, evaporatedShare, false, exchangedShare);
    }

    /**
     * Returns the share of what the tank holds that one change takes away.
     *
     * @return q; no unit, 0 to 1: f where the level is kept, {@code f / (1 − ε d)} where it falls
     */
    public double takenAway() {
        return falls && fraction > 0 ? fraction / (1 - evaporation * interval) : fraction;
    }

    /**
     * Tells whether anything leaves the tank, so that it can come to rest.
     *
     * @return true if there are changes or a drip
     */
    public boolean replaces() {
        return fraction > 0 || drip > 0;
    }

    /**
     * Returns the number of changes until a time, one at that very moment included.
     *
     * @param day time since the start in days; 0 or more
     * @return whole number
     */
    public double changesBy(double day) {
        return Double.isInfinite(interval) ? 0 : Math.floor(day / interval + SAME_MOMENT);
    }

    /**
     * Returns the days since the last change.
     *
     * @param day time since the start in days; 0 or more
     * @return days, 0 or more
     */
    public double daysSinceChange(double day) {
        double changes = changesBy(day);
        return changes == 0 ? day : Math.max(0, day - changes * interval);
    }

    /**
     * Returns the days between two changes.
     *
     * @return days; infinity if there are none
     */
    public double intervalInDays() {
        return interval;
    }

    /**
     * Returns the volume over the full one.
     *
     * @param daysSinceChange s; 0 to d
     * @return no unit; 1 where the level is kept, {@code 1 − ε s} where it falls
     */
    public double volumeShare(double daysSinceChange) {
        return falls ? 1 - evaporation * daysSinceChange : 1;
    }

    /**
     * Writes the weights of the inflows in the content of the tank, which over {@link #volumeShare} is the concentration.
     *
     * @param changes n behind; 0 or more; infinity for the steady state, if something leaves the tank
     * @param daysSinceChange s; 0 to d; of a drip the days since the start, and infinity for its steady state
     * @param weights of five inflows, written; w₃ in days
     */
    public void weights(double changes, double daysSinceChange, double[] weights) {
        if (drip > 0) {
            double through = -Math.expm1(-drip * daysSinceChange);
            weights[START] = 1 - through;
            weights[CHANGE] = through;
            weights[DAILY] = through / drip;
            weights[LEVEL] = evaporation * weights[DAILY];
            weights[DOSE] = 0;
            return;
        }
        double q = takenAway();
        double kept = TankKernel.kept(q, changes);
        double days = (kept == 0 ? 0 : (1 - q) * interval * kept) + daysSinceChange;
        weights[START] = TankKernel.left(q, changes);
        weights[CHANGE] = fraction * kept;
        weights[LEVEL] = !falls ? evaporation * days : kept == 0 ? 0 : evaporation * interval * kept;
        weights[DAILY] = days;
        weights[DOSE] = kept;
    }
}
