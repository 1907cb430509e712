package evenwater.page;

import java.util.Objects;

/**
 * What is wrong with what somebody entered.
 *
 * @param control name of the control within its part
 * @param message what is wrong and what is allowed, for people, without a final dot
 */
public record Problem(String control, String message) {

    /**
     * Checks that nothing is null.
     *
     * @param control see the record
     * @param message see the record
     */
    public Problem {
        Objects.requireNonNull(control, "control");
        Objects.requireNonNull(message, "message");
    }
}
