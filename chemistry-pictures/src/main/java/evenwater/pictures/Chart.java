package evenwater.pictures;

import evenwater.pictures.Sheet.Anchor;
import evenwater.pictures.Sheet.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Lines over an axis, with what stands beside them. Filled, then drawn once. */
final class Chart {

    private static final double LEAST_HEIGHT = 270;
    private static final int Y_TICKS = 6;
    private static final int X_TICKS = 8;
    /** Where along an upright its label may stand, from the top. */
    private static final double[] UPRIGHT_LABELS = {0.03, 0.2, 0.4, 0.6, 0.8};

    private static final double TICK_ROOM = 14;
    private static final double ABOVE = 12;
    /** A line that ends farther from the right edge than this part of the chart is named where it ends. */
    private static final double EDGE = 0.01;

    private final String xLabel;
    private final String yLabel;
    private final List<Line> lines = new ArrayList<>();
    private final List<Area> areas = new ArrayList<>();
    private final List<Guide> guides = new ArrayList<>();
    private final List<Guide> uprights = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private boolean fromZero;
    private boolean fromNothing;

    Chart(String xLabel, String yLabel) {
        this.xLabel = xLabel;
        this.yLabel = yLabel;
    }

    private record Line(String name, int style, List<Point> points) {}

    private record Area(int style, List<Point> low, List<Point> high) {}

    private record Guide(double value, String label) {}

    private record Mark(Point at, int style, String label) {}

    /** Begins the upright axis at 0. */
    Chart fromZero() {
        fromZero = true;
        return this;
    }

    /** Begins the axis below at 0. */
    Chart fromNothing() {
        fromNothing = true;
        return this;
    }

    Chart line(String name, int style, List<Point> points) {
        if (points.isEmpty()) {
            throw new IllegalArgumentException(name + ": there is no figure to draw");
        }
        lines.add(new Line(name, style, List.copyOf(points)));
        return this;
    }

    Chart area(int style, List<Point> low, List<Point> high) {
        areas.add(new Area(style, List.copyOf(low), List.copyOf(high)));
        return this;
    }

    /** A line across the chart. */
    Chart guide(double value, String label) {
        guides.add(new Guide(value, label));
        return this;
    }

    /** A line from bottom to top. */
    Chart upright(double value, String label) {
        uprights.add(new Guide(value, label));
        return this;
    }

    Chart mark(Point at, int style, String label) {
        marks.add(new Mark(at, style, label));
        return this;
    }

    void draw(Sheet sheet) {
        Gutter gutter = new Gutter();
        List<Point> all = points();
        Axis y = Axis.around(yLabel, values(all.stream().mapToDouble(Point::y), guides, fromZero), Y_TICKS);
        Axis x = Axis.from(xLabel, values(all.stream().mapToDouble(Point::x), uprights, fromNothing), X_TICKS);
        guides.forEach(guide -> gutter.add(guide.value, guide.label, "ew-axis", "ew-muted"));
        lines.stream()
                .filter(line -> endsAtEdge(line, x))
                .forEach(line -> gutter.add(last(line).y(), line.name, "ew-line" + line.style, "ew-ink"));
        Frame frame = frame(sheet, x, y, gutter);
        frame.draw(sheet);
        Placer placer = new Placer(sheet, frame.area());
        draw(sheet.body(), frame, placer);
        gutter.draw(sheet, frame);
        label(frame, placer);
    }

    private static DoubleStream values(DoubleStream points, List<Guide> guides, boolean zero) {
        DoubleStream values = DoubleStream.concat(points, guides.stream().mapToDouble(Guide::value));
        return zero ? DoubleStream.concat(DoubleStream.of(0), values) : values;
    }

    private List<Point> points() {
        List<Point> all = new ArrayList<>();
        lines.forEach(line -> all.addAll(line.points));
        areas.forEach(area -> {
            all.addAll(area.low);
            all.addAll(area.high);
        });
        marks.forEach(mark -> all.add(mark.at));
        return all;
    }

    private static Point last(Line line) {
        return line.points.get(line.points.size() - 1);
    }

    private static boolean endsAtEdge(Line line, Axis x) {
        return x.high() - last(line).x() <= EDGE * (x.high() - x.low());
    }

