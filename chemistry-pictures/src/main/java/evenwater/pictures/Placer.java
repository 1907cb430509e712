package evenwater.pictures;

import evenwater.pictures.Sheet.Anchor;
import evenwater.pictures.Sheet.Box;
import java.util.ArrayList;
import java.util.List;

/** Finds room inside a chart for the label of a point: on no other text, and on as little of the lines as can be. */
final class Placer {

    private static final double[] WIDTHS = {240, 190, 120};
    private static final double LINE = 15;
    private static final int MOST_LINES = 3;
    private static final double[] DISTANCES = {9, 20, 34, 52, 76, 104};
    private static final double SPACING = 3;
    private static final double CLEAR = 3;
    /** From here on a label needs a leader to its point. */
    private static final double APART = 15;

    private static final double FAR = 0.35;
    private static final double SPLIT = 1;

    private final Sheet sheet;
    private final Box area;
    private final List<Point> drawn = new ArrayList<>();

    Placer(Sheet sheet, Box area) {
        this.sheet = sheet;
        this.area = area;
    }

    private record Place(Point at, List<String> lines, Box box, double distance, boolean isLeft) {}

    /** A stroke that labels should keep clear of, in coordinates of the sheet. */
    void keepClear(double x1, double y1, double x2, double y2) {
        int steps = (int) Math.min(400, Math.ceil(Math.hypot(x2 - x1, y2 - y1) / SPACING)) + 1;
        for (int i = 0; i <= steps; i++) {
            drawn.add(new Point(x1 + (x2 - x1) * i / steps, y1 + (y2 - y1) * i / steps));
        }
    }

    /** Writes a label near one of some points; leaves it out where no place is free, since text on text says nothing. */
    void place(String label, String colour, List<Point> points) {
        Place best = null;
        for (double width : WIDTHS) {
            List<String> lines = TextWidth.lines(label, width, Sheet.TEXT, false, MOST_LINES);
            for (Point point : points) {
                for (Place place : around(point, lines)) {
                    if (place.box.isInside(area) && sheet.isFree(place.box)) {
                        best = best == null || cost(place) < cost(best) ? place : best;
                    }
                }
            }
        }
        if (best != null) {
            write(best, colour);
        }
    }

    private double cost(Place place) {
        long covered = drawn.stream()
                .filter(point -> place.box.isWithin(point.x(), point.y(), CLEAR))
                .count();
        return FAR * place.distance + SPLIT * place.lines.size() + covered;
    }

    private void write(Place place, String colour) {
        if (place.distance > APART) {
            double x = place.isLeft ? place.box.right() + CLEAR : place.box.left() - CLEAR;
            double y = Math.max(place.box.top(), Math.min(place.box.bottom(), place.at.y()));
            Frame.rule(sheet.body(), place.at.x(), place.at.y(), x, y, "ew-axis");
        }
        double base = place.box.top() + Sheet.TEXT * 0.85;
        for (String line : place.lines) {
            sheet.text(
                    line,
                    place.isLeft ? place.box.right() : place.box.left(),
                    base,
                    Sheet.TEXT,
                    place.isLeft ? Anchor.END : Anchor.START,
                    false,
                    colour,
                    true);
            base += LINE;
        }
    }

    private static List<Place> around(Point point, List<String> lines) {
        double width = lines.stream()
                .mapToDouble(line -> TextWidth.of(line, Sheet.TEXT, false))
                .max()
                .orElse(0);
        double height = lines.size() * LINE;
        List<Place> places = new ArrayList<>();
        for (double distance : DISTANCES) {
            for (double left : new double[] {point.x() + distance, point.x() - distance - width}) {
                for (double top :
                        new double[] {point.y() - distance - height, point.y() + distance, point.y() - height / 2}) {
                    Box box = new Box(left, top, left + width, top + height);
                    places.add(new Place(point, lines, box, distance, left < point.x()));
                }
            }
        }
        return places;
    }
}
