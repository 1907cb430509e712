package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fixed-point functions of C beside exact fractions, at random arguments and at the ends of every range. */
class FixedFunctionsTest {

    private static final int CASES = 10_000;
    private static final int OK = 0;
    private static final int SATURATED = 1;
    private static final int OUT_OF_RANGE = -2;
    private static final int NO_ANSWER = -3;
    private static final BigInteger MOST = BigInteger.valueOf(Integer.MAX_VALUE);
    private static final BigInteger LEAST = BigInteger.valueOf(Integer.MIN_VALUE);

    /** In the order of the driver's codes from 105 on. */
    private static final List<FixedFormula> FORMULAS = List.of(
            FixedFormula.BYPASS,
            FixedFormula.BLEND,
            FixedFormula.LINEAR,
            FixedFormula.NATURAL,
            FixedFormula.COMPENSATED,
            FixedFormula.MEMBRANE,
            FixedFormula.TEMPERATURE);

    private static final int FIRST_FORMULA = 105;
    private static final int SODIUM = 104;

    private static final NumberCalls CALLS = new NumberCalls();
    private static final List<Ratio> EXACT = new ArrayList<>();
    private static final List<Ratio> BOUNDS = new ArrayList<>();
    private static final Random RANDOM = new Random(5);

    private final NumberCalls calls = new NumberCalls();

    @BeforeAll
    static void workOutExactAnswers() {
        conversions();
        formulas();
    }

    private static void add(Ratio answer, Ratio bound, int code, Number... arguments) {
        CALLS.add(code, arguments);
        EXACT.add(answer);
        BOUNDS.add(bound);
    }

    /** Half of the numbers small, since large ones saturate. */
    private static int number(FixedFormula.Range range) {
        int choice = RANDOM.nextInt(20);
        if (choice == 0) {
            return range.least();
        }
        if (choice == 1) {
            return range.most();
        }
        long span = (long) range.most() - range.least() + 1;
        long above = choice < 10 ? RANDOM.nextLong(span) : (long) Math.pow(span, RANDOM.nextDouble());
        return (int) Math.min(range.most(), Math.max(range.least(), range.least() + above));
    }

    private static void conversions() {
        for (int kind = 0; kind < Scales.all().size(); kind++) {
            Scales scales = Scales.all().get(kind);
            Ratio bound = scales.worstError();
            for (int i = 0; i < CASES; i++) {
                int from = RANDOM.nextInt(scales.units().size());
                int to = RANDOM.nextInt(scales.units().size());
                int value = number(FixedFormula.Range.ANY) * (RANDOM.nextBoolean() ? 1 : -1);
                value = RANDOM.nextInt(50) == 0 ? Integer.MIN_VALUE : value;
                add(scales.exact(from, to).times(Ratio.of(value, 1)), bound, 100 + kind, from, to, value);
            }
        }
        Ratio ofSodium = Sodium.worstError();
        for (int i = 0; i < CASES; i++) {
            int unit = RANDOM.nextInt(Hardness.units().size());
            int removed = number(FixedFormula.Range.ANY);
            add(Sodium.exact(unit).times(Ratio.of(removed, 1)), ofSodium, SODIUM, unit, removed);
        }
    }

