package evenwater.chemistry.control;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.volume;

import java.time.LocalDateTime;

/** An invented household: pulses of 1 L, a counter of 16 bits that stands at 65 500 at the start, 1000 L of capacity. */
final class Household {

    static final LocalDateTime NOON = LocalDateTime.of(2026, 3, 10, 12, 0);
    static final SoftenerSettings SETTINGS = SoftenerSettings.builder(volume(1, LITRE), volume(1000, LITRE))
            .counterBits(16)
            .build();

    private Household() {}

    /** Takes readings each hour. */
    static SoftenerState hours(SoftenerState state, int hours, int pulsesEach) {
        SoftenerState next = state;
        for (int i = 0; i < hours; i++) {
            long reading = 65_500 + Math.round(next.total().total().in(LITRE)) + pulsesEach;
            next = next.read(reading % 65_536, next.time().plusHours(1));
        }
        return next;
    }
}
