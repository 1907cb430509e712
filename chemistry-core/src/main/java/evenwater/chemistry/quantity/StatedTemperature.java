package evenwater.chemistry.quantity;

import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Temperature;

/**
 * A temperature as stated; the one kind whose scales have different zeros.
 *
 * <p>Sums run in kelvin and the second operand is a difference, stated in kelvin: 20 °C + 5 K is 25 °C. Adding 5 °C, which in kelvin
 * would be 278.15, is refused. Subtracting two temperatures with a zero of their own gives their difference in kelvin.
 */
final class StatedTemperature extends WaterQuantity<Temperature> implements Temperature {

    StatedTemperature(double value, Unit<Temperature> unit) {
        super(value, unit, Temperature.class, Coherent.KELVIN);
        if (scale().offset != 0 && inBase() < -1e-9) { // in kelvin it may be a difference
            throw new IllegalArgumentException("temperature must not be below absolute zero, but was " + this);
        }
    }

    /** Restates a temperature of another library; one that it calls relative, such as 5 °C warmer, is a difference in kelvin. */
    static WaterQuantity<Temperature> adopt(Quantity<Temperature> foreign) {
        return WaterQuantity.adopt(foreign, Temperature.class, (value, unit) -> {
            boolean relative = foreign.getScale() == Scale.RELATIVE;
            double kelvins = relative ? KindScale.of(unit, Temperature.class, Coherent.KELVIN).toBase : 1;
            return new StatedTemperature(value * kelvins, relative ? WaterUnits.KELVIN : unit);
        });
    }

    @Override
    WaterQuantity<Temperature> adoptForeign(Quantity<Temperature> foreign) {
        return adopt(foreign);
    }

    @Override
    StatedTemperature make(double value, Unit<Temperature> unit) {
        return new StatedTemperature(value, unit);
    }

    @Override
    double inBase() {
        return (value() + scale().offset) * scale().toBase;
    }

    @Override
    @SuppressWarnings("ReferenceEquality") // the same unit object needs no conversion
    public double in(Unit<Temperature> unit) {
        if (unit == getUnit()) {
            return value();
        }
        KindScale<Temperature> wanted = KindScale.of(unit, Temperature.class, Coherent.KELVIN);
        double step = scale().toBase / wanted.toBase;
        // the zeros first: they nearly cancel, and the value keeps its digits
        double result = value() * step + (scale().offset * step - wanted.offset);
        if (Math.abs(result) <= Double.MAX_VALUE) {
            return result;
        }
        throw overflow(unit);
    }

    @Override
    public Temperature add(Quantity<Temperature> addend) {
        return shifted(difference(addend));
    }

    @Override
    public Temperature subtract(Quantity<Temperature> subtrahend) {
        StatedTemperature that = (StatedTemperature) read(subtrahend);
        if (that.scale().offset != 0 && scale().offset != 0) {
            return new StatedTemperature(inBase() - that.inBase(), WaterUnits.KELVIN);
        }
        return shifted(-difference(subtrahend));
    }

    private double difference(Quantity<Temperature> quantity) {
        WaterQuantity<Temperature> that = read(quantity);
        if (that.scale().offset != 0) {
            throw new IllegalArgumentException("a temperature difference must be stated in K, but was " + that);
        }
        return that.inBase();
    }

    private Temperature shifted(double kelvin) {
        return make(value() + kelvin / scale().toBase, getUnit());
    }
}
