package evenwater.lessons;

import evenwater.chemistry.worked.Worked;
import java.util.Objects;

/**
 * A question in an invented setting, with its worked answer.
 *
 * @param question what the pupil reads
 * @param solution the steps, the answer and the usual wrong answers
 */
public record Exercise(String question, Worked<?> solution) {

    /**
     * Checks that both are there.
     *
     * @param question see the record
     * @param solution see the record
     */
    public Exercise {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(solution, "solution");
    }
}
