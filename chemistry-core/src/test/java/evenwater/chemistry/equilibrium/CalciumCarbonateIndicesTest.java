package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.ComputedWaters;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class CalciumCarbonateIndicesTest {

    private static List<Map<String, String>> waters() {
        return ComputedWaters.with("tj.SI.calcite");
    }

    /** Waters of a second implementation with the same constants. */
    @ParameterizedTest
    @MethodSource("waters")
    void agreeWithASecondImplementation(Map<String, String> row) {
        CalciumCarbonateIndices indices = CalciumCarbonateIndices.of(Speciation.of(ComputedWaters.water(row)));
        assertEquals(
                ComputedWaters.number(row, "tj.SI.calcite"),
                indices.langelierByActivities().orElseThrow(),
                5e-6);
        assertEquals(
                ComputedWaters.number(row, "tj.pHs_b"), indices.saturationPH().orElseThrow(), 1e-5);
        assertEquals(
                ComputedWaters.number(row, "pH") - ComputedWaters.number(row, "tj.pHs_b"),
                indices.langelierBySaturationPH().orElseThrow(),
                1e-5);
        assertEquals(
                ComputedWaters.number(row, "pH") - 2 * ComputedWaters.number(row, "tj.SI.calcite"),
                indices.ryznar().orElseThrow(),
                1e-5);
        double potential = indices.precipitationPotential().in(MassConcentration.MILLIGRAM_PER_LITRE);
        double expected = ComputedWaters.number(row, "tj.CCPP [mg/L CaCO3]");
        assertEquals(expected, potential, 2e-5 * Math.abs(expected) + 2e-4);
    }

    @Test
    void softenedWaterHasNoIndex() {
        Water soft = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .total(Ion.CHLORIDE, mmol(1))
                .measuredPH(7.5)
                .build();
        CalciumCarbonateIndices indices = CalciumCarbonateIndices.of(Speciation.of(soft));
        assertEquals(OptionalDouble.empty(), indices.langelierByActivities());
        assertEquals(OptionalDouble.empty(), indices.langelierBySaturationPH());
        assertEquals(OptionalDouble.empty(), indices.ryznar());
        assertTrue(indices.precipitationPotential().getValue() < 0); // calcite would dissolve in it
    }

    @Test
    void verySoftWaterHasNoPHOfSaturation() {
        Water rain = Water.builder()
                .total(Ion.CALCIUM, mmol(0.005))
                .total(Ion.CHLORIDE, mmol(0.005))
                .measuredPH(6)
                .build();
        CalciumCarbonateIndices indices = CalciumCarbonateIndices.of(Speciation.of(rain));
        assertTrue(indices.langelierByActivities().orElseThrow() < -4);
        assertEquals(OptionalDouble.empty(), indices.saturationPH());
    }

    /** 3.53 γ mg/L per °dKH at pH 7, 25 °C, by 44.009 · 0.35665 · 10^(6.352 − 7): the rule says 3. */
    @Test
    void theRuleForCarbonDioxideReadsLow() {
        Water water = Water.builder()
                .total(Ion.SODIUM, mmol(4 * 0.35665))
                .alkalinity(Alkalinity.of(4, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .measuredPH(7)
                .build();
        CarbonDioxideRule rule = CarbonDioxideRule.of(Speciation.of(water));
        assertEquals(12, rule.byRule().in(Ion.CARBON_DIOXIDE.milligramPerLitre()), 1e-9);
        assertEquals(4 * 3.53 * 0.958, rule.bySpecies().in(Ion.CARBON_DIOXIDE.milligramPerLitre()), 0.05);
        assertEquals(-0.113, rule.error(), 0.005);
        Water cold = water.with(WaterUnits.temperature(15, WaterUnits.CELSIUS));
        assertEquals(OptionalDouble.empty(), cold.measuredPH());
    }

    @Test
    void theRuleRefusesMineralAcid() {
        Water acid =
                Water.builder().total(Ion.CHLORIDE, mmol(1)).carbon(mmol(0.1)).build();
        Refused.withoutAnswer(
                "the rule for CO₂ needs an alkalinity of 0 or more, but it was -1 meq/L",
                List.of(),
                () -> CarbonDioxideRule.of(Speciation.of(acid)));
        Refused.withoutAnswer(
                "a water without CO₂ gives the rule nothing to be compared with",
                List.of(),
                () -> CarbonDioxideRule.of(Speciation.of(Water.pure())).error());
    }

    /** By hand: 3 · 4 · 10^(7 − 6.6) = 30.14 mg/L for 4 °dKH and pH 6.6. */
    @Test
    void theRuleOfAquaristsByHand() {
        Water water = Water.builder()
                .total(Ion.SODIUM, mmol(4 / 2.8039))
                .alkalinity(Alkalinity.of(4, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .measuredPH(6.6)
                .build();
        assertEquals(30.14, CarbonDioxideRule.of(Speciation.of(water)).byRule().getValue(), 0.01);
    }
}
