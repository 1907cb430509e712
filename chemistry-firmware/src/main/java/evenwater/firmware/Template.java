package evenwater.firmware;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parts of C that are written by hand, as resources beside this class. */
final class Template {

    private static final Pattern NAME =
            Pattern.compile("^static (?:inline )?[a-z0-9_]+ (ew_\\w+)\\(", Pattern.MULTILINE);

    private static final Pattern PLACE = Pattern.compile("@([A-Z_]+)@");

    private Template() {}

    static String read(String name) {
        try (InputStream in = Template.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("template " + name + " must be a resource, but is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A template with texts for its places, which are written {@code @NAME@}. */
    static String filled(String name, Map<String, String> texts) {
        return PLACE.matcher(read(name))
                .replaceAll(place ->
                        Matcher.quoteReplacement(Objects.requireNonNull(texts.get(place.group(1)), place.group(1))));
    }

    /** Those functions of a template that a text calls, itself or through each other: an unused one would make compilers warn. */
    static String used(String name, String text) {
        List<String> parts = new ArrayList<>(List.of(read(name).split("\n\n")));
        StringBuilder used = new StringBuilder();
        String callers = text;
        for (int i = parts.size() - 1; i >= 0; i--) {
            String part = parts.get(i).stripTrailing();
            Matcher function = NAME.matcher(part);
            if (!function.find() || callers.contains(function.group(1) + "(")) {
                used.insert(0, part + "\n\n");
                callers += part;
            }
        }
        return used.toString();
    }
}
