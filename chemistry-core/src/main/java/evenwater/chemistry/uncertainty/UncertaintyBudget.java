package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Dimensionless;

/**
 * The uncertainty of a result by the law of propagation, and which input it comes from.
 *
 * <p>{@code u² = Σ (∂f/∂xᵢ)² u²(xᵢ)}, of independent inputs (JCGM 100:2008 5.1.2, equation 10). Each slope is the central difference over
 * a step of u/1000 on either side: a straight line is met exactly but for rounding, and of a curve the slope at the estimate, whose error is
 * a millionth of what the curve bends within u. Where that bend matters, the law does not hold, and at the top of a parabola it even finds no
 * uncertainty at all: compare with Monte Carlo by {@link #validatedBy}. It needs two computations for each input.
 *
 * <p>Immutable and thread-safe. Uncertainties of a temperature are in kelvin.
 *
 * @param <Q> type of the result
 * @see "JCGM 100:2008, Guide to the expression of uncertainty in measurement, 5.1"
 */
public final class UncertaintyBudget<Q extends WaterQuantity<?>> {

    private static final double STEPS_IN_UNCERTAINTY = 1000;

    private final Stated<Q> unit;
    private final double value;
    private final double uncertainty;
    private final List<Contribution<Q>> contributions;

    private UncertaintyBudget(Stated<Q> unit, double value, double uncertainty, List<Contribution<Q>> contributions) {
        this.unit = unit;
        this.value = value;
        this.uncertainty = uncertainty;
        this.contributions = contributions;
    }

    /**
     * Propagates to a quantity.
     *
     * @param <Q> type of the result
     * @param inputs all inputs that the computation asks for, each once
     * @param computation pure; from a draw to a result
     * @return the result, in the unit that it has at the expectations of the inputs
     * @throws IllegalArgumentException if an input is declared twice, or used and not declared; and what the computation throws
     */
    public static <Q extends WaterQuantity<?>> UncertaintyBudget<Q> of(
            List<? extends Uncertain<?>> inputs, Function<Draw, Q> computation) {
        Inputs declared = new Inputs(inputs);
        Objects.requireNonNull(computation, "computation");
        Q result = Objects.requireNonNull(
                computation.apply(new Draw(declared, declared.expectations())), "result of the computation");
        Stated<Q> unit = new Stated<>(result);
        double[] slopes = new double[declared.list().size()];
        double[] parts = new double[slopes.length];
        double uncertainty = 0;
        for (int i = 0; i < parts.length; i++) {
            double u = declared.list().get(i).knowledge().standardUncertainty();
            double step = u / STEPS_IN_UNCERTAINTY;
            if (step > 0) {
                double[] up = moved(declared, i, step);
                double[] down = moved(declared, i, -step);
                double width = up[i] - down[i]; // what is left of the step beside the digits of the input
                double rise = unit.read(computation.apply(new Draw(declared, up)))
                        - unit.read(computation.apply(new Draw(declared, down)));
                slopes[i] = width == 0 ? 0 : rise / width;
            }
            parts[i] = Math.abs(slopes[i]) * u;
            uncertainty = Math.hypot(uncertainty, parts[i]);
        }
        return new UncertaintyBudget<>(
                unit, result.getValue().doubleValue(), uncertainty, lines(declared, unit, slopes, parts, uncertainty));
    }

    private static double[] moved(Inputs inputs, int place, double step) {
        double[] numbers = inputs.expectations();
        numbers[place] += step;
        return numbers;
    }

    private static <Q extends WaterQuantity<?>> List<Contribution<Q>> lines(
            Inputs inputs, Stated<Q> unit, double[] slopes, double[] parts, double uncertainty) {
        List<Contribution<Q>> lines = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            double share = uncertainty == 0 ? 0 : parts[i] / uncertainty;
            lines.add(new Contribution<>(
                    inputs.list().get(i).name(), slopes[i], unit.difference(parts[i]), Math.min(1, share * share)));
        }
        return List.copyOf(lines);
    }

    /**
     * Propagates to a number without a unit, such as a pH or an index.
     *
     * @param inputs as in {@link #of}
     * @param computation pure; from a draw to a number
     * @return the result
     * @throws IllegalArgumentException as in {@link #of}, and if the number is NaN or infinite
     */
    public static UncertaintyBudget<WaterQuantity<Dimensionless>> ofNumber(
            List<? extends Uncertain<?>> inputs, ToDoubleFunction<Draw> computation) {
        Objects.requireNonNull(computation, "computation");
        return of(inputs, draw -> WaterUnits.share(computation.applyAsDouble(draw), WaterUnits.ONE));
    }

    /**
     * Returns the result at the expectations of the inputs.
     *
     * @return the best estimate by the law of propagation
     */
    public Q value() {
        return unit.value(value);
    }

    /**
     * Returns the combined standard uncertainty u.
     *
     * @return a difference
     */
    public Q standardUncertainty() {
        return unit.difference(uncertainty);
    }

    /**
     * Returns the expanded uncertainty {@code U = 2 u}, some 95 % where the result is normal (JCGM 100:2008 6.3.3).
     *
     * @return a difference
     */
    public Q expandedUncertainty() {
        return unit.difference(2 * uncertainty);
    }

    /**
     * Returns what each input adds.
     *
     * @return one for each input, in their order
     */
    public List<Contribution<Q>> contributions() {
        return contributions;
    }

    /**
     * Compares this result with that of a Monte Carlo run of the same computation, as JCGM 101:2008 clause 8 does.
     *
     * @param monteCarlo the run
     * @param significantDigits digits of the standard uncertainty that matter; 1 or 2
     * @return how far the ends of the intervals are apart
     * @throws IllegalArgumentException if the digits are neither 1 nor 2
     */
    public Validation<Q> validatedBy(UncertainResult<Q> monteCarlo, int significantDigits) {
        Objects.requireNonNull(monteCarlo, "monteCarlo");
        if (significantDigits != 1 && significantDigits != 2) {
            throw new IllegalArgumentException("significant digits must be 1 or 2, but were " + significantDigits);
        }
        return new Validation<>(unit, value, uncertainty, monteCarlo, significantDigits);
    }

    /**
     * Returns the result for people, such as {@code 118 ± 9 mg/L (k = 2)}, rounded as {@link UncertainResult#toText} does.
     *
     * @param locale whose decimal sign and grouping to use
     * @return rounded text; not meant to be read back
     */
    public String toText(Locale locale) {
        return RoundedText.of(value, 2 * uncertainty, unit.symbol(), locale).estimate();
    }

    /** Returns {@link #toText} with a decimal point, for logs. */
    @Override
    public String toString() {
        return toText(Locale.ROOT);
    }
}
