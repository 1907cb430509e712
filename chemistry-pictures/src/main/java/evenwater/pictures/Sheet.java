package evenwater.pictures;

import java.util.ArrayList;
import java.util.List;

/** The paper of a picture: its heading, what is drawn on it, and its notes. Texts are kept as boxes, so that others can keep clear. */
final class Sheet {

    static final double WIDTH = 640;
    static final double MARGIN = 16;
    static final double TEXT = 13;
    static final double SMALL = 12;
    static final double LINE_HEIGHT = 1.3;

    private static final double HEADING = 17;
    private static final int HEADING_LINES = 3;
    private static final int SUBTITLE_LINES = 3;
    private static final double GAP = 8;
    private static final int NOTE_LINES = 4;

    /** Parts of the height of a font above and below its base line. */
    private static final double ASCENT = 0.8;

    private static final double DESCENT = 0.25;

    private final Svg body = new Svg();
    private final List<Box> texts = new ArrayList<>();
    private double bottom = MARGIN;

    Sheet(String title) {
        paragraph(title, HEADING, true, "ew-ink", HEADING_LINES);
    }

    /** A rectangle; a text fills one. */
    record Box(double left, double top, double right, double bottom) {

        boolean overlaps(Box that) {
            return left < that.right && that.left < right && top < that.bottom && that.top < bottom;
        }

        /** Whether a point is inside, or as near as a margin. */
        boolean isWithin(double x, double y, double margin) {
            return x >= left - margin && x <= right + margin && y >= top - margin && y <= bottom + margin;
        }

        boolean isInside(Box that) {
            return left >= that.left && right <= that.right && top >= that.top && bottom <= that.bottom;
        }
    }

    /** Where a text begins or ends. */
    enum Anchor {
        START("start"),
        MIDDLE("middle"),
        END("end");

        private final String word;

        Anchor(String word) {
            this.word = word;
        }
    }

    void subtitle(String text) {
        paragraph(text, TEXT, false, "ew-muted", SUBTITLE_LINES);
    }

    /** Begins the notes below what is drawn. */
    void gap() {
        bottom += GAP;
    }

    void note(String text) {
        paragraph(text, SMALL, false, "ew-muted", NOTE_LINES);
    }

    private void paragraph(String text, double size, boolean bold, String colour, int most) {
        for (String line : TextWidth.lines(text, WIDTH - 2 * MARGIN, size, bold, most)) {
            bottom += size * LINE_HEIGHT;
            text(line, MARGIN, bottom - size * (LINE_HEIGHT - 1), size, Anchor.START, bold, colour, false);
        }
    }

    /** Where the next thing may begin. */
    double bottom() {
        return bottom;
    }

    void takeDownTo(double y) {
        bottom = Math.max(bottom, y);
    }

    Svg body() {
        return body;
    }

    /** A line of text at its base line; a halo keeps it readable on lines. */
    void text(String text, double x, double y, double size, Anchor anchor, boolean bold, String colour, boolean halo) {
        if (text.isBlank()) {
            return;
        }
        texts.add(box(text, x, y, size, anchor, bold));
        List<String> attributes = new ArrayList<>(List.of("x", Svg.number(x), "y", Svg.number(y)));
        attributes.addAll(List.of("font-size", Svg.number(size), "text-anchor", anchor.word, "class", colour));
        if (bold) {
            attributes.addAll(List.of("font-weight", "bold"));
        }
        if (halo) {
            attributes.set(attributes.indexOf(colour), colour + " ew-halo");
            attributes.addAll(List.of("stroke-width", "4", "stroke-linejoin", "round", "paint-order", "stroke"));
        }
        body.leaf("text", text, attributes.toArray(String[]::new));
    }

    static Box box(String text, double x, double y, double size, Anchor anchor, boolean bold) {
        double width = TextWidth.of(text, size, bold);
        double left = anchor == Anchor.START ? x : anchor == Anchor.END ? x - width : x - width / 2;
        return new Box(left, y - size * ASCENT, left + width, y + size * DESCENT);
    }

    boolean isFree(Box box) {
        return texts.stream().noneMatch(box::overlaps);
    }

    String toSvg(String id, String title, String description) {
        String height = Svg.number(Math.ceil(bottom + MARGIN));
        String width = Svg.number(WIDTH);
        Svg svg = new Svg();
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 " + width + " " + height,
                "width",
                width,
                "height",
                height,
                "class",
                "ew",
                "role",
                "img",
                "aria-labelledby",
                id + "-title " + id + "-description");
        svg.leaf("title", title, "id", id + "-title");
        svg.leaf("desc", description, "id", id + "-description");
        svg.leaf("style", Theme.css());
        svg.empty("rect", "width", width, "height", height, "class", "ew-paper");
        return svg.add(body).close("svg").toString();
    }
}
