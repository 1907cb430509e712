package evenwater.examples.household;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;

/** Runs the main job from the command line: {@code [options] [report.csv]}. */
public final class Main {

    private Main() {}

    /**
     * Prints the report of a household.
     *
     * @param args options and at most one file; see {@code --help}
     */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int exitCode = HouseholdCommand.run(out, err, args);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }
}
