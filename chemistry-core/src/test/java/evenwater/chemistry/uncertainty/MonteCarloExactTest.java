package evenwater.chemistry.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.quantity.Dimensionless;
import org.junit.jupiter.api.Test;

/**
 * Models whose distribution is known. Each figure may be four of its own standard errors away: with any other seed one figure in 16 000
 * would be; with these seeds the outcome is always the same.
 */
class MonteCarloExactTest {

    private static final int DRAWS = 100_000;
    private static final double ERRORS = 4;

    private static UncertainResult<WaterQuantity<Dimensionless>> run(
            long seed, List<Uncertain<WaterQuantity<Dimensionless>>> inputs, ToDoubleFunction<Draw> model) {
        return MonteCarlo.seeded(seed).draws(DRAWS).propagateNumber(inputs, model);
    }

    private static double sum(Draw draw, List<? extends Uncertain<?>> inputs) {
        return inputs.stream().mapToDouble(draw::valueOf).sum();
    }

    private static void assertMoments(
            double mean, double deviation, UncertainResult<WaterQuantity<Dimensionless>> result) {
        assertEquals(mean, number(result.mean()), ERRORS * number(result.standardErrorOfMean()));
        assertEquals(
                deviation, number(result.standardUncertainty()), ERRORS * number(result.standardErrorOfUncertainty()));
    }

    /** With the standard error of an end from the density there: {@code √(q (1 - q)/M)/f}. */
    private static void assertEnds(
            double low, double high, double densityAtEnds, UncertainResult<WaterQuantity<Dimensionless>> result) {
        double error = Math.sqrt(0.025 * 0.975 / DRAWS) / densityAtEnds;
        assertEquals(low, number(result.symmetricInterval().low()), ERRORS * error);
        assertEquals(high, number(result.symmetricInterval().high()), ERRORS * error);
        assertEquals(error, number(result.standardErrorOfEnds()), 0.35 * error, "own estimate of the error");
    }

    private static double number(WaterQuantity<Dimensionless> quantity) {
        return quantity.getValue();
    }

    @Test
    void aSumOfNormalsIsNormal() {
        List<Uncertain<WaterQuantity<Dimensionless>>> inputs =
                List.of(Uncertain.normal(10, 3), Uncertain.normal(-2, 4));
        UncertainResult<WaterQuantity<Dimensionless>> result = run(1, inputs, draw -> sum(draw, inputs));
        assertMoments(8, 5, result);
        assertEnds(8 - 5 * 1.959964, 8 + 5 * 1.959964, 0.0584451 / 5, result);
    }

    @Test
    void oneInputUsedTwiceIsFullyCorrelated() {
        Uncertain<WaterQuantity<Dimensionless>> one = Uncertain.normal(10, 3);
        Uncertain<WaterQuantity<Dimensionless>> alike = Uncertain.normal(10, 3);
        assertMoments(20, 6, run(2, List.of(one), draw -> draw.valueOf(one) + draw.valueOf(one)));
        assertMoments(20, Math.sqrt(18), run(3, List.of(one, alike), draw -> draw.valueOf(one) + draw.valueOf(alike)));
        assertEquals(
                "0, without uncertainty",
                run(4, List.of(one), draw -> sum(draw, List.of(one)) - draw.valueOf(one))
                        .toString());
    }

    /** Between 0 and 2 with the density x and 2 - x: 2.5 % of it lie below √0.05. */
    @Test
    void theSumOfTwoRectangularsIsTriangular() {
        List<Uncertain<WaterQuantity<Dimensionless>>> inputs =
                List.of(Uncertain.between(0, 1), Uncertain.between(0, 1));
        UncertainResult<WaterQuantity<Dimensionless>> result = run(5, inputs, draw -> sum(draw, inputs));
        double end = Math.sqrt(0.05);
        assertMoments(1, 1 / Math.sqrt(6), result);
        assertEnds(end, 2 - end, end, result);
    }

