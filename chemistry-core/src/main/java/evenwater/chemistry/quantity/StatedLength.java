package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Length;

/** A length as stated. */
final class StatedLength extends WaterQuantity<Length> implements Length {

    StatedLength(double value, Unit<Length> unit) {
        super(value, unit, Length.class, Coherent.METRE);
    }

    @Override
    StatedLength make(double value, Unit<Length> unit) {
        return new StatedLength(value, unit);
    }
}
