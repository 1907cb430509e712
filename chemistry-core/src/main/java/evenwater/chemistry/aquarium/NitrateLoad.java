package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.equilibrium.Metabolism;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Element;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;

/**
 * What feeding does to a tank in a day, as the change that {@link TankBuilder#daily(Change)} takes: nitrate comes, alkalinity goes, one equivalent for
 * each mole.
 */
public final class NitrateLoad {

    /** Grams of protein for each gram of its nitrogen: the usual 6.25 of food analysis (16 % N; from memory). */
    private static final double PROTEIN_PER_NITROGEN = 6.25;

    private static final double DAYS_OF_A_WEEK = 7;

    private NitrateLoad() {}

    /**
     * Returns the daily change by a measured rise of nitrate.
     *
     * @param aWeek by how much nitrate rises in a week without water change or uptake; 0 or more
     * @return change in a day, per litre
     * @throws IllegalArgumentException if it is negative
     */
    public static Change measured(Quantity<AmountConcentration> aWeek) {
        return Metabolism.nitrateFromFood(Objects.requireNonNull(aWeek, "aWeek"))
                .times(1 / DAYS_OF_A_WEEK);
    }

    /**
     * Returns the daily change by the food: nitrogen is its protein over 6.25.
     *
     * @param food dry, in a day, for the whole tank; 0 or more
     * @param proteinShare of its mass; no unit, 0 to 1; 0.3 to 0.5 stand on the labels (common practice, no source)
     * @param shareGivenOff of its nitrogen that is not kept as growth or taken out with dirt; no unit, 0 to 1; some 0.7 (common practice, no
     *     source)
     * @param volume of the tank, whose net part counts
     * @return change in a day, per litre
     * @throws IllegalArgumentException if the mass is negative or a share out of range
     */
    public static Change ofFood(Quantity<Mass> food, double proteinShare, double shareGivenOff, TankVolume volume) {
        WaterQuantity<Mass> stated = WaterUnits.mass(Objects.requireNonNull(food, "food"));
        double milligrams = stated.in(WaterUnits.MILLIGRAM);
        if (!(milligrams >= 0)) {
            throw new IllegalArgumentException("mass of food must not be negative, but was " + stated);
        }
        requireShare("protein in the food", proteinShare);
        requireShare("nitrogen that is given off", shareGivenOff);
        double nitrogen = milligrams * proteinShare / PROTEIN_PER_NITROGEN * shareGivenOff;
        double millimoles = nitrogen / Element.NITROGEN.formula().molarMass().in(MolarMass.GRAM_PER_MOLE);
        double perLitre = millimoles / Objects.requireNonNull(volume, "volume").netInLitres();
        return Metabolism.nitrateFromFood(
                Ion.NITRATE.concentration(AmountConcentration.of(perLitre, MILLIMOLE_PER_LITRE)));
    }

    private static void requireShare(String of, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of " + of + " must be from 0 to 1, but was " + share);
        }
    }
}
