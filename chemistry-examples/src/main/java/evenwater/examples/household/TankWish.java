package evenwater.examples.household;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Requirements;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
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
        OptionalDouble usualUncertainty) {}
