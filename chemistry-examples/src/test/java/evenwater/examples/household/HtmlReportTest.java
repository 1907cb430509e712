package evenwater.examples.household;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/** {@code --report} writes one page of HTML that says what the text says, with pictures, or leaves everything as it was. */
class HtmlReportTest {

    private static final Pattern PICTURE = Pattern.compile("<svg .*?</svg>", Pattern.DOTALL);

    @TempDir
    static Path bundled;

    private static String larchLane;
    private static String fernHollow;
    private static Run larchLaneRun;

    @TempDir
    Path folder;

    @BeforeAll
    static void write() throws IOException {
        larchLaneRun = Run.of("--report", bundled.resolve("larch-lane.html").toString());
        larchLane = Files.readString(bundled.resolve("larch-lane.html"));
        Run.of(
                "--bundled",
                "fern-hollow",
                "--report",
                bundled.resolve("fern-hollow.html").toString());
        fernHollow = Files.readString(bundled.resolve("fern-hollow.html"));
    }

    @Test
    void theTextIsPrintedAsWithoutIt() {
        assertEquals(BundledHouseholdTest.RUN, larchLaneRun);
    }

    @Test
    void nothingElseIsLeftInTheFolder() throws IOException {
        try (Stream<Path> files = Files.list(bundled)) {
            assertEquals(
                    List.of("fern-hollow.html", "larch-lane.html"),
                    files.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void thePageNeedsNothingElseAndRunsNoScript() {
        for (String page : List.of(larchLane, fernHollow)) {
            assertTrue(page.startsWith(HtmlText.BEGINNING), page.substring(0, 200));
            assertTrue(page.contains("<html lang=\"en\">"));
            assertFalse(
                    page.matches("(?is).*(<script|<link|<img|<iframe|@import|url\\(|\\son[a-z]+\\s*=|javascript:).*"));
            for (String address : found(page, "https?://[^\"' <]+")) {
                assertEquals("http://www.w3.org/2000/svg", address); // the name of a language, nothing to load
            }
            found(page, "href=\"[^\"]*\"").forEach(link -> assertTrue(link.startsWith("href=\"#s-"), link));
        }
    }

    @Test
    void thePageIsWellFormedAndItsLinksLeadSomewhere() throws Exception {
        for (String page : List.of(larchLane, fernHollow)) {
            String xml = page.replaceFirst("<!DOCTYPE html>\n", "").replaceAll("(<meta [^>]*)>", "$1/>");
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xml)));
            assertEquals("html", document.getDocumentElement().getTagName());
            List<String> ids = new ArrayList<>();
            found(page, "\\bid=\"[^\"]*\"").forEach(id -> ids.add(id.replaceAll("id=|\"", "")));
            Set<String> once = new HashSet<>(ids);
            assertEquals(once.size(), ids.size(), () -> "an id twice in " + ids);
            found(page, "href=\"#[^\"]*\"")
                    .forEach(link -> assertTrue(once.contains(link.replaceAll("href=\"#|\"", "")), link));
            found(page, "aria-labelledby=\"[^\"]*\"").forEach(names -> {
                for (String name : names.replaceAll("aria-labelledby=|\"", "").split(" ", -1)) {
                    assertTrue(once.contains(name), name);
                }
            });
            assertEquals(1, document.getElementsByTagName("h1").getLength());
            assertEquals(
                    found(page, "<section").size(),
                    document.getElementsByTagName("h2").getLength());
        }
    }

