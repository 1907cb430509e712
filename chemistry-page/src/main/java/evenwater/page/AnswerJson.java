package evenwater.page;

import evenwater.chemistry.worked.Mistake;
import evenwater.chemistry.worked.Step;
import evenwater.chemistry.worked.Worked;
import java.util.Iterator;
import java.util.List;
import java.util.function.Consumer;

/** Writes an answer as JSON. */
final class AnswerJson {

    /** Of what was computed; enough to follow with a pocket calculator. */
    static final int DIGITS = 6;

    private final StringBuilder out = new StringBuilder();

    private AnswerJson() {}

    static String of(Answer answer) {
        AnswerJson json = new AnswerJson();
        json.out.append('{');
        json.text("summary", answer.summary()).append(',');
        json.list("tables", answer.tables(), json::table).append(',');
        json.list("solutions", answer.solutions(), json::solution).append(',');
        json.list("notes", answer.notes(), json::quoted).append(',');
        json.list("problems", answer.problems(), json::problem).append('}');
        return json.out.toString();
    }

    private void table(FigureTable table) {
        out.append('{');
        text("title", table.title()).append(',');
        list("figures", table.figures(), this::figure).append('}');
    }

    private void figure(Figure figure) {
        out.append('{');
        text("name", figure.name()).append(',');
        text("label", figure.label()).append(',');
        key("value").append(figure.value()).append(','); // finite, so that Java's text of a double is a number of JSON
        text("text", figure.text()).append(',');
        text("unit", figure.unit()).append('}');
    }

    private void solution(Worked<?> worked) {
        out.append('{');
        text("question", worked.question()).append(',');
        list("steps", worked.steps(), this::step).append(',');
        list("mistakes", worked.mistakes(), this::mistake).append('}');
    }

    private void step(Step step) {
        out.append('{');
        text("title", step.title()).append(',');
        text("calculation", step.calculation(DIGITS)).append(',');
        text("note", step.note()).append('}');
    }

    private void mistake(Mistake mistake) {
        out.append('{');
        text("name", mistake.name()).append(',');
        text("calculation", mistake.step().calculation(DIGITS)).append(',');
        text("reason", mistake.reason()).append('}');
    }

    private void problem(Problem problem) {
        out.append('{');
        text("control", problem.control()).append(',');
        text("message", problem.message()).append('}');
    }

    private StringBuilder key(String name) {
        quoted(name);
        return out.append(':');
    }

    private StringBuilder text(String name, String value) {
        key(name);
        quoted(value);
        return out;
    }

    private <T> StringBuilder list(String name, List<T> items, Consumer<T> item) {
        key(name).append('[');
        for (Iterator<T> each = items.iterator(); each.hasNext(); ) {
            item.accept(each.next());
            out.append(each.hasNext() ? "," : "");
        }
        return out.append(']');
    }

    private void quoted(String text) {
        out.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                String hex = Integer.toHexString(c);
                out.append("\\u0000", 0, 6 - hex.length()).append(hex);
            } else {
                out.append(c);
            }
        }
        out.append('"');
    }
}