    private static void formulas() {
        for (FixedFormula formula : FORMULAS) {
            for (int i = 0; i < CASES; i++) {
                Integer[] arguments = formula.arguments.stream()
                        .map(FixedFunctionsTest::number)
                        .toArray(Integer[]::new);
                if (formula == FixedFormula.BYPASS) {
                    Arrays.sort(arguments, (a, b) -> b - a);
                    arguments = new Integer[] {arguments[0], arguments[2], arguments[1]};
                }
                BigInteger[] x =
                        Arrays.stream(arguments).map(BigInteger::valueOf).toArray(BigInteger[]::new);
                if (formula.denominator(x).signum() > 0) {
                    add(
                            new Ratio(formula.numerator(x), formula.denominator(x)),
                            Ratio.HALF,
                            FIRST_FORMULA + FORMULAS.indexOf(formula),
                            (Number[]) arguments);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"-O2", "-O3", "-O0 -fsanitize=undefined -fno-sanitize-recover=all"})
    void tenThousandCasesOfEachFunctionAreWithinThePrintedBound(String flags) {
        Compiler.assumeHere("gcc");
        assertTrue(CALLS.size() > 11 * CASES);
        List<NumberCalls.Answer> answers = CALLS.run(NumberCalls.driver("gcc", flags));
        int saturated = 0;
        for (int i = 0; i < answers.size(); i++) {
            saturated += answers.get(i).status() == SATURATED ? 1 : 0;
            assertWithin(i, answers.get(i));
        }
        assertTrue(saturated > CASES / 10, "too few saturated answers to tell: " + saturated);
    }

    private static void assertWithin(int call, NumberCalls.Answer answer) {
        BigInteger result = BigInteger.valueOf(answer.bits());
        Ratio error = new Ratio(result, BigInteger.ONE).minus(EXACT.get(call)).abs();
        Ratio leastBeyond = Ratio.of(1, 1).minus(BOUNDS.get(call)); // nearer, the limit is no saturation
        if (answer.status() == SATURATED) {
            Ratio beyond = EXACT.get(call).minus(new Ratio(result, BigInteger.ONE));
            boolean isAbove = result.equals(MOST) && beyond.compareTo(leastBeyond) >= 0;
            boolean isBelow =
                    result.equals(LEAST) && leastBeyond.plus(beyond).num().signum() <= 0;
            assertTrue(
                    isAbove || isBelow, () -> "call " + call + " saturates at " + result + " for " + EXACT.get(call));
            return;
        }
        assertEquals(OK, answer.status(), () -> "call " + call);
        assertTrue(
                error.compareTo(BOUNDS.get(call)) <= 0,
                () -> "call " + call + " is off by " + error.toDouble() + " of "
                        + EXACT.get(call).toDouble());
    }

    /** Where the quotient itself is exact, so is the way of halves. */
    @Test
    void halvesAreRoundedAwayFromZero() {
        Compiler.assumeHere("gcc");
        int[] halves = {1, 3, -1, -3, 5, Integer.MAX_VALUE, Integer.MIN_VALUE};
        for (int value : halves) {
            calls.add(100, 2, 0, value); // 1 meq/L is half a mmol/L
        }
        List<NumberCalls.Answer> answers = calls.run(NumberCalls.driver("gcc", "-O2"));
        for (int i = 0; i < halves.length; i++) {
            BigDecimal expected = new BigDecimal(halves[i]).divide(BigDecimal.valueOf(2), 0, RoundingMode.HALF_UP);
            assertEquals(expected.longValueExact(), answers.get(i).bits());
        }
    }

    @Test
    void answersBeyondTheRangeAreItsLimits() {
        Compiler.assumeHere("gcc");
        calls.add(100, 0, 2, Integer.MAX_VALUE);
        calls.add(100, 0, 2, Integer.MIN_VALUE);
        calls.add(100, 0, 2, Integer.MIN_VALUE / 2);
        calls.add(107, Integer.MAX_VALUE, 0, 20_000);
        List<NumberCalls.Answer> answers = calls.run(NumberCalls.driver("gcc", "-O2"));
        assertEquals(
                List.of(
                        new NumberCalls.Answer(SATURATED, Integer.MAX_VALUE),
                        new NumberCalls.Answer(SATURATED, Integer.MIN_VALUE),
                        new NumberCalls.Answer(OK, Integer.MIN_VALUE),
                        new NumberCalls.Answer(SATURATED, Integer.MAX_VALUE)),
                answers);
    }

    @Test
    void whatIsOutOfRangeIsRefusedAndNothingIsWritten() {
        Compiler.assumeHere("gcc");
        List<Integer> statuses = new ArrayList<>();
        for (FixedFormula formula : FORMULAS) {
            for (int wrong = 0; wrong < formula.arguments.size(); wrong++) {
                for (boolean high : new boolean[] {false, true}) {
                    refuseOne(formula, wrong, high, statuses);
                }
            }
        }
        for (int kind = 100; kind < 104; kind++) {
            calls.add(kind, 9, 0, 1);
            calls.add(kind, 0, -1, 1);
            statuses.add(OUT_OF_RANGE);
            statuses.add(OUT_OF_RANGE);
        }
        calls.add(SODIUM, 0, -1);
        statuses.add(OUT_OF_RANGE);
        calls.add(FIRST_FORMULA, 3000, 1000, 3001);
        statuses.add(NO_ANSWER);
        calls.add(FIRST_FORMULA, 3000, 3000, 3000);
        statuses.add(NO_ANSWER);
        calls.add(107, 1000, 0, 50_000);
        statuses.add(NO_ANSWER);
        List<NumberCalls.Answer> answers = calls.run(NumberCalls.driver("gcc", "-O2"));
        for (int i = 0; i < answers.size(); i++) {
            assertEquals(new NumberCalls.Answer(statuses.get(i), NumberCalls.UNTOUCHED), answers.get(i));
        }
    }

    private void refuseOne(FixedFormula formula, int wrong, boolean high, List<Integer> statuses) {
        FixedFormula.Range range = formula.arguments.get(wrong);
        if (high ? range.most() == Integer.MAX_VALUE : range.least() == Integer.MIN_VALUE) {
            return;
        }
        Number[] arguments = new Number[formula.arguments.size()];
        for (int i = 0; i < arguments.length; i++) {
            arguments[i] = i == wrong ? (high ? range.most() + 1 : range.least() - 1) : (Number) 1;
        }
        calls.add(FIRST_FORMULA + FORMULAS.indexOf(formula), arguments);
        statuses.add(OUT_OF_RANGE);
    }
}
