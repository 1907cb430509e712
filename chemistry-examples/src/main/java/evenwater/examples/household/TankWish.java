package evenwater.examples.household;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;

/**
 * What is asked about the tank.
 *
 * @param kind what it asks of its water; empty for all kinds
 * @param readings adds what a kit showed
 * @param volume net volume of water that the recipe is for
 * @param shelf compounds at hand
 * @param usualUncertainty relative standard uncertainty of concentrations that state none; empty if nobody said
 */
record TankWish(
        Optional<Requirements> kind,
        UnaryOperator<Evidence> readings,
        WaterQuantity<Volume> volume,
        List<Compound> shelf,
        OptionalDouble usualUncertainty) {

    /** Of a tank whose temperature nobody states, as the verdict takes it. */
    private static final WaterQuantity<Temperature> USUAL = WaterUnits.temperature(25, WaterUnits.CELSIUS);

    /** Returns the temperature of the tank: the reading, or 25 °C. */
    WaterQuantity<Temperature> temperature() {
        return readings.apply(Evidence.none())
                .known(Parameter.TEMPERATURE)
                .map(Bounds::value)
                .orElse(USUAL);
    }
}
