package evenwater.examples.household;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** A page as one HTML file that needs nothing else: no script, no font, no picture from elsewhere. */
final class HtmlText {

    /** How every file of ours begins, by which it is known again. */
    static final String BEGINNING = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="generator" content="Evenwater household report">
            """;

    private static final String HEAD = """
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <meta name="color-scheme" content="light dark">
            """;

    private final StringBuilder html = new StringBuilder();
    private final Set<String> ids = new HashSet<>();
    private boolean inList;
    private boolean inSection;
    private int pictures;

    private HtmlText() {}

    static String of(List<Block> blocks) {
        HtmlText page = new HtmlText();
        String title = blocks.stream()
                .filter(Block.Title.class::isInstance)
                .map(block -> ((Block.Title) block).words())
                .findFirst()
                .orElse("");
        page.html
                .append(BEGINNING)
                .append(HEAD)
                .append("<title>")
                .append(escaped(title))
                .append("</title>\n<style>\n")
                .append(Resource.text("report.css"))
                .append("</style>\n</head>\n<body>\n<main>\n");
        for (Block block : blocks) {
            page.add(block);
            if (block instanceof Block.Title) {
                page.contents(blocks);
            }
        }
        page.closeSection();
        page.html.append("</main>\n</body>\n</html>\n");
        return page.html.toString();
    }

    private void add(Block block) {
        if (!(block instanceof Block.Item)) {
            closeList();
        }
        if (block instanceof Block.Title title) {
            leaf("h1", title.words());
        } else if (block instanceof Block.Heading heading) {
            closeSection();
            String id = id(heading.words());
            html.append("<section aria-labelledby=\"")
                    .append(id)
                    .append("\">\n<h2 id=\"")
                    .append(id)
                    .append("\">");
            html.append(escaped(heading.words())).append("</h2>\n");
            inSection = true;
        } else if (block instanceof Block.Paragraph paragraph) {
            leaf("p", paragraph.words());
        } else if (block instanceof Block.Item item) {
            if (!inList) {
                html.append("<ul>\n");
                inList = true;
            }
            leaf("li", item.words());
        } else if (block instanceof Block.Table table) {
            table(table.rows());
        } else if (block instanceof Block.Figure figure) {
            figure(figure);
        }
    }

    /** Links to all sections; their ids are made anew from the same headings in the same order. */
    private void contents(List<Block> blocks) {
        HtmlText names = new HtmlText();
        html.append("<nav aria-label=\"sections\">\n<ul>\n");
        for (Block block : blocks) {
            if (block instanceof Block.Heading heading) {
                html.append("<li><a href=\"#").append(names.id(heading.words())).append("\">");
                html.append(escaped(heading.words())).append("</a></li>\n");
            }
        }
        html.append("</ul>\n</nav>\n");
    }

    private void closeList() {
        if (inList) {
            html.append("</ul>\n");
            inList = false;
        }
    }

    private void closeSection() {
        closeList();
        if (inSection) {
            html.append("</section>\n");
            inSection = false;
        }
    }

    private void leaf(String name, String words) {
        html.append('<')
                .append(name)
                .append('>')
                .append(escaped(words))
                .append("</")
                .append(name)
                .append(">\n");
    }

    /** Letters and digits of a heading; a second one with the same words gets a number. */
    private String id(String heading) {
        String words =
                heading.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        String id = "s-" + words;
        for (int i = 2; !ids.add(id); i++) {
            id = "s-" + words + "-" + i;
        }
        return id;
    }

    /** A table that is too wide for a phone is moved by its own bar, which keys reach too. */
    private void table(List<String[]> rows) {
        int columns = rows.stream().mapToInt(row -> row.length).max().orElse(0);
        html.append("<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"table\">\n<table>\n<thead>\n");
        row(rows.get(0), columns, true);
        html.append("</thead>\n<tbody>\n");
        rows.stream().skip(1).forEach(row -> row(row, columns, false));
        html.append("</tbody>\n</table>\n</div>\n");
    }

    private void row(String[] cells, int columns, boolean head) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            String cell = i < cells.length ? escaped(cells[i]) : "";
            boolean names = head && !cell.isEmpty();
            String scope = head ? "col" : "row";
            all.add(
                    names || (i == 0 && !head)
                            ? "<th scope=\"" + scope + "\">" + cell + "</th>"
                            : "<td>" + cell + "</td>");
        }
        html.append(all.stream().collect(Collectors.joining("", "<tr>", "</tr>\n")));
    }

    private void figure(Block.Figure figure) {
        figure.picture().get().ifPresent(picture -> {
            pictures++;
            html.append("<figure>\n<div class=\"wide\" role=\"group\" tabindex=\"0\" aria-label=\"picture\">\n")
                    .append(picture.toSvg("picture-" + pictures))
                    .append("</div>\n");
            if (!figure.caption().isEmpty()) {
                leaf("figcaption", figure.caption());
            }
            html.append("</figure>\n");
        });
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
