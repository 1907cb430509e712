package evenwater.chemistry.verdict;

/** The verdict as a whole. */
public enum Outcome {
    /** Everything that must be known is known, and all that counts is inside. */
    FIT("fit"),

    /** Something that counts is outside in any case. */
    UNFIT("not fit"),

    /** Nothing is outside in any case, but something is not known or not known well enough. */
    UNDECIDED("undecided");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /** Returns it in a word or two, such as {@code not fit}. */
    @Override
    public String toString() {
        return words;
    }
}
