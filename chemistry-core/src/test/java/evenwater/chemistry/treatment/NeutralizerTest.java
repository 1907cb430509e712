package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.MineralEquilibrium;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.testing.ComputedWaters;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class NeutralizerTest {

    private static List<Map<String, String>> acidWaters() {
        return ComputedWaters.with("neutral.f1.0.mgo0.0.pH");
    }

    /** Waters of a second implementation with the same constants; saturation multiplies their small differences. */
    @ParameterizedTest
    @MethodSource("acidWaters")
    void calciteSaturates(Map<String, String> row) {
        Water source = ComputedWaters.water(row);
        Water behind = Neutralizer.withCalcite().treat(source);
        assertEquals(
                ComputedWaters.number(row, "neutral.f1.0.mgo0.0.pH"),
                Speciation.of(behind).pH(),
                5e-6);
        assertEquals(ComputedWaters.number(row, "neutral.f1.0.mgo0.0.alk [meq/L]"), alkalinity(behind), 5e-6);
        assertEquals(0, Speciation.of(behind).saturationIndex(Mineral.CALCITE).orElseThrow(), 1e-9);
    }

    @Test
    void hardnessAndAlkalinityRiseTogetherAndASoftenerTakesTheHardnessAgain() {
        Water behind = Neutralizer.withCalcite().treat(acid(5.9));
        double dissolved = Neutralizer.withCalcite().dissolved(acid(5.9)).in(MILLIMOLE_PER_LITRE);
        assertEquals(alkalinity(acid(5.9)) + 2 * dissolved, alkalinity(behind), 1e-12);
        Water soft = Softener.withSodium().treat(behind);
        assertEquals(0, soft.hardness().in(Hardness.MILLIMOLE_PER_LITRE));
        assertEquals(behind.alkalinity(), soft.alkalinity());
        assertEquals(behind.carbon(), soft.carbon());
    }

    /** The same well, its pH read at the tap and from a bottle that had lost CO₂: half the sodium behind a softener, or less. */
    @Test
    void theRawPHDecidesEverything() {
        double field = sodiumBehindSoftener(5.9);
        double laboratory = sodiumBehindSoftener(6.6);
        assertTrue(laboratory < 0.6 * field, field + " and " + laboratory + " mg/L");
    }

    @Test
    void magnesiaRaisesThePHFurther() {
        double calcite =
                Speciation.of(Neutralizer.withCalcite().treat(acid(5.9))).pH();
        Water mixed = Neutralizer.withCalcite().withMagnesia(0.5).treat(acid(5.9));
        assertTrue(mixed.total(Ion.MAGNESIUM).compareTo(acid(5.9).total(Ion.MAGNESIUM)) > 0);
        assertTrue(Speciation.of(mixed).pH() > calcite);
    }

    @Test
    void partOfSaturationAndAMeasuredOutlet() {
        double all = Neutralizer.withCalcite().dissolved(acid(5.9)).in(MILLIMOLE_PER_LITRE);
        Neutralizer half = Neutralizer.withCalcite().reaching(0.5);
        assertEquals(all / 2, half.dissolved(acid(5.9)).in(MILLIMOLE_PER_LITRE), 1e-12);
        Water measured = Neutralizer.withCalcite().toPH(7.2).treat(acid(5.9));
        assertEquals(7.2, Speciation.of(measured).pH(), 1e-9);
    }

    @Test
    void whatDissolvesIsCalciteAndMagnesiaTogether() {
        Water well = Water.builder()
                .total(Ion.SODIUM, mmol(0.4))
                .alkalinity(Amounts.alkalinity(0.4))
                .measuredPH(6.0)
                .build();
        Neutralizer filter = Neutralizer.withCalcite().withMagnesia(0.3);
        Water treated = filter.treat(well);
        double dissolved = filter.dissolved(well).getValue();
        assertEquals(dissolved, hardnessOf(treated), 1e-9);
        assertEquals(0.3 * dissolved, of(Ion.MAGNESIUM, treated), 1e-9);
    }

    /** Calcite stops at saturation; what raises the pH further is magnesia alone. */
    @Test
    void noFilterDissolvesCalciteBeyondSaturation() {
        Water saturated = Neutralizer.withCalcite().withMagnesia(0.3).treat(acid(5.9));
        Water beyond = Neutralizer.withCalcite().withMagnesia(0.3).toPH(9.5).treat(acid(5.9));
        assertEquals(9.5, Speciation.of(beyond).pH(), 1e-9);
        assertEquals(
                saturated.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE),
                beyond.total(Ion.CALCIUM).in(MILLIMOLE_PER_LITRE),
                1e-12);
        assertTrue(beyond.total(Ion.MAGNESIUM).compareTo(saturated.total(Ion.MAGNESIUM)) > 0);
        double highest = Math.rint(Speciation.of(Neutralizer.withCalcite().treat(acid(5.9)))
                                .pH()
                        * 100)
                / 100;
        Refused.withoutAnswer(
                "calcite alone leads this water to pH " + highest
                        + " at most, where it is saturated; a measured 9.5 comes from something else, such as magnesia",
                List.of(),
                () -> Neutralizer.withCalcite().toPH(9.5).treat(acid(5.9)));
    }

    @Test
    void aSaturatedWaterPassesUnchanged() {
        Water saturated = Neutralizer.withCalcite()
                .treat(acid(5.9))
                .plus(MineralEquilibrium.dissolving(Mineral.CALCITE, mmol(0.1)));
        assertEquals(saturated, Neutralizer.withCalcite().treat(saturated));
    }

    @Test
    void refusals() {
        Refused.argument(
                "share of magnesia must be from 0 to 1, but was NaN",
                () -> Neutralizer.withCalcite().withMagnesia(Double.NaN));
        Refused.argument(
                "share of saturation must be from 0 to 1, but was 1.1",
                () -> Neutralizer.withCalcite().reaching(1.1));
        Refused.argument(
                "pH behind a neutralizer must be from 4 to 11, but was 12.0",
                () -> Neutralizer.withCalcite().toPH(12));
        Refused.withoutAnswer(
                "a neutralizer raises the pH: from 5.9 of the raw water it cannot lead to 5.5",
                List.of(),
                () -> Neutralizer.withCalcite().toPH(5.5).treat(acid(5.9)));
        Refused.withoutAnswer(
                "pH of this water is unknown: it states neither inorganic carbon nor a measured pH (a change or blend drops one)",
                List.of(),
                () -> Neutralizer.withCalcite()
                        .treat(Water.builder().total(Ion.SODIUM, mmol(1)).build()));
    }

    @Test
    void names() {
        assertEquals("neutralizer with calcite", Neutralizer.withCalcite().toString());
        assertEquals(
                "neutralizer with calcite and 20 % magnesia, 80 % of saturation",
                Neutralizer.withCalcite().withMagnesia(0.2).reaching(0.8).name());
        assertEquals(
                "neutralizer with calcite, to pH 7.2",
                Neutralizer.withCalcite().toPH(7.2).name());
        assertEquals("aeration with 420 µatm of CO₂", Aeration.withOutdoorAir().name());
        assertEquals(
                "aeration with 420 µatm of CO₂, 90 % of the way",
                Aeration.withOutdoorAir().reaching(0.9).toString());
    }

    @Test
    void aerationRaisesThePHAndKeepsTheAlkalinity() {
        Water part = Aeration.withOutdoorAir().reaching(0.9).treat(acid(5.9));
        Water all = Aeration.withOutdoorAir().treat(acid(5.9));
        assertEquals(acid(5.9).alkalinity(), all.alkalinity());
        assertTrue(Speciation.of(part).pH() > 5.9);
        assertTrue(Speciation.of(all).pH() > Speciation.of(part).pH());
        assertEquals(all, Aeration.withOutdoorAir().treat(all));
        Refused.argument(
                "share of the way to equilibrium must be from 0 to 1, but was 2.0",
                () -> Aeration.withOutdoorAir().reaching(2));
    }

    private static double sodiumBehindSoftener(double pH) {
        Water soft = Train.of(Neutralizer.withCalcite(), Softener.withSodium()).treat(acid(pH));
        return soft.total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre());
    }

    /** A soft well in granite, of our own invention. */
    private static Water acid(double pH) {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(0.20))
                .total(Ion.MAGNESIUM, mmol(0.08))
                .total(Ion.SODIUM, mmol(0.25))
                .total(Ion.CHLORIDE, mmol(0.25))
                .total(Ion.SULFATE, mmol(0.08))
                .alkalinity(Alkalinity.of(0.40, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .temperature(WaterUnits.temperature(11, WaterUnits.CELSIUS))
                .measuredPH(pH)
                .build();
    }

    private static double alkalinity(Water water) {
        return water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }
}
