package evenwater.chemistry.verdict;

/** Where a parameter stands against a requirement. */
public enum Standing {
    /** All that it may be is allowed. */
    INSIDE("inside"),

    /** All that it may be is too little. */
    BELOW("below"),

    /** All that it may be is too much. */
    ABOVE("above"),

    /** Some of what it may be is allowed and some is not: the measurement cannot tell. */
    UNDECIDED("undecided"),

    /** Nobody measured it, and it follows from nothing that was measured. */
    NOT_MEASURED("not measured");

    private final String words;

    Standing(String words) {
        this.words = words;
    }

    /**
     * Tells whether it is outside in any case.
     *
     * @return true for {@link #BELOW} and {@link #ABOVE}
     */
    public boolean isOutside() {
        return this == BELOW || this == ABOVE;
    }

    /** Returns it in a word or two, such as {@code not measured}. */
    @Override
    public String toString() {
        return words;
    }
}
