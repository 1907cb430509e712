package evenwater.chemistry.analysis;

/** Thrown when a report cannot be used; names the line, what was read and what is allowed. */
public final class UnusableReportException extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 400;

    /** Line of the report; 0 if no single line is to blame. */
    private final int line;

    /**
     * Creates the exception.
     *
     * @param line line of the report, from 1; 0 if no single line is to blame
     * @param problem what was read and what is allowed, without a final dot
     */
    public UnusableReportException(int line, String problem) {
        super(shortened(problem, LONGEST));
        this.line = line;
    }

    /**
     * Returns where the report cannot be used.
     *
     * @return line from 1; 0 if no single line is to blame
     */
    public int line() {
        return line;
    }

    /** Keeps a text one short line whatever came in. */
    static String shortened(String text, int longest) {
        String oneLine = text.replaceAll("[\\p{Cntrl}\\x{80}-\\x{9f}\\x{2028}\\x{2029}]+", " ");
        if (oneLine.length() <= longest) {
            return oneLine;
        }
        boolean inCharacter = Character.isHighSurrogate(oneLine.charAt(longest - 1));
        return oneLine.substring(0, inCharacter ? longest - 1 : longest) + "…";
    }
}
