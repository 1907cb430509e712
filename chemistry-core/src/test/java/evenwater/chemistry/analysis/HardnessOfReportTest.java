package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.hardness;
import static evenwater.chemistry.analysis.Reports.interpreted;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hardness, calcium and magnesium: any of them, all of them, none of them. */
class HardnessOfReportTest {

    private static final String THREE_TO_ONE =
            "calcium to magnesium 3 : 1 by amount assumed; the bounds try all calcium and all magnesium";
    private static final String NO_ALKALINITY =
            "alkalinity not measured: taken as what the measured ions leave, at least 0; the bounds try none of it";
    private static final String NO_TEMPERATURE = "temperature not stated: 25 °C";

    @Test
    void hardnessAloneIsSharedByTheUsualAssumption() {
        Interpretation read = interpreted("hardness | 4 | mmol/L");
        assertEquals(List.of(THREE_TO_ONE, NO_ALKALINITY, NO_TEMPERATURE), read.assumptions());
        assertEquals(3, millimoles(Ion.CALCIUM, read.water()), 0);
        assertEquals(1, millimoles(Ion.MAGNESIUM, read.water()), 0);
        Bounds<AmountConcentration> calcium = read.bounds(water -> water.total(Ion.CALCIUM));
        assertEquals(0, calcium.low().getValue(), 0);
        assertEquals(4, calcium.high().getValue(), 0);
        assertTrue(read.bounds(Water::hardness).isExact());
        assertFalse(read.isMeasured(Ion.CALCIUM));
        assertFalse(read.isMeasured(Ion.MAGNESIUM));
        assertTrue(read.notMeasured().containsAll(List.of("calcium", "magnesium")));
        assertEquals(4, read.corners().size());
        Bounds<Alkalinity> alkalinity = read.bounds(Water::alkalinity);
        assertEquals(0, alkalinity.low().getValue(), 0);
        assertEquals(8, alkalinity.value().getValue(), 0);
        assertEquals(8, alkalinity.high().getValue(), 0);
    }

    @ParameterizedTest
    @CsvSource({"3, false, 3", "1, false, 2", "4.95, true, 3.0007", "1.648961119, true, 2"})
    void theShareMayBeStatedByAmountOrByMass(double ratio, boolean byMass, double calcium) {
        CalciumToMagnesium shared = new CalciumToMagnesium(ratio, byMass);
        Interpretation read = Reports.read("hardness | 4 | mmol/L")
                .interpret(Assumptions.usual().with(shared));
        // 4.95 is rounded from 3 · 40.078/24.305 = 4.9469; 1.648961119 is 40.078/24.305 in ten digits
        assertEquals(calcium, millimoles(Ion.CALCIUM, read.water()), 1e-3);
        assertEquals(4, hardness(read.water()), 1e-12);
        assertEquals(
                "calcium to magnesium " + shared + " assumed; the bounds try all calcium and all magnesium",
                read.assumptions().get(0));
    }

    @Test
    void calciumTakesItsPartOfTheHardness() {
        Interpretation read = interpreted("hardness | 4 | mmol/L", "calcium | 2.5 | mmol/L");
        assertEquals(1.5, millimoles(Ion.MAGNESIUM, read.water()), 1e-15);
        assertEquals(
                List.of("magnesium taken as hardness less calcium", NO_ALKALINITY, NO_TEMPERATURE), read.assumptions());
        assertTrue(read.isMeasured(Ion.CALCIUM));
        assertTrue(read.isMeasured(Ion.MAGNESIUM));
        assertEquals(List.of("sodium", "potassium", "chloride", "sulfate", "alkalinity"), read.notMeasured());
        assertEquals(List.of(), read.findings());
    }

