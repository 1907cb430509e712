package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import javax.measure.Quantity;

/** The waters that a report may mean, over the ends of what it leaves open. Immutable and thread-safe. */
final class Corners {

    private static final int ALL_COMBINATIONS = 8;

    /** What nobody measured is tried at these, in mmol/L or meq/L: from a trace to more than a tank bears. */
    private static final double[] AMOUNTS = {0.01, 1, 100};

    /** In mmol/L or meq/L; far beyond any water, to see where a result comes to an end. */
    private static final double EXTREME = 1e6;

    private final double[] bestGuess;
    /** Points with two ends. */
    private final int[] open;
    /** Points that only have a beginning. */
    private final int[] endless;

    private final Function<double[], Water> waterAt;

    /**
     * Creates the corners.
     *
     * @param bestGuess where each open point stands by best guess, from 0 to 1
     * @param endless indices of the points that have no other end
     * @param waterAt the water for given positions of the points
     */
    Corners(double[] bestGuess, Set<Integer> endless, Function<double[], Water> waterAt) {
        this.bestGuess = bestGuess.clone();
        this.open = IntStream.range(0, bestGuess.length)
                .filter(i -> !endless.contains(i))
                .toArray();
        this.endless = endless.stream().mapToInt(Integer::intValue).sorted().toArray();
        this.waterAt = waterAt;
    }

    Water nominal() {
        return waterAt.apply(bestGuess.clone());
    }

    /** All combinations of ends for up to eight points; beyond that all low, all high, and each alone at its other end. */
    List<Water> all() {
        List<double[]> corners = new ArrayList<>();
        if (open.length <= ALL_COMBINATIONS) {
            for (int bits = 0; bits < 1 << open.length; bits++) {
                double[] corner = bestGuess.clone();
                for (int i = 0; i < open.length; i++) {
                    corner[open[i]] = bits >> i & 1;
                }
                corners.add(corner);
            }
        } else {
            for (int end = 0; end <= 1; end++) {
                double[] same = moved(bestGuess, all(open), end);
                corners.add(same);
                for (int i : open) {
                    corners.add(moved(same, List.of(i), 1.0 - end));
                }
            }
        }
        return corners.stream().map(waterAt).distinct().toList();
    }

    /** Where a result is least and largest, if each point moves it one way; nothing if {@link #all} has every combination. */
    <K extends Quantity<K>, Q extends WaterQuantity<K>> List<Water> towardsEnds(Function<Water, Q> result) {
        if (open.length <= ALL_COMBINATIONS) {
            return List.of();
        }
        double[] least = bestGuess.clone();
        double[] largest = bestGuess.clone();
        for (int i : open) {
            Q low = result.apply(waterAt.apply(moved(bestGuess, List.of(i), 0)));
            Q high = result.apply(waterAt.apply(moved(bestGuess, List.of(i), 1)));
            least[i] = low.compareTo(high) <= 0 ? 0 : 1;
            largest[i] = 1 - least[i];
        }
        return List.of(waterAt.apply(least), waterAt.apply(largest));
    }

    /**
     * Pairs of waters that differ by some of what nobody measured: several amounts of each thing alone, and of all together, from the
     * best guess and from all low and all high.
     */
    List<Pair> beyond() {
        if (endless.length == 0) {
            return List.of();
        }
        List<Pair> beyond = new ArrayList<>();
        for (double[] start : starts()) {
            Water without = waterAt.apply(start.clone());
            for (double amount : AMOUNTS) {
                for (int i : endless) {
                    beyond.add(new Pair(without, waterAt.apply(moved(start, List.of(i), amount))));
                }
                beyond.add(new Pair(without, waterAt.apply(moved(start, all(endless), amount))));
            }
        }
        return beyond;
    }

    /**
     * Pairs of waters with more of what nobody measured than anything dissolves, and with much more still: of each thing alone, of two and
     * of all together. A result that is the same for both has come to an end.
     */
    List<Pair> extremes() {
        List<Pair> extremes = new ArrayList<>();
        for (double[] start : starts()) {
            for (int i : endless) {
                for (int j : endless) {
                    if (i <= j) {
                        extremes.add(extreme(start, List.of(i, j)));
                    }
                }
            }
            extremes.add(extreme(start, all(endless)));
        }
        return extremes;
    }

    private Pair extreme(double[] start, List<Integer> which) {
        return new Pair(waterAt.apply(moved(start, which, EXTREME)), waterAt.apply(moved(start, which, 100 * EXTREME)));
    }

    /** The best guess, all low and all high, with nothing of what nobody measured. */
    private List<double[]> starts() {
        List<double[]> starts = new ArrayList<>(List.of(bestGuess.clone()));
        for (int end = 0; end <= 1 && open.length > 0; end++) {
            starts.add(moved(bestGuess, all(open), end));
        }
        return starts;
    }

    private static List<Integer> all(int[] indices) {
        return IntStream.of(indices).boxed().toList();
    }

    /** A water without and with some, or some more, of what nobody measured. */
    record Pair(Water without, Water with) {}

    private static double[] moved(double[] points, List<Integer> which, double to) {
        double[] moved = points.clone();
        which.forEach(i -> moved[i] = to);
        return moved;
    }
}
