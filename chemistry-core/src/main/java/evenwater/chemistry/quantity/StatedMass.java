package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Mass;

/** A mass as stated. */
final class StatedMass extends WaterQuantity<Mass> implements Mass {

    StatedMass(double value, Unit<Mass> unit) {
        super(value, unit, Mass.class, Coherent.KILOGRAM);
    }

    @Override
    StatedMass make(double value, Unit<Mass> unit) {
        return new StatedMass(value, unit);
    }
}
