package evenwater.firmware;

import evenwater.chemistry.kernel.UseLearning;
import evenwater.chemistry.kernel.ValveCount;
import evenwater.chemistry.kernel.ValveEvents;
import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveRule;
import evenwater.chemistry.kernel.ValveSave;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveSettings;
import evenwater.chemistry.kernel.ValveState;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A random life of a softener's valve, sane at most times: readings that go on, and all that can go wrong with them. */
final class ValvePlayer {

    private static final ValveSetting[] SETTINGS = ValveSetting.values();

    private static final int SETTING_OF_PULSE = Arrays.asList(SETTINGS).indexOf(ValveSetting.PULSE_NANOLITRES);
    private static final int SETTING_OF_FLOW =
            Arrays.asList(SETTINGS).indexOf(ValveSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND);

    private final Random random;
    private final Replay replay;
    private ValveSettings settings = new ValveSettings();
    private ValveState state = new ValveState();
    private final ValveState before = new ValveState();
    private long clock = 1_700_000_000;
    private long reading;
    private boolean isCalm;
    private double use = 1;

    ValvePlayer(long seed, Replay replay) {
        this.random = new Random(seed);
        this.replay = replay;
    }

    void live(int events) {
        play(0);
        play(13);
        for (int i = 0; i < random.nextInt(12); i++) {
            putSomething();
        }
        for (int code = 3; code <= 12; code++) {
            play(code, reading, clock, 0, ValveSave.LENGTH); // before it has begun
        }
        play(2, reading, clock, random.nextLong(settings.value(ValveSetting.CAPACITY_NANOLITRES) + 1));
        isCalm = random.nextBoolean();
        for (int i = 0; i < events; i++) {
            event();
        }
        runOver();
    }

    /** Decades at the largest flow, until the totals are full. */
    private void runOver() {
        play(0);
        play(1, SETTING_OF_PULSE, ValveSetting.PULSE_NANOLITRES.most());
        play(1, SETTING_OF_FLOW, ValveSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND.most());
        clock = 1_700_000_000;
        reading = 0;
        play(2, reading, clock, 5);
        for (int i = 0; i < 6; i++) {
            clock += 80_000_000;
            reading += 790_000;
            play(4, reading, clock);
        }
    }

    private void putSomething() {
        int place = random.nextInt(SETTINGS.length + 1) - random.nextInt(2);
        if (place < 0 || place >= SETTINGS.length) {
            return;
        }
        ValveSetting setting = SETTINGS[place];
        long value = switch (random.nextInt(4)) {
            case 0 -> setting.least() - random.nextInt(2);
            case 1 -> setting.most() + random.nextInt(2);
            default -> setting.usual() / 2 + (long) (random.nextDouble() * setting.usual());
        };
        play(1, place, value);
    }

    private void event() {
        switch (random.nextInt(isCalm ? 1000 : 40)) {
            case 0 -> play(5);
            case 1 -> play(6, 1 + random.nextLong(2 * settings.value(ValveSetting.CAPACITY_NANOLITRES)));
            case 2 -> play(7, random.nextInt(2));
            case 3 -> play(8);
            case 4 -> play(9, random.nextInt(2));
            case 5 -> play(10, random.nextInt(2));
            case 6 -> play(11, reading);
            case 7 -> play(12, random.nextInt(ValveSave.LENGTH), change(), random.nextInt(2), length());
            case 8 -> clock += random.nextLong(200_000) - 100_000;
            case 9 -> play(4, reading, clock += random.nextLong(400_000));
            case 10 -> play(3, random.nextLong(), clock);
            case 11 -> play(3, random.nextLong(turn()), clock + random.nextInt(1000));
            case 12 -> play(3, reading, random.nextLong());
            case 13 -> rarely();
            case 14, 15 -> regenerate();
            default -> step();
        }
    }

    private void rarely() {
        switch (random.nextInt(6)) {
            case 0 -> putSomething();
            case 1 -> play(2, reading, clock, random.nextLong());
            case 2 -> play(6, random.nextLong());
            case 3 -> reading = random.nextLong(turn());
            case 4 -> clock += random.nextLong(2_000L * 86_400);
            default -> play(11, random.nextLong());
        }
    }

