package evenwater.chemistry.verdict;

import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.water.Water;
import java.util.function.ToDoubleFunction;

/**
 * How much carbon dioxide a water holds where it is used, which sets its pH.
 *
 * @param leastPH the pH with the most carbon dioxide
 * @param mostPH the pH with the least
 * @param isTank whether the water takes the temperature of a tank
 * @param isDosed whether carbon dioxide is dosed
 */
record TankAir(ToDoubleFunction<Water> leastPH, ToDoubleFunction<Water> mostPH, boolean isTank, boolean isDosed) {

    private static final double MOST_TIMES = 10;

    /** One to ten times as much as water takes up from the open air: animals breathe, air takes away (common practice, no source). */
    static final TankAir OPEN = new TankAir(water -> inAir(water, MOST_TIMES), water -> inAir(water, 1), true, false);

    /** As it comes from the pipe. */
    static final TankAir CLOSED = new TankAir(
            water -> Speciation.of(water).pH(), water -> Speciation.of(water).pH(), false, false);

    /** Kept between two concentrations. */
    static TankAir dosed(AmountConcentration least, AmountConcentration most) {
        return new TankAir(water -> holding(water, most), water -> holding(water, least), true, true);
    }

    private static double inAir(Water water, double times) {
        return CarbonateSystem.of(water)
                .withItsAlkalinity()
                .withPartialPressure(GasExchange.OUTDOOR_AIR.multiply(times))
                .solve()
                .pH();
    }

    private static double holding(Water water, AmountConcentration carbonDioxide) {
        return CarbonateSystem.of(water)
                .withItsAlkalinity()
                .withCarbonDioxide(carbonDioxide)
                .solve()
                .pH();
    }
}
