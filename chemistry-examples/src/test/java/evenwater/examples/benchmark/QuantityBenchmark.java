package evenwater.examples.benchmark;

import evenwater.chemistry.quantity.Hardness;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/**
 * What converting, restating, adding and reading a quantity costs, beside plain doubles and indriya.
 *
 * <p>All walk over the same numbers, and a figure is for one of them. Doubles are summed; objects go to the black hole, so that they
 * are really made.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class QuantityBenchmark {

    private static final int SIZE = 256;
    private static final Unit<Hardness> FROM = Hardness.GRAIN_PER_US_GALLON;
    private static final Unit<Hardness> TO = Hardness.GERMAN_DEGREE;
    private static final double FACTOR = factor(TO);

    private final double[] numbers = new double[SIZE];
    private final Hardness[] quantities = new Hardness[SIZE];
    private final Hardness[] inOtherUnit = new Hardness[SIZE];

    /** One target for each number, at random, none of them {@link #FROM}. */
    private final Unit<Hardness>[] targets;

    /** The same targets as a program of plain doubles would have them: codes, and a table of factors. */
    private final int[] codes;

    private final double[] factors;

    private final Unit<Hardness> indriyaTo = indriya(TO);
    private final List<Quantity<Hardness>> indriyaQuantities;

    /** Makes the same amounts as doubles, as quantities of ours and as quantities of indriya. */
    @SuppressWarnings({"rawtypes", "unchecked"}) // an array of units, as fast to walk as one of doubles
    public QuantityBenchmark() {
        Random random = new Random(22);
        for (int i = 0; i < SIZE; i++) {
            numbers[i] = random.nextInt(5, 400) / 10.0;
            quantities[i] = Hardness.of(numbers[i], FROM);
            inOtherUnit[i] = quantities[i].to(TO);
        }
        List<Unit<Hardness>> units =
                Hardness.units().stream().filter(unit -> unit != FROM).toList();
        codes = random.ints(SIZE, 0, units.size()).toArray();
        factors = units.stream().mapToDouble(QuantityBenchmark::factor).toArray();
        targets = IntStream.of(codes).mapToObj(units::get).toArray(Unit[]::new);
        Unit<Hardness> indriyaFrom = indriya(FROM);
        indriyaQuantities = DoubleStream.of(numbers)
                .<Quantity<Hardness>>mapToObj(number -> Quantities.getQuantity(number, indriyaFrom))
                .toList();
    }

    private static double factor(Unit<Hardness> to) {
        return Hardness.of(1, FROM).in(to);
    }

    /** A unit of the same size that indriya made all by itself. */
    private static Unit<Hardness> indriya(Unit<Hardness> unit) {
        return Units.MOLE
                .divide(Units.CUBIC_METRE)
                .asType(Hardness.class)
                .multiply(Hardness.of(1, unit).in(Hardness.MOLE_PER_CUBIC_METRE));
    }

    /** Plain doubles, one factor. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double rawOneUnit() {
        double sum = 0;
        for (double number : numbers) {
            sum += number * FACTOR;
        }
        return sum;
    }

    /** {@code in(unit)}, one unit. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double inOneUnit() {
        double sum = 0;
        for (Hardness quantity : quantities) {
            sum += quantity.in(TO);
        }
        return sum;
    }

    /** Plain doubles, a code for each that picks the factor. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double rawManyUnits() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += numbers[i] * factors[codes[i]];
        }
        return sum;
    }

    /** {@code in(unit)}, a unit for each. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double inManyUnits() {
        double sum = 0;
        for (int i = 0; i < SIZE; i++) {
            sum += quantities[i].in(targets[i]);
        }
        return sum;
    }

    /** A new quantity and its value in another unit. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double ofThenIn() {
        double sum = 0;
        for (double number : numbers) {
            sum += Hardness.of(number, FROM).in(TO);
        }
        return sum;
    }

    /** {@code to(unit)}. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public void to(Blackhole hole) {
        for (Hardness quantity : quantities) {
            hole.consume(quantity.to(TO));
        }
    }

    /** {@code add} of a quantity in another unit. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public void addInOtherUnit(Blackhole hole) {
        for (int i = 0; i < SIZE; i++) {
            hole.consume(quantities[i].add(inOtherUnit[i]));
        }
    }

    /** {@code parse("22 gpg")}. */
    @Benchmark
    public Hardness parse() {
        return Hardness.parse("22 gpg");
    }

    /** indriya's {@code to(unit)}, read as a double. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    public double indriyaTo() {
        double sum = 0;
        for (Quantity<Hardness> quantity : indriyaQuantities) {
            sum += quantity.to(indriyaTo).getValue().doubleValue();
        }
        return sum;
    }
}
