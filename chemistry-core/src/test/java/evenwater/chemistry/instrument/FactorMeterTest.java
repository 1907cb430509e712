package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.Conductivity.MILLISIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.testing.Refused;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FactorMeterTest {

    private static Conductivity microsiemens(double value) {
        return Conductivity.of(value, MICROSIEMENS_PER_CENTIMETRE);
    }

    private static MassConcentration milligrams(double value) {
        return MassConcentration.of(value, MILLIGRAM_PER_LITRE);
    }

    @Test
    void aReadingIsTheConductivityTimesTheFactor() {
        assertEquals(milligrams(320), FactorMeter.of(0.5).reading(microsiemens(640)));
        assertEquals(milligrams(1280), FactorMeter.SCALE_640.reading(Conductivity.of(2, MILLISIEMENS_PER_CENTIMETRE)));
        assertEquals(milligrams(0), FactorMeter.SCALE_700.reading(microsiemens(0)));
    }

    @Test
    void theConductivityIsTheReadingOverTheFactor() {
        assertEquals(microsiemens(640), FactorMeter.SCALE_500.conductivity(milligrams(320)));
        assertEquals(microsiemens(2000), FactorMeter.SCALE_500.conductivity(MassConcentration.of(1, GRAM_PER_LITRE)));
    }

    @Test
    void twoMetersShowOneWaterDifferently() {
        Conductivity water = FactorMeter.SCALE_500.conductivity(milligrams(250));
        assertEquals(milligrams(350), FactorMeter.SCALE_700.reading(water));
    }

    @Test
    void scalesAreNamedAfterWhatTheyShowAtOneMillisiemens() {
        Conductivity one = Conductivity.of(1, MILLISIEMENS_PER_CENTIMETRE);
        assertEquals(milligrams(500), FactorMeter.SCALE_500.reading(one));
        assertEquals(milligrams(640), FactorMeter.SCALE_640.reading(one));
        assertEquals(milligrams(700), FactorMeter.SCALE_700.reading(one));
    }

    @Test
    void textSaysWhatAReadingIs() {
        assertEquals(
                "320 mg/L (shown as ppm): factor 0.5 on 640 µS/cm at 25 °C",
                FactorMeter.SCALE_500.toText(microsiemens(640), Locale.ROOT, 3));
        assertEquals(
                "320,3 mg/L (shown as ppm): factor 0.5 on 640,5 µS/cm at 25 °C",
                FactorMeter.SCALE_500.toText(microsiemens(640.5), Locale.GERMANY, 4));
        assertEquals("dissolved-solids meter, factor 0.64", FactorMeter.SCALE_640.toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.39, 1.01, 640, -0.5, Double.NaN, Double.POSITIVE_INFINITY})
    void aFactorIsThatOfAWater(double factor) {
        Refused.argument(
                "factor of a dissolved-solids meter must be from 0.4 to 1.0 mg/L for each µS/cm, but was " + factor
                        + " (the 640 scale is 0.64)",
                () -> FactorMeter.of(factor));
    }

    @Test
    void nothingIsNegative() {
        Refused.argument(
                "conductivity must not be negative, but was -1 µS/cm",
                () -> FactorMeter.SCALE_500.reading(microsiemens(-1)));
        Refused.argument(
                "reading of dissolved solids must not be negative, but was -1 mg/L",
                () -> FactorMeter.SCALE_500.conductivity(milligrams(-1)));
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("at25Celsius", () -> FactorMeter.SCALE_500.reading(null));
        Refused.asNull("reading", () -> FactorMeter.SCALE_500.conductivity(null));
    }
}
