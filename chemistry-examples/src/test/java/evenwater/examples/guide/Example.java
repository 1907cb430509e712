package evenwater.examples.guide;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A compiled class of the examples, from whose source a page takes its code. */
record Example(Path source, String text) {

    private static final Path SOURCES = Page.ROOT.resolve("chemistry-examples/src/main/java");
    private static final Map<String, String> PRINTED = new ConcurrentHashMap<>();

    static Example at(Path source) {
        return new Example(source, Page.read(source));
    }

    /** All of them, or those of a package. */
    static List<Example> in(String directory) {
        try (Stream<Path> files = Files.walk(SOURCES.resolve(directory))) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.endsWith("package-info.java") && !file.endsWith("module-info.java"))
                    .sorted()
                    .map(Example::at)
                    .collect(Collectors.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String name() {
        return SOURCES.relativize(source)
                .toString()
                .replace(".java", "")
                .replace('/', '.')
                .replace('\\', '.');
    }

    /** What stands between the two marks of the source. */
    String snippet() {
        String mark = "// snippet\n";
        int start = text.indexOf(mark) + mark.length();
        return text.substring(start, text.indexOf("// end", start))
                .stripIndent()
                .strip();
    }

    /** Whether the lines stand in the source in this order, whatever their indentation. */
    boolean contains(String code) {
        return lines(text).contains(lines(code));
    }

    private static String lines(String code) {
        return code.lines()
                .map(line -> line.strip().replaceAll("\\s+", " "))
                .filter(line -> !line.isEmpty())
                .collect(Collectors.joining("\n", "\n", "\n"));
    }

    /** What the class prints; each is run once, as some take seconds. */
    String printed() {
        return PRINTED.computeIfAbsent(name(), Example::run);
    }

    private static String run(String name) {
        PrintStream before = System.out;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        System.setOut(new PrintStream(bytes, true, StandardCharsets.UTF_8));
        try {
            Class.forName(name).getMethod("main", String[].class).invoke(null, (Object) new String[0]);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(name + " does not run", e);
        } finally {
            System.setOut(before);
        }
        return bytes.toString(StandardCharsets.UTF_8)
                .replace(System.lineSeparator(), "\n")
                .strip();
    }
}
