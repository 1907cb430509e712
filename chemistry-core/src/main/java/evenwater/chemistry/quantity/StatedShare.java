package evenwater.chemistry.quantity;

import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;

/** A plain number as stated, such as a share in percent. */
final class StatedShare extends WaterQuantity<Dimensionless> implements Dimensionless {

    StatedShare(double value, Unit<Dimensionless> unit) {
        super(value, unit, Dimensionless.class, Coherent.ONE);
    }

    @Override
    StatedShare make(double value, Unit<Dimensionless> unit) {
        return new StatedShare(value, unit);
    }
}
