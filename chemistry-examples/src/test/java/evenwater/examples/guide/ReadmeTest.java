package evenwater.examples.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The README shows code that compiles, and what it prints. */
class ReadmeTest {

    private static final Pattern QUESTION = Pattern.compile(
            "\\((?<source>chemistry-examples/[\\w/]+/\\w+\\.java)\\)\\)\\R\\R"
                    + "```java\\R(?<code>.*?)\\R```\\R\\R```text\\R(?<output>.*?)\\R```",
            Pattern.DOTALL);

    /** One question of the README. */
    private record Question(Example example, String code, String output) {}

    private static List<Question> questions() {
        return QUESTION.matcher(Page.at("README.md").text())
                .results()
                .map(m -> new Question(Example.at(Page.ROOT.resolve(m.group(1))), m.group(2), m.group(3)))
                .collect(Collectors.toList());
    }

    @Test
    void thereAreSixteenQuestions() {
        assertEquals(16, questions().size());
    }

    @TestFactory
    Stream<DynamicTest> codeIsTakenFromTheClass() {
        return questions().stream()
                .map(q -> DynamicTest.dynamicTest(
                        q.example().name(), () -> assertEquals(q.example().snippet(), q.code())));
    }

    @TestFactory
    Stream<DynamicTest> outputIsWhatTheClassPrints() {
        return questions().stream()
                .map(q -> DynamicTest.dynamicTest(
                        q.example().name(), () -> assertEquals(q.example().printed(), q.output())));
    }

    @Test
    void readmeNamesTheTestCommandThatCiRuns() {
        String ci = Page.read(Page.ROOT.resolve(".ci/run"));
        assertTrue(ci.contains("mvn -B -ntp verify"), ci);
        assertTrue(Page.at("README.md").text().contains("mvn verify"));
    }
}
