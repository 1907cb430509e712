package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.interpreted;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class CarbonOfPHTest {

    private static Interpretation hard(String pH) {
        return interpreted(
                "calcium | 2 | mmol/L",
                "magnesium | 1 | mmol/L",
                "sodium | 1 | mmol/L",
                "potassium | 0 | mmol/L",
                "chloride | 1 | mmol/L",
                "sulfate | 0.5 | mmol/L",
                "alkalinity | 5 | meq/L",
                pH);
    }

    @Test
    void aSoftenerDoesNotLoseThePH() {
        Interpretation read = hard("pH | 7.4");
        assertEquals(7.4, Speciation.of(read.water()).pH(), 1e-9);
        Water soft = Softener.withSodium().treat(read.water());
        // no acid or base is exchanged: activity and pairs alone move the pH
        assertEquals(7.4, Speciation.of(soft).pH(), 0.05);
        assertEquals(read.water().carbon(), soft.carbon());
        assertTrue(
                read.assumptions().stream().anyMatch(a -> a.matches("pH 7.4 taken as read at 25 °C.* mg/L CO₂")),
                () -> read.assumptions().toString());
    }

    @Test
    void anIntervalOfThePHOpensTheCarbonDioxide() {
        Bounds<?> carbonDioxide = hard("pH | 7.2-7.6")
                .bounds(water -> Speciation.of(water).carbonDioxide().to(Ion.CARBON_DIOXIDE.milligramPerLitre()));
        double low = carbonDioxide.low().getValue().doubleValue();
        double high = carbonDioxide.high().getValue().doubleValue();
        assertEquals(
                1.008,
                high / low / Math.pow(10, 0.4),
                0.005); // ten for each unit of pH, and some HCO₃⁻ becomes carbonate
        double middle = carbonDioxide.value().getValue().doubleValue();
        assertTrue(low < middle && middle < high);
    }

    @Test
    void withoutAPHTheCarbonIsUnknown() {
        assertTrue(hard("nitrate | 0 | mmol/L").water().carbon().isEmpty());
    }

    @Test
    void aPHThatContradictsTheAlkalinityIsAFindingAndNotUsed() {
        Interpretation read = interpreted("sodium | 1 | mmol/L", "alkalinity | 0.2 | meq/L", "pH | 11.5");
        assertTrue(read.water().carbon().isEmpty());
        assertTrue(read.water().measuredPH().isEmpty());
        assertEquals(11.5, read.report().pH().orElseThrow());
        assertFound(read, "pH 11.5 not used: no water with these ions");
    }

    /** 100 mg/L as CaCO₃ and pH 4 would be 12 atm of CO₂. */
    @Test
    void carbonDioxideThatNoTapHoldsIsAFinding() {
        Interpretation read = interpreted("sodium | 2 | mmol/L", "alkalinity | 2 | meq/L", "pH | 4.9");
        assertTrue(read.water().carbon().isEmpty());
        assertFound(read, "pH 4.9 not used: with the alkalinity it means CO₂ of ");
    }

    private static void assertFound(Interpretation read, String beginning) {
        List<String> findings = read.findings();
        assertTrue(findings.stream().anyMatch(f -> f.startsWith(beginning)), findings::toString);
    }

    /** Water of a membrane at pH 7.0 is 0.002 above what its own ions make. */
    @Test
    void neutralWaterWithoutAlkalinityHasNoCarbon() {
        Interpretation read = interpreted("alkalinity | 0 | meq/L", "pH | 7.0");
        assertEquals(0, read.water().carbon().orElseThrow().getValue());
        assertEquals(List.of(), read.findings());
    }

    @Test
    void theReadingOfHotWaterIsNotUsed() {
        Interpretation read = interpreted("alkalinity | 2 | meq/L", "pH | 7", "temperature | 60 | °C");
        assertTrue(read.assumptions().contains("pH 7.0 not used: no equilibrium is computed above 50 °C"));
        assertTrue(read.water().measuredPH().isEmpty());
        assertEquals(60, read.water().temperature().in(WaterUnits.CELSIUS), 1e-9);
    }
}
