package evenwater.examples.rooms;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.HardnessForms;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** The room of water: a balance sheet and what follows from it. */
public final class WaterRoom {

    private WaterRoom() {}

    /**
     * Prints the balance and the hardness of a water, and a blend.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Water tap = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(60, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(10, Ion.MAGNESIUM.milligramPerLitre()))
                .total(Ion.SODIUM, AmountConcentration.of(12, Ion.SODIUM.milligramPerLitre()))
                .total(Ion.CHLORIDE, AmountConcentration.of(25, Ion.CHLORIDE.milligramPerLitre()))
                .alkalinity(Alkalinity.parse("7 °dKH"))
                .build();

        System.out.printf(
                Locale.ROOT, "balance off by %.1f %%%n", tap.ionBalance().percentDifference());
        System.out.println("not measured: " + tap.unmeasuredCharge().toText(Locale.ROOT, 2));
        HardnessForms forms = tap.hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM);
        System.out.println(
                "permanent: " + forms.nonCarbonate().to(Hardness.GERMAN_DEGREE).toText(Locale.ROOT, 2));
        Water blend = tap.mixedWith(Water.pure(), 0.5);
        System.out.println(
                "blend: " + blend.hardness().to(Hardness.GERMAN_DEGREE).toText(Locale.ROOT, 2));
        // end
    }
}
