package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Dimensionless;

/**
 * Propagates uncertain inputs through any computation by drawing them many times (Monte Carlo, JCGM 101:2008).
 *
 * <pre>{@code
 * UncertainResult<AmountConcentration> sodium = MonteCarlo.seeded(42)
 *         .propagate(List.of(gh, kh), draw -> sodiumOf(draw.of(gh), draw.of(kh)));
 * }</pre>
 *
 * <p><b>How many draws.</b> With the default of 10 000 and a result that is about normal, the standard error of the mean is 0.01 u, that of
 * the standard uncertainty 0.7 % of itself, and that of each end of a 95 % interval 0.027 u: enough for one significant digit, seldom for
 * two. JCGM 101 7.2.1 expects 10⁶ draws to give an interval of one or two correct digits, and 7.2.2 asks for at least 10⁴/(1 - p).
 *
 * <p><b>The same seed gives the same answer</b>, bit for bit, whatever runs it: every 250 draws have a generator of their own, split from
 * that of the seed in their order. The computation runs on several threads at once and must be pure: the result depends on nothing but the
 * draw, and nothing is written. Inputs are independent of each other; a matrix of correlations is left out. What two readings share is an
 * input of its own, see {@link Uncertain}.
 *
 * <p><b>A draw without an answer</b>, where the computation throws a NoAnswerException, an ArithmeticException or an
 * IllegalArgumentException, is not left out, as that would tell of other inputs than those stated: there is no result then.
 *
 * <p>Immutable and thread-safe. Threads that wait for others are not interrupted.
 *
 * @see "JCGM 101:2008, Evaluation of measurement data - Supplement 1 to the Guide - Propagation of distributions using a Monte Carlo method"
 */
public final class MonteCarlo {

    private static final int LEAST_DRAWS = 100;
    private static final int MOST_DRAWS = 10_000_000;

    private final long seed;
    private final int draws;
    private final double coverage;
    private final Executor executor;

    private MonteCarlo(long seed, int draws, double coverage, Executor executor) {
        this.seed = seed;
        this.draws = draws;
        this.coverage = coverage;
        this.executor = executor;
        requireCoverage(coverage, draws);
    }

    static void requireCoverage(double coverage, int draws) {
        if (!(coverage > 0 && (1 - coverage) * draws >= 1 - 1e-9)) {
            throw new IllegalArgumentException("coverage probability must be above 0 and leave out at least one of "
                    + draws + " draws, but was " + coverage);
        }
    }

    /**
     * Returns a run of 10 000 draws, with 95 % coverage, on the common pool.
     *
     * @param seed any number; another one gives another sample
     * @return the run
     */
    public static MonteCarlo seeded(long seed) {
        return new MonteCarlo(seed, 10_000, 0.95, ForkJoinPool.commonPool());
    }

    /**
     * Returns this run with another number of draws.
     *
     * @param number from 100 to 10 million: a result keeps 8 bytes of each draw, and 8 more while it is made
     * @return the run
     * @throws IllegalArgumentException if the number is out of range, or too small for the coverage probability
     */
    public MonteCarlo draws(int number) {
        if (number < LEAST_DRAWS || number > MOST_DRAWS) {
            throw new IllegalArgumentException(
                    "number of draws must be from " + LEAST_DRAWS + " to " + MOST_DRAWS + ", but was " + number);
        }
        return new MonteCarlo(seed, number, coverage, executor);
    }

    /**
     * Returns this run with another coverage probability of its intervals.
     *
     * @param probability above 0 and below 1; at least one draw has to be outside, so at most 0.9999 of 10 000 draws
     * @return the run
     * @throws IllegalArgumentException if the probability is out of range
     */
    public MonteCarlo coverage(double probability) {
        return new MonteCarlo(seed, draws, probability, executor);
    }

    /**
     * Returns this run on other threads; the answer is the same.
     *
     * @param newExecutor where to run; the calling thread helps, and does all that the executor does not take
     * @return the run
     */
    public MonteCarlo on(Executor newExecutor) {
        return new MonteCarlo(seed, draws, coverage, Objects.requireNonNull(newExecutor, "newExecutor"));
    }

    /**
     * Propagates to a quantity.
     *
     * @param <Q> type of the result
     * @param inputs all inputs that the computation asks for, each once; their order belongs to the seed
     * @param computation pure; from a draw to a result
     * @return the result, in the unit of that of the first draw
     * @throws NoAnswerException if draws have no answer; says how many, and the first reason
     * @throws IllegalArgumentException if an input is declared twice, or used and not declared
     */
    public <Q extends WaterQuantity<?>> UncertainResult<Q> propagate(
            List<? extends Uncertain<?>> inputs, Function<Draw, Q> computation) {
        Trials trials = new Trials(new Inputs(inputs), seed, draws, executor);
        Objects.requireNonNull(computation, "computation");
        Function<Draw, Q> checked =
                draw -> Objects.requireNonNull(computation.apply(draw), "result of the computation");
        List<Q> unit = trials.first(checked).stream().toList();
        double[] numbers = new double[draws];
        // without an answer of the first draw there is no unit, but there will be no result either
        trials.run(
                draw -> {
                    Q result = checked.apply(draw);
                    return unit.isEmpty() ? 0.0 : new Stated<>(unit.get(0)).read(result);
                },
                (place, number) -> numbers[place] = number);
        return new UncertainResult<>(new Stated<>(unit.get(0)), numbers, coverage);
    }

    /**
     * Propagates to a number without a unit, such as a pH or an index.
     *
     * @param inputs as in {@link #propagate}
     * @param computation pure; from a draw to a number; one that is NaN or infinite is no answer
     * @return the result
     * @throws NoAnswerException if draws have no answer; says how many, and the first reason
     * @throws IllegalArgumentException if an input is declared twice, or used and not declared
     */
    public UncertainResult<WaterQuantity<Dimensionless>> propagateNumber(
            List<? extends Uncertain<?>> inputs, ToDoubleFunction<Draw> computation) {
        Objects.requireNonNull(computation, "computation");
        return propagate(inputs, draw -> WaterUnits.share(computation.applyAsDouble(draw), WaterUnits.ONE));
    }

    /**
     * Returns what becomes of each draw, for results that are no quantities, such as verdicts.
     *
     * @param <R> type of the outcome; of some million draws it should be small or shared
     * @param inputs as in {@link #propagate}
     * @param computation pure; from a draw to an outcome
     * @return the outcomes in the order of the draws; not to be changed
     * @throws NoAnswerException if draws have no answer; says how many, and the first reason
     * @throws IllegalArgumentException if an input is declared twice, or used and not declared
     */
    public <R> List<R> outcomes(List<? extends Uncertain<?>> inputs, Function<Draw, R> computation) {
        Trials trials = new Trials(new Inputs(inputs), seed, draws, executor);
        Objects.requireNonNull(computation, "computation");
        @SuppressWarnings("unchecked") // every place is written by one draw
        R[] outcomes = (R[]) new Object[draws];
        trials.run(
                draw -> Objects.requireNonNull(computation.apply(draw), "outcome of the computation"),
                (place, outcome) -> outcomes[place] = outcome);
        return Collections.unmodifiableList(Arrays.asList(outcomes));
    }

    /** Returns seed, draws and coverage, for logs. */
    @Override
    public String toString() {
        return draws + " draws with seed " + seed + ", coverage " + coverage;
    }
}
