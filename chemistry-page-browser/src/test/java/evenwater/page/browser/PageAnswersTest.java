package evenwater.page.browser;

import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.page.Answer;
import evenwater.page.LivePage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** The page in Chromium against the same page on the JVM: the same entries, typed by keys, have the same answers. */
class PageAnswersTest {

    private static final int QUESTIONS = Integer.getInteger("page.questions", 50);
    private static final List<String> ODD = List.of("", "-3", "7,3", "abc", "1e300", "0", "1e-9", "100", "-0");

    private static Chromium chromium;

    @BeforeAll
    static void start() {
        chromium = Chromium.withPage();
    }

    @AfterAll
    static void stop() {
        chromium.close();
    }

    static List<String> parts() {
        return LivePage.parts();
    }

    @Test
    void thePageStartsWithTheAnswersToItsInitialValues() {
        chromium.open();
        for (String part : LivePage.parts()) {
            ShownAnswer.of(chromium, part).assertSameAs(LivePage.answer(part, Map.of()), part);
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void randomEntriesHaveTheAnswersOfTheJvm(String part) {
        chromium.open();
        KeyboardForm form = new KeyboardForm(chromium, part);
        Random random = new Random(20); // fixed, so that a failure comes back
        int answers = 0;
        int refusals = 0;
        List<String> again = new ArrayList<>();
        for (int question = 0; question < QUESTIONS; question++) {
            enter(form, random, again);
            Answer expected = LivePage.answer(part, form.entries());
            ShownAnswer.of(chromium, part)
                    .assertSameAs(expected, part + ", question " + question + " " + form.entries());
            again.clear();
            expected.problems().forEach(problem -> again.add(problem.control()));
            answers += expected.problems().isEmpty() ? 1 : 0;
            refusals += expected.problems().isEmpty() ? 0 : 1;
        }
        System.out.println(part + ": " + answers + " answers and " + refusals + " refusals as on the JVM");
        assertTrue(answers > QUESTIONS / 3, part + " answers " + answers);
        assertTrue(refusals > QUESTIONS / 50, part + " refuses " + refusals);
    }

    @ParameterizedTest
    @MethodSource("parts")
    void manyMoreEntriesHaveTheAnswersOfTheJvmWithoutTyping(String part) {
        chromium.open();
        KeyboardForm form = new KeyboardForm(chromium, part);
        Random random = new Random(21);
        List<Map<String, String>> questions = new ArrayList<>();
        for (int question = 0; question < QUESTIONS * 20; question++) {
            questions.add(form.randomEntries(random, name -> number(name, form, random, random.nextBoolean())));
        }
        List<?> answers = (List<?>) chromium.script(
                "return arguments[1].map((each) => evenwaterAnswer(arguments[0], Object.keys(each), Object.values(each)));",
                part,
                questions);
        for (int question = 0; question < questions.size(); question++) {
            Map<String, String> entries = questions.get(question);
            ShownAnswer.assertSameJson(
                    LivePage.answer(part, entries).toJson(), (String) answers.get(question), part + " " + entries);
        }
    }

    /** Changes three controls, and those that were refused; ends with Enter in the last text field. */
    private static void enter(KeyboardForm form, Random random, List<String> again) {
        List<String> names = new ArrayList<>(form.shown());
        Collections.shuffle(names, random);
        List<String> changed = new ArrayList<>(again);
        names.stream().filter(name -> !changed.contains(name)).limit(3).forEach(changed::add);
        for (String name : changed) {
            if (!form.isShown(name)) {
                continue; // a choice of this round hides it
            }
            if (form.isChoice(name)) {
                List<String> options = form.options(name);
                form.choose(name, options.get(random.nextInt(options.size())));
            } else {
                form.type(name, number(name, form, random, again.contains(name)));
            }
        }
        String last = form.shown().stream()
                .filter(name -> !form.isChoice(name))
                .findFirst()
                .orElseThrow();
        form.press(last, Keys.ENTER);
    }

    private static String number(String name, KeyboardForm form, Random random, boolean wasRefused) {
        if (!wasRefused && random.nextInt(12) == 0) {
            return ODD.get(random.nextInt(ODD.size()));
        }
        double value = switch (name) {
            case "ph" -> 5 + 4.5 * random.nextDouble();
            case "temperature" -> temperature(form.entries().get("temperature-unit"), 50 * random.nextDouble());
            case "share" -> 100 * random.nextDouble();
            case "leakage" -> random.nextDouble();
            default -> 40 * random.nextDouble();
        };
        return String.format(Locale.ROOT, "%." + random.nextInt(4) + "f", value);
    }

    private static double temperature(String unit, double celsius) {
        return switch (unit) {
            case "°F" -> 32 + 1.8 * celsius;
            case "K" -> 273.15 + celsius;
            default -> celsius;
        };
    }
}
