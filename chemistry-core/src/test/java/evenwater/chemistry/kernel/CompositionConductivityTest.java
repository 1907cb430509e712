package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.water.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompositionConductivityTest {

    private static final int PLACE_OF_ALKALINITY = KitQuantity.ALKALINITY.place();

    @ParameterizedTest
    @CsvSource({"25, 7.4", "12, 7.4", "25, 9.2", "30, 8.8", "25, 5.2"})
    void itIsTheConductivityOfTheTypedWater(double celsius, double pH) {
        double[] z = {3e-3, 1e-3, 2e-3, 0.5e-3, 2e-3, 1.5e-3, 2.4e-3, 0.6e-3};
        Water water = Water.builder()
                .total(Ion.CALCIUM, Amounts.mmol(1.5))
                .total(Ion.MAGNESIUM, Amounts.mmol(0.5))
                .total(Ion.SODIUM, Amounts.mmol(2))
                .total(Ion.POTASSIUM, Amounts.mmol(0.5))
                .total(Ion.CHLORIDE, Amounts.mmol(1.5))
                .total(Ion.SULFATE, Amounts.mmol(1.2))
                .total(Ion.NITRATE, Amounts.mmol(0.6))
                .alkalinity(Amounts.alkalinity(2))
                .measuredPH(pH)
                .temperature(Amounts.celsius(celsius))
                .build();
        double typed = CalculatedConductivity.at25Celsius(water).in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(typed, new CompositionConductivity(celsius + 273.15).of(z, pH), 1e-9 * typed);
    }

    /** Below the alkalinity that its hydroxide makes, a pH cannot be: the water without carbon stands in, without a step. */
    @Test
    void whereThereIsNoSuchWaterTheNearestIsTaken() {
        CompositionConductivity conductivity = new CompositionConductivity(298.15);
        double[] z = new double[CompositionRanges.AMOUNTS];
        z[KitQuantity.SODIUM.place()] = 1e-3;
        z[KitQuantity.CHLORIDE.place()] = 1e-3;
        assertEquals(conductivity.of(z, 7), conductivity.of(z, 10), 1e-3);
        double least = conductivity.leastAlkalinity(10);
        assertEquals(1e-4, least, 2e-6); // Kw is 1.0e-14 at 25 °C
        double[] before = z.clone();
        before[PLACE_OF_ALKALINITY] = least;
        before[KitQuantity.SODIUM.place()] += least;
        double[] after = before.clone();
        after[PLACE_OF_ALKALINITY] *= 1.1;
        after[KitQuantity.SODIUM.place()] += 0.1 * least;
        double rise = conductivity.of(after, 10) - conductivity.of(before, 10);
        assertTrue(rise > 0 && rise < 3, "rise " + rise); // 1e-5 eq/L at some 248 S cm²/eq
    }
}
