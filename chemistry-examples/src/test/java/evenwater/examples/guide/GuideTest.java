package evenwater.examples.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import evenwater.examples.guide.Page.Snippet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The guide: every page shows code that compiles and what it prints, and leads nowhere that is not there. */
class GuideTest {

    private static final String ROOMS = "chemistry-core/src/main/java/evenwater/chemistry";
    private static final Pattern FIRST_COLUMN = Pattern.compile("^\\| `(?<type>[A-Z]\\w+)` \\|", Pattern.MULTILINE);

    private static final List<Page> PAGES = Page.all();
    private static final List<Example> EXAMPLES = Example.in("evenwater/examples");

    private static List<Snippet> snippets() {
        return PAGES.stream().flatMap(page -> page.snippets().stream()).collect(Collectors.toList());
    }

    private static List<Example> showing(Snippet snippet) {
        return EXAMPLES.stream()
                .filter(example -> example.contains(snippet.code()))
                .collect(Collectors.toList());
    }

    private static Set<String> names(String directory) throws IOException {
        try (Stream<Path> files = Files.list(Page.ROOT.resolve(directory))) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @TestFactory
    Stream<DynamicTest> codeIsTakenFromAClass() {
        return snippets().stream()
                .map(snippet -> DynamicTest.dynamicTest(
                        snippet.toString(),
                        () -> assertTrue(!showing(snippet).isEmpty(), () -> "in no example:\n" + snippet.code())));
    }

    @TestFactory
    Stream<DynamicTest> outputIsWhatTheClassPrints() {
        return snippets().stream()
                .filter(snippet -> snippet.output().isPresent())
                .map(snippet -> DynamicTest.dynamicTest(
                        snippet.toString(),
                        () -> assertEquals(
                                showing(snippet).stream()
                                        .map(Example::printed)
                                        .findFirst()
                                        .orElse("no example"),
                                snippet.output().orElseThrow())));
    }

    @Test
    void everyQuestionAndEveryRoomIsShown() {
        for (String directory : List.of("questions", "rooms")) {
            for (Example example : Example.in("evenwater/examples/" + directory)) {
                List<String> pages = snippets().stream()
                        .filter(snippet -> snippet.output().isPresent() && example.contains(snippet.code()))
                        .map(snippet -> snippet.page().toString())
                        .filter(page -> page.startsWith("docs/" + directory + "/"))
                        .collect(Collectors.toList());
                assertEquals(1, pages.size(), () -> example.name() + " is shown on " + pages);
            }
        }
    }

    /** A snippet lacks imports, and often the water that it speaks of. */
    @Test
    void everyQuestionAndEveryRoomLeadsToItsProgram() {
        for (Snippet snippet : snippets()) {
            String page = snippet.page().toString();
            if (snippet.output().isPresent() && page.matches("docs/(questions|rooms)/.*")) {
                List<String> programs = showing(snippet).stream()
                        .map(example -> example.name().replace('.', '/') + ".java")
                        .collect(Collectors.toList());
                assertTrue(
                        snippet.page().links().stream()
                                .anyMatch(link -> programs.stream().anyMatch(link::endsWith)),
                        () -> page + " leads to none of " + programs);
            }
        }
    }

    @Test
    void everyRoomHasItsPage() throws IOException {
        Set<String> pages = names("docs/rooms").stream()
                .map(name -> name.replace(".md", ""))
                .collect(Collectors.toSet());
        assertEquals(names(ROOMS), new TreeSet<>(pages));
    }

    @Test
    void typesThatARoomIsReadByAreInTheRoom() throws IOException {
        for (String room : names(ROOMS)) {
            Set<String> types = FIRST_COLUMN
                    .matcher(Page.at("docs/rooms/" + room + ".md").text())
                    .results()
                    .map(m -> m.group(1) + ".java")
                    .collect(Collectors.toSet());
            assertTrue(types.size() >= 3 && types.size() <= 8, () -> room + " shows " + types);
            Set<String> there = names(ROOMS + "/" + room);
            types.forEach(type -> assertTrue(there.contains(type), () -> room + " has no " + type));
        }
    }

    @Test
    void linksLeadToPagesAndSectionsThatAreThere() {
        for (Page page : PAGES) {
            for (String link : page.links()) {
                Path target = page.target(link);
                assertTrue(Files.exists(target), () -> page + " links to " + link);
                if (link.contains("#")) {
                    Set<String> anchors = new Page(target, Page.read(target)).anchors();
                    String anchor = link.substring(link.indexOf('#') + 1);
                    assertTrue(anchors.contains(anchor), () -> page + " links to " + link + ", there is " + anchors);
                }
            }
        }
    }

    @Test
    void everyPageIsReachedFromTheIndex() {
        Set<Path> reached = new HashSet<>();
        Deque<Page> open = new ArrayDeque<>(List.of(Page.at("docs/README.md")));
        while (!open.isEmpty()) {
            Page page = open.pop();
            if (reached.add(page.file())) {
                page.links().stream()
                        .map(page::target)
                        .filter(target -> target.toString().endsWith(".md") && Files.exists(target))
                        .forEach(target -> open.push(new Page(target, Page.read(target))));
            }
        }
        PAGES.forEach(page -> assertTrue(reached.contains(page.file()), () -> page + " is not reached"));
    }

    @Test
    void theIndexListsEveryDecisionWithItsTitle() throws IOException {
        String index = Page.at("docs/README.md").text();
        for (String name : names("docs/decisions")) {
            String title = Page.at("docs/decisions/" + name).title().replaceFirst("^\\d+\\. ", "");
            assertTrue(
                    index.contains("[" + title + "](decisions/" + name + ")"), () -> name + " is not listed: " + title);
        }
    }

    @Test
    void commandsAreThoseThatTheBuildKnows() {
        for (Page page : PAGES) {
            for (String command : page.commands()) {
                List<String> unknown = MavenCommand.unknown(command);
                if (!unknown.isEmpty()) {
                    fail(page + " prints " + command + ", in which nothing is known of " + unknown);
                }
            }
        }
    }
}
