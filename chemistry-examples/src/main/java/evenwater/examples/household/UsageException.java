package evenwater.examples.household;

/** An input that cannot be used, told in one line. */
final class UsageException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    private static final int LONGEST = 600;

    UsageException(String message) {
        super(oneLine(message));
    }

    /** Whatever came in, the message stays one line of bearable length. */
    private static String oneLine(String message) {
        String line = message.replaceAll("[\\p{Cntrl}\\u2028\\u2029]+", " ");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "…";
    }
}
