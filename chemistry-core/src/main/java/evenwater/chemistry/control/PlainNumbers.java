package evenwater.chemistry.control;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads whole numbers of plain forms, of whatever class a library made them, and names what it refuses. */
final class PlainNumbers {

    /** Who is spoken of in messages. */
    private final String what;

    private final Map<String, @Nullable Number> numbers;

    PlainNumbers(String what, @Nullable Map<String, @Nullable Number> numbers) {
        this.what = what;
        this.numbers = present(what, "numbers", numbers);
    }

    static <T> T present(String what, String name, @Nullable T value) {
        if (value == null) {
            throw new IllegalArgumentException(what + " lack " + name);
        }
        return value;
    }

    static void version(String what, @Nullable Integer version, int newest) {
        int stated = present(what, "version", version);
        if (stated != newest) {
            throw new IllegalArgumentException(what + ": version must be " + newest + ", but was " + stated
                    + (stated > newest ? ", of a newer library" : ""));
        }
    }

    long whole(String name, long least, long most) {
        return whole(what, name, numbers.get(name), least, most);
    }

    /** Exact, unlike {@link Number#longValue}: a fraction that a reader would drop is refused. */
    static long whole(String what, String name, @Nullable Number number, long least, long most) {
        String text = present(what, name, number).toString();
        try {
            long value = new BigDecimal(text).longValueExact();
            if (value >= least && value <= most) {
                return value;
            }
        } catch (ArithmeticException | NumberFormatException e) {
            // refused below, as a number out of range is
        }
        throw new IllegalArgumentException(
                what + ": " + name + " must be a whole number from " + least + " to " + most + ", but was " + text);
    }

    /** A name that nobody asked for is a slip of the pen, or of a newer library. */
    void refuseOthers(Iterable<String> known) {
        for (String name : numbers.keySet()) {
            boolean found = false;
            for (String one : known) {
                found |= one.equals(name);
            }
            if (!found) {
                throw new IllegalArgumentException(
                        what + " have an unknown number " + name + ", but can have " + known);
            }
        }
    }
}
