package evenwater.chemistry.uncertainty;

import java.util.Arrays;

/**
 * The numbers of a result in ascending order, with their moments and intervals by JCGM 101:2008 7.5 to 7.7.
 */
final class Sample {

    private final double[] sorted;
    private final double mean;
    private final double deviation;
    private final double standardErrorOfDeviation;

    /** Sums run in the order of the draws, so that they do not depend on who ran them. */
    Sample(double[] numbers) {
        int count = numbers.length;
        this.sorted = numbers.clone();
        Arrays.sort(sorted);
        double origin =
                sorted[count / 2]; // a number of their own size: differences keep their digits and do not overflow
        double sum = 0;
        for (double number : numbers) {
            sum += (number - origin) / count;
        }
        this.mean = sorted[0] == sorted[count - 1] ? origin : origin + sum;
        double largest = Math.max(sorted[count - 1] - mean, mean - sorted[0]);
        double second = 0;
        double fourth = 0;
        for (double number : numbers) {
            double square = largest == 0 ? 0 : (number - mean) / largest * ((number - mean) / largest);
            second += square;
            fourth += square * square;
        }
        double variance = second / (count - 1);
        this.deviation = largest * Math.sqrt(variance);
        // variance of a variance: (μ₄ - σ⁴ (M - 3)/(M - 1))/M; of its root, over 4 σ²
        double ofVariance = (fourth / count - variance * variance * (count - 3) / (count - 1)) / count;
        this.standardErrorOfDeviation =
                variance == 0 ? 0 : largest * Math.sqrt(Math.max(0, ofVariance) / (4 * variance));
    }

    int count() {
        return sorted.length;
    }

    double mean() {
        return mean;
    }

    double deviation() {
        return deviation;
    }

    double standardErrorOfDeviation() {
        return standardErrorOfDeviation;
    }

    /** How many numbers an interval spans: pM to the next whole number, JCGM 101 7.7.2. */
    private int span(double coverage) {
        return (int) Math.floor(coverage * count() + 0.5);
    }

    private int firstOfSymmetric(double coverage) {
        return (count() - span(coverage) + 1) / 2 - 1; // (M - q)/2, or the whole part of (M - q + 1)/2; from 0
    }

    double[] symmetric(double coverage) {
        int first = firstOfSymmetric(coverage);
        return new double[] {sorted[first], sorted[first + span(coverage)]};
    }

    double[] shortest(double coverage) {
        int span = span(coverage);
        int best = 0;
        for (int i = 1; i + span < count(); i++) {
            if (sorted[i + span] - sorted[i] < sorted[best + span] - sorted[best]) {
                best = i;
            }
        }
        return new double[] {sorted[best], sorted[best + span]};
    }

    /**
     * The larger standard error of both ends of the symmetric interval: how far the ends are from those one standard deviation of their rank,
     * {@code √(M q (1 - q))} places, on either side.
     */
    double standardErrorOfEnds(double coverage) {
        double tail = (1 - coverage) / 2;
        int places = (int) Math.ceil(Math.sqrt(count() * tail * (1 - tail)));
        int first = firstOfSymmetric(coverage);
        return Math.max(spread(first, places), spread(first + span(coverage), places));
    }

    private double spread(int place, int places) {
        int from = Math.max(0, place - places);
        int to = Math.min(count() - 1, place + places);
        return (sorted[to] - sorted[from]) / (to - from) * places;
    }

    /** The share of numbers above a limit. */
    double shareAbove(double limit) {
        int low = 0;
        int high = count();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (sorted[middle] <= limit) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return (double) (count() - low) / count();
    }
}
