package evenwater.examples.startup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The answers whose time is taken. */
class FirstAnswerTest {

    private static String printed(String which) {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
            FirstAnswer.main(new String[] {which});
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8).strip();
    }

    @ParameterizedTest
    @CsvSource({
        "nothing, 22, 0",
        "conversion, 21.1003, 1e-4", // 22 gpg · 17.118 mg/L CaCO3 / 17.848 mg/L CaCO3
        "softened, 4, 1e-12", // 2 · (1.5 + 0.5) mmol/L of sodium for the hardness
        "speciation, 7.5, 0.1", // pK1 6.35 − 0.03 + lg(3 / 0.2), by hand
    })
    void oneNumberIsPrinted(String which, double expected, double tolerance) {
        assertEquals(expected, Double.parseDouble(printed(which)), tolerance);
    }

    @Test
    void anUnknownAnswerIsRefused() {
        assertEquals(
                "answer must be nothing, conversion, softened, speciation or household, but was 'tea'",
                assertThrowsExactly(IllegalArgumentException.class, () -> printed("tea"))
                        .getMessage());
    }
}
