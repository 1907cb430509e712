package evenwater.examples.benchmark;

import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.ResinLoading;
import evenwater.chemistry.exchange.SofteningCycle;
import evenwater.chemistry.kernel.BedKernel;
import evenwater.chemistry.kernel.BedState;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a bed of resin costs: steps of the kernel for several numbers of slices, one service run with its regeneration, and a steady cycle.
 *
 * <p>Calcium, magnesium, sodium and potassium; an invented water of 10 grains per US gallon.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class BedBenchmark {

    private static final int STEPS = 200;
    private static final double[] CONSTANT = {5.16 / 1.98, 3.29 / 1.98, 1, 2.90 / 1.98};
    private static final int[] CHARGE = {2, 2, 1, 1};
    private static final double[] TAP = {0.00228, 0.00114, 0.004, 0.0001};
    private static final double[] BRINE = {0.00228, 0.00114, 1.836, 0.0001};
    private static final Hardness END_POINT = Hardness.of(1, Hardness.GRAIN_PER_US_GALLON);

    /** Slices of the bed. */
    @Param({"50", "100", "200"})
    private int slices;

    private BedState start;
    private BedState bed;
    private final double[] effluent = new double[4];

    private Water water;
    private ResinBed typed;
    private final Regeneration regeneration = Regeneration.coFlow(SaltDose.of(10, SaltDose.POUND_PER_CUBIC_FOOT));

    /** Makes a fresh bed. */
    @Setup
    public void fill() {
        start = new BedState(CONSTANT, CHARGE, slices, 0.38);
        start.rates(150, 20);
        for (int j = 0; j < slices; j++) {
            start.resin(j, 2, 2.0);
            start.water(j, 2, 0.00752);
        }
        bed = new BedState(CONSTANT, CHARGE, slices, 0.38);
        bed.rates(150, 20);
        water = Water.builder()
                .total(Ion.CALCIUM, Ion.CALCIUM.parseConcentration("1.14 mmol/L"))
                .total(Ion.MAGNESIUM, Ion.MAGNESIUM.parseConcentration("0.57 mmol/L"))
                .total(Ion.SODIUM, Ion.SODIUM.parseConcentration("4 mmol/L"))
                .total(Ion.POTASSIUM, Ion.POTASSIUM.parseConcentration("0.1 mmol/L"))
                .build();
        typed = ResinBed.of(
                Resin.gel(),
                WaterUnits.volume(1, WaterUnits.CUBIC_FOOT),
                ResinLoading.of(Map.of(Ion.SODIUM, 1.0)),
                slices);
    }

    /**
     * 200 steps of tap water, then 200 of brine: cost by slices and steps.
     *
     * @return a figure of the bed
     */
    @Benchmark
    public double kernelOf400Steps() {
        bed.copy(start);
        run(TAP, 2, 0.1);
        run(BRINE, 0.005, 0.00125);
        return bed.resin(slices / 2, 0);
    }

    private void run(double[] feed, double bedVolumes, double hours) {
        for (int k = 0; k < STEPS; k++) {
            if (BedKernel.flow(bed, feed, false, bedVolumes, hours, effluent) != BedKernel.FLOWED) {
                throw new IllegalStateException("the bed did not converge");
            }
        }
    }

    /**
     * Service from a new bed to 1 gpg and a regeneration, typed, with the waters of effluent and waste.
     *
     * @return the bed after it
     */
    @Benchmark
    public ResinBed serviceAndRegeneration() {
        return typed.serviceUntil(water, typed.flow(16), END_POINT)
                .bedAfter()
                .regenerate(regeneration, water)
                .bedAfter();
    }

    /**
     * Cycles until they repeat.
     *
     * @return the steady cycle
     */
    @Benchmark
    public SofteningCycle steadyCycle() {
        return SofteningCycle.steady(typed, water, typed.flow(16), END_POINT, regeneration);
    }
}
