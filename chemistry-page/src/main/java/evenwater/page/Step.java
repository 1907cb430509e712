package evenwater.page;

import java.util.Objects;

/**
 * A step on the way to an answer.
 *
 * @param title what is done
 * @param expression how, with numbers and units, such as {@code 4 meq/L × 2.804 °dKH/(meq/L) = 11.2 °dKH}
 * @param note why, or where it stops being true; may be empty
 * @param mistake the usual wrong answer and why it is wrong; may be empty
 */
public record Step(String title, String expression, String note, String mistake) {

    /**
     * Checks that nothing is null.
     *
     * @param title see the record
     * @param expression see the record
     * @param note see the record
     * @param mistake see the record
     */
    public Step {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(expression, "expression");
        Objects.requireNonNull(note, "note");
        Objects.requireNonNull(mistake, "mistake");
    }
}
