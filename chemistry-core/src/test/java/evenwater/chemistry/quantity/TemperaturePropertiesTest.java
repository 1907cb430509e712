package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.WaterUnits.CELSIUS;
import static evenwater.chemistry.quantity.WaterUnits.KELVIN;
import static evenwater.chemistry.quantity.WaterUnits.temperature;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Unit;
import javax.measure.quantity.Temperature;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of the one kind whose scales have zeros of their own. */
class TemperaturePropertiesTest {

    /** Up to 1000 K: ten roundings of a number below 2260, which is 1000 K in °F and its 459.67 besides. */
    private static final double ROUNDING = 10 * 2260 * 0x1p-53;

    @Provide
    Arbitrary<Unit<Temperature>> scales() {
        return Arbitraries.of(Kind.TEMPERATURE.units());
    }

    @Property
    void aRoundTripKeepsTheTemperature(
            @ForAll @DoubleRange(max = 1000) @Scale(6) double kelvin,
            @ForAll("scales") Unit<Temperature> from,
            @ForAll("scales") Unit<Temperature> to) {
        double stated = temperature(kelvin, KELVIN).in(from);
        double back = temperature(temperature(stated, from).in(to), to).in(from);
        assertEquals(stated, back, ROUNDING);
    }

    @Property
    void theScaleOfTheStatementDoesNotMatter(
            @ForAll @DoubleRange(max = 1000) @Scale(6) double kelvin,
            @ForAll("scales") Unit<Temperature> from,
            @ForAll("scales") Unit<Temperature> to) {
        double direct = temperature(kelvin, KELVIN).in(to);
        assertEquals(
                direct, temperature(temperature(kelvin, KELVIN).in(from), from).in(to), ROUNDING);
    }

    @Property
    void subtractionUndoesAdditionOfKelvins(
            @ForAll @DoubleRange(max = 500) @Scale(6) double kelvin,
            @ForAll @DoubleRange(max = 500) @Scale(6) double difference,
            @ForAll("scales") Unit<Temperature> scale) {
        WaterQuantity<Temperature> start =
                temperature(temperature(kelvin, KELVIN).in(scale), scale);
        WaterQuantity<Temperature> step = temperature(difference, KELVIN);
        WaterQuantity<Temperature> end = temperature(start.add(step));
        assertSame(scale, end.getUnit());
        assertEquals(difference, temperature(end.subtract(start)).in(KELVIN), ROUNDING);
        assertEquals(start.getValue(), temperature(end.subtract(step)).getValue(), ROUNDING);
    }

    @Property
    void aKelvinIsADegreeCelsius(
            @ForAll @DoubleRange(max = 500) @Scale(6) double kelvin,
            @ForAll @DoubleRange(max = 500) @Scale(6) double difference) {
        WaterQuantity<Temperature> start =
                temperature(temperature(kelvin, KELVIN).in(CELSIUS), CELSIUS);
        WaterQuantity<Temperature> end = temperature(start.add(temperature(difference, KELVIN)));
        assertEquals(start.getValue() + difference, end.getValue());
    }

    @Property
    void conversionKeepsTheOrder(
            @ForAll @DoubleRange(max = 1000) @Scale(6) double one,
            @ForAll @DoubleRange(max = 1000) @Scale(6) double other,
            @ForAll("scales") Unit<Temperature> to) {
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        // exact: the steps are a product and a sum, and neither turns an order round
        assertTrue(temperature(low, KELVIN).in(to) <= temperature(high, KELVIN).in(to));
        assertTrue(temperature(low, CELSIUS).compareTo(temperature(high, CELSIUS)) <= 0);
    }
}
