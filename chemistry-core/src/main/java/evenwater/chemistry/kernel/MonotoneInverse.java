package evenwater.chemistry.kernel;

import java.util.function.DoubleUnaryOperator;

/** The argument at which a rising function has a value. */
public final class MonotoneInverse {

    /** Brackets narrower than this part of the whole interval are not narrowed further. */
    private static final double FINEST = 0x1p-80;

    /** Curves that it has not closed in on by then mislead it. */
    private static final int STEPS_OF_REGULA_FALSI = 30;

    private MonotoneInverse() {}

    /**
     * Returns the argument at which a continuous, rising function has a value.
     *
     * <p>Regula falsi with the Illinois weights inside a bracket that never lets go of the answer. After 30 steps the bracket is halved,
     * so the number of calls is bounded: at most 115, and about ten for the curves of salts. The answer is as good as the function
     * resolves it: within four units of its last place, or 2e-24 of the interval close to 0.
     *
     * @param rising the function; continuous, rising from {@code low} to {@code high}
     * @param low least argument, any unit; finite
     * @param high greatest argument, same unit; finite, above {@code low}
     * @param value wanted value, in the unit of the function; from its value at {@code low} to that at {@code high}
     * @return the argument; {@code low} or {@code high} itself where the value is that of the end or beyond it
     * @see "M. Dowell and P. Jarratt, A modified regula falsi method for computing the root of an equation, BIT 11 (1971) 168 (from
     *     memory)"
     */
    public static double of(DoubleUnaryOperator rising, double low, double high, double value) {
        double a = low;
        double b = high;
        double belowA = value - rising.applyAsDouble(a);
        double aboveB = rising.applyAsDouble(b) - value;
        if (belowA <= 0) {
            return a;
        }
        if (aboveB <= 0) {
            return b;
        }
        double finest = (high - low) * FINEST;
        int lastMoved = 0;
        for (int step = 1; b - a > 2 * nearness(a, b, finest); step++) {
            double x = a + (b - a) * (step > STEPS_OF_REGULA_FALSI ? 0.5 : belowA / (belowA + aboveB));
            double above = rising.applyAsDouble(x) - value;
            if (above == 0) {
                return x;
            }
            if (above < 0) {
                a = x;
                belowA = -above;
                aboveB *= lastMoved < 0 ? 0.5 : 1;
                lastMoved = -1;
            } else {
                b = x;
                aboveB = above;
                belowA *= lastMoved > 0 ? 0.5 : 1;
                lastMoved = 1;
            }
        }
        return a + (b - a) / 2;
    }

    /** Two units in the last place of the larger end, or the finest width if that is more. */
    private static double nearness(double a, double b, double finest) {
        return Math.max(2 * Math.ulp(Math.max(Math.abs(a), Math.abs(b))), finest);
    }
}