    @Test
    void itSaysEveryWordOfTheText() {
        String words = PICTURE.matcher(larchLane)
                .replaceAll("")
                .replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"")
                .replace("&amp;", "&");
        String all = BundledHouseholdTest.flat(words);
        for (String line : larchLaneRun.out().split("\n", -1)) {
            String said =
                    BundledHouseholdTest.flat(line.replaceFirst("^ {2}- ", "")).strip();
            if (!said.matches("[-=]*")) {
                assertTrue(all.contains(said), said);
            }
        }
    }

    @Test
    void thePicturesThatFitTheHouseholdAreThere() {
        List<String> titles = List.of(
                "The ions of the water at each stage, by charge",
                "Where the carbon of this water is, against pH",
                "Will it scale? Saturation with calcite against temperature",
                "Sodium behind a softener against the hardness in front of it",
                "Capacity of a resin against the salt of a regeneration",
                "What leaves the resin as it is used up",
                "General hardness of the tank over weeks");
        assertEquals(titles, titles(larchLane));
        assertEquals(titles, titles(fernHollow));
    }

    private static List<String> titles(String page) {
        List<String> titles = new ArrayList<>();
        Matcher m = Pattern.compile("<title id=\"picture-[0-9]+-title\">([^<]*)</title>")
                .matcher(page);
        while (m.find()) {
            titles.add(m.group(1));
        }
        return titles;
    }

    private static List<String> found(String text, String pattern) {
        List<String> found = new ArrayList<>();
        Matcher m = Pattern.compile(pattern).matcher(text);
        while (m.find()) {
            found.add(m.group());
        }
        return found;
    }

    @Test
    void whatCannotBeDrawnIsLeftOut() throws IOException {
        Path page = folder.resolve("page.html");
        Run run = Run.on(folder, "analyte,value,unit,as\nKH,5,°dKH,\n", "--no-treatment", "--report", page.toString());
        assertEquals("", run.err());
        assertEquals(List.of("The ions of the water, by charge"), titles(Files.readString(page)));
    }

    @Test
    void textFromOutsideStaysText() throws IOException {
        Path page = folder.resolve("page.html");
        Run run = Run.on(
                folder,
                "analyte,value,unit,as\nhardness,10,°dH,\n\"<script>alert(1)</script>\",1,\"<b>\",\n",
                "--softener=sodium",
                "--ignore=<script>alert(1)</script>",
                "--report",
                page.toString());
        assertEquals("", run.err());
        String html = Files.readString(page);
        assertFalse(html.contains("<script") || html.contains("<b>"), html);
        assertTrue(html.contains("&lt;script&gt;alert(1)&lt;/script&gt;"), html);
    }

    @Test
    void aReportThatThisProgramWroteIsReplaced() throws IOException {
        Path page = folder.resolve("page.html");
        String[] first = {"--no-treatment", "--report", page.toString()};
        assertEquals(
                0,
                Run.on(folder, "analyte,value,unit,as\nsodium,41,mg/L,\n", first)
                        .exitCode());
        assertTrue(Files.readString(page).contains("41.00"));
        assertEquals(
                0,
                Run.on(folder, "analyte,value,unit,as\nsodium,57,mg/L,\n", first)
                        .exitCode());
        assertFalse(Files.readString(page).contains("41.00"));
        assertTrue(Files.readString(page).contains("57.00"));
    }

    @Test
    void aFileOfSomebodyElseIsLeftAlone() throws IOException {
        Path diary = Files.writeString(folder.resolve("diary.html"), "<!DOCTYPE html>\n<html>dear diary");
        assertRefused(
                diary, "exists, and this program did not write it; name a new file, or one that holds such a report");
        assertEquals("<!DOCTYPE html>\n<html>dear diary", Files.readString(diary));
        Path part = Files.writeString(folder.resolve("new.html.part"), "begun");
        assertRefused(folder.resolve("new.html"), "new.html.part stands in the way beside it; remove it first");
        assertEquals("begun", Files.readString(part));
        assertFalse(Files.exists(folder.resolve("new.html")));
    }

    @Test
    void whereNothingCanBeWrittenItSaysSo() {
        assertRefused(folder, "is a folder; name a file in it, such as report.html");
        assertRefused(
                folder.resolve("none").resolve("page.html"),
                "its folder does not exist; make it first, or name a file in another one");
        Run blank = Run.of("--report", "");
        assertEquals(2, blank.exitCode());
        assertEquals(
                "--report: a name is missing; name a file such as report.html" + System.lineSeparator(), blank.err());
        assertRefused(folder.resolve("n".repeat(251)), "is too long a name; name a file such as report.html");
    }

    @Test
    void aLinkStaysALink() throws IOException {
        String[] options = {
            "--no-treatment", "--report", folder.resolve("link.html").toString()
        };
        Path link = Files.createSymbolicLink(folder.resolve("link.html"), folder.resolve("page.html"));
        assertRefused(link, "is a link that leads nowhere; name a file such as report.html");
        String sodium = "analyte,value,unit,as\nsodium,41,mg/L,\n";
        Run.on(
                folder,
                sodium.replace("41", "57"),
                "--no-treatment",
                "--report",
                folder.resolve("page.html").toString());
        assertEquals("", Run.on(folder, sodium, options).err());
        assertTrue(Files.isSymbolicLink(link));
        assertTrue(Files.readString(folder.resolve("page.html")).contains("41.00"));
    }

    @Test
    void aBypassIsDrawnAsItIs() throws IOException {
        Path page = folder.resolve("page.html");
        Run run = Run.on(
                folder,
                "analyte,value,unit,as\nhardness,18,°dH,\nKH,8,°dKH,\n",
                "--softener=sodium",
                "--target=6 °dH",
                "--report",
                page.toString());
        assertEquals("", run.err());
        assertTrue(titles(Files.readString(page))
                .contains("Sodium behind a softener against the hardness in front of it"));
    }

    private void assertRefused(Path path, String why) {
        Run run = Run.on(
                folder, "analyte,value,unit,as\nsodium,5,mg/L,\n", "--no-treatment", "--report", path.toString());
        assertEquals("--report: " + Page.foreign(path.toString()) + ": " + why + System.lineSeparator(), run.err());
        assertEquals("", run.out());
        assertEquals(2, run.exitCode());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({"sodium;-5;mg/L", "sodum;5;mg/L"})
    void anUnusableReportLeavesNoFile(String row) {
        Path page = folder.resolve("page.html");
        Run run = Run.on(folder, "analyte;value;unit\n" + row + "\n", "--report", page.toString());
        assertEquals(2, run.exitCode());
        assertFalse(Files.exists(page));
    }

    @Test
    void theLocaleDoesNotMatter() throws IOException {
        Locale before = Locale.getDefault();
        Path page = folder.resolve("page.html");
        String csv = "analyte,value,unit,as\nhardness,10,°dH,\nKH,6,°dKH,\npH,7.5,,\n";
        try {
            Set<String> pages = new HashSet<>();
            for (String tag : List.of("en-US", "ar-EG-u-nu-arab", "tr-TR")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(
                        "",
                        Run.on(folder, csv, "--softener=sodium", "--report", page.toString())
                                .err());
                pages.add(Files.readString(page));
            }
            assertEquals(1, pages.size());
        } finally {
            Locale.setDefault(before);
        }
    }

    /** Relative luminance and contrast ratio of WCAG 2.1 (W3C 2018), which asks 4.5 of text (1.4.3). */
    @Test
    void textStandsOutInLightAndInDark() {
        List<String> papers = found(Resource.text("report.css"), ":root \\{[^}]*}");
        assertEquals(2, papers.size());
        for (String paper : papers) {
            for (String ground : List.of("paper", "warn")) {
                double ink = contrast(paper, "ink", ground);
                assertTrue(ink >= 4.5, () -> ink + " in " + paper);
            }
            assertTrue(contrast(paper, "muted", "paper") >= 4.5, paper);
            assertTrue(contrast(paper, "edge", "paper") >= 3, paper); // graphics (1.4.11)
        }
    }

    private static double contrast(String css, String one, String other) {
        double first = luminance(css, one);
        double second = luminance(css, other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(String css, String name) {
        String colour = found(css, "--" + name + ": #[0-9a-f]{6}").get(0);
        int rgb = Integer.parseInt(colour.substring(colour.length() - 6), 16);
        return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @Test
    void theHelpNamesIt() {
        assertTrue(BundledHouseholdTest.flat(Run.of("--help").out())
                .contains("--report=file.html Write the report with pictures to this file as well"));
    }
}
