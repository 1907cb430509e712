package evenwater.chemistry.uncertainty;

import static evenwater.chemistry.quantity.MassConcentration.GRAM_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.RejectedExecutionException;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

class MonteCarloTest {

    private static final Uncertain<MassConcentration> X = Uncertain.normal(
                    MassConcentration.of(40, MILLIGRAM_PER_LITRE), MassConcentration.of(0.002, GRAM_PER_LITRE))
            .named("x");
    private static final Uncertain<WaterQuantity<Dimensionless>> PH = Uncertain.between(7, 7.4);

    private static MassConcentration model(Draw draw) {
        return draw.of(X).multiply(Math.exp(draw.valueOf(PH) - 7));
    }

    private static List<Double> numbers(MonteCarlo run) {
        return run.outcomes(List.of(X, PH), draw -> model(draw).getValue());
    }

    @Test
    void whoRunsItMakesNoDifference() {
        MonteCarlo run = MonteCarlo.seeded(-5).draws(2777);
        List<Double> expected = numbers(run.on(Runnable::run));
        String text =
                run.propagate(List.of(X, PH), MonteCarloTest::model).mean().toString();
        assertEquals(expected, numbers(run));
        for (int threads : new int[] {1, 2, 8}) {
            for (ExecutorService pool : List.of(Executors.newFixedThreadPool(threads), new ForkJoinPool(threads))) {
                assertEquals(expected, numbers(run.on(pool)));
                assertEquals(
                        text,
                        run.on(pool)
                                .propagate(List.of(X, PH), MonteCarloTest::model)
                                .mean()
                                .toString());
                pool.shutdown();
            }
        }
    }

    @Test
    void aSeedIsASampleForEver() {
        List<Double> first = numbers(MonteCarlo.seeded(42).draws(100));
        assertEquals(first, numbers(MonteCarlo.seeded(42).draws(10_000)).subList(0, 100));
        assertNotEquals(first, numbers(MonteCarlo.seeded(43).draws(100)));
        assertEquals(10_000, numbers(MonteCarlo.seeded(42)).stream().distinct().count(), "no chunk repeats another");
        // pinned: another Java, machine or release must draw the same
        List<Double> drawn = MonteCarlo.seeded(42).outcomes(List.of(X, PH), draw -> draw.valueOf(X) + draw.valueOf(PH));
        assertEquals(
                List.of(46.30466982160332, 49.73589258612184, 47.6385837119975),
                List.of(drawn.get(0), drawn.get(1), drawn.get(9999)));
    }

    @Test
    void aPoolThatRunsItsOwnComputationsDoesNotHang() {
        ExecutorService one = Executors.newSingleThreadExecutor();
        MonteCarlo run = MonteCarlo.seeded(1).draws(1000).on(one);
        List<Double> expected = numbers(run);
        assertEquals(
                List.of(expected, expected),
                run.draws(100)
                        .on(one)
                        .outcomes(List.of(X, PH), draw -> numbers(run))
                        .subList(0, 2));
        one.shutdown();
    }

    @Test
    void whatAnExecutorRefusesTheCallerDoes() {
        Executor none = task -> {
            throw new RejectedExecutionException("full");
        };
        Executor forgetful = task -> {};
        assertEquals(numbers(MonteCarlo.seeded(9)), numbers(MonteCarlo.seeded(9).on(none)));
        assertEquals(numbers(MonteCarlo.seeded(9)), numbers(MonteCarlo.seeded(9).on(forgetful)));
    }

    @Test
    void anInterruptIsKeptAndDoesNotSpoilTheResult() {
        Thread.currentThread().interrupt();
        assertEquals(numbers(MonteCarlo.seeded(9).on(Runnable::run)), numbers(MonteCarlo.seeded(9)));
        assertEquals(true, Thread.interrupted());
    }

    @Test
    void aResultIsInTheUnitOfTheFirstDraw() {
        MassConcentration half = MassConcentration.of(40, MILLIGRAM_PER_LITRE);
        UncertainResult<MassConcentration> mixed = MonteCarlo.seeded(3)
                .propagate(
                        List.of(X),
                        draw -> draw.of(X).compareTo(half) > 0
                                ? draw.of(X)
                                : draw.of(X).to(GRAM_PER_LITRE));
        UncertainResult<MassConcentration> plain = MonteCarlo.seeded(3).propagate(List.of(X), draw -> draw.of(X));
        assertEquals(40, mixed.mean().in(MILLIGRAM_PER_LITRE), 0.1);
        assertEquals(2, mixed.standardUncertainty().in(MILLIGRAM_PER_LITRE), 0.1);
        assertEquals(plain.mean().in(MILLIGRAM_PER_LITRE), mixed.mean().in(MILLIGRAM_PER_LITRE), 1e-12);
        assertEquals(MILLIGRAM_PER_LITRE, plain.mean().getUnit());
        assertEquals(0.5, plain.probabilityAbove(half.to(GRAM_PER_LITRE)), 0.02);
        assertEquals(0, plain.probabilityAbove(half.multiply(2)));
        assertEquals(1, plain.probabilityAbove(half.multiply(0)));
        assertEquals(10_000, plain.draws());
    }