    private Frame frame(Sheet sheet, Axis x, Axis y, Gutter gutter) {
        double edge = widest(x) / 2 + 2; // an outer tick hangs over
        double left = Math.max(edge, Sheet.MARGIN + widest(y) + 6);
        double right = Sheet.WIDTH - Math.max(edge, Sheet.MARGIN + gutter.width());
        double base = sheet.bottom() + ABOVE + Sheet.TEXT;
        String label = TextWidth.lines(yLabel, Sheet.WIDTH - 2 * Sheet.MARGIN, Sheet.TEXT, false, 1)
                .get(0);
        sheet.text(label, Sheet.MARGIN, base, Sheet.TEXT, Anchor.START, false, "ew-ink", false);
        double top = base + ABOVE + (gutter.isEmpty() ? 0 : 4);
        double height = Math.max(LEAST_HEIGHT, gutter.height());
        return new Frame(new Box(left, top, right, top + height), fitting(x, right - left), y);
    }

    private static double widest(Axis axis) {
        double widest = 0;
        for (double tick : axis.ticks()) {
            widest = Math.max(widest, TextWidth.of(axis.text(tick), Sheet.SMALL, false));
        }
        return widest;
    }

    /** Takes fewer ticks until they do not touch. */
    private static Axis fitting(Axis x, double width) {
        Axis fitting = x;
        for (int ticks = X_TICKS; ticks > 1; ticks--) {
            fitting = x.withTicks(ticks);
            if (widest(fitting) + TICK_ROOM <= width * fitting.step() / (fitting.high() - fitting.low())) {
                return fitting;
            }
        }
        return fitting;
    }

    private void draw(Svg body, Frame frame, Placer placer) {
        for (Area area : areas) {
            List<Point> outline = new ArrayList<>(area.high);
            for (int i = area.low.size() - 1; i >= 0; i--) {
                outline.add(area.low.get(i));
            }
            body.empty(
                    "path", "d", path(frame, outline) + "Z", "class", "ew-fill" + area.style, "fill-opacity", "0.22");
        }
        for (Guide guide : guides) {
            double y = frame.y(guide.value);
            Frame.rule(body, frame.area().left(), y, frame.area().right(), y, "ew-axis");
            placer.keepClear(frame.area().left(), y, frame.area().right(), y);
        }
        for (Guide upright : uprights) {
            double x = frame.x(upright.value);
            Frame.rule(body, x, frame.area().top(), x, frame.area().bottom(), "ew-axis");
            placer.keepClear(x, frame.area().top(), x, frame.area().bottom());
        }
        for (Line line : lines) {
            stroke(body, frame, placer, line);
        }
        for (Mark mark : marks) {
            dot(body, frame, mark.at, mark.style);
        }
    }

    private static void stroke(Svg body, Frame frame, Placer placer, Line line) {
        List<String> attributes = new ArrayList<>(
                List.of("d", path(frame, line.points), "class", "ew-line" + line.style, "fill", "none"));
        attributes.addAll(List.of("stroke-width", "2.2", "stroke-linejoin", "round"));
        attributes.addAll(Theme.dashes(line.style));
        body.empty("path", attributes.toArray(String[]::new));
        Point before = line.points.get(0);
        for (Point point : line.points) {
            placer.keepClear(frame.x(before.x()), frame.y(before.y()), frame.x(point.x()), frame.y(point.y()));
            before = point;
        }
        if (line.points.size() == 1) {
            dot(body, frame, before, line.style);
        }
    }

    private static void dot(Svg body, Frame frame, Point at, int style) {
        body.empty(
                "circle",
                "cx",
                Svg.number(frame.x(at.x())),
                "cy",
                Svg.number(frame.y(at.y())),
                "r",
                "4.5",
                "class",
                "ew-fill" + style + " ew-halo",
                "stroke-width",
                "1.5");
    }

    private static String path(Frame frame, List<Point> points) {
        StringBuilder path = new StringBuilder();
        for (Point point : points) {
            path.append(path.isEmpty() ? "M" : "L")
                    .append(Svg.number(frame.x(point.x())))
                    .append(' ')
                    .append(Svg.number(frame.y(point.y())));
        }
        return path.toString();
    }

    private void label(Frame frame, Placer placer) {
        marks.forEach(mark -> placer.rival(on(frame, mark.at)));
        for (Mark mark : marks) {
            placer.place(mark.label, "ew-ink", List.of(on(frame, mark.at)));
        }
        for (Line line : lines) {
            if (!endsAtEdge(line, frame.x())) {
                placer.place(line.name, "ew-ink", List.of(on(frame, last(line))));
            }
        }
        for (Guide upright : uprights) {
            List<Point> heights = new ArrayList<>();
            for (double part : UPRIGHT_LABELS) {
                double y = frame.area().top()
                        + part * (frame.area().bottom() - frame.area().top());
                heights.add(new Point(frame.x(upright.value), y));
            }
            placer.place(upright.label, "ew-muted", heights);
        }
    }

    private static Point on(Frame frame, Point point) {
        return new Point(frame.x(point.x()), frame.y(point.y()));
    }
}
