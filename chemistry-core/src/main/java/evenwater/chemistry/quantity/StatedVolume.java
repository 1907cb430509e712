package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Volume;

/** A volume as stated. */
final class StatedVolume extends WaterQuantity<Volume> implements Volume {

    StatedVolume(double value, Unit<Volume> unit) {
        super(value, unit, Volume.class, Coherent.CUBIC_METRE);
    }

    @Override
    StatedVolume make(double value, Unit<Volume> unit) {
        return new StatedVolume(value, unit);
    }
}
