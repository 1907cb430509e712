package evenwater.page.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.page.LivePage;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The page without a mouse. */
class PageKeyboardTest {

    private static Chromium chromium;

    @BeforeAll
    static void start() {
        chromium = Chromium.withPage();
    }

    @AfterAll
    static void stop() {
        chromium.close();
    }

    @BeforeEach
    void openAnew() {
        chromium.open();
    }

    private static void press(CharSequence... keys) {
        new Actions(chromium.driver()).sendKeys(keys).perform();
    }

    private static WebElement focused() {
        return chromium.driver().switchTo().activeElement();
    }

    /** What Tab visits, in the order of the page: link texts, names of controls, the words of buttons. */
    private static List<String> walk(int steps) {
        List<String> visited = new ArrayList<>();
        for (int i = 0; i < steps; i++) {
            press(Keys.TAB);
            visited.add((String) chromium.script("const a = document.activeElement;"
                    + "return a.tagName === 'BODY' ? '' : a.id || a.getAttribute('href') || a.textContent;"));
        }
        return visited;
    }

    @Test
    void tabVisitsWhatCanBeUsedFromTopToBottomAndSkipsWhatIsHidden() {
        List<String> expected = new ArrayList<>(List.of("#main"));
        LivePage.parts().forEach(part -> expected.add("#" + part));
        expected.addAll(
                List.of("scales-hardness", "scales-hardness-unit", "scales-alkalinity", "scales-alkalinity-unit"));
        expected.addAll(List.of("scales-hardness-to", "scales-alkalinity-to", "Work it out"));
        expected.addAll(List.of("softening-stated", "softening-raw", "softening-raw-unit", "softening-alkalinity"));
        expected.addAll(List.of("softening-alkalinity-unit", "softening-sodium", "softening-sodium-unit"));
        expected.addAll(List.of("softening-leakage", "softening-leakage-unit", "softening-bypass", "Work it out"));
        expected.addAll(List.of("blend-hardness", "blend-hardness-unit"));
        assertEquals(expected, walk(expected.size()));
    }

    @Test
    void theFocusCanBeSeenOnEverythingThatTabVisits() {
        for (int i = 0; i < 25; i++) {
            press(Keys.TAB);
            String outline = (String) chromium.script("const s = getComputedStyle(document.activeElement);"
                    + "return s.outlineStyle + ' ' + parseFloat(s.outlineWidth);");
            assertEquals("solid 3", outline, focused().getAttribute("id"));
        }
    }

    @Test
    void theSkipLinkLeadsPastTheNavigation() {
        press(Keys.TAB);
        assertEquals("Skip to the questions", focused().getText());
        assertTrue(focused().getLocation().getY() >= 0, "the link comes into view with the focus");
        press(Keys.ENTER);
        assertEquals("main", focused().getAttribute("id"));
        assertEquals(List.of("scales-hardness"), walk(1));
    }

    @Test
    void aQuestionIsAskedAndAnsweredByKeysAlone() {
        walk(6); // skip link, four questions, the first field
        new Actions(chromium.driver())
                .keyDown(Keys.CONTROL)
                .sendKeys("a")
                .keyUp(Keys.CONTROL)
                .sendKeys("10")
                .perform();
        press(Keys.TAB, Keys.HOME); // the first unit
        press(Keys.TAB, Keys.TAB, Keys.TAB, Keys.TAB, Keys.TAB);
        assertEquals("Work it out", focused().getText());
        press(Keys.SPACE);
        Map<String, String> entries = Map.of("hardness", "10", "hardness-unit", "mmol/L");
        ShownAnswer.of(chromium, "scales").assertSameAs(LivePage.answer("scales", entries), "scales");
    }

    @Test
    void enterInAWrongFormMovesToTheFirstFieldThatIsWrong() {
        chromium.element("#blend-other-sodium").sendKeys(Keys.chord(Keys.CONTROL, "a"), "much");
        chromium.element("#blend-alkalinity").sendKeys(Keys.chord(Keys.CONTROL, "a"), "x");
        chromium.element("#blend-share").sendKeys(Keys.ENTER);
        assertEquals("blend-alkalinity", focused().getAttribute("id"));
    }

    @Test
    void anAnswerFollowsShortlyAfterTheTypingStopsWithoutEnter() {
        chromium.element("#scales-hardness").sendKeys(Keys.chord(Keys.CONTROL, "a"), "5");
        String expected = LivePage.answer("scales", Map.of("hardness", "5")).summary();
        chromium.waitFor(
                Duration.ofSeconds(10),
                () -> ShownAnswer.of(chromium, "scales").summary().equals(expected));
        ShownAnswer.of(chromium, "scales").assertSameAs(LivePage.answer("scales", Map.of("hardness", "5")), "scales");
    }

    @Test
    void anAnswerIsToldInALiveRegionAndASameOneIsNotToldAgain() {
        WebElement summary = chromium.element("[data-answer=scales] .summary");
        assertEquals("status", summary.getAttribute("role"));
        assertEquals("polite", summary.getAttribute("aria-live"));
        chromium.script(
                "window.told = 0; new MutationObserver(() => { window.told += 1; })"
                        + ".observe(document.querySelector('[data-answer=scales] .summary'), {childList: true, characterData: true, subtree: true});");
        chromium.element("#scales-hardness").sendKeys(Keys.ENTER);
        chromium.element("#scales-hardness").sendKeys(Keys.ENTER);
        assertEquals(0L, chromium.script("return window.told;"));
        chromium.element("#scales-hardness").sendKeys(Keys.chord(Keys.CONTROL, "a"), "5", Keys.ENTER);
        assertEquals(1L, chromium.script("return window.told;"));
    }
}
