package evenwater.chemistry.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.treatment.Blending;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked solutions against published worked examples, and what they say in full. */
class WorkedSolutionsTest {

    private static AmountConcentration milligrams(double value, Ion ion) {
        return AmountConcentration.of(value, ion.milligramPerLitre());
    }

    /** Calcium alone, of a hardness as CaCO₃. */
    private static Water hard(String hardness) {
        double millimoles = Hardness.parse(hardness).in(Hardness.MILLIMOLE_PER_LITRE);
        return Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(millimoles, AmountConcentration.MILLIMOLE_PER_LITRE))
                .alkalinity(Alkalinity.of(2 * millimoles, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .build();
    }

    @Test
    void hardnessOfCalciumAndMagnesiumAsInStandardMethods() {
        // Standard Methods 2340 B: 2.497 Ca + 4.118 Mg; the factors are rounded
        Water water = Water.builder()
                .total(Ion.CALCIUM, milligrams(80, Ion.CALCIUM))
                .total(Ion.MAGNESIUM, milligrams(20, Ion.MAGNESIUM))
                .build();
        Worked<Hardness> worked = WorkedSolutions.hardness(water, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        assertEquals(2.497 * 80 + 4.118 * 20, worked.results().get(0).value(), 0.001 * 282);
        assertEquals(
                water.hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE),
                worked.answer().getValue());
    }

    @ParameterizedTest
    @CsvSource({"Ca²⁺, 0.04990", "Mg²⁺, 0.08229", "Na⁺, 0.04350", "SO₄²⁻, 0.02082", "Cl⁻, 0.02821", "NO₃⁻, 0.01613"})
    void equivalentsOfOneMilligram(String ion, double published) {
        // J. D. Hem, USGS Water-Supply Paper 2254 (1985) Table 9, from memory
        Ion solute = Ion.parse(ion);
        double ours = WorkedSolutions.equivalents(solute, milligrams(1, solute))
                .results()
                .get(0)
                .value();
        assertEquals(published, ours, 0.0005 * published);
    }

    @Test
    void sodiumOfAFullySoftenedWater() {
        // 15 gpg add 117.96 mg/L: arithmetic of the reference table, 7.86412132 mg/L for each gpg
        Worked<Stage> worked =
                WorkedSolutions.softening(Softener.withSodium(), hard("15 gpg"), Hardness.GRAIN_PER_US_GALLON);
        assertEquals(15 * 7.86412132, worked.results().get(0).value(), 1e-6);
        assertEquals(0.5, mistake(worked, "mole for mole").ratio(), 1e-12);
        // 50.043 g/eq of CaCO3 over 22.99 g/eq of Na
        assertEquals(50.043 / 22.99, mistake(worked, "ppm for ppm").ratio(), 1e-9);
    }

    @Test
    void bypassOfAHouseholdSoftener() {
        // M. L. Davis and D. A. Cornwell, Introduction to Environmental Engineering, softening example, from memory:
        // 85/280 goes past
        Softener softener = Softener.withSodium().bypassFor(Hardness.parse("85 mg/L CaCO3"));
        Worked<Stage> worked = WorkedSolutions.softening(
                softener, hard("280 mg/L CaCO3"), Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
        Step share = step(worked, "Share of raw water that goes past the resin");
        assertEquals(85.0 / 280, share.result(), 1e-12);
        assertEquals(softener.treat(hard("280 mg/L CaCO3")), worked.answer().after());
    }

    @Test
    void dosesOfAReconstitutedWater() {
        // US EPA EPA-821-R-02-012 Table 7, moderately hard: 60 mg/L CaSO4·2H2O brings 13.97 mg/L Ca
        Dosing dosing =
                Dosing.of(Compound.named("CaSO4·2H2O"), WaterUnits.parseMass("60 mg"), WaterUnits.parseVolume("1 L"));
        assertEquals(13.97, WorkedSolutions.dosing(dosing).results().get(0).value(), 0.005);
    }

    @Test
    void aConversionInFull() {
        assertEquals(
                """
                22 gpg in mg/L CaCO3

                1. Chain of factors
                   22 gpg × 64.79891 mg/grain ÷ 3.785411784 L/gal(US) = 376.597 mg/L CaCO3
                   (grain and gallon by their legal definitions, which are exact)

                Answer: 376.597 mg/L CaCO3

                A usual wrong answer: gallon for gallon
                   22 gpg × 64.79891 mg/grain ÷ 4.54609 L/gal(imp) = 313.583 mg/L CaCO3, 0.833 times the right answer
                   (the gallon of this unit is the one of the United States, 3.785411784 L, not the imperial one of 4.54609 L)""",
                WorkedSolutions.conversion(Hardness.parse("22 gpg"), Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)
                        .toText());
    }

    @Test
    void aConversionInMarkdown() {
        assertEquals(
                """
                **0.5 mmol/L in meq/L**

                1. Chain of factors

                   $$0.5\\ \\mathrm{mmol/L} \\times \\frac{2\\ \\mathrm{meq}}{1\\ \\mathrm{mmol}} = 1\\ \\mathrm{meq/L}$$

                **Answer:** 1 meq/L

                > **A usual wrong answer: mole for mole**
                >
                > $$0.5\\ \\mathrm{mmol/L} = 0.5\\ \\mathrm{meq/L}$$
                >
                > each mmol of an ion or a mineral of charge two counts 2 meq.""",
                WorkedSolutions.conversion(Hardness.parse("0.5 mmol/L"), Hardness.MILLIEQUIVALENT_PER_LITRE)
                        .toMarkdown());
    }

    @ParameterizedTest
    @CsvSource({
        "mg/L Ca²⁺, '\\mathrm{mg/L\\ Ca^{2+}}'",
        "mg/L CaCO3, '\\mathrm{mg/L\\ CaCO_{3}}'",
        "MgSO₄·7H₂O, '\\mathrm{MgSO_{4}\\cdot 7H_{2}O}'",
        "°dH, '\\mathrm{^\\circ dH}'",
        "µS/cm, '\\mathrm{\\mu S/cm}'",
        "ft³, '\\mathrm{ft^{3}}'",
        "%, '\\mathrm{\\%}'"
    })
    void unitsInFormulaNotation(String unit, String formula) {
        assertEquals(formula, Notation.unit(unit));
    }

    @Test
    void theRuleForCarbonDioxideIsAUsualWrongAnswer() {
        Water water = Water.builder()
                .total(Ion.SODIUM, milligrams(46, Ion.SODIUM))
                .alkalinity(Alkalinity.parse("2 meq/L"))
                .measuredPH(7.0)
                .build();
        Speciation speciation = Speciation.of(water);
        Worked<Speciation> worked = WorkedSolutions.carbonDioxide(speciation);
        assertEquals(
                speciation.carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre()),
                worked.results().get(0).value());
        assertEquals(3 * 2 * 2.80385, worked.mistakes().get(0).step().result(), 0.001); // 1 meq/L is 2.80385 °dKH
        assertEquals(0.925, worked.mistakes().get(0).ratio(), 0.035); // 4 to 11 % low at 25 °C, see CarbonDioxideRule
    }

    /** With no alkalinity the rule has no factor: carbonic acid alone, at the pH that it makes. */
    @Test
    void carbonDioxideInWaterWithoutAlkalinityIsWorkedToo() {
        Water water = Water.builder()
                .alkalinity(Alkalinity.parse("0 meq/L"))
                .carbon(AmountConcentration.of(0.5, AmountConcentration.MILLIMOLE_PER_LITRE))
                .build();
        Worked<Speciation> worked = WorkedSolutions.carbonDioxide(Speciation.of(water));
        assertTrue(worked.results().get(0).value() > 20, worked::toText);
        assertTrue(
                worked.mistakes().stream().noneMatch(mistake -> mistake.reason().contains("Infinity")), worked::toText);
    }

    @Test
    void aBlendOfPureWaterIsNotTakenForOneOfAnother() {
        Water soft = hard("4 °dH");
        Worked<Stage> worked = WorkedSolutions.blending(
                Blending.reaching(Hardness.parse("8 °dH"), soft), hard("20 °dH"), Hardness.GERMAN_DEGREE);
        assertEquals(12.0 / 16, worked.results().get(0).value(), 1e-12);
        assertEquals(
                12.0 / 20,
                mistake(worked, "the other water taken for pure").step().result(),
                1e-12);
        Worked<Stage> pure =
                WorkedSolutions.blending(Blending.withPureWater(0.5), hard("20 °dH"), Hardness.GERMAN_DEGREE);
        assertEquals(List.of(), pure.mistakes());
    }

    @Test
    void nobodyAnswersLessThanNothing() {
        Worked<Stage> harder = WorkedSolutions.blending(
                Blending.reaching(Hardness.parse("8 °dH"), hard("20 °dH")), hard("4 °dH"), Hardness.GERMAN_DEGREE);
        assertEquals(4.0 / 16, harder.results().get(0).value(), 1e-12);
        assertEquals(List.of(), harder.mistakes());
        Worked<Dosing> acid = WorkedSolutions.raisingAlkalinity(
                Compound.HYDROCHLORIC_ACID.ofStrength(0.3),
                Alkalinity.parse("-1 meq/L"),
                WaterUnits.parseVolume("50 L"));
        assertTrue(acid.results().get(0).value() > 0);
        assertEquals(List.of("the strength left out"), names(acid));
    }

    @Test
    void chalkOfAStrengthIsStillWeighedAsChalk() {
        Worked<Dosing> pure = WorkedSolutions.raisingHardness(
                Compound.CALCIUM_CARBONATE, Hardness.parse("100 mg/L CaCO3"), WaterUnits.parseVolume("10 L"));
        assertEquals(1, pure.results().get(0).value(), 1e-12);
        assertEquals(List.of(), names(pure));
        Worked<Dosing> weak = WorkedSolutions.raisingHardness(
                Compound.CALCIUM_CARBONATE.ofStrength(0.8),
                Hardness.parse("100 mg/L CaCO3"),
                WaterUnits.parseVolume("10 L"));
        assertEquals(1.25, weak.results().get(0).value(), 1e-12);
        assertEquals(List.of("the strength left out"), names(weak));
        assertEquals(1, mistake(weak, "the strength left out").step().result(), 1e-12);
    }

    @Test
    void theWrongHardnessIsInTheScaleOfTheRightOne() {
        Water water = Water.builder()
                .total(Ion.CALCIUM, milligrams(80, Ion.CALCIUM))
                .total(Ion.MAGNESIUM, milligrams(20, Ion.MAGNESIUM))
                .build();
        Mistake milligrams = mistake(WorkedSolutions.hardness(water, Hardness.GERMAN_DEGREE), "ppm for ppm");
        // 100 mg/L CaCO3 are 5.603 °dH by 56.077 and 100.086 g/mol
        assertEquals(5.603, milligrams.step().result(), 0.001);
        assertEquals("°dH", milligrams.step().unit());
        assertEquals(water.hardness().in(Hardness.GERMAN_DEGREE), milligrams.right());
    }

    @Test
    void theMeanOfThePHIsAUsualWrongAnswer() {
        Water acid = Speciation.of(withPH("0.5 meq/L", 6.2)).water();
        Water base = Speciation.of(withPH("3 meq/L", 8.2)).water();
        Worked<Stage> worked = WorkedSolutions.blending(Blending.with(base, 0.5), acid, Hardness.GERMAN_DEGREE);
        Mistake mean = mistake(worked, "mean of the pH");
        assertEquals(7.2, mean.step().result(), 1e-9);
        assertEquals(Speciation.of(worked.answer().after()).pH(), mean.right());
        assertTrue(Math.abs(mean.right() - 7.2) > 0.1, () -> "pH " + mean.right());
    }

    private static Water withPH(String alkalinity, double pH) {
        return Water.builder()
                .total(Ion.SODIUM, milligrams(70, Ion.SODIUM))
                .alkalinity(Alkalinity.parse(alkalinity))
                .measuredPH(pH)
                .build();
    }

    @Test
    void alsoThoseThatMakeNoDifferenceAreWorked() {
        Worked<Stage> soft = WorkedSolutions.softening(
                Softener.withSodium().leaking(Hardness.parse("5 °dH")), hard("3 °dH"), Hardness.GERMAN_DEGREE);
        assertEquals("Nothing is exchanged", soft.steps().get(0).title());
        assertEquals(
                "both units have the same size",
                WorkedSolutions.conversion(Hardness.parse("3 mmol/L"), Hardness.MOLE_PER_CUBIC_METRE)
                        .steps()
                        .get(0)
                        .note());
        assertEquals(
                "cations 0 meq/L, anions 0 meq/L, difference 0 %",
                lastLine(WorkedSolutions.ionBalance(Water.pure()).toText()).substring("Answer: ".length()));
    }

    private static String lastLine(String text) {
        return text.substring(text.lastIndexOf('\n') + 1);
    }

    @Test
    void aChangeThatIsSmallBesideTheWaterIsWorkedToo() {
        Water brine = Water.builder()
                .total(Ion.CALCIUM, milligrams(1e-6, Ion.CALCIUM))
                .total(Ion.SODIUM, milligrams(30_000, Ion.SODIUM))
                .build();
        Worked<Stage> worked = WorkedSolutions.softening(Softener.withSodium(), brine, Hardness.GERMAN_DEGREE);
        // 2 mmol of sodium for one of calcium
        assertEquals(
                2e-6 / 40.078 * 22.99,
                step(worked, "The same charge of sodium enters").result(),
                1e-18);
    }

    @Test
    void aShareOfNearlyNothingIsWorkedToo() {
        Worked<Stage> worked =
                WorkedSolutions.blending(Blending.with(hard("4 °dH"), 1e-300), hard("20 °dH"), Hardness.GERMAN_DEGREE);
        assertEquals(20, worked.results().get(0).value(), 1e-12);
        assertEquals(
                1e-300 * 4,
                WorkedSolutions.blending(Blending.with(hard("4 °dH"), 1e-300), Water.pure(), Hardness.GERMAN_DEGREE)
                        .results()
                        .get(0)
                        .value(),
                1e-312);
    }

    @Test
    void whatIsTooLargeForADoubleIsNoUsualWrongAnswer() {
        Worked<Hardness> worked = WorkedSolutions.conversion(
                Hardness.of(Double.MAX_VALUE, Hardness.GERMAN_DEGREE), Hardness.MILLIEQUIVALENT_PER_LITRE);
        assertTrue(worked.mistakes().stream()
                .allMatch(mistake -> Double.isFinite(mistake.step().result())));
    }

    @ParameterizedTest
    @CsvSource({"4.9E-324 gpg", "1E-310 °dH", "1E300 °e", "-7 gpg"})
    void anyNumberThatTheLibraryConvertsIsWorked(String hardness) {
        Hardness stated = Hardness.parse(hardness);
        for (var unit : Hardness.units()) {
            assertEquals(
                    stated.in(unit),
                    WorkedSolutions.conversion(stated, unit).results().get(0).value());
        }
    }

    @Test
    void refusesWhatTheLibraryRefuses() {
        assertThrows(
                NoAnswerException.class,
                () -> WorkedSolutions.softening(
                        Softener.withSodium().bypassFor(Hardness.parse("30 °dH")),
                        hard("20 °dH"),
                        Hardness.GERMAN_DEGREE));
        Refused.argument(
                "sodium bicarbonate does not move hardness, so it cannot change it by 3 °dH",
                () -> WorkedSolutions.raisingHardness(
                        Compound.named("NaHCO3"), Hardness.parse("3 °dH"), WaterUnits.parseVolume("1 L")));
        Refused.argument(
                "significant digits must be from 1 to 17, but were 0",
                () -> WorkedSolutions.ionBalance(Water.pure()).toText(0));
        Refused.asNull("water", () -> WorkedSolutions.ionBalance(null));
        Refused.asNull("unit", () -> WorkedSolutions.hardness(Water.pure(), null));
    }

    @Test
    void aStepThatDoesNotLeadToTheAnswerCannotBeBuilt() {
        IllegalStateException e = assertThrows(
                IllegalStateException.class,
                () -> Step.of("Sum", Term.exact(1, "g").plus(Term.exact(2, "g")), 4, "g"));
        assertEquals("step 'Sum': 1 g + 2 g is 3.0 g, but the answer has 4.0 g", e.getMessage());
    }

    @Test
    void theTextIsTheSameEverywhere() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertEquals(
                    "1.5 mmol/L × 2 meq/mmol = 3 meq/L",
                    WorkedSolutions.conversion(Hardness.parse("1.5 mmol/L"), Hardness.MILLIEQUIVALENT_PER_LITRE)
                            .steps()
                            .get(0)
                            .calculation(6));
        } finally {
            Locale.setDefault(before);
        }
    }

    private static List<String> names(Worked<?> worked) {
        return worked.mistakes().stream().map(Mistake::name).toList();
    }

    private static Mistake mistake(Worked<?> worked, String name) {
        return worked.mistakes().stream()
                .filter(mistake -> mistake.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Step step(Worked<?> worked, String title) {
        return worked.steps().stream()
                .filter(step -> step.title().equals(title))
                .findFirst()
                .orElseThrow();
    }
}
