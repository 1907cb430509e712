package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class CompensatedSumPropertiesTest {

    private record Term(int chargeNumber, double amount) {}

    @Provide
    Arbitrary<List<Term>> terms() {
        Arbitrary<Double> amount = Arbitraries.oneOf(
                Arbitraries.doubles().between(0, 100).ofScale(6),
                Arbitraries.doubles().between(-1e15, 1e15).ofScale(3),
                Arbitraries.doubles().between(0, 1e-6).ofScale(15));
        return Combinators.combine(Arbitraries.integers().between(-4, 4), amount)
                .as(Term::new)
                .list()
                .ofMaxSize(60);
    }

    @Property
    void theSumIsThatOfExactArithmetic(@ForAll("terms") List<Term> terms) {
        double sum = CompensatedSum.ofProducts(weights(terms), values(terms));
        BigDecimal exact = BigDecimal.ZERO;
        double size = 0;
        for (Term term : terms) {
            double product = term.chargeNumber() * term.amount();
            exact = exact.add(new BigDecimal(product));
            size += Math.abs(product);
        }
        // Neumaier 1974: one rounding of the sum and, of the second order, n² roundings of the sizes
        double firstOrder = Math.abs(exact.doubleValue()) * 0x1p-53;
        double secondOrder = size * terms.size() * terms.size() * 0x1p-106;
        BigDecimal error = new BigDecimal(sum).subtract(exact, MathContext.UNLIMITED);
        assertEquals(0, error.doubleValue(), 1.01 * firstOrder + 2 * secondOrder);
    }

    @Property
    void whatEntersAndLeavesCancelsExactly(@ForAll("terms") List<Term> terms) {
        int n = terms.size();
        double[] weights = new double[2 * n];
        double[] values = new double[2 * n];
        for (int i = 0; i < n; i++) {
            weights[i] = terms.get(i).chargeNumber();
            weights[2 * n - 1 - i] = -terms.get(i).chargeNumber();
            values[i] = terms.get(i).amount();
            values[2 * n - 1 - i] = terms.get(i).amount();
        }
        double size = terms.stream()
                .mapToDouble(term -> Math.abs(term.chargeNumber() * term.amount()))
                .sum();
        // the first order vanishes with the sum; the second is that of 2n terms
        assertEquals(0, CompensatedSum.ofProducts(weights, values), size * 16 * n * n * 0x1p-106);
    }

    @Property
    void turningAllSignsTurnsTheSign(@ForAll("terms") List<Term> terms) {
        double[] turned =
                terms.stream().mapToDouble(term -> -term.chargeNumber()).toArray();
        double sum = CompensatedSum.ofProducts(weights(terms), values(terms));
        assertEquals(0.0 - sum, 0.0 + CompensatedSum.ofProducts(turned, values(terms)));
    }

    private static double[] weights(List<Term> terms) {
        return terms.stream().mapToDouble(Term::chargeNumber).toArray();
    }

    private static double[] values(List<Term> terms) {
        return terms.stream().mapToDouble(Term::amount).toArray();
    }
}
