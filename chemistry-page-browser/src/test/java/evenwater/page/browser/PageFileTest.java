package evenwater.page.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;

/** The file as it is handed out. */
class PageFileTest {

    /** Own rule: a page for a classroom's phones; docs/live-page.md states what it is. */
    private static final int MOST_BYTES = 720_000;

    private static final int MOST_BYTES_GZIPPED = 235_000;

    @Test
    void thePageIsNotLargerThanPromised() throws IOException {
        byte[] page = Files.readAllBytes(Chromium.page());
        int gzipped = PageAssembly.gzipped(page);
        System.out.println("live page: " + page.length + " bytes, " + gzipped + " bytes with gzip");
        assertTrue(page.length <= MOST_BYTES, "bytes: " + page.length);
        assertTrue(gzipped <= MOST_BYTES_GZIPPED, "bytes with gzip: " + gzipped);
    }

    @Test
    void theAssemblyAsksForTwoFiles() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> PageAssembly.main(new String[] {"one"}));
        assertEquals("two files are expected, the program and the page, but there were 1", e.getMessage());
    }
}
