package evenwater.examples.household;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Text for a person: headings, paragraphs, lists and tables of fixed width. */
final class Page {

    private static final int WIDTH = 100;
    private static final int LONGEST_FOREIGN = 80;

    private final StringBuilder text = new StringBuilder();

    Page title(String title) {
        text.append(title).append('\n').append("=".repeat(title.length())).append('\n');
        return this;
    }

    Page heading(String heading) {
        text.append('\n')
                .append(heading)
                .append('\n')
                .append("-".repeat(heading.length()))
                .append('\n');
        return this;
    }

    /** A paragraph, broken between words. */
    Page say(String sentence) {
        return wrapped("", sentence);
    }

    /** A line of a list. */
    Page item(String sentence) {
        return wrapped("  - ", sentence);
    }

    Page gap() {
        text.append('\n');
        return this;
    }

    private Page wrapped(String first, String sentence) {
        String indent = " ".repeat(first.length());
        StringBuilder line = new StringBuilder(first);
        for (String word : sentence.split(" ", -1)) {
            if (line.length() + word.length() > WIDTH && line.length() > indent.length()) {
                text.append(line.toString().stripTrailing()).append('\n');
                line.setLength(0);
                line.append(indent);
            }
            line.append(word).append(' ');
        }
        text.append(line.toString().stripTrailing()).append('\n');
        return this;
    }

    /** A table; the first column is set left, the others right. The first row is the head. */
    Page table(List<String[]> rows) {
        int columns = rows.stream().mapToInt(row -> row.length).max().orElse(0);
        int[] widths = new int[columns];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                widths[i] = Math.max(widths[i], row[i].length());
            }
        }
        for (String[] row : rows) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.length; i++) {
                String blank = " ".repeat(widths[i] - row[i].length());
                cells.add(i == 0 ? row[i] + blank : blank + row[i]);
            }
            text.append("  ").append(String.join("   ", cells).stripTrailing()).append('\n');
        }
        return this;
    }

    /** Text from outside: control and direction marks taken out, and no longer than a line bears. */
    static String foreign(String text) {
        String clean = clean(text);
        int points = clean.codePointCount(0, clean.length());
        return points <= LONGEST_FOREIGN
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST_FOREIGN)) + "…";
    }

    /** Text from outside without control and direction marks, so that it cannot pass for lines of ours. */
    static String clean(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cf}\\u2028\\u2029]+", " ").strip();
    }

    /** A number with about four digits, never in exponents. */
    static String number(double value) {
        double size = Math.abs(value);
        int decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 3;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
