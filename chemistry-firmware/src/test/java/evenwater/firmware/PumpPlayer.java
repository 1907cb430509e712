package evenwater.firmware;

import evenwater.chemistry.kernel.PumpKernel;
import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpServiceKernel;
import evenwater.chemistry.kernel.PumpSettings;
import evenwater.chemistry.kernel.SavedNumbers;
import java.util.Arrays;
import java.util.Random;

/** A random life of a dosing pump: clocks that are set, losses of power, reports that come late, twice or wrong, people who dose and prime. */
final class PumpPlayer {

    private static final long MICROLITRE = 1_000_000;
    private static final long DAY = 86_400;

    private final Random random;
    private final Replay replay;
    private final long[] s = new long[PumpSettings.LENGTH];
    private final long[] m = new long[PumpMemory.LENGTH];
    private long local = 20_000 * DAY + 1234;
    private long uptime = 77;
    private boolean isShort; // a pump that always seems to make no step

    PumpPlayer(long seed, Replay replay) {
        this.random = new Random(seed);
        this.replay = replay;
    }

    void live(int events) {
        play(59);
        isShort = random.nextInt(5) == 0;
        settings();
        play(41, local, uptime, step(), s[PumpSettings.RESERVOIR] / 2, 0);
        play(51);
        for (int i = 0; i < events; i++) {
            event();
        }
    }

    private void settings() {
        long cap = (1 + random.nextInt(50)) * 1000 * MICROLITRE;
        int portions = random.nextInt(25);
        set(PumpSettings.CAP, cap);
        set(PumpSettings.DAILY, portions == 0 ? 0 : random.nextLong(cap));
        set(PumpSettings.PORTIONS, portions);
        set(PumpSettings.PER_LITRE, random.nextLong(5000 * MICROLITRE));
        set(PumpSettings.CATCH_UP, random.nextInt(25));
        set(PumpSettings.GRACE, 60 + random.nextInt(40_000));
        set(PumpSettings.RESERVOIR, 2_000_000 * MICROLITRE);
        set(PumpSettings.UNUSABLE, random.nextLong(100_000 * MICROLITRE));
        set(PumpSettings.TUBE, random.nextLong(9000 * MICROLITRE));
        set(PumpSettings.LOW_DAYS, random.nextInt(367));
        set(PumpSettings.DRIFT_PER_MILLE, 1 + random.nextInt(1000));
        set(PumpSettings.CONFIRM_WITHIN, 1 + random.nextInt(5000));
        set(PumpSettings.MILLISECONDS_PER_STEP, random.nextInt(1001));
        for (int i = 0; i < PumpSettings.MOST_PORTIONS; i++) {
            set(PumpSettings.TIMES + i, i < portions ? i * (DAY / portions) + random.nextInt(3000) : 0);
        }
    }

    private void set(int place, long value) {
        play(40, place, value);
    }

    private long step() {
        return 1 + (long) Math.exp(random.nextDouble() * Math.log(5e7));
    }

    private void event() {
        switch (random.nextInt(30)) {
            case 0 -> local += random.nextLong(400_000) - 200_000;
            case 1 -> restart();
            case 2 -> play(44, 1 + random.nextLong(s[PumpSettings.CAP]), local, uptime);
            case 3 -> play(45, 1 + random.nextLong(1 + s[PumpSettings.TUBE]), random.nextInt(2), local, uptime);
            case 4 -> play(48, random.nextInt(5_000_000));
            case 5 -> play(49, random.nextLong(s[PumpSettings.RESERVOIR] + 2));
            case 6 -> play(50, step());
            case 7 -> play(51);
            case 8 -> play(random.nextInt(4) > 0 ? 51 : 52);
            case 9 -> play(random.nextInt(4) > 0 ? 54 : 53, local, uptime);
            case 10 -> play(55, random.nextInt(1000), local, uptime);
            case 11 -> play(56, random.nextLong());
            case 12 -> play(58, random.nextInt(PumpMemory.LENGTH + 3), change(), random.nextInt(2), length());
            case 13 -> rarely();
            case 14 -> play(46, random.nextInt(50), random.nextInt(1000), local, uptime);
            default -> tick();
        }
    }

    private void restart() {
        local += random.nextInt(100_000);
        uptime = random.nextInt(20);
        if (random.nextInt(4) > 0) { // else nobody tells
            play(42, local, uptime, random.nextInt(50_000));
        }
    }

