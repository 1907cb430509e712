package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.TankRhythm.CHANGE;
import static evenwater.chemistry.kernel.TankRhythm.DAILY;
import static evenwater.chemistry.kernel.TankRhythm.INFLOWS;
import static evenwater.chemistry.kernel.TankRhythm.LEVEL;
import static evenwater.chemistry.kernel.TankRhythm.START;

/**
 * When something in a tank is used up: the first day on which its content would be below nothing.
 *
 * <p>Between two changes the content moves along a line, and from change to change it goes one way only, so the first interval that ends below
 * nothing is found by halving, and the day in it on the line. Stateless.
 */
public final class TankExhaustion {

    /** Days after which nobody asks any more, some 2700 years; also what "never" means here. */
    private static final double HORIZON = 1e6;

    /** What lacks by less than this share of all that came in is rounding. */
    private static final double ROUNDING = 5e-13;

    private TankExhaustion() {}

    /**
     * Returns the first day on which more is gone than came.
     *
     * @param rhythm of the tank
     * @param gains what each inflow brings, by the indices of {@link TankRhythm}; any unit per volume, the daily one per day; 0 or more
     * @param losses what each takes away, same units; 0 or more
     * @return days since the start; 0 or more; infinity for never within 10⁶ days
     */
    public static double day(TankRhythm rhythm, double[] gains, double[] losses) {
        double[] weights = new double[INFLOWS];
        double interval = rhythm.intervalInDays();
        if (Double.isInfinite(interval)) {
            return withoutChanges(rhythm, gains, losses, weights);
        }
        if (lacksWithin(rhythm, gains, losses, 0, weights)) {
            return crossing(rhythm, gains, losses, 0, weights);
        }
        double last = Math.ceil(HORIZON / interval);
        boolean falls = content(rhythm, gains, losses, 1, 0, weights) < content(rhythm, gains, losses, 0, 0, weights);
        if (!falls || !lacksWithin(rhythm, gains, losses, last, weights)) {
            return Double.POSITIVE_INFINITY;
        }
        double enough = 0;
        while (last - enough > 1) {
            double middle = Math.floor((enough + last) / 2);
            if (lacksWithin(rhythm, gains, losses, middle, weights)) {
                last = middle;
            } else {
                enough = middle;
            }
        }
        return crossing(rhythm, gains, losses, last, weights);
    }

    /** On a line, or on the exponential of a drip: {@code t = ln(1 + C₀ p / −B) / p} for a drip p and a net inflow B below 0. */
    private static double withoutChanges(TankRhythm rhythm, double[] gains, double[] losses, double[] weights) {
        double start = gains[START] - losses[START];
        if (lacks(start, gains[START])) {
            return 0;
        }
        rhythm.weights(0, 1, weights);
        double scale = weights[DAILY];
        double gained = (weights[CHANGE] * gains[CHANGE] + weights[LEVEL] * gains[LEVEL]) / scale + gains[DAILY];
        double lost = (weights[CHANGE] * losses[CHANGE] + weights[LEVEL] * losses[LEVEL]) / scale + losses[DAILY];
        double inflow = gained - lost;
        if (!lacks(inflow, gained)) {
            return Double.POSITIVE_INFINITY;
        }
        double drip = weights[CHANGE] / scale;
        double day = drip > 0 ? Math.log1p(start * drip / -inflow) / drip : start / -inflow;
        return day <= HORIZON ? Math.max(0, day) : Double.POSITIVE_INFINITY;
    }

    private static boolean lacksWithin(
            TankRhythm rhythm, double[] gains, double[] losses, double changes, double[] weights) {
        return lacks(rhythm, gains, losses, changes, 0, weights)
                || lacks(rhythm, gains, losses, changes, rhythm.intervalInDays(), weights);
    }

    private static boolean lacks(
            TankRhythm rhythm, double[] gains, double[] losses, double changes, double days, double[] weights) {
        double content = content(rhythm, gains, losses, changes, days, weights);
        return lacks(content, sum(weights, gains));
    }

    private static boolean lacks(double content, double gained) {
        return content < -ROUNDING * gained;
    }

    private static double content(
            TankRhythm rhythm, double[] gains, double[] losses, double changes, double days, double[] weights) {
        rhythm.weights(changes, days, weights);
        return sum(weights, gains) - sum(weights, losses);
    }

    private static double sum(double[] weights, double[] inflows) {
        double sum = 0;
        for (int i = 0; i < INFLOWS; i++) {
            sum += weights[i] * inflows[i];
        }
        return sum;
    }

    /** The day in the interval after so many changes, on the line from its start to its end. */
    private static double crossing(
            TankRhythm rhythm, double[] gains, double[] losses, double changes, double[] weights) {
        double interval = rhythm.intervalInDays();
        double first = content(rhythm, gains, losses, changes, 0, weights);
        double last = content(rhythm, gains, losses, changes, interval, weights);
        double within = first <= 0 || last >= first ? 0 : interval * Math.min(1, first / (first - last));
        return changes * interval + within;
    }
}
