package evenwater.firmware;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The translated valve and pump beside the kernel's own on the JVM: each answer, each number of the state, each saved block. */
class ControlReplayTest {

    private static final int LIVES = 40;
    private static final int EVENTS = 300;
    private static final Replay REPLAY = new Replay();

    @BeforeAll
    static void playOnTheJvm() {
        for (int seed = 0; seed < LIVES; seed++) {
            new ValvePlayer(seed, REPLAY).live(EVENTS);
            new PumpPlayer(seed, REPLAY).live(EVENTS);
        }
    }

    @Test
    void thereAreThousandsOfEvents() {
        assertTrue(REPLAY.size() > 20_000, () -> REPLAY.size() + " events");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-O2", "-O3", "-O0 -fsanitize=undefined -fno-sanitize-recover=all"})
    void gccGivesTheJvmsNumbersToTheLastBit(String flags) {
        Compiler.assumeHere("gcc");
        REPLAY.assertSame(driver("gcc", flags));
    }

    @Test
    void clangGivesTheJvmsNumbersToTheLastBit() {
        Compiler.assumeHere("clang");
        REPLAY.assertSame(driver("clang", "-O2"));
    }

    private static Path driver(String compiler, String flags) {
        return Compiler.compile(
                compiler,
                List.of(flags.split(" ")),
                "control-" + compiler + flags.replaceAll("[^A-Za-z0-9]+", "-"),
                Places.MODULE.resolve("src/test/c/control_driver.c"),
                Places.C.resolve("ew_control.c"));
    }
}
