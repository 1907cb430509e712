package evenwater.chemistry.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws of propagation that hold whatever the numbers. */
class UncertaintyPropertiesTest {

    private static final MonteCarlo RUN = MonteCarlo.seeded(31).draws(1000).on(Runnable::run);

    @Provide
    static Arbitrary<Double> values() {
        return Arbitraries.doubles().between(-1000, 1000).ofScale(6);
    }

    @Provide
    static Arbitrary<Double> positives() {
        return Arbitraries.doubles().between(0.000001, 100).ofScale(6);
    }

    private static Hardness degrees(double value) {
        return Hardness.of(value, Hardness.GERMAN_DEGREE);
    }

    @Property(tries = 200)
    void theLawIsExactForAStraightLine(
            @ForAll("values") double a,
            @ForAll("values") double b,
            @ForAll("values") double x,
            @ForAll("positives") double ux,
            @ForAll("positives") double uy) {
        Uncertain<Hardness> first = Uncertain.normal(degrees(x), degrees(ux));
        Uncertain<Hardness> second = Uncertain.between(degrees(x), degrees(x + uy));
        UncertaintyBudget<Hardness> budget = UncertaintyBudget.of(
                List.of(first, second),
                draw -> draw.of(first).multiply(a).add(draw.of(second).multiply(b)));
        double partOfFirst = Math.abs(a) * ux;
        double partOfSecond = Math.abs(b) * uy / 2 / Math.sqrt(3);
        // a step of u/1000 leaves, of 53 bits of the result, those below it
        double rounding = 4 * 1000 * Math.ulp(Math.abs(a * x) + Math.abs(b) * (Math.abs(x) + uy));
        assertEquals(
                partOfFirst, budget.contributions().get(0).contribution().getValue(), rounding + 1e-9 * partOfFirst);
        assertEquals(
                Math.hypot(partOfFirst, partOfSecond),
                budget.standardUncertainty().getValue(),
                2 * rounding + 1e-9 * (partOfFirst + partOfSecond));
    }

    @Property(tries = 100)
    void theUnitMakesNoDifference(@ForAll("values") double x, @ForAll("positives") double u) {
        Uncertain<Hardness> ours = Uncertain.normal(degrees(x), degrees(u));
        Uncertain<Hardness> restated = Uncertain.normal(
                degrees(x).to(Hardness.GRAIN_PER_US_GALLON), degrees(u).to(Hardness.MILLIMOLE_PER_LITRE));
        UncertainResult<Hardness> one = RUN.propagate(List.of(ours), draw -> draw.of(ours));
        UncertainResult<Hardness> other = RUN.propagate(List.of(restated), draw -> draw.of(restated));
        double rounding = 1e-12 * (Math.abs(x) + u);
        assertEquals(one.mean().getValue(), other.mean().in(Hardness.GERMAN_DEGREE), rounding);
        assertEquals(
                one.standardUncertainty().getValue(),
                other.standardUncertainty().in(Hardness.GERMAN_DEGREE),
                rounding);
        assertEquals(
                one.shortestInterval().low().getValue(),
                other.shortestInterval().low().in(Hardness.GERMAN_DEGREE),
                rounding);
    }

    @Property(tries = 100)
    void theShortestIntervalIsNoLongerAndBothHoldTheirShare(@ForAll("values") double x, @ForAll("positives") double u) {
        Uncertain<Hardness> input = Uncertain.normal(degrees(x), degrees(u));
        UncertainResult<Hardness> result =
                RUN.propagate(List.of(input), draw -> degrees(Math.exp(draw.valueOf(input) / 1000)));
        List<Double> draws = RUN.outcomes(List.of(input), draw -> Math.exp(draw.valueOf(input) / 1000));
        CoverageInterval<Hardness> symmetric = result.symmetricInterval();
        CoverageInterval<Hardness> shortest = result.shortestInterval();
        for (CoverageInterval<Hardness> interval : List.of(symmetric, shortest)) {
            long held = draws.stream()
                    .filter(d -> d >= interval.low().getValue()
                            && d <= interval.high().getValue())
                    .count();
            assertEquals(951, held);
        }
        assertTrue(shortest.high().getValue() - shortest.low().getValue()
                <= symmetric.high().getValue() - symmetric.low().getValue());
    }

    @Property(tries = 200)
    void aFloorRaisesAndNarrows(@ForAll("positives") double x, @ForAll("positives") double u) {
        Uncertain<Hardness> whole = Uncertain.normal(degrees(x), degrees(u));
        Uncertain<Hardness> cut = whole.notNegative();
        assertTrue(cut.expectation().compareTo(whole.expectation()) >= 0);
        assertTrue(cut.standardUncertainty().compareTo(whole.standardUncertainty()) <= 0);
        // the variance about the stated value cannot grow
        assertTrue(cut.expectation().getValue() - x <= u * 0.7979);
    }

    @Property(tries = 100)
    void textOfAnyResultNamesItsUnitTwice(@ForAll("values") double x, @ForAll("positives") double u) {
        Uncertain<Hardness> input = Uncertain.normal(degrees(x), degrees(u));
        String text = RUN.propagate(List.of(input), draw -> draw.of(input)).toText(Locale.ROOT);
        assertTrue(
                text.matches("-?[0-9.,]+ ± [0-9.,]+ °dH \\(k = 2\\), 95 % between -?[0-9.,]+ and -?[0-9.,]+ °dH"),
                text);
    }
}
