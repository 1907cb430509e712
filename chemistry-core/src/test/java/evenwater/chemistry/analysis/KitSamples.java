package evenwater.chemistry.analysis;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;

/** Short ways to state kits, and what a water holds of their quantities. */
final class KitSamples {

    private KitSamples() {}

    static KitReadingsBuilder kit(int gh, int kh, double leastPH, double mostPH, double microsiemens) {
        return KitReadings.builder()
                .hardness(DropTest.GENERAL_HARDNESS.turningAt(gh))
                .alkalinity(DropTest.CARBONATE_HARDNESS.turningAt(kh))
                .pH(leastPH, mostPH)
                .conductivity(ConductivityReading.compensatedTo25Celsius(conductivity(microsiemens)), 0.02);
    }

    static Conductivity conductivity(double microsiemens) {
        return Conductivity.of(microsiemens, MICROSIEMENS_PER_CENTIMETRE);
    }

    static MassConcentration ppm(double value) {
        return MassConcentration.of(value, MILLIGRAM_PER_LITRE);
    }

    static ReadingInterval<AmountConcentration> milligrams(Ion ion, double least, double most) {
        return new ReadingInterval<>(
                AmountConcentration.of(least, ion.milligramPerLitre()),
                AmountConcentration.of(most, ion.milligramPerLitre()),
                false);
    }

    static double least(KitBounds bounds, KitQuantity quantity) {
        return milliequivalents(bounds.equivalents(quantity).least());
    }

    static double most(KitBounds bounds, KitQuantity quantity) {
        return milliequivalents(bounds.equivalents(quantity).most());
    }

    private static double milliequivalents(EquivalentConcentration amount) {
        return amount.in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
    }
}
