package evenwater.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.pictures.Drawn.Text;
import java.util.List;
import java.util.Set;
import org.w3c.dom.Element;

/** What holds for every picture, of whatever water. */
final class Checks {

    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "style", "rect", "line", "path", "circle", "text");

    private static final double HALF_A_STROKE = 3;

    private Checks() {}

    static void sound(String svg) {
        Drawn drawn = Drawn.of(svg);
        assertEquals("img", drawn.root().getAttribute("role"));
        assertFalse(drawn.content("title").isBlank());
        assertFalse(drawn.content("desc").isBlank());
        String named = drawn.root().getAttribute("aria-labelledby");
        assertEquals(
                named,
                drawn.all("title").get(0).getAttribute("id") + " "
                        + drawn.all("desc").get(0).getAttribute("id"));
        assertFalse(svg.contains("NaN") || svg.contains("Infinity"), svg);
        for (Element element : drawn.all("*")) {
            assertTrue(ELEMENTS.contains(element.getLocalName()), element.getLocalName());
        }
        assertFalse(svg.matches("(?s).*(href|url\\(|@import|\\son[a-z]+=).*"), "refers to something outside");
        texts(drawn);
        strokes(drawn);
    }

    private static void texts(Drawn drawn) {
        List<Text> texts = drawn.texts();
        for (int i = 0; i < texts.size(); i++) {
            Text one = texts.get(i);
            assertFalse(one.words().isBlank(), "blank text");
            assertTrue(one.box().isInside(drawn.paper()), () -> one + " is not on the paper " + drawn.paper());
            for (Text other : texts.subList(0, i)) {
                assertFalse(one.box().overlaps(other.box()), () -> one + " lies on " + other);
            }
        }
    }

    private static void strokes(Drawn drawn) {
        for (Element path : drawn.all("path")) {
            if (path.getAttribute("stroke-width").equals("1.2")) {
                continue; // a leader; H has one coordinate
            }
            for (Point point : Drawn.points(path.getAttribute("d"))) {
                assertTrue(isOn(drawn, point.x(), point.y()), () -> point + " is not on the paper");
            }
        }
        for (Element line : drawn.all("line")) {
            assertTrue(isOn(drawn, Drawn.number(line, "x1"), Drawn.number(line, "y1")), "line off the paper");
            assertTrue(isOn(drawn, Drawn.number(line, "x2"), Drawn.number(line, "y2")), "line off the paper");
        }
        for (Element bar : drawn.all("rect")) {
            double x = bar.hasAttribute("x") ? Drawn.number(bar, "x") : 0;
            assertTrue(
                    x + Drawn.number(bar, "width") <= drawn.paper().right() && Drawn.number(bar, "width") >= 0,
                    "bar off the paper");
        }
    }

    private static boolean isOn(Drawn drawn, double x, double y) {
        return drawn.paper().isWithin(x, y, -HALF_A_STROKE);
    }
}
