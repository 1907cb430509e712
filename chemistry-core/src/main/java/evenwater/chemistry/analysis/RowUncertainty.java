package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The uncertainty of a row, such as {@code 5 %}, {@code 0.2} or {@code ±0.4 (k=2)}, as a standard uncertainty.
 *
 * @param number a number in the unit of the row, or a share of the reading; 0 or more
 * @param isShare which of both
 */
record RowUncertainty(double number, boolean isShare) {

    private static final Pattern FORM = Pattern.compile(
            "(?<sign>±|\\+/-|\\+-)?\\s*(?<number>[^±%()=k]+?)\\s*(?<percent>%)?\\s*(?:,?\\s*\\(?\\s*k\\s*=\\s*(?<k>[0-9]{1,3}(?:\\.[0-9]{1,6})?)\\s*\\)?)?");

    private static final int LONGEST = 60;

    /** Reads the text of a row; empty if there is none. */
    static Optional<RowUncertainty> read(String text, Kind kind, DecimalSign sign, boolean pointsMayGroup) {
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Matcher form = FORM.matcher(text.toLowerCase(Locale.ROOT));
        if (text.length() > LONGEST || !form.matches()) {
            throw problem(
                    text, "expected a standard uncertainty such as 5 % or 0.2, or an expanded one such as 0.4 k=2");
        }
        boolean isExpanded = form.group("k") != null;
        if (form.group("sign") != null && !isExpanded) {
            throw problem(text, "± may be a standard or an expanded uncertainty: leave ± out, or add k=2");
        }
        ReportNumber number = ReportNumber.read(form.group("number"), sign, pointsMayGroup);
        if (number.kind() != ReportNumber.Kind.MEASURED || !(number.value() >= 0)) {
            throw problem(text, "expected a number that is not negative");
        }
        double factor = isExpanded ? Double.parseDouble(form.group("k")) : 1;
        if (!(factor >= 1)) {
            throw problem(text, "k must be 1 or more");
        }
        boolean isShare = form.group("percent") != null;
        if (isShare && (kind == Kind.PH || kind == Kind.TEMPERATURE)) {
            throw problem(text, "a share of a pH or of a temperature has no meaning: state a number");
        }
        if (isShare && number.value() / factor > 100) {
            throw problem(text, "a share of more than 100 % of the reading says nothing");
        }
        return Optional.of(new RowUncertainty(number.value() / factor / (isShare ? 100 : 1), isShare));
    }

    private static UnreadableTextException problem(String text, String problem) {
        return new UnreadableTextException("uncertainty", text, problem, 0);
    }
}
