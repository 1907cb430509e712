package evenwater.examples.rooms;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Bypass;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** The room of treatment: a train, its ledger and the water behind each stage. */
public final class TreatmentRoom {

    private TreatmentRoom() {}

    /**
     * Prints the stages of a house.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Water source = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(90, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(15, Ion.MAGNESIUM.milligramPerLitre()))
                .total(Ion.SULFATE, AmountConcentration.of(69, Ion.SULFATE.milligramPerLitre()))
                .alkalinity(Alkalinity.parse("12 °dKH"))
                .measuredPH(7.2)
                .build();
        Water known = Speciation.of(source).water(); // a treatment drops a pH, and keeps the carbon that it tells

        Ledger ledger = Train.of(Softener.withSodium(), Bypass.around(ReverseOsmosis.rejecting(0.95, 0.98), 0.2))
                .run(known);

        ledger.stages()
                .forEach(stage -> System.out.printf(
                        Locale.ROOT,
                        "pH %.1f, %.0f µS/cm behind %s%n",
                        stage.condition().pH().orElseThrow(),
                        stage.condition().conductivity().orElseThrow().in(Conductivity.MICROSIEMENS_PER_CENTIMETRE),
                        stage.name()));
        System.out.println(ledger.change().netCharge());
        // end
    }
}
