package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.testing.Amounts.celsius;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Conductivity;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of all laws of compensation. */
class TemperatureCompensationPropertiesTest {

    /** Laws that hold from 0 °C to 35.9 °C. */
    @Provide
    Arbitrary<TemperatureCompensation> laws() {
        return Arbitraries.oneOf(
                Arbitraries.just(TemperatureCompensation.ISO_7888),
                Arbitraries.doubles().between(0.001, 0.039).ofScale(4).map(TemperatureCompensation::linear));
    }

    @Property
    void thereAndBack(
            @ForAll("laws") TemperatureCompensation law,
            @ForAll @DoubleRange(max = 100_000) @Scale(3) double microsiemens,
            @ForAll @DoubleRange(max = 35.9) @Scale(4) double degrees) {
        Conductivity measured = Conductivity.of(microsiemens, MICROSIEMENS_PER_CENTIMETRE);
        Conductivity back = law.fromReference(law.toReference(measured, celsius(degrees)), celsius(degrees));
        assertEquals(microsiemens, back.getValue(), 4 * Math.ulp(microsiemens));
        Conductivity again = law.toReference(law.fromReference(measured, celsius(degrees)), celsius(degrees));
        assertEquals(microsiemens, again.getValue(), 4 * Math.ulp(microsiemens));
    }

    @Property
    void theWarmerTheWaterTheSmallerTheFactor(
            @ForAll("laws") TemperatureCompensation law,
            @ForAll @DoubleRange(max = 35.9) @Scale(4) double one,
            @ForAll @DoubleRange(max = 35.9) @Scale(4) double other) {
        double ofOne = law.factor(celsius(one));
        double ofOther = law.factor(celsius(other));
        assertEquals(Double.compare(other, one), Double.compare(ofOne, ofOther));
        assertTrue(ofOne > 0);
    }

    @Property
    void at25DegreesNothingHappens(
            @ForAll("laws") TemperatureCompensation law,
            @ForAll @DoubleRange(max = 100_000) @Scale(3) double microsiemens) {
        Conductivity measured = Conductivity.of(microsiemens, MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(measured, law.toReference(measured, celsius(25)));
        assertEquals(measured, law.fromReference(measured, celsius(25)));
    }

    @Property
    void ordinaryWatersDependLittleOnTheLaw(@ForAll @DoubleRange(min = 10, max = 35) @Scale(2) double degrees) {
        double iso = TemperatureCompensation.ISO_7888.factor(celsius(degrees));
        double linear = TemperatureCompensation.STANDARD_METHODS_2510.factor(celsius(degrees));
        assertEquals(1, linear / iso, 0.025); // 2.1 % at 35 °C, seen in the figures of both
    }
}