    @Test
    void uncertaintiesOfATemperatureAreInKelvin() {
        Uncertain<WaterQuantity<Temperature>> t = Uncertain.normal(
                WaterUnits.temperature(50, WaterUnits.FAHRENHEIT), WaterUnits.temperature(0.5, WaterUnits.KELVIN));
        UncertainResult<WaterQuantity<Temperature>> result =
                MonteCarlo.seeded(3).propagate(List.of(t), draw -> draw.of(t));
        assertEquals(50, result.mean().in(WaterUnits.FAHRENHEIT), 0.04);
        assertEquals(WaterUnits.KELVIN, result.standardUncertainty().getUnit());
        assertEquals(0.5, result.standardUncertainty().in(WaterUnits.KELVIN), 0.015);
        UncertainResult<WaterQuantity<Temperature>> celsius = MonteCarlo.seeded(3)
                .propagate(List.of(t), draw -> {
                    double degrees = draw.of(t).in(WaterUnits.CELSIUS);
                    return WaterUnits.temperature(degrees, WaterUnits.CELSIUS);
                });
        assertEquals(
                celsius.standardUncertainty().getValue(),
                result.standardUncertainty().getValue(),
                1e-12);
    }

    @Test
    void outcomesMayBeAnything() {
        List<String> verdicts =
                MonteCarlo.seeded(1).draws(500).outcomes(List.of(PH), draw -> draw.valueOf(PH) > 7.1 ? "high" : "low");
        assertEquals(500, verdicts.size());
        assertEquals(0.75, verdicts.stream().filter("high"::equals).count() / 500.0, 0.08);
        assertThrows(UnsupportedOperationException.class, () -> verdicts.set(0, "none"));
    }

    @Test
    void withoutInputsEveryDrawIsTheSame() {
        UncertainResult<MassConcentration> result =
                MonteCarlo.seeded(1).propagate(List.of(), draw -> MassConcentration.of(118.25, MILLIGRAM_PER_LITRE));
        assertEquals("118.25 mg/L, without uncertainty", result.toString());
        assertEquals(0, result.standardErrorOfEnds().getValue());
        assertEquals(0, result.standardErrorOfUncertainty().getValue());
    }

    @Test
    void drawsWithoutAnAnswerAreCountedAndNotLeftOut() {
        MassConcentration limit = MassConcentration.of(44, MILLIGRAM_PER_LITRE);
        NoAnswerException refusal = assertThrowsExactly(
                NoAnswerException.class,
                () -> MonteCarlo.seeded(4).propagate(List.of(X), draw -> {
                    if (draw.of(X).compareTo(limit) > 0) {
                        throw new NoAnswerException("harder than both parts", limit);
                    }
                    return draw.of(X);
                }));
        long above = MonteCarlo.seeded(4).outcomes(List.of(X), draw -> draw.valueOf(X) > 44).stream()
                .filter(b -> b)
                .count();
        int first = MonteCarlo.seeded(4)
                        .outcomes(List.of(X), draw -> draw.valueOf(X) > 44)
                        .indexOf(true)
                + 1;
        assertEquals(
                "no answer for " + above + " of 10000 draws; for the first of them, draw " + first
                        + ": harder than both parts",
                refusal.getMessage());
        assertEquals(List.of(limit), refusal.numbers());
        assertEquals("harder than both parts", refusal.getCause().getMessage());
    }

    @Test
    void valuesThatNoQuantityHasAreNoAnswer() {
        Refused.withoutAnswer(
                "no answer for 1000 of 1000 draws; for the first of them, draw 1: dimensionless must be a finite number, but was NaN ",
                List.of(),
                () -> MonteCarlo.seeded(4).draws(1000).propagateNumber(List.of(PH), draw -> Double.NaN));
        Refused.withoutAnswer(
                "no answer for 10000 of 10000 draws; for the first of them, draw 1: / by zero",
                List.of(),
                () -> MonteCarlo.seeded(4).outcomes(List.of(PH), draw -> 1 / (int) (draw.valueOf(PH) / 100)));
    }

