package evenwater.examples.questions;

import evenwater.chemistry.aquarium.SteadyState;
import evenwater.chemistry.aquarium.Tank;
import evenwater.chemistry.aquarium.TankVolume;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** What does topping off with softened water do over weeks? */
public final class SodiumOfATank {

    private SodiumOfATank() {}

    /**
     * Prints the sodium of a tank over weeks.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water tap = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(104, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(28, Ion.MAGNESIUM.milligramPerLitre()))
                .total(Ion.SODIUM, AmountConcentration.of(8, Ion.SODIUM.milligramPerLitre()))
                .alkalinity(Alkalinity.of(14.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();
        // snippet
        Tank tank = Tank.builder(TankVolume.estimatedFrom(WaterUnits.parseVolume("240 L")), tap)
                .changing(0.25, WaterUnits.time(7, WaterUnits.DAY), tap)
                .evaporatingToppedOffWith(
                        FlowRate.of(1.5, FlowRate.LITRE_PER_DAY),
                        Softener.withSodium().treat(tap))
                .build();

        for (int weeks : new int[] {0, 4, 12}) {
            System.out.println(weeks + " weeks: " + sodium(tank.afterWeeks(weeks)));
        }
        SteadyState end = tank.steadyState();
        System.out.println("in the end " + sodium(end.afterChange()) + " to " + sodium(end.beforeChange()) + " of "
                + tank.volume().net().toText(Locale.ROOT, 3));
        // end
    }

    private static String sodium(Water water) {
        return water.total(Ion.SODIUM).to(Ion.SODIUM.milligramPerLitre()).toText(Locale.ROOT, 3);
    }
}
