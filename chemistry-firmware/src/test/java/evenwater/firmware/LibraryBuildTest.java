package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the library needs of a machine: a compiler of C99 and nothing else. */
class LibraryBuildTest {

    /** A compiler may make calls of these four out of loops and copies, also without a library: the standard lets it, for freestanding programs too. */
    private static final Set<String> OF_THE_COMPILER = Set.of("memcpy", "memmove", "memset", "memcmp");

    /** Beyond what is promised: warnings that projects of firmware like to have. */
    private static final List<String> STRICTER =
            List.of("-Wconversion", "-Wsign-conversion", "-Wshadow", "-Wcast-qual", "-Wmissing-prototypes", "-Wundef");

    @ParameterizedTest
    @ValueSource(strings = {"ew_control.c", "ew_double.c", "ew_fixed.c", "ew_units.c"})
    void anObjectNeedsNoLibraryAndKeepsNothingThatChanges(String source) {
        Compiler.assumeHere("gcc");
        assumeTrue(Compiler.isHere("nm"), "nm is not on this machine: the symbols of the objects were not looked at");
        for (String level : List.of("-O2", "-Os")) {
            Path object = Compiler.compile("gcc", flags(level), source + level + ".o", Places.C.resolve(source));
            for (String line : Compiler.text(Compiler.run(new byte[0], List.of("nm", object.toString())))
                    .lines()
                    .toList()) {
                String[] parts = line.strip().split("\\s+");
                String kind = parts[parts.length - 2];
                String name = parts[parts.length - 1];
                boolean isNeeded = kind.equals("U");
                assertTrue(
                        !isNeeded || OF_THE_COMPILER.contains(name) || name.equals("ew_natural_water_factors"),
                        () -> source + " needs " + name);
                assertTrue(
                        Set.of("U", "T", "t", "R", "r").contains(kind), () -> source + " keeps " + name + ": " + kind);
                assertTrue(
                        isNeeded || name.startsWith("ew_") || name.startsWith("."),
                        () -> source + " has a name of its own: " + name);
            }
        }
    }

    private static List<String> flags(String level) {
        List<String> flags = new ArrayList<>(List.of(level, "-ffreestanding", "-c"));
        flags.addAll(STRICTER);
        return flags;
    }

    @Test
    void nothingIsIncludedButWholeNumbersAndOwnHeaders() throws IOException {
        try (Stream<Path> files = Files.list(Places.C)) {
            for (Path file : files.filter(path -> path.getFileName().toString().startsWith("ew_"))
                    .toList()) {
                Set<String> included = Files.readAllLines(file, StandardCharsets.US_ASCII).stream()
                        .filter(line -> line.startsWith("#include") && !line.contains("\"ew_"))
                        .collect(Collectors.toCollection(TreeSet::new));
                assertTrue(Set.of("#include <stdint.h>").containsAll(included), () -> file + ": " + included);
            }
        }
    }

    @Test
    void headersCanBeReadByCompilersOfCPlusPlus() {
        Compiler.assumeHere("g++");
        for (String header : List.of("ew_control.h", "ew_double.h", "ew_fixed.h")) {
            assertEquals(
                    "",
                    Compiler.text(Compiler.run(
                            new byte[0],
                            List.of(
                                    "g++",
                                    "-std=c++11",
                                    "-Wall",
                                    "-Wextra",
                                    "-Werror",
                                    "-pedantic",
                                    "-fsyntax-only",
                                    "-x",
                                    "c++",
                                    Places.C.resolve(header).toString()))));
        }
    }

    /** Figures of the library: hardness, share and sodium by {@code Hardness} and {@code Softener}; the rest worked by hand. */
    @Test
    void theExampleRuns() {
        Compiler.assumeHere("gcc");
        Path example = Compiler.compile(
                "gcc",
                List.of("-O2"),
                "example",
                Places.C.resolve("example.c"),
                Places.C.resolve("ew_control.c"),
                Places.C.resolve("ew_fixed.c"),
                Places.C.resolve("ew_units.c"));
        assertEquals("""
                hardness 19.182 degrees
                raw water for 6 degrees 31.279 %
                sodium added 108.085 mg/L
                regeneration after 122 hours
                restored as saved: yes
                pump makes 6000 steps
                dosed 6000 uL
                """, Compiler.text(Compiler.run(new byte[0], List.of(example.toString()))));
    }

    @Test
    void nullPointersAreRefused() {
        Compiler.assumeHere("gcc");
        Path program = Compiler.compile(
                "gcc",
                List.of("-O2"),
                "nulls",
                Places.MODULE.resolve("src/test/c/nulls.c"),
                Places.C.resolve("ew_control.c"),
                Places.C.resolve("ew_double.c"),
                Places.C.resolve("ew_fixed.c"),
                Places.C.resolve("ew_units.c"));
        assertEquals("refused 30 of 30\n", Compiler.text(Compiler.run(new byte[0], List.of(program.toString()))));
    }

    /** What the header says of structs that no function made. */
    @Test
    void structsOfRandomBytesLeadToNoUndefinedBehaviour() {
        Compiler.assumeHere("gcc");
        Path program = Compiler.compile(
                "gcc",
                List.of("-O1", "-fsanitize=undefined", "-fno-sanitize-recover=all"),
                "garbage",
                Places.MODULE.resolve("src/test/c/garbage.c"),
                Places.C.resolve("ew_control.c"));
        assertEquals("done\n", Compiler.text(Compiler.run(new byte[0], List.of(program.toString()))));
    }

    /** Random lives that never reach a line prove nothing about it. */
    @Test
    void theRandomLivesReachNearlyEveryLineOfTheControllers() throws IOException {
        Compiler.assumeHere("gcc");
        assumeTrue(
                Compiler.isHere("gcov"), "gcov is not on this machine: the reach of the random lives was not measured");
        Path object = Compiler.compile(
                "gcc", List.of("-O0", "--coverage", "-c"), "reach.o", Places.C.resolve("ew_control.c"));
        Path notes = object.resolveSibling("reach.gcda");
        Files.deleteIfExists(notes);
        Path caller = Compiler.compile(
                "gcc", List.of("-O0", "-c"), "reach-driver.o", Places.MODULE.resolve("src/test/c/control_driver.c"));
        Path driver = Compiler.compile("gcc", List.of("--coverage"), "reach", caller, object);
        Replay replay = new Replay();
        for (int seed = 0; seed < 40; seed++) {
            new ValvePlayer(seed, replay).live(300);
            new PumpPlayer(seed, replay).live(300);
        }
        replay.assertSame(driver);
        List<String> lines = Compiler.text(Compiler.run(new byte[0], List.of("gcov", "-t", notes.toString())))
                .lines()
                .filter(line -> line.matches("\\s*([0-9]+\\*?|#####):.*"))
                .toList();
        List<String> unreached = lines.stream()
                .filter(line -> line.contains("#####"))
                .filter(line ->
                        !line.contains("EW_NULL_POINTER") && !line.contains("EW_OUT_OF_RANGE")) // another test's
                .toList();
        assertTrue(lines.size() > 1000, () -> lines.size() + " lines");
        assertTrue(unreached.size() < lines.size() / 50, () -> String.join("\n", unreached));
    }
}
