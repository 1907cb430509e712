package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.ComputedWaters;
import evenwater.chemistry.testing.NaturalWater;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The textbook short form and the factor table of pools, beside the indices by activities of the same water. */
class SaturationFormsTest {

    /** The example of Carrier (1965, from memory): 9.3 + 0.160 + 2.087 − 1.980 − 2.292. */
    @Test
    void theExampleOfTheTextbook() {
        CalciumCarbonateIndices indices = indices(example(400, 25, 7.5));
        assertAll(
                () -> assertEquals(7.273, indices.saturationPHByShortForm().orElseThrow(), 0.0005),
                () -> assertEquals(0.227, indices.langelierByShortForm().orElseThrow(), 0.0005),
                () -> assertEquals(7.046, indices.ryznarByShortForm().orElseThrow(), 0.001),
                // 7.5 + 0.6125 at 77 °F + 1.980 + 2.292 − 12.1
                () -> assertEquals(0.285, indices.factorTableIndex().orElseThrow(), 0.0005));
    }

    /** 0.153 between them: the short form has older constants of calcite. */
    @Test
    void theSameWaterByActivities() {
        CalciumCarbonateIndices indices = indices(example(400, 25, 7.5));
        assertAll(
                () -> assertEquals(0.380, indices.langelierByActivities().orElseThrow(), 0.001),
                () -> assertEquals(0.383, indices.langelierBySaturationPH().orElseThrow(), 0.001),
                () -> assertEquals(7.117, indices.saturationPH().orElseThrow(), 0.001),
                () -> assertEquals(6.740, indices.ryznar().orElseThrow(), 0.002),
                () -> assertEquals(-0.153, shortFormLessActivities(example(400, 25, 7.5)), 0.001));
    }

    /**
     * What the numbers of the short form stand for: pHs = pK₂ − pKs + pCa + pAlk + a term of activities, which is the same for both. So 2.00 stands
     * for pK₂ − pKs, where 10.329 − 8.480 = 1.849 (Plummer and Busenberg 1982).
     */
    @Test
    void theDifferenceIsThatOfTheConstants() {
        assertEquals(2.00, 1.849 - shortFormLessActivities(example(400, 25, 7.5)), 0.005);
    }

    @ParameterizedTest(name = "{0} °C: {1}")
    @CsvSource({"0, -0.275", "10, -0.231", "25, -0.153", "40, -0.067", "50, -0.008"}) // computed
    void theDifferenceIsLargerInTheCold(double celsius, double difference) {
        assertEquals(difference, shortFormLessActivities(example(400, celsius, 7.5)), 0.001);
    }

    @Test
    void solidsAreThoseOfTheResidue() {
        Water water = example(400, 25, 7.5);
        assertEquals(400, water.residueAt180Celsius().in(MassConcentration.MILLIGRAM_PER_LITRE), 0.05);
        // all ions with alkalinity as HCO₃⁻ would be 521 mg/L: lg(521 / 400) / 10
        assertEquals(521, water.dissolvedSolids().in(MassConcentration.MILLIGRAM_PER_LITRE), 1);
        double higher = Math.log10(521.0 / 400) / 10;
        assertEquals(0.0115, higher, 1e-4);
        // the most: Mg(HCO₃)₂ and MgCO₃, 146.34 and 84.31 g/mol
        assertEquals(0.024, Math.log10(146.34 / 84.31) / 10, 5e-4);
    }

    /** The figures of the class comment. */
    @Test
    void belowPH9TheDefinitionsDifferByKnownAmounts() {
        List<Water> natural = NaturalWater.all().stream()
                .map(NaturalWater::water)
                .filter(water -> water.measuredPH().orElseThrow() < 9)
                .toList();
        assertEquals(58, natural.size());
        assertSpread(-0.241, 0.219, natural, SaturationFormsTest::shortFormLessActivities);
        assertSpread(
                -0.213,
                0.216,
                natural.stream()
                        .filter(water -> indices(water).saturationPH().isPresent())
                        .toList(),
                water -> indices(water).langelierBySaturationPH().orElseThrow() - activities(water));
        assertSpread(
                -0.290,
                -0.040,
                natural.stream().filter(SaturationFormsTest::isInTheTable).toList(),
                SaturationFormsTest::tableLessActivities);
    }

    @Test
    void inColdWaterTheyDifferMost() {
        List<Water> waters = ComputedWaters.with("tj.SI.calcite").stream()
                .map(ComputedWaters::water)
                .filter(water -> water.measuredPH().orElseThrow() < 9)
                .toList();
        assertSpread(-0.322, 0.151, waters, SaturationFormsTest::shortFormLessActivities);
        assertSpread(
                -0.462,
                0.040,
                waters.stream().filter(SaturationFormsTest::isInTheTable).toList(),
                SaturationFormsTest::tableLessActivities);
    }

    @Test
    void aSodaLakeShowsThatBothCountAllAlkalinityAsBicarbonate() {
        Water lake = NaturalWater.all().stream()
                .map(NaturalWater::water)
                .filter(water -> water.measuredPH().orElseThrow() > 9)
                .findFirst()
                .orElseThrow();
        assertEquals(0.851, shortFormLessActivities(lake), 0.002);
        assertEquals(0.525, indices(lake).langelierBySaturationPH().orElseThrow() - activities(lake), 0.002);
    }

