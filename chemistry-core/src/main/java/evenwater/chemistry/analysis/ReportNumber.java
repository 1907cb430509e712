package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A reading as a laboratory writes it: a number, a number below a limit, a range of numbers, or no number.
 *
 * @param kind what it is
 * @param low the number, 0 below a limit, or the start of the range; NaN if there is none
 * @param value the number, the limit, or the end of the range; NaN if there is none
 */
record ReportNumber(Kind kind, double low, double value) {

    /** What a reading says. */
    enum Kind {
        MEASURED,
        BELOW_LIMIT,
        RANGE,
        NOT_DETECTED,
        NOT_MEASURED
    }

    ReportNumber(Kind kind, double value) {
        this(kind, kind == Kind.BELOW_LIMIT ? 0 : value, value);
    }

    private static final Set<String> ABSENT = Set.of(
            "",
            "n/a",
            "na",
            "-",
            "--",
            "---",
            "–",
            "—",
            "not analysed",
            "not analyzed",
            "not tested",
            "not measured",
            "not determined",
            "nm",
            "nt",
            "pending",
            "n.b.",
            "?",
            ".",
            "..",
            "...");
    private static final Set<String> UNDETECTED = Set.of(
            "nd",
            "n.d.",
            "n.d",
            "not detected",
            "bdl",
            "bql",
            "<lod",
            "<loq",
            "<mdl",
            "<rl",
            "<dl",
            "< lod",
            "< loq",
            "< mdl",
            "< rl",
            "< dl",
            "none detected",
            "u",
            "n.n.",
            "nn",
            "below detection",
            "below detection limit",
            "trace",
            "traces");

    private static final String GROUPING = "[ \\u00a0\\u2009\\u202f'’]";
    private static final Pattern PLAIN = Pattern.compile("[-+]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][-+]?[0-9]{1,3})?");
    private static final Pattern SPACED =
            Pattern.compile("[-+]?[1-9][0-9]{0,2}(" + GROUPING + ")[0-9]{3}(?:\\1[0-9]{3})*(?:[.,][0-9]+)?");
    private static final Pattern COMMA_THOUSANDS = Pattern.compile("[-+]?[1-9][0-9]{0,2}(?:,[0-9]{3})+");
    private static final Pattern POINT_THOUSANDS = Pattern.compile("[-+]?[1-9][0-9]{0,2}(?:\\.[0-9]{3})+");
    private static final Pattern COMMA_THOUSANDS_POINT = Pattern.compile("[-+]?[1-9][0-9]{0,2}(?:,[0-9]{3})+\\.[0-9]+");
    private static final Pattern POINT_THOUSANDS_COMMA = Pattern.compile("[-+]?[1-9][0-9]{0,2}(?:\\.[0-9]{3})+,[0-9]+");
    private static final Pattern COMMA_DECIMAL = Pattern.compile("[-+]?[0-9]*,[0-9]+");
    /** "12-18", "12 – 18", "12 to 18", each number as it may stand alone; the first has no sign, and no exponent before the dash. */
    private static final Pattern RANGE_OF_NUMBERS =
            Pattern.compile("(?<low>[0-9.,]+)\\s*(?:-|–|—|\\bto\\b|\\bbis\\b)\\s*(?<high>[0-9.,]+)");

    private static final int LONGEST = 60;

    /** Reads a value; {@code pointsMayGroup} says that other values of the report have decimal commas. */
    static ReportNumber read(String text, DecimalSign sign, boolean pointsMayGroup) {
        String lower = text.strip().toLowerCase(Locale.ROOT);
        if (ABSENT.contains(lower)) {
            return new ReportNumber(Kind.NOT_MEASURED, Double.NaN);
        }
        if (UNDETECTED.contains(lower)) {
            return new ReportNumber(Kind.NOT_DETECTED, Double.NaN);
        }
        boolean undetected = lower.startsWith("nd"); // "ND (0.5)", "ND<0.5": the number is the limit
        String rest = undetected ? lower.substring(2).replaceAll("[()]", "").strip() : lower;
        if (undetected || rest.startsWith("<") || rest.startsWith("≤")) {
            String limit = rest.replaceFirst("^(?:<=|<|≤)", "").strip();
            double value = number(text, limit, sign, pointsMayGroup);
            if (!(value > 0)) {
                throw problem(text, "a detection limit must be above 0");
            }
            return new ReportNumber(Kind.BELOW_LIMIT, value);
        }
        if (rest.startsWith(">") || rest.startsWith("≥")) {
            throw problem(
                    text,
                    "a reading above the range of the test has no upper end: dilute and repeat, or leave the row out");
        }
        Matcher range = RANGE_OF_NUMBERS.matcher(rest);
        if (rest.length() <= LONGEST && range.matches()) {
            double low = number(text, range.group("low"), sign, pointsMayGroup);
            double high = number(text, range.group("high"), sign, pointsMayGroup);
            if (low > high) {
                throw problem(text, "a range must rise");
            }
            return new ReportNumber(Kind.RANGE, low, high);
        }
        return new ReportNumber(Kind.MEASURED, number(text, rest, sign, pointsMayGroup));
    }

