package evenwater.chemistry.validation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The checks must be able to fail. */
class PublishedCheckTest {

    private static PublishedCheck check(Figure published, double ours) {
        return PublishedCheck.of("id", "what", "g", Source.ARITHMETIC, Status.COMPUTED, published, ours);
    }

    @ParameterizedTest
    @CsvSource({
        "17.848, 17.8484, true",
        "17.848, 17.8485, true",
        "17.848, 17.84851, false",
        "17.848, 17.84749, false",
        "50.0, 50.043, true",
        "50, 50.5, true",
        "50, 50.51, false"
    })
    void aPrintedFigureIsOpenByHalfItsLastDigit(String digits, double ours, boolean agrees) {
        assertEquals(agrees, Figure.printed(digits).accepts(ours));
    }

    @Test
    void anExactFigureIsOpenByTheRoundingOfDoublesAlone() {
        assertTrue(Figure.exact("7000").accepts(Math.nextUp(7000.0)));
        assertFalse(Figure.exact("7000").accepts(7000.0001));
    }

    @Test
    void aRangeHoldsItsEnds() {
        Figure range = Figure.range("80", "100");
        assertTrue(range.accepts(80));
        assertTrue(range.accepts(100));
        assertEquals("below", range.deviation(79.99));
        assertEquals("inside", range.deviation(90));
        assertEquals("above", range.deviation(100.01));
        assertEquals("84.77", range.rounded(84.77));
    }

    @ParameterizedTest
    @CsvSource({
        "17.848, 17.84795913, 17.848, −0.000041",
        "14.286, 14.2537675, 14.2538, −0.032",
        "0.04990, 0.049902691, 0.0499027, +0.0000027",
        "0.0560288152, 0.05602881522, 0.0560288152, +2E-11",
        "22.990, 22.99, 22.990, 0",
        "7000, 7000, 7000, 0",
        "6000, 5994.1992, 5994.2, −5.8",
        "0, 1e-17, 0, 0",
        "3.785411784, 3.785411784, 3.785411784, 0",
        "123456, 1234567, 1234570, +1100000"
    })
    void figuresAreRoundedForReading(String published, double ours, String rounded, String deviation) {
        assertEquals(rounded, Figure.printed(published).rounded(ours));
        assertEquals(deviation, Figure.printed(published).deviation(ours));
    }

    @Test
    void aResultOutsideTheToleranceIsAProblem() {
        assertEquals(Optional.empty(), check(Figure.printed("14.25"), 14.2538).problem());
        assertEquals(
                Optional.of("what: published 14.29 (± 0.005) g, ours 14.2538, outside the tolerance of arithmetic"),
                check(Figure.printed("14.29"), 14.2538).problem());
    }

    @Test
    void aDifferenceNeedsAReasonThatGivesThePublishedFigure() {
        PublishedCheck check = check(Figure.printed("14.29"), 14.2538);
        assertEquals(
                Optional.empty(),
                check.differing("1 in 70 000", new BigDecimal("14.2857")).problem());
        assertEquals(
                Optional.of("what: published 14.29 (± 0.005) g, ours 14.2538 differ without a reason"),
                check.differing(" ", new BigDecimal("14.2857")).problem());
        assertEquals(
                Optional.of("what: published 14.29 (± 0.005) g, ours 14.2538 differ, and the convention of the source "
                        + "gives 14.25, which explains nothing"),
                check.differing("no reason", new BigDecimal("14.25")).problem());
    }

    @Test
    void whatAgreesHasNoDifferenceToExplain() {
        assertEquals(
                Optional.of(
                        "what: published 14.25 (± 0.005) g, ours 14.2538 agree, so there is no difference to explain"),
                check(Figure.printed("14.25"), 14.2538)
                        .differing("1 in 70 000", new BigDecimal("14.25"))
                        .problem());
    }

    @Test
    void aCheckWithoutANumberIsRefused() {
        assertEquals(
                "a check needs an id, words and a finite result, but was 'id', 'what', NaN",
                assertThrows(IllegalArgumentException.class, () -> check(Figure.printed("1"), Double.NaN))
                        .getMessage());
    }
}
