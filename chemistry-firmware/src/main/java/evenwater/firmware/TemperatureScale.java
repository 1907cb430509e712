package evenwater.firmware;

import evenwater.chemistry.quantity.WaterUnits;
import java.util.List;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/**
 * A scale of temperature: {@code kelvin = (value + offset) · size}.
 *
 * @param constant name of the core's constant
 * @param unit of the core
 * @param size of one degree in kelvin, exact
 * @param offsetInThousandths what lies between the zero of the scale and absolute zero, in thousandths of a degree of the scale
 */
record TemperatureScale(String constant, Unit<Temperature> unit, Ratio size, int offsetInThousandths) {

    private static final List<TemperatureScale> ALL = List.of(
            of("KELVIN", WaterUnits.KELVIN),
            of("CELSIUS", WaterUnits.CELSIUS),
            of("FAHRENHEIT", WaterUnits.FAHRENHEIT));

    /** In the order of their numbers in C. */
    static List<TemperatureScale> all() {
        return ALL;
    }

    private static TemperatureScale of(String constant, Unit<Temperature> unit) {
        double below = WaterUnits.temperature(0, WaterUnits.KELVIN).in(unit);
        // a degree is a ninth or a whole number of ninths of a kelvin: a rounding of doubles is far below
        double ninths = 9
                * (WaterUnits.temperature(1, unit).in(WaterUnits.KELVIN)
                        - WaterUnits.temperature(0, unit).in(WaterUnits.KELVIN));
        return new TemperatureScale(
                constant, unit, Ratio.of(Math.round(ninths), 9), Math.toIntExact(Math.round(-1000 * below)));
    }
}
