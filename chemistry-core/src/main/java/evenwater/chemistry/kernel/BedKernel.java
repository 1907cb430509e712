package evenwater.chemistry.kernel;

/**
 * Water flowing through a bed of cation resin: many ions, cells, film and solid linear driving forces or local equilibrium.
 *
 * <p>In every cell {@code ε ∂c/∂T + ∂q/∂T + ∂c/∂ζ = 0}, with throughput T in bed volumes, depth ζ as a share of the bed and void fraction ε;
 * {@code ∂q/∂t = film · (c − c*) = solid · (q* − q)}, where c* and q* at the surface of the bead are in equilibrium ({@link ExchangeEquilibrium}). All
 * ions have the same two rates, so the charge of what enters the resin is the charge of what leaves, at every moment. A step is implicit (backward
 * Euler, upwind): each cell is then linear in its ions but for the one number s, which a safeguarded Newton search finds; there is no limit to a step but
 * accuracy, and the amounts of every ion are conserved to rounding.
 *
 * <p>First order in cells and in steps: cells smear a front as plates of a column do. Left out: dispersion but for that, channels, fouling, swelling, heat, different
 * mobilities of the ions, activity coefficients, and brine that the beads take up as a whole.
 *
 * @see "E. Glueckauf, Trans. Faraday Soc. 51 (1955) 1540 for the linear driving force; F. Helfferich, Ion Exchange, 1962, ch. 9 (both from memory)"
 */
public final class BedKernel {

    /** Every cell balances to 1e-12. */
    public static final int FLOWED = 0;

    /** The search in a cell did not end; the bed is as it was before that cell. */
    public static final int NOT_CONVERGED = 2;

    /** An argument was no finite number, or negative where that has no meaning; nothing was changed. */
    public static final int BAD_INPUT = 3;

    /** Below this many eq/L there is nothing to exchange, and the squares of s would overflow. */
    private static final double NOTHING = 1e-60;

    private static final int MOST_ITERATIONS = 200;
    private static final double TIGHT = 4e-15;
    private static final double TOLERANCE = 1e-12;

    private BedKernel() {}

    /**
     * Lets water flow through the bed for one step.
     *
     * @param bed its state; changed
     * @param feed concentration of each ion in eq/L; 0 or more
     * @param upward whether the water enters where service water leaves
     * @param bedVolumes water that flows, in volumes of the bed; above 0
     * @param hours time that it takes, in h; above 0
     * @param effluent receives the concentrations of what left during the step, in eq/L
     * @return {@link #FLOWED} or why not; never an exception
     */
    public static int flow(
            BedState bed, double[] feed, boolean upward, double bedVolumes, double hours, double[] effluent) {
        if (effluent.length < bed.ions || !usable(bed, feed, bedVolumes, hours)) {
            return BAD_INPUT;
        }
        double film = bed.values[BedState.FILM] * hours;
        double solid = bed.values[BedState.SOLID] * hours;
        double approach = Double.isInfinite(solid) ? 1 : solid / (1 + solid);
        double renewed = bed.cells * bedVolumes;
        double carried = bed.values[BedState.VOID] + renewed;
        double resistance = 1 / film + 1 / carried;
        double share = Double.isInfinite(resistance) ? 0 : 1 / carried / resistance;
        int last = -1;
        for (int k = 0; k < bed.cells; k++) {
            int cell = upward ? bed.cells - 1 - k : k;
            double strength = mix(bed, cell, last, feed, renewed / carried);
            last = cell;
            if (!(strength >= 0)) {
                return NOT_CONVERGED;
            }
            if (strength < NOTHING || approach == 0 || share == 0) {
                passBy(bed, cell);
            } else {
                double weight = approach * resistance;
                double s = search(bed, cell, weight, strength);
                if (!(s > 0)) {
                    return NOT_CONVERGED;
                }
                exchange(bed, cell, s, weight, approach, share);
            }
        }
        System.arraycopy(bed.water, last * bed.ions, effluent, 0, bed.ions);
        return FLOWED;
    }