    @Test
    void magnesiumTakesItsPartOfTheHardness() {
        Interpretation read = interpreted("hardness | 4 | mmol/L", "Hardness (magnesium) | 1.5 | mmol/L");
        assertEquals(2.5, millimoles(Ion.CALCIUM, read.water()), 1e-15);
        assertEquals(
                "calcium taken as hardness less magnesium", read.assumptions().get(0));
        assertTrue(read.isMeasured(Ion.CALCIUM));
        assertTrue(read.isMeasured(Ion.MAGNESIUM));
    }

    @Test
    void calciumBelowALimitLeavesMagnesiumOpen() {
        Interpretation read = interpreted("hardness | 4 | mmol/L", "calcium | <1 | mmol/L");
        Bounds<AmountConcentration> magnesium = read.bounds(water -> water.total(Ion.MAGNESIUM));
        assertEquals(3, magnesium.low().getValue(), 0);
        assertEquals(3.5, magnesium.value().getValue(), 0);
        assertEquals(4, magnesium.high().getValue(), 0);
        assertTrue(read.bounds(Water::hardness).isExact());
    }

    @Test
    void calciumMayBeAllOfTheHardness() {
        Interpretation read = interpreted("hardness | 4 | mmol/L", "calcium | 4 | mmol/L");
        assertEquals(0, millimoles(Ion.MAGNESIUM, read.water()), 0);
        assertEquals(List.of(), read.findings());
    }

    @Test
    void calciumALittleAboveTheHardnessLeavesNoMagnesium() {
        Interpretation read = interpreted("hardness | 4 | mmol/L", "calcium | 4.1 | mmol/L");
        assertEquals(0, millimoles(Ion.MAGNESIUM, read.water()), 0);
        assertEquals(4.1, millimoles(Ion.CALCIUM, read.water()), 0);
        assertEquals(
                List.of("calcium 4.1 mmol/L is a little more than the hardness 4 mmol/L; magnesium counted as 0"),
                read.findings());
    }

    @ParameterizedTest
    @CsvSource({"calcium, 4.3, 4.300", "magnesium, 4.21, 4.210"})
    void moreCalciumThanHardnessIsRefused(String part, String value, String millimoles) {
        assertRefused(
                2,
                part + " " + value + " mmol/L is more than the hardness 4 mmol/L (" + millimoles
                        + " against 4.000 mmol/L): one of them is wrong",
                "hardness | 4 | mmol/L",
                part + " | " + value + " | mmol/L");
    }

    @Test
    void theSumOfCalciumAndMagnesiumIsComparedWithTheHardness() {
        String[] rows = {"hardness | 4 | mmol/L", "calcium | 3 | mmol/L", "magnesium | 1.19 | mmol/L"};
        assertEquals(List.of(), interpreted(rows).findings()); // within 5 %
        rows[2] = "magnesium | 1.3 | mmol/L";
        Interpretation read = interpreted(rows);
        assertEquals(
                List.of(
                        "hardness 4 mmol/L disagrees with calcium and magnesium, which make 4.300 mmol/L (+7.5 %); used these"),
                read.findings());
        assertEquals(4.3, hardness(read.water()), 1e-15 * 4);
        rows[2] = "magnesium | 0.7 | mmol/L";
        assertEquals(
                List.of(
                        "hardness 4 mmol/L disagrees with calcium and magnesium, which make 3.700 mmol/L (-7.5 %); used these"),
                interpreted(rows).findings());
        rows[0] = "hardness | 0 | mmol/L";
        assertEquals(
                List.of("hardness 0 mmol/L disagrees with calcium and magnesium, which make 3.700 mmol/L; used these"),
                interpreted(rows).findings());
    }

    @Test
    void oneOfCalciumAndMagnesiumMakesALowerBound() {
        Interpretation calcium = interpreted("calcium | 3 | mmol/L");
        assertEquals(
                "magnesium not measured: counted as 0, so that hardness is a lower bound",
                calcium.assumptions().get(0));
        assertEquals(3, hardness(calcium.water()), 0);
        Interpretation magnesium = interpreted("magnesium | 1 | mmol/L");
        assertEquals(
                "calcium not measured: counted as 0, so that hardness is a lower bound",
                magnesium.assumptions().get(0));
        assertEquals(
                List.of("calcium", "sodium", "potassium", "chloride", "sulfate", "alkalinity"),
                magnesium.notMeasured());
    }

