package evenwater.examples.household;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Data files that lie beside this class. */
final class Resource {

    private Resource() {}

    static byte[] bytes(String name) {
        try (InputStream in = Resource.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing beside " + Resource.class.getName());
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    /** Returns the fields of each line that is no comment, separated by semicolons. */
    static List<String[]> rows(String name) {
        return text(name)
                .lines()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(line -> line.split("; ", -1))
                .toList();
    }
}
