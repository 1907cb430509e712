package evenwater.examples.rooms;

import evenwater.chemistry.aquarium.ChangeOver;
import evenwater.chemistry.aquarium.ChangeOverLimits;
import evenwater.chemistry.aquarium.ChangeOverPlan;
import evenwater.chemistry.aquarium.TankVolume;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** The room of aquariums: a tank that is led to softer water. */
public final class AquariumRoom {

    private AquariumRoom() {}

    /**
     * Prints the partial changes of a plan.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water hard = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(70, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(12, Ion.MAGNESIUM.milligramPerLitre()))
                .alkalinity(Alkalinity.parse("8 °dKH"))
                .build();
        Water soft = hard.mixedWith(Water.pure(), 0.4);
        // snippet
        TankVolume volume = TankVolume.estimatedFrom(WaterUnits.parseVolume("120 L"));
        ChangeOverPlan plan = ChangeOver.of(volume, hard, soft)
                .within(ChangeOverLimits.sensitive())
                .until(0.2) // of the way may be left
                .plan();

        System.out.println(volume.net().toText(Locale.ROOT, 3) + " net, doses by the label are too strong by "
                + Math.round(100 * volume.overdose()) + " %");
        plan.steps()
                .forEach(step -> System.out.printf(
                        Locale.ROOT,
                        "day %d: %.0f %%, GH %.1f °dH%n",
                        step.day(),
                        100 * step.fraction(),
                        step.after().hardness().in(Hardness.GERMAN_DEGREE)));
        // end
    }
}
