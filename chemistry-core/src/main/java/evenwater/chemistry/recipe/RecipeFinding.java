package evenwater.chemistry.recipe;

import java.util.Objects;

/**
 * Something to mind about a recipe.
 *
 * @param kind what it is about
 * @param words a sentence without a final dot
 */
public record RecipeFinding(Kind kind, String words) {

    /**
     * Checks that nothing is null.
     *
     * @param kind see the record
     * @param words see the record
     */
    public RecipeFinding {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(words, "words");
    }

    /** Returns the words. */
    @Override
    public String toString() {
        return words;
    }

    /** What a finding is about. */
    public enum Kind {
        /** A dose is more than the water takes up. */
        DOES_NOT_DISSOLVE,
        /** A stock is so near saturation that its density decides whether it can be made. */
        STOCK_MAY_NOT_DISSOLVE,
        /** A dose dissolves, but slowly, since little of the compound dissolves at all. */
        DISSOLVES_SLOWLY,
        /** The water is oversaturated with a mineral. */
        MAY_PRECIPITATE,
        /** Two doses drop something where they meet concentrated. */
        NOT_IN_ONE_BOTTLE,
        /** What to mind when handling a compound. */
        CAUTION,
        /** The pH and the saturation of the water are not known. */
        PH_UNKNOWN
    }
}
