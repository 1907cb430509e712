package evenwater.chemistry.analysis;

import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a report leaves open: each point moves from 0 to 1, and amounts are functions of where the points stand. A point for what nobody
 * measured has no other end; it stands at 0 and only shows which way a result moves.
 */
final class OpenPoints {

    /** An amount that depends on the open points. */
    @FunctionalInterface
    interface Amount {
        double at(double[] points);
    }

    /** One open point. */
    record Point(int index) {
        double at(double[] points) {
            return points[index];
        }
    }

    private final List<Double> nominal = new ArrayList<>();
    private final List<String> intervals = new ArrayList<>();
    private final Set<Integer> endless = new TreeSet<>();

    /** Opens a point with a best guess from 0 to 1. */
    Point point(double bestGuess) {
        nominal.add(bestGuess);
        return new Point(nominal.size() - 1);
    }

    /** Opens a point for what nobody measured: 0, or anything more. */
    Point endlessPoint() {
        Point point = point(0);
        endless.add(point.index());
        return point;
    }

    /** The amount of a reading: a number, or anything in an interval such as 0 to a detection limit, by best guess its middle. */
    Amount amount(Entry entry) {
        if (!entry.isInterval()) {
            return points -> entry.low();
        }
        Point point = point(0.5);
        intervals.add(entry.key().name() + " " + entry.stated());
        return points -> entry.low() + point.at(points) * (entry.high() - entry.low());
    }

    void describe(List<String> assumptions) {
        if (!intervals.isEmpty()) {
            assumptions.add(intervals.stream()
                    .collect(Collectors.joining(
                            ", ",
                            "given as an interval: ",
                            "; its middle as best guess, both its ends in the bounds")));
        }
    }

    Corners corners(Function<double[], Water> waterAt) {
        double[] bestGuess = nominal();
        return new Corners(bestGuess, Set.copyOf(endless), waterAt);
    }

    double[] nominal() {
        return nominal.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
