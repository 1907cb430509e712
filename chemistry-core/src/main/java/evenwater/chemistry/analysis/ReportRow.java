package evenwater.chemistry.analysis;

import java.util.Objects;

/**
 * One row of a report as text, exactly as it was written.
 *
 * @param line where it stands, for messages; from 1
 * @param analyte name of what was measured, such as "nitrate"
 * @param value the reading, such as {@code 4.1}, {@code <2}, {@code ND} or {@code 1,250}
 * @param unit the unit; possibly empty
 * @param as what a mass is expressed as, such as "N"; possibly empty
 * @param uncertainty standard uncertainty: a share of the reading such as {@code 5 %}, or a number in the unit of the row such as
 *     {@code 0.2}; or the expanded uncertainty with its coverage factor, such as {@code 0.4 k=2} or {@code ±10 % (k=2)}; possibly empty. A
 *     ± without k is refused, since it may be either
 */
public record ReportRow(int line, String analyte, String value, String unit, String as, String uncertainty) {

    /**
     * Checks that nothing is null and strips blanks.
     *
     * @param line see the record; 1 or more
     * @param analyte see the record
     * @param value see the record
     * @param unit see the record
     * @param as see the record
     * @param uncertainty see the record
     */
    public ReportRow {
        if (line < 1) {
            throw new IllegalArgumentException("line of a row must be 1 or more, but was " + line);
        }
        analyte = stripped(Objects.requireNonNull(analyte, "analyte"));
        value = stripped(Objects.requireNonNull(value, "value"));
        unit = stripped(Objects.requireNonNull(unit, "unit"));
        as = stripped(Objects.requireNonNull(as, "as"));
        uncertainty = stripped(Objects.requireNonNull(uncertainty, "uncertainty"));
    }

    /**
     * Creates a row that states no uncertainty.
     *
     * @param line see the record; 1 or more
     * @param analyte see the record
     * @param value see the record
     * @param unit see the record
     * @param as see the record
     */
    public ReportRow(int line, String analyte, String value, String unit, String as) {
        this(line, analyte, value, unit, as, "");
    }

    /** Without blanks around, also those that do not break a line and the mark that begins some files. */
    private static String stripped(String text) {
        int start = 0;
        int end = text.length();
        while (start < end && isBlank(text.charAt(start))) {
            start++;
        }
        while (end > start && isBlank(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(start, end);
    }

    private static boolean isBlank(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\ufeff';
    }

    /** The row for messages, such as {@code nitrate '4.1 mg/L as N'}. */
    String inOnePhrase() {
        String reading =
                shown(value) + (unit.isEmpty() ? "" : " " + shown(unit)) + (as.isEmpty() ? "" : " as " + shown(as));
        return shown(analyte) + " '" + reading + "'";
    }

    private static String shown(String text) {
        return UnusableReportException.shortened(text, 60);
    }
}
