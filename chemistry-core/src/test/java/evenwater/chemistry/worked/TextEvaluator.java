package evenwater.chemistry.worked;

import java.util.List;

/**
 * Reads a line of arithmetic as a pupil would: numbers, units that it skips, {@code × ÷ + −}, brackets, {@code 10^x}.
 *
 * <p>It knows nothing of the library: what it makes of the text is compared with the answer.
 */
final class TextEvaluator {

    private final List<String> words;
    private int at;
    private String word;

    private TextEvaluator(String text) {
        words = List.of(text.trim().split(" +"));
        word = words.get(0);
    }

    /** Returns what stands left of the equals sign, computed. */
    static double leftSide(String calculation) {
        return evaluate(calculation.substring(0, calculation.lastIndexOf(" = ")));
    }

    /** Returns the number right of the equals sign. */
    static double rightSide(String calculation) {
        return evaluate(calculation.substring(calculation.lastIndexOf(" = ") + 3));
    }

    private static double evaluate(String text) {
        TextEvaluator evaluator = new TextEvaluator(text);
        double value = evaluator.sum();
        if (evaluator.at < evaluator.words.size()) {
            throw new IllegalArgumentException("did not understand '" + evaluator.word + "' in " + text);
        }
        return value;
    }

    private double sum() {
        double value = product();
        while (word.equals("+") || word.equals("−")) {
            boolean plus = word.equals("+");
            next();
            double part = product();
            value = plus ? value + part : value - part;
        }
        return value;
    }

    private double product() {
        double value = operand();
        while (word.equals("×") || word.equals("÷")) {
            boolean times = word.equals("×");
            next();
            double factor = operand();
            value = times ? value * factor : value / factor;
        }
        return value;
    }

    /** A bracket, or a number with the unit behind it. */
    private double operand() {
        if (word.startsWith("(")) {
            word = word.substring(1);
            double value = sum();
            if (!word.equals(")")) {
                throw new IllegalArgumentException("expected ) but found '" + word + "'");
            }
            next();
            return value;
        }
        int end = 0;
        while (end < word.length() && "0123456789.-^E".indexOf(word.charAt(end)) >= 0) {
            end++;
        }
        double value = number(word.substring(0, end));
        word = word.substring(end);
        if (word.isEmpty()) {
            next();
            unit();
        }
        return value;
    }

    private static double number(String text) {
        return text.startsWith("10^") ? Math.pow(10, Double.parseDouble(text.substring(3))) : Double.parseDouble(text);
    }

    /** Skips a unit; a closing bracket that the unit has not opened is left. */
    private void unit() {
        while (!word.isEmpty() && "+−×÷=".indexOf(word.charAt(0)) < 0) {
            int open = 0;
            for (int i = 0; i < word.length(); i++) {
                open += word.charAt(i) == '(' ? 1 : word.charAt(i) == ')' ? -1 : 0;
                if (open < 0 && !(pending > 0)) {
                    word = word.substring(i);
                    return;
                }
                if (open < 0) {
                    pending--;
                    open = 0;
                }
            }
            pending += open;
            next();
        }
    }

    /** Brackets that the words of a unit have opened, such as {@code (mg/L CaO)/°dH}. */
    private int pending;

    private void next() {
        at++;
        word = at < words.size() ? words.get(at) : "";
    }
}
