package evenwater.chemistry.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;

import evenwater.chemistry.quantity.NoAnswerException;
import java.util.List;
import javax.measure.Quantity;
import org.junit.jupiter.api.function.Executable;

/** Asserts the exact type, the full message and the numbers of a refusal. */
public final class Refused {

    private Refused() {}

    public static void argument(String message, Executable call) {
        assertEquals(
                message,
                assertThrowsExactly(IllegalArgumentException.class, call).getMessage());
    }

    public static void asNull(String message, Executable call) {
        assertEquals(
                message, assertThrowsExactly(NullPointerException.class, call).getMessage());
    }

    public static void withoutAnswer(String message, List<? extends Quantity<?>> numbers, Executable call) {
        NoAnswerException refusal = assertThrowsExactly(NoAnswerException.class, call);
        assertEquals(message, refusal.getMessage());
        assertEquals(numbers, refusal.numbers());
    }
}