    @Test
    void aTriangularInputIsTheSame() {
        Uncertain<WaterQuantity<Dimensionless>> x = Uncertain.triangularBetween(
                Uncertain.between(0, 0).value(), Uncertain.between(2, 2).value());
        UncertainResult<WaterQuantity<Dimensionless>> result = run(6, List.of(x), draw -> draw.valueOf(x));
        double end = Math.sqrt(0.05);
        assertMoments(1, 1 / Math.sqrt(6), result);
        assertEnds(end, 2 - end, end, result);
    }

    /** JCGM 101:2008 9.2.3, four rectangulars with u = 1: y = 0, u = 2, ends ±3.88; the figures are from memory. */
    @Test
    void theAdditiveModelOfTheSupplementHasItsInterval() {
        double half = Math.sqrt(3);
        List<Uncertain<WaterQuantity<Dimensionless>>> inputs = List.of(
                Uncertain.between(-half, half),
                Uncertain.between(-half, half),
                Uncertain.between(-half, half),
                Uncertain.between(-half, half));
        UncertainResult<WaterQuantity<Dimensionless>> result = run(7, inputs, draw -> sum(draw, inputs));
        assertMoments(0, 2, result);
        // exact: P(y > b) = (4√3 - b)⁴/(24 (2√3)⁴) beyond 2√3, so b = 4√3 - 2√3 · 0.6^(1/4) = 3.8794; density (4√3 -
        // b)³/(6 (2√3)⁴)
        double tail = 2 * half * Math.pow(0.6, 0.25);
        double end = 4 * half - tail;
        assertEquals(3.88, end, 0.005);
        assertEnds(-end, end, Math.pow(tail, 3) / (6 * Math.pow(2 * half, 4)), result);
        UncertaintyBudget<WaterQuantity<Dimensionless>> law =
                UncertaintyBudget.ofNumber(inputs, draw -> sum(draw, inputs));
        assertEquals(2, number(law.standardUncertainty()), 1e-9);
        Validation<WaterQuantity<Dimensionless>> one = law.validatedBy(result, 1);
        assertEquals(0.5, number(one.tolerance()));
        assertTrue(one.isValidated());
        assertTrue(one.isConclusive());
        Validation<WaterQuantity<Dimensionless>> two = law.validatedBy(result, 2);
        assertEquals(0.05, number(two.tolerance()), 1e-15);
        // 3.92 and 3.88 differ by 0.0405: agreement, but by less than the error of these draws
        assertFalse(two.isConclusive());
    }

    /** y = x² of a standard normal x: χ² of one degree of freedom, mean 1, u = √2, and no slope at the estimate. */
    @Test
    void atTheTopOfAParabolaTheLawFindsNothingAndIsNotValidated() {
        Uncertain<WaterQuantity<Dimensionless>> x = Uncertain.normal(0, 1);
        ToDoubleFunction<Draw> square = draw -> draw.valueOf(x) * draw.valueOf(x);
        UncertainResult<WaterQuantity<Dimensionless>> result = run(8, List.of(x), square);
        assertMoments(1, Math.sqrt(2), result);
        // the symmetric interval of χ²(1) is 0.00098 to 5.0239, the shortest 0 to 3.8415
        assertEquals(0.000982, number(result.symmetricInterval().low()), 2e-4);
        assertEquals(5.0239, number(result.symmetricInterval().high()), 0.2);
        assertEquals(0, number(result.shortestInterval().low()), 1e-3);
        assertEquals(3.8415, number(result.shortestInterval().high()), 0.1);
        UncertaintyBudget<WaterQuantity<Dimensionless>> law = UncertaintyBudget.ofNumber(List.of(x), square);
        assertEquals("0, without uncertainty", law.toString());
        assertEquals(0, law.contributions().get(0).share());
        Validation<WaterQuantity<Dimensionless>> validation = law.validatedBy(result, 1);
        assertFalse(validation.isValidated());
        assertEquals(0, number(validation.tolerance()));
        assertEquals(number(result.symmetricInterval().high()), number(validation.highDifference()));
    }

