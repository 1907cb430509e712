package evenwater.chemistry.worked;

import java.util.Locale;

/**
 * One step of a worked solution: what is computed, with which numbers, and what comes out.
 *
 * <p>The result is the number of the answer; the arithmetic that is shown must lead to it. Immutable and thread-safe.
 */
public final class Step {

    /** What a chain of double roundings may differ from the answer, relative to the largest number on the way. */
    private static final double ROUNDING = 1e-11;

    /** Below this a double has lost digits. */
    private static final double UNDERFLOW = 1e-290;

    private final String title;
    private final Expression expression;
    private final Term result;
    private final String note;

    private Step(String title, Expression expression, Term result, String note) {
        this.title = title;
        this.expression = expression;
        this.result = result;
        this.note = note;
    }

    /**
     * Makes a step.
     *
     * @throws IllegalStateException if the arithmetic does not lead to the result, which is a fault of this library
     */
    static Step of(String title, Expression expression, double result, String unit, String note) {
        double size = Math.max(expression.size(), Math.abs(result));
        if (!(Math.abs(expression.value() - result) <= ROUNDING * size + UNDERFLOW)) {
            throw new IllegalStateException("step '" + title + "': " + expression.text(17) + " is " + expression.value()
                    + " " + unit + ", but the answer has " + result + " " + unit);
        }
        return titled(title, expression, result, unit, note);
    }

    /** A wrong calculation, whose result is whatever it leads to. */
    static Step wrong(String title, Expression expression, String unit) {
        return titled(title, expression, expression.value(), unit, "");
    }

    private static Step titled(String title, Expression expression, double result, String unit, String note) {
        String start = title.substring(0, 1).toUpperCase(Locale.ROOT); // names of ions start small
        return new Step(start + title.substring(1), expression, Term.rounded(result, unit), note);
    }

    static Step of(String title, Expression expression, double result, String unit) {
        return of(title, expression, result, unit, "");
    }

    /**
     * Returns what is computed.
     *
     * @return a few words
     */
    public String title() {
        return title;
    }

    /**
     * Returns the result.
     *
     * @return the number in {@link #unit}, as the answer has it
     */
    public double result() {
        return result.value();
    }

    /**
     * Returns the unit of the result.
     *
     * @return its symbol; empty for a plain number
     */
    public String unit() {
        return result.unit();
    }

    /**
     * Returns why, or where a number comes from.
     *
     * @return a sentence without its dot; empty if there is nothing to say
     */
    public String note() {
        return note;
    }

    /**
     * Returns the arithmetic as a line of plain text, such as {@code 22 gpg × 64.79891 mg/grain ÷ 3.785411784 L/gal(US) = 376.6 mg/L CaCO3}.
     *
     * <p>Statements and exact factors have all their digits; what was computed is carried unrounded and shown rounded.
     *
     * @param significantDigits of what was computed; 1 to 17
     * @return operators {@code × ÷ + −} between spaces, each unit behind its number
     * @throws IllegalArgumentException if the digits are out of range
     */
    public String calculation(int significantDigits) {
        WorkedText.checkDigits(significantDigits);
        return expression.text(significantDigits) + " = " + result.text(significantDigits);
    }

    /**
     * Returns the arithmetic in the formula notation of TeX, as Markdown has it between dollar signs.
     *
     * @param significantDigits of what was computed; 1 to 17
     * @return the formula without dollar signs
     * @throws IllegalArgumentException if the digits are out of range
     */
    public String formula(int significantDigits) {
        WorkedText.checkDigits(significantDigits);
        return expression.formula(significantDigits) + " = " + result.formula(significantDigits);
    }

    /** The largest number on the way, against which rounding is judged. */
    double size() {
        return expression.size();
    }

    /** Returns title and arithmetic with six digits. */
    @Override
    public String toString() {
        return title + ": " + calculation(WorkedText.DIGITS);
    }
}
