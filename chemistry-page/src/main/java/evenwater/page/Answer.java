package evenwater.page;

import evenwater.chemistry.worked.Worked;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a part of the page answers: figures, steps and notes, or what is wrong with the question.
 *
 * @param summary the answer in a sentence, or that there is none
 * @param tables the figures; empty if there is a problem
 * @param solutions how it was found, step by step; may be empty
 * @param notes what the figures leave out
 * @param problems what is wrong, in the order of the controls; empty if there is an answer
 */
public record Answer(
        String summary,
        List<FigureTable> tables,
        List<Worked<?>> solutions,
        List<String> notes,
        List<Problem> problems) {

    /**
     * Copies the lists.
     *
     * @param summary see the record
     * @param tables see the record
     * @param solutions see the record
     * @param notes see the record
     * @param problems see the record
     */
    public Answer {
        Objects.requireNonNull(summary, "summary");
        tables = List.copyOf(tables);
        solutions = List.copyOf(solutions);
        notes = List.copyOf(notes);
        problems = List.copyOf(problems);
    }

    static Answer of(String summary, List<FigureTable> tables, List<Worked<?>> solutions, List<String> notes) {
        return new Answer(summary, tables, solutions, notes, List.of());
    }

    static Answer refusing(List<Problem> problems) {
        String summary = problems.size() == 1
                ? "No answer yet: one entry needs a change."
                : "No answer yet: " + problems.size() + " entries need a change.";
        return new Answer(summary, List.of(), List.of(), List.of(), problems);
    }

    /**
     * Returns a figure by its name.
     *
     * @param name within this answer
     * @return the figure; empty if there is none of this name
     */
    public Optional<Figure> figure(String name) {
        Objects.requireNonNull(name, "name");
        return tables.stream()
                .flatMap(table -> table.figures().stream())
                .filter(figure -> figure.name().equals(name))
                .findFirst();
    }

    /**
     * Returns the answer as the text that the page's script reads.
     *
     * @return an object of JSON (RFC 8259) with the parts of this record by their names
     */
    public String toJson() {
        return AnswerJson.of(this);
    }
}