    /** The product of two lognormals is lognormal: mean e^(s²/2), variance (e^(s²) - 1) e^(s²) with s² = 0.3² + 0.4². */
    @Test
    void aProductOfLognormalsIsLognormal() {
        Uncertain<WaterQuantity<Dimensionless>> a = Uncertain.normal(0, 0.3);
        Uncertain<WaterQuantity<Dimensionless>> b = Uncertain.normal(0, 0.4);
        UncertainResult<WaterQuantity<Dimensionless>> result =
                run(9, List.of(a, b), draw -> Math.exp(draw.valueOf(a)) * Math.exp(draw.valueOf(b)));
        assertMoments(Math.exp(0.125), Math.sqrt(Math.expm1(0.25) * Math.exp(0.25)), result);
        double low = Math.exp(-0.5 * 1.959964);
        double high = Math.exp(0.5 * 1.959964);
        double ofRank = Math.sqrt(0.025 * 0.975 / DRAWS) / (0.0584451 / 0.5); // relative, as ln y is normal
        assertEquals(low, number(result.symmetricInterval().low()), ERRORS * ofRank * low);
        assertEquals(high, number(result.symmetricInterval().high()), ERRORS * ofRank * high);
        assertTrue(number(result.shortestInterval().high()) < high);
    }

    /** -ln of a rectangular from 0 to 1 is exponential: mean 1, u = 1. */
    @Test
    void theLogarithmOfARectangularIsExponential() {
        Uncertain<WaterQuantity<Dimensionless>> x = Uncertain.between(1e-300, 1);
        UncertainResult<WaterQuantity<Dimensionless>> result = run(10, List.of(x), draw -> -Math.log(draw.valueOf(x)));
        assertMoments(1, 1, result);
        assertEquals(
                0.05,
                result.probabilityAbove(
                        Uncertain.between(0, 2 * -Math.log(0.05)).value()),
                ERRORS * 0.0007);
        assertEquals(-Math.log(0.05), number(result.shortestInterval().high()), 0.06);
    }

    @Test
    void aTruncatedNormalHasTheMomentsThatItsInputStates() {
        Uncertain<WaterQuantity<Dimensionless>> half = Uncertain.normal(0, 2).notNegative();
        Uncertain<WaterQuantity<Dimensionless>> share = Uncertain.normal(0.98, 0.02)
                .notNegative()
                .notAbove(Uncertain.between(1, 1).value());
        for (Uncertain<WaterQuantity<Dimensionless>> x : List.of(half, share)) {
            assertMoments(
                    number(x.expectation()),
                    number(x.standardUncertainty()),
                    run(11, List.of(x), draw -> draw.valueOf(x)));
        }
        assertEquals(2 * Math.sqrt(2 / Math.PI), number(half.expectation()), 1e-15);
        assertEquals(2 * Math.sqrt(1 - 2 / Math.PI), number(half.standardUncertainty()), 1e-15);
    }

    @Test
    void moreDrawsConverge() {
        Uncertain<WaterQuantity<Dimensionless>> x = Uncertain.normal(0, 1);
        double[] errors = new double[3];
        int[] draws = {1000, 30_000, 1_000_000};
        for (int i = 0; i < draws.length; i++) {
            UncertainResult<WaterQuantity<Dimensionless>> result =
                    MonteCarlo.seeded(12).draws(draws[i]).propagateNumber(List.of(x), draw -> draw.valueOf(x));
            errors[i] = number(result.standardErrorOfMean());
            assertEquals(0, number(result.mean()), ERRORS * errors[i]);
            assertEquals(1 / Math.sqrt(draws[i]), errors[i], 0.1 * errors[i]);
            assertEquals(1 / Math.sqrt(2.0 * draws[i]), number(result.standardErrorOfUncertainty()), 0.15 * errors[i]);
        }
    }
}
