package evenwater.chemistry.uncertainty;

import java.util.SplittableRandom;

/**
 * A normal distribution, possibly without what lies outside of two ends.
 *
 * <p>Its moments are those of the truncated normal: with {@code α = (least - value)/deviation}, {@code β} likewise, {@code Z = Φ(β) - Φ(α)}
 * the mean moves by {@code d = (φ(α) - φ(β))/Z} deviations, and the variance is {@code 1 + (αφ(α) - βφ(β))/Z - d²} of what it was.
 *
 * @param value the most likely number, as stated
 * @param deviation the standard deviation of the whole normal; 0 or more
 * @param least the lowest possible number, or minus infinity
 * @param most the highest possible number, or infinity
 */
record TruncatedNormal(double value, double deviation, double least, double most) implements Knowledge {

    /** Of what is left the draws are found by trying; and a normal of which less is left is no knowledge of one. */
    private static final double LEAST_LEFT = 0.01;

    static TruncatedNormal whole(double value, double deviation) {
        return new TruncatedNormal(value, deviation, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    }

    private double left() {
        return deviation == 0 ? 1 : StandardNormal.cumulative(end(most)) - StandardNormal.cumulative(end(least));
    }

    private double end(double number) {
        return (number - value) / deviation;
    }

    @Override
    public double expectation() {
        return isWhole() ? value : value + deviation * moved();
    }

    private boolean isWhole() {
        return deviation == 0 || (Double.isInfinite(least) && Double.isInfinite(most));
    }

    private double moved() {
        return (StandardNormal.density(end(least)) - StandardNormal.density(end(most))) / left();
    }

    @Override
    public double standardUncertainty() {
        if (isWhole()) {
            return deviation;
        }
        double moved = moved();
        double spread = 1 + (weighted(end(least)) - weighted(end(most))) / left() - moved * moved;
        return deviation * Math.sqrt(Math.max(0, spread)); // a rounding below 0 would be a NaN
    }

    private static double weighted(double end) {
        return Double.isInfinite(end) ? 0 : end * StandardNormal.density(end);
    }

    @Override
    public double draw(SplittableRandom random) {
        double drawn;
        do {
            drawn = value + deviation * StandardNormal.draw(random);
        } while (drawn < least || drawn > most);
        return drawn;
    }

    @Override
    public Knowledge within(double lowest, double highest) {
        TruncatedNormal cut = new TruncatedNormal(value, deviation, Math.max(least, lowest), Math.min(most, highest));
        if (!(cut.left() >= LEAST_LEFT)) {
            throw new IllegalArgumentException("less than a hundredth of it is possible: state an interval instead");
        }
        return cut;
    }
}