    /** Tells whether a value can only be read with a comma as the decimal sign. */
    static boolean needsDecimalComma(String text) {
        if (text.length() > LONGEST) {
            return false;
        }
        String number = text.toLowerCase(Locale.ROOT)
                .replaceFirst("^(?:nd)?[\\s(<≤=]*", "")
                .replaceAll(GROUPING + "|[)]", "");
        boolean decimals = COMMA_DECIMAL.matcher(number).matches();
        return POINT_THOUSANDS_COMMA.matcher(number).matches()
                || (decimals && !COMMA_THOUSANDS.matcher(number).matches());
    }

    private static double number(String text, String number, DecimalSign sign, boolean pointsMayGroup) {
        if (number.length() > LONGEST) {
            throw unreadable(text);
        }
        double value = Double.parseDouble(plain(text, number, sign, pointsMayGroup)) + 0.0; // not -0.0
        if (!Double.isFinite(value)) {
            throw problem(text, "the number is too large");
        }
        return value;
    }

    private static String plain(String text, String number, DecimalSign sign, boolean pointsMayGroup) {
        if (SPACED.matcher(number).matches()) {
            return plain(text, number.replaceAll(GROUPING, ""), sign, false);
        }
        if (POINT_THOUSANDS.matcher(number).matches()) {
            boolean one = number.indexOf('.') == number.lastIndexOf('.');
            if (sign == DecimalSign.COMMA || (sign == DecimalSign.UNSTATED && !one)) {
                return number.replace(".", "");
            }
            if (sign == DecimalSign.UNSTATED && pointsMayGroup) {
                throw twoReadings(text, number.replace(".", ""), number, "the report has decimal commas elsewhere");
            }
        }
        if (PLAIN.matcher(number).matches()) {
            if (sign == DecimalSign.COMMA && number.indexOf('.') >= 0) {
                throw problem(text, "the point groups no thousands; if it marks decimals, use a comma or say so");
            }
            return number;
        }
        if (COMMA_THOUSANDS_POINT.matcher(number).matches() && sign != DecimalSign.COMMA) {
            return number.replace(",", "");
        }
        if (POINT_THOUSANDS_COMMA.matcher(number).matches() && sign != DecimalSign.POINT) {
            return number.replace(".", "").replace(',', '.');
        }
        if (COMMA_THOUSANDS.matcher(number).matches()) {
            boolean one = number.indexOf(',') == number.lastIndexOf(',');
            if (sign == DecimalSign.POINT || (sign == DecimalSign.UNSTATED && !one)) {
                return number.replace(",", "");
            }
            if (sign == DecimalSign.UNSTATED) {
                throw twoReadings(text, number.replace(",", ""), number.replace(',', '.'), "say what a comma means");
            }
        }
        if (COMMA_DECIMAL.matcher(number).matches()) {
            if (sign == DecimalSign.POINT) {
                throw problem(text, "the comma groups no thousands; if it marks decimals, use a point or say so");
            }
            return number.replace(',', '.');
        }
        if (number.endsWith("*")) {
            throw problem(text, "the star stands for a footnote: take it off if the footnote allows");
        }
        throw unreadable(text);
    }

    private static UnreadableTextException unreadable(String text) {
        return problem(text, "expected a number such as 4.1, <2, 3-5 or ND");
    }

    private static UnreadableTextException twoReadings(String text, String one, String other, String why) {
        return problem(text, "it may be " + one + " or " + other + ": " + why);
    }

    private static UnreadableTextException problem(String text, String problem) {
        return new UnreadableTextException("value", text, problem, 0);
    }
}
