package evenwater.chemistry.quantity;

import javax.measure.Quantity;
import tech.units.indriya.quantity.Quantities;

/** Products and quotients across kinds, by indriya; apart from {@link WaterQuantity} so that indriya sleeps until they are wanted. */
final class UnitAlgebra {

    private UnitAlgebra() {}

    static Quantity<?> multiply(Quantity<?> a, Quantity<?> b) {
        return foreign(a).multiply(foreign(b));
    }

    static Quantity<?> divide(Quantity<?> a, Quantity<?> b) {
        refuseZero(b);
        return foreign(a).divide(foreign(b));
    }

    static Quantity<?> inverse(Quantity<?> a) {
        refuseZero(a);
        return foreign(a).inverse();
    }

    private static void refuseZero(Quantity<?> divisor) {
        if (divisor.getValue().doubleValue() == 0) {
            throw new IllegalArgumentException("cannot divide by " + divisor);
        }
    }

    private static <Q extends Quantity<Q>> Quantity<Q> foreign(Quantity<Q> q) {
        return Quantities.getQuantity(q.getValue(), q.getUnit());
    }
}
