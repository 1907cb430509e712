package evenwater.chemistry.worked;

import java.util.List;
import java.util.Objects;

/**
 * A calculation with its steps: the question, how the answer follows, and the usual wrong answers.
 *
 * <p>Answer and steps come from the same calculation; a step whose arithmetic does not lead to the number of the answer cannot be built.
 *
 * @param <A> what was asked for
 * @param question what is asked, with the numbers that are given
 * @param steps in their order
 * @param answer what the library answers without showing its steps
 * @param results the numbers that were asked for
 * @param mistakes usual wrong answers, those left out that happen to come within 0.5 % of the right one or have another sign; may be empty
 */
public record Worked<A>(String question, List<Step> steps, A answer, List<Result> results, List<Mistake> mistakes) {

    /**
     * Copies the lists, without mistakes that happen to give the right answer and those that nobody would believe.
     *
     * @param question see the record
     * @param steps see the record
     * @param answer see the record
     * @param results see the record
     * @param mistakes see the record
     */
    public Worked {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(answer, "answer");
        steps = List.copyOf(steps);
        results = List.copyOf(results);
        mistakes = mistakes.stream().filter(Mistake::isPlausible).toList();
    }

    /**
     * Returns the whole solution as plain text, computed numbers to six digits.
     *
     * @return lines without a trailing line end
     */
    public String toText() {
        return toText(WorkedText.DIGITS);
    }

    /**
     * Returns the whole solution as plain text.
     *
     * @param significantDigits of what was computed; 1 to 17
     * @return lines without a trailing line end
     * @throws IllegalArgumentException if the digits are out of range
     */
    public String toText(int significantDigits) {
        return WorkedText.plain(this, significantDigits);
    }

    /**
     * Returns the whole solution as Markdown with formulas between dollar signs, computed numbers to six digits.
     *
     * @return lines without a trailing line end
     */
    public String toMarkdown() {
        return toMarkdown(WorkedText.DIGITS);
    }

    /**
     * Returns the whole solution as Markdown with formulas between dollar signs.
     *
     * @param significantDigits of what was computed; 1 to 17
     * @return lines without a trailing line end
     * @throws IllegalArgumentException if the digits are out of range
     */
    public String toMarkdown(int significantDigits) {
        return WorkedText.markdown(this, significantDigits);
    }

    /** Returns the solution as plain text. */
    @Override
    public String toString() {
        return toText();
    }
}
