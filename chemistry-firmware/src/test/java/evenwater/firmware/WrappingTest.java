package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The functions that stand for Java's operators, at the ends of all ranges and at random, without undefined behaviour. */
class WrappingTest {

    private static final long[] ENDS = {
        0,
        1,
        -1,
        2,
        -2,
        63,
        64,
        65,
        Integer.MAX_VALUE,
        Integer.MIN_VALUE,
        1L << 31,
        1L << 32,
        (1L << 53) + 1,
        Long.MAX_VALUE,
        Long.MIN_VALUE,
        Long.MIN_VALUE + 1,
        Double.doubleToRawLongBits(0.5),
        Double.doubleToRawLongBits(-0.5),
        Double.doubleToRawLongBits(-0.0),
        Double.doubleToRawLongBits(1e19),
        Double.doubleToRawLongBits(-1e19),
        Double.doubleToRawLongBits(0x1p63),
        Double.doubleToRawLongBits(-0x1p63),
        Double.doubleToRawLongBits(4503599627370495.5),
        Double.doubleToRawLongBits(Double.NaN),
        Double.doubleToRawLongBits(Double.NEGATIVE_INFINITY)
    };

    private static final int OPERATIONS = 16;

    @Test
    void theyAreJavasOperators() {
        Compiler.assumeHere("gcc");
        Path driver = Compiler.compile(
                "gcc",
                List.of("-O2", "-fsanitize=undefined", "-fno-sanitize-recover=all"),
                "wrapping",
                Places.MODULE.resolve("src/test/c/wrapping_driver.c"));
        List<long[]> calls = calls();
        ByteBuffer in = ByteBuffer.allocate(calls.size() * 3 * Long.BYTES).order(ByteOrder.nativeOrder());
        for (long[] call : calls) {
            in.putLong(call[0]).putLong(call[1]).putLong(call[2]);
        }
        ByteBuffer out = ByteBuffer.wrap(Compiler.run(in.array(), List.of(driver.toString())))
                .order(ByteOrder.nativeOrder());
        for (long[] call : calls) {
            assertEquals(java(call), out.getLong(), () -> Arrays.toString(call));
        }
    }

    private static List<long[]> calls() {
        List<long[]> calls = new ArrayList<>();
        Random random = new Random(1);
        for (int operation = 0; operation < OPERATIONS; operation++) {
            for (long a : ENDS) {
                for (long b : ENDS) {
                    calls.add(new long[] {operation, a, b});
                }
            }
            for (int i = 0; i < 1000; i++) {
                calls.add(new long[] {operation, random.nextLong(), random.nextLong() >> random.nextInt(64)});
            }
        }
        return calls;
    }

    private static long java(long[] call) {
        long a = call[1];
        long b = call[2];
        double real = Double.longBitsToDouble(a);
        return switch ((int) call[0]) {
            case 0 -> a + b;
            case 1 -> a - b;
            case 2 -> a * b;
            case 3 -> b == 0 ? 0 : a / b; // where Java would throw, C answers 0
            case 4 -> a << b;
            case 5 -> a >> b;
            case 6 -> Math.min(a, b);
            case 7 -> Math.max(a, b);
            case 8 -> Math.abs(a);
            case 9 -> (int) a;
            case 10 -> (int) a + (int) b;
            case 11 -> (int) a - (int) b;
            case 12 -> (long) real;
            case 13 -> (long) Math.ceil(real);
            case 14 -> Double.isNaN(real) ? a : Double.doubleToRawLongBits(Math.abs(real));
            default -> Math.max(0, Math.min(6, a)); // Java would throw, C stays inside
        };
    }
}
