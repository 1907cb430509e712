package evenwater.chemistry.recipe;

/** What a target asks for. */
public enum Aim {
    /** The value, no more and no less. */
    EXACTLY("exactly"),
    /** The value or less. */
    AT_MOST("at most"),
    /** The value or more. */
    AT_LEAST("at least"),
    /** As near to the value as the other targets allow; the only aim that may be missed. */
    NEAR("near");

    private final String words;

    Aim(String words) {
        this.words = words;
    }

    boolean limitsAbove() {
        return this != AT_LEAST;
    }

    boolean limitsBelow() {
        return this != AT_MOST;
    }

    /** Returns the aim in words, such as "at most". */
    @Override
    public String toString() {
        return words;
    }
}
