package evenwater.chemistry.treatment;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;

/**
 * Bringing a water into contact with air, which takes CO₂ out of most waters and gives some to others.
 *
 * <p>pH moves towards that of equilibrium with air; alkalinity and hardness stay. A hard water may then drop calcite, which is not computed
 * here. CO₂ that leaves in a closed room suffocates: ventilate.
 *
 * <p>Immutable and thread-safe.
 */
public final class Aeration implements Treatment {

    private final WaterQuantity<Pressure> carbonDioxide;
    private final double share;

    private Aeration(WaterQuantity<Pressure> carbonDioxide, double share) {
        this.carbonDioxide = carbonDioxide;
        this.share = share;
    }

    /**
     * Returns an aeration to equilibrium with the open air, 420 µatm of CO₂.
     *
     * @return the treatment
     */
    public static Aeration withOutdoorAir() {
        return with(GasExchange.OUTDOOR_AIR);
    }

    /**
     * Returns an aeration to equilibrium with a gas.
     *
     * @param carbonDioxide partial pressure of CO₂ in the gas; above 0, to 10 atm; closed rooms have some 800 µatm (common practice, no source)
     * @return the treatment
     * @throws IllegalArgumentException if it is out of range
     */
    public static Aeration with(Quantity<Pressure> carbonDioxide) {
        return new Aeration(GasPressure.checked(carbonDioxide), 1);
    }

    /**
     * Returns an aeration that does not reach equilibrium.
     *
     * @param shareOfTheWay of the carbon that would move until equilibrium; no unit, 0 to 1
     * @return the treatment
     * @throws IllegalArgumentException if the share is out of range
     */
    public Aeration reaching(double shareOfTheWay) {
        if (!(shareOfTheWay >= 0 && shareOfTheWay <= 1)) {
            throw new IllegalArgumentException(
                    "share of the way to equilibrium must be from 0 to 1, but was " + shareOfTheWay);
        }
        return new Aeration(carbonDioxide, shareOfTheWay);
    }

    /**
     * Returns the water after contact with the air.
     *
     * @param source its carbon must be known unless equilibrium is reached
     * @return the water with another inorganic carbon
     * @throws NoAnswerException if the carbon is unknown and needed, or there is no such equilibrium
     */
    @Override
    public Water treat(Water source) {
        Objects.requireNonNull(source, "source");
        return share == 1
                ? GasExchange.equilibrated(source, carbonDioxide)
                : GasExchange.aerated(source, carbonDioxide, share);
    }

    @Override
    public String name() {
        String name = "aeration with " + carbonDioxide + " of CO₂";
        return share == 1 ? name : name + ", " + ReverseOsmosis.percent(share) + " of the way";
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