    private void regenerate() {
        play(5);
        clock += random.nextInt(4000);
        play(3, reading, clock);
        play(6, settings.value(ValveSetting.CAPACITY_NANOLITRES));
    }

    private void step() {
        long seconds = random.nextInt(20_000);
        if (random.nextInt(60) == 0) {
            use = List.of(1.0, 1.0, 0.05, 0.0, 9.0).get(random.nextInt(5));
        }
        long most = settings.value(ValveSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND)
                / settings.value(ValveSetting.PULSE_NANOLITRES)
                * seconds;
        clock += seconds;
        reading = (reading + (long) (Math.min(1, use * random.nextDouble() / 10) * most)) & (turn() - 1);
        play(3, reading, clock);
    }

    private long turn() {
        return 1L << settings.value(ValveSetting.COUNTER_BITS);
    }

    private long change() {
        return random.nextInt(3) > 0 ? 0 : random.nextLong();
    }

    private long length() {
        return ValveSave.LENGTH - (random.nextInt(10) == 0 ? 1 : 0);
    }

    private void play(long... event) {
        before.copyFrom(state);
        int status = event(event);
        replay.add(event, answer(status));
    }

    private int event(long[] e) {
        return switch ((int) e[0]) {
            case 0 -> {
                settings = new ValveSettings();
                state = new ValveState();
                before.copyFrom(state);
                yield 0;
            }
            case 1 -> settings.put(SETTINGS[(int) e[1]], e[2]);
            case 2 -> ValveKernel.begin(settings, state, e[1], e[2], e[3]);
            case 3 -> ValveKernel.step(settings, state, e[1], e[2]);
            case 4 -> ValveKernel.restart(settings, state, e[1], e[2]);
            case 5 -> ValveEvents.started(settings, state);
            case 6 -> ValveEvents.finished(settings, state, e[1]);
            case 7 -> ValveEvents.failed(state, e[1] != 0);
            case 8 -> ValveEvents.failuresAcknowledged(state);
            case 9 -> ValveEvents.salt(state, e[1] != 0);
            case 10 -> ValveEvents.holiday(state, e[1] != 0);
            case 11 -> ValveEvents.meterExchanged(settings, state, e[1]);
            case 12 -> saved(e);
            default -> {
                state = new ValveState();
                yield 0;
            }
        };
    }

    private int saved(long[] e) {
        long[] save = new long[ValveSave.LENGTH];
        int written = ValveSave.write(settings, state, save);
        save[(int) e[1]] ^= e[2];
        long[] read = Arrays.copyOf(save, (int) e[4]);
        int status = e[3] != 0
                ? ValveSave.readUnderNewSettings(settings, state, read)
                : ValveSave.read(settings, state, read);
        return 100 * written + status;
    }

    private long[] answer(int status) {
        long[] save = new long[ValveSave.LENGTH];
        long[] all = new long[ValveSave.LENGTH + ValveCount.values().length + SETTINGS.length + 11];
        all[0] = status;
        all[1] = ValveSave.write(settings, state, save);
        System.arraycopy(save, 0, all, 2, save.length);
        int place = 2 + save.length;
        all[place++] = ValveRule.due(settings, state);
        all[place++] = ValveRule.reason(settings, state);
        all[place++] = ValveRule.hold(settings, state);
        all[place++] = ValveRule.isToStart(settings, state) ? 1 : 0;
        all[place++] = UseLearning.reserveNanolitres(settings, state);
        for (ValveCount count : ValveCount.values()) {
            all[place++] = state.count(count);
        }
        all[place++] = Double.doubleToRawLongBits(state.meanNanolitresPerDay());
        all[place++] = Double.doubleToRawLongBits(state.deviationNanolitresPerDay());
        for (ValveSetting setting : SETTINGS) {
            all[place++] = settings.value(setting);
        }
        all[place++] = settings.fingerprint();
        all[place] = state.isSameAs(before) ? 1 : 0;
        return all;
    }
}
