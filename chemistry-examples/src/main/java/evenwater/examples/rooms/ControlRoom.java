package evenwater.examples.rooms;

import evenwater.chemistry.control.DosingPump;
import evenwater.chemistry.control.DosingPumpState;
import evenwater.chemistry.control.PumpAnswer;
import evenwater.chemistry.control.PumpCalibration;
import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;

/** The room of control: a dosing pump under its daily cap. */
public final class ControlRoom {

    private ControlRoom() {}

    /**
     * Prints what a pump is told to do, and what it refuses.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        StockSolution stock = StockSolution.of(Compound.POTASSIUM_BICARBONATE, MassConcentration.parse("50 g/L"));
        DosingPump pump = DosingPump.builder(
                        stock,
                        PumpCalibration.ofSteps(20_000, WaterUnits.parseVolume("100 mL")),
                        WaterUnits.parseVolume("30 mL"), // cap of any 24 hours
                        WaterUnits.parseVolume("1 L")) // reservoir
                .dailyDose(WaterUnits.parseVolume("20 mL"), LocalTime.of(9, 0), LocalTime.of(21, 0))
                .build();
        LocalDateTime start = LocalDateTime.of(2026, 5, 4, 8, 0);
        DosingPumpState state = pump.start(start, Duration.ZERO, WaterUnits.parseVolume("1 L"));

        PumpAnswer atNine = state.tubeSeenFull().tick(start.plusMinutes(61), Duration.ofMinutes(61));
        System.out.println(atNine.status() + ", " + atNine.state().stepsToRun() + " steps");
        PumpAnswer byHand = atNine.state()
                .dosed(
                        atNine.state().runNumber(),
                        atNine.state().stepsToRun(),
                        start.plusMinutes(62),
                        Duration.ofMinutes(62))
                .state()
                .doseByHand(WaterUnits.parseVolume("25 mL"), start.plusMinutes(63), Duration.ofMinutes(63));
        System.out.println(byHand.status() + ": " + byHand.words());
        // end
    }
}
