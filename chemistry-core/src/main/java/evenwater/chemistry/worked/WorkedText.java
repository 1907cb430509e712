package evenwater.chemistry.worked;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A worked solution as plain text and as Markdown. */
final class WorkedText {

    /** Digits that let a reader follow with a pocket calculator. */
    static final int DIGITS = 6;

    private WorkedText() {}

    static void checkDigits(int significantDigits) {
        if (significantDigits < 1 || significantDigits > 17) {
            throw new IllegalArgumentException(
                    "significant digits must be from 1 to 17, but were " + significantDigits);
        }
    }

    static String plain(Worked<?> worked, int digits) {
        checkDigits(digits);
        List<String> lines = new ArrayList<>();
        lines.add(worked.question());
        int number = 1;
        for (Step step : worked.steps()) {
            lines.add("");
            lines.add(number + ". " + step.title());
            lines.add("   " + step.calculation(digits));
            if (!step.note().isEmpty()) {
                lines.add("   (" + step.note() + ")");
            }
            number++;
        }
        lines.add("");
        lines.add("Answer: " + results(worked, digits));
        for (Mistake mistake : worked.mistakes()) {
            lines.add("");
            lines.add("A usual wrong answer: " + mistake.name());
            lines.add("   " + mistake.step().calculation(digits) + ratio(mistake));
            lines.add("   (" + mistake.reason() + ")");
        }
        return String.join("\n", lines);
    }

    static String markdown(Worked<?> worked, int digits) {
        checkDigits(digits);
        List<String> lines = new ArrayList<>();
        lines.add("**" + worked.question() + "**");
        int number = 1;
        for (Step step : worked.steps()) {
            lines.add("");
            String mark = number + ". ";
            String under =
                    " ".repeat(mark.length()); // a list of Markdown wants what belongs to an item under its words
            lines.add(mark + step.title());
            lines.add("");
            lines.add(under + "$$" + step.formula(digits) + "$$");
            if (!step.note().isEmpty()) {
                lines.add("");
                lines.add(under + step.note() + ".");
            }
            number++;
        }
        lines.add("");
        lines.add("**Answer:** " + results(worked, digits));
        for (Mistake mistake : worked.mistakes()) {
            lines.add("");
            lines.add("> **A usual wrong answer: " + mistake.name() + "**");
            lines.add(">");
            lines.add("> $$" + mistake.step().formula(digits) + "$$");
            lines.add(">");
            lines.add("> " + mistake.reason() + ".");
        }
        return String.join("\n", lines);
    }

    private static String results(Worked<?> worked, int digits) {
        return worked.results().stream().map(result -> result.toText(digits)).collect(Collectors.joining(", "));
    }

    private static String ratio(Mistake mistake) {
        double ratio = mistake.ratio();
        return Double.isFinite(ratio) ? ", " + Numbers.rounded(ratio, 3) + " times the right answer" : "";
    }
}
