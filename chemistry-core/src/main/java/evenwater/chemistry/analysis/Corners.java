package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** The waters that a report may mean, over the ends of what it leaves open. Immutable and thread-safe. */
final class Corners {

    private static final int ALL_COMBINATIONS = 10;

    private final double[] bestGuess;
    private final Function<double[], Water> waterAt;

    /**
     * Creates the corners.
     *
     * @param bestGuess where each open point stands by best guess, from 0 to 1
     * @param waterAt the water for given positions of the points
     */
    Corners(double[] bestGuess, Function<double[], Water> waterAt) {
        this.bestGuess = bestGuess.clone();
        this.waterAt = waterAt;
    }

    Water nominal() {
        return waterAt.apply(bestGuess.clone());
    }

    /** All combinations of ends for up to ten points; beyond that all low, all high, and each alone at its other end. */
    List<Water> all() {
        int n = bestGuess.length;
        List<double[]> corners = new ArrayList<>();
        if (n <= ALL_COMBINATIONS) {
            for (int bits = 0; bits < 1 << n; bits++) {
                double[] corner = new double[n];
                for (int i = 0; i < n; i++) {
                    corner[i] = bits >> i & 1;
                }
                corners.add(corner);
            }
        } else {
            for (int end = 0; end <= 1; end++) {
                double[] same = new double[n];
                Arrays.fill(same, end);
                corners.add(same);
                for (int i = 0; i < n; i++) {
                    corners.add(moved(same, i, 1.0 - end));
                }
            }
        }
        return corners.stream().map(waterAt).distinct().toList();
    }

    /** Where a result is least and largest, if each point moves it one way; nothing if {@link #all} has every combination. */
    <Q extends WaterQuantity<Q>> List<Water> towardsEnds(Function<Water, Q> result) {
        int n = bestGuess.length;
        if (n <= ALL_COMBINATIONS) {
            return List.of();
        }
        double[] least = new double[n];
        double[] largest = new double[n];
        for (int i = 0; i < n; i++) {
            Q low = result.apply(waterAt.apply(moved(bestGuess, i, 0)));
            Q high = result.apply(waterAt.apply(moved(bestGuess, i, 1)));
            least[i] = low.compareTo(high) <= 0 ? 0 : 1;
            largest[i] = 1 - least[i];
        }
        return List.of(waterAt.apply(least), waterAt.apply(largest));
    }

    private static double[] moved(double[] points, int i, double to) {
        double[] moved = points.clone();
        moved[i] = to;
        return moved;
    }
}
