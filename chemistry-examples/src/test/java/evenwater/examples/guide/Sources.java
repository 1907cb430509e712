package evenwater.examples.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The Java files of all modules, looked up by the simple name of a class. */
final class Sources {

    private static final List<Path> FILES = find();

    private Sources() {}

    private static List<Path> find() {
        List<Path> found = new ArrayList<>();
        try (Stream<Path> modules = Files.list(Page.ROOT)) {
            for (Path src : modules.map(module -> module.resolve("src"))
                    .filter(Files::isDirectory)
                    .sorted()
                    .collect(Collectors.toList())) {
                try (Stream<Path> files = Files.walk(src)) {
                    files.filter(file -> file.toString().endsWith(".java")).forEach(found::add);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return found;
    }

    static boolean has(String simpleName) {
        return FILES.stream().anyMatch(file -> file.endsWith(simpleName + ".java"));
    }

    /** The class of the library with that name, if there is one that everybody may use. */
    static Optional<Class<?>> inLibrary(String simpleName) {
        Path core = Page.ROOT.resolve("chemistry-core/src/main/java");
        return FILES.stream()
                .filter(file -> file.startsWith(core) && file.endsWith(simpleName + ".java"))
                .map(file -> core.relativize(file)
                        .toString()
                        .replace(".java", "")
                        .replace('/', '.')
                        .replace('\\', '.'))
                .<Class<?>>map(Sources::load)
                .findFirst();
    }

    private static Class<?> load(String name) {
        try {
            return Class.forName(name);
        } catch (ClassNotFoundException e) {
            throw new AssertionError(name, e);
        }
    }
}
