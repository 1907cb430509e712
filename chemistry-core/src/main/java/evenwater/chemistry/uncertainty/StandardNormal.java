package evenwater.chemistry.uncertainty;

import java.util.SplittableRandom;

/** The normal distribution with mean 0 and standard deviation 1. */
final class StandardNormal {

    private static final double ROOT_OF_TWO_PI = 2.5066282746310002;

    /** Beyond this the tail is lost in the rounding of 1. */
    private static final double FAR = 8.5;

    private StandardNormal() {}

    static double density(double x) {
        return Math.exp(-x * x / 2) / ROOT_OF_TWO_PI;
    }

    /**
     * Returns the probability of less than x.
     *
     * <p>{@code Φ(x) = 1/2 + φ(x) (x + x³/3 + x⁵/(3·5) + x⁷/(3·5·7) + …)}, to 1e-15; no digits of a tail beyond that.
     *
     * @see "G. Marsaglia, Evaluating the normal distribution, J. Stat. Software 11 (2004), no. 4"
     */
    static double cumulative(double x) {
        if (x < 0) {
            return 1 - cumulative(-x);
        }
        if (x > FAR) {
            return 1;
        }
        double sum = x;
        double term = x;
        for (int odd = 3; term > 1e-17 * sum; odd += 2) {
            term *= x * x / odd;
            sum += term;
        }
        return 0.5 + sum * density(x);
    }

    /** Returns the coverage factor k: the share of a normal between -k and k is the probability. */
    static double coverageFactor(double probability) {
        double low = 0;
        double high = FAR;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (2 * cumulative(middle) - 1 < probability) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** Draws a number from 0 to less than 1 with 53 bits, the same on every Java. */
    static double uniform(SplittableRandom random) {
        return (random.nextLong() >>> 11) * 0x1p-53;
    }

    /**
     * Draws by the transform of Box and Muller, JCGM 101:2008 C.4, of which it drops the second number. StrictMath, so that every machine
     * draws the same.
     */
    static double draw(SplittableRandom random) {
        double radius = Math.sqrt(-2 * StrictMath.log(1 - uniform(random)));
        return radius * StrictMath.cos(2 * Math.PI * uniform(random));
    }
}
