package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The figures of {@code docs/kit.md} are those of this run; {@code -Dkit.page.write=true} writes them. */
class KitPageTest {

    private static final String BEGIN = "<!-- figures: written by KitPageTest, do not edit by hand -->\n\n";
    private static final String END = "<!-- end of figures -->";

    @Test
    void theFiguresOfThePageAreThoseOfThisRun() throws IOException {
        Path file = Path.of(System.getProperty("basedir", ""), "..", "docs", "kit.md");
        String page = Files.readString(file).replace("\r\n", "\n");
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END, from);
        String figures = KitPage.render();
        if (Boolean.getBoolean("kit.page.write")) {
            Files.writeString(file, page.substring(0, from) + figures + page.substring(to));
            return;
        }
        assertEquals(
                figures,
                page.substring(from, to),
                "docs/kit.md differs from this run; if the change is meant, write it with -Dkit.page.write=true");
    }
}
