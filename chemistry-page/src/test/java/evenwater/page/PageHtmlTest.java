package evenwater.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.verdict.Caution;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class PageHtmlTest {

    private static final String PAGE = PageHtml.with("var s = '</script>';");

    private static List<String> all(String pattern) {
        return Pattern.compile(pattern)
                .matcher(PAGE)
                .results()
                .map(result -> result.group(1))
                .toList();
    }

    @Test
    void everyNameInThePageIsUnique() {
        List<String> ids = all(" id=\"([^\"]+)\"");
        assertEquals(ids.size(), new HashSet<>(ids).size(), ids.toString());
        assertTrue(ids.size() > 60, "ids of 4 parts"); // so that the pattern does find them
    }

    @Test
    void everyControlOfEveryPartIsThereAndHasALabel() {
        Set<String> labelled = Set.copyOf(all("<label for=\"([^\"]+)\""));
        Set<String> controls = LivePage.PARTS.stream()
                .flatMap(part -> part.controls().stream().map(control -> part.id() + "-" + control.id()))
                .collect(Collectors.toSet());
        assertEquals(controls, labelled);
        Set<String> present = Set.copyOf(all("<(?:input type=\"text\"|select) id=\"([^\"]+)\""));
        assertTrue(present.containsAll(controls));
        Set<String> unnamed = new HashSet<>(present);
        unnamed.removeAll(controls);
        Set<String> named = Set.copyOf(all("<select id=\"([^\"]+)\" name=\"[^\"]+\" aria-label=\"Unit of [^\"]+\""));
        assertEquals(named, unnamed); // the units, named by their purpose
    }

    @Test
    void whatDescribesOrLabelsSomethingIsThere() {
        Set<String> ids = Set.copyOf(all(" id=\"([^\"]+)\""));
        for (String references : all(" aria-(?:describedby|labelledby)=\"([^\"]+)\"")) {
            for (String reference : references.split(" ", -1)) {
                assertTrue(ids.contains(reference), reference);
            }
        }
        for (String target : all(" href=\"#([^\"]+)\"")) {
            assertTrue(ids.contains(target), target);
        }
    }

    @Test
    void nothingIsLoadedFromOutside() {
        assertFalse(PAGE.contains("http:"), "http:");
        assertFalse(PAGE.contains("https:"), "https:");
        assertFalse(PAGE.contains(" src="), "src");
        assertFalse(PAGE.contains("<link"), "link");
        assertFalse(PAGE.contains("url("), "url(");
        assertFalse(PAGE.contains("@import"), "@import");
        assertTrue(PAGE.contains("default-src 'none'"), "the browser refuses what would be loaded");
    }

    @Test
    void aScriptCannotEndEarly() {
        assertEquals(2, all("(<script>)").size());
        assertEquals(2, all("(</script>)").size());
        assertTrue(PAGE.contains("var s = '<\\/script>';"));
        IllegalArgumentException e =
                assertThrows(IllegalArgumentException.class, () -> PageHtml.with("if (a <!--b) {}"));
        assertEquals("a script inside HTML must not contain '<!--'", e.getMessage());
    }

    @Test
    void theCautionsOfTheCoreStandBesideThePartsThatNeedThem() {
        for (Part part : LivePage.PARTS) {
            String section = PAGE.substring(PAGE.indexOf("<section class=\"part\" id=\"" + part.id()), PAGE.length());
            section = section.substring(0, section.indexOf("</section>"));
            for (Caution caution : PageHtml.cautions(part)) {
                assertTrue(section.contains(Html.escaped(caution.text())), caution.text());
            }
        }
        assertTrue(PAGE.contains("Low-sodium diet"));
        assertTrue(PAGE.contains("suffocates"));
        assertTrue(PAGE.contains("Local codes"));
    }

    @Test
    void textOfHtmlIsEscaped() {
        assertEquals("a &lt;b&gt; &amp; &quot;c&quot;", Html.escaped("a <b> & \"c\""));
    }
}
