package evenwater.lessons;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.worked.Mistake;
import evenwater.chemistry.worked.Step;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
    void numbersAreThoseThatAPupilCouldMeet() {
        for (Exercise exercise : ProblemSheet.of(Level.UNITS, 3, 200).exercises()) {
            assertTrue(
                    exercise.solution().steps().stream()
                            .noneMatch(step -> step.note().startsWith("both units")),
                    exercise::question);
        }
        for (Exercise exercise : ProblemSheet.of(Level.CHARGES, 3, 200).exercises()) {
            if (exercise.solution().answer() instanceof IonBalance balance) {
                assertTrue(Math.abs(balance.percentDifference()) < 8, exercise::question);
            }
        }
        for (Exercise exercise : ProblemSheet.of(Level.TREATMENT, 3, 200).exercises()) {
            if (exercise.solution().answer() instanceof Speciation tank) {
                double milligrams = tank.carbonDioxide().in(Ion.CARBON_DIOXIDE.milligramPerLitre());
                assertTrue(milligrams > 3 && milligrams < 50, exercise::question);
            }
        }
    }

    /** With no other numbers than those that the question tells. */
    @Test
    void carbonDioxideFollowsFromWhatTheQuestionTells() {
        Pattern told = Pattern.compile(
                "pH ([\\d.]+) .* else, ([\\d.]+) mmol/L .* is (-[\\d.]+); .* are ([\\d.]+) for .* and ([\\d.]+) for");
        int found = 0;
        for (Exercise exercise : ProblemSheet.of(Level.TREATMENT, 4, 100).exercises()) {
            Matcher numbers = told.matcher(exercise.question());
            if (numbers.find()) {
                double pH = Double.parseDouble(numbers.group(1));
                double bicarbonate = Double.parseDouble(numbers.group(2));
                double lgK = Double.parseDouble(numbers.group(3));
                double byHand = bicarbonate
                        * Double.parseDouble(numbers.group(4))
                        * Math.pow(10, -pH - lgK)
                        / Double.parseDouble(numbers.group(5))
                        * 44.009; // g/mol, IUPAC 2021
                assertEquals(byHand, exercise.solution().results().get(0).value(), 5e-4 * byHand, exercise::question);
                found++;
            }
        }
        assertTrue(found > 5, "only " + found);
    }

    @Test
    void seedsOfATeacherBeginWithDifferentQuestions() {
        Set<String> openings = new HashSet<>();
        for (long seed = 1; seed <= 12; seed++) {
            String question =
                    ProblemSheet.of(Level.UNITS, seed, 1).exercises().get(0).question();
            openings.add(
                    question.contains("thermometer") ? "temperature" : question.contains("tank") ? "volume" : "scale");
        }
        assertEquals(Set.of("temperature", "volume", "scale"), openings);
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
