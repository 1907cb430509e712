package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.alkalinity;
import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.interpreted;
import static evenwater.chemistry.analysis.Reports.unmeasured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Alkalinity by itself, by its forms, by the strict carbonate hardness, or by what the ions leave. */
class AlkalinityOfReportTest {

    private static final String BELOW = "alkalinity taken from the carbonate hardness, which is below the hardness";
    private static final String LOWER_BOUND =
            "alkalinity taken as the carbonate hardness, which is only its lower bound";

    @Test
    void alkalinityMayBeMeasured() {
        Interpretation read = interpreted("alkalinity | 3 | meq/L", "sodium | 2 | mmol/L");
        assertEquals(3, alkalinity(read.water()), 0);
        assertEquals(1, unmeasured(read.water()), 1e-15);
        assertFalse(read.notMeasured().contains("alkalinity"));
    }

    @Test
    void theHobbysCarbonateHardnessIsAlkalinityAndMayExceedTheHardness() {
        Interpretation read = interpreted("GH | 5 | °dH", "KH | 10 | °dH");
        assertEquals(3.56652460, alkalinity(read.water()), 1e-8);
        assertEquals(List.of(), read.findings());
        assertFalse(read.notMeasured().contains("alkalinity"));
    }

    @Test
    void alkalinityIsTheSumOfItsForms() {
        Interpretation read =
                interpreted("bicarbonate | 61.016 | mg/L", "CO3 | 60.008 | mg/L", "hydroxide | 1 | mmol/L");
        assertEquals(1 + 2 + 1, alkalinity(read.water()), 1e-12);
        assertTrue(read.assumptions()
                .contains("alkalinity taken as the sum of bicarbonate, carbonate and hydroxide as far as stated; "
                        + "nobody measured whether the pH is below 8.3"));
        assertFalse(read.notMeasured().contains("alkalinity"));
        assertEquals(3, alkalinity(interpreted("HCO3 | 3 | meq/L").water()), 0);
        assertEquals(
                3,
                alkalinity(interpreted("bicarbonate alkalinity | 150.129 | mg/L | CaCO3")
                        .water()),
                1e-12);
        assertEquals(
                3.2,
                alkalinity(interpreted(
                                "Bicarbonate alkalinity | 150.129 | mg/L | CaCO3",
                                "Carbonate alkalinity | 10.0086 | mg/L | CaCO3",
                                "Hydroxide alkalinity | 0 | mg/L | CaCO3")
                        .water()),
                1e-12);
    }