    private void rarely() {
        switch (random.nextInt(12)) {
            case 8, 9 -> play(41 + random.nextInt(17), anything(), anything(), anything(), anything(), anything());
            case 10 -> play(55, m[PumpMemory.LEVEL] / m[PumpMemory.STEP] + 3, local, uptime); // more than is in it
            case 11 -> play(54, local, uptime);
            case 0 -> play(47, m[PumpMemory.RUN] + random.nextInt(2), local, uptime);
            case 1 -> play(43, random.nextLong(), uptime);
            case 2 -> play(43, local, random.nextLong());
            case 3 -> {
                set(random.nextInt(PumpSettings.TIMES), random.nextInt(100));
                play(57, step(), local, uptime);
                settings();
                play(57, step(), local, uptime);
            }
            case 4 -> play(44, random.nextLong(), local, uptime);
            case 5 -> play(46, random.nextLong(), random.nextLong(), local, uptime);
            case 6 -> local += 40 * DAY;
            default -> play(50, random.nextLong());
        }
    }

    private long anything() {
        return random.nextLong() >> random.nextInt(64);
    }

    private void tick() {
        long seconds = random.nextInt(7000);
        local += seconds;
        uptime += seconds;
        int status = play(43, local, uptime);
        if (status == PumpKernel.RUN && random.nextInt(10) > 0) {
            long steps = m[PumpMemory.PENDING];
            long made = isShort ? 0 : random.nextInt(5) == 0 ? random.nextLong(steps + 3) : steps;
            play(46, m[PumpMemory.RUN], made, local, uptime);
        }
    }

    private long change() {
        return random.nextInt(3) > 0 ? 0 : random.nextLong();
    }

    private long length() {
        return PumpMemory.LENGTH + SavedNumbers.OVERHEAD - (random.nextInt(10) == 0 ? 1 : 0);
    }

    private int play(long... event) {
        int status = event(event);
        replay.add(event, answer(status));
        return status;
    }

    private int event(long[] e) {
        switch ((int) e[0]) {
            case 40 -> s[(int) e[1]] = e[2];
            case 51 -> PumpServiceKernel.tubeSeenFull(m);
            case 52 -> PumpServiceKernel.tubeDrained(m);
            case 53 -> PumpServiceKernel.paused(m);
            case 56 -> PumpServiceKernel.acknowledged(m, e[1]);
            case 59 -> {
                Arrays.fill(s, 0);
                Arrays.fill(m, 0);
            }
            default -> {
                return answered(e);
            }
        }
        return 0;
    }

    private int answered(long[] e) {
        return switch ((int) e[0]) {
            case 41 -> PumpKernel.start(s, m, e[1], e[2], e[3], e[4], e[5]);
            case 42 -> PumpKernel.restarted(s, m, e[1], e[2], e[3]);
            case 43 -> PumpKernel.tick(s, m, e[1], e[2]);
            case 44 -> PumpKernel.doseByHand(s, m, e[1], e[2], e[3]);
            case 45 -> PumpKernel.prime(s, m, e[1], e[2] != 0, e[3], e[4]);
            case 46 -> PumpKernel.dosed(s, m, e[1], e[2], e[3], e[4]);
            case 47 -> PumpKernel.failed(s, m, e[1], e[2], e[3]);
            case 48 -> PumpServiceKernel.waterAdded(s, m, e[1]);
            case 49 -> PumpServiceKernel.refilled(s, m, e[1]);
            case 50 -> PumpServiceKernel.calibrated(s, m, e[1]);
            case 54 -> PumpServiceKernel.resumed(s, m, e[1], e[2]);
            case 55 -> PumpServiceKernel.dosedUnordered(s, m, e[1], e[2], e[3]);
            case 57 -> PumpServiceKernel.settingsChanged(s, m, e[1], e[2], e[3]);
            default -> saved(e);
        };
    }

    private int saved(long[] e) {
        long[] block = new long[PumpMemory.LENGTH + SavedNumbers.OVERHEAD];
        long print = SavedNumbers.checksum(s, s.length);
        int written = SavedNumbers.write(PumpMemory.VERSION, print, m, block);
        block[(int) e[1]] ^= e[2];
        int read = SavedNumbers.read(PumpMemory.VERSION, print + e[3], Arrays.copyOf(block, (int) e[4]), m);
        return 100 * written + read;
    }

    private long[] answer(int status) {
        long[] all = new long[m.length + 7];
        all[0] = status;
        System.arraycopy(m, 0, all, 1, m.length);
        int place = m.length + 1;
        all[place++] = PumpServiceKernel.allowed(s, m);
        all[place++] = PumpServiceKernel.usable(s, m);
        all[place++] = PumpServiceKernel.dailyUse(s, m);
        all[place++] = PumpServiceKernel.isLow(s, m) ? 1 : 0;
        all[place++] = PumpSettings.areUsable(s) ? 1 : 0;
        all[place] = PumpMemory.isUsable(m) ? 1 : 0;
        return all;
    }
}
