package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.function.Executable;

/** Asserts the exact type and the full message of a refusal. */
final class Refusals {

    private Refusals() {}

    static void assertRefused(String message, Executable call) {
        assertRefused(IllegalArgumentException.class, message, call);
    }

    static void assertRefused(Class<? extends Throwable> type, String message, Executable call) {
        Throwable refusal = assertThrows(type, call);
        assertEquals(type, refusal.getClass());
        assertEquals(message, refusal.getMessage());
    }

    /** Null is refused by the name of what must not be null. */
    static void assertNullRefused(String name, Executable call) {
        assertRefused(NullPointerException.class, name, call);
    }
}
