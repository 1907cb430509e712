package evenwater.chemistry.control;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.function.ToIntFunction;

/** How an event of the kernel makes the next state of a pump out of one that stays as it is. */
final class PumpEvents {

    private PumpEvents() {}

    /** An event that reads the clocks. */
    interface Timed {
        int apply(long[] settings, long[] memory, long local, long uptime);
    }

    static PumpAnswer at(LocalDateTime now, Duration uptime, DosingPump pump, long[] memory, Timed event) {
        long local = PumpUnits.local(now);
        long seconds = PumpUnits.uptime(uptime);
        return any(pump, memory, m -> event.apply(pump.settings(), m, local, seconds));
    }

    static PumpAnswer any(DosingPump pump, long[] memory, ToIntFunction<long[]> event) {
        long[] m = memory.clone();
        PumpStatus status = PumpStatus.of(event.applyAsInt(m));
        return new PumpAnswer(status, new DosingPumpState(pump, m));
    }
}
