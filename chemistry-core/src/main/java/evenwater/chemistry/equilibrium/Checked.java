package evenwater.chemistry.equilibrium;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/** Arguments of this package, read and checked. */
final class Checked {

    /** What a conversion may leave of the ends of a range: in K, or as a share of a bound. */
    static final double ROUNDING = 1e-9;

    private Checked() {}

    /** A pH from 0 to 14. */
    static double pH(double pH) {
        if (!(pH >= 0 && pH <= 14)) {
            throw new IllegalArgumentException("pH must be from 0 to 14, but was " + pH);
        }
        return pH;
    }

    /** A temperature as ours. */
    static WaterQuantity<Temperature> temperature(Quantity<Temperature> temperature) {
        return WaterUnits.temperature(Objects.requireNonNull(temperature, "temperature"));
    }

    /** An amount or a hardness, which is no difference. */
    static <Q extends WaterQuantity<Q>> Q notNegative(Q stated, String what) {
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException(what + " must not be negative, but was " + stated);
        }
        return stated;
    }
}
