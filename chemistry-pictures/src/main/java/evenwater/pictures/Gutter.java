package evenwater.pictures;

import evenwater.pictures.Sheet.Anchor;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The labels at the right of a chart, each beside its line, pushed apart where lines end close together. */
final class Gutter {

    private static final double WIDEST = 150;
    private static final double LEADER = 22;
    private static final double GAP = 5;
    private static final double LINE = 15;
    private static final double BETWEEN = 3;
    private static final int MOST_LINES = 3;
    private static final double OVERHANG = 8;

    private final List<Entry> entries = new ArrayList<>();

    /** A label that wants to stand at a height of the chart. */
    private record Entry(double value, List<String> lines, String colour, String text) {

        double height() {
            return lines.size() * LINE + BETWEEN;
        }
    }

    void add(double value, String label, String colour, String textColour) {
        entries.add(
                new Entry(value, TextWidth.lines(label, WIDEST, Sheet.TEXT, false, MOST_LINES), colour, textColour));
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    /** How much room the labels take at the right of the chart. */
    double width() {
        double widest = entries.stream()
                .flatMap(entry -> entry.lines.stream())
                .mapToDouble(line -> TextWidth.of(line, Sheet.TEXT, false))
                .max()
                .orElse(0);
        return isEmpty() ? 0 : LEADER + GAP + widest;
    }

    /** How high the chart must be for all of them. */
    double height() {
        return entries.stream().mapToDouble(Entry::height).sum();
    }

    void draw(Sheet sheet, Frame frame) {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparingDouble(entry -> frame.y(entry.value)));
        double[] tops = tops(sorted, frame);
        for (int i = 0; i < tops.length; i++) {
            Entry entry = sorted.get(i);
            double right = frame.area().right();
            double middle = tops[i] + entry.height() / 2;
            sheet.body()
                    .empty(
                            "path",
                            "d",
                            "M" + Svg.number(right + 2) + " " + Svg.number(frame.y(entry.value)) + "L"
                                    + Svg.number(right + LEADER - 8) + " " + Svg.number(middle) + "H"
                                    + Svg.number(right + LEADER),
                            "class",
                            entry.colour,
                            "fill",
                            "none",
                            "stroke-width",
                            "1.2");
            double base = middle - (entry.lines.size() - 1) * LINE / 2 + Sheet.TEXT * 0.35;
            for (String line : entry.lines) {
                sheet.text(line, right + LEADER + GAP, base, Sheet.TEXT, Anchor.START, false, entry.text, false);
                base += LINE;
            }
        }
    }

    /** Down from the top, each below the one before; then up from the bottom as far as they hang over. */
    private static double[] tops(List<Entry> sorted, Frame frame) {
        double[] tops = new double[sorted.size()];
        double free = frame.area().top() - OVERHANG;
        for (int i = 0; i < tops.length; i++) {
            Entry entry = sorted.get(i);
            tops[i] = Math.max(free, frame.y(entry.value) - entry.height() / 2);
            free = tops[i] + entry.height();
        }
        double floor = frame.area().bottom() + OVERHANG;
        for (int i = tops.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], floor - sorted.get(i).height());
            floor = tops[i];
        }
        return tops;
    }
}
