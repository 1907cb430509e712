package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * A random life of a pump: clocks that are set, losses of power, runs that end early, late or never, people who dose, prime, refill and
 * calibrate at the worst moments. Its ledger is written apart from the kernel: true time in milliseconds, a line for each flow.
 */
final class PumpLife {

    private record Flow(long trueMillis, long day, long picolitres) {}

    final long[] s;
    final long[] m = new long[PumpMemory.LENGTH];
    boolean clockIsSet = true;
    boolean lies; // runs flow in full and are reported short
    long counted;
    long primed;
    long filled;
    long flowed;

    private final Random random;
    private final List<Flow> flows = new ArrayList<>();
    private long now; // true, ms
    private long booted; // true, ms
    private long wall; // added to the true time, ms

    PumpLife(long seed) {
        random = new Random(seed);
        PumpRig rig = new PumpRig(1 + random.nextInt(20), 0, 1, 7, 13, 14, 22);
        s = rig.s;
        s[PumpSettings.DAILY] = (long) (s[PumpSettings.CAP] * random.nextDouble());
        s[PumpSettings.PORTIONS] = 1 + random.nextInt(5);
        s[PumpSettings.CATCH_UP] = random.nextInt(25);
        s[PumpSettings.PER_LITRE] = 2 * PumpRig.ML;
        s[PumpSettings.MILLISECONDS_PER_STEP] = random.nextInt(2);
        s[PumpSettings.GRACE] = 60 + random.nextInt(40_000);
        wall = PumpRig.MIDNIGHT * 1000 + random.nextInt(86_400_000);
        long level = 50 * PumpRig.ML;
        assertEquals(PumpKernel.DONE, PumpKernel.start(s, m, local(), uptime(), step(), level, 0));
        filled = level;
    }

    private long step() {
        return 1 + (long) Math.exp(random.nextDouble() * Math.log(5e7));
    }

    private long local() {
        return (now + wall) / 1000;
    }

    private long uptime() {
        return (now - booted) / 1000;
    }

    long[] save() {
        long[] block = new long[PumpMemory.LENGTH + SavedNumbers.OVERHEAD];
        SavedNumbers.write(PumpMemory.VERSION, 1, m, block);
        return block;
    }

    void live(int events) {
        for (int i = 0; i < events; i++) {
            event();
            assertTrue(PumpMemory.isUsable(m));
        }
    }

    private void event() {
        switch (random.nextInt(21)) {
            case 0 -> now += random.nextInt(90_000_000);
            case 1 -> setClock();
            case 2 -> restart();
            case 3 -> handle(PumpKernel.doseByHand(s, m, 1 + cap(), local(), uptime()));
            case 4 -> handle(PumpKernel.prime(s, m, 1 + cap(), random.nextBoolean(), local(), uptime()));
            case 5 -> PumpServiceKernel.waterAdded(s, m, 1 + random.nextInt(5_000_000));
            case 6 -> refill();
            case 7 -> PumpServiceKernel.calibrated(s, m, step());
            case 8 -> pauseOrResume();
            case 9 -> PumpServiceKernel.tubeSeenFull(m);
            case 10, 11, 12 -> edge();
            case 13 -> changeSettings();
            default -> {
                now += random.nextInt(3_000_000);
                handle(PumpKernel.tick(s, m, local(), uptime()));
            }
        }
    }

    /** Asks for all that seems to be allowed, about when an old flow leaves the window. */
    private void edge() {
        if (!flows.isEmpty()) {
            long leaves =
                    flows.get(flows.size() - 1 - random.nextInt(Math.min(8, flows.size()))).trueMillis + 86_400_000;
            now = Math.max(now, leaves + random.nextInt(4000) - 2000);
        }
        handle(PumpKernel.tick(s, m, local(), uptime()));
        long all = Math.max(1, PumpServiceKernel.allowed(s, m));
        handle(PumpKernel.doseByHand(s, m, all, local(), uptime()));
    }

    private int delay() {
        return random.nextBoolean() ? 0 : random.nextInt(30_000);
    }

    private long cap() {
        return (long) (s[PumpSettings.CAP] * random.nextDouble());
    }

    private void setClock() {
        if (clockIsSet) {
            long most = random.nextBoolean() ? 200_000_000L : 7_200_000L;
            wall += (long) ((random.nextDouble() * 2 - 1) * most);
        }
    }

    private void restart() {
        long off = random.nextInt(200_000_000);
        now += off;
        booted = now;
        now += random.nextInt(3000);
        setClock();
        long certain = random.nextBoolean() ? off / 1000 : 0;
        assertEquals(PumpKernel.DONE, PumpKernel.restarted(s, m, local(), uptime(), certain));
    }

    private void refill() {
        long level = (long) (s[PumpSettings.RESERVOIR] * random.nextDouble() * 0.1);
        long change = level - m[PumpMemory.LEVEL];
        if (PumpServiceKernel.refilled(s, m, level) == PumpKernel.DONE) {
            filled += change;
        }
    }

