package evenwater.examples.questions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The README shows code that compiles, and what it prints. */
class ReadmeTest {

    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern QUESTION = Pattern.compile(
            "\\((?<source>chemistry-examples/[\\w/]+/(?<name>\\w+)\\.java)\\)\\)\\R\\R"
                    + "```java\\R(?<code>.*?)\\R```\\R\\R```text\\R(?<output>.*?)\\R```",
            Pattern.DOTALL);
    private static final Pattern LINK = Pattern.compile("\\]\\((?!http)(?<target>[^)#]+)[^)]*\\)");

    /** One question of the README. */
    private record Question(String source, String name, String code, String output) {}

    private static List<Question> questions() throws IOException {
        Matcher m = QUESTION.matcher(Files.readString(ROOT.resolve("README.md")));
        List<Question> questions = new ArrayList<>();
        while (m.find()) {
            questions.add(new Question(m.group("source"), m.group("name"), m.group("code"), m.group("output")));
        }
        return questions;
    }

    @Test
    void thereAreFifteenQuestions() throws IOException {
        assertEquals(15, questions().size());
    }

    @TestFactory
    Stream<DynamicTest> codeIsTakenFromTheClass() throws IOException {
        return questions().stream()
                .map(q -> DynamicTest.dynamicTest(q.name(), () -> assertEquals(snippet(q.source()), q.code())));
    }

    private static String snippet(String source) throws IOException {
        String text = Files.readString(ROOT.resolve(source));
        int start = text.indexOf("// snippet\n") + "// snippet\n".length();
        return text.substring(start, text.indexOf("// end", start))
                .stripIndent()
                .strip();
    }

    @TestFactory
    Stream<DynamicTest> outputIsWhatTheClassPrints() throws IOException {
        return questions().stream()
                .map(q -> DynamicTest.dynamicTest(q.name(), () -> assertEquals(q.output(), printed(q.name()))));
    }

    private static String printed(String name) throws ReflectiveOperationException {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try {
            Class.forName("evenwater.examples.questions." + name)
                    .getMethod("main", String[].class)
                    .invoke(null, (Object) new String[0]);
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8)
                .replace(System.lineSeparator(), "\n")
                .strip();
    }

    @Test
    void linksOfAllPagesLeadSomewhere() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            docs.filter(page -> page.toString().endsWith(".md")).forEach(pages::add);
        }
        for (Path page : pages) {
            Matcher m = LINK.matcher(Files.readString(page));
            while (m.find()) {
                Path target = page.resolveSibling(m.group("target"));
                assertTrue(Files.exists(target), () -> page + " links to " + target);
            }
        }
    }

    @Test
    void readmeNamesTheTestCommandThatCiRuns() throws IOException {
        String ci = Files.readString(ROOT.resolve(".ci/run"));
        assertTrue(ci.contains("mvn -B -ntp verify"), ci);
        assertTrue(Files.readString(ROOT.resolve("README.md")).contains("mvn verify"));
    }
}
