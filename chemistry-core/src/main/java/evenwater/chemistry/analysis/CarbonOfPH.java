package evenwater.chemistry.analysis;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;

/**
 * What a reported pH means for the inorganic carbon: changes and blends conserve carbon, and a softener does not lose the pH with it.
 */
final class CarbonOfPH {

    private static final double WARMEST_IN_CELSIUS = 50;

    private CarbonOfPH() {}

    /** Returns the water with its carbon instead of the reading, or as it is where that is unknown. */
    static Water known(Water water) {
        if (water.measuredPH().isEmpty() || isTooWarm(water)) {
            return water;
        }
        try {
            return Speciation.of(water).water();
        } catch (NoAnswerException noSuchCarbon) {
            return water;
        }
    }

    private static boolean isTooWarm(Water water) {
        return water.temperature().in(WaterUnits.CELSIUS) > WARMEST_IN_CELSIUS;
    }

    /** Says what was made of the reading of the best guess. */
    static void tell(Water water, double pH, List<String> assumptions, List<String> findings) {
        if (isTooWarm(water)) {
            assumptions.add("pH " + pH + " not used: no equilibrium is computed above 50 °C");
            return;
        }
        try {
            AmountConcentration carbonDioxide =
                    Speciation.of(water).carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre());
            assumptions.add("pH " + pH + " taken as read at " + water.temperature() + "; with the alkalinity it means "
                    + carbonDioxide.toText(Locale.ROOT, 3));
        } catch (NoAnswerException e) {
            findings.add("pH " + pH + " tells no CO₂: " + e.getMessage());
        }
    }
}
