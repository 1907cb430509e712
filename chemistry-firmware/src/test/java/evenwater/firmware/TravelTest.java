package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import evenwater.firmware.travel.KernelProgram;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The kernel as it is, translated to C as a whole and compiled for this machine, beside the JVM. */
class TravelTest {

    /**
     * The solver stops when all balances hold to 1e-12 of themselves; exponentials and logarithms of two libraries differ in their last digit, so that it
     * may stop one of its steps, or some digits, elsewhere.
     */
    private static final double OF_THE_SOLVER = 1e-10;

    private static final Path GENERATED = Places.MODULE.resolve("target/travel");

    @Test
    void theJvmGivesNumbersToCompareWith() {
        List<String> lines = KernelProgram.lines();
        assertTrue(lines.size() > 7000, () -> lines.size() + " lines");
        assertTrue(lines.stream().allMatch(line -> line.matches("[wd] -?\\d+")));
        assertEquals(lines, KernelProgram.lines());
    }

    @Test
    void theTranslatedProgramGivesTheSameNumbers() {
        assumeTrue(
                Boolean.getBoolean("firmware.travel"),
                "the kernel was not translated: that takes the profile travel, mvn -Ptravel -pl chemistry-firmware -am verify");
        Compiler.assumeHere("gcc");
        Path program = GENERATED.resolve("kernel");
        // not under the library's strict flags: this C is not made to be read
        Compiler.run(
                new byte[0],
                List.of(
                        "gcc",
                        "-O2",
                        "-fwrapv", // the translator counts on integers that wrap around
                        "-w",
                        "-o",
                        program.toString(),
                        GENERATED.resolve("all.c").toString(),
                        "-lm",
                        "-lpthread"));
        List<String> printed = Compiler.text(Compiler.run(new byte[0], List.of(program.toString())))
                .lines()
                .toList();
        assertSame(KernelProgram.lines(), printed);
    }

    private static void assertSame(List<String> expected, List<String> printed) {
        assertEquals(expected.size(), printed.size());
        List<String> differing = new ArrayList<>();
        double worst = 0;
        for (int i = 0; i < expected.size(); i++) {
            double difference = difference(expected.get(i), printed.get(i));
            worst = Math.max(worst, difference);
            if (!(difference <= OF_THE_SOLVER)) {
                differing.add("line " + (i + 1) + ": " + expected.get(i) + ", but " + printed.get(i));
            }
        }
        System.out.println(expected.size() + " numbers, the largest relative difference is " + worst);
        assertEquals(List.of(), differing);
    }

    /** Of whole numbers none is allowed, of doubles it is relative. */
    private static double difference(String expected, String printed) {
        if (expected.equals(printed)) {
            return 0;
        }
        if (!expected.startsWith("d ") || !printed.startsWith("d ")) {
            return Double.POSITIVE_INFINITY;
        }
        double a = Double.longBitsToDouble(Long.parseLong(expected.substring(2)));
        double b = Double.longBitsToDouble(Long.parseLong(printed.substring(2)));
        return Math.abs(a - b) / Math.abs(a);
    }
}
