package evenwater.chemistry.kernel;

/** A softener of an invented household for tests: settings and state that go together. */
final class MeteredSoftener {

    static final long LITRE = 1_000_000_000L;
    static final long HOUR = 3600;
    static final long DAY = 24 * HOUR;
    /** Noon of an invented day: 2026-03-10T12:00. */
    static final long NOON = 20_522 * DAY + 12 * HOUR;

    final RegenerationSettings settings = new RegenerationSettings();
    final RegenerationState state = new RegenerationState();

    /** Pulses of 1 L, a counter of 16 bits, 1000 L of capacity, and the usual values. */
    MeteredSoftener() {
        with(RegenerationSetting.PULSE_NANOLITRES, LITRE);
        with(RegenerationSetting.COUNTER_BITS, 16);
        with(RegenerationSetting.CAPACITY_NANOLITRES, 1000 * LITRE);
    }

    MeteredSoftener with(RegenerationSetting setting, long value) {
        if (settings.put(setting, value) != RegenerationKernel.OK) {
            throw new IllegalArgumentException(setting + " " + value);
        }
        return this;
    }

    MeteredSoftener begun(long reading) {
        return begun(reading, NOON);
    }

    MeteredSoftener begun(long reading, long clock) {
        int status = RegenerationKernel.begin(
                settings, state, reading, clock, settings.value(RegenerationSetting.CAPACITY_NANOLITRES));
        if (status != RegenerationKernel.OK) {
            throw new IllegalArgumentException("begin: " + status);
        }
        return this;
    }

    int step(long reading, long clock) {
        return RegenerationKernel.step(settings, state, reading, clock);
    }

    int restart(long reading, long clock) {
        return RegenerationKernel.restart(settings, state, reading, clock);
    }

    /** Takes readings each hour, as many pulses in each, and answers all that was noticed. */
    int steps(int hours, long pulsesAnHour) {
        int notices = 0;
        for (int i = 0; i < hours; i++) {
            notices |= step((count(RegenerationCount.READING) + pulsesAnHour) % 65536, clock() + HOUR);
        }
        return notices;
    }

    long clock() {
        return count(RegenerationCount.CLOCK);
    }

    long count(RegenerationCount count) {
        return state.count(count);
    }

    long litres(RegenerationCount count) {
        return state.count(count) / LITRE;
    }

    long reserve() {
        return UseLearning.reserveNanolitres(settings, state);
    }

    /** Due, reason and hold as the rule says. */
    String decision() {
        return RegenerationRule.due(settings, state) + " " + RegenerationRule.reason(settings, state) + " "
                + RegenerationRule.hold(settings, state);
    }

    boolean isToStart() {
        return RegenerationRule.isToStart(settings, state);
    }

    RegenerationState copy() {
        RegenerationState copy = new RegenerationState();
        copy.copyFrom(state);
        return copy;
    }
}
