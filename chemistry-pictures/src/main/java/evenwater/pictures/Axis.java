package evenwater.pictures;

import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * A linear axis with round ticks.
 *
 * @param label quantity and unit
 * @param low its first value
 * @param high its last value; above the first
 * @param step between two ticks
 */
record Axis(String label, double low, double high, double step) {

    /** No figure of a water is as large; beyond, ticks would not fit. */
    private static final double LARGEST = 1e9;

    /** Figures as close as this share of their size are the same, and so is what is smaller than this. */
    private static final double FLAT = 1e-9;

    private static final double[] ROUND = {1, 2, 5, 10};
    private static final double ROUNDING = 1e-9;

    /** An axis from round to round value around all values. */
    static Axis around(String label, DoubleStream values, int ticks) {
        Axis exact = from(label, values, ticks);
        double step = exact.step;
        double low = Math.floor(exact.low / step + ROUNDING) * step;
        double high = Math.ceil(exact.high / step - ROUNDING) * step;
        return new Axis(label, low, high, step);
    }

    /** An axis from the least to the greatest value. */
    static Axis from(String label, DoubleStream values, int ticks) {
        double[] all = values.toArray();
        if (all.length == 0) {
            throw new IllegalArgumentException(label + ": there is no figure to draw");
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : all) {
            if (!(Math.abs(value) <= LARGEST)) {
                throw new IllegalArgumentException(
                        label + ": a figure must be from -1e9 to 1e9 to be drawn, but was " + value);
            }
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        double size = Math.max(Math.abs(low), Math.abs(high));
        if (high - low <= Math.max(FLAT, FLAT * size)) { // flat: show it in the middle of something
            double half = size <= FLAT ? 1 : size / 10;
            low = low >= 0 ? Math.max(0, low - half) : low - half;
            high += half;
        }
        return new Axis(label, low, high, step(high - low, ticks));
    }

    private static double step(double width, int ticks) {
        double least = width / ticks;
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double round : ROUND) {
            if (round * power >= least * (1 - ROUNDING)) {
                return round * power;
            }
        }
        return ROUND[0] * power * 10;
    }

    Axis withTicks(int ticks) {
        return new Axis(label, low, high, step(high - low, ticks));
    }

    double[] ticks() {
        double first = Math.ceil(low / step - ROUNDING);
        double last = Math.floor(high / step + ROUNDING);
        int count = (int) (last - first) + 1;
        double[] ticks = new double[count];
        for (int i = 0; i < count; i++) {
            ticks[i] = Math.min(high, Math.max(low, (first + i) * step));
        }
        return ticks;
    }

    String text(double tick) {
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + ROUNDING));
        String text = String.format(Locale.ROOT, "%." + decimals + "f", tick);
        return text.matches("-0\\.?0*") ? text.substring(1) : text.replace('-', '−');
    }

    /** Where a value lies between two coordinates. */
    double at(double value, double from, double to) {
        return from + (value - low) / (high - low) * (to - from);
    }
}
