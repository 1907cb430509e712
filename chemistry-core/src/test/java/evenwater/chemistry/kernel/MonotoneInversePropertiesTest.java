package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class MonotoneInversePropertiesTest {

    /** Rising on 0 to 1, of bounded slope, so that an argument is as well known as a value. */
    @Provide
    Arbitrary<DoubleUnaryOperator> curves() {
        return Arbitraries.of(
                x -> 3 * x,
                x -> 2 * x - x * Math.sqrt(x),
                x -> Math.expm1(4 * x),
                x -> Math.log1p(50 * x),
                x -> x + 0.15 * Math.sin(6 * x),
                x -> x < 0.7 ? x : 0.7 + 1000 * (x - 0.7));
    }

    @Property
    void thereAndBack(
            @ForAll("curves") DoubleUnaryOperator curve, @ForAll @DoubleRange(max = 1) @Scale(12) double argument) {
        double back = MonotoneInverse.of(curve, 0, 1, curve.applyAsDouble(argument));
        assertEquals(argument, back, 1e-13); // slopes are at least 0.1, values at most 300 with some roundings
    }

    @Property
    void largerValuesHaveLargerArguments(
            @ForAll("curves") DoubleUnaryOperator curve,
            @ForAll @DoubleRange(max = 1) @Scale(9) double one,
            @ForAll @DoubleRange(max = 1) @Scale(9) double other) {
        double end = curve.applyAsDouble(1);
        double ofOne = MonotoneInverse.of(curve, 0, 1, one * end);
        double ofOther = MonotoneInverse.of(curve, 0, 1, other * end);
        assertEquals(Double.compare(one, other), Double.compare(ofOne, ofOther));
    }

    @Property
    void theNumberOfCallsIsBounded(
            @ForAll @DoubleRange(min = 0.01, max = 100) @Scale(3) double power,
            @ForAll @DoubleRange(max = 1) @Scale(9) double value) {
        AtomicInteger calls = new AtomicInteger();
        MonotoneInverse.of(
                x -> {
                    calls.incrementAndGet();
                    return Math.pow(x, power);
                },
                0,
                1,
                value);
        assertTrue(calls.get() <= 115, () -> calls + " calls");
    }
}
