package evenwater.pictures;

import evenwater.pictures.ChargeBars.Part;
import evenwater.pictures.Sheet.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** Bars over one axis, a pair for each water, with room at their right for what is too thin to hold its label. */
final class BarFrame {

    private static final double LEFT = Sheet.MARGIN + 62;
    private static final double RIGHT = Sheet.WIDTH - Sheet.MARGIN - 54;
    private static final double HEIGHT = 22;
    private static final double BETWEEN = 3;
    private static final double BETWEEN_WATERS = 12;
    private static final double PAD = 8;
    private static final int TICKS = 5;
    private static final int NAME_LINES = 2;
    private static final int THIN_LINES = 3;

    private final Axis axis;

    private BarFrame(Axis axis) {
        this.axis = axis;
    }

    static BarFrame of(List<ChargeBars> waters) {
        DoubleStream values =
                DoubleStream.concat(DoubleStream.of(0), waters.stream().mapToDouble(ChargeBars::sum));
        return new BarFrame(Axis.around("meq/L", values, TICKS));
    }

    private double x(double milliequivalents) {
        return axis.at(milliequivalents, LEFT, RIGHT);
    }

    void draw(Sheet sheet, ChargeBars water) {
        double y = sheet.bottom() + BETWEEN_WATERS;
        String name = Figures.capital(water.name()) + ": " + Figures.text(water.sum(), "meq/L");
        for (String line : TextWidth.lines(name, Sheet.WIDTH - 2 * Sheet.MARGIN, Sheet.TEXT, true, NAME_LINES)) {
            y += Sheet.TEXT * Sheet.LINE_HEIGHT;
            sheet.text(line, Sheet.MARGIN, y, Sheet.TEXT, Anchor.START, true, "ew-ink", true);
        }
        y += PAD;
        List<String> below = new ArrayList<>();
        bar(sheet, "cations", water.cations(), y).ifPresent(below::add);
        y += HEIGHT + BETWEEN;
        bar(sheet, "anions", water.anions(), y).ifPresent(below::add);
        sheet.takeDownTo(y + HEIGHT);
        if (!below.isEmpty()) {
            thin(sheet, "too narrow for a number: " + String.join("; ", below));
        }
    }

    private static void thin(Sheet sheet, String words) {
        double y = sheet.bottom() + BETWEEN;
        for (String line : TextWidth.lines(words, Sheet.WIDTH - Sheet.MARGIN - LEFT, Sheet.SMALL, false, THIN_LINES)) {
            y += Sheet.SMALL * Sheet.LINE_HEIGHT;
            sheet.text(line, LEFT, y, Sheet.SMALL, Anchor.START, false, "ew-muted", false);
        }
        sheet.takeDownTo(y);
    }

    /** Draws a bar; answers the parts that are too thin for their words, if there is no room for them at its right. */
    private Optional<String> bar(Sheet sheet, String side, List<Part> parts, double y) {
        double base = y + HEIGHT / 2 + Sheet.SMALL * 0.35;
        sheet.text(side, LEFT - PAD, base, Sheet.SMALL, Anchor.END, false, "ew-muted", false);
        List<String> thin = new ArrayList<>();
        double sum = 0;
        for (Part part : parts) {
            double left = x(sum);
            sum += part.milliequivalents();
            double width = x(sum) - left;
            rectangle(sheet.body(), part, left, y, width);
            boolean wide = fits(part.words(), width);
            if (wide || fits(part.symbol(), width)) {
                String label = wide ? part.words() : part.symbol();
                sheet.text(label, left + width / 2, base, Sheet.SMALL, Anchor.MIDDLE, false, "ew-ink", false);
            }
            if (!wide && part.isShown()) {
                thin.add(part.words());
            }
        }
        String words = String.join(", ", thin);
        boolean fits = x(sum) + PAD + TextWidth.of(words, Sheet.SMALL, false) <= Sheet.WIDTH - Sheet.MARGIN;
        if (fits && !words.isEmpty()) {
            sheet.text(words, x(sum) + PAD, base, Sheet.SMALL, Anchor.START, false, "ew-muted", false);
        }
        return fits ? Optional.empty() : Optional.of(words);
    }

    private static boolean fits(String label, double width) {
        return TextWidth.of(label, Sheet.SMALL, false) + PAD / 2 <= width;
    }

    private static void rectangle(Svg body, Part part, double left, double y, double width) {
        List<String> attributes = new ArrayList<>(List.of("x", Svg.number(left), "y", Svg.number(y)));
        attributes.addAll(List.of("width", Svg.number(width), "height", Svg.number(HEIGHT)));
        if (part.isMeasured()) {
            attributes.addAll(
                    List.of("class", "ew-fill" + part.style() + " ew-line" + part.style(), "fill-opacity", "0.22"));
        } else {
            attributes.addAll(List.of("class", "ew-axis", "fill", "none", "stroke-dasharray", "3 3"));
        }
        body.empty("rect", attributes.toArray(String[]::new));
    }

    /** Draws the axis below all bars. */
    void close(Sheet sheet) {
        double y = sheet.bottom() + PAD;
        Svg body = sheet.body();
        for (double tick : axis.ticks()) {
            Frame.rule(body, x(tick), y, x(tick), y + 5, "ew-axis");
            sheet.text(axis.text(tick), x(tick), y + 18, Sheet.SMALL, Anchor.MIDDLE, false, "ew-muted", false);
        }
        Frame.rule(body, LEFT, y, RIGHT, y, "ew-axis");
        sheet.text(axis.label(), RIGHT + 2 * PAD, y + 18, Sheet.SMALL, Anchor.START, false, "ew-ink", false);
        sheet.takeDownTo(y + 24);
    }
}
