package evenwater.examples.household;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** One run of the main job: its exit code and what it printed. */
record Run(int exitCode, String out, String err) {

    static Run of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exitCode = HouseholdCommand.run(new PrintWriter(out), new PrintWriter(err, true), args);
        return new Run(exitCode, out.toString(), err.toString());
    }

    /** Runs on a file with this text. */
    static Run on(Path folder, String csv, String... options) {
        return on(folder, csv.getBytes(StandardCharsets.UTF_8), options);
    }

    static Run on(Path folder, String csv, Charset charset, String... options) {
        return on(folder, csv.getBytes(charset), options);
    }

    static Run on(Path folder, byte[] csv, String... options) {
        Path file = folder.resolve("report.csv");
        try {
            Files.write(file, csv);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String[] args = new String[options.length + 1];
        args[0] = file.toString();
        System.arraycopy(options, 0, args, 1, options.length);
        Run run = of(args);
        return new Run(
                run.exitCode,
                run.out.replace(file.toString(), "report.csv"),
                run.err.replace(file.toString(), "report.csv"));
    }
}
