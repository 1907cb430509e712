package evenwater.examples.questions;

import evenwater.chemistry.control.SoftenerSettings;
import evenwater.chemistry.control.SoftenerState;
import evenwater.chemistry.quantity.WaterUnits;
import java.time.LocalDateTime;

/** When the valve of a softener is to regenerate, from the readings of its meter. */
public final class NextRegeneration {

    private NextRegeneration() {}

    /**
     * Prints what a controller decides over some invented days.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        SoftenerSettings settings = SoftenerSettings.builder(
                        WaterUnits.parseVolume("0.1 L"), // of one pulse
                        WaterUnits.parseVolume("2400 L")) // between two regenerations, as the plan says
                .counterBits(16)
                .build();
        LocalDateTime start = LocalDateTime.of(2026, 5, 4, 6, 0);
        SoftenerState state = SoftenerState.regenerated(settings, 60_000, start);

        int pulses = 0;
        for (int hour = 1; !state.decision().isToStart(); hour++) {
            pulses += hour % 24 < 16 ? 350 : 0; // nobody draws water at night
            state = state.read((60_000 + pulses) % 65_536, start.plusHours(hour)); // the counter rolls over
        }
        System.out.println(state.time() + ": " + state.decision());
        System.out.println(state.left() + " left; saved as " + state.save().length + " numbers");
        // end
    }
}
