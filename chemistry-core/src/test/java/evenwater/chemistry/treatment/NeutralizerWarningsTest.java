package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Mineral;
import evenwater.chemistry.equilibrium.MineralEquilibrium;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class NeutralizerWarningsTest {

    private static final String FIELD =
            "the pH of the raw water, 5.9 here, must be a field value, read at the tap at once: "
                    + "a bottle that stood open has lost CO₂ and shows a higher one";

    @Test
    void calciteIsWarnedOfTheRawPHAlone() {
        assertEquals(
                List.of(FIELD + "; at pH 5.6 the filter dissolves 2.1 mmol/L instead of 1.2 mmol/L, "
                        + "and a softener behind it adds 110 mg/L Na⁺ instead of 69 mg/L Na⁺"),
                Neutralizer.withCalcite().warnings(acid(5.9)));
    }

    @Test
    void magnesiaIsWarnedOfTheStandingBed() {
        List<String> warnings = Neutralizer.withCalcite().withMagnesia(0.3).warnings(acid(5.9));
        assertEquals(2, warnings.size());
        assertEquals(
                "water that stands in the bed goes on dissolving magnesia, in the end to pH 10.48, where brucite is saturated: "
                        + "let the first water after a standstill run off",
                warnings.get(0));
        assertTrue(warnings.get(1).startsWith(FIELD));
    }

    @Test
    void aPHAbove9IsNamedWithItsReason() {
        assertEquals(
                "the water behind this filter has pH 9.02, above 9: calcite alone would lead it to pH 8.52; take less magnesia, and let "
                        + "no water stand in the bed",
                Neutralizer.withCalcite().withMagnesia(0.9).warnings(acid(6.6)).get(0));
        assertEquals(
                "the water behind this filter has pH 9.5, above 9: calcite alone would lead it to pH 7.63; take less magnesia, and let "
                        + "no water stand in the bed",
                Neutralizer.withCalcite()
                        .withMagnesia(0.3)
                        .toPH(9.5)
                        .warnings(acid(5.9))
                        .get(0));
        assertEquals(
                "the water behind this filter has pH 9.1, above 9: calcite alone leads so soft a water with so little CO₂ to pH 9.07; "
                        + "less contact or a bypass ends lower",
                Neutralizer.withCalcite().withMagnesia(0.1).warnings(acid(7.5)).get(0));
        assertEquals(
                "the water behind this filter has pH 9.5, above 9: the raw water has pH 9.5 and needs no neutralizer",
                Neutralizer.withCalcite().warnings(acid(9.5)).get(0));
    }

    /** Saturation at pH 7.6 needs this much CO₂; with more of it the water is saturated at a lower pH. */
    @Test
    void aFilterThatFailsAtALowerPHSaysSo() {
        Neutralizer measured = Neutralizer.withCalcite().toPH(7.6);
        assertEquals(
                List.of(FIELD + "; at a pH 0.3 lower this filter could not do what it was set to"),
                measured.warnings(acid(5.9)));
    }

    @Test
    void aStandingBedOfCalciteEndsAtSaturation() {
        Neutralizer calcite = Neutralizer.withCalcite();
        assertEquals(calcite.treat(acid(5.9)), calcite.standing(acid(5.9)));
        assertEquals(calcite.treat(acid(5.9)), calcite.reaching(0.5).standing(acid(5.9)));
        assertEquals(calcite.treat(acid(5.9)), calcite.toPH(7).standing(acid(5.9)));
    }

    @Test
    void aStandingBedWithMagnesiaEndsAtBrucite() {
        Neutralizer mixture = Neutralizer.withCalcite().withMagnesia(0.3);
        Water standing = mixture.standing(acid(5.9));
        assertEquals(0, Speciation.of(standing).saturationIndex(Mineral.BRUCITE).orElseThrow(), 1e-9);
        assertEquals(
                mixture.treat(acid(5.9)).total(Ion.CALCIUM).getValue(),
                standing.total(Ion.CALCIUM).getValue(),
                1e-12);
        // a_OH = (10^-11.16 / a_Mg)^½: 1.4 mmol/L of Mg²⁺ with a coefficient of some 0.74; pKw 14.5 at 11 °C, less the
        // heat of brucite
        assertEquals(10.48, Speciation.of(standing).pH(), 0.01);
        Water warm = mixture.standing(
                acid(5.9).with(celsius(25)).withCarbon(Speciation.of(acid(5.9)).carbon()));
        assertEquals(10.0, Speciation.of(warm).pH(), 0.1);
    }

    /** The comment says 0.04: what calcite takes along when it drops is carbonate, and OH⁻ hangs on magnesium. */
    @Test
    void calciteThatDropsInTheBedWouldMakeLittleDifference() {
        Water standing = Neutralizer.withCalcite().withMagnesia(0.3).standing(acid(5.9));
        Water both = standing;
        for (int i = 0; i < 20; i++) {
            both = MineralEquilibrium.saturated(MineralEquilibrium.saturated(both, Mineral.CALCITE), Mineral.BRUCITE);
        }
        assertEquals(-0.04, Speciation.of(both).pH() - Speciation.of(standing).pH(), 0.01);
    }

    @Test
    void aWaterBeyondBrucitePassesAStandingBed() {
        Water caustic = Speciation.of(acid(11.2)).water();
        Neutralizer mixture = Neutralizer.withCalcite().withMagnesia(0.5);
        assertEquals(caustic, mixture.standing(caustic));
        assertTrue(mixture.warnings(caustic).stream().noneMatch(text -> text.contains("brucite")));
    }

    @Test
    void withoutCarbonThereIsNothingToWarnOf() {
        Water unknown = Water.builder().total(Ion.SODIUM, mmol(1)).build();
        assertThrows(NoAnswerException.class, () -> Neutralizer.withCalcite().warnings(unknown));
        assertThrows(NoAnswerException.class, () -> Neutralizer.withCalcite().standing(unknown));
    }

    /** A soft well in granite, of our own invention; caustic ones hold the alkalinity that their pH takes. */
    private static Water acid(double pH) {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(0.20))
                .total(Ion.MAGNESIUM, mmol(0.08))
                .total(Ion.SODIUM, mmol(0.25))
                .total(Ion.CHLORIDE, mmol(0.25))
                .total(Ion.SULFATE, mmol(0.08))
                .alkalinity(alkalinity(pH > 9 ? pH > 11 ? 3 : 1 : 0.40))
                .temperature(celsius(11))
                .measuredPH(pH)
                .build();
    }
}
