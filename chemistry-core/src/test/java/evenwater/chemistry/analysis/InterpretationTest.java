package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.hardness;
import static evenwater.chemistry.analysis.Reports.interpreted;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.unmeasured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InterpretationTest {

    /** Names of ions, each to be below a limit of 2 meq/L; cations first. */
    private static final List<String> IONS = List.of(
            "calcium",
            "magnesium",
            "sodium",
            "potassium",
            "strontium",
            "barium",
            "chloride",
            "sulfate",
            "nitrate",
            "nitrite",
            "fluoride",
            "bromide");

    private static Interpretation open(int count) {
        List<String> rows = new ArrayList<>(List.of("alkalinity | 0 | meq/L"));
        IONS.stream()
                .limit(count)
                .forEach(ion -> rows.add(ion + " | <2 | meq/L" + (ion.equals("nitrate") ? " | N" : "")));
        return interpreted(rows.toArray(String[]::new));
    }

    @Test
    void withoutAnythingOpenTheOnlyCornerIsTheWater() {
        Interpretation read = interpreted("sodium | 1 | mmol/L", "chloride | 1 | mmol/L");
        assertEquals(List.of(read.water()), read.corners());
        Bounds<AmountConcentration> sodium = read.bounds(water -> water.total(Ion.SODIUM));
        assertTrue(sodium.isExact());
        assertEquals(1, sodium.value().getValue(), 0);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 5, 8})
    void upToEightOpenPointsHaveAllCombinations(int count) {
        assertEquals(1 << count, open(count).corners().size());
    }

    @ParameterizedTest
    @ValueSource(ints = {9, 10, 12})
    void beyondThatEachPointIsTriedAlone(int count) {
        Interpretation read = open(count);
        assertEquals(2 * (count + 1), read.corners().size());
        long allLow = read.corners().stream()
                .filter(corner -> corner.ions().isEmpty())
                .count();
        long allHigh = read.corners().stream()
                .filter(corner -> corner.ions().size() == count)
                .count();
        long oneHigh = read.corners().stream()
                .filter(corner -> corner.ions().size() == 1)
                .count();
        assertEquals(List.of(1L, 1L, (long) count), List.of(allLow, allHigh, oneHigh));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 6, 7, 8, 9, 12})
    void boundsAreExactHoweverManyPointsAreOpen(int count) {
        // unmeasured charge falls with each cation, 2 meq/L each, and rises with each anion
        int cations = Math.min(count, 6);
        int anions = count - cations;
        Bounds<EquivalentConcentration> charge = open(count).bounds(Water::unmeasuredCharge);
        assertEquals(-2.0 * cations, charge.low().getValue(), 1e-12);
        assertEquals(2.0 * anions, charge.high().getValue(), 1e-12);
        assertEquals(anions - cations, charge.value().getValue(), 1e-12);
        assertEquals(unmeasured(open(count).water()), charge.value().getValue(), 0);
    }

    @Test
    void aResultThatOnePointDoesNotMoveIsExact() {
        Interpretation read = open(12);
        Bounds<AmountConcentration> iodide = read.bounds(water -> water.total(Ion.IODIDE));
        assertTrue(iodide.isExact());
        Bounds<AmountConcentration> bromide = read.bounds(water -> water.total(Ion.BROMIDE));
        assertEquals(0, bromide.low().getValue(), 0);
        assertEquals(1, bromide.value().getValue(), 0);
        assertEquals(2, bromide.high().getValue(), 0);
    }

    @Test
    void aResultMayTurnRoundBetweenTheEnds() {
        // least at the best guess itself: the bounds hold the value all the same
        Bounds<AmountConcentration> distance = open(1).bounds(water -> AmountConcentration.of(
                Math.abs(millimoles(Ion.CALCIUM, water) - 0.5), AmountConcentration.MILLIMOLE_PER_LITRE));
        assertEquals(0, distance.low().getValue(), 0);
        assertEquals(0.5, distance.high().getValue(), 0);
    }

    @Test
    void whatNobodyMeasuredOpensResultsThatItMoves() {
        Interpretation calciumOnly = interpreted("calcium | 40.078 | mg/L", "sodium | 0 | mg/L", "KH | 2 | °dKH");
        Bounds<Hardness> hardness = calciumOnly.bounds(Water::hardness);
        assertEquals("1 mmol/L (1 mmol/L or more)", hardness.toText(Locale.ROOT, 3));
        assertTrue(calciumOnly.bounds(water -> water.total(Ion.CALCIUM)).isExact());
        assertTrue(calciumOnly.bounds(Water::alkalinity).isExact());
        // its magnesium would come out as sodium
        Bounds<AmountConcentration> softened =
                calciumOnly.bounds(water -> Softener.withSodium().treat(water).total(Ion.SODIUM));
        assertEquals(List.of(false, true), List.of(softened.openBelow(), softened.openAbove()));
        assertEquals(2, softened.low().getValue(), 1e-12);
    }

    @Test
    void sodiumOfAKitIsOpenUpwards() {
        Interpretation kit = interpreted("GH | 10 | °dH", "KH | 5 | °dKH");
        assertTrue(kit.bounds(Water::hardness).isExact());
        Bounds<AmountConcentration> softened =
                kit.bounds(water -> Softener.withSodium().treat(water).total(Ion.SODIUM));
        assertTrue(softened.openAbove());
        assertFalse(softened.openBelow());
        // sodium and potassium that nobody measured take from the missing anions what they bring
        assertTrue(kit.bounds(Water::unmeasuredCharge).openBelow());
    }

    @Test
    void theStrictCarbonateHardnessAtTheHardnessIsALowerBound() {
        Interpretation strict = interpreted("hardness | 10 | °dH", "carbonate hardness | 10 | °dH");
        Bounds<Alkalinity> alkalinity = strict.bounds(Water::alkalinity);
        assertEquals("3.57 meq/L (3.57 meq/L or more)", alkalinity.toText(Locale.ROOT, 3));
        assertTrue(strict.notMeasured().contains("alkalinity"));
        Interpretation below = interpreted("hardness | 10 | °dH", "carbonate hardness | 4 | °dH");
        assertTrue(below.bounds(Water::alkalinity).isExact());
    }

    @Test
    void withoutAlkalinityItMayBeAnythingThatTheCationsAllow() {
        Interpretation complete = interpreted(
                "calcium | 1 | mmol/L",
                "magnesium | 0 | mmol/L",
                "sodium | 1 | mmol/L",
                "potassium | 0 | mmol/L",
                "chloride | 0.5 | mmol/L",
                "sulfate | 0.5 | mmol/L");
        assertEquals(
                "1.5 meq/L (0 to 1.5 meq/L)", complete.bounds(Water::alkalinity).toText(Locale.ROOT, 3));
        Interpretation withoutSodium = interpreted("hardness | 1 | mmol/L", "chloride | 3 | mmol/L");
        assertEquals(
                "0 meq/L (0 meq/L or more)",
                withoutSodium.bounds(Water::alkalinity).toText(Locale.ROOT, 3));
    }

    @Test
    void aCornerWithoutAnswerIsNamed() {
        Interpretation read = interpreted("calcium | 40 | mg/L", "magnesium | <24.305 | mg/L");
        Softener softener = Softener.withSodium().bypassFor(Hardness.parse("1.2 mmol/L"));
        assertEquals(1.2, hardness(softener.treat(read.water())), 1e-12);
        NoAnswerException refusal = assertThrows(
                NoAnswerException.class,
                () -> read.bounds(water -> softener.treat(water).hardness()));
        assertTrue(
                refusal.getMessage()
                        .startsWith(
                                "for another water that the report leaves open, wanted hardness 1.2 mmol/L is above "
                                        + "the 0.99"),
                refusal::getMessage);
        assertEquals(2, refusal.numbers().size());
    }

    @Test
    void listsCannotBeChanged() {
        Interpretation read = interpreted("sodium | <1 | mmol/L", "hardness | 9 | °dH");
        assertThrows(UnsupportedOperationException.class, () -> read.corners().clear());
        assertThrows(
                UnsupportedOperationException.class, () -> read.assumptions().clear());
        assertThrows(UnsupportedOperationException.class, () -> read.findings().clear());
        assertThrows(
                UnsupportedOperationException.class, () -> read.notMeasured().clear());
        assertThrows(
                UnsupportedOperationException.class, () -> read.report().notes().clear());
        assertThrows(
                UnsupportedOperationException.class,
                () -> read.report().unusedRows().clear());
    }

    @Test
    void aReportMayBeInterpretedAgain() {
        LabReport report = Reports.read("hardness | 9 | °dH", "sodium | <2 | mg/L");
        Interpretation one = report.interpret();
        Interpretation other = report.interpret();
        assertNotSame(one, other);
        assertSame(report, one.report());
        assertEquals(one.water(), other.water());
        assertEquals(one.assumptions(), other.assumptions());
    }

    @Test
    void aCompleteReportLeavesNothingUnmeasured() {
        Interpretation read = interpreted(
                "calcium | 1 | mmol/L",
                "magnesium | 1 | mmol/L",
                "sodium | 1 | mmol/L",
                "potassium | <1 | mmol/L",
                "alkalinity | 3 | meq/L",
                "chloride | 1 | mmol/L",
                "sulfate | 1 | mmol/L",
                "temperature | 10 | °C");
        assertEquals(List.of(), read.notMeasured());
        assertEquals(List.of(), read.findings());
        assertEquals(
                List.of(
                        "given as an interval: potassium <1 mmol/L; its middle as best guess, both its ends in the bounds"),
                read.assumptions());
        assertTrue(read.isMeasured(Ion.POTASSIUM));
        assertFalse(read.isMeasured(Ion.NITRATE));
    }

    @Test
    void theReadmeSaysWhatHappensWithoutTheSodiumRow() {
        Interpretation read =
                interpreted("total hardness | 22 | gr/gal | CaCO3", "KH | 9.5 | °dH", "nitrate | 4.1 | mg/L | N");
        assertEquals(
                "173 mg/L Na⁺ (173 mg/L Na⁺ or more)",
                read.bounds(water -> Softener.withSodium()
                                .treat(water)
                                .total(Ion.SODIUM)
                                .to(Ion.SODIUM.milligramPerLitre()))
                        .toText(Locale.ROOT, 4));
    }

    @Test
    void aRangeEndsWhereEvenFarMoreMovesNothing() {
        ReverseOsmosis membrane = ReverseOsmosis.rejecting(0.9, 0.98);
        Interpretation read = interpreted(
                "calcium | 1 | mmol/L",
                "magnesium | 0 | mmol/L",
                "sodium | 5 | mmol/L",
                "potassium | 0 | mmol/L",
                "chloride | 4 | mmol/L",
                "sulfate | 0 | mmol/L",
                "bicarbonate | 1 | meq/L",
                "pH | 9");
        Bounds<AmountConcentration> sodium =
                read.bounds(water -> membrane.treat(water).total(Ion.SODIUM));
        assertFalse(sodium.openAbove());
        assertEquals(0.1 * 5, sodium.high().getValue(), 1e-6); // a membrane lets through 10 % and never more
        assertTrue(read.bounds(water -> membrane.treat(water).alkalinity()).openAbove());
        Bounds<Hardness> carbonate = interpreted("calcium | 1 | mmol/L", "alkalinity | 3 | meq/L")
                .bounds(water ->
                        water.hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM).carbonate());
        assertFalse(carbonate.openAbove());
        assertEquals(1, carbonate.low().getValue(), 0);
        assertEquals(1.5, carbonate.high().getValue(), 0);
    }

    @Test
    void whereNobodyKnowsTheEndTheRangeStaysOpen() {
        Treatment limited = Treatment.of("own", water -> {
            if (hardness(water) > 1000) {
                throw new NoAnswerException("too hard");
            }
            return water;
        });
        Bounds<Hardness> hardness = interpreted("calcium | 1 | mmol/L")
                .bounds(water -> limited.treat(water).hardness());
        assertTrue(hardness.openAbove());
    }
}