    private static boolean usable(BedState bed, double[] feed, double bedVolumes, double hours) {
        boolean usable = bed.values[BedState.USABLE] == 1
                && feed.length == bed.ions
                && bedVolumes > 0
                && bedVolumes < Double.POSITIVE_INFINITY
                && hours > 0
                && hours < Double.POSITIVE_INFINITY
                && bed.values[BedState.FILM] >= 0
                && bed.values[BedState.SOLID] >= 0;
        for (double concentration : feed) {
            usable &= concentration >= 0 && concentration < Double.POSITIVE_INFINITY;
        }
        return usable;
    }

    /** What would be in the water of a cell without exchange: its own and what flows in. Returns the sum over the ions. */
    private static double mix(BedState bed, int cell, int before, double[] feed, double fresh) {
        int at = cell * bed.ions;
        double strength = 0;
        for (int i = 0; i < bed.ions; i++) {
            double entering = before < 0 ? feed[i] : bed.water[before * bed.ions + i];
            double c = bed.water[at + i] + fresh * (entering - bed.water[at + i]);
            bed.mixed[i] = c;
            strength += c;
        }
        return strength;
    }

    private static void passBy(BedState bed, int cell) {
        System.arraycopy(bed.mixed, 0, bed.water, cell * bed.ions, bed.ions);
    }

    /**
     * Finds s with {@code Σ a/(1 + β K sᶻ) = C}: what the ions leave at the surface must be as strong as the water. The sum G falls with s; Newton's method
     * works on 1/G, which is nearly straight, between bounds that every evaluation narrows.
     */
    private static double search(BedState bed, int cell, double weight, double strength) {
        int at = cell * bed.ions;
        int ions = bed.ions;
        double[] offered = bed.offered;
        for (int i = 0; i < ions; i++) {
            offered[i] = bed.mixed[i] + weight * bed.resin[at + i];
        }
        double s = bed.ratio[cell] > 0 ? bed.ratio[cell] : 1;
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double error = Double.POSITIVE_INFINITY;
        int iteration = 0;
        while (iteration < MOST_ITERATIONS) {
            double sum = 0;
            double slope = 0; // −s dG/ds
            for (int i = 0; i < ions; i++) {
                double b = weight * bed.constant[i] * s;
                int z = bed.charge[i];
                b = z == 1 ? b : b * s;
                double t = 1 / (1 + b);
                double left = offered[i] * t;
                sum += left;
                slope += z * left * b * t;
            }
            iteration++;
            error = sum - strength;
            if (Math.abs(error) <= TIGHT * strength) {
                break;
            }
            if (error > 0) {
                low = s;
            } else {
                high = s;
            }
            double next = s + s * (sum / slope) * (error / strength);
            if (!(next > low && next < high)) {
                next = between(s, low, high);
            }
            if (next == s) {
                break;
            }
            s = next;
        }
        return Math.abs(error) <= TOLERANCE * strength ? s : Double.NaN;
    }

    private static double between(double s, double low, double high) {
        if (high == Double.POSITIVE_INFINITY) {
            return s * 8;
        }
        return low == 0 ? s / 8 : Math.sqrt(low) * Math.sqrt(high);
    }

    /**
     * Both new values are weighted means of old ones and of the surface, so none can be negative. What the surface holds is scaled to the charge of the
     * beads: where a step renews the water a billion times, the last digits of the search would show in it.
     */
    private static void exchange(BedState bed, int cell, double s, double weight, double approach, double share) {
        int at = cell * bed.ions;
        double held = 0;
        double charge = 0;
        for (int i = 0; i < bed.ions; i++) {
            double distribution = ExchangeEquilibrium.distribution(bed.constant[i], bed.charge[i], s);
            double surface = bed.offered[i] / (1 + weight * distribution);
            bed.water[at + i] = bed.mixed[i] + share * (surface - bed.mixed[i]);
            bed.offered[i] = distribution * surface;
            held += bed.resin[at + i];
            charge += bed.offered[i];
        }
        for (int i = 0; i < bed.ions; i++) {
            bed.resin[at + i] += approach * (bed.offered[i] * (held / charge) - bed.resin[at + i]);
        }
        bed.ratio[cell] = s;
    }
}
