package evenwater.examples.benchmark;

import evenwater.chemistry.kernel.PumpKernel;
import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpServiceKernel;
import evenwater.chemistry.kernel.PumpSettings;
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
 * What a tick of a dosing pump's kernel costs: an invented pump with 24 portions a day of 1 mL each, one tick a minute and one report for each
 * run, day after day; a figure is for one tick of the 1440.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 10, time = 1)
@Fork(
        value = 2,
        jvmArgsAppend = {"-XX:+UseSerialGC", "-Xms512m", "-Xmx512m", "-XX:+AlwaysPreTouch"})
public class PumpBenchmark {

    private static final int MINUTES = 1440;
    private static final long MILLILITRE = 1_000_000_000;

    private final long[] settings = new long[PumpSettings.LENGTH];
    private final long[] memory = new long[PumpMemory.LENGTH];
    private long local;
    private long uptime;

    /** Makes the pump and checks that a day of it doses a day's dose. */
    public PumpBenchmark() {
        settings[PumpSettings.CAP] = 25 * MILLILITRE;
        settings[PumpSettings.DAILY] = 24 * MILLILITRE;
        settings[PumpSettings.PORTIONS] = 24;
        settings[PumpSettings.GRACE] = 1800;
        settings[PumpSettings.RESERVOIR] = 1_000_000 * MILLILITRE;
        settings[PumpSettings.DRIFT_PER_MILLE] = 100;
        settings[PumpSettings.CONFIRM_WITHIN] = 900;
        for (int i = 0; i < 24; i++) {
            settings[PumpSettings.TIMES + i] = i * 3600L;
        }
        start();
        day();
        day();
        if (memory[PumpMemory.DOSED] != 48 * MILLILITRE) {
            throw new IllegalStateException(memory[PumpMemory.DOSED] + " pL");
        }
    }

    private void start() {
        local = 20_000 * 86_400L - 60;
        uptime = 0;
        PumpKernel.start(settings, memory, local, uptime, 1_000_000, 1_000_000 * MILLILITRE, 0);
        PumpServiceKernel.tubeSeenFull(memory);
        PumpKernel.tick(settings, memory, local, uptime);
    }

    /** A tick a minute for a day, each run confirmed. */
    @Benchmark
    @OperationsPerInvocation(MINUTES)
    public long day() {
        for (int i = 0; i < MINUTES; i++) {
            local += 60;
            uptime += 60;
            if (PumpKernel.tick(settings, memory, local, uptime) == PumpKernel.RUN) {
                PumpKernel.dosed(settings, memory, memory[PumpMemory.RUN], memory[PumpMemory.PENDING], local, uptime);
            }
        }
        if (memory[PumpMemory.LEVEL] < 100 * MILLILITRE) {
            PumpServiceKernel.refilled(settings, memory, 1_000_000 * MILLILITRE);
        }
        if (local > 200_000_000_000L) {
            start();
        }
        return memory[PumpMemory.DOSED];
    }
}
