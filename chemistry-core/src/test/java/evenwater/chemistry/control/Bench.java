package evenwater.chemistry.control;

import static evenwater.chemistry.quantity.WaterUnits.MILLILITRE;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import javax.measure.quantity.Volume;

/** An invented pump: 100 g/L of calcium chloride dihydrate, 1 µL a step, 6 mL a day in two portions, at most 10 mL. */
final class Bench {

    static final LocalDateTime MIDNIGHT = LocalDateTime.of(2031, 3, 4, 0, 0);
    static final StockSolution STOCK = StockSolution.of(
            Compound.CALCIUM_CHLORIDE_DIHYDRATE, MassConcentration.of(100, MassConcentration.GRAM_PER_LITRE));
    static final PumpCalibration MICROLITRE = PumpCalibration.ofSteps(1000, ml(1));

    private Bench() {}

    static WaterQuantity<Volume> ml(double millilitres) {
        return WaterUnits.volume(millilitres, MILLILITRE);
    }

    static DosingPumpBuilder builder() {
        return DosingPump.builder(STOCK, MICROLITRE, ml(10), ml(500))
                .dailyDose(ml(6), LocalTime.of(8, 0), LocalTime.of(20, 0))
                .tube(ml(5));
    }

    static DosingPumpState running(DosingPump pump) {
        return pump.start(MIDNIGHT, Duration.ZERO, ml(400))
                .tubeSeenFull()
                .tick(MIDNIGHT.plusSeconds(2), Duration.ofSeconds(2))
                .state();
    }

    static DosingPumpState running() {
        return running(builder().build());
    }

    static PumpAnswer tick(DosingPumpState state, double hours) {
        return state.tick(at(hours), up(hours));
    }

    static LocalDateTime at(double hours) {
        return MIDNIGHT.plus(up(hours));
    }

    static Duration up(double hours) {
        return Duration.ofSeconds(Math.round(hours * 3600));
    }
}
