package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Time;

/** A time as stated. */
final class StatedTime extends WaterQuantity<Time> implements Time {

    StatedTime(double value, Unit<Time> unit) {
        super(value, unit, Time.class, Coherent.SECOND);
    }

    @Override
    StatedTime make(double value, Unit<Time> unit) {
        return new StatedTime(value, unit);
    }
}
