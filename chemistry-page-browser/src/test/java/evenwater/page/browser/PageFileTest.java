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
    void aMissingBrowserIsNamedWithWhatToInstall() {
        IllegalStateException e = assertThrows(IllegalStateException.class, () -> Chromium.program("no-such-program"));
        assertEquals(
                "the test of the live page needs the programs chromium and chromedriver of one version, but no-such-program is not on the "
                        + "path: install both (on Debian the packages chromium and chromium-driver), or say where it is with "
                        + "-Dno-such-program=FILE",
                e.getMessage());
    }

    @Test
    void theAssemblyAsksForTwoFiles() {
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> PageAssembly.main(new String[] {"one"}));
        assertEquals("two files are expected, the program and the page, but there were 1", e.getMessage());
    }
}
