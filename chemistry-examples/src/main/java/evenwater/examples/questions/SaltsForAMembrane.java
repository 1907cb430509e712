package evenwater.examples.questions;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.volume;
import static evenwater.chemistry.substance.Compound.CALCIUM_CHLORIDE_DIHYDRATE;
import static evenwater.chemistry.substance.Compound.POTASSIUM_BICARBONATE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** What comes out of the membrane behind the softener, and what must be put back? */
public final class SaltsForAMembrane {

    private SaltsForAMembrane() {}

    /**
     * Prints hardness and alkalinity behind every stage, and the grams to weigh.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water source = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(104, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(28, Ion.MAGNESIUM.milligramPerLitre()))
                .alkalinity(Alkalinity.of(14.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();
        // snippet
        Ledger ledger = Train.of(
                        Softener.withSodium(),
                        ReverseOsmosis.rejecting(0.95, 0.98), // of single- and of multiple-charged ions
                        Dosing.raisingHardness(CALCIUM_CHLORIDE_DIHYDRATE, Hardness.parse("4 °dH"), volume(60, LITRE)),
                        Dosing.raisingAlkalinity(POTASSIUM_BICARBONATE, Alkalinity.parse("3 °dKH"), volume(60, LITRE)))
                .run(source);

        ledger.stages()
                .forEach(stage -> System.out.println(
                        stage.after().hardness().to(Hardness.GERMAN_DEGREE).toText(Locale.ROOT, 3) + ", "
                                + stage.after()
                                        .alkalinity()
                                        .to(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)
                                        .toText(Locale.ROOT, 3)
                                + " behind " + stage.name()));
        // end
    }
}
