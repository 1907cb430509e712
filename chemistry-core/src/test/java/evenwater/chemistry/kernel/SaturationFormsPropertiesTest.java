package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** How the two forms answer to their inputs. */
class SaturationFormsPropertiesTest {

    @Property
    void tenTimesTheCalciumIsOneMoreInBothForms(
            @ForAll @DoubleRange(min = 1, max = 100) double calcium,
            @ForAll @DoubleRange(min = 1, max = 1000) double alkalinity,
            @ForAll @DoubleRange(min = 32, max = 128) double fahrenheit) {
        double kelvin = (fahrenheit + 459.67) / 1.8;
        assertEquals(
                1,
                SaturationFormsKernel.shortFormSaturationPH(300, kelvin, calcium, alkalinity)
                        - SaturationFormsKernel.shortFormSaturationPH(300, kelvin, 10 * calcium, alkalinity),
                1e-13); // roundings of sums of some 40
        assertEquals(
                1,
                SaturationFormsKernel.factorTableIndex(7, fahrenheit, 10 * calcium, alkalinity)
                        - SaturationFormsKernel.factorTableIndex(7, fahrenheit, calcium, alkalinity),
                1e-13);
        // in both forms calcium and alkalinity stand for each other
        assertEquals(
                SaturationFormsKernel.shortFormSaturationPH(300, kelvin, calcium, alkalinity),
                SaturationFormsKernel.shortFormSaturationPH(300, kelvin, alkalinity, calcium),
                1e-13);
    }

    @Property
    void warmthSaturatesAndSaltDissolves(
            @ForAll @DoubleRange(min = 32, max = 127) double fahrenheit,
            @ForAll @DoubleRange(min = 0.01, max = 1) double warmer,
            @ForAll @DoubleRange(min = 10, max = 2000) double solids) {
        double kelvin = (fahrenheit + 459.67) / 1.8;
        assertTrue(SaturationFormsKernel.shortFormSaturationPH(solids, kelvin + warmer, 100, 100)
                < SaturationFormsKernel.shortFormSaturationPH(solids, kelvin, 100, 100));
        assertTrue(SaturationFormsKernel.shortFormSaturationPH(solids * (1 + warmer), kelvin, 100, 100)
                > SaturationFormsKernel.shortFormSaturationPH(solids, kelvin, 100, 100));
        assertTrue(SaturationFormsKernel.factorTableIndex(7, fahrenheit + warmer, 100, 100)
                > SaturationFormsKernel.factorTableIndex(7, fahrenheit, 100, 100));
    }
}