    @Test
    void anUndeclaredInputIsRefusedByName() {
        IllegalArgumentException refusal = assertThrows(
                IllegalArgumentException.class, () -> MonteCarlo.seeded(4).propagate(List.of(PH), draw -> draw.of(X)));
        assertEquals("input 'x' was not declared; declared were 7.2", refusal.getMessage());
        assertEquals(
                "input 'x' was not declared; declared was none",
                assertThrows(IllegalArgumentException.class, () -> UncertaintyBudget.of(List.of(), draw -> draw.of(X)))
                        .getMessage());
        Refused.argument(
                "input 'x' must be declared once",
                () -> MonteCarlo.seeded(4).propagate(List.of(X, PH, X), draw -> draw.of(X)));
        Refused.argument(
                "input 'x' must be declared once", () -> UncertaintyBudget.of(List.of(X, X), draw -> draw.of(X)));
    }

    @Test
    void otherExceptionsAreThrownAsTheyAre() {
        IllegalStateException mistake = new IllegalStateException("a mistake");
        assertSame(
                mistake,
                assertThrows(
                        IllegalStateException.class,
                        () -> MonteCarlo.seeded(4).outcomes(List.of(PH), draw -> {
                            throw mistake;
                        })));
        StackOverflowError error = new StackOverflowError();
        assertSame(
                error,
                assertThrows(
                        StackOverflowError.class,
                        () -> MonteCarlo.seeded(4).propagateNumber(List.of(PH), draw -> {
                            throw error;
                        })));
        Refused.asNull("outcome of the computation", () -> MonteCarlo.seeded(4).outcomes(List.of(), draw -> null));
        Refused.asNull("result of the computation", () -> MonteCarlo.seeded(4).propagate(List.of(), draw -> null));
    }

    @Test
    void drawsAndCoverageHaveLimits() {
        MonteCarlo run = MonteCarlo.seeded(1);
        for (int number : new int[] {0, -1, 99, 10_000_001, Integer.MAX_VALUE}) {
            Refused.argument(
                    "number of draws must be from 100 to 10000000, but was " + number, () -> run.draws(number));
        }
        for (double coverage : new double[] {0, -0.5, 1, 0.99995, 2, Double.NaN}) {
            Refused.argument(
                    "coverage probability must be above 0 and leave out at least one of 10000 draws, but was "
                            + coverage,
                    () -> run.coverage(coverage));
        }
        Refused.argument(
                "coverage probability must be above 0 and leave out at least one of 100 draws, but was 0.999",
                () -> run.coverage(0.999).draws(100));
        Refused.asNull("newExecutor", () -> run.on(null));
        Refused.asNull("inputs", () -> run.outcomes(null, draw -> 1));
        Refused.asNull("computation", () -> run.outcomes(List.of(), null));
        assertEquals("10000 draws with seed 1, coverage 0.95", run.toString());
    }

    @Test
    void coverageAtItsLimitsHasEndsInTheSample() {
        for (double coverage : new double[] {0.9999, 0.5, 1e-9}) {
            UncertainResult<MassConcentration> result =
                    MonteCarlo.seeded(1).coverage(coverage).propagate(List.of(X), draw -> draw.of(X));
            CoverageInterval<MassConcentration> symmetric = result.symmetricInterval();
            CoverageInterval<MassConcentration> shortest = result.shortestInterval();
            double width = symmetric.high().subtract(symmetric.low()).getValue();
            assertEquals(coverage, symmetric.probability());
            assertEquals(true, shortest.high().subtract(shortest.low()).getValue() <= width);
        }
    }

    @Test
    void manyResultsOfOneRunAreThoseOfARunEach() {
        Uncertain<Hardness> gh =
                Uncertain.normal(Hardness.of(7, Hardness.GERMAN_DEGREE), Hardness.of(0.5, Hardness.GERMAN_DEGREE));
        MonteCarlo run = MonteCarlo.seeded(3).draws(1000);
        UncertainResult<Hardness> alone = run.propagate(List.of(gh), draw -> draw.of(gh));
        UncertainResult<Hardness> ofOutcomes = UncertainResult.of(run.outcomes(List.of(gh), draw -> draw.of(gh)), 0.95);
        assertEquals(alone.mean(), ofOutcomes.mean());
        assertEquals(alone.standardUncertainty(), ofOutcomes.standardUncertainty());
        assertEquals(alone.symmetricInterval(), ofOutcomes.symmetricInterval());
        Refused.argument(
                "outcomes must be 2 or more, but were 1",
                () -> UncertainResult.of(List.of(Hardness.of(7, Hardness.GERMAN_DEGREE)), 0.5));
        Refused.argument(
                "coverage probability must be above 0 and leave out at least one of 2 draws, but was 0.95",
                () -> UncertainResult.of(
                        List.of(Hardness.of(7, Hardness.GERMAN_DEGREE), Hardness.of(8, Hardness.GERMAN_DEGREE)), 0.95));
    }
}
