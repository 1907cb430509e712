package evenwater.examples.rooms;

import evenwater.chemistry.equilibrium.CalciumCarbonateIndices;
import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** The room of equilibrium: pH, carbon dioxide and calcite of a water. */
public final class EquilibriumRoom {

    private EquilibriumRoom() {}

    /**
     * Prints what a water does by itself.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Water well = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(80, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.CHLORIDE, AmountConcentration.of(18, Ion.CHLORIDE.milligramPerLitre()))
                .alkalinity(Alkalinity.parse("10 °dKH"))
                .temperature(WaterUnits.parseTemperature("12 °C"))
                .measuredPH(7.3)
                .build();

        Speciation atTheTap = Speciation.of(well);
        System.out.println(atTheTap.carbonDioxide()
                .to(Ion.CARBON_DIOXIDE.milligramPerLitre())
                .toText(Locale.ROOT, 2));
        Water aired = GasExchange.equilibrated(atTheTap.water(), GasExchange.OUTDOOR_AIR);
        Speciation atRest = Speciation.of(aired);
        System.out.printf(Locale.ROOT, "pH %.1f at rest with air%n", atRest.pH());
        for (Speciation s : new Speciation[] {atTheTap, atRest}) {
            System.out.printf(
                    Locale.ROOT,
                    "calcite %+.1f%n",
                    CalciumCarbonateIndices.of(s).langelierByActivities().orElseThrow());
        }
        // end
    }
}
