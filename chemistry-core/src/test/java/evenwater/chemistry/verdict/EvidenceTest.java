package evenwater.chemistry.verdict;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportOptions;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.treatment.Bypass;
import evenwater.chemistry.treatment.Dechlorination;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.ThiosulfateProduct;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvidenceTest {

    private static Evidence report(String... rows) {
        List<ReportRow> read = new ArrayList<>();
        for (String row : rows) {
            String[] f = row.split(";", -1);
            read.add(new ReportRow(read.size() + 1, f[0], f[1], f[2], f.length > 3 ? f[3] : ""));
        }
        return Evidence.from(LabReport.read(read, ReportOptions.none()).interpret());
    }

    private static final String[] WELL = {"hardness;12;°dH", "alkalinity;6;°dKH"};

    private static Evidence wellAnd(String row) {
        return report(WELL[0], WELL[1], row);
    }

    /** What goes into no water is read all the same where it harms animals. */
    @ParameterizedTest
    @CsvSource({
        "free chlorine;0.5;mg/L, chlorine, 0.5, 0.5",
        "Chlor frei;0.3;mg/l, chlorine, 0.3, 0.3",
        "Cl2;0.3;ppm, chlorine, 0.3, 0.3",
        "lead;<1;µg/L, lead, 0, 0.001",
        "Blei;12;µg/L, lead, 0.012, 0.012",
        "arsenic;3;ppb, arsenic, 0.003, 0.003",
        "nickel;ND;mg/L, nickel, 0, 0",
    })
    void poisonsOfTheReportAreRead(String row, String parameter, double low, double high) {
        var may = mass(wellAnd(row), parameter).orElseThrow();
        assertEquals(low, may.low().in(MILLIGRAM_PER_LITRE), 1e-15);
        assertEquals(high, may.high().in(MILLIGRAM_PER_LITRE), 1e-15);
    }

    @SuppressWarnings("unchecked")
    private static Optional<Bounds<MassConcentration>> mass(Evidence evidence, String parameter) {
        return evidence.known((Parameter<MassConcentration>) Parameter.named(parameter));
    }

    /** A comma that may group, a unit that nobody knows, a word: that it was tested for is all that can be read. */
    @ParameterizedTest
    @CsvSource({"'lead;1,250;µg/L'", "lead;3;drops", "lead;some;mg/L", "'lead;3;'"})
    void anUnreadableReadingLeavesAPoisonUndecided(String row) {
        var may = mass(wellAnd(row), "lead").orElseThrow();
        assertTrue(may.openAbove());
        Verdict verdict = Requirements.ofTank("general").judge(wellAnd(row));
        assertEquals(Standing.UNDECIDED, standing(verdict, Parameter.LEAD));
        assertTrue(verdict.cautions().stream().anyMatch(caution -> caution.topic() == CautionTopic.POISON));
    }

    /** Above 50 °C there are no constants: nothing follows from the pH, and all that needs none is judged. */
    @Test
    void waterTooHotForTheConstantsIsJudgedWithoutThem() {
        Evidence evidence = report("hardness;12;°dH", "alkalinity;6;°dKH", "pH;7.5;", "temperature;99.9;°C");
        assertTrue(evidence.known(Parameter.CARBON_DIOXIDE).isEmpty());
        Verdict verdict = Requirements.ofTank("soft-water breeding").judge(evidence);
        assertEquals(Standing.ABOVE, standing(verdict, Parameter.GENERAL_HARDNESS));
        assertFalse(Requirements.ofDrinkingWater().judge(evidence).findings().isEmpty());
    }

    private static Standing standing(Verdict verdict, Parameter<?> parameter) {
        return verdict.counting().stream()
                .filter(finding -> finding.requirement().parameter() == parameter)
                .findFirst()
                .orElseThrow()
                .standing();
    }

    @Test
    void theHigherOfTwoReadingsCounts() {
        Evidence evidence =
                report(WELL[0], WELL[1], "free chlorine;0.1;mg/L", "total chlorine;0.4;mg/L", "chloramine;0.2;mg/L");
        assertEquals(0.4, mass(evidence, "chlorine").orElseThrow().high().getValue());
    }

    @Test
    void chlorideIsNoChlorine() {
        assertTrue(mass(wellAnd("chloride;30;mg/L;Cl"), "chlorine").isEmpty());
        assertTrue(mass(wellAnd("copper;0.01;mg/L;Cu"), "lead").isEmpty());
    }

    @Test
    void whatTheLaboratoryLookedForIsKnownAndTheRestIsNot() {
        Evidence evidence = wellAnd("nitrite;<0.05;mg/L;NO2");
        assertEquals(
                0.05,
                Parameter.NITRITE.number(
                        evidence.known(Parameter.NITRITE).orElseThrow().high()),
                1e-12);
        assertTrue(evidence.known(Parameter.COPPER).isEmpty());
        assertTrue(evidence.known(Parameter.NITRATE).isEmpty());
        assertTrue(evidence.known(Parameter.SODIUM).isEmpty());
    }

    @Test
    void whatADoseAddsToSomethingUnmeasuredIsALeast() {
        Dosing copper = Dosing.of(
                Compound.COPPER_SULFATE_PENTAHYDRATE,
                WaterUnits.mass(1, WaterUnits.GRAM),
                WaterUnits.volume(1000, WaterUnits.LITRE));
        var may = Evidence.from(
                        LabReport.read(
                                        List.of(
                                                new ReportRow(1, "hardness", "12", "°dH", ""),
                                                new ReportRow(2, "alkalinity", "6", "°dKH", "")),
                                        ReportOptions.none())
                                .interpret(),
                        copper)
                .known(Parameter.COPPER)
                .orElseThrow();
        assertEquals(0.2545, Parameter.COPPER.number(may.low()), 1e-4); // 63.546/249.68 of 1 mg/L
        assertTrue(may.openAbove());
    }

    @Test
    void aModelWaterKnowsItsMajorIonsAndNoPoisons() {
        Evidence pure = Evidence.of(Water.pure());
        assertEquals(
                0,
                Parameter.SODIUM.number(
                        pure.known(Parameter.SODIUM).orElseThrow().value()));
        assertTrue(pure.known(Parameter.NITRITE).isEmpty());
        assertTrue(pure.known(Parameter.TOTAL_AMMONIA).isEmpty());
    }

    @Test
    void aReadingOfOnesOwnGoesFirst() {
        Evidence evidence = Evidence.of(Water.pure()).with(Parameter.PH, Parameter.PH.of(6.1));
        Verdict verdict = Requirements.ofTank("general").judge(evidence);
        assertEquals(
                "pH 6.1: below 6.5, by 0.4",
                verdict.findings().stream()
                        .filter(finding -> finding.requirement().parameter() == Parameter.PH)
                        .findFirst()
                        .orElseThrow()
                        .toString());
    }

    @Test
    void manySpoonsAreOpenTogetherAndPastTheFifthGoWithIt() {
        List<Treatment> spoons = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            spoons.add(Dosing.teaspoons(Compound.POTASSIUM_BICARBONATE, 1, WaterUnits.volume(500, WaterUnits.LITRE)));
        }
        assertEquals(33, Spoons.ways(Train.of(spoons)).size());
        assertEquals(1, Spoons.ways(Softener.withSodium()).size());
        var kh = Evidence.from(
                        LabReport.read(
                                        List.of(
                                                new ReportRow(1, "hardness", "12", "°dH", ""),
                                                new ReportRow(2, "alkalinity", "6", "°dKH", "")),
                                        ReportOptions.none())
                                .interpret(),
                        Train.of(spoons))
                .known(Parameter.CARBONATE_HARDNESS)
                .orElseThrow();
        double each = 0.27446; // °dKH of 4.9 g KHCO₃ in 500 L
        assertEquals(6 + 7 * 0.8 * each, Parameter.CARBONATE_HARDNESS.number(kh.low()), 1e-3);
        assertEquals(6 + 7 * 1.2 * each, Parameter.CARBONATE_HARDNESS.number(kh.high()), 1e-3);
    }

    @Test
    void aBypassBringsTheCautionsOfWhatItGoesPast() {
        Treatment bypass = Bypass.around(Softener.withPotassium(), 0.2);
        assertTrue(TreatmentCautions.of(bypass).topics().contains(CautionTopic.POTASSIUM));
    }

    @Test
    void aDoseThatStaysUndissolvedSaysSo() {
        Dosing gypsum = Dosing.of(
                Compound.CALCIUM_SULFATE_DIHYDRATE,
                WaterUnits.mass(10, WaterUnits.GRAM),
                WaterUnits.volume(1, WaterUnits.LITRE));
        assertTrue(TreatmentCautions.of(gypsum).handling().stream()
                .anyMatch(caution ->
                        caution.text().startsWith("Some of the calcium sulfate dihydrate stays undissolved")));
    }

    /** A report of free chlorine alone leaves chloramine unknown. */
    @ParameterizedTest
    @CsvSource({"free chlorine", "Chlor frei", "combined chlorine", "chloramine", "chlorine dioxide"})
    void aPartOfTheChlorineIsNoEvidenceThatThereIsNoOther(String part) {
        var may = mass(wellAnd(part + ";0;mg/L"), "chlorine").orElseThrow();
        assertTrue(may.openAbove());
        assertEquals(0, may.low().in(MILLIGRAM_PER_LITRE));
    }

    @Test
    void theTotalDecidesOfChlorineUnlessAPartIsMore() {
        var total = mass(report(WELL[0], WELL[1], "total chlorine;0;mg/L", "free chlorine;0;mg/L"), "chlorine")
                .orElseThrow();
        assertTrue(!total.openAbove());
        var more = mass(report(WELL[0], WELL[1], "total chlorine;0;mg/L", "free chlorine;0.4;mg/L"), "chlorine")
                .orElseThrow();
        assertEquals(0.4, more.low().in(MILLIGRAM_PER_LITRE));
    }

    @Test
    void lessThanNothingIsNoReading() {
        Refused.argument(
                "chlorine must not be negative, but was -5 mg/L",
                () -> Evidence.none().with(Parameter.CHLORINE, MassConcentration.of(-5, MILLIGRAM_PER_LITRE)));
        assertTrue(Evidence.none()
                .with(Parameter.CARBONATE_HARDNESS, Parameter.CARBONATE_HARDNESS.of(-1))
                .known(Parameter.CARBONATE_HARDNESS)
                .isPresent());
    }

    @Test
    void chloramineThatIsBrokenDownWarnsOfItsAmmonia() {
        Treatment treatment =
                Dechlorination.ofChloramine(MassConcentration.of(2, MILLIGRAM_PER_LITRE), ThiosulfateProduct.SULFATE);
        Evidence evidence = Evidence.from(
                LabReport.read(
                                List.of(
                                        new ReportRow(1, "hardness", "12", "°dH", ""),
                                        new ReportRow(2, "alkalinity", "6", "°dKH", "")),
                                ReportOptions.none())
                        .interpret(),
                treatment);
        assertTrue(evidence.topics().contains(CautionTopic.DOSE));
        assertTrue(evidence.handling().get(0).text().startsWith("Chloramine sets free "));
    }

    @Test
    void aReadingThatNoWaterHasIsNoEvidence() {
        Refused.argument(
                "pH must be at most 14, but was 15", () -> Evidence.none().with(Parameter.PH, Parameter.PH.of(15)));
        Refused.argument(
                "temperature must be at most 50 °C, but was 300 °C",
                () -> Evidence.none().with(Parameter.TEMPERATURE, Parameter.TEMPERATURE.of(300)));
    }
}
