package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Any bytes are a report or one line of refusal. */
class ReportFileFuzzTest {

    private static final int FILES = Integer.getInteger("fuzz.texts", 20_000);
    private static final String[] PIECES = {
        "analyte,value,unit,as\n",
        "analyte;value;unit\n",
        "\"",
        "\"\"",
        ",",
        ";",
        "\t",
        "\r",
        "\n",
        "\r\n",
        "#",
        "hardness",
        "22",
        "1,250",
        "3,2",
        "gr/gal",
        "CaCO3",
        "°dH",
        "<2",
        "ND",
        "\uFEFF",
        "\u0000",
        "\uD83D",
        "é",
        " ",
        "sodium,5,mg/L,\n",
        "\\",
        "'",
        "pH;7;\n"
    };

    @Test
    void readingNeverFailsInAnotherWay() {
        Random random = new Random(20_261_125);
        int read = 0;
        for (int i = 0; i < FILES; i++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? PIECES[random.nextInt(2)] : "");
            for (int n = random.nextInt(20); n > 0; n--) {
                text.append(PIECES[random.nextInt(PIECES.length)]);
            }
            byte[] bytes = text.toString()
                    .getBytes(random.nextInt(9) == 0 ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_8);
            try {
                ReportFile.of("fuzz.csv", bytes);
                read++;
            } catch (UsageException e) {
                assertEquals(1, e.getMessage().lines().count(), e::getMessage);
                assertTrue(e.getMessage().startsWith("fuzz.csv:"), e::getMessage);
            }
        }
        assertTrue(read > FILES / 10, "too few files were read for the test to mean anything: " + read);
    }
}
