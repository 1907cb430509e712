package evenwater.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.worked.Mistake;
import evenwater.chemistry.worked.Step;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sheets of a seed are stable, varied and solvable. */
class ProblemSheetTest {

    private static final Path SHEETS = Path.of("src", "test", "resources", "sheets");

    /** Set to write the sheets anew. */
    private static final boolean WRITE = Boolean.getBoolean("sheets.write");

    @ParameterizedTest
    @EnumSource(Level.class)
    void aSheetOfASeedIsTheOneThatIsKept(Level level) throws IOException {
        ProblemSheet sheet = ProblemSheet.of(level, 7, 6);
        compare("level-" + level.number() + "-seed-7.txt", sheet.answersToText());
        compare("level-" + level.number() + "-seed-7.md", sheet.answersToMarkdown());
    }

    private static void compare(String name, String text) throws IOException {
        Path file = SHEETS.resolve(name);
        if (WRITE) {
            Files.createDirectories(SHEETS);
            Files.writeString(file, text + "\n", StandardCharsets.UTF_8);
        }
        assertEquals(Files.readString(file, StandardCharsets.UTF_8), text + "\n", name);
    }

    @ParameterizedTest
    @EnumSource(Level.class)
    void allKindsOfExerciseComeUpAndEachHasAnAnswer(Level level) {
        ProblemSheet sheet = ProblemSheet.of(level, 20_261, 200);
        for (Exercise exercise : sheet.exercises()) {
            assertFalse(exercise.solution().steps().isEmpty(), exercise::question);
            for (Step step : exercise.solution().steps()) {
                assertTrue(Double.isFinite(step.result()), exercise::question);
            }
            for (Mistake mistake : exercise.solution().mistakes()) {
                assertTrue(Math.abs(mistake.ratio() - 1) > 1e-3, () -> exercise.question() + " " + mistake);
            }
        }
        Set<String> openings = sheet.exercises().stream()
                .map(exercise -> exercise.question()
                        .replaceAll("[A-Z][a-z]+", "")
                        .replaceAll("[^a-z ]", "")
                        .strip())
                .map(question -> question.substring(0, Math.min(12, question.length())))
                .collect(Collectors.toSet());
        assertTrue(openings.size() >= 4, openings::toString);
    }

    @Test
    void questionsDoNotTellTheAnswer() {
        ProblemSheet sheet = ProblemSheet.of(Level.UNITS, 1, 3);
        assertFalse(sheet.questionsToText().contains("Answer"));
        assertFalse(sheet.questionsToMarkdown().contains("Answer"));
        assertTrue(sheet.answersToText().contains("Answer"));
        assertTrue(
                sheet.questionsToMarkdown().startsWith("# Problem sheet 1, level 1 of 3: units\n\n## Exercise 1\n\n"));
    }

    @Test
    void aLongerSheetStartsWithTheShorterOne() {
        String shorter = ProblemSheet.of(Level.TREATMENT, 99, 4).answersToText();
        assertTrue(ProblemSheet.of(Level.TREATMENT, 99, 5).answersToText().startsWith(shorter));
    }

    @Test
    void sheetsAreTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        String here = ProblemSheet.of(Level.CHARGES, 5, 20).answersToText();
        try {
            Locale.setDefault(Locale.forLanguageTag("hi-IN-u-nu-deva"));
            assertEquals(here, ProblemSheet.of(Level.CHARGES, 5, 20).answersToText());
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void levelsAndCountsOutOfRangeAreRefused() {
        assertEquals(
                "level must be from 1 to 3, but was 4",
                assertThrows(IllegalArgumentException.class, () -> Level.of(4)).getMessage());
        assertEquals(
                "number of exercises must be from 1 to 200, but was 0",
                assertThrows(IllegalArgumentException.class, () -> ProblemSheet.of(Level.UNITS, 1, 0))
                        .getMessage());
        assertEquals(Level.CHARGES, Level.of(2));
        assertThrows(NullPointerException.class, () -> ProblemSheet.of(null, 1, 1));
    }
}
