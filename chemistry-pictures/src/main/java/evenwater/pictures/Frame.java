package evenwater.pictures;

import evenwater.pictures.Sheet.Anchor;
import evenwater.pictures.Sheet.Box;

/**
 * The rectangle of a chart: its axes, and where their values lie on the sheet.
 *
 * @param area the rectangle
 * @param x axis from left to right
 * @param y axis from bottom to top
 */
record Frame(Box area, Axis x, Axis y) {

    private static final double TICK_GAP = 6;
    private static final double BELOW_TICKS = 17;
    private static final double BELOW_LABEL = 36;

    double x(double value) {
        return x.at(value, area.left(), area.right());
    }

    double y(double value) {
        return y.at(value, area.bottom(), area.top());
    }

    /** Draws grid and axes, and takes the room of their labels. */
    void draw(Sheet sheet) {
        Svg body = sheet.body();
        for (double tick : y.ticks()) {
            rule(body, area.left(), y(tick), area.right(), y(tick), "ew-grid");
            double base = y(tick) + Sheet.SMALL * 0.35;
            text(sheet, y.text(tick), area.left() - TICK_GAP, base, Anchor.END);
        }
        for (double tick : x.ticks()) {
            rule(body, x(tick), area.bottom(), x(tick), area.bottom() + TICK_GAP - 1, "ew-axis");
            text(sheet, x.text(tick), x(tick), area.bottom() + BELOW_TICKS + 1, Anchor.MIDDLE);
        }
        rule(body, area.left(), area.bottom(), area.right(), area.bottom(), "ew-axis");
        double middle = (area.left() + area.right()) / 2;
        double room = 2 * (Math.min(middle, Sheet.WIDTH - middle) - Sheet.MARGIN);
        String label = TextWidth.lines(x.label(), room, Sheet.TEXT, false, 1).get(0);
        double base = area.bottom() + BELOW_LABEL;
        sheet.text(label, middle, base, Sheet.TEXT, Anchor.MIDDLE, false, "ew-ink", false);
        sheet.takeDownTo(area.bottom() + BELOW_LABEL + Sheet.TEXT / 2);
    }

    private static void text(Sheet sheet, String text, double x, double y, Anchor anchor) {
        sheet.text(text, x, y, Sheet.SMALL, anchor, false, "ew-muted", false);
    }

    static void rule(Svg body, double x1, double y1, double x2, double y2, String colour) {
        body.empty(
                "line",
                "x1",
                Svg.number(x1),
                "y1",
                Svg.number(y1),
                "x2",
                Svg.number(x2),
                "y2",
                Svg.number(y2),
                "class",
                colour);
    }
}
