package evenwater.chemistry.recipe;

import java.util.List;
import java.util.Objects;

/**
 * Targets that no doses of the shelf and no shares of the waters meet together, while all but any one of them could be met.
 *
 * @param targets in words, such as {@code hardness exactly 6 °dH}, in alphabetical order; one or more
 * @param words the targets and why they fight, a sentence without a final dot
 */
public record Conflict(List<String> targets, String words) {

    /**
     * Checks the parts.
     *
     * @param targets see the record
     * @param words see the record
     */
    public Conflict {
        targets = List.copyOf(targets);
        Objects.requireNonNull(words, "words");
    }

    /** Returns the words. */
    @Override
    public String toString() {
        return words;
    }
}
