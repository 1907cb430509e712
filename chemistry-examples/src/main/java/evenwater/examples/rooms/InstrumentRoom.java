package evenwater.examples.rooms;

import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.DissolvedSolidsMeter;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReferenceSolution;
import evenwater.chemistry.instrument.SolutionScaleMeter;
import evenwater.chemistry.instrument.TemperatureCompensation;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.List;
import java.util.Locale;

/** The room of instruments: what a meter and a kit show. */
public final class InstrumentRoom {

    private InstrumentRoom() {}

    /**
     * Prints readings of one water by different instruments.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Conductivity cold = Conductivity.parse("412 µS/cm"); // read at 10 °C by a meter that does not compensate
        Conductivity at25 = ConductivityReading.uncompensated(cold, WaterUnits.parseTemperature("10 °C"))
                .at25Celsius(TemperatureCompensation.ISO_7888);
        System.out.println(at25.toText(Locale.ROOT, 3) + " at 25 °C");

        for (DissolvedSolidsMeter meter : List.of(
                FactorMeter.SCALE_500,
                FactorMeter.SCALE_700,
                SolutionScaleMeter.of(ReferenceSolution.SODIUM_CHLORIDE))) {
            System.out.println(meter.reading(at25).toText(Locale.ROOT, 3) + " by the scale " + meter.scale());
        }
        System.out.println(DropTest.GENERAL_HARDNESS.turningAt(9)); // what nine drops mean
        // end
    }
}
