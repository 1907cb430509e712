package evenwater.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;
import org.junit.jupiter.api.Test;

/** The start script of jshell and the lesson on its page, line by line in a real jshell. */
class LessonScriptTest {

    private static final Path SCRIPT = Path.of("lesson.jsh");
    private static final Path PAGE = Path.of("..", "docs", "lessons.md");

    @Test
    void theScriptAndTheLessonRunAndPrintWhatThePageSays() throws IOException {
        List<String> lessons = blocks(Files.readString(PAGE, StandardCharsets.UTF_8), "```text\njshell> ");
        assertFalse(lessons.isEmpty(), "the page has no lesson");
        ByteArrayOutputStream printed = new ByteArrayOutputStream();
        PrintStream before = System.out; // the local engine prints there
        System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
        try (JShell shell = JShell.builder().executionEngine("local").build()) {
            // surefire hides the class path behind a jar that names it, which the compiler of jshell does not follow
            shell.addToClasspath(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
            run(shell, Files.readString(SCRIPT, StandardCharsets.UTF_8));
            for (String lesson : lessons) {
                replay(shell, printed, lesson);
            }
        } finally {
            System.setOut(before);
        }
    }

    /** Runs each input of a lesson and compares what it prints or answers. */
    private static void replay(JShell shell, ByteArrayOutputStream printed, String lesson) {
        for (String exchange : ("\n" + lesson).split("\njshell> ")) {
            if (exchange.isBlank()) {
                continue;
            }
            int end = exchange.indexOf('\n') < 0 ? exchange.length() : exchange.indexOf('\n');
            String input = exchange.substring(0, end);
            String expected = exchange.substring(end).strip();
            printed.reset();
            List<SnippetEvent> events = run(shell, input);
            SnippetEvent last = events.get(events.size() - 1);
            String output = printed.toString(StandardCharsets.UTF_8).strip();
            if (output.isEmpty() && last.value() != null && !last.value().isEmpty()) {
                output = shown(last);
            }
            assertEquals(asInTheTool(expected), asInTheTool(shortened(output, expected)), input);
        }
    }

    /** The tool counts all inputs for the names of its own variables, this shell counts those variables only. */
    private static String asInTheTool(String answer) {
        return answer.replaceAll("^\\$\\d+", "\\$");
    }

    /** The tool leaves out the middle of a long value. */
    private static String shortened(String output, String expected) {
        int gap = expected.indexOf(" ... ");
        int rest = expected.length() - gap - " ... ".length();
        return gap < 0 || output.length() < expected.length()
                ? output
                : output.substring(0, gap) + " ... " + output.substring(output.length() - rest);
    }

    /** As the jshell tool shows a value: the name of the variable, an arrow, the value. */
    private static String shown(SnippetEvent event) {
        return event.snippet() instanceof VarSnippet variable
                ? variable.name() + " ==> " + event.value()
                : event.value();
    }

    private static List<SnippetEvent> run(JShell shell, String source) {
        List<SnippetEvent> all = new ArrayList<>();
        String rest = source;
        while (!rest.isBlank()) {
            SourceCodeAnalysis.CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
            if (!next.completeness().isComplete()) {
                assertTrue(
                        rest.lines().allMatch(line -> line.isBlank() || line.startsWith("//")),
                        () -> "incomplete: " + source);
                break;
            }
            for (SnippetEvent event : shell.eval(next.source())) {
                String problems = shell.diagnostics(event.snippet())
                        .map(diagnostic -> diagnostic.getMessage(Locale.ROOT))
                        .toList()
                        .toString();
                assertEquals(
                        Snippet.Status.VALID,
                        event.status(),
                        () -> event.snippet().source() + " " + problems);
                assertEquals(null, event.exception(), () -> event.snippet().source());
                all.add(event);
            }
            rest = next.remaining();
        }
        return all;
    }

    private static List<String> blocks(String page, String start) {
        List<String> blocks = new ArrayList<>();
        int at = page.indexOf(start);
        while (at >= 0) {
            int from = at + "```text\n".length();
            int end = page.indexOf("\n```", from);
            blocks.add(page.substring(from, end));
            at = page.indexOf(start, end);
        }
        return blocks;
    }
}
