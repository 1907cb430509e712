package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CalciumToMagnesiumTest {

    @ParameterizedTest
    @CsvSource({"3, 0.75", "1, 0.5", "0.25, 0.2", "1e300, 1", "1e-300, 1e-300", "1.7976931348623157e308, 1"})
    void byAmountTheShareIsRatioOverRatioAndOne(double ratio, double share) {
        assertEquals(share, CalciumToMagnesium.byAmount(ratio).shareOfCalcium(), share * 1e-15);
    }

    @ParameterizedTest
    @CsvSource({
        "4.946883357, 0.75", // 3 · 40.078/24.305, ten digits
        "1.648961119, 0.5",
        "3, 0.645305",
        "1, 0.377506"
    })
    void byMassTheMolarMassesCount(double ratio, double share) {
        assertEquals(share, CalciumToMagnesium.byMass(ratio).shareOfCalcium(), 5e-7); // six digits
    }

    @Test
    void theKindIsKept() {
        assertTrue(CalciumToMagnesium.byMass(2).byMass());
        assertFalse(CalciumToMagnesium.byAmount(2).byMass());
        assertEquals(2, CalciumToMagnesium.byMass(2).ratio(), 0);
    }

    @ParameterizedTest
    @CsvSource({
        "3, false, 3 : 1 by amount",
        "3, true, 3 : 1 by mass",
        "4.95, true, 4.95 : 1 by mass",
        "0.5, false, 0.5 : 1 by amount",
        "999999, false, 999999 : 1 by amount",
        "1000000, false, 1000000.0 : 1 by amount"
    })
    void textSaysWhatItIsARatioOf(double ratio, boolean byMass, String text) {
        assertEquals(text, new CalciumToMagnesium(ratio, byMass).toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aRatioIsPositiveAndFinite(double ratio) {
        String message = "ratio of calcium to magnesium must be positive, but was " + ratio;
        assertIllegal(message, () -> CalciumToMagnesium.byAmount(ratio));
        assertIllegal(message, () -> CalciumToMagnesium.byMass(ratio));
    }
}
