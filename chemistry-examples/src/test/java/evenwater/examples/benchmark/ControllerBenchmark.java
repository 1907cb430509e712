package evenwater.examples.benchmark;

import evenwater.chemistry.control.SoftenerSettings;
import evenwater.chemistry.control.SoftenerState;
import evenwater.chemistry.kernel.ValveCount;
import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveRule;
import evenwater.chemistry.kernel.ValveSave;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveSettings;
import evenwater.chemistry.kernel.ValveState;
import evenwater.chemistry.quantity.WaterUnits;
import java.time.LocalDateTime;
import java.util.Random;
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
 * What a step of a softener's controller costs: one reading of the meter, in the kernel and typed, and a whole day of them.
 *
 * <p>An invented household of 4000 pulses of 0.1 L a day, at random seconds; a counter of 16 bits. The state lives on from one call to the
 * next, so that days end, the counter rolls over and the capacity is used up.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class ControllerBenchmark {

    private static final int PULSES = 4000;
    private static final long DAY = 86_400;
    private static final LocalDateTime START = LocalDateTime.of(2026, 3, 10, 0, 0);
    private static final long CLOCK = 20_522 * DAY;

    /** Seconds of the day, in order. */
    private final long[] seconds = new Random(7).longs(PULSES, 0, DAY).sorted().toArray();

    private final ValveSettings settings = new ValveSettings();
    private final ValveState state = new ValveState();
    private final long[] save = new long[ValveSave.LENGTH];
    private final SoftenerState fresh;

    private long counter;
    private long midnight = CLOCK;
    private int next;

    /** Begins, and checks that a day comes out right both ways. */
    public ControllerBenchmark() {
        settings.put(ValveSetting.COUNTER_BITS, 16);
        ValveKernel.begin(settings, state, 0, CLOCK, settings.value(ValveSetting.CAPACITY_NANOLITRES));
        fresh = SoftenerState.regenerated(
                SoftenerSettings.builder(
                                WaterUnits.volume(0.1, WaterUnits.LITRE), WaterUnits.volume(1000, WaterUnits.LITRE))
                        .counterBits(16)
                        .build(),
                0,
                START);
        same(kernelDay(), ValveRule.NOT_DUE);
        same(state.count(ValveCount.LEFT), 600_000_000_000L);
        same(Math.round(typedDay().left().in(WaterUnits.LITRE)), 600);
    }

    private static void same(long found, long expected) {
        if (found != expected) {
            throw new IllegalStateException(found + " instead of " + expected);
        }
    }

    /**
     * Takes one pulse.
     *
     * @return what was noticed
     */
    @Benchmark
    public int kernelStep() {
        counter++;
        int notices = ValveKernel.step(settings, state, counter & 0xFFFF, midnight + seconds[next]);
        next++;
        if (next == PULSES) {
            next = 0;
            midnight += DAY;
        }
        return notices;
    }

    /**
     * Takes one pulse and asks whether to regenerate.
     *
     * @return whether to
     */
    @Benchmark
    public boolean kernelStepAndDecision() {
        kernelStep();
        return ValveRule.isToStart(settings, state);
    }

    /**
     * Takes all pulses of a day.
     *
     * @return when a regeneration is due
     */
    @Benchmark
    public int kernelDay() {
        for (int i = 0; i < PULSES; i++) {
            kernelStep();
        }
        return ValveRule.due(settings, state);
    }

    /**
     * Saves the state.
     *
     * @return the check
     */
    @Benchmark
    public long kernelSave() {
        ValveSave.write(settings, state, save);
        return save[ValveSave.LENGTH - 1];
    }

    /**
     * Takes all pulses of a day in typed states; a figure is for one of them.
     *
     * @return the last
     */
    @Benchmark
    @OperationsPerInvocation(PULSES)
    public SoftenerState typedDay() {
        SoftenerState last = fresh;
        for (int i = 0; i < PULSES; i++) {
            last = last.read(i + 1, START.plusSeconds(seconds[i]));
        }
        return last;
    }
}
