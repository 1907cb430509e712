package evenwater.chemistry.exchange;

import java.util.Map;
import java.util.NavigableMap;

/** Reading between the rows of a table. */
final class Interpolation {

    private Interpolation() {}

    /** Linear between the two nearest points; the caller has refused what is outside. */
    static double linear(NavigableMap<Double, Double> points, double x) {
        Map.Entry<Double, Double> low = points.floorEntry(x);
        Map.Entry<Double, Double> high = points.ceilingEntry(x);
        if (low == null || high == null) {
            throw new IllegalArgumentException(x + " is outside of the table " + points);
        }
        double width = high.getKey() - low.getKey();
        return width == 0
                ? low.getValue()
                : low.getValue() + (x - low.getKey()) / width * (high.getValue() - low.getValue());
    }
}
