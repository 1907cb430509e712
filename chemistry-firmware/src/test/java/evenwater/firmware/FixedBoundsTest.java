package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The worst errors that the comments of {@code ew_fixed.h} print, proved by exact fractions; and, if asked for by
 * {@code -Dfirmware.exhaustive=true}, by all 2³² values of each conversion.
 */
class FixedBoundsTest {

    private static final BigInteger LARGEST = BigInteger.valueOf(Long.MAX_VALUE);
    private static final Ratio EVERY_VALUE = Ratio.of(1L << 31, 1);

    /**
     * An exact quotient is rounded once, hence half a place off at most, if it was not changed on its way: numerator and half the denominator must
     * fit into 64 bits. Both are linear in each argument alone, and hence extreme where all arguments are at their ends. The factors
     * of natural waters go straight between tenths of a degree: there the ends are the tenths.
     */
    @ParameterizedTest
    @EnumSource(FixedFormula.class)
    void numeratorsAndDenominatorsFitOverTheWholeRange(FixedFormula formula) {
        for (BigInteger[] corner : corners(formula)) {
            BigInteger numerator = formula.numerator(corner);
            BigInteger denominator = formula.denominator(corner);
            assertTrue(
                    numerator.abs().add(denominator.abs().shiftRight(1)).compareTo(LARGEST) <= 0,
                    () -> formula + " at " + List.of(corner) + ": " + numerator + " / " + denominator);
            assertTrue(denominator.bitLength() <= 62, () -> formula + " at " + List.of(corner) + ": " + denominator);
        }
    }

    private static List<BigInteger[]> corners(FixedFormula formula) {
        List<BigInteger[]> corners = new ArrayList<>();
        corners.add(new BigInteger[0]);
        for (int i = 0; i < formula.arguments.size(); i++) {
            List<BigInteger[]> longer = new ArrayList<>();
            for (BigInteger[] corner : corners) {
                for (int end : ends(formula, i)) {
                    BigInteger[] next = Arrays.copyOf(corner, i + 1);
                    next[i] = BigInteger.valueOf(end);
                    longer.add(next);
                }
            }
            corners = longer;
        }
        return corners;
    }

    private static List<Integer> ends(FixedFormula formula, int argument) {
        FixedFormula.Range range = formula.arguments.get(argument);
        List<Integer> ends = new ArrayList<>(List.of(range.least(), range.most()));
        if (formula == FixedFormula.NATURAL && argument == 1) {
            for (int tenth = 0; tenth <= range.most(); tenth += 100) {
                ends.add(tenth);
            }
        }
        if (formula == FixedFormula.TEMPERATURE && argument < 2) {
            ends.add(1);
        }
        return ends;
    }

    /** The fraction that C multiplies with is off by so little that its effect on the largest value is the printed bound less one half. */
    @Test
    void noValueOfAConversionIsFurtherOffThanItsKindPrints() {
        for (Scales scales : Scales.all()) {
            for (int from = 0; from < scales.units().size(); from++) {
                for (int to = 0; to < scales.units().size(); to++) {
                    assertBound(scales.exact(from, to), scales.used(from, to), scales.worstError(), scales.name());
                }
            }
        }
        for (int unit = 0; unit < Scales.hardness().units().size(); unit++) {
            assertBound(Sodium.exact(unit), Sodium.used(unit), Sodium.worstError(), "sodium");
        }
    }

    private static void assertBound(Ratio exact, Ratio used, Ratio printed, String what) {
        assertTrue(used.num().compareTo(Scales.LARGEST) <= 0 && used.den().compareTo(Scales.LARGEST) <= 0, what);
        Ratio limit = Ratio.of((1L << 31) + 1, 1).times(exact.inverse());
        Ratio largest = limit.compareTo(EVERY_VALUE) < 0 ? limit : EVERY_VALUE;
        Ratio slip = used.minus(exact).abs().times(largest);
        assertTrue(slip.plus(Ratio.HALF).compareTo(printed) <= 0, what);
        assertTrue(slip.compareTo(Ratio.of(1, 10_000)) < 0, () -> what + " slips by " + slip.toDouble());
    }

    @Test
    void theHeaderPrintsTheProvedBounds() throws IOException {
        String header = Files.readString(Places.C.resolve("ew_fixed.h"), StandardCharsets.UTF_8);
        for (Scales scales : Scales.all()) {
            assertPrinted(header, "ew_fixed_" + scales.name() + "(", scales.worstError());
        }
        assertPrinted(header, "ew_fixed_sodium_added(", Sodium.worstError());
        for (FixedFormula formula : FixedFormula.values()) {
            assertPrinted(header, formula.function + "(", Ratio.HALF);
        }
    }

    private static void assertPrinted(String header, String function, Ratio bound) {
        String before = header.substring(0, header.indexOf("int32_t " + function));
        String comment = before.substring(before.lastIndexOf("/*"));
        String printed =
                comment.substring(comment.indexOf("Worst error: ") + 13).split("\\s", 2)[0];
        BigDecimal decimal = new BigDecimal(printed);
        Ratio asRatio = new Ratio(decimal.movePointRight(12).toBigIntegerExact(), BigInteger.TEN.pow(12));
        assertTrue(bound.compareTo(asRatio) <= 0, function);
        assertTrue(asRatio.minus(bound).compareTo(Ratio.of(1, 1_000_000_000_000L)) < 0, function);
    }

    /** Half an hour of one processor. */
    @Test
    void allValuesOfEachConversionAreWithinThePrintedBound() {
        assumeTrue(
                Boolean.getBoolean("firmware.exhaustive"),
                "all 2^32 values take half an hour: ask for them with -Dfirmware.exhaustive=true");
        Compiler.assumeHere("gcc");
        Set<Ratio> seen = new HashSet<>();
        for (int kind = 0; kind < Scales.all().size(); kind++) {
            Scales scales = Scales.all().get(kind);
            for (int from = 0; from < scales.units().size(); from++) {
                for (int to = 0; to < scales.units().size(); to++) {
                    if (seen.add(scales.exact(from, to))) { // the same factor is the same division
                        tryAll(kind, from, to, scales.exact(from, to), scales.used(from, to));
                    }
                }
            }
        }
        for (int unit = 0; unit < Scales.hardness().units().size(); unit++) {
            tryAll(4, unit, 0, Sodium.exact(unit), Sodium.used(unit));
        }
    }

    private static void tryAll(int kind, int from, int to, Ratio exact, Ratio used) {
        Path program = Compiler.compile(
                "gcc",
                List.of("-O3", "-DKIND=" + kind, "-DFROM=" + from, "-DTO=" + to),
                "exhaustive",
                Places.MODULE.resolve("src/test/c/exhaustive.c"),
                Places.C.resolve("ew_units.c"));
        byte[] output = Compiler.run(
                new byte[0],
                List.of(program.toString(), exact.num().toString(), exact.den().toString()));
        String[] found = Compiler.text(output).strip().split(" ");
        assertEquals(3, found.length);
        Ratio worst = new Ratio(new BigInteger(found[0]), new BigInteger(found[1]));
        Ratio bound = Scales.worstError(exact, used);
        System.out.println(kind + " " + from + " " + to + ": worst " + worst.toDouble() + ", bound " + bound.toDouble()
                + ", saturated " + found[2]);
        assertTrue(worst.compareTo(bound) <= 0, () -> kind + " " + from + " " + to + ": " + worst.toDouble());
    }
}