    @Test
    void withoutAnyOfThemHardnessCountsAsZero() {
        Interpretation read = interpreted("sodium | 1 | mmol/L");
        assertEquals(
                "neither hardness nor calcium and magnesium measured: counted as 0",
                read.assumptions().get(0));
        assertEquals(0, hardness(read.water()), 0);
    }

    private static final String TITRATED =
            "hardness taken as calcium and magnesium alone; the bounds also try that it counts strontium, iron(II), as a titration may";

    @Test
    void aTitratedHardnessMayCountTheOthersAsWell() {
        Interpretation read = interpreted(
                "hardness | 4 | mmol/L",
                "calcium | 2.5 | mmol/L",
                "strontium | 0.2 | mmol/L",
                "barium | 0 | mmol/L",
                "iron | 0.1 | mmol/L");
        assertTrue(read.assumptions().contains(TITRATED), read.assumptions().toString());
        Bounds<AmountConcentration> magnesium = read.bounds(water -> water.total(Ion.MAGNESIUM));
        assertEquals(1.2, magnesium.low().getValue(), 1e-15);
        assertEquals(1.5, magnesium.value().getValue(), 0);
        assertEquals(1.5, magnesium.high().getValue(), 0);
        // what the resin takes up in all is between what was titrated and that with the others once more: 2 Na⁺ each
        Bounds<AmountConcentration> sodium =
                read.bounds(water -> Softener.withSodium().treat(water).total(Ion.SODIUM));
        assertEquals(2 * 4, sodium.low().getValue(), 1e-14);
        assertEquals(2 * 4.3, sodium.high().getValue(), 1e-14);
    }

    @Test
    void aTitratedCalciumHardnessMayCountStrontium() {
        Interpretation read = interpreted(
                "calcium hardness | 2 | mmol/L",
                "hardness | 3 | mmol/L",
                "strontium | 0.2 | mmol/L",
                "iron | 1 | mmol/L");
        assertTrue(read.assumptions()
                .contains("calcium hardness taken as calcium alone; the bounds also try that it counts strontium, "
                        + "as a titration may"));
        Bounds<AmountConcentration> calcium = read.bounds(water -> water.total(Ion.CALCIUM));
        assertEquals(1.8, calcium.low().getValue(), 1e-15);
        assertEquals(2, calcium.high().getValue(), 0);
        // one titration more or less: what both count moves together
        Bounds<AmountConcentration> magnesium = read.bounds(water -> water.total(Ion.MAGNESIUM));
        assertEquals(0, magnesium.low().getValue(), 0);
        assertEquals(1, magnesium.high().getValue(), 0);
    }

    @Test
    void aHardnessAndItsPartsDisagreeOnlyIfTheIntervalsDoNotMeet() {
        assertEquals(
                List.of(),
                interpreted("hardness | 10-20 | °dH", "calcium | 60 | mg/L", "magnesium | 13 | mg/L")
                        .findings());
        assertEquals(
                List.of(
                        "hardness 13-20 °dH disagrees with calcium and magnesium, which make 2.032 mmol/L (-9.7 %); used these"),
                interpreted("hardness | 13-20 | °dH", "calcium | 60 | mg/L", "magnesium | 13 | mg/L")
                        .findings());
    }

    @Test
    void aSharedHardnessMayCountTheOthersAsWell() {
        Interpretation read = interpreted("hardness | 4 | mmol/L", "strontium | <0.2 | mmol/L", "iron | 0.1 | mmol/L");
        assertTrue(read.assumptions().contains(TITRATED));
        Bounds<Hardness> hardness = read.bounds(Water::hardness);
        assertEquals(3.7, hardness.low().getValue(), 1e-15 * 4);
        assertEquals(4, hardness.high().getValue(), 0);
    }

