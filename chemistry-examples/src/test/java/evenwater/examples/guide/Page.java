package evenwater.examples.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A page in Markdown: the code that it shows, the commands, the links, and what its sections are called. */
record Page(Path file, String text) {

    static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

    private static final Pattern CODE = Pattern.compile(
            "^```java\\R(?<code>.*?)\\R```$(?:\\R\\R```text\\R(?<output>.*?)\\R```$)?",
            Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern FENCED = Pattern.compile("^```.*?^```$", Pattern.DOTALL | Pattern.MULTILINE);
    private static final Pattern SPAN = Pattern.compile("`[^`\n]+`");
    private static final Pattern LINK = Pattern.compile("\\]\\((?<target>[^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("^#{1,6} (?<title>.+)$", Pattern.MULTILINE);

    /** A block of Java, and the block of text behind it if there is one. */
    record Snippet(Page page, String code, Optional<String> output) {

        @Override
        public String toString() {
            return page + ": " + code.lines().findFirst().orElse("");
        }
    }

    static Page at(String path) {
        Path file = ROOT.resolve(path);
        return new Page(file, read(file));
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All pages of the repository. */
    static List<Page> all() {
        List<Page> pages = new ArrayList<>();
        collect(ROOT, pages);
        return pages;
    }

    private static void collect(Path directory, List<Page> pages) {
        try (Stream<Path> files = Files.list(directory)) {
            for (Path file : files.sorted().collect(Collectors.toList())) {
                String name = file.getFileName().toString();
                if (Files.isDirectory(file) && !name.startsWith(".") && !name.equals("target") && !name.equals("src")) {
                    collect(file, pages);
                } else if (name.endsWith(".md")) {
                    pages.add(new Page(file, read(file)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    List<Snippet> snippets() {
        return CODE.matcher(text)
                .results()
                .map(m -> new Snippet(this, m.group(1), Optional.ofNullable(m.group(2))))
                .collect(Collectors.toList());
    }

    /** The lines that start a build, from blocks and from spans of code. */
    List<String> commands() {
        List<String> commands = text.lines()
                .map(String::strip)
                .filter(line -> line.startsWith("mvn "))
                .collect(Collectors.toList());
        spans().stream().filter(span -> span.startsWith("mvn ")).forEach(commands::add);
        return commands;
    }

    /** What stands between two backticks within a line. */
    List<String> spans() {
        return SPAN.matcher(FENCED.matcher(text).replaceAll(""))
                .results()
                .map(m -> m.group().substring(1, m.group().length() - 1))
                .collect(Collectors.toList());
    }

    /** What is code and no link is taken out first. */
    private String prose() {
        return SPAN.matcher(FENCED.matcher(text).replaceAll("")).replaceAll("code");
    }

    /** Targets inside of the repository, as they are written. */
    List<String> links() {
        return LINK.matcher(prose())
                .results()
                .map(m -> m.group(1))
                .filter(target -> !target.startsWith("http"))
                .collect(Collectors.toList());
    }

    /** The file that a link leads to; this page if it only names a section. */
    Path target(String link) {
        String path = link.replaceFirst("#.*", "");
        return path.isEmpty() ? file : file.resolveSibling(path).normalize();
    }

    /** The names under which browsers find the sections. */
    Set<String> anchors() {
        Set<String> anchors = new TreeSet<>();
        Map<String, Integer> seen = new HashMap<>();
        Matcher headings = HEADING.matcher(FENCED.matcher(text).replaceAll(""));
        for (MatchResult heading : headings.results().collect(Collectors.toList())) {
            String name = heading.group(1)
                    .replaceAll("\\[([^]]*)]\\([^)]*\\)", "$1")
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{M}\\p{N} _-]", "")
                    .replace(' ', '-');
            int before = seen.merge(name, 1, Integer::sum) - 1;
            anchors.add(before == 0 ? name : name + "-" + before);
        }
        return anchors;
    }

    String title() {
        Matcher m = HEADING.matcher(text);
        return m.find() ? m.group("title") : "";
    }

    @Override
    public String toString() {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }
}
