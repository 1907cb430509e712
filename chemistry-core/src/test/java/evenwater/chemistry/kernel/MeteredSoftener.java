package evenwater.chemistry.kernel;

/** A softener of an invented household for tests: settings and state that go together. */
final class MeteredSoftener {

    static final long LITRE = 1_000_000_000L;
    static final long HOUR = 3600;
    static final long DAY = 24 * HOUR;
    /** Noon of an invented day: 2026-03-10T12:00. */
    static final long NOON = 20_522 * DAY + 12 * HOUR;

    final ValveSettings settings = new ValveSettings();
    final ValveState state = new ValveState();

    /** Pulses of 1 L, a counter of 16 bits, 1000 L of capacity, and the usual values. */
    MeteredSoftener() {
        with(ValveSetting.PULSE_NANOLITRES, LITRE);
        with(ValveSetting.COUNTER_BITS, 16);
        with(ValveSetting.CAPACITY_NANOLITRES, 1000 * LITRE);
    }

    MeteredSoftener with(ValveSetting setting, long value) {
        if (settings.put(setting, value) != ValveKernel.OK) {
            throw new IllegalArgumentException(setting + " " + value);
        }
        return this;
    }

    MeteredSoftener begun(long reading) {
        return begun(reading, NOON);
    }

    MeteredSoftener begun(long reading, long clock) {
        int status =
                ValveKernel.begin(settings, state, reading, clock, settings.value(ValveSetting.CAPACITY_NANOLITRES));
        if (status != ValveKernel.OK) {
            throw new IllegalArgumentException("begin: " + status);
        }
        return this;
    }

    int step(long reading, long clock) {
        return ValveKernel.step(settings, state, reading, clock);
    }

    int restart(long reading, long clock) {
        return ValveKernel.restart(settings, state, reading, clock);
    }

    /** Takes readings each hour, as many pulses in each, and answers all that was noticed. */
    int steps(int hours, long pulsesAnHour) {
        int notices = 0;
        for (int i = 0; i < hours; i++) {
            notices |= step((count(ValveCount.READING) + pulsesAnHour) % 65536, clock() + HOUR);
        }
        return notices;
    }

    long clock() {
        return count(ValveCount.CLOCK);
    }

    long count(ValveCount count) {
        return state.count(count);
    }

    long litres(ValveCount count) {
        return state.count(count) / LITRE;
    }

    long reserve() {
        return UseLearning.reserveNanolitres(settings, state);
    }

    /** Due, reason and hold as the rule says. */
    String decision() {
        return ValveRule.due(settings, state) + " " + ValveRule.reason(settings, state) + " "
                + ValveRule.hold(settings, state);
    }

    boolean isToStart() {
        return ValveRule.isToStart(settings, state);
    }

    ValveState copy() {
        ValveState copy = new ValveState();
        copy.copyFrom(state);
        return copy;
    }
}
