package evenwater.chemistry.instrument;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;

/** Arguments of this package, read and checked. */
final class Checked {

    /** What a conversion from kelvin may leave of the ends of a range, in K. */
    private static final double ROUNDING = 1e-9;

    private Checked() {}

    /** A conductivity of 0 or more. */
    static Conductivity conductivity(Quantity<Conductivity> conductivity, String parameter) {
        Conductivity stated = Conductivity.from(Objects.requireNonNull(conductivity, parameter));
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException("conductivity must not be negative, but was " + stated);
        }
        return stated;
    }

    /** A reading of dissolved solids of 0 or more. */
    static MassConcentration reading(Quantity<MassConcentration> reading) {
        MassConcentration stated = MassConcentration.from(Objects.requireNonNull(reading, "reading"));
        if (stated.getValue() < 0) {
            throw new IllegalArgumentException("reading of dissolved solids must not be negative, but was " + stated);
        }
        return stated;
    }

    /** A temperature as ours. */
    static WaterQuantity<Temperature> temperature(Quantity<Temperature> temperature) {
        return WaterUnits.temperature(Objects.requireNonNull(temperature, "temperature"));
    }

    /** A temperature from 0 °C to another one, in °C. */
    static double celsius(WaterQuantity<Temperature> temperature, double warmest, String allowed) {
        double celsius = temperature.in(WaterUnits.CELSIUS);
        if (!(celsius >= -ROUNDING && celsius <= warmest + ROUNDING)) {
            throw new IllegalArgumentException("temperature must be " + allowed + ", but was " + temperature);
        }
        return Math.max(0, Math.min(warmest, celsius));
    }

    /** A temperature from 0 °C to 100 °C, in °C. */
    static double celsius(WaterQuantity<Temperature> temperature) {
        return celsius(temperature, 100, "from 0 °C to 100 °C");
    }
}
