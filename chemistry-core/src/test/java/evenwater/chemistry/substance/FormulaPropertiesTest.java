package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;

@PropertyDefaults(edgeCases = EdgeCasesMode.NONE) // of so many parts they would use up all tries
class FormulaPropertiesTest {

    /** Sums of decimals round in another order: a few ulp. */
    private static final double ROUNDING = 1e-14;

    /** A text and the atoms that it was composed of. */
    record Composed(String text, Map<Element, Double> atoms) {

        static Composed atom(Element element, int count) {
            return new Composed(element.symbol() + written(count), Map.of(element, (double) count));
        }

        Composed group(String brackets, int count) {
            String inner = brackets.charAt(0) + text + brackets.charAt(1);
            return new Composed(inner + written(count), sum(Map.of(), atoms, count));
        }

        Composed followedBy(Composed that) {
            return new Composed(text + that.text, sum(atoms, that.atoms, 1));
        }

        Composed withPart(String dot, String factor, Composed that) {
            double times = factor.isEmpty() ? 1 : Double.parseDouble(factor);
            return new Composed(text + dot + factor + that.text, sum(atoms, that.atoms, times));
        }

        private static String written(int count) {
            return count == 1 ? "" : Integer.toString(count);
        }

        private static Map<Element, Double> sum(Map<Element, Double> a, Map<Element, Double> b, double times) {
            Map<Element, Double> sum = new EnumMap<>(Element.class);
            sum.putAll(a);
            b.forEach((element, n) -> sum.merge(element, n * times, Double::sum));
            return sum;
        }
    }

    @Provide
    Arbitrary<Composed> groups() {
        return groups(3);
    }

    private static Arbitrary<Composed> groups(int depth) {
        Arbitrary<Composed> part =
                Combinators.combine(Arbitraries.of(Element.class), counts()).as(Composed::atom);
        if (depth > 0) {
            Arbitrary<Composed> inner = Combinators.combine(
                            groups(depth - 1), Arbitraries.of("()", "[]", "{}"), counts())
                    .as(Composed::group);
            part = Arbitraries.frequencyOf(Tuple.of(3, part), Tuple.of(1, inner));
        }
        return part.list().ofMinSize(1).ofMaxSize(3).map(FormulaPropertiesTest::joined);
    }

    private static Composed joined(List<Composed> parts) {
        return parts.stream().reduce(Composed::followedBy).orElseThrow();
    }

    private static Arbitrary<Integer> counts() {
        return Arbitraries.integers().between(1, 24);
    }

    @Provide
    Arbitrary<Composed> formulas() {
        Arbitrary<Composed> hydrates = Combinators.combine(
                        groups(2),
                        Arbitraries.of("·", "*", ".", "⋅", "•"),
                        Arbitraries.of("", "0.5", "2", "1.25", "10"),
                        groups(1))
                .as(Composed::withPart);
        return Arbitraries.oneOf(groups(), hydrates).filter(c -> c.text().length() <= 190);
    }

    @Provide
    Arbitrary<String> charges() {
        return Arbitraries.of("", "^+", "^-", "^2+", "^{3-}", "⁺", "²⁻", "(4+)", "(-)");
    }

    @Property
    void atomsAreThoseThatAFormulaWasComposedOf(@ForAll("formulas") Composed composed) {
        Formula formula = Formula.parse(composed.text());
        assertEquals(composed.atoms().keySet(), formula.elements());
        composed.atoms().forEach((element, n) -> assertEquals(n, formula.count(element)));
    }

    @Property
    void textReadsBackToAnEqualFormula(@ForAll("formulas") Composed composed, @ForAll("charges") String charge) {
        Formula formula = Formula.parse(composed.text() + charge);
        Formula readBack = Formula.parse(formula.toString());
        assertEquals(formula, readBack);
        assertEquals(formula.hashCode(), readBack.hashCode());
        assertEquals(formula.toString(), readBack.toString());
        assertTrue(formula.hasSameAtomsAs(readBack));
        assertEquals(formula.chargeNumber(), readBack.chargeNumber());
    }

    @Property
    void massOfTwoPartsIsTheSumOfTheirMasses(@ForAll("groups") Composed a, @ForAll("groups") Composed b) {
        double sum = grams(a.text()) + grams(b.text());
        assertEquals(sum, grams("(" + a.text() + ")(" + b.text() + ")"), ROUNDING * sum);
        assertEquals(sum, grams(a.text() + "·" + b.text()), ROUNDING * sum);
    }

    @Property
    void orderOfPartsMakesNoDifferenceToAtoms(@ForAll("groups") Composed a, @ForAll("groups") Composed b) {
        assertTrue(Formula.parse("(" + a.text() + ")(" + b.text() + ")")
                .hasSameAtomsAs(Formula.parse("(" + b.text() + ")(" + a.text() + ")")));
    }

    @Property
    void massOfAGroupIsItsMassTimesItsCount(
            @ForAll("groups") Composed a, @ForAll @IntRange(min = 2, max = 9999) int n) {
        double product = n * grams(a.text());
        assertEquals(product, grams("(" + a.text() + ")" + n), ROUNDING * product);
    }

    @Property
    void massIsPositiveAndAtLeastThatOfItsHeaviestElement(@ForAll("formulas") Composed composed) {
        Formula formula = Formula.parse(composed.text());
        double total = formula.molarMass().in(GRAM_PER_MOLE);
        formula.elements()
                .forEach(e -> assertTrue(total * (1 + ROUNDING)
                        >= formula.count(e) * e.atomicWeight().in(GRAM_PER_MOLE)));
        assertTrue(total > 0);
    }

    private static double grams(String text) {
        return Formula.parse(text).molarMass().in(GRAM_PER_MOLE);
    }
}
