package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.IonBalance;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Standard Methods 1030 E, from memory. */
class AcceptanceCriteriaTest {

    private static final String SOURCE = "Standard Methods 1030 E (from memory)";

    private static EquivalentConcentration milliequivalents(double value) {
        return EquivalentConcentration.of(value, EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
    }

    private static IonBalance balance(double cations, double anions) {
        return new IonBalance(milliequivalents(cations), milliequivalents(anions));
    }

    private static Conductivity microsiemens(double value) {
        return Conductivity.of(value, Conductivity.MICROSIEMENS_PER_CENTIMETRE);
    }

    private static MassConcentration milligrams(double value) {
        return MassConcentration.of(value, MassConcentration.MILLIGRAM_PER_LITRE);
    }

    @ParameterizedTest(name = "cations {0}, anions {1}")
    @CsvSource({
        // cations, anions, figure, limit, unit, accepted
        "2.2,    2,    0.2,       0.2, meq/L, true",
        "1.8,    2,   -0.2,       0.2, meq/L, true",
        "2.201,  2,    0.201,     0.2, meq/L, false",
        "1.799,  2,   -0.201,     0.2, meq/L, false",
        "0,      0,    0,         0.2, meq/L, true",
        "3.2,    3,    0.2,       0.2, meq/L, true",
        "3.1,    3.01, 1.4730,    2,   %,     true",
        "3.2,    3.01, 3.0596,    2,   %,     false",
        "5.1,    4.9,  2,         2,   %,     true",
        "4.9,    5.1, -2,         2,   %,     true",
        "5.11,   4.9,  2.0979,    2,   %,     false",
        "4.9,    5.11,-2.0979,    2,   %,     false",
        "10.4,   10,   1.9608,    2,   %,     true",
        "10.5,   10,   2.4390,    2,   %,     false",
        "11.05,  10.01,4.9383,    5,   %,     true",
        "21,     19,   5,         5,   %,     true",
        "19,     21,  -5,         5,   %,     true",
        "21.1,   19,   5.2369,    5,   %,     false",
        "19,     21.1,-5.2369,    5,   %,     false",
        "800,    800,  0,         5,   %,     true"
    })
    void ionsBalanceWithinLimitsThatGrow(
            double cations, double anions, double figure, double limit, String unit, boolean accepted) {
        Acceptance check = AcceptanceCriteria.ionBalance(balance(cations, anions));
        assertEquals(accepted, check.accepted(), check::toString);
        assertEquals(figure, check.value(), 5e-5); // four decimals
        assertEquals(-limit, check.low(), 0);
        assertEquals(limit, check.high(), 0);
        assertEquals(unit, check.unit());
        assertEquals(
                unit.equals("%") ? "cations minus anions over their sum" : "cations minus anions", check.criterion());
        assertEquals(SOURCE, check.source());
    }

    @Test
    void theExampleWaterOfStandardMethodsBalances() {
        // O7: Ca 55, Mg 12, Na 28, K 3.2, HCO3 170, SO4 77, Cl 20 mg/L; cations 5.0319, anions 4.9536, difference
        // +0.784 %
        Interpretation read = Reports.interpreted(
                "Ca | 55 | mg/L",
                "Mg | 12 | mg/L",
                "Na | 28 | mg/L",
                "K | 3.2 | mg/L",
                "HCO3 | 170 | mg/L",
                "SO4 | 77 | mg/L",
                "Cl | 20 | mg/L");
        IonBalance balance = read.water().ionBalance();
        assertEquals(5.0319, balance.cations().getValue(), 5e-5);
        assertEquals(4.9536, balance.anions().getValue(), 5e-5);
        Acceptance check = AcceptanceCriteria.ionBalance(balance);
        assertEquals(0.784, check.value(), 5e-4);
        assertEquals(2, check.high(), 0);
        assertTrue(check.accepted());
        assertEquals(List.of(), read.notMeasured());
    }

    @Test
    void moreThan800MilliequivalentsAreNotJudged() {
        NoAnswerException e =
                assertThrows(NoAnswerException.class, () -> AcceptanceCriteria.ionBalance(balance(800, 800.1)));
        assertEquals("ion balance is judged up to 800.0 meq/L of anions, but they were 800.1 meq/L", e.getMessage());
        assertEquals(List.of(milliequivalents(800.1)), e.numbers());
    }

    @ParameterizedTest
    @CsvSource({"450, true", "550, true", "449, false", "551, false", "500, true"})
    void chargesFollowTheConductivity(double microsiemens, boolean accepted) {
        Acceptance anions = AcceptanceCriteria.anionsAgainstConductivity(
                balance(7, microsiemens / 100), microsiemens(500)); // 100 · anions is from 0.9 to 1.1 of 500 µS/cm
        assertEquals(accepted, anions.accepted());
        assertEquals(microsiemens / 500, anions.value(), 1e-12);
        assertEquals("100 × anions in meq/L over conductivity in µS/cm", anions.criterion());
        Acceptance cations = AcceptanceCriteria.cationsAgainstConductivity(
                balance(microsiemens / 100, 7), Conductivity.of(0.5, Conductivity.MILLISIEMENS_PER_CENTIMETRE));
        assertEquals(accepted, cations.accepted());
        assertEquals(microsiemens / 500, cations.value(), 1e-12);
        assertEquals("100 × cations in meq/L over conductivity in µS/cm", cations.criterion());
        for (Acceptance check : List.of(anions, cations)) {
            assertEquals(List.of(0.9, 1.1), List.of(check.low(), check.high()));
            assertEquals("", check.unit());
            assertEquals(SOURCE, check.source());
        }
    }

    @ParameterizedTest
    @CsvSource({"400, true", "480, true", "399, false", "481, false"})
    void weighedSolidsAreAtLeastTheCalculatedOnes(double measured, boolean accepted) {
        Acceptance check = AcceptanceCriteria.measuredSolids(
                milligrams(measured), MassConcentration.of(0.4, MassConcentration.GRAM_PER_LITRE));
        assertEquals(accepted, check.accepted());
        assertEquals(
                new Acceptance("measured over calculated dissolved solids", check.value(), 1.0, 1.2, "", SOURCE),
                check);
        assertEquals(measured / 400, check.value(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"275, true", "350, true", "274, false", "351, false"})
    void solidsFollowTheConductivity(double solids, boolean accepted) {
        Acceptance check = AcceptanceCriteria.solidsAgainstConductivity(milligrams(solids), microsiemens(500));
        assertEquals(accepted, check.accepted());
        assertEquals(
                new Acceptance(
                        "calculated dissolved solids in mg/L over conductivity in µS/cm",
                        check.value(),
                        0.55,
                        0.7,
                        "",
                        SOURCE),
                check);
        assertEquals(solids / 500, check.value(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1})
    void whatIsDividedByIsPositive(double value) {
        String conductivity = "conductivity must be positive, but was " + Math.round(value) + " µS/cm";
        assertIllegal(
                conductivity, () -> AcceptanceCriteria.anionsAgainstConductivity(balance(1, 1), microsiemens(value)));
        assertIllegal(
                conductivity, () -> AcceptanceCriteria.cationsAgainstConductivity(balance(1, 1), microsiemens(value)));
        assertIllegal(
                conductivity, () -> AcceptanceCriteria.solidsAgainstConductivity(milligrams(1), microsiemens(value)));
        assertIllegal(
                "calculated dissolved solids must be positive, but were " + Math.round(value) + " mg/L",
                () -> AcceptanceCriteria.measuredSolids(milligrams(1), milligrams(value)));
    }

    @Test
    void theEndsBelongToTheLimitsWhateverTheRounding() {
        assertTrue(new Acceptance("x", 2.2 - 2, -0.2, 0.2, "", "").accepted()); // 0.20000000000000018
        assertTrue(new Acceptance("x", 1.8 - 2, -0.2, 0.2, "", "").accepted());
        assertTrue(new Acceptance("x", 800 * (1 + 5e-10), -800, 800, "", "").accepted());
        assertFalse(new Acceptance("x", 0.2000001, -0.2, 0.2, "", "").accepted());
        assertFalse(new Acceptance("x", -0.2000001, -0.2, 0.2, "", "").accepted());
    }

    @Test
    void figuresThatAreNoneAreRefused() {
        assertIllegal("x must be a finite number, but was NaN", () -> new Acceptance("x", Double.NaN, 0, 1, "", ""));
        assertIllegal(
                "limits of x must be in order, but were 1.0 and 0.0", () -> new Acceptance("x", 0.5, 1, 0, "", ""));
        assertIllegal(
                "measured dissolved solids must not be negative, but were -1 mg/L",
                () -> AcceptanceCriteria.measuredSolids(milligrams(-1), milligrams(1)));
        assertIllegal(
                "calculated dissolved solids must not be negative, but were -1 mg/L",
                () -> AcceptanceCriteria.solidsAgainstConductivity(milligrams(-1), microsiemens(1)));
        assertThrows(
                IllegalArgumentException.class,
                () -> AcceptanceCriteria.solidsAgainstConductivity(milligrams(1e300), microsiemens(1e-300)));
    }
}
