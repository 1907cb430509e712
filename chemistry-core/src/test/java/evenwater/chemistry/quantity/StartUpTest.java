package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading, converting and printing in our own units starts as fast as it does because indriya stays asleep. */
class StartUpTest {

    private static final Pattern LOADED = Pattern.compile("([\\w.$]+)\\S* source: ");

    @TempDir
    private static Path directory;

    private static String output;
    private static List<String> loaded;

    @BeforeAll
    static void startFreshJvm() throws IOException, InterruptedException {
        Path log = directory.resolve("classes.log");
        Path printed = directory.resolve("printed.txt");
        String java = ProcessHandle.current()
                .info()
                .command()
                .orElse(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        Process process = new ProcessBuilder(
                        java,
                        "-Xshare:auto",
                        "-Dfile.encoding=UTF-8",
                        "-Dstdout.encoding=UTF-8",
                        "-Xlog:class+load:file=\"" + log + "\":none",
                        "-cp",
                        System.getProperty("java.class.path"),
                        OneConversion.class.getName())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        int exit = process.waitFor();
        output = Files.readString(printed, StandardCharsets.UTF_8);
        assertEquals(0, exit, output);
        try (Stream<String> lines = Files.lines(log, StandardCharsets.UTF_8)) {
            loaded = lines.map(LOADED::matcher)
                    .filter(Matcher::lookingAt)
                    .map(matcher -> matcher.group(1))
                    .toList();
        }
    }

    @Test
    void theProgramDoesItsJob() {
        assertEquals("22 gpg is 21.100302942653812 °dH", output.strip());
        assertTrue(loaded.contains(Hardness.class.getName()));
    }

    @Test
    void onlyTheShellOfAUnitIsLoaded() {
        TreeSet<String> indriya = new TreeSet<>();
        loaded.stream()
                .filter(name -> name.startsWith("tech.units.indriya"))
                .map(name -> name.replaceFirst("\\$\\$Lambda.*", "\\$\\$Lambda"))
                .forEach(indriya::add);
        // the unit that people hold and its base class, and what this one needs for its constant ONE; RationalNumber
        // only
        // because the verifier looks at a method of ours that returns one
        assertEquals(
                new TreeSet<>(List.of(
                        "tech.units.indriya.AbstractUnit",
                        "tech.units.indriya.function.RationalNumber",
                        "tech.units.indriya.internal.function.Lazy",
                        "tech.units.indriya.unit.ProductUnit",
                        "tech.units.indriya.unit.ProductUnit$$Lambda",
                        "tech.units.indriya.unit.ProductUnit$Element",
                        "tech.units.indriya.unit.TransformedUnit")),
                indriya);
    }

    @Test
    void calculusFormatAndQuantitiesStayAsleep() {
        for (String sleeper : List.of(
                "tech.units.indriya.format.",
                "tech.units.indriya.quantity.",
                "tech.units.indriya.spi.",
                "tech.units.indriya.function.Calculus",
                "tech.units.indriya.function.AbstractConverter",
                "tech.units.indriya.unit.Units")) {
            assertEquals(
                    List.of(),
                    loaded.stream().filter(name -> name.startsWith(sleeper)).toList());
        }
    }
}
