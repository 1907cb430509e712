package evenwater.chemistry.testing;

import java.util.Arrays;
import java.util.List;

/** How far results are from measurements, in the numbers that people compare. */
public final class Deviations {

    private final double[] sorted;

    private Deviations(double[] sorted) {
        this.sorted = sorted;
    }

    /** Relative deviations, in any order; one or more. */
    public static Deviations of(List<Double> relative) {
        if (relative.isEmpty()) {
            throw new IllegalArgumentException("no deviations");
        }
        return new Deviations(
                relative.stream().mapToDouble(Double::doubleValue).sorted().toArray());
    }

    public int count() {
        return sorted.length;
    }

    public double median() {
        int n = sorted.length;
        return (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    /** Root mean square. */
    public double rms() {
        double sum = 0;
        for (double deviation : sorted) {
            sum += deviation * deviation;
        }
        return Math.sqrt(sum / sorted.length);
    }

    /** The least size that 95 of 100 do not exceed. */
    public double percentile95() {
        double[] sizes = sizes();
        return sizes[(int) Math.ceil(0.95 * sizes.length) - 1];
    }

    /** The largest size. */
    public double worst() {
        return sizes()[sorted.length - 1];
    }

    private double[] sizes() {
        double[] sizes = sorted.clone();
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.abs(sizes[i]);
        }
        Arrays.sort(sizes);
        return sizes;
    }
}
