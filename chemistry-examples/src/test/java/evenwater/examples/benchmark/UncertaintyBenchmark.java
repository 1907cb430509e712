package evenwater.examples.benchmark;

import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.UncertainReport;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.water.Water;
import java.util.concurrent.TimeUnit;
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

/**
 * What a Monte Carlo run costs beside as many single computations of the same chain: report, water, softener, species, conductivity.
 *
 * <p>An invented report of eight readings, seven of them uncertain; a figure is for one draw.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(
        value = 1,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class UncertaintyBenchmark {

    private static final int DRAWS = 10_000;

    private final UncertainReport uncertain = LabReport.builder()
            .hardness(Hardness.of(2.6, Hardness.MILLIMOLE_PER_LITRE))
            .total(Ion.CALCIUM, millimoles(1.9))
            .alkalinity(Alkalinity.of(4.1, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
            .total(Ion.SODIUM, millimoles(0.8))
            .total(Ion.POTASSIUM, millimoles(0.06))
            .total(Ion.CHLORIDE, millimoles(0.9))
            .pH(7.4, 0.1)
            .temperature(WaterUnits.temperature(12, WaterUnits.CELSIUS))
            .uncertainty(0.05)
            .build()
            .uncertain();
    private final MonteCarlo run = MonteCarlo.seeded(42).draws(DRAWS);

    /** As what was drawn is interpreted: without the corners that a report has at once. */
    private final LabReport one =
            run.outcomes(uncertain.inputs(), uncertain::drawn).get(0);

    private static AmountConcentration millimoles(double value) {
        return AmountConcentration.of(value, AmountConcentration.MILLIMOLE_PER_LITRE);
    }

    private static Conductivity conductivity(LabReport report) {
        Water water = Softener.withSodium().treat(report.interpret().water());
        return CalculatedConductivity.of(Speciation.of(water));
    }

    /** The chain again and again, with the report of one draw. */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public double single() {
        double sum = 0;
        for (int i = 0; i < DRAWS; i++) {
            sum += conductivity(one).getValue();
        }
        return sum;
    }

    /** The run on the calling thread alone. */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public Conductivity drawnOnOneThread() {
        return run.on(Runnable::run)
                .propagate(uncertain.inputs(), draw -> conductivity(uncertain.drawn(draw)))
                .mean();
    }

    /** The run as it is by default. */
    @Benchmark
    @OperationsPerInvocation(DRAWS)
    public Conductivity drawn() {
        return run.propagate(uncertain.inputs(), draw -> conductivity(uncertain.drawn(draw)))
                .mean();
    }
}
