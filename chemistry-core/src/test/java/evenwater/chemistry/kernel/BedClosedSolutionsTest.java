package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.analysis.integration.IterativeLegendreGaussIntegrator;
import org.hipparchus.special.Beta;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One exchanging pair of single-charged ions, for which the answer can be written down. */
class BedClosedSolutionsTest {

    private static final double STRENGTH = 0.01;
    private static final double CAPACITY = 2.0;
    private static final double VOID = 0.38;
    private static final int[] CHARGE = {1, 1};
    private static final double[] FEED = {STRENGTH, 0};
    private static final double RETAINED = CAPACITY / STRENGTH;

    private static BedState bed(double constant, int cells) {
        BedState bed = new BedState(new double[] {constant, 1}, CHARGE, cells, VOID);
        for (int j = 0; j < cells; j++) {
            bed.resin(j, 1, CAPACITY);
            bed.water(j, 1, STRENGTH);
        }
        return bed;
    }

    private static double[] effluents(BedState bed, double step, double hours, int steps) {
        double[] effluent = new double[2];
        double[] curve = new double[steps];
        for (int k = 0; k < steps; k++) {
            assertEquals(BedKernel.FLOWED, BedKernel.flow(bed, FEED, false, step, hours, effluent));
            curve[k] = effluent[0] / STRENGTH;
        }
        return curve;
    }

    /**
     * Without preference and in equilibrium every cell forgets a share p of what it was at each step, so what has left after k steps of N cells is the
     * chance of N successes within N + k − 1 trials: the regularised incomplete beta function I(p; N, k).
     */
    @ParameterizedTest(name = "{0} cells, {1} bed volumes a step")
    @CsvSource({"1, 3", "10, 0.7", "40, 2", "100, 1.5"})
    void alikeIonsInEquilibriumFollowTheIncompleteBetaFunction(int cells, double step) {
        double p = cells * step / (VOID + RETAINED + cells * step);
        int steps = (int) (2 * (VOID + RETAINED) / step);
        double[] curve = effluents(bed(1, cells), step, 1, steps);
        for (int k = 1; k <= steps; k++) {
            assertEquals(Beta.regularizedBeta(p, cells, k), curve[k - 1], 1e-11, k + " steps");
        }
    }

    /**
     * Without preference, with the two resistances in series: Anzelius's solution of 1926 for heat in a packed bed,
     * {@code c/c0 = 1 − ∫₀ˣ exp(−τ − t) I₀(2√(τt)) dt}, as the sum of products of two Poisson distributions. Extrapolated over the cells, since the
     * bed's own spreading shrinks with them.
     */
    @ParameterizedTest(name = "film {0} 1/h, solid {1} 1/h")
    @CsvSource({"100, Infinity", "Infinity, 0.5", "200, 1"})
    void alikeIonsWithResistanceFollowAnzelius(double film, double solid) {
        double flow = 10;
        double rate = 1 / (1 / film + 1 / (solid * RETAINED)); // of the difference in the water
        double throughput = 0.9 * RETAINED;
        double x = rate / flow;
        double tau = rate * (throughput - VOID) / flow / RETAINED;
        double exact = anzelius(x, tau);
        double[] found = new double[3];
        for (int level = 0; level < 3; level++) {
            int cells = 100 << level;
            int steps = 400 << level;
            BedState bed = bed(1, cells);
            bed.rates(film, solid);
            found[level] = effluents(bed, throughput / steps, throughput / steps / flow, steps)[steps - 1];
        }
        double once = 2 * found[1] - found[0];
        double again = 2 * found[2] - found[1];
        assertEquals(exact, (4 * again - once) / 3, 1e-5);
    }

    /** P(Poisson(τ) ≥ Poisson(x)): what has left where x units of transfer stand against τ units of time. */
    private static double anzelius(double x, double tau) {
        double sum = 0;
        double stay = Math.exp(-x);
        double come = Math.exp(-tau);
        double atMostStay = stay;
        for (int k = 0; k < 400; k++) {
            sum += come * atMostStay;
            come *= tau / (k + 1);
            stay *= x / (k + 1);
            atMostStay += stay;
        }
        return sum;
    }

    /**
     * A favoured ion makes a front that keeps its shape; across it the shares in water and resin are the same X, and the rate law can be integrated. Where one
     * resistance is all: solid {@code t = (ln X − α ln(1 − X)) / (solid (α − 1))}, film {@code t = (α ln X − ln(1 − X)) Q / (film C (α − 1))}.
     */
    @ParameterizedTest(name = "separation factor {0}, film {1} 1/h, solid {2} 1/h")
    @CsvSource({"3, Infinity, 0.5", "3, 100, Infinity", "8, 100, 0.5", "3, 200, 1"})
    void theFrontOfAFavouredIonKeepsItsShape(double alpha, double film, double solid) {
        double flow = 4;
        double exact = new IterativeLegendreGaussIntegrator(10, 1e-9, 1e-12)
                .integrate(100_000, x -> 1 / rate(alpha, film, solid, x), 0.1, 0.9);
        double[] found = new double[3];
        for (int level = 0; level < 3; level++) {
            int cells = 200 << level;
            int steps = 600 << level;
            BedState bed = bed(alpha, cells);
            bed.rates(film, solid);
            double step = 1.5 * RETAINED / steps;
            double[] curve = effluents(bed, step, step / flow, steps);
            found[level] = (crossing(curve, 0.9) - crossing(curve, 0.1)) * step / flow;
        }
        double once = 2 * found[1] - found[0];
        double again = 2 * found[2] - found[1];
        assertEquals(exact, (4 * again - once) / 3, 2e-3 * exact);
    }

    /** dX/dt with the surface of the bead where film and solid pass the same: found by halving. */
    private static double rate(double alpha, double film, double solid, double x) {
        double low = 0;
        double high = x;
        for (int k = 0; k < 100; k++) {
            double surface = (low + high) / 2;
            double inSolid = solid * (alpha * surface / (1 + (alpha - 1) * surface) - x);
            if (solid == Double.POSITIVE_INFINITY
                    ? alpha * surface / (1 + (alpha - 1) * surface) > x
                    : inSolid > film * (x - surface) / RETAINED) {
                high = surface;
            } else {
                low = surface;
            }
        }
        return film == Double.POSITIVE_INFINITY
                ? solid * (alpha * x / (1 + (alpha - 1) * x) - x)
                : film * (x - low) / RETAINED;
    }

    @Test
    void theIntegralOfTheRateIsTheClosedForm() {
        assertEquals(1 / rate(3, Double.POSITIVE_INFINITY, 0.5, 0.4), (1 / 0.4 + 3 / 0.6) / (0.5 * 2), 1e-12);
        assertEquals(1 / rate(3, 100, Double.POSITIVE_INFINITY, 0.4), (3 / 0.4 + 1 / 0.6) * RETAINED / (100 * 2), 1e-9);
    }

    private static double crossing(double[] curve, double level) {
        int k = 0;
        while (curve[k] < level) {
            k++;
        }
        return k - (curve[k] - level) / (curve[k] - curve[k - 1]);
    }

    @Test
    void withoutExchangeTheWaterPassesBy() {
        BedState bed = bed(3, 20);
        bed.rates(0, 0);
        double[] curve = effluents(bed, 0.1, 1, 200);
        assertEquals(1, curve[199], 1e-12);
        assertEquals(CAPACITY, bed.resin(0, 1));
    }
}
