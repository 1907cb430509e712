package evenwater.chemistry.instrument;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Objects;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * A test kit whose drops are counted until the colour turns: a titration in steps.
 *
 * <p>A count is a range and no number. Two ways to state it are in use, and each has its name here: the count of the drop that
 * {@linkplain #turningAt turns the colour}, which is n when the truth is above n − 1 steps and at most n; and a count
 * {@linkplain #roundedTo rounded} to the nearest step. The error of the drops themselves is left out.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> what the kit measures: {@code Hardness} or {@code Alkalinity}
 */
public final class DropTest<Q extends WaterQuantity<Q>> {

    /** The GH kit of aquarists: one German degree of hardness for each drop (common practice). */
    public static final DropTest<Hardness> GENERAL_HARDNESS = hardness(Hardness.of(1, Hardness.GERMAN_DEGREE));

    /** The KH kit of aquarists: one degree for each drop (common practice); it titrates alkalinity, whatever the hardness. */
    public static final DropTest<Alkalinity> CARBONATE_HARDNESS =
            alkalinity(Alkalinity.of(1, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS));

    /** More than anybody counts: a slip of the pen or of the kit. */
    private static final int MOST_DROPS = 1000;

    /** Makes a quantity of the kind. */
    private interface Maker<Q extends WaterQuantity<Q>> {
        Q make(double value, Unit<Q> unit);
    }

    private final String what;
    private final Function<Quantity<Q>, Q> reader;
    private final Maker<Q> maker;
    private final Q stepOfUsualSample;
    private final double sampleTimes;

    private DropTest(
            String what, Function<Quantity<Q>, Q> reader, Maker<Q> maker, Q stepOfUsualSample, double sampleTimes) {
        this.what = what;
        this.reader = reader;
        this.maker = maker;
        this.stepOfUsualSample = stepOfUsualSample;
        this.sampleTimes = sampleTimes;
    }

    /**
     * Returns a hardness kit.
     *
     * @param step hardness that one drop stands for, such as 1 °dH or 17.8 mg/L as CaCO₃; above 0
     * @return the kit with its usual sample
     * @throws IllegalArgumentException if the step is not positive
     */
    public static DropTest<Hardness> hardness(Quantity<Hardness> step) {
        return of("hardness", Hardness::from, Hardness::of, step);
    }

    /**
     * Returns an alkalinity kit, which aquarists call a KH or carbonate hardness test.
     *
     * @param step alkalinity that one drop stands for, such as 1 °dKH; above 0
     * @return the kit with its usual sample
     * @throws IllegalArgumentException if the step is not positive
     */
    public static DropTest<Alkalinity> alkalinity(Quantity<Alkalinity> step) {
        return of("alkalinity", Alkalinity::from, Alkalinity::of, step);
    }

    private static <Q extends WaterQuantity<Q>> DropTest<Q> of(
            String what, Function<Quantity<Q>, Q> reader, Maker<Q> maker, Quantity<Q> step) {
        Q stated = reader.apply(Objects.requireNonNull(step, "step"));
        if (!(stated.getValue() > 0)) {
            throw new IllegalArgumentException("step of the drop test must be positive, but was " + stated);
        }
        return new DropTest<>(what, reader, maker, stated, 1);
    }

    /**
     * Returns the same kit with another volume of sample: twice the sample halves the step.
     *
     * @param times volume of the sample over the one that the instructions ask for; no unit; 0.1 to 10
     * @return the kit
     * @throws IllegalArgumentException if it is out of range
     */
    public DropTest<Q> withSampleTimes(double times) {
        if (!(times >= 0.1 && times <= 10)) {
            throw new IllegalArgumentException("sample must be from 0.1 to 10 times the usual one, but was " + times);
        }
        return new DropTest<>(what, reader, maker, stepOfUsualSample, times);
    }

    /**
     * Returns what one drop stands for.
     *
     * @return the step of the usual sample, divided by how many times the sample is larger
     */
    public Q step() {
        return drops(1);
    }

    /** In decimals, so that 29 drops of 0.1 are 2.9 and not 2.9000000000000004. */
    private Q drops(double number) {
        double value = BigDecimal.valueOf(stepOfUsualSample.getValue())
                .multiply(BigDecimal.valueOf(number))
                .divide(BigDecimal.valueOf(sampleTimes), MathContext.DECIMAL128)
                .doubleValue();
        return maker.make(value, stepOfUsualSample.getUnit());
    }

    /**
     * Returns what it means that the colour turned at the n-th drop: more than n − 1 steps and at most n.
     *
     * <p>The first drop also turns a water that has nothing to titrate, so a count of 1 is from 0 to 1 step. Free mineral acid
     * (negative alkalinity) looks the same and is left out.
     *
     * @param drops the count n, with the drop that turned the colour; 1 to 1000
     * @return the range of the truth
     * @throws IllegalArgumentException if the count is out of range
     */
    public ReadingInterval<Q> turningAt(int drops) {
        if (drops < 1 || drops > MOST_DROPS) {
            throw new IllegalArgumentException("drops of the " + what + " test must be from 1 to " + MOST_DROPS
                    + ", but were " + drops
                    + (drops == 0 ? ": the drop that turns the colour counts, and the first may do so" : ""));
        }
        return new ReadingInterval<>(drops(drops - 1), drops(drops), drops > 1);
    }

    /**
     * Returns what a count means that was rounded to the nearest drop: half a step to either side, both ends included.
     *
     * <p>Rounded to 0, the range starts at 0: no drop can show less.
     *
     * @param drops the rounded count n; 0 to 1000
     * @return the range of the truth
     * @throws IllegalArgumentException if the count is out of range
     */
    public ReadingInterval<Q> roundedTo(int drops) {
        if (drops < 0 || drops > MOST_DROPS) {
            throw new IllegalArgumentException(
                    "rounded drops of the " + what + " test must be from 0 to " + MOST_DROPS + ", but were " + drops);
        }
        return new ReadingInterval<>(drops(Math.max(0, drops - 0.5)), drops(drops + 0.5), false);
    }

    /**
     * Returns the count at which a water turns the colour: {@code max(1, ⌈truth / step⌉)}.
     *
     * @param truth hardness or alkalinity of the water; 0 or more
     * @return the drops; 1 to 1000; {@link #turningAt} them contains the truth
     * @throws IllegalArgumentException if the truth is negative
     * @throws NoAnswerException if it takes more than 1000 drops
     */
    public int readingFor(Quantity<Q> truth) {
        Q stated = reader.apply(Objects.requireNonNull(truth, "truth"));
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException(what + " must not be negative for a drop test, but was " + stated);
        }
        if (turningAt(MOST_DROPS).isAbove(stated)) {
            throw new NoAnswerException(
                    what + " " + stated + " takes more than " + MOST_DROPS + " drops of " + text(step()),
                    stated,
                    step());
        }
        int drops = Math.min(MOST_DROPS, Math.max(1, (int) Math.ceil(stated.ratioTo(step()))));
        // a whole number of steps, stated in another unit, may come out a little above itself
        return drops > 1 && turningAt(drops).isBelow(stated) ? drops - 1 : drops;
    }

    private static String text(WaterQuantity<?> quantity) {
        return quantity.toText(Locale.ROOT, 12);
    }

    /** Returns the kit, such as {@code hardness test, 1 °dH a drop}. */
    @Override
    public String toString() {
        return what + " test, " + text(step()) + " a drop";
    }
}
