package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A result as the draws of a Monte Carlo run left it.
 *
 * <p>Immutable and thread-safe. Uncertainties and errors of a temperature are in kelvin.
 *
 * @param <Q> type of the result, such as {@code Hardness} or {@code WaterQuantity<Temperature>}
 */
public final class UncertainResult<Q extends WaterQuantity<?>> {

    private final Stated<Q> unit;
    private final Sample sample;
    private final double coverage;

    UncertainResult(Stated<Q> unit, double[] numbers, double coverage) {
        this.unit = unit;
        this.sample = new Sample(numbers);
        this.coverage = coverage;
    }

    /**
     * Returns the result of outcomes that {@link MonteCarlo#outcomes} left, so that many results can be taken from one run.
     *
     * @param <Q> type of the result
     * @param outcomes one for each draw, all of one kind; 2 or more
     * @param coverage probability of the intervals, above 0; at least one draw has to be outside
     * @return the result, in the unit of the first outcome
     * @throws IllegalArgumentException if there are fewer than two, they are of different kinds, or the coverage is out of range
     */
    public static <Q extends WaterQuantity<?>> UncertainResult<Q> of(List<Q> outcomes, double coverage) {
        Objects.requireNonNull(outcomes, "outcomes");
        if (outcomes.size() < 2) {
            throw new IllegalArgumentException("outcomes must be 2 or more, but were " + outcomes.size());
        }
        MonteCarlo.requireCoverage(coverage, outcomes.size());
        Stated<Q> unit = new Stated<>(outcomes.get(0));
        double[] numbers = new double[outcomes.size()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = unit.read(Objects.requireNonNull(outcomes.get(i), "outcome"));
        }
        return new UncertainResult<>(unit, numbers, coverage);
    }

    /**
     * Returns the mean of the draws: the best estimate (JCGM 101:2008 7.6).
     *
     * @return in the unit of the result
     */
    public Q mean() {
        return unit.value(sample.mean());
    }

    /**
     * Returns the standard uncertainty u: the standard deviation of the draws (JCGM 101:2008 7.6).
     *
     * @return a difference; 0 if all draws are alike
     */
    public Q standardUncertainty() {
        return unit.difference(sample.deviation());
    }

    /**
     * Returns the expanded uncertainty {@code U = 2 u} that {@link #toText} shows.
     *
     * @return a difference
     */
    public Q expandedUncertainty() {
        return unit.difference(2 * sample.deviation());
    }

    /**
     * Returns the standard error of the mean, {@code u/√M} of M draws: how far another seed would move it.
     *
     * @return a difference
     */
    public Q standardErrorOfMean() {
        return unit.difference(sample.deviation() / Math.sqrt(sample.count()));
    }

    /**
     * Returns an estimate of the standard error of the standard uncertainty, from the fourth moment of the draws: {@code u/√(2M)} where they
     * are normal. It is too small where a few draws far out make up the moments.
     *
     * @return a difference
     */
    public Q standardErrorOfUncertainty() {
        return unit.difference(sample.standardErrorOfDeviation());
    }

    /**
     * Returns an estimate of the standard error of the ends of the {@link #symmetricInterval}, the larger of both.
     *
     * @return a difference
     */
    public Q standardErrorOfEnds() {
        return unit.difference(sample.standardErrorOfEnds(coverage));
    }

    /**
     * Returns the interval with as many draws below as above it (probabilistically symmetric, JCGM 101:2008 3.15 and 7.7).
     *
     * @return the interval with the coverage probability of the run
     */
    public CoverageInterval<Q> symmetricInterval() {
        return interval(sample.symmetric(coverage));
    }

    /**
     * Returns the shortest interval (JCGM 101:2008 3.16, 5.3.4 and 7.7.4); its ends scatter more than those of the symmetric one.
     *
     * @return the interval with the coverage probability of the run
     */
    public CoverageInterval<Q> shortestInterval() {
        return interval(sample.shortest(coverage));
    }

    private CoverageInterval<Q> interval(double[] ends) {
        return new CoverageInterval<>(unit.value(ends[0]), unit.value(ends[1]), coverage);
    }

    /**
     * Returns the share of draws above a limit, such as a guideline value.
     *
     * @param limit in any unit of the kind
     * @return from 0 to 1; its standard error is {@code √(p (1 - p)/M)}
     * @throws IllegalArgumentException if the limit is of another kind
     */
    public double probabilityAbove(Q limit) {
        return sample.shareAbove(unit.read(Objects.requireNonNull(limit, "limit")));
    }

    /**
     * Returns the number of draws M.
     *
     * @return 100 or more
     */
    public int draws() {
        return sample.count();
    }

    /**
     * Returns the result for people, such as {@code 118 ± 9 mg/L (k = 2), 95 % between 110 and 127 mg/L}.
     *
     * <p>What follows ± is the expanded uncertainty {@code U = 2 u}, with its k, as JCGM 100:2008 7.2.3 and 7.2.4 ask; between both ends,
     * which need not be as far from the value, lies the symmetric interval. U has two significant digits if it begins with 1 or 2, else
     * one (common practice, no source; JCGM 100 7.2.6 wants two at most), and value and ends are rounded to the same decimal. From 10⁹ on
     * and below 10⁻⁶ there is a power of ten. If all draws are alike, it is the value with {@code without uncertainty}.
     *
     * @param locale whose decimal sign and grouping to use
     * @return rounded text; not meant to be read back
     */
    public String toText(Locale locale) {
        double u = sample.deviation();
        RoundedText text = RoundedText.of(sample.mean(), 2 * u, unit.symbol(), locale);
        double[] ends = sample.symmetric(coverage);
        return u == 0 ? text.estimate() : text.estimate() + ", " + text.between(coverage, ends[0], ends[1]);
    }

    Stated<Q> unit() {
        return unit;
    }

    Sample sample() {
        return sample;
    }

    double coverage() {
        return coverage;
    }

    /** Returns {@link #toText} with a decimal point, for logs. */
    @Override
    public String toString() {
        return toText(Locale.ROOT);
    }
}
