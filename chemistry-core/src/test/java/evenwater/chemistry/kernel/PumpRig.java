package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** A pump on a bench: settings, memory and the two clocks. Volumes in microlitres for reading, a step of 1 µL unless said otherwise. */
final class PumpRig {

    static final long UL = 1_000_000; // pL
    static final long ML = 1000 * UL;
    static final long HOUR = 3600;
    static final long DAY = 86_400;

    /** Midnight of some day. */
    static final long MIDNIGHT = 20_000 * DAY;

    final long[] s = new long[PumpSettings.LENGTH];
    final long[] m = new long[PumpMemory.LENGTH];
    long local = MIDNIGHT;
    long uptime = 1000;

    PumpRig(long capMl, long dailyMl, long... hours) {
        s[PumpSettings.CAP] = capMl * ML;
        s[PumpSettings.DAILY] = dailyMl * ML;
        s[PumpSettings.PORTIONS] = hours.length;
        for (int i = 0; i < hours.length; i++) {
            s[PumpSettings.TIMES + i] = hours[i] * HOUR;
        }
        s[PumpSettings.GRACE] = HOUR;
        s[PumpSettings.RESERVOIR] = 1000 * ML;
        s[PumpSettings.TUBE] = 5 * ML;
        s[PumpSettings.LOW_DAYS] = 7;
        s[PumpSettings.DRIFT_PER_MILLE] = 100;
        s[PumpSettings.CONFIRM_WITHIN] = 900;
    }

    PumpRig with(int place, long value) {
        s[place] = value;
        return this;
    }

    PumpRig start() {
        return start(UL, 1000 * ML);
    }

    PumpRig start(long step, long level) {
        assertEquals(PumpKernel.DONE, PumpKernel.start(s, m, local, uptime, step, level, 0));
        PumpServiceKernel.tubeSeenFull(m);
        assertEquals(PumpKernel.NOTHING_DUE, tick()); // the schedule begins to run
        return this;
    }

    PumpRig pass(long seconds) {
        local += seconds;
        uptime += seconds;
        return this;
    }

    int tick() {
        int status = PumpKernel.tick(s, m, local, uptime);
        assertTrue(PumpMemory.isUsable(m));
        return status;
    }

    int tickAfter(long seconds) {
        return pass(seconds).tick();
    }

    /** Ticks, expects a run, confirms it, and returns its volume in µL. */
    long run() {
        assertEquals(PumpKernel.RUN, tick());
        return confirm();
    }

    long confirm() {
        long steps = m[PumpMemory.PENDING];
        dosed(steps);
        return steps * m[PumpMemory.STEP] / UL;
    }

    void dosed(long steps) {
        assertEquals(PumpKernel.DONE, PumpKernel.dosed(s, m, m[PumpMemory.RUN], steps, local, uptime));
    }

    void unordered(long steps) {
        assertEquals(PumpKernel.DONE, PumpServiceKernel.dosedUnordered(s, m, steps, local, uptime));
    }

    int report(long run, long steps) {
        return PumpKernel.dosed(s, m, run, steps, local, uptime);
    }

    int fail(long run) {
        return PumpKernel.failed(s, m, run, local, uptime);
    }

    int byHand(long microlitres) {
        return PumpKernel.doseByHand(s, m, microlitres * UL, local, uptime);
    }

    int prime(long microlitres, boolean intoTank) {
        return PumpKernel.prime(s, m, microlitres * UL, intoTank, local, uptime);
    }

    int restart(long secondsOff, long certain) {
        local += secondsOff;
        uptime = 0;
        return PumpKernel.restarted(s, m, local, uptime, certain);
    }

    void resume() {
        assertEquals(PumpKernel.DONE, PumpServiceKernel.resumed(s, m, local, uptime));
    }

    int changeSettings(long step) {
        return PumpServiceKernel.settingsChanged(s, m, step, local, uptime);
    }

    boolean flag(long flag) {
        return (m[PumpMemory.FLAGS] & flag) != 0;
    }

    long ul(int place) {
        return m[place] / UL;
    }

    /** Ticks every minute for so long, confirming each run, and returns what was dosed in µL. */
    long live(long seconds) {
        long before = m[PumpMemory.DOSED];
        for (long t = 0; t < seconds; t += 60) {
            pass(60);
            if (tick() == PumpKernel.RUN) {
                confirm();
            }
        }
        return (m[PumpMemory.DOSED] - before) / UL;
    }
}
