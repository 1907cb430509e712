package evenwater.examples.lessons;

import evenwater.lessons.Level;
import evenwater.lessons.ProblemSheet;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints a problem sheet, with or without its worked answers. */
@Command(
        name = "problem-sheet",
        description = "A sheet of exercises with worked answers; the same seed gives the same sheet.",
        sortOptions = false,
        usageHelpAutoWidth = true)
public final class PrintProblemSheet {

    private static final int UNUSABLE = 2;

    @Option(names = "--level", paramLabel = "1|2|3", description = "1 units, 2 charges, 3 treatment.")
    private int level = 1;

    @Option(names = "--seed", paramLabel = "number", description = "Which sheet.")
    private long seed = 1;

    @Option(names = "--count", paramLabel = "number", description = "How many exercises, 1 to 200.")
    private int count = 10;

    @Option(names = "--answers", description = "With the worked answers.")
    private boolean answers;

    @Option(names = "--markdown", description = "As Markdown with formulas instead of plain text.")
    private boolean markdown;

    @Option(names = "--help", usageHelp = true, description = "Show this help.")
    private boolean help;

    private PrintProblemSheet() {}

    /**
     * Prints a sheet.
     *
     * @param args options; see {@code --help}
     */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int exitCode = run(out, err, args);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }

    /** Answers 0 with a sheet, or 2 with one line of error and nothing else printed. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        PrintProblemSheet command = new PrintProblemSheet();
        CommandLine parser = new CommandLine(command).setExpandAtFiles(false);
        try {
            parser.parseArgs(args);
            if (command.help) {
                parser.usage(out);
            } else {
                out.println(command.sheet());
            }
            return 0;
        } catch (CommandLine.PicocliException | IllegalArgumentException e) {
            err.println(String.valueOf(e.getMessage()).replaceAll("\\s*\\R\\s*", " ") + " (see --help)");
            return UNUSABLE;
        }
    }

    private String sheet() {
        ProblemSheet sheet = ProblemSheet.of(Level.of(level), seed, count);
        if (markdown) {
            return answers ? sheet.answersToMarkdown() : sheet.questionsToMarkdown();
        }
        return answers ? sheet.answersToText() : sheet.questionsToText();
    }
}
