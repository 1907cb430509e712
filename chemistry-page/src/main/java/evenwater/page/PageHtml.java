package evenwater.page;

import evenwater.chemistry.verdict.Caution;
import evenwater.chemistry.verdict.CautionTopic;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * The page as one HTML file, with style and scripts inside: it loads nothing and works from disk.
 *
 * <p>The controls come from the parts, so that what the page asks and what an answer reads are one list.
 */
public final class PageHtml {

    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; \
            script-src 'unsafe-inline'; base-uri 'none'; form-action 'none'">
            <title>Water, worked out – Evenwater</title>
            """;

    private static final String TOP = """
            <a class="skip" href="#main">Skip to the questions</a>
            <header>
            <h1>Water, worked out</h1>
            <p>Four questions of water chemistry with their answers and the way there. Change a figure and watch what follows. \
            Everything is computed on this device; nothing is sent or kept.</p>
            """;

    private final StringBuilder out = new StringBuilder();

    private PageHtml() {}

    /**
     * Returns the page.
     *
     * @param program JavaScript that defines {@code evenwaterAnswer(part, names, values)}, which returns an answer as JSON
     * @return a complete HTML document
     */
    public static String with(String program) {
        Objects.requireNonNull(program, "program");
        PageHtml page = new PageHtml();
        page.write(program);
        return page.out.toString();
    }

    private void write(String program) {
        out.append(HEAD).append("<style>\n").append(resource("page.css")).append("</style>\n</head>\n<body>\n");
        out.append(TOP).append("<nav aria-label=\"Questions\">\n<ul>\n");
        for (Part part : LivePage.PARTS) {
            out.append("<li><a href=\"#" + part.id() + "\">" + Html.escaped(part.title()) + "</a></li>\n");
        }
        out.append("</ul>\n</nav>\n</header>\n<main id=\"main\" tabindex=\"-1\">\n");
        out.append("<noscript><p>This page computes with JavaScript, which is switched off here.</p></noscript>\n");
        for (Part part : LivePage.PARTS) {
            PartHtml.write(part, out);
        }
        out.append("</main>\n<footer>\n");
        Caution.about(Set.of()).forEach(caution -> out.append("<p>" + Html.escaped(caution.text()) + "</p>\n"));
        out.append("<p>Evenwater is free software under the Apache License 2.0.</p>\n</footer>\n");
        script(program);
        script(resource("page.js"));
        out.append("</body>\n</html>\n");
    }

    /** A script ends where its end tag stands, even inside a string; in a string, a backslash before the slash changes nothing. */
    private void script(String text) {
        if (text.contains("<!--")) {
            throw new IllegalArgumentException("a script inside HTML must not contain '<!--'");
        }
        out.append("<script>\n").append(text.replace("</script", "<\\/script")).append("\n</script>\n");
    }

    /** What must be said of a part, without what the foot of the page says of all. */
    static List<Caution> cautions(Part part) {
        return Caution.about(part.cautions()).stream()
                .filter(caution -> caution.topic() != CautionTopic.ALWAYS)
                .toList();
    }

    private static String resource(String name) {
        try (InputStream in = Objects.requireNonNull(PageHtml.class.getResourceAsStream(name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + name, e);
        }
    }
}
