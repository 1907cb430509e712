package evenwater.chemistry.control;

import static evenwater.chemistry.control.Bench.ml;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PumpCalibrationTest {

    /** 47.3 mL in 60 s: 788 333.33 pL a millisecond. */
    @Test
    void aTimedRunGivesTheVolumeOfAMillisecond() {
        PumpCalibration timed = PumpCalibration.ofTime(Duration.ofSeconds(60), ml(47.3));
        assertTrue(timed.isTimed());
        assertEquals(788_333, timed.picolitresPerStep());
        assertEquals(ml(0.000788333), timed.volumePerStep());
        assertEquals(2.8379988, timed.flowRate().orElseThrow().in(FlowRate.LITRE_PER_HOUR), 1e-12);
        assertEquals("0.788333 mL a second", timed.toString());
    }

    @Test
    void aCountedRunGivesTheVolumeOfAStep() {
        PumpCalibration counted = PumpCalibration.ofSteps(40_000, ml(12));
        assertFalse(counted.isTimed());
        assertEquals(ml(0.0003), counted.volumePerStep());
        assertEquals(Optional.empty(), counted.flowRate());
        assertEquals("0.0003 mL a step", counted.toString());
        assertEquals(PumpCalibration.ofSteps(20_000, ml(6)), counted);
        assertEquals(PumpCalibration.ofSteps(20_000, ml(6)).hashCode(), counted.hashCode());
        assertNotEquals(PumpCalibration.ofTime(Duration.ofSeconds(40), ml(12)), counted);
    }

    @Test
    void nonsenseIsRefused() {
        Refused.argument(
                "steps of a measured run must be from 1 to 1e12, but were 0", () -> PumpCalibration.ofSteps(0, ml(1)));
        Refused.argument(
                "a step must move from 1e-9 mL to 10 mL, but 22 mL in 2 steps was measured",
                () -> PumpCalibration.ofSteps(2, ml(22)));
        Refused.argument(
                "a millisecond must move from 1e-9 mL to 10 mL, but 0 mL in 1 s was measured",
                () -> PumpCalibration.ofTime(Duration.ofSeconds(1), ml(0)));
        Refused.argument(
                "time of a measured run must be from 1 ms to 1e12 ms, but was -1 s",
                () -> PumpCalibration.ofTime(Duration.ofSeconds(-1), ml(1)));
        Refused.argument(
                "time of a measured run must be from 1 ms to 1e12 ms, but was 0.000999 s",
                () -> PumpCalibration.ofTime(Duration.ofNanos(999_000), ml(1)));
        Refused.asNull("time", () -> PumpCalibration.ofTime(null, ml(1)));
    }
}
