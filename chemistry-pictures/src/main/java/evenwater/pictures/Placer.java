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
    private static final int LEADER_STEPS = 20;
    private static final double SPACING = 3;
    private static final double CLEAR = 3;
    /** From here on a label needs a leader to its point. */
    private static final double APART = 15;

    private static final double FAR = 0.35;
    private static final double SPLIT = 1;
    private static final double MISTAKEN = 40;

    private final Sheet sheet;
    private final Box area;
    private final List<Point> drawn = new ArrayList<>();
    private final List<Point> rivals = new ArrayList<>();

    Placer(Sheet sheet, Box area) {
        this.sheet = sheet;
        this.area = area;
    }

    private record Place(Point at, List<String> lines, Box box, double distance, boolean isLeft) {

        boolean isNearer(Point rival) {
            return distanceTo(rival) < distanceTo(at);
        }

        private double distanceTo(Point point) {
            return Math.hypot((box.left() + box.right()) / 2 - point.x(), (box.top() + box.bottom()) / 2 - point.y());
        }

        /** Where a leader from the point arrives. */
        Point end() {
            return new Point(
                    isLeft ? box.right() + CLEAR : box.left() - CLEAR,
                    Math.max(box.top(), Math.min(box.bottom(), at.y())));
        }
    }

    /** A dot that has a label of its own, in coordinates of the sheet: other labels must not seem to be its. */
    void rival(Point dot) {
        rivals.add(dot);
    }

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
                    if (place.box.isInside(area) && sheet.isFree(place.box) && isLeaderFree(place)) {
                        best = best == null || cost(place) < cost(best) ? place : best;
                    }
                }
            }
        }
        if (best != null) {
            write(best, colour);
        }
    }

    /** A leader must not run through the words of others. */
    private boolean isLeaderFree(Place place) {
        Point end = place.end();
        for (int i = 0; place.distance > APART && i <= LEADER_STEPS; i++) {
            double x = place.at.x() + (end.x() - place.at.x()) * i / LEADER_STEPS;
            double y = place.at.y() + (end.y() - place.at.y()) * i / LEADER_STEPS;
            if (!sheet.isFree(new Box(x - 1, y - 1, x + 1, y + 1))) {
                return false;
            }
        }
        return true;
    }

    private double cost(Place place) {
        long covered = drawn.stream()
                .filter(point -> place.box.isWithin(point.x(), point.y(), CLEAR))
                .count();
        return FAR * place.distance
                + SPLIT * place.lines.size()
                + covered
                + (rivals.stream().anyMatch(place::isNearer) ? MISTAKEN : 0);
    }

    private void write(Place place, String colour) {
        if (place.distance > APART) {
            Point end = place.end();
            Frame.rule(sheet.body(), place.at.x(), place.at.y(), end.x(), end.y(), "ew-axis");
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
