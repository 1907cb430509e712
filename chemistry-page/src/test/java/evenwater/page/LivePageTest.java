package evenwater.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.CarbonateSystem;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LivePageTest {

    /** Rounding of a handful of operations. */
    private static final double ROUNDING = 1e-12;

    private static Answer answer(String part, String... pairs) {
        Map<String, String> entries = new HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            entries.put(pairs[i], pairs[i + 1]);
        }
        return LivePage.answer(part, entries);
    }

    private static void assertFigure(double expected, Answer answer, String name) {
        assertEquals(List.of(), answer.problems());
        double value = answer.figure(name).orElseThrow().value();
        assertEquals(expected, value, Math.abs(expected) * ROUNDING, name);
    }

    private static void assertRefused(String control, String message, Answer answer) {
        assertEquals(List.of(new Problem(control, message)), answer.problems());
        assertEquals(List.of(), answer.tables());
        assertEquals("No answer yet: one entry needs a change.", answer.summary());
    }

    @Test
    void aHardnessIsShownInAllScalesOfTheCore() {
        Answer answer = answer("scales", "hardness", "22", "hardness-unit", "gpg");
        // 22 grains of 64.79891 mg in a US gallon of 3.785411784 L; both exact by definition
        assertFigure(22 * 64.79891 / 3.785411784, answer, "hardness in mg/L CaCO3");
        assertFigure(22, answer, "hardness in gpg");
        assertEquals(Hardness.units().size(), answer.tables().get(0).figures().size());
        assertEquals(Alkalinity.units().size(), answer.tables().get(1).figures().size());
    }

    @Test
    void theSummaryKeepsTheFigureAsItWasStated() {
        Answer answer = answer("scales", "hardness", "22.50", "alkalinity", "4", "alkalinity-unit", "meq/L");
        assertEquals(
                "Hardness 22.5 gpg is 3.8483 mmol/L; alkalinity 4 meq/L is 4 meq/L.",
                answer.summary()); // 22.5 × 64.79891 / 3.785411784 / 100.086 by hand
    }

    @Test
    void aSoftenerAddsTwoSodiumForOneCalcium() {
        Answer answer = answer("softening", "raw", "3", "raw-unit", "mmol/L", "sodium", "1", "sodium-unit", "mmol/L");
        double sodiumInMilligrams = AmountConcentration.of(2 * 3, AmountConcentration.MILLIMOLE_PER_LITRE)
                .in(Ion.SODIUM.milligramPerLitre());
        assertFigure(sodiumInMilligrams, answer, "sodium added");
        assertFigure(sodiumInMilligrams * 7 / 6, answer, "sodium");
        assertFigure(0, answer, "hardness");
        assertFigure(14, answer, "alkalinity");
    }

    @Test
    void calciumAndMagnesiumMakeTheSameHardnessAsTheirSum() {
        String[] bypass = {"bypass", "wanted", "wanted", "1", "wanted-unit", "mmol/L", "raw", "4", "raw-unit", "mmol/L"
        };
        Answer total = answer("softening", bypass);
        Map<String, String> ions = Map.of(
                "stated",
                "ions",
                "calcium",
                "3",
                "calcium-unit",
                "mmol/L",
                "magnesium",
                "1",
                "magnesium-unit",
                "mmol/L",
                "bypass",
                "wanted",
                "wanted",
                "1",
                "wanted-unit",
                "mmol/L");
        Answer split = LivePage.answer("softening", ions);
        assertFigure(25, total, "bypass"); // 1 of 4 mmol/L behind a resin without leakage
        assertFigure(25, split, "bypass");
        assertFigure(total.figure("sodium").orElseThrow().value(), split, "sodium");
        assertFigure(1, split, "hardness");
    }

    @Test
    void aBlendLiesOnTheStraightLine() {
        Answer answer = answer("blend", "share", "60");
        assertFigure(0.4 * 18 + 0.6 * 0.5, answer, "hardness");
        assertFigure(0.4 * 12 + 0.6 * 0.4, answer, "alkalinity");
        assertFigure(0.4 * 15 + 0.6 * 2, answer, "sodium");
    }

    @Test
    void aBlendForAHardnessFindsTheShare() {
        Answer answer = answer("blend", "by", "hardness", "wanted", "7.5");
        assertFigure(60, answer, "share");
        assertFigure(7.5, answer, "hardness");
    }

    @Test
    void carbonDioxideIsWhatTheSpeciesSay() {
        Answer answer =
                answer("carbon-dioxide", "alkalinity", "4", "temperature", "77", "temperature-unit", "°F", "ph", "6.8");
        Water water = Water.builder()
                .alkalinity(Alkalinity.of(4, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .temperature(WaterUnits.temperature(77, WaterUnits.FAHRENHEIT))
                .build();
        Speciation found =
                CarbonateSystem.of(water).withItsAlkalinity().withPH(6.8).solve();
        assertFigure(found.carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre()), answer, "CO₂ in mg/L");
        assertFigure(3 * 4 * Math.pow(10, 0.2), answer, "rule"); // the aquarists' rule, common practice
    }

    @Test
    void pHAndCarbonDioxideLeadBackToEachOther() {
        String gas = answer("carbon-dioxide", "ph", "7.35")
                        .figure("CO₂ in mg/L")
                        .orElseThrow()
                        .value() + "";
        Answer back = answer("carbon-dioxide", "given", "co2", "co2", gas);
        assertEquals(7.35, back.figure("pH").orElseThrow().value(), 1e-10); // the solver ends at 1e-12 of the balances
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "7,3",
                "abc",
                "1.2.3",
                "22 gpg",
                "1e",
                ".",
                "-",
                "NaN",
                "Infinity",
                "0x10",
                "1e999",
                "1 000",
                "٢٢"
            })
    void whatIsNoNumberIsRefusedBesideItsField(String text) {
        assertRefused(
                "hardness",
                "'" + text + "' is no number: write it with a point and no grouping, such as 22.5, "
                        + "and choose the unit beside it",
                answer("scales", "hardness", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "\u00a0"})
    void anEmptyFieldAsksForANumber(String text) {
        assertRefused("alkalinity", "enter a number, such as 22 or 22.5", answer("scales", "alkalinity", text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e300", "-1e10", "4.9e-324", "1e-10"})
    void aNumberThatNoWaterHasIsRefused(String text) {
        assertRefused(
                "co2",
                text + " is beyond anything in water: enter 0 or a number between 0.000000001 and 1000000000",
                answer("carbon-dioxide", "given", "co2", "co2", text));
    }

    @Test
    void everyPartShowsTheWay() {
        for (String part : LivePage.parts()) {
            Answer answer = LivePage.answer(part, Map.of());
            assertTrue(answer.solutions().size() > 0, part);
        }
        assertEquals(
                "22 gpg × 64.79891 mg/grain ÷ 3.785411784 L/gal(US) ÷ 100.086 mg CaCO3/mmol = 3.76274 mmol/L",
                answer("scales", "hardness-to", "mmol/L")
                        .solutions()
                        .get(0)
                        .steps()
                        .get(0)
                        .calculation(6));
    }

    @Test
    void aWaterWithoutBicarbonateHasFiguresAndNoWayThere() {
        Answer acid =
                answer("carbon-dioxide", "alkalinity", "-1", "alkalinity-unit", "meq/L", "given", "co2", "co2", "0");
        assertEquals(List.of(), acid.problems());
        assertEquals(List.of(), acid.solutions());
        assertEquals(
                "No steps are shown: carbon dioxide follows from bicarbonate, but this water has none.",
                acid.notes().get(0));
        assertEquals(3.0, acid.figure("pH").orElseThrow().value(), 0.05); // 1 mmol/L of strong acid, γ near 1
    }

    @Test
    void aChangeThatIsSmallBesideTheWaterHasAWayThereToo() {
        Answer answer = answer("softening", "raw", "1e-9", "sodium", "4000");
        assertFigure(4000 + 7.864e-9, answer, "sodium"); // 7.864 mg/L for each grain per US gallon
        assertEquals(1, answer.solutions().size());
    }

    @Test
    void allFieldsThatAreNoNumbersAreToldAtOnce() {
        Answer answer = answer("blend", "hardness", "x", "other-sodium", "", "wanted", "not asked for");
        assertEquals(
                List.of("hardness", "other-sodium"),
                answer.problems().stream().map(Problem::control).toList());
        assertEquals("No answer yet: 2 entries need a change.", answer.summary());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "softening | raw=-3 | raw | hardness of a water must not be negative, but was -3 gpg",
                "softening | leakage=-1 | leakage | leakage of hardness must not be negative, but was -1 gpg",
                "softening | stated=ions;magnesium=-1 | magnesium | concentration of Mg²⁺ must not be negative, but was -1 mg/L Mg²⁺",
                "softening | bypass=wanted;wanted=30 | wanted | wanted hardness 30 °dH is above the 21.1003029427 °dH of the raw water: a softener cannot add hardness",
                "softening | bypass=wanted;wanted=1;leakage=2 | wanted | wanted hardness 1 °dH is below the 1.91820935842 °dH behind the resin: no bypass can reach it",
                "blend | share=150 | share | share of the other water must be from 0 to 1, but was 1.5",
                "blend | by=hardness;wanted=20 | wanted | wanted hardness 20 °dH is not between the 18 °dH and 0.5 °dH of the two waters",
                "carbon-dioxide | ph=15 | ph | pH must be from 0 to 14, but was 15.0",
                "carbon-dioxide | temperature=70 | temperature | temperature of a speciation must be from 0 °C to 50 °C, but was 70 °C",
                "carbon-dioxide | given=co2;co2=-1 | co2 | concentration of CO₂ must not be negative, but was -1 mg/L CO₂",
            })
    void whatTheCoreRefusesIsItsMessageBesideTheField(String part, String entries, String control, String message) {
        String[] pairs = entries.split("[;=]", -1);
        assertRefused(control, message, answer(part, pairs));
    }

    @Test
    void aUnitThatIsNotOfferedIsRefused() {
        assertRefused("hardness-unit", "choose one of what is offered", answer("scales", "hardness-unit", "furlong"));
    }

    @Test
    void aPartThatIsNotThereIsNamed() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> LivePage.answer("brine", Map.of()));
        assertEquals("part must be one of [scales, softening, blend, carbon-dioxide], but was 'brine'", e.getMessage());
    }

    @Test
    void everyPartAnswersItsInitialValues() {
        for (String part : LivePage.parts()) {
            Answer answer = LivePage.answer(part, Map.of());
            assertEquals(List.of(), answer.problems(), part);
            assertTrue(answer.tables().size() > 0, part);
        }
    }
}
