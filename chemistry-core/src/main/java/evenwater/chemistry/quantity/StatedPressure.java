package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Pressure;

/** A pressure as stated. */
final class StatedPressure extends WaterQuantity<Pressure> implements Pressure {

    StatedPressure(double value, Unit<Pressure> unit) {
        super(value, unit, Pressure.class, Coherent.PASCAL);
    }

    @Override
    StatedPressure make(double value, Unit<Pressure> unit) {
        return new StatedPressure(value, unit);
    }
}