    /** Another schedule and calibration under the same cap, also while a run is thought to be under way. */
    private void changeSettings() {
        if (random.nextBoolean()) {
            long volume = Math.max(1, cap());
            if (PumpKernel.doseByHand(s, m, volume, local(), uptime()) == PumpKernel.RUN) {
                long ran = m[PumpMemory.PENDING] * m[PumpMemory.STEP];
                now += random.nextInt(3_000_000);
                flow(ran, true); // by the old calibration
                book(ran, true);
                now += random.nextInt(3_000_000);
            }
        }
        s[PumpSettings.DAILY] = cap();
        s[PumpSettings.PORTIONS] = 1 + random.nextInt(5);
        assertEquals(PumpKernel.DONE, PumpServiceKernel.settingsChanged(s, m, step(), local(), uptime()));
    }

    private void pauseOrResume() {
        if (random.nextInt(4) == 0) {
            PumpServiceKernel.paused(m);
        } else {
            assertEquals(PumpKernel.DONE, PumpServiceKernel.resumed(s, m, local(), uptime()));
        }
    }

    /** Lets an ordered run flow somewhere between order and report, and reports it in one of many ways. */
    private void handle(int status) {
        if (status != PumpKernel.RUN) {
            return;
        }
        long steps = m[PumpMemory.PENDING];
        boolean intoTank = m[PumpMemory.PURPOSE] != PumpKernel.PRIMING;
        int ending = random.nextInt(6);
        if (lies && random.nextInt(3) > 0) {
            ending = 0;
        }
        long made = ending == 0 && !lies ? (long) (steps * random.nextDouble()) : steps;
        now += delay();
        flow(made * m[PumpMemory.STEP], intoTank);
        now += delay();
        long booked = steps;
        switch (ending) {
            case 0 -> {
                long said = lies ? (long) (steps * random.nextDouble()) : made;
                m[PumpMemory.FLAGS] &= ~PumpKernel.SHORT_RUNS;
                assertEquals(PumpKernel.DONE, report(said));
                booked = (m[PumpMemory.FLAGS] & PumpKernel.SHORT_RUNS) != 0 ? steps : said;
            }
            case 1 -> {
                now += random.nextInt(100_000_000);
                booted = now;
                setClock();
                assertEquals(PumpKernel.DONE, PumpKernel.restarted(s, m, local(), uptime(), 0));
            }
            case 2 -> { // nobody reports
                now += (901 + steps / 1000 + 1) * 1000;
                book(steps * m[PumpMemory.STEP], intoTank);
                handle(PumpKernel.tick(s, m, local(), uptime()));
                return;
            }
            case 3 -> assertEquals(PumpKernel.DONE, PumpKernel.failed(s, m, m[PumpMemory.RUN], local(), uptime()));
            case 4 -> {
                setClock();
                assertEquals(PumpKernel.DONE, report(steps));
            }
            default -> assertEquals(PumpKernel.DONE, report(steps));
        }
        book(booked * m[PumpMemory.STEP], intoTank);
    }

    /** Reports the run under way; now and then a report of an earlier run comes before it, and the same again after it. */
    private int report(long steps) {
        long run = m[PumpMemory.RUN];
        if (run > 1 && random.nextInt(3) == 0) {
            assertEquals(PumpKernel.OTHER_RUN, PumpKernel.dosed(s, m, run - 1, 0, local(), uptime()));
        }
        int status = PumpKernel.dosed(s, m, run, steps, local(), uptime());
        if (random.nextInt(3) == 0) {
            assertEquals(PumpKernel.OTHER_RUN, PumpKernel.dosed(s, m, run, 0, local(), uptime()));
        }
        return status;
    }

    private void flow(long volume, boolean intoTank) {
        if (intoTank) {
            flowed += volume;
            flows.add(new Flow(now, (now + wall) / 86_400_000, volume));
        }
    }

    private void book(long volume, boolean intoTank) {
        if (intoTank) {
            counted += volume;
        } else {
            primed += volume;
        }
    }

    long mostIn24Hours() {
        long most = 0;
        for (Flow end : flows) {
            long sum = flows.stream()
                    .filter(f -> f.trueMillis() <= end.trueMillis() && f.trueMillis() > end.trueMillis() - 86_400_000)
                    .mapToLong(Flow::picolitres)
                    .sum();
            most = Math.max(most, sum);
        }
        return most;
    }

    long mostOnADay() {
        return flows.stream()
                .mapToLong(day -> flows.stream()
                        .filter(f -> f.day() == day.day())
                        .mapToLong(Flow::picolitres)
                        .sum())
                .max()
                .orElse(0);
    }

    @Override
    public String toString() {
        return flows.size() + " flows, most " + mostIn24Hours() + " pL of " + s[PumpSettings.CAP];
    }
}
