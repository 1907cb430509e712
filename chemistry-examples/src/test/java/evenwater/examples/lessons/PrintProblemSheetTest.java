package evenwater.examples.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.lessons.Level;
import evenwater.lessons.ProblemSheet;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintProblemSheetTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return PrintProblemSheet.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void printsTheSheetThatWasAskedFor() {
        assertEquals(0, run("--level", "2", "--seed", "7", "--count", "3", "--answers", "--markdown"));
        assertEquals(
                ProblemSheet.of(Level.CHARGES, 7, 3).answersToMarkdown(),
                out.toString().strip());
        assertEquals("", err.toString());
    }

    @Test
    void withoutOptionsItAsksTenQuestionsOfTheFirstLevel() {
        assertEquals(0, run());
        assertEquals(
                ProblemSheet.of(Level.UNITS, 1, 10).questionsToText(),
                out.toString().strip());
    }

    @ParameterizedTest
    @CsvSource({
        "--level 4, 'level must be from 1 to 3, but was 4 (see --help)'",
        "--count 0, 'number of exercises must be from 1 to 200, but was 0 (see --help)'"
    })
    void refusesInOneLine(String args, String message) {
        assertEquals(2, run(args.split(" ")));
        assertEquals(message, err.toString().strip());
        assertEquals("", out.toString());
    }

    @ParameterizedTest
    @CsvSource({"--seed seven", "--colour", "page.md"})
    void refusesWhatItDoesNotKnow(String args) {
        assertEquals(2, run(args.split(" ")));
        assertEquals(1, err.toString().lines().count(), err::toString);
        assertEquals("", out.toString());
    }

    @Test
    void helps() {
        assertEquals(0, run("--help"));
        assertTrue(out.toString().contains("--answers"), out::toString);
    }
}
