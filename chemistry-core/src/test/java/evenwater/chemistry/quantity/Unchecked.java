package evenwater.chemistry.quantity;

import javax.measure.Quantity;
import javax.measure.Unit;

/** What raw types let through: a unit or a quantity under the type of another kind. */
final class Unchecked {

    private Unchecked() {}

    @SuppressWarnings("unchecked")
    static <Q extends Quantity<Q>> Unit<Q> unit(Unit<?> unit) {
        return (Unit<Q>) unit;
    }

    @SuppressWarnings("unchecked")
    static <Q extends Quantity<Q>> Quantity<Q> quantity(Quantity<?> quantity) {
        return (Quantity<Q>) quantity;
    }
}
