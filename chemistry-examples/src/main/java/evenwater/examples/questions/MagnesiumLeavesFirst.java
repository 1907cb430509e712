package evenwater.examples.questions;

import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.ServiceRun;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** What leaves a new bed of resin as it is used up: magnesium before calcium, and more of it than came in. */
public final class MagnesiumLeavesFirst {

    private MagnesiumLeavesFirst() {}

    /**
     * Prints calcium and magnesium behind a bed over throughput.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water tap = Water.builder()
                .total(Ion.CALCIUM, Ion.CALCIUM.parseConcentration("60 mg/L Ca"))
                .total(Ion.MAGNESIUM, Ion.MAGNESIUM.parseConcentration("15 mg/L Mg"))
                .total(Ion.SODIUM, Ion.SODIUM.parseConcentration("20 mg/L Na"))
                .build();
        // snippet
        ResinBed bed = ResinBed.of(Resin.gel(), WaterUnits.parseVolume("10 L")); // new, all sodium
        ServiceRun run = bed.serviceFor(tap, bed.flow(8), WaterUnits.parseVolume("7200 L"));

        for (int litres = 4200; litres <= 7200; litres += 600) {
            Water behind = run.waterAt(WaterUnits.volume(litres, WaterUnits.LITRE));
            System.out.printf(
                    Locale.ROOT,
                    "%d L: %3.0f %% of the calcium of the tap, %3.0f %% of its magnesium%n",
                    litres,
                    100 * behind.total(Ion.CALCIUM).ratioTo(tap.total(Ion.CALCIUM)),
                    100 * behind.total(Ion.MAGNESIUM).ratioTo(tap.total(Ion.MAGNESIUM)));
        }
        // end
    }
}
