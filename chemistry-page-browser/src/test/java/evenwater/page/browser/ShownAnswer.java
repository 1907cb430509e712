package evenwater.page.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.worked.Mistake;
import evenwater.chemistry.worked.Step;
import evenwater.chemistry.worked.Worked;
import evenwater.page.Answer;
import evenwater.page.Figure;
import evenwater.page.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** What the page shows of an answer, held against the answer of the JVM. */
final class ShownAnswer {

    /** Twelve digits: what differs between the machines is the last digits of exponentials and logarithms. */
    private static final double TWELVE_DIGITS = 1e-12;

    private static final Pattern VALUE = Pattern.compile("\"value\":([-+.0-9E]+)");

    private static final String READ = """
            const form = document.querySelector('form[data-part="' + arguments[0] + '"]');
            const answer = document.querySelector('[data-answer="' + arguments[0] + '"]');
            const text = (selector) => [...answer.querySelectorAll(selector)].map((each) => each.textContent);
            return {
              summary: answer.querySelector('.summary').textContent,
              figures: [...answer.querySelectorAll('td.value')].map((cell) => [cell.dataset.figure, cell.dataset.value,
                cell.textContent, cell.nextElementSibling.textContent, cell.previousElementSibling.textContent]),
              steps: text('.steps h4, .steps p'),
              notes: text('.notes li'),
              problems: [...form.querySelectorAll('.error:not([hidden])')].map((error) => {
                const control = document.getElementById(error.id.replace(/-error$/, ''));
                return [control.name, error.textContent, control.getAttribute('aria-invalid'),
                  String(control.getAttribute('aria-describedby')).split(' ').includes(error.id)];
              }),
              invalid: form.querySelectorAll('[aria-invalid]').length,
            };
            """;

    private final Map<?, ?> shown;

    private ShownAnswer(Map<?, ?> shown) {
        this.shown = shown;
    }

    static ShownAnswer of(Chromium chromium, String part) {
        return new ShownAnswer((Map<?, ?>) chromium.script(READ, part));
    }

    String summary() {
        return (String) shown.get("summary");
    }

    private List<?> list(String name) {
        return (List<?>) shown.get(name);
    }

    void assertSameAs(Answer expected, String where) {
        assertEquals(expected.summary(), summary(), where);
        List<Figure> figures = expected.tables().stream()
                .flatMap(table -> table.figures().stream())
                .toList();
        assertEquals(figures.size(), list("figures").size(), where);
        for (int i = 0; i < figures.size(); i++) {
            assertSame(figures.get(i), (List<?>) list("figures").get(i), where);
        }
        List<List<Object>> problems = new ArrayList<>();
        for (Problem problem : expected.problems()) {
            problems.add(List.of(problem.control(), problem.message(), "true", true));
        }
        assertEquals(problems, list("problems"), where);
        assertEquals((long) problems.size(), shown.get("invalid"), where);
        List<String> steps = new ArrayList<>();
        for (Worked<?> worked : expected.solutions()) {
            steps.add(worked.question());
            for (Step step : worked.steps()) {
                steps.addAll(List.of(step.title(), step.calculation(6)));
                steps.addAll(step.note().isEmpty() ? List.of() : List.of("(" + step.note() + ")"));
            }
            for (Mistake mistake : worked.mistakes()) {
                steps.add("A usual wrong answer: " + mistake.name());
                steps.addAll(List.of(mistake.step().calculation(6), mistake.reason() + "."));
            }
        }
        assertEquals(steps, list("steps"), where);
        assertEquals(expected.notes(), list("notes"), where);
    }

    private static void assertSame(Figure expected, List<?> cells, String where) {
        String name = where + ", " + expected.name();
        assertEquals(expected.name(), cells.get(0), name);
        double value = Double.parseDouble((String) cells.get(1));
        assertEquals(expected.value(), value, Math.abs(expected.value()) * TWELVE_DIGITS, name);
        assertEquals(expected.text(), cells.get(2), name);
        assertEquals(expected.unit(), cells.get(3), name);
        assertEquals(expected.label(), cells.get(4), name);
    }

    /** Texts that are equal but for the last digits of their values. */
    static void assertSameJson(String expected, String found, String where) {
        assertEquals(
                VALUE.matcher(expected).replaceAll("v"), VALUE.matcher(found).replaceAll("v"), where);
        List<Double> values = values(expected);
        List<Double> foundValues = values(found);
        for (int i = 0; i < values.size(); i++) {
            assertEquals(values.get(i), foundValues.get(i), Math.abs(values.get(i)) * TWELVE_DIGITS, where);
        }
    }

    private static List<Double> values(String json) {
        return VALUE.matcher(json)
                .results()
                .map(match -> Double.valueOf(match.group(1)))
                .toList();
    }
}
