package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import javax.measure.Quantity;
import javax.measure.Unit;

/**
 * The kind and unit that the numbers of a computation are in: makes quantities of numbers, and reads them.
 *
 * <p>Differences of temperatures are quantities in kelvin, and numbers in steps of the unit.
 *
 * @param like any quantity of the kind and unit
 */
record Stated<Q extends WaterQuantity<?>>(Q like) {

    Q value(double number) {
        return as(like.withValue(number));
    }

    /** A difference of so many steps of the unit. */
    Q difference(double steps) {
        WaterQuantity<?> anyKind = like;
        return as(differenceOf(anyKind, steps));
    }

    private static <K extends Quantity<K>> Object differenceOf(WaterQuantity<K> like, double steps) {
        WaterQuantity<K> none = ours(like.subtract(like)); // in K for a temperature in °C, else in the unit of the kind
        return none.withValue(steps / steps(like, none.withValue(1)));
    }

    double read(WaterQuantity<?> quantity) {
        return read(like, quantity);
    }

    @SuppressWarnings("unchecked") // a unit of another kind is refused by name
    private static <K extends Quantity<K>> double read(WaterQuantity<?> like, WaterQuantity<K> quantity) {
        return quantity.in((Unit<K>) like.getUnit());
    }

    /** How many steps of the unit a difference is. */
    @SuppressWarnings({"unchecked", "rawtypes"}) // a quantity of another kind is refused by name
    double readDifference(Quantity<?> difference) {
        return steps((WaterQuantity) like, (Quantity) difference);
    }

    private static <K extends Quantity<K>> double steps(WaterQuantity<K> like, Quantity<K> difference) {
        return ours(ours(like.withValue(0)).add(difference)).getValue();
    }

    /** What a quantity of ours makes is one of ours. */
    @SuppressWarnings("unchecked")
    private static <K extends Quantity<K>> WaterQuantity<K> ours(Quantity<K> made) {
        return (WaterQuantity<K>) made;
    }

    @SuppressWarnings("unchecked") // every quantity makes those of its own class
    private Q as(Object made) {
        return (Q) made;
    }

    /** The symbol of the unit; empty if it has none. */
    String symbol() {
        String symbol = like.getUnit().getSymbol();
        return symbol == null ? like.getUnit().toString() : symbol;
    }
}
