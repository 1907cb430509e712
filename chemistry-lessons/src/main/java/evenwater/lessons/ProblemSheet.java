package evenwater.lessons;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/**
 * A sheet of exercises and the sheet of their worked answers.
 *
 * <p>A seed gives the same sheet on every machine. Sheets of another version of the library may differ. Settings are invented.
 *
 * @param level how far the pupils have come
 * @param seed what the sheet was drawn with
 * @param exercises in their order
 */
public record ProblemSheet(Level level, long seed, List<Exercise> exercises) {

    private static final int MOST = 200;

    private static final String CAUTION =
            "These are exercises in arithmetic. Before anything is weighed into a tank, read the cautions of its compound; for drinking water, "
                    + "softeners and their plumbing local codes and licensed practice decide.";

    /**
     * Copies the list.
     *
     * @param level see the record
     * @param seed see the record
     * @param exercises see the record
     */
    public ProblemSheet {
        Objects.requireNonNull(level, "level");
        exercises = List.copyOf(exercises);
    }

    /**
     * Draws a sheet.
     *
     * @param level how far the pupils have come
     * @param seed any number
     * @param count how many exercises; 1 to 200; a longer sheet of a seed starts with the shorter one
     * @return the sheet
     * @throws IllegalArgumentException if the count is out of range
     */
    public static ProblemSheet of(Level level, long seed, int count) {
        Objects.requireNonNull(level, "level");
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException("number of exercises must be from 1 to " + MOST + ", but was " + count);
        }
        Dice dice = new Dice(seed);
        List<Exercise> exercises = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            exercises.add(
                    switch (level) {
                        case UNITS -> UnitExercises.next(dice);
                        case CHARGES -> ChargeExercises.next(dice);
                        case TREATMENT -> TreatmentExercises.next(dice);
                    });
        }
        return new ProblemSheet(level, seed, exercises);
    }

    /**
     * Returns the questions as plain text.
     *
     * @return lines without a trailing line end
     */
    public String questionsToText() {
        return sheet(title(), "", Exercise::question);
    }

    /**
     * Returns the questions with their worked answers as plain text.
     *
     * @return lines without a trailing line end
     */
    public String answersToText() {
        return sheet(
                title() + ", with answers",
                "",
                exercise -> exercise.question() + "\n\n"
                        + indented(exercise.solution().toText()));
    }

    /**
     * Returns the questions as Markdown.
     *
     * @return lines without a trailing line end
     */
    public String questionsToMarkdown() {
        return sheet("# " + title(), "## Exercise ", Exercise::question);
    }

    /**
     * Returns the questions with their worked answers as Markdown with formulas between dollar signs.
     *
     * @return lines without a trailing line end
     */
    public String answersToMarkdown() {
        return sheet(
                "# " + title() + ", with answers",
                "## Exercise ",
                exercise -> exercise.question() + "\n\n" + exercise.solution().toMarkdown());
    }

    private String title() {
        return "Problem sheet " + seed + ", level " + level.number() + " of 3: " + level.title();
    }

    private String sheet(String title, String heading, Function<Exercise, String> shown) {
        StringBuilder text = new StringBuilder(title);
        if (level == Level.TREATMENT) {
            text.append("\n\n").append(CAUTION);
        }
        int number = 1;
        for (Exercise exercise : exercises) {
            text.append("\n\n").append(heading).append(number);
            text.append(heading.isEmpty() ? ". " : "\n\n").append(shown.apply(exercise));
            number++;
        }
        return text.toString();
    }

    private static String indented(String text) {
        return text.lines()
                .map(line -> line.isEmpty() ? line : "   " + line)
                .reduce((a, b) -> a + "\n" + b)
                .orElse("");
    }
}
