package evenwater.chemistry.validation;

/** How sure it is that the source says what a check says it says. */
enum Status {
    /** The figure was read in a public copy of its source or in a page that quotes it. */
    VERIFIED("verified"),

    /** The figure is known to those who wrote the check; the source could not be opened to read it again. */
    FROM_MEMORY("from memory"),

    /** A figure that the trade, laboratories or aquarists use and that no single source can be named for. */
    COMMON_PRACTICE("common practice"),

    /** No published figure: arithmetic from the inputs of the source, done without the library. */
    COMPUTED("computed");

    private final String words;

    Status(String words) {
        this.words = words;
    }

    /** Returns the words that the page uses. */
    String words() {
        return words;
    }
}
