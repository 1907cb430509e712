package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Compilers of C that the machine has; a test that needs one which is missing is skipped, and says so. */
final class Compiler {

    /** What the library promises to be free of warnings under. */
    static final List<String> STRICT = List.of("-std=c99", "-Wall", "-Wextra", "-Werror", "-pedantic");

    private static final Path OUT = Places.MODULE.resolve("target/c");

    private Compiler() {}

    static boolean isHere(String compiler) {
        try {
            return new ProcessBuilder(compiler, "--version")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    static void assumeHere(String compiler) {
        assumeTrue(isHere(compiler), compiler + " is not on this machine: the generated C was not compiled with it");
    }

    /** Compiles and returns the file made. */
    static Path compile(String compiler, List<String> flags, String name, Path... sources) {
        try {
            Files.createDirectories(OUT);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Path made = OUT.resolve(name);
        List<String> command = new ArrayList<>(List.of(compiler));
        command.addAll(STRICT);
        command.addAll(flags);
        command.add("-o");
        command.add(made.toString());
        for (Path source : sources) {
            command.add(source.toString());
        }
        assertEquals("", text(run(new byte[0], command)), () -> String.join(" ", command));
        return made;
    }

    static String text(byte[] output) {
        return new String(output, StandardCharsets.UTF_8);
    }

    /** Runs a command with an input and returns its output, errors with it; the command must end with 0. */
    static byte[] run(byte[] input, List<String> command) {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            Thread writer = new Thread(() -> {
                try (var out = process.getOutputStream()) {
                    out.write(input);
                } catch (IOException e) {
                    // the process has ended before it read everything: its exit code tells why
                }
            });
            writer.start();
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            try (InputStream in = process.getInputStream()) {
                in.transferTo(all);
            }
            writer.join();
            int exit = process.waitFor();
            assertEquals(0, exit, () -> String.join(" ", command) + ": " + tail(all.toByteArray()));
            return all.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static String tail(byte[] output) {
        String text = text(output);
        return text.substring(Math.max(0, text.length() - 4000));
    }
}
