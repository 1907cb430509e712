package evenwater.chemistry.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.LabReportBuilder;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class VerdictTest {

    static final Requirements GENERAL = Requirements.ofTank("general community");

    static Evidence kit(double gh, double kh, double pH) {
        return Evidence.none()
                .with(Parameter.GENERAL_HARDNESS, Hardness.of(gh, Hardness.GERMAN_DEGREE))
                .with(Parameter.CARBONATE_HARDNESS, Alkalinity.of(kh, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .with(Parameter.PH, Parameter.PH.of(pH));
    }

    private static Evidence withoutPoisons(Evidence evidence) {
        return evidence.with(Parameter.CHLORINE, Parameter.CHLORINE.of(0))
                .with(Parameter.TOTAL_AMMONIA, Parameter.TOTAL_AMMONIA.of(0))
                .with(Parameter.NITRITE, Parameter.NITRITE.of(0))
                .with(Parameter.COPPER, Parameter.COPPER.of(0));
    }

    private static LabReportBuilder well() {
        return LabReport.builder()
                .hardness(Hardness.of(12, Hardness.GERMAN_DEGREE))
                .alkalinity(Alkalinity.of(6, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .pH(7.4)
                .total(Ion.SODIUM, Ion.SODIUM.concentration(Parameter.SODIUM.of(20)))
                .total(Ion.POTASSIUM, Parameter.POTASSIUM.of(2))
                .total(Ion.CHLORIDE, Parameter.CHLORIDE.of(40))
                .total(Ion.SULFATE, Parameter.SULFATE.of(60));
    }

    static Finding<?> finding(Verdict verdict, Parameter<?> parameter) {
        return verdict.counting().stream()
                .filter(finding -> finding.requirement().parameter() == parameter)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aWaterIsFitWhereAllThatMustBeKnownIsInside() {
        Verdict verdict = GENERAL.judge(withoutPoisons(kit(8, 5, 7.2)));
        assertEquals(Outcome.FIT, verdict.outcome());
        assertEquals(List.of(), verdict.missing());
        assertEquals(List.of(), verdict.toChange());
        assertEquals("Fit for general community.", verdict.toString());
    }

    @Test
    void noWaterIsFitWhileChlorineAmmoniaNitriteOrCopperAreUnknown() {
        Verdict verdict = GENERAL.judge(kit(8, 5, 7.2));
        assertEquals(Outcome.UNDECIDED, verdict.outcome());
        assertEquals(
                List.of(Parameter.CHLORINE, Parameter.TOTAL_AMMONIA, Parameter.NITRITE, Parameter.COPPER),
                verdict.missing());
        assertEquals(
                "Undecided for general community. Not measured, and no water is fit while they are unknown: "
                        + "chlorine, total ammonia, nitrite, copper.",
                verdict.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"chlorine", "total ammonia", "nitrite", "copper"})
    void eachOfThemAloneKeepsAWaterFromBeingFit(String name) {
        Evidence evidence = kit(8, 5, 7.2);
        for (String other : List.of("chlorine", "total ammonia", "nitrite", "copper")) {
            if (!other.equals(name)) {
                evidence = withZero(evidence, Parameter.named(other));
            }
        }
        Verdict verdict = GENERAL.judge(evidence);
        assertEquals(Outcome.UNDECIDED, verdict.outcome());
        assertEquals(List.of(Parameter.named(name)), verdict.missing());
    }

    private static <Q extends WaterQuantity<?>> Evidence withZero(Evidence evidence, Parameter<Q> parameter) {
        return evidence.with(parameter, parameter.of(0));
    }

    @Test
    void whatIsOutsideIsNamedWithHowMuchAndWhatToChange() {
        Verdict verdict = GENERAL.judge(kit(18, 5, 7.2));
        assertEquals(Outcome.UNFIT, verdict.outcome());
        assertEquals(
                "Not fit for general community: GH 18 °dH: above 15 °dH, by 3 °dH. Not measured, and no water is fit while they are "
                        + "unknown: chlorine, total ammonia, nitrite, copper. Change first: GH: blend with pure or softer water: a softener "
                        + "takes the hardness and leaves its salt instead.",
                verdict.toString());
    }

    @Test
    void textTakesTheDecimalSignOfALocale() {
        Verdict verdict = GENERAL.judge(kit(18.5, 5, 7.2));
        assertEquals(
                "GH 18,5 °dH: above 15 °dH, by 3,5 °dH",
                finding(verdict, Parameter.GENERAL_HARDNESS).toText(Locale.GERMANY));
    }

    @Test
    void aRangeOverALimitIsUndecided() {
        Bounds<Hardness> drops = new Bounds<>(
                Hardness.of(4, Hardness.GERMAN_DEGREE),
                Hardness.of(4.5, Hardness.GERMAN_DEGREE),
                Hardness.of(5.5, Hardness.GERMAN_DEGREE));
        Verdict verdict = GENERAL.judge(withoutPoisons(kit(8, 5, 7.2)).with(Parameter.GENERAL_HARDNESS, drops));
        Finding<?> gh = finding(verdict, Parameter.GENERAL_HARDNESS);
        assertEquals(Standing.UNDECIDED, gh.standing());
        assertEquals(Outcome.UNDECIDED, verdict.outcome());
        assertEquals("GH 4 to 5.5 °dH: undecided, wanted 5 to 15 °dH, and what is known cannot tell", gh.toString());
        assertEquals("0.5 °dH", gh.outsideBy().orElseThrow().toString());
        assertTrue(gh.surelyOutsideBy().isEmpty());
    }

    @Test
    void aRangeOutsideIsOutsideByItsNearerEndInAnyCase() {
        Bounds<Hardness> drops = new Bounds<>(
                Hardness.of(1, Hardness.GERMAN_DEGREE),
                Hardness.of(1.5, Hardness.GERMAN_DEGREE),
                Hardness.of(2, Hardness.GERMAN_DEGREE));
        Finding<?> gh = finding(
                GENERAL.judge(kit(8, 5, 7.2).with(Parameter.GENERAL_HARDNESS, drops)), Parameter.GENERAL_HARDNESS);
        assertEquals("GH 1 to 2 °dH: below 5 °dH, by 3.5 °dH (at least 3 °dH)", gh.toString());
        assertEquals("3 °dH", gh.surelyOutsideBy().orElseThrow().toString());
    }

    /** 20 °fH are 11.2 °dH; 15 °dH are 26.75 °fH, and the limit in another unit is the limit. */
    @Test
    void aLimitStatedInAnotherUnitIsTheSameLimit() {
        Hardness limit = Hardness.of(15, Hardness.GERMAN_DEGREE);
        for (var unit : List.of(
                Hardness.FRENCH_DEGREE,
                Hardness.GRAIN_PER_US_GALLON,
                Hardness.MILLIMOLE_PER_LITRE,
                Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)) {
            Verdict verdict = GENERAL.judge(kit(8, 5, 7.2).with(Parameter.GENERAL_HARDNESS, limit.to(unit)));
            assertEquals(
                    Standing.INSIDE,
                    finding(verdict, Parameter.GENERAL_HARDNESS).standing(),
                    unit::toString);
        }
    }

    @Test
    void whatTheReportDidNotMeasureIsNotZero() {
        Verdict verdict = GENERAL.judge(Evidence.from(well().build().interpret()));
        for (Parameter<?> parameter : List.of(Parameter.NITRITE, Parameter.COPPER, Parameter.UNIONISED_AMMONIA)) {
            assertEquals(Standing.NOT_MEASURED, finding(verdict, parameter).standing(), parameter::name);
        }
        assertEquals(
                Standing.INSIDE, finding(verdict, Parameter.GENERAL_HARDNESS).standing());
        assertEquals(Standing.NOT_MEASURED, finding(verdict, Parameter.NITRATE).standing());
    }

    @Test
    void aTreatmentIsJudgedBehindItAndBringsItsCautions() {
        Verdict verdict = GENERAL.judge(Evidence.from(
                well().build().interpret(),
                Train.of(
                        Softener.withSodium(),
                        ReverseOsmosis.rejecting(0.95, 0.98),
                        Dosing.of(
                                Compound.POTASSIUM_CARBONATE,
                                WaterUnits.mass(2, WaterUnits.GRAM),
                                WaterUnits.volume(50, WaterUnits.LITRE)))));
        assertEquals(
                Standing.BELOW, finding(verdict, Parameter.GENERAL_HARDNESS).standing());
        Set<CautionTopic> topics =
                verdict.cautions().stream().map(Caution::topic).collect(Collectors.toSet());
        assertTrue(topics.containsAll(Set.of(
                CautionTopic.ALWAYS,
                CautionTopic.SOFTENER,
                CautionTopic.SODIUM,
                CautionTopic.MEMBRANE,
                CautionTopic.DOSE,
                CautionTopic.BASE,
                CautionTopic.AMMONIA,
                CautionTopic.POTASSIUM)));
        assertFalse(topics.contains(CautionTopic.ACID));
        assertEquals(
                "Handling potassium carbonate: alkaline, eye damage.",
                verdict.cautions().get(0).text());
    }

    /** A level teaspoon is good to some 20 %, so KH is open by as much: 4.9 g of KHCO₃ in 50 L are 2.745 °dKH. */
    @Test
    void aDoseByTheSpoonIsOpenByTheSpoon() {
        Dosing spoon = Dosing.teaspoons(Compound.POTASSIUM_BICARBONATE, 1, WaterUnits.volume(50, WaterUnits.LITRE));
        Bounds<Alkalinity> kh = Evidence.from(well().build().interpret(), spoon)
                .known(Parameter.CARBONATE_HARDNESS)
                .orElseThrow();
        assertEquals(6 + 0.8 * 2.7446, Parameter.CARBONATE_HARDNESS.number(kh.low()), 1e-3);
        assertEquals(6 + 2.7446, Parameter.CARBONATE_HARDNESS.number(kh.value()), 1e-3);
        assertEquals(6 + 1.2 * 2.7446, Parameter.CARBONATE_HARDNESS.number(kh.high()), 1e-3);
    }

    /** At rest with air of 420 µatm and ten times as much CO₂; each tenfold lowers the pH of a bicarbonate water by nearly 1. */
    @Test
    void thePHOfATankLiesBetweenOneAndTenTimesTheCarbonDioxideOfAir() {
        Verdict verdict = GENERAL.judge(Evidence.of(well().build().interpret().water()));
        Bounds<?> pH = finding(verdict, Parameter.PH).may().orElseThrow();
        double low = pH.low().getValue();
        double high = pH.high().getValue();
        assertEquals(8.5, high, 0.15);
        assertEquals(0.97, high - low, 0.03);
    }

    /** CO₂ = 3.3 · KH · 10^(7 − pH) mg/L (theory near 25 °C): 15 and 30 mg/L at 6 °dKH are pH 7.1 and 6.8. */
    @Test
    void thePHOfAPlantedTankFollowsFromItsCarbonDioxide() {
        Verdict verdict = Requirements.ofTank("planted")
                .judge(Evidence.of(well().build().interpret().water()));
        Bounds<?> pH = finding(verdict, Parameter.PH).may().orElseThrow();
        assertEquals(6.82, pH.low().getValue(), 0.03);
        assertEquals(7.12, pH.high().getValue(), 0.03);
        Verdict little = Requirements.ofTank("planted")
                .withCarbonDioxide(Parameter.CARBON_DIOXIDE.of(5), Parameter.CARBON_DIOXIDE.of(5))
                .judge(Evidence.of(well().build().interpret().water()));
        assertEquals(
                7.6, finding(little, Parameter.PH).may().orElseThrow().value().getValue(), 0.03);
    }

    @Test
    void aWellFullOfCarbonDioxideIsToBeAerated() {
        Verdict verdict = GENERAL.judge(Evidence.from(well().pH(6.3).build().interpret()));
        Finding<?> carbonDioxide = finding(verdict, Parameter.CARBON_DIOXIDE);
        assertEquals(Standing.ABOVE, carbonDioxide.standing());
        assertEquals("aerate the water before animals meet it", carbonDioxide.remedy());
        assertTrue(verdict.cautions().stream().anyMatch(c -> c.topic() == CautionTopic.CARBON_DIOXIDE));
    }

    @Test
    void drinkingWaterIsComparedAndNeverCalledFit() {
        Verdict verdict = Requirements.ofDrinkingWater()
                .judge(Evidence.from(well().build().interpret(), Softener.withSodium()));
        assertEquals(Outcome.UNDECIDED, verdict.outcome());
        assertTrue(verdict.statement(Locale.ROOT).contains("for the health authority to say"));
        Finding<?> strict = verdict.findings().stream()
                .filter(finding -> finding.requirement().toString().contains("500 mg sodium a day"))
                .findFirst()
                .orElseThrow();
        assertEquals(Standing.ABOVE, strict.standing());
        assertEquals(
                "sodium at most 20 mg/L Na⁺: advisory for people on a diet of 500 mg sodium a day, not for everyone; "
                        + "US EPA 822-R-03-006 (2003); checked in a quotation",
                strict.requirement().toString());
        assertEquals(
                7.4,
                verdict.findings().stream()
                        .filter(finding -> finding.requirement().parameter() == Parameter.PH)
                        .findFirst()
                        .flatMap(Finding::may)
                        .orElseThrow()
                        .value()
                        .getValue(),
                0.03, // the pairs of calcium and magnesium are gone, which moves the pH by 0.02
                "ion exchange does not change alkalinity and carbon");
    }

    @Test
    void nothingKnownIsUndecidedAndRefusesNothing() {
        Verdict verdict = GENERAL.judge(Evidence.none());
        assertEquals(Outcome.UNDECIDED, verdict.outcome());
        assertEquals(
                "[GH, KH, pH, chlorine, total ammonia, nitrite, copper]",
                verdict.missing().toString());
        assertEquals(
                Outcome.UNDECIDED,
                Requirements.named("nothing").judge(Evidence.none()).outcome());
    }

    @Test
    void nullsAreRefusedByName() {
        Refused.asNull("evidence", () -> GENERAL.judge(null));
        Refused.asNull("locale", () -> GENERAL.judge(Evidence.none()).statement(null));
        Refused.asNull("water", () -> Evidence.of(null));
        Refused.asNull("source", () -> Evidence.from(null));
        Refused.asNull("value", () -> Evidence.none().with(Parameter.PH, (WaterQuantity<Dimensionless>) null));
    }

    @Test
    void aFindingMustStandAsItSays() {
        Requirement<AmountConcentration> limit = Requirement.atMost(Parameter.SODIUM, Parameter.SODIUM.of(50));
        Refused.argument(
                "sodium stands not measured, but was said to be inside",
                () -> new Finding<>(limit, Optional.empty(), Standing.INSIDE));
    }

    /** Substitute ocean water by ASTM D1141-98 (from memory): Ca 419, Mg 1328 mg/L, 2.39 meq/L of alkalinity are 6.7 °dKH, below the 7 of a reef. */
    @Test
    void seawaterIsJudgedForAReef() {
        Water sea = Water.builder()
                .total(Ion.CALCIUM, Parameter.CALCIUM.of(418.9))
                .total(Ion.MAGNESIUM, Parameter.MAGNESIUM.of(1327.5))
                .total(Ion.SODIUM, Parameter.SODIUM.of(11031))
                .total(Ion.POTASSIUM, Parameter.POTASSIUM.of(397.7))
                .total(Ion.SULFATE, Parameter.SULFATE.of(2766))
                .total(Ion.CHLORIDE, Parameter.CHLORIDE.of(19835))
                .alkalinity(Alkalinity.of(2.39, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
        Verdict verdict = Requirements.ofTank("reef").judge(Evidence.of(sea));
        assertEquals(Standing.INSIDE, finding(verdict, Parameter.CALCIUM).standing());
        assertEquals(Standing.INSIDE, finding(verdict, Parameter.MAGNESIUM).standing());
        assertEquals(
                "KH 6.7 °dKH: below 7 °dKH, by 0.299 °dKH",
                finding(verdict, Parameter.CARBONATE_HARDNESS).toString());
        assertEquals(Standing.INSIDE, finding(verdict, Parameter.CONDUCTIVITY).standing());
    }

    @Test
    void aKHOfOnesOwnLeavesThePHToBeMeasured() {
        Evidence water = Evidence.of(well().build().interpret().water())
                .with(Parameter.CARBONATE_HARDNESS, Alkalinity.of(3, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS));
        assertEquals(
                Standing.NOT_MEASURED,
                finding(GENERAL.judge(water), Parameter.PH).standing());
        assertEquals(
                Standing.INSIDE,
                finding(GENERAL.judge(water.with(Parameter.PH, Parameter.PH.of(7.2))), Parameter.PH)
                        .standing());
    }
}
