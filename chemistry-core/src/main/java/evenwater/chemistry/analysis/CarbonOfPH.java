package evenwater.chemistry.analysis;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What a reported pH means for the inorganic carbon: changes and blends conserve carbon, and a softener does not lose the pH with it.
 */
final class CarbonOfPH {

    private static final double WARMEST_IN_CELSIUS = 50;

    /** More than any water holds that comes from a tap, in atm. */
    private static final double MOST_ATMOSPHERES = 1;

    /** What a pH is read to. */
    private static final double READ_TO = 0.1;

    private static final Change NOTHING = Change.of(Map.of());

    private CarbonOfPH() {}

    /** Returns the water with its carbon instead of the reading; with neither where the reading tells no carbon. */
    static Water known(Water water) {
        if (water.measuredPH().isEmpty()) {
            return water;
        }
        try {
            return isTooWarm(water) ? water.plus(NOTHING) : carbon(water).water();
        } catch (NoAnswerException noSuchCarbon) {
            return water.plus(NOTHING);
        }
    }

    private static boolean isTooWarm(Water water) {
        return water.temperature().in(WaterUnits.CELSIUS) > WARMEST_IN_CELSIUS;
    }

    /** The species by the reading; a pH of water without carbon may miss that of such a water by what it is read to. */
    private static Speciation carbon(Water water) {
        double pH = water.measuredPH().orElseThrow();
        Speciation bare =
                Speciation.of(water.withCarbon(AmountConcentration.of(0, AmountConcentration.MILLIMOLE_PER_LITRE)));
        if (pH > bare.pH() && pH <= bare.pH() + READ_TO) {
            return bare;
        }
        Speciation found = Speciation.of(water);
        if (found.partialPressureOfCarbonDioxide().in(WaterUnits.ATMOSPHERE) > MOST_ATMOSPHERES) {
            throw new NoAnswerException("with the alkalinity it means CO₂ of "
                    + found.partialPressureOfCarbonDioxide().toText(Locale.ROOT, 3)
                    + ", more than any tap water holds: one of the two is wrong");
        }
        return found;
    }

    /** Says what was made of the reading of the best guess. */
    static void tell(Water water, double pH, List<String> assumptions, List<String> findings) {
        if (isTooWarm(water)) {
            assumptions.add("pH " + pH + " not used: no equilibrium is computed above 50 °C");
            return;
        }
        try {
            AmountConcentration carbonDioxide =
                    carbon(water).carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre());
            assumptions.add("pH " + pH + " taken as read at " + water.temperature() + "; with the alkalinity it means "
                    + carbonDioxide.toText(Locale.ROOT, 3));
        } catch (NoAnswerException e) {
            findings.add("pH " + pH + " not used: " + e.getMessage());
        }
    }
}
