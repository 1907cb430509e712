package evenwater.firmware;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Calls of functions of {@code ew_double} and {@code ew_fixed} by the driver beside them, many at once. */
final class NumberCalls {

    /** What the driver shows where a function wrote nothing. */
    static final long UNTOUCHED = -1234567;

    private static final int SLOTS = 7;

    /**
     * What a call gave.
     *
     * @param status of the function
     * @param bits of the answer
     */
    record Answer(int status, long bits) {
        double real() {
            return Double.longBitsToDouble(bits);
        }
    }

    private final List<long[]> calls = new ArrayList<>();

    /** Adds a call; a {@link Double} goes as its bits. */
    void add(int code, Number... arguments) {
        long[] call = new long[SLOTS];
        call[0] = code;
        for (int i = 0; i < arguments.length; i++) {
            call[i + 1] =
                    arguments[i] instanceof Double real ? Double.doubleToRawLongBits(real) : arguments[i].longValue();
        }
        calls.add(call);
    }

    int size() {
        return calls.size();
    }

    static Path driver(String compiler, String flags) {
        return Compiler.compile(
                compiler,
                List.of(flags.split(" ")),
                "numbers-" + compiler + flags.replaceAll("[^A-Za-z0-9]+", "-"),
                Places.MODULE.resolve("src/test/c/number_driver.c"),
                Places.C.resolve("ew_double.c"),
                Places.C.resolve("ew_fixed.c"),
                Places.C.resolve("ew_units.c"));
    }

    List<Answer> run(Path driver) {
        ByteBuffer in = ByteBuffer.allocate(calls.size() * SLOTS * Long.BYTES).order(ByteOrder.nativeOrder());
        calls.forEach(call -> {
            for (long slot : call) {
                in.putLong(slot);
            }
        });
        ByteBuffer out = ByteBuffer.wrap(Compiler.run(in.array(), List.of(driver.toString())))
                .order(ByteOrder.nativeOrder());
        List<Answer> answers = new ArrayList<>();
        for (int i = 0; i < calls.size(); i++) {
            answers.add(new Answer((int) out.getLong(), out.getLong()));
        }
        return answers;
    }
}
