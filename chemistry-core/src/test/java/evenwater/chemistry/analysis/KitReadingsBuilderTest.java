package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.KitSamples.conductivity;
import static evenwater.chemistry.analysis.KitSamples.kit;
import static evenwater.chemistry.analysis.KitSamples.least;
import static evenwater.chemistry.analysis.KitSamples.milligrams;
import static evenwater.chemistry.analysis.KitSamples.most;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.instrument.ConductivityReading;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.instrument.TemperatureCompensation;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.testing.Refused;
import org.junit.jupiter.api.Test;

class KitReadingsBuilderTest {

    @Test
    void aConductivityIsNeeded() {
        Refused.argument(
                "conductivity or the reading of a dissolved-solids meter must be stated: without it nothing bounds sodium or chloride",
                () -> KitReadings.builder().build());
    }

    @Test
    void rangesAreChecked() {
        KitReadingsBuilder builder = KitReadings.builder();
        Refused.argument(
                "pH of a kit must be from 3 to 11 and in order, but was from 7.5 to 7.0", () -> builder.pH(7.5, 7));
        Refused.argument(
                "pH of a kit must be from 3 to 11 and in order, but was from NaN to 7.0",
                () -> builder.pH(Double.NaN, 7));
        Refused.argument(
                "temperature of a kit must be from 0 °C to 50 °C, but was 60 °C",
                () -> builder.temperature(Amounts.celsius(60)));
        ConductivityReading reading = ConductivityReading.compensatedTo25Celsius(conductivity(500));
        Refused.argument(
                "relative error of a meter must be from 0 to 0.5, but was 2.0", () -> builder.conductivity(reading, 2));
        Refused.argument(
                "allowance for the model must be from 0 to 0.5, but was -0.1", () -> builder.modelAllowance(-0.1));
        Refused.argument(
                "conductivity of a kit must be at most 10 mS/cm at 25 °C, but was 20005 µS/cm",
                () -> builder.conductivity(ReadingInterval.ofRounded(conductivity(20_000), conductivity(10))));
        Refused.argument(
                "a test beside the kit must be of Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻, but was of NH₄⁺",
                () -> builder.total(Ion.AMMONIUM, milligrams(Ion.AMMONIUM, 0, 1)));
        Refused.asNull("ion", () -> builder.total(null, milligrams(Ion.AMMONIUM, 0, 1)));
        Refused.asNull("reading", () -> builder.hardness(null));
    }

    @Test
    void aReadingAtTheTemperatureOfTheWaterIsTakenTo25Celsius() {
        KitBounds cold = kit(9, 5, 7.2, 7.6, 1)
                .conductivity(ConductivityReading.uncompensated(conductivity(387.5), Amounts.celsius(15)), 0.02)
                .build()
                .bounds();
        double factor = TemperatureCompensation.ISO_7888.factor(Amounts.celsius(15));
        KitBounds warm = kit(9, 5, 7.2, 7.6, 387.5 * factor).build().bounds();
        for (KitQuantity quantity : KitQuantity.values()) {
            assertEquals(least(warm, quantity), least(cold, quantity), 1e-9);
            assertEquals(most(warm, quantity), most(cold, quantity), 1e-9);
        }
    }

    @Test
    void anExtraTestIsChecked() {
        AmountConcentration none = AmountConcentration.of(0, Ion.CHLORIDE.milligramPerLitre());
        Refused.argument(
                "relative error of a test must be from 0 to 1, but was 1.5",
                () -> new ExtraTest(Ion.CHLORIDE, 1.5, none));
        Refused.argument(
                "least error of a test must not be negative, but was -1 mg/L Cl⁻",
                () -> new ExtraTest(Ion.CHLORIDE, 0.1, AmountConcentration.of(-1, Ion.CHLORIDE.milligramPerLitre())));
        Refused.argument(
                "a test beside the kit must be of Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻, but was of F⁻",
                () -> new ExtraTest(Ion.FLUORIDE, 0.1, none));
        assertEquals("chloride test", ExtraTest.CHLORIDE.toString());
        assertEquals(6, ExtraTest.usual().size());
    }
}
