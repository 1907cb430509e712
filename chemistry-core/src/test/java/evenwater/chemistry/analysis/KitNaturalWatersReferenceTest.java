package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.testing.NaturalWater;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rivers, lakes and wells of which a kit reads only hardness, alkalinity, pH and conductivity; sources stand in the file of the waters. */
class KitNaturalWatersReferenceTest {

    private static KitBounds bounds(NaturalWater natural) {
        Water water = natural.water();
        double pH = Math.round(water.measuredPH().orElseThrow() * 10) / 10.0;
        return KitReadings.builder()
                .hardness(DropTest.GENERAL_HARDNESS.turningAt(DropTest.GENERAL_HARDNESS.readingFor(water.hardness())))
                .alkalinity(DropTest.CARBONATE_HARDNESS.turningAt(
                        DropTest.CARBONATE_HARDNESS.readingFor(water.alkalinity())))
                .pH(pH - 0.05, pH + 0.05)
                .temperature(water.temperature())
                .conductivity(
                        ConductivityReading.compensatedTo25Celsius(
                                KitSamples.conductivity(natural.measuredMicrosiemens())),
                        0.02)
                .build()
                .bounds();
    }

    /**
     * Their ions do not balance exactly (up to 5 %), so none is quite a water of the bounds; even so all are inside, without counting their
     * imbalance.
     */
    @Test
    void whatWasMeasuredIsWithinTheBounds() {
        List<String> outside = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        for (NaturalWater natural : NaturalWater.all()) {
            KitBounds bounds = bounds(natural);
            for (KitQuantity quantity : KitQuantity.values()) {
                double truth = KitSamples.of(natural.water(), quantity);
                if (truth < KitSamples.least(bounds, quantity) - 1e-9
                        || truth > KitSamples.most(bounds, quantity) + 1e-9) {
                    outside.add(quantity + " " + truth + " of " + natural);
                }
            }
            double width = KitSamples.most(bounds, KitQuantity.SODIUM_AND_POTASSIUM)
                    - KitSamples.least(bounds, KitQuantity.SODIUM_AND_POTASSIUM);
            widths.add(100 * width / natural.measuredMicrosiemens());
        }
        assertEquals(List.of(), outside);
        widths.sort(null);
        // 100 µS/cm are about 1 meq/L: half the waters leave less than 10 mg/L of sodium open for each 100 µS/cm
        double median = widths.get(widths.size() / 2);
        assertTrue(median < 0.44, "median " + median);
    }
}
