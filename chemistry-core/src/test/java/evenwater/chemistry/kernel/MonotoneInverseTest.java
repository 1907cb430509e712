package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class MonotoneInverseTest {

    private int calls;

    private double inverse(DoubleUnaryOperator rising, double low, double high, double value) {
        calls = 0;
        return MonotoneInverse.of(
                x -> {
                    calls++;
                    return rising.applyAsDouble(x);
                },
                low,
                high,
                value);
    }

    @Test
    void aStraightLineTakesAFewCalls() {
        assertEquals(3.5, inverse(x -> 2 * x + 1, 0, 100, 8), 1e-14);
        assertTrue(calls <= 5, () -> calls + " calls");
    }

    @Test
    void aSaltLikeCurveTakesAboutTenCalls() {
        DoubleUnaryOperator salt = c -> 2.16 * c - 0.0057 * c * Math.sqrt(c); // Kohlrausch: some NaCl in mg/L and µS/cm
        for (double value : new double[] {0.5, 100, 1000, 10_000}) {
            double concentration = inverse(salt, 0, 20_000, value);
            assertEquals(value, salt.applyAsDouble(concentration), 1e-14 * value);
            assertTrue(calls <= 12, () -> calls + " calls");
        }
    }

    @Test
    void aCurveThatBendsTheOtherWayTakesFewMore() {
        for (double value : new double[] {0.5, 100, 1000, 9000}) { // x² + x = value
            assertEquals((Math.sqrt(1 + 4 * value) - 1) / 2, inverse(x -> x * x + x, 0, 100, value), 1e-13);
            assertTrue(calls <= 16, () -> calls + " calls");
        }
    }

    @Test
    void powersOfAllKindsTakeSomeTens() {
        int most = 0;
        for (double power : new double[] {0.01, 0.03, 0.1, 0.3, 0.5, 1, 2, 3, 10, 30, 100}) {
            for (double value : new double[] {1e-12, 1e-9, 1e-6, 0.001, 0.1, 0.3, 0.5, 0.9, 0.999, 0.999999}) {
                inverse(x -> Math.pow(x, power), 0, 1, value);
                most = Math.max(most, calls);
            }
        }
        assertEquals(86, most, 5); // as measured; a last digit of pow may move it
    }

    @Test
    void endsAreAnswersAndWhatIsBeyondIsTheEnd() {
        assertEquals(2, inverse(Math::sqrt, 2, 3, Math.sqrt(2)));
        assertEquals(3, inverse(Math::sqrt, 2, 3, Math.sqrt(3)));
        assertEquals(2, inverse(Math::sqrt, 2, 3, 1));
        assertEquals(3, inverse(Math::sqrt, 2, 3, 2));
        assertEquals(2, calls);
    }

    @Test
    void curvesThatMisleadAStraightLineEndInBoundedTime() {
        DoubleUnaryOperator flatThenSteep = x -> Math.pow(x, 40);
        assertEquals(Math.pow(0.5, 1 / 40.0), inverse(flatThenSteep, 0, 1, 0.5), 1e-15);
        assertTrue(calls <= 40, () -> calls + " calls");
        DoubleUnaryOperator steepThenFlat = x -> Math.cbrt(x);
        assertEquals(1e-6, inverse(steepThenFlat, 0, 1e6, 0.01), 2e-18); // 2e-24 of the interval
        assertTrue(calls <= 40, () -> calls + " calls");
        DoubleUnaryOperator nearlyAStep = x -> Math.tanh(1e6 * (x - 0.3));
        assertEquals(0.3, inverse(nearlyAStep, 0, 1, 0), 1e-15);
        assertTrue(calls <= 40, () -> calls + " calls");
    }

    @Test
    void answersNearZeroAreFineToAPartOfTheInterval() {
        assertEquals(1e-20, inverse(x -> x * (1 + x), 0, 1, 1e-20), 1e-23);
        assertTrue(calls <= 40, () -> calls + " calls");
    }

    @Test
    void intervalsMayLieBelowZero() {
        assertEquals(-2, inverse(x -> x * x * x, -10, 10, -8), 2e-15);
        assertEquals(0, inverse(x -> x * x * x, -10, 9, 0), 4e-23); // 2e-24 of the interval
        assertTrue(calls <= 115, () -> calls + " calls");
    }
}