    @Test
    void withoutBicarbonateTheOtherFormsAreALowerBound() {
        Interpretation read = interpreted("carbonate | 1 | mmol/L", "hydroxide | 0.5 | mmol/L");
        assertEquals(2.5, alkalinity(read.water()), 0);
        assertTrue(read.assumptions()
                .contains("bicarbonate not stated: alkalinity taken as carbonate and hydroxide, only its lower bound"));
        assertTrue(read.notMeasured().contains("alkalinity"));
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @CsvSource(delimiter = '|', textBlock = """
            # alkalinity, bicarbonate, carbonate in meq/L  | sum in the finding
            4  | 4    |     | ''
            4  | 4.19 |     | ''
            4  | 4.21 |     | 4.210
            4  | 3.81 |     | ''
            4  | 3.79 |     | 3.790
            4  | 3.6  | 0.4 | ''
            4  | 3.6  | 0   | 3.600
            4  |      | 0   | ''
            4  |      | 4.1 | ''
            4  |      | 4.3 | 4.300
            -1 | 0    | 0   | ''
            -1 | 0.1  |     | 0.100
            """)
    void formsAreComparedWithTheAlkalinity(String total, String bicarbonate, String carbonate, String sum) {
        Interpretation read = interpreted(
                "alkalinity | " + total + " | meq/L",
                "bicarbonate | " + (bicarbonate == null ? "" : bicarbonate) + " | meq/L",
                "carbonate | " + (carbonate == null ? "" : carbonate) + " | meq/L");
        assertEquals(Double.parseDouble(total), alkalinity(read.water()), 0);
        String finding = "alkalinity " + total + " meq/L disagrees with bicarbonate and carbonate, which make " + sum
                + " meq/L; used the first";
        assertEquals(sum.isEmpty() ? List.of() : List.of(finding), read.findings());
    }

    @Test
    void strictCarbonateHardnessBelowTheHardnessIsTheAlkalinity() {
        Interpretation read = interpreted("hardness | 20 | °dH", "carbonate hardness | 10 | °dH");
        assertEquals(3.56652460, alkalinity(read.water()), 1e-8);
        assertTrue(read.assumptions().contains(BELOW));
        assertFalse(read.notMeasured().contains("alkalinity"));
    }

    @ParameterizedTest
    @CsvSource({"10, 10", "10, 9.995", "10, 10.4"})
    void strictCarbonateHardnessAtTheHardnessIsOnlyALowerBound(String hardness, String carbonate) {
        Interpretation read =
                interpreted("hardness | " + hardness + " | °dH", "Karbonathärte | " + carbonate + " | °dH");
        assertTrue(read.assumptions().contains(LOWER_BOUND));
        assertTrue(read.notMeasured().contains("alkalinity"));
    }

    @Test
    void withoutTheHardnessCalciumAndMagnesiumTell() {
        String[] rows = {"calcium | 2 | mmol/L", "magnesium | 1 | mmol/L", "carbonate hardness | 2 | mmol/L"};
        assertTrue(interpreted(rows).assumptions().contains(BELOW));
        assertEquals(4, alkalinity(interpreted(rows).water()), 0);
        rows[1] = "sodium | 1 | mmol/L";
        assertTrue(interpreted(rows).assumptions().contains(LOWER_BOUND));
        rows[0] = "chloride | 1 | mmol/L";
        assertTrue(interpreted(rows).assumptions().contains(LOWER_BOUND));
        rows[1] = "magnesium | 5 | mmol/L";
        assertTrue(interpreted(rows).assumptions().contains(LOWER_BOUND));
    }

    @Test
    void strictCarbonateHardnessAboveTheHardnessIsRefused() {
        assertRefused(
                2,
                "carbonate hardness 15 °dH is more than the hardness 10 °dH: as a part of it it cannot be; "
                        + "if it is the KH of a kit, call it KH",
                "hardness | 10 | °dH",
                "carbonate hardness | 15 | °dH");
    }

    @Test
    void strictCarbonateHardnessIsComparedWithTheAlkalinity() {
        String[] rows = {"alkalinity | 3 | meq/L", "carbonate hardness | 1.5 | mmol/L", "hardness | 3 | mmol/L"};
        assertEquals(List.of(), interpreted(rows).findings());
        assertEquals(3, alkalinity(interpreted(rows).water()), 0);
        rows[1] = "carbonate hardness | 1.57 | mmol/L";
        assertEquals(List.of(), interpreted(rows).findings()); // 5 %
        rows[1] = "carbonate hardness | 1.58 | mmol/L";
        assertEquals(
                List.of("alkalinity 3 meq/L disagrees with the carbonate hardness 1.58 mmol/L, which is never more; "
                        + "used the first"),
                interpreted(rows).findings());
        rows[0] = "bicarbonate | 2 | meq/L";
        String[] withCarbonate = {rows[0], rows[1], rows[2], "carbonate | 0.5 | mmol/L"}; // 2 + 2 · 0.5 meq/L
        assertEquals(
                List.of("bicarbonate 2 meq/L disagrees with the carbonate hardness 1.58 mmol/L, which is never more; "
                        + "used the first"),
                interpreted(withCarbonate).findings());
        withCarbonate[1] = "carbonate hardness | 1.5 | mmol/L";
        assertEquals(List.of(), interpreted(withCarbonate).findings());
        rows[0] = "bicarbonate | 3 | meq/L";
        assertEquals(
                List.of("bicarbonate 3 meq/L disagrees with the carbonate hardness 1.58 mmol/L, which is never more; "
                        + "used the first"),
                interpreted(rows).findings());
    }

    @Test
    void strictCarbonateHardnessIsTheSmallerOfHardnessAndAlkalinity() {
        String[] rows = {"KH | 8 | °dH", "carbonate hardness | 7.7 | °dH", "GH | 12 | °dH"};
        assertEquals(List.of(), interpreted(rows).findings());
        rows[1] = "carbonate hardness | 7.5 | °dH";
        assertEquals(
                List.of("alkalinity 8 °dH disagrees with the carbonate hardness 7.5 °dH, which is the smaller of "
                        + "alkalinity and hardness; used the first"),
                interpreted(rows).findings());
        rows[2] = "GH | 7.8 | °dH";
        assertEquals(List.of(), interpreted(rows).findings());
        rows[2] = "calcium | 10 | mg/L";
        assertEquals(List.of(), interpreted(rows).findings());
    }

    @Test
    void strictCarbonateHardnessIsPreferredToCarbonateAlone() {
        Interpretation read =
                interpreted("carbonate | 0 | mmol/L", "carbonate hardness | 1 | mmol/L", "GH | 2 | mmol/L");
        assertEquals(2, alkalinity(read.water()), 0);
        assertTrue(read.assumptions().contains(BELOW));
    }

    @Test
    void strictCarbonateHardnessBelowALimitIsAnInterval() {
        Interpretation read = interpreted("hardness | 2 | mmol/L", "carbonate hardness | <1 | mmol/L");
        assertEquals(1, alkalinity(read.water()), 0);
        assertEquals(2, read.bounds(water -> water.alkalinity()).high().getValue(), 0);
        assertTrue(read.assumptions().contains(BELOW));
    }

    @Test
    void withoutAnyOfThemAlkalinityClosesTheBalance() {
        Interpretation read = interpreted("sodium | 3 | mmol/L", "chloride | 1 | mmol/L");
        assertEquals(2, alkalinity(read.water()), 0);
        assertEquals(0, unmeasured(read.water()), 0);
        assertTrue(
                read.assumptions()
                        .contains(
                                "alkalinity not measured: taken as what the measured ions leave, at least 0; the bounds try none of it"));
        assertTrue(read.notMeasured().contains("alkalinity"));
    }

    @Test
    void whatTheIonsLeaveIsNeverNegative() {
        Interpretation read = interpreted("sodium | 1 | mmol/L", "chloride | 3 | mmol/L");
        assertEquals(0, alkalinity(read.water()), 0);
        assertEquals(2, unmeasured(read.water()), 0);
    }

    @Test
    void mineralAcidIsNegativeAlkalinity() {
        assertEquals(-1, alkalinity(interpreted("acid capacity | -1 | mmol/L").water()), 0);
    }

    @Test
    void bicarbonateAloneAboveTheTurnOfPhenolphthaleinIsALowerBound() {
        Interpretation read = interpreted("bicarbonate | 2 | meq/L", "pH | 8.9");
        assertTrue(
                read.assumptions()
                        .contains(
                                "carbonate not stated at pH 8.9: alkalinity taken as the forms that are, only its lower bound"));
        assertTrue(read.notMeasured().contains("alkalinity"));
        Bounds<Alkalinity> alkalinity = read.bounds(Water::alkalinity);
        assertEquals(2, alkalinity.low().getValue(), 0);
        assertTrue(alkalinity.openAbove());
        assertFalse(
                interpreted("bicarbonate | 2 | meq/L", "pH | 8.3").notMeasured().contains("alkalinity"));
        assertFalse(interpreted("bicarbonate | 2 | meq/L", "carbonate | 0 | meq/L", "pH | 8.9")
                .notMeasured()
                .contains("alkalinity"));
        assertFalse(
                interpreted("alkalinity | 2 | meq/L", "pH | 8.9").notMeasured().contains("alkalinity"));
    }

    @ParameterizedTest
    @CsvSource({"alkalinity, 0", "alkalinity, <0.2", "bicarbonate, 0"})
    void noAlkalinityInAcidIsOnlyItsUpperBound(String name, String value) {
        Interpretation read = interpreted(name + " | " + value + " | meq/L", "pH | 4.1");
        assertTrue(read.assumptions().contains("pH 4.1 means mineral acid: no alkalinity is only its upper bound"));
        Bounds<Alkalinity> alkalinity = read.bounds(Water::alkalinity);
        assertTrue(alkalinity.openBelow());
        assertFalse(alkalinity.openAbove());
        assertTrue(read.notMeasured().contains("alkalinity"));
        assertFalse(interpreted(name + " | " + value + " | meq/L", "pH | 4.5")
                .bounds(Water::alkalinity)
                .openBelow());
    }

    @Test
    void acidThatWasTitratedIsKnown() {
        Interpretation read = interpreted("alkalinity | -1 | meq/L", "pH | 3.1");
        assertTrue(read.bounds(Water::alkalinity).isExact());
        assertFalse(read.notMeasured().contains("alkalinity"));
    }

    @Test
    void alkalinityInAcidIsAFinding() {
        Interpretation read = interpreted("alkalinity | 1 | meq/L", "pH | 4.1");
        assertEquals(
                List.of(
                        "alkalinity of 1.000 meq/L disagrees with pH 4.1, at which there is none",
                        "pH 4.1 not used: with the alkalinity it means CO₂ of 5.47 atm, more than any tap water holds: one of the two is wrong"),
                read.findings());
        assertEquals(1, alkalinity(read.water()), 0);
    }

    @Test
    void inAcidThePHTellsTheLeastAcidAndTheIonsKeepTheirImbalance() {
        Interpretation acid = interpreted("sodium | 1 | mmol/L", "chloride | 3 | mmol/L", "pH | 4");
        assertEquals(-0.1, alkalinity(acid.water()), 1e-15);
        assertEquals(1.9, unmeasured(acid.water()), 1e-15);
        assertTrue(acid.assumptions()
                .contains("alkalinity not measured: taken as -0.100 meq/L, the H⁺ of pH 4.0; acid of metals and HSO₄⁻ "
                        + "makes it less"));
        assertTrue(acid.bounds(Water::alkalinity).openBelow());
        assertFalse(acid.bounds(Water::alkalinity).openAbove());
        assertTrue(acid.notMeasured().contains("alkalinity"));
    }

    @Test
    void hydroxideCountsAtAVeryHighPH() {
        Interpretation read = interpreted("bicarbonate | 1 | mmol/L", "carbonate | 1 | mmol/L", "pH | 11");
        assertTrue(read.bounds(Water::alkalinity).openAbove());
        assertTrue(
                read.assumptions()
                        .contains(
                                "hydroxide not stated at pH 11.0: alkalinity taken as the forms that are, only its lower bound"));
        assertTrue(
                interpreted("bicarbonate | 1 | mmol/L", "carbonate | 1 | mmol/L", "hydroxide | 1 | mmol/L", "pH | 11")
                        .bounds(Water::alkalinity)
                        .isExact());
        assertTrue(interpreted("bicarbonate | 1 | mmol/L", "carbonate | 1 | mmol/L", "pH | 10")
                .bounds(Water::alkalinity)
                .isExact());
    }

    @Test
    void anIntervalOfThePHCountsByItsEnds() {
        assertTrue(interpreted("bicarbonate | 2 | mmol/L", "pH | 7.2-9.2")
                .bounds(Water::alkalinity)
                .openAbove());
        Interpretation acid = interpreted("alkalinity | 0 | meq/L", "pH | 4.0-5.5");
        assertTrue(acid.bounds(Water::alkalinity).openBelow());
        assertTrue(acid.assumptions().contains("pH 4.0 means mineral acid: no alkalinity is only its upper bound"));
        assertEquals(4.75, Speciation.of(acid.water()).pH(), 1e-9);
        assertEquals(
                List.of(), interpreted("alkalinity | 1 | meq/L", "pH | 4.0-6.5").findings());
    }

    @Test
    void intervalsDisagreeOnlyIfTheyDoNotMeet() {
        assertEquals(
                List.of(),
                interpreted("alkalinity | 5-9 | °dH", "bicarbonate | 120 | mg/L")
                        .findings());
        assertEquals(
                List.of(
                        "alkalinity 6-9 °dH disagrees with bicarbonate and carbonate, which make 1.967 meq/L; used the first"),
                interpreted("alkalinity | 6-9 | °dH", "bicarbonate | 120 | mg/L")
                        .findings());
        assertEquals(
                List.of(),
                interpreted("alkalinity | 2 | meq/L", "bicarbonate | 1.2 | mmol/L", "pH | 9.2")
                        .findings());
    }

    @Test
    void carbonateHardnessInAUnitOfAlkalinityIsAskedAbout() {
        assertRefused(
                1,
                "Carbonate hardness '8 dKH': dKH is a unit of alkalinity: call it KH if it is that of a kit, or write °dH",
                "Carbonate hardness | 8 | dKH");
    }
}
