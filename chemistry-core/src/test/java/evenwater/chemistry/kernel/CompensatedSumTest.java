package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.testing.Refused;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class CompensatedSumTest {

    private static double sum(double... terms) {
        double[] weights = new double[terms.length];
        Arrays.fill(weights, 1);
        return CompensatedSum.ofProducts(weights, terms);
    }

    @Test
    void nothingSumsToZero() {
        assertEquals(0.0, CompensatedSum.ofProducts(new double[0], new double[0]));
    }

    @Test
    void weightsMultiplyTheirValues() {
        // 2 × 1.5 + 1 × 0.5 − 1 × 3.5, as charges of calcium, sodium and chloride
        assertEquals(0.0, CompensatedSum.ofProducts(new double[] {2, 1, -1}, new double[] {1.5, 0.5, 3.5}));
        assertEquals(3.0, CompensatedSum.ofProducts(new double[] {2}, new double[] {1.5}));
    }

    @Test
    void smallTermsSurviveBetweenLargeOnes() {
        // the example with which Neumaier's variant differs from Kahan's: a plain sum gives 0, Kahan's too
        assertEquals(2.0, sum(1, 1e100, 1, -1e100));
        assertEquals(2.0, sum(1e100, 1, -1e100, 1));
    }

    @Test
    void tenTenthsAreOne() {
        // as decimal as the doubles allow: ten times the double next to 0.1 rounds to 1
        assertEquals(1.0, sum(0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1));
    }

    @Test
    void whatIsLostFirstIsFoundLast() {
        assertEquals(0x1p-60, sum(1, 0x1p-60, -1));
        assertEquals(-0x1p-60, sum(-0x1p-60, 1, -1));
    }

    @Test
    void weightsAndValuesMustBeAsMany() {
        Refused.argument(
                "weights and values must be as many, but were 1 and 2",
                () -> CompensatedSum.ofProducts(new double[1], new double[2]));
    }
}
