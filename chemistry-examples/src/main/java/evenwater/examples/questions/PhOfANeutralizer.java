package evenwater.examples.questions;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Neutralizer;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** What becomes of acid well water behind a neutralizer and a softener, and why the pH must be read at the tap. */
public final class PhOfANeutralizer {

    private PhOfANeutralizer() {}

    /**
     * Prints pH and sodium for two readings of the same well.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Train house = Train.of(Neutralizer.withCalcite(), Softener.withSodium());
        for (double pH : new double[] {5.9, 6.6}) { // at the tap, and from a bottle that has lost its CO₂
            Water well = Water.builder()
                    .total(Ion.CALCIUM, AmountConcentration.of(8, Ion.CALCIUM.milligramPerLitre()))
                    .total(Ion.MAGNESIUM, AmountConcentration.of(2, Ion.MAGNESIUM.milligramPerLitre()))
                    .total(Ion.SODIUM, AmountConcentration.of(6, Ion.SODIUM.milligramPerLitre()))
                    .alkalinity(Alkalinity.of(20, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE))
                    .temperature(WaterUnits.temperature(11, WaterUnits.CELSIUS))
                    .measuredPH(pH)
                    .build();
            Water soft = house.treat(well);
            System.out.printf(
                    Locale.ROOT,
                    "well pH %.1f: pH %.1f, %s, %s%n",
                    pH,
                    Speciation.of(soft).pH(),
                    soft.alkalinity()
                            .to(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)
                            .toText(Locale.ROOT, 2),
                    soft.total(Ion.SODIUM).to(Ion.SODIUM.milligramPerLitre()).toText(Locale.ROOT, 2));
        }
        // end
    }
}
