package evenwater.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.Size;

/** Whatever is drawn, it can be read: laws of charts of random figures and names. */
class ChartPropertiesTest {

    @Provide
    Arbitrary<String> words() {
        return Arbitraries.strings().ofMinLength(1).ofMaxLength(80).filter(text -> !text.isBlank());
    }

    @Provide
    Arbitrary<Double> figures() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(-1e9, 1e9).ofScale(6),
                Arbitraries.doubles().between(-10, 10).ofScale(6),
                Arbitraries.of(0.0, 1e9, -1e9, 1e-300, Double.MIN_VALUE, 7.0));
    }

    @Provide
    Arbitrary<List<Point>> points() {
        return Combinators.combine(figures(), figures())
                .as(Point::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(20);
    }

    private static String svg(String title, Chart chart) {
        Sheet sheet = new Sheet(title);
        sheet.subtitle(title);
        chart.draw(sheet);
        sheet.gap();
        sheet.note(title);
        return sheet.toSvg("picture", title, title);
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void everyChartIsSound(
            @ForAll("words") String title,
            @ForAll @Size(min = 1, max = 6) List<@From("points") List<Point>> lines,
            @ForAll("words") String name,
            @ForAll @Size(max = 8) List<@From("figures") Double> guides,
            @ForAll("figures") double upright) {
        Chart chart = new Chart(name, title);
        for (int i = 0; i < lines.size(); i++) {
            chart.line(name, i, lines.get(i));
        }
        guides.forEach(guide -> chart.guide(guide, name));
        chart.upright(upright, name).mark(lines.get(0).get(0), 0, name).area(1, lines.get(0), lines.get(0));
        Checks.sound(svg(title, chart));
    }

    @Property
    void theChartShowsTheFiguresThatItWasGiven(@ForAll("points") List<Point> points) {
        Drawn drawn = Drawn.of(svg("any", new Chart("x", "y").line("line", 0, points)));
        List<Point> shown = drawn.lines().get(0);
        assertEquals(points.size(), shown.size());
        double sizeX =
                points.stream().mapToDouble(point -> Math.abs(point.x())).max().orElse(0);
        double sizeY =
                points.stream().mapToDouble(point -> Math.abs(point.y())).max().orElse(0);
        for (int i = 0; i < points.size(); i++) {
            // a coordinate is rounded to 0.01, and so are the two ticks that it is read by
            assertEquals(
                    points.get(i).x(), drawn.valueAtX(shown.get(i).x()), 0.03 * drawn.perUnit(true) + 1e-9 * sizeX);
            assertEquals(
                    points.get(i).y(), drawn.valueAtY(shown.get(i).y()), 0.03 * drawn.perUnit(false) + 1e-9 * sizeY);
        }
    }

    @Property
    void ticksAreRoundEvenAndInside(@ForAll("figures") double one, @ForAll("figures") double other) {
        Axis axis = Axis.from("any", DoubleStream.of(one, other), 6);
        double[] ticks = axis.ticks();
        assertTrue(ticks.length >= 1 && ticks.length <= 8, () -> axis + " has " + ticks.length + " ticks");
        for (double tick : ticks) {
            assertTrue(tick >= axis.low() && tick <= axis.high());
        }
        String digits = new BigDecimal(axis.step())
                .round(new MathContext(6))
                .stripTrailingZeros()
                .unscaledValue()
                .toString();
        assertTrue(List.of("1", "2", "5").contains(digits), digits);
    }

    @Property
    void linesOfATextHoldItsWordsInOrder(@ForAll("words") String text) {
        List<String> lines = TextWidth.lines(text, 300, 13, false, 1000);
        String all = String.join(" ", lines);
        if (!all.contains("…")) {
            assertEquals(text.strip().replaceAll("\\s+", " "), all);
        }
        List<String> few = new ArrayList<>(TextWidth.lines(text, 100, 13, true, 2));
        assertTrue(few.size() <= 2);
        few.forEach(line -> assertTrue(TextWidth.of(line, 13, true) <= 100, line));
    }

    @Property
    void namesAreShownAsTheyAre(@ForAll("names") String name) {
        String svg = svg(name, new Chart("x", "y").line(name, 0, List.of(new Point(0, 1), new Point(1, 2))));
        assertTrue(Drawn.of(svg).texts().stream().anyMatch(text -> text.words().equals(name)), name);
        assertEquals(name, Drawn.of(svg).content("title"));
    }

    @Provide
    Arbitrary<String> names() {
        return Arbitraries.strings().withChars("<>&\"'äß²⁺µab").ofMinLength(1).ofMaxLength(8);
    }
}