    @Test
    void withoutCalciumOrAlkalinityThereIsNoIndex() {
        Water soft = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .total(Ion.CHLORIDE, mmol(1))
                .measuredPH(7.5)
                .build();
        Water acid = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(2.01))
                .carbon(mmol(0.1))
                .build();
        Water neutral = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(2))
                .carbon(mmol(0.1))
                .build();
        for (Water water : List.of(soft, acid, neutral)) {
            assertEquals(OptionalDouble.empty(), indices(water).saturationPHByShortForm());
            assertEquals(OptionalDouble.empty(), indices(water).langelierByShortForm());
            assertEquals(OptionalDouble.empty(), indices(water).ryznarByShortForm());
            assertEquals(OptionalDouble.empty(), indices(water).factorTableIndex());
        }
    }

    @Test
    void temperaturesBeyondTheFormsAreRefused() {
        assertEquals(6.149, hot(90).saturationPHByShortForm().orElseThrow(), 0.001); // B 0.964
        Refused.withoutAnswer(
                "the short form is stated for 0 °C to 90 °C, but temperature was 91 °C",
                List.of(celsius(91)),
                () -> hot(91).saturationPHByShortForm());
        assertTrue(hot(53.3).factorTableIndex().isPresent());
        Refused.withoutAnswer(
                "the factor table is stated for 0 °C to 53.3 °C, but temperature was 53.4 °C",
                List.of(celsius(53.4)),
                () -> hot(53.4).factorTableIndex());
    }

    @Test
    void solidsBeyondTheFormsAreRefused() {
        Water rain = Water.builder()
                .total(Ion.CALCIUM, mmol(0.005))
                .total(Ion.CHLORIDE, mmol(0.005))
                .measuredPH(6)
                .build();
        MassConcentration little = rain.residueAt180Celsius();
        Refused.withoutAnswer(
                "the short form is meant for 10 to 10000 mg/L of dissolved solids, but they were " + little,
                List.of(little),
                () -> indices(rain).langelierByShortForm());
        Water brine = example(10_010, 25, 7.5);
        assertTrue(indices(example(9990, 25, 7.5)).langelierByShortForm().isPresent());
        Refused.withoutAnswer(
                "the short form is meant for 10 to 10000 mg/L of dissolved solids, but they were "
                        + brine.residueAt180Celsius(),
                List.of(brine.residueAt180Celsius()),
                () -> indices(brine).ryznarByShortForm());
        Water brackish = example(1010, 25, 7.5);
        assertTrue(indices(example(990, 25, 7.5)).factorTableIndex().isPresent());
        Refused.withoutAnswer(
                "the factor table is meant for at most 1000 mg/L of dissolved solids, but they were "
                        + brackish.residueAt180Celsius(),
                List.of(brackish.residueAt180Celsius()),
                () -> indices(brackish).factorTableIndex());
    }

    private static CalciumCarbonateIndices indices(Water water) {
        return CalciumCarbonateIndices.of(Speciation.of(water));
    }

    private static CalciumCarbonateIndices hot(double celsius) {
        return CalciumCarbonateIndices.of(
                Speciation.extrapolated(example(400, celsius, 7.5), ActivityLaw.TRUESDELL_JONES));
    }

    private static double activities(Water water) {
        return indices(water).langelierByActivities().orElseThrow();
    }

    private static double shortFormLessActivities(Water water) {
        return indices(water).langelierByShortForm().orElseThrow() - activities(water);
    }

    private static double tableLessActivities(Water water) {
        return indices(water).factorTableIndex().orElseThrow() - activities(water);
    }

    private static boolean isInTheTable(Water water) {
        return water.residueAt180Celsius().in(MassConcentration.MILLIGRAM_PER_LITRE) <= 1000;
    }

    private static void assertSpread(double least, double most, List<Water> waters, Function<Water, Double> of) {
        List<Double> differences = waters.stream().map(of).sorted().toList();
        assertEquals(least, differences.get(0), 0.0006, "least");
        assertEquals(most, differences.get(differences.size() - 1), 0.0006, "most");
    }

    /** Calcium hardness 240 and alkalinity 196 mg/L as CaCO₃, chloride for the rest of the charge, and sodium chloride to the solids. */
    private static Water example(double solids, double celsius, double pH) {
        double calcium = 240 / 100.0869;
        double alkalinity = 196 / 50.04345;
        double chloride = 2 * calcium - alkalinity;
        double mass = calcium * 40.078 + alkalinity * 60.008 / 2 + chloride * 35.45;
        double salt = (solids - mass) / 58.44;
        return Water.builder()
                .total(Ion.CALCIUM, mmol(calcium))
                .total(Ion.SODIUM, mmol(salt))
                .total(Ion.CHLORIDE, mmol(chloride + salt))
                .alkalinity(Alkalinity.of(196, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE))
                .temperature(celsius(celsius))
                .measuredPH(pH)
                .build();
    }
}
