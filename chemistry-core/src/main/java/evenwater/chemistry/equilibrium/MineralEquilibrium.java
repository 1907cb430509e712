package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.MonotoneInverse;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * A water that has dissolved or dropped a mineral until it is saturated with it.
 *
 * <p>Calcium, alkalinity and carbon move together by the formula of the mineral, so charge is kept. How long it takes is another question:
 * calcite dissolves within an hour in a filter of grains and within weeks in a tank with a stone. From 50 to 100 °C constants are
 * extrapolated ({@link Speciation#extrapolated}).
 */
public final class MineralEquilibrium {

    /** Far beyond what any of the minerals dissolves to, in mmol/L. */
    private static final double MOST = 300;

    /** Carbon that no mineral exhausts, in mmol/L. */
    private static final double PLENTY = 10_000;

    /** A water keeps this share of what it could drop, so that its index stays a number. */
    private static final double LEFT = 1e-12;

    /** Stands for the index of a water that lacks an ion of the mineral. */
    private static final double FAR_BELOW = -1000;

    private MineralEquilibrium() {}

    /**
     * Returns a water after equilibrium with a mineral, closed to the air.
     *
     * @param water with its inorganic carbon or a measured pH
     * @param mineral that lies in it, or may drop from it
     * @return the water with its saturation index 0
     * @throws NoAnswerException if the carbon is unknown, or saturation lies beyond the ionic strength that can be computed
     */
    public static Water saturated(Water water, Mineral mineral) {
        Water known = speciation(water).water();
        return saturated(known, mineral, UnaryOperator.identity());
    }

    /**
     * Returns a water after equilibrium with a mineral and with a gas.
     *
     * @param water any water; its carbon and pH before do not matter
     * @param mineral that lies in it, or may drop from it
     * @param carbonDioxide partial pressure of CO₂ in the gas; above 0, to 10 atm
     * @return the water with its saturation index 0
     * @throws NoAnswerException if saturation lies beyond the ionic strength that can be computed
     */
    public static Water saturated(Water water, Mineral mineral, Quantity<Pressure> carbonDioxide) {
        // the gas brings whatever carbon a mineral takes along, so what the water holds of it is no bound
        Water rich = GasExchange.equilibrated(water, carbonDioxide)
                .withCarbon(AmountConcentration.of(PLENTY, MILLIMOLE_PER_LITRE));
        return saturated(rich, mineral, tried -> GasExchange.equilibrated(tried, carbonDioxide));
    }

    /**
     * Returns the amount of a mineral that a water dissolves until it is saturated, closed to the air.
     *
     * @param water with its inorganic carbon or a measured pH
     * @param mineral that lies in it, or may drop from it
     * @return moles of its formula in mmol/L; negative where it drops
     * @throws NoAnswerException as {@link #saturated(Water, Mineral)}
     */
    public static AmountConcentration dissolved(Water water, Mineral mineral) {
        Water known = speciation(water).water();
        return AmountConcentration.of(amount(known, mineral, UnaryOperator.identity()), MILLIMOLE_PER_LITRE);
    }

    /**
     * Returns the change by dissolving some of a mineral.
     *
     * @param mineral which
     * @param amount moles of its formula; negative where it drops
     * @return the change, which is electroneutral
     */
    public static Change dissolving(Mineral mineral, Quantity<AmountConcentration> amount) {
        return dissolving(mineral, AmountConcentration.from(amount).in(MILLIMOLE_PER_LITRE));
    }

    private static Change dissolving(Mineral mineral, double millimoles) {
        SortedMap<Ion, AmountConcentration> ions = new TreeMap<>();
        mineral.ions().forEach((ion, n) -> ions.put(ion, AmountConcentration.of(n * millimoles, MILLIMOLE_PER_LITRE)));
        return Change.of(ions);
    }

    private static Water saturated(Water known, Mineral mineral, UnaryOperator<Water> gas) {
        return gas.apply(known.plus(dissolving(mineral, amount(known, mineral, gas))));
    }

    private static double amount(Water known, Mineral mineral, UnaryOperator<Water> gas) {
        double least = -most(known, mineral) * (1 - LEFT);
        double here = index(known, mineral, gas, 0);
        if (here == 0) {
            return 0;
        }
        if (here > 0) {
            if (index(known, mineral, gas, least) > 0) {
                throw new NoAnswerException(mineral
                        + " cannot drop until saturation: the water stays oversaturated when nearly all of it is gone");
            }
            return MonotoneInverse.of(x -> index(known, mineral, gas, x), least, 0, 0);
        }
        double low = 0;
        double high = 1e-3;
        while (index(known, mineral, gas, high) < 0) {
            low = high;
            high *= 4;
            if (high > MOST) {
                throw new NoAnswerException("saturation with " + mineral + " lies beyond " + MOST
                        + " mmol/L of it, where activities cannot be computed");
            }
        }
        return MonotoneInverse.of(x -> index(known, mineral, gas, x), low, high, 0);
    }

    private static double index(Water known, Mineral mineral, UnaryOperator<Water> gas, double millimoles) {
        Water tried = gas.apply(known.plus(dissolving(mineral, millimoles)));
        return speciation(tried).saturationIndex(mineral).orElse(FAR_BELOW);
    }

    /** The amount that a water could drop of a mineral if nothing held it back, in mmol/L; without bound by OH⁻, of which water has plenty. */
    private static double most(Water water, Mineral mineral) {
        double most = Double.MAX_VALUE;
        for (Map.Entry<Ion, Integer> e : mineral.ions().entrySet()) {
            Ion ion = e.getKey();
            if (ion.equals(Ion.HYDROXIDE)) {
                continue;
            }
            double total = ion.equals(Ion.CARBONATE)
                    ? water.carbon().orElseThrow().in(MILLIMOLE_PER_LITRE)
                    : water.total(ion).in(MILLIMOLE_PER_LITRE);
            most = Math.min(most, total / e.getValue());
        }
        return most;
    }

    private static Speciation speciation(Water water) {
        return Speciation.extrapolated(Objects.requireNonNull(water, "water"), ActivityLaw.TRUESDELL_JONES);
    }
}
