package evenwater.chemistry.quantity;

/**
 * Thrown when a text is not what its reader expects; names the text, the place and what is allowed.
 *
 * <p>Every {@code parse} of this library answers a value or throws this, nothing else.
 */
public final class UnreadableTextException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST_SHOWN = 60;

    /** Position of the offending character in the text. */
    private final int index;

    /** The text as shown. */
    private final String text;

    /** What is wrong and what is allowed. */
    private final String problem;

    /**
     * Creates the exception with a message of the form {@code cannot read hardness '7,3 dH': use a point, at index 1}.
     *
     * @param thing what was to be read, such as "hardness"
     * @param text the text; shown shortened if it is long
     * @param problem what is wrong and what is allowed, without a final dot
     * @param index position of the offending character, from 0
     */
    public UnreadableTextException(String thing, String text, String problem, int index) {
        super("cannot read " + thing + " '" + shown(text) + "': " + problem + ", at index " + index);
        this.index = index;
        this.text = shown(text);
        this.problem = problem;
    }

    /**
     * Returns the text that cannot be read.
     *
     * @return one line, shortened if it is long
     */
    public String text() {
        return text;
    }

    /**
     * Returns what is wrong and what is allowed, without the text, for callers who show the text themselves.
     *
     * @return a few words without a final dot
     */
    public String problem() {
        return problem;
    }

    /**
     * Returns the position of the offending character.
     *
     * @return the index in the text, from 0; the length of the text if something is missing at its end
     */
    public int index() {
        return index;
    }

    /** Keeps the message one short line whatever came in. */
    static String shown(String text) {
        int end = Math.min(text.length(), LONGEST_SHOWN);
        if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
            end--; // do not cut a character in two
        }
        String head = end == text.length() ? text : text.substring(0, end) + "…";
        StringBuilder line = new StringBuilder(head.length());
        head.codePoints().forEach(c -> line.appendCodePoint(Character.isISOControl(c) ? ' ' : c));
        return line.toString();
    }
}
