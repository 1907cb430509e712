package evenwater.page;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.worked.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** The steps to an answer where there are any, and what to say where there are none. */
final class Way {

    private final List<Worked<?>> solutions = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    private Way() {}

    static Way to(Supplier<Worked<?>> solution) {
        return new Way().and(solution);
    }

    /**
     * Adds a solution.
     *
     * <p>A worked solution refuses to be built where its arithmetic leads away from the answer by more than rounding. That happens where a
     * small change is the difference of large totals: a thousandth of a degree beside much sodium. The figures stand all the same.
     */
    Way and(Supplier<Worked<?>> solution) {
        try {
            solutions.add(solution.get());
        } catch (NoAnswerException e) {
            notes.add("No steps are shown: " + e.getMessage() + ".");
        } catch (IllegalStateException e) {
            notes.add("No steps are shown: what changes is so small that rounding hides it.");
        }
        return this;
    }

    Answer answer(String summary, List<FigureTable> tables, List<String> furtherNotes) {
        List<String> all = new ArrayList<>(notes);
        all.addAll(furtherNotes);
        return Answer.of(summary, tables, solutions, all);
    }
}