    @Test
    void moreOfTheOthersThanHardnessLeavesNothing() {
        Interpretation read = interpreted("hardness | 0.1 | mmol/L", "iron | 0.5 | mmol/L");
        assertEquals(0, read.bounds(Water::hardness).low().getValue(), 0);
    }

    @Test
    void theSumMayBeBelowATitratedHardnessByTheOthers() {
        String[] rows = {
            "hardness | 4 | mmol/L", "calcium | 2.5 | mmol/L", "magnesium | 1 | mmol/L", "strontium | 0.5 | mmol/L"
        };
        assertEquals(List.of(), interpreted(rows).findings());
        rows[3] = "strontium | 0.2 | mmol/L";
        assertEquals(
                List.of("hardness 4 mmol/L disagrees with calcium and magnesium, which make 3.500 mmol/L, "
                        + "with strontium up to 3.700 mmol/L (-7.5 %); used these"),
                interpreted(rows).findings());
    }

    @Test
    void calciumHardnessIsCalcium() {
        Interpretation read = interpreted("Calcium hardness | 100.086 | mg/L | CaCO3", "Mg hardness | 5.6077 | °dH");
        assertEquals(1, millimoles(Ion.CALCIUM, read.water()), 1e-15);
        assertEquals(1, millimoles(Ion.MAGNESIUM, read.water()), 1e-15);
        assertTrue(read.isMeasured(Ion.CALCIUM));
        assertTrue(read.isMeasured(Ion.MAGNESIUM));
        assertEquals(List.of(NO_ALKALINITY, NO_TEMPERATURE), read.assumptions());
    }

    @Test
    void calciumAndItsHardnessAreCompared() {
        Interpretation read = interpreted("calcium | 2 | mmol/L", "calcium hardness | 2.04 | mmol/L");
        assertEquals(List.of(), read.findings());
        assertEquals(2, millimoles(Ion.CALCIUM, read.water()), 0);
        assertEquals(
                List.of("calcium 2 mmol/L and calcium hardness 2.1 mmol/L disagree; used the first"),
                interpreted("calcium | 2 | mmol/L", "calcium hardness | 2.1 | mmol/L")
                        .findings());
    }

    @Test
    void compensatedHardnessStaysOutOfTheWater() {
        LabReport report = Reports.read("compensated hardness | 25 | gpg", "iron | 1 | mg/L", "sodium | 23 | mg/L");
        assertEquals(
                CompensatedHardness.of(25, CompensatedHardness.GRAIN_PER_US_GALLON),
                report.compensatedHardness().orElseThrow());
        Interpretation read = report.interpret();
        assertEquals(0, hardness(read.water()), 0);
        assertEquals(List.of(Ion.SODIUM, Ion.IRON_II), read.water().ions());
        assertEquals(
                "neither hardness nor calcium and magnesium measured: counted as 0",
                read.assumptions().get(0));
        Water softened = Softener.withSodium().treat(read.water());
        double iron = millimoles(Ion.IRON_II, read.water());
        assertEquals(2 * iron, millimoles(Ion.SODIUM, softened) - millimoles(Ion.SODIUM, read.water()), 1e-15);
    }

    @Test
    void compensatedHardnessIsNotHardness() {
        Interpretation read = interpreted("compensated hardness | 25 | gr/gal | CaCO3", "hardness | 22 | gpg");
        assertEquals(22, read.water().hardness().in(Hardness.GRAIN_PER_US_GALLON), 1e-12 * 22);
        assertEquals(
                25, read.report().compensatedHardness().orElseThrow().in(CompensatedHardness.GRAIN_PER_US_GALLON), 0);
        assertTrue(read.assumptions()
                .contains("compensated hardness in gr/gal read as grain per US gallon, as the softening trade does"));
    }
}
