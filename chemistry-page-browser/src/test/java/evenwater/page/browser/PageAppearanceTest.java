package evenwater.page.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;

/** How the page looks and what a screen reader finds, in the sizes and colours that people use. */
class PageAppearanceTest {

    private Chromium chromium;

    @BeforeEach
    void start() {
        chromium = Chromium.withPage();
    }

    @AfterEach
    void stop() {
        chromium.close();
    }

    private void showProblems() {
        chromium.element("#softening-raw").sendKeys(Keys.chord(Keys.CONTROL, "a"), "7,3", Keys.ENTER);
        chromium.element("#carbon-dioxide-ph").sendKeys(Keys.chord(Keys.CONTROL, "a"), "15", Keys.ENTER);
    }

    /** Rules of WCAG 2.2 to level AA and good practice. */
    private void assertAccessible(String where) throws IOException {
        try (InputStream axe = PageAppearanceTest.class.getResourceAsStream("/axe.min.js")) {
            chromium.script(new String(axe.readAllBytes(), StandardCharsets.UTF_8));
        }
        Object result = chromium.driver()
                .executeAsyncScript("const done = arguments[arguments.length - 1];"
                        + "axe.run().then((found) => done({passes: found.passes.length, violations: found.violations"
                        + ".map((rule) => rule.id + ': ' + rule.nodes.map((node) => node.target.join(' ')).join(', '))}))"
                        + ".catch((error) => done({passes: 0, violations: [String(error)]}));");
        Map<?, ?> found = (Map<?, ?>) result;
        assertEquals(List.of(), found.get("violations"), where);
        assertTrue((Long) found.get("passes") >= 25, where + ": rules passed " + found.get("passes"));
    }

    @ParameterizedTest
    @CsvSource({"light, 1280", "light, 320", "dark, 1280", "dark, 320"})
    void axeFindsNothingToMend(String scheme, int width) throws IOException {
        chromium.prefer("prefers-color-scheme", scheme);
        chromium.width(width, 1);
        assertAccessible(scheme + " " + width);
        picture(scheme + "-" + width);
        showProblems();
        assertAccessible(scheme + " " + width + " with problems");
        picture(scheme + "-" + width + "-problems");
    }

    @Test
    void darkIsDarkAndLightIsLight() {
        chromium.prefer("prefers-color-scheme", "light");
        Object light = background();
        chromium.prefer("prefers-color-scheme", "dark");
        assertNotEquals(light, background());
    }

    private Object background() {
        return chromium.script("return getComputedStyle(document.body).backgroundColor;");
    }

    @ParameterizedTest
    @CsvSource({"1280, 1", "640, 2", "400, 1", "320, 1", "320, 4"
    }) // 640 and 320 pixels are a window of 1280 at 200 % and 400 %
    void nothingMustBeScrolledSideways(int width, double scale) {
        chromium.width(width, scale);
        showProblems();
        assertEquals((long) width, chromium.script("return window.innerWidth;"));
        assertEquals(
                chromium.script("return document.documentElement.clientWidth;"), // less than the window by a scroll bar
                chromium.script("return document.documentElement.scrollWidth;"));
        Object outside = chromium.script("return [...document.querySelectorAll('body *:not(.skip):not(thead th)')]"
                + ".filter((each) => each.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)"
                + ".map((each) => each.tagName + '#' + each.id + '.' + each.className);");
        assertEquals(List.of(), outside);
    }

    @ParameterizedTest
    @ValueSource(strings = {"input", "select", "button"})
    void whatIsTouchedIsAtLeast44PixelsHigh(String tag) { // WCAG 2.2, 2.5.5 Target Size (Enhanced)
        chromium.width(320, 1);
        Object small = chromium.script(
                "return [...document.querySelectorAll(arguments[0])]"
                        + ".filter((each) => each.offsetParent !== null && each.getBoundingClientRect().height < 44).map((each) => each.id);",
                tag);
        assertEquals(List.of(), small);
    }

    @Test
    void motionIsLeftOutWhereItIsNotWanted() {
        chromium.prefer("prefers-reduced-motion", "no-preference");
        assertEquals("smooth", scrolling());
        chromium.prefer("prefers-reduced-motion", "reduce");
        assertEquals("auto", scrolling());
    }

    private Object scrolling() {
        return chromium.script("return getComputedStyle(document.documentElement).scrollBehavior;");
    }

    @Test
    void thePrintedPageLeavesOutWhatPaperCannotDo() throws IOException {
        chromium.driver().executeCdpCommand("Emulation.setEmulatedMedia", Map.of("media", "print"));
        assertFalse(chromium.element("nav").isDisplayed());
        assertFalse(chromium.element("button").isDisplayed());
        assertTrue(chromium.element(".answer").isDisplayed());
        Map<String, Object> pdf = chromium.driver().executeCdpCommand("Page.printToPDF", Map.of());
        byte[] printed = Base64.getDecoder().decode((String) pdf.get("data"));
        assertTrue(printed.length > 10_000, "bytes of the print: " + printed.length);
        Files.write(pictures().resolve("print.pdf"), printed);
    }

    @Test
    void theBrowserHasNothingToComplainOfAndLoadsNothing() {
        Object loaded = chromium.script("return performance.getEntriesByType('resource').map((each) => each.name);");
        assertEquals(List.of(), loaded);
        List<String> complaints = chromium.driver().manage().logs().get("browser").getAll().stream()
                .map(Object::toString)
                .toList();
        assertEquals(List.of(), complaints);
        assertEquals(
                0L, chromium.script("return localStorage.length + sessionStorage.length + document.cookie.length;"));
    }

    /** For people to look at; {@code target/pictures}. */
    private void picture(String name) throws IOException {
        Map<String, Object> picture =
                chromium.driver().executeCdpCommand("Page.captureScreenshot", Map.of("captureBeyondViewport", true));
        Files.write(pictures().resolve(name + ".png"), Base64.getDecoder().decode((String) picture.get("data")));
    }

    private static Path pictures() throws IOException {
        return Files.createDirectories(Chromium.page().resolveSibling("pictures"));
    }
}
