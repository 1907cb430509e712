package evenwater.chemistry.verdict;

/** How far a figure can be relied on. */
public enum Backing {
    /** Published, and read in the source itself or in a public quotation of it. */
    VERIFIED("checked in a quotation"),

    /** Published, and cited from memory: unverified, look it up before you rely on it. */
    FROM_MEMORY("from memory, unverified"),

    /** A rule that aquarists and the trade share, for which nobody can name a source. */
    COMMON_PRACTICE("common practice, no source"),

    /** A rule of this library or of its caller. */
    OWN_RULE("own rule");

    private final String words;

    Backing(String words) {
        this.words = words;
    }

    /** Returns it in words, such as {@code from memory, unverified}. */
    @Override
    public String toString() {
        return words;
    }
}
