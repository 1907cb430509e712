package evenwater.chemistry.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.CopperCriterion;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RequirementsTest {

    /** Common practice, no source: the ranges that aquarists keep. */
    @ParameterizedTest
    @CsvSource({
        "soft-water breeding, 0, 4, 0, 2, 4.5, 6.5, 20, 150",
        "tetra, 2, 8, 1, 4, 6.0, 7.2, 80, 300",
        "general, 5, 15, 3, 10, 6.5, 7.8, 200, 600",
        "livebearers, 12, 25, 8, 15, 7.2, 8.2, 400, 900",
        "malawi, 6, 12, 7, 12, 7.8, 8.6, 300, 600",
        "tanganyika, 10, 20, 12, 18, 8.2, 9.2, 570, 800",
        "planted, 4, 12, 3, 8, 6.4, 7.2, 200, 500",
        "caridina, 4, 6, 0, 2, 5.8, 6.6, 100, 200",
        "neocaridina, 6, 12, 2, 8, 6.8, 7.8, 200, 400",
        "brackish, 12, 25, 8, 15, 7.5, 8.5, 2000, 20000",
        "pond, 6, 20, 4, 12, 7.0, 8.5, 200, 800",
    })
    void theRangesOfAKindAreTheOnesOfThePractice(
            String kind,
            double gh,
            double toGh,
            double kh,
            double toKh,
            double pH,
            double toPH,
            double ec,
            double toEc) {
        Requirements requirements = Requirements.ofTank(kind.equals("caridina") ? "(Caridina)" : kind);
        assertRange(requirements, Parameter.GENERAL_HARDNESS, gh, toGh);
        assertRange(requirements, Parameter.CARBONATE_HARDNESS, kh, toKh);
        assertRange(requirements, Parameter.PH, pH, toPH);
        assertRange(requirements, Parameter.CONDUCTIVITY, ec, toEc);
    }

    private static void assertRange(Requirements requirements, Parameter<?> parameter, double least, double most) {
        Requirement<?> range = requirements.list().stream()
                .filter(one -> one.parameter() == parameter && one.weight() != Weight.FOR_INFORMATION)
                .findFirst()
                .orElseThrow();
        assertEquals(least, range.least().orElseThrow().getValue());
        assertEquals(most, range.most().orElseThrow().getValue());
        assertEquals(Citation.COMMON_PRACTICE, range.citation());
    }

    @Test
    void aReefAsksForCalciumAndMagnesiumApart() {
        Requirements reef = Requirements.ofTank("reef");
        assertRange(reef, Parameter.CALCIUM, 400, 450);
        assertRange(reef, Parameter.MAGNESIUM, 1250, 1400);
        assertRange(reef, Parameter.CARBONATE_HARDNESS, 7, 11);
        assertTrue(reef.list().stream()
                .noneMatch(one ->
                        one.parameter() == Parameter.GENERAL_HARDNESS && one.weight() != Weight.FOR_INFORMATION));
    }

    @Test
    void everyKindAsksForWhatMustBeKnown() {
        for (String kind : Requirements.tankKinds()) {
            List<Parameter<?>> must = Requirements.ofTank(kind).list().stream()
                    .filter(one -> one.weight() == Weight.MUST_BE_KNOWN)
                    .<Parameter<?>>map(Requirement::parameter)
                    .toList();
            assertTrue(
                    must.containsAll(List.of(
                            kind.equals("marine reef") ? Parameter.CALCIUM : Parameter.GENERAL_HARDNESS,
                            Parameter.CARBONATE_HARDNESS,
                            Parameter.PH,
                            Parameter.CHLORINE,
                            Parameter.COPPER,
                            Parameter.UNIONISED_AMMONIA,
                            Parameter.NITRITE)),
                    kind);
            assertEquals(must.stream().distinct().count(), must.size(), kind + " asks twice for the same");
        }
    }

    @Test
    void shrimpBearLessCopperThanFish() {
        assertEquals("at most 0.03 mg/L Cu²⁺", counting("general", Parameter.COPPER));
        assertEquals("at most 0.01 mg/L Cu²⁺", counting("Neocaridina", Parameter.COPPER));
    }

    private static String counting(String kind, Parameter<?> parameter) {
        return Requirements.ofTank(kind).list().stream()
                .filter(one -> one.parameter() == parameter && one.weight() != Weight.FOR_INFORMATION)
                .findFirst()
                .orElseThrow()
                .allowed(Locale.ROOT);
    }

    @Test
    void everyPublishedFigureNamesItsSourceYearAndWhetherItWasVerified() {
        for (String kind : Requirements.tankKinds()) {
            Requirements.ofTank(kind).list().forEach(RequirementsTest::assertSourced);
        }
        List<Requirement<?>> drinking = Requirements.ofDrinkingWater().list();
        drinking.forEach(RequirementsTest::assertSourced);
        assertTrue(drinking.stream().anyMatch(one -> one.citation().isVerified()));
        assertTrue(drinking.stream()
                .filter(one -> one.citation().backing() == Backing.FROM_MEMORY)
                .allMatch(one -> one.toString().endsWith("from memory, unverified")));
    }

    private static void assertSourced(Requirement<?> requirement) {
        Citation citation = requirement.citation();
        if (citation.backing() != Backing.COMMON_PRACTICE) {
            assertNotEquals("", citation.text(), requirement::toString);
            assertTrue(
                    citation.published().isPresent() || citation.text().contains("extension service"),
                    requirement::toString);
        }
    }

    /** The chronic criterion at 25 mg/L as CaCO₃: 0.96 · exp(0.8545 ln 25 − 1.702) = 2.74 µg/L, of the equation of the criterion. */
    @Test
    void theCopperCriterionIsThatOfItsEquation() {
        Requirement<?> criterion = Requirements.ofTank("general").list().stream()
                .filter(one -> one.parameter() == Parameter.COPPER && one.weight() == Weight.FOR_INFORMATION)
                .findFirst()
                .orElseThrow();
        double computed = Parameter.COPPER.number(
                CopperCriterion.CHRONIC_1995.limit(Hardness.of(25, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)));
        assertEquals(computed, criterion.most().orElseThrow().getValue(), 5e-6);
    }

    /** EPA's criteria of 2016 and 1995 (from memory): a tank stands, and rounding must not loosen a criterion. */
    @Test
    void criteriaForPoisonsAreThoseOfStandingWaterAndNotRoundedUp() {
        assertEquals("at most 0.0015 mg/L", counting("general", Parameter.SELENIUM));
        assertEquals("at most 0.00077 mg/L", counting("general", Parameter.MERCURY));
    }

    /** Arsenic is what private wells are tested for; its limit for drinking is far below that for fish. */
    @Test
    void whateverElseIsReadFromAReportHasALimitForDrinkingToo() {
        List<Parameter<?>> drinking = Requirements.ofDrinkingWater().list().stream()
                .<Parameter<?>>map(Requirement::parameter)
                .toList();
        assertTrue(drinking.containsAll(List.of(
                Parameter.LEAD,
                Parameter.ARSENIC,
                Parameter.CADMIUM,
                Parameter.NICKEL,
                Parameter.CHROMIUM,
                Parameter.MERCURY,
                Parameter.SELENIUM,
                Parameter.CYANIDE)));
        assertEquals(
                3,
                Requirements.ofDrinkingWater().list().stream()
                        .filter(one -> one.toString().startsWith("arsenic at most 0.01 mg/L: "))
                        .count());
    }

    /** 10 mg/L N · 62.005/14.007 = 44.27 mg/L NO₃⁻. */
    @Test
    void aLimitAsNitrogenIsSpokenAsNitrate() {
        assertTrue(
                Requirements.ofDrinkingWater().list().stream()
                        .anyMatch(
                                one -> one.toString()
                                        .equals(
                                                "nitrate at most 44.27 mg/L NO₃⁻: maximum contaminant level; US EPA, 40 CFR 141 (1991); checked in a quotation")));
    }

    @Test
    void anOwnRangeTakesThePlaceOfTheUsualOne() {
        Requirement<Hardness> own = Requirement.between(
                Parameter.GENERAL_HARDNESS,
                Hardness.of(3, Hardness.GERMAN_DEGREE),
                Hardness.of(6, Hardness.GERMAN_DEGREE));
        Requirements changed = Requirements.ofTank("general").with(own);
        assertEquals(
                Requirements.ofTank("general").list().size(), changed.list().size());
        assertEquals(own.with(Weight.MUST_BE_KNOWN), changed.list().get(0), "GH had to be known, and still has to be");
        assertEquals("GH 3 to 6 °dH: own rule", changed.list().get(0).toString());
        assertEquals(
                own,
                changed.without(Parameter.GENERAL_HARDNESS)
                        .with(own)
                        .list()
                        .get(changed.list().size() - 2));
    }

    @Test
    void requirementsOfOnesOwnBeginEmpty() {
        Requirements own = Requirements.named("nano tank");
        assertEquals(List.of(), own.list());
        Requirement<Alkalinity> least = Requirement.atLeast(
                Parameter.CARBONATE_HARDNESS, Alkalinity.of(2, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS));
        assertEquals(List.of(least), own.with(least).list());
        assertEquals(
                "nano tank\n  KH at least 2 °dKH: own rule", own.with(least).toString());
        assertEquals(
                List.of(), own.with(least).without(Parameter.CARBONATE_HARDNESS).list());
    }

    @Test
    void aNamePartThatOnlyOneKindHasIsEnough() {
        assertEquals("Lake Malawi", Requirements.ofTank(" MALAWI ").name());
        Refused.argument(
                "kind of tank 'soft' names several of these: " + String.join("; ", Requirements.tankKinds()),
                () -> Requirements.ofTank("soft"));
        Refused.argument(
                "kind of tank 'whale' names none of these: " + String.join("; ", Requirements.tankKinds()),
                () -> Requirements.ofTank("whale"));
        Refused.argument(
                "kind of tank '' names several of these: " + String.join("; ", Requirements.tankKinds()),
                () -> Requirements.ofTank(""));
    }

    @Test
    void endsMustBeInOrderAndThereMustBeOne() {
        Refused.argument(
                "ends of a requirement for GH must be in order, but were 6 °dH and 3 °dH",
                () -> Requirement.between(
                        Parameter.GENERAL_HARDNESS,
                        Hardness.of(6, Hardness.GERMAN_DEGREE),
                        Hardness.of(3, Hardness.GERMAN_DEGREE)));
        Refused.argument(
                "a requirement for GH must have an end",
                () -> new Requirement<>(
                        Parameter.GENERAL_HARDNESS,
                        Optional.empty(),
                        Optional.empty(),
                        "",
                        Weight.COUNTS_IF_KNOWN,
                        Citation.OWN_RULE));
        Refused.argument("requirements must have a name", () -> Requirements.named(" "));
        Refused.argument(
                "CO₂ of a tank must be above 0 and in order, but was 0 mg/L CO₂ to 5 mg/L CO₂",
                () -> Requirements.named("x")
                        .withCarbonDioxide(Parameter.CARBON_DIOXIDE.of(0), Parameter.CARBON_DIOXIDE.of(5)));
    }

    @Test
    void citationsAreChecked() {
        Refused.argument("a published figure must name its source", () -> new Citation(" ", 2000, Backing.VERIFIED));
        Refused.argument(
                "year of a citation must be 0 or from 1800 to 2200, but was 20",
                () -> new Citation("x", 20, Backing.VERIFIED));
        assertEquals("x (2001); from memory, unverified", new Citation("x", 2001, Backing.FROM_MEMORY).toString());
    }

    @Test
    void everyParameterReadsItsOwnTextAndIsFoundByName() {
        assertEquals(4, Parameter.GENERAL_HARDNESS.number(Parameter.GENERAL_HARDNESS.parse("4 °dH")));
        assertEquals(7.2, Parameter.PH.number(Parameter.PH.parse("7.2")));
        assertEquals(44.267, Parameter.NITRATE.number(Parameter.NITRATE.parse("10 mg/L N")), 0.001);
        for (Parameter<?> parameter : Parameter.all()) {
            assertSame(parameter, Parameter.named(parameter.name().toUpperCase(Locale.ROOT)));
        }
        String known =
                String.join(", ", Parameter.all().stream().map(Parameter::name).toList());
        Refused.argument("no parameter is named 'xenon': known are " + known, () -> Parameter.named("xenon"));
        assertEquals(
                "GH 4.2 °dH", Parameter.GENERAL_HARDNESS.toText(Parameter.GENERAL_HARDNESS.of(4.21), Locale.ROOT, 2));
    }

    @Test
    void everyCautionTopicHasItsCaution() {
        for (CautionTopic topic : CautionTopic.values()) {
            assertTrue(
                    Caution.about(List.of(topic)).stream().anyMatch(caution -> caution.topic() == topic),
                    topic::toString);
        }
        assertEquals(1, Caution.about(List.of()).size());
    }

    @Test
    void aGuardBandDrawsInWhatCounts() {
        Requirements guarded = Requirements.ofTank("planted").guarded(0.1);
        assertEquals("4.8 to 11.2 °dH", guarded.list().get(0).allowed(Locale.ROOT));
        assertEquals("230 to 470 µS/cm", guarded.list().get(3).allowed(Locale.ROOT));
        assertTrue(guarded.list().stream()
                .anyMatch(one -> one.parameter() == Parameter.SODIUM
                        && one.allowed(Locale.ROOT).equals("at most 45 mg/L Na⁺")));
        assertTrue(guarded.list().stream()
                .anyMatch(one -> one.parameter() == Parameter.OXYGEN
                        && one.allowed(Locale.ROOT).equals("at least 5.5 mg/L")));
        assertTrue(guarded.list().stream()
                .anyMatch(one -> one.parameter() == Parameter.CHLORINE
                        && one.allowed(Locale.ROOT).equals("at most 0.011 mg/L")));
        assertEquals(
                "GH 4.8 to 11.2 °dH: guard band within 4 to 12 °dH; own rule",
                guarded.list().get(0).toString());
        assertEquals(
                Requirements.ofTank("planted").list(),
                Requirements.ofTank("planted").guarded(0).list());
        Refused.argument(
                "guard band must be from 0 to 0.4 of a range, but was 0.5",
                () -> Requirements.ofTank("planted").guarded(0.5));
    }
}
