package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * Carbon dioxide that a water gives to the air or takes up.
 *
 * <p>CO₂ carries no charge: alkalinity, hardness and all ions stay, inorganic carbon and with it pH move. CO₂ is heavier than air and
 * suffocates: handle gas and aerate only where the room is ventilated.
 */
public final class GasExchange {

    /**
     * CO₂ in the open air: 420 µatm, near the mean of 2023 (419 ppm of dry air at sea level, from memory). A closed room with people has two to four
     * times as much.
     */
    public static final WaterQuantity<Pressure> OUTDOOR_AIR = WaterUnits.pressure(420, WaterUnits.MICROATMOSPHERE);

    private GasExchange() {}

    /**
     * Returns a water after it has come to equilibrium with a gas.
     *
     * @param water any water; its carbon and pH before do not matter
     * @param carbonDioxide partial pressure of CO₂ in the gas; 0 to 10 atm; at 0 all carbon leaves in the end, and hydroxide is left
     * @return the water with another inorganic carbon
     * @throws IllegalArgumentException if the pressure is out of range
     * @throws NoAnswerException if the ionic strength is above 1 mol/L
     */
    public static Water equilibrated(Water water, Quantity<Pressure> carbonDioxide) {
        return CarbonateSystem.of(water)
                .withItsAlkalinity()
                .withPartialPressure(carbonDioxide)
                .solve()
                .water();
    }

    /**
     * Returns a water that has gone part of the way to equilibrium with a gas.
     *
     * @param water with its inorganic carbon or a measured pH
     * @param carbonDioxide partial pressure of CO₂ in the gas; as in {@link #equilibrated}
     * @param share of the carbon that would move until equilibrium; no unit, 0 to 1; bubbling overnight reaches some 0.9 (common practice,
     *     no source)
     * @return the water with another inorganic carbon
     * @throws IllegalArgumentException if pressure or share are out of range
     * @throws NoAnswerException if the carbon of the water is unknown
     */
    public static Water aerated(Water water, Quantity<Pressure> carbonDioxide, double share) {
        requireShare("of the way to equilibrium", share);
        Water known = Speciation.of(water).water();
        double before = carbon(known);
        double end = carbon(equilibrated(known, carbonDioxide));
        return known.withCarbon(AmountConcentration.of(before + share * (end - before), MILLIMOLE_PER_LITRE));
    }

    /**
     * Returns a water that has lost a share of the carbon dioxide that it held, as in a stripper.
     *
     * @param water with its inorganic carbon or a measured pH
     * @param share of the dissolved CO₂ that leaves; no unit, 0 to 1; what HCO₃⁻ then gives back stays
     * @return the water with less inorganic carbon
     * @throws IllegalArgumentException if the share is out of range
     * @throws NoAnswerException if the carbon of the water is unknown
     */
    public static Water degassed(Water water, double share) {
        requireShare("of the dissolved CO₂", share);
        Speciation before = Speciation.of(water);
        double left = carbon(before.water()) - share * before.carbonDioxide().in(MILLIMOLE_PER_LITRE);
        return before.water().withCarbon(AmountConcentration.of(Math.max(0, left), MILLIMOLE_PER_LITRE));
    }

    /**
     * Returns a water after so much CO₂ was let in that it holds a wanted concentration.
     *
     * @param water with its inorganic carbon or a measured pH
     * @param carbonDioxide wanted CO₂, such as 20 mg/L for plants; above what the water holds
     * @return the water with more inorganic carbon
     * @throws NoAnswerException if the water holds more already, or its carbon is unknown
     */
    public static Water injected(Water water, Quantity<AmountConcentration> carbonDioxide) {
        Speciation before = Speciation.of(water);
        AmountConcentration wanted = Ion.CARBON_DIOXIDE.concentration(carbonDioxide);
        Water after = CarbonateSystem.of(before.water())
                .withItsAlkalinity()
                .withCarbonDioxide(wanted)
                .solve()
                .water();
        return notLess(before, after, "CO₂ of " + wanted);
    }

    /**
     * Returns a water after so much CO₂ was let in that it reaches a pH.
     *
     * @param water with its inorganic carbon or a measured pH
     * @param pH wanted; no unit, below that of the water
     * @return the water with more inorganic carbon
     * @throws IllegalArgumentException if the pH is not from 0 to 14
     * @throws NoAnswerException if the water has a lower pH already, or its carbon is unknown
     */
    public static Water injectedToPH(Water water, double pH) {
        Speciation before = Speciation.of(water);
        Water after = CarbonateSystem.of(before.water())
                .withItsAlkalinity()
                .withPH(pH)
                .solve()
                .water();
        return notLess(before, after, "pH " + pH);
    }

    private static Water notLess(Speciation before, Water after, String wanted) {
        if (carbon(after) < carbon(before.water()) * (1 - 1e-9)) {
            AmountConcentration held = before.carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre());
            throw new NoAnswerException(
                    "CO₂ that is let in cannot lead to " + wanted + ": the water holds " + held.toText(Locale.ROOT, 3)
                            + " already, at pH " + Math.rint(before.pH() * 100) / 100,
                    held);
        }
        return after;
    }

    private static double carbon(Water water) {
        return water.carbon().orElseThrow().in(MILLIMOLE_PER_LITRE);
    }

    private static void requireShare(String of, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share " + of + " must be from 0 to 1, but was " + share);
        }
    }
}
