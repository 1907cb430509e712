package evenwater.pictures;

import evenwater.pictures.Sheet.Anchor;
import evenwater.pictures.Sheet.Box;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A picture read back from its SVG by the XML parser of the JDK. */
final class Drawn {

    private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

    private final Document document;

    private Drawn(Document document) {
        this.document = document;
    }

    /** A text with the box it takes. */
    record Text(String words, double x, double y, Box box) {}

    static Drawn of(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return new Drawn(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(e.getMessage() + " in\n" + svg, e);
        }
    }

    Element root() {
        return document.getDocumentElement();
    }

    List<Element> all(String name) {
        NodeList nodes = document.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    String content(String name) {
        return all(name).get(0).getTextContent();
    }

    Box paper() {
        String[] box = root().getAttribute("viewBox").split(" ");
        return new Box(0, 0, Double.parseDouble(box[2]), Double.parseDouble(box[3]));
    }

    List<Text> texts() {
        return all("text").stream().map(Drawn::text).toList();
    }

    private static Text text(Element element) {
        String words = element.getTextContent();
        double x = number(element, "x");
        double y = number(element, "y");
        Anchor anchor = Anchor.valueOf(element.getAttribute("text-anchor").toUpperCase(Locale.ROOT));
        boolean bold = element.getAttribute("font-weight").equals("bold");
        return new Text(words, x, y, Sheet.box(words, x, y, number(element, "font-size"), anchor, bold));
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    /** The lines of a chart, whole or dashed, in the order in which they were drawn. */
    List<List<Point>> lines() {
        return series().stream().map(path -> points(path.getAttribute("d"))).toList();
    }

    List<Element> series() {
        return all("path").stream()
                .filter(path -> path.getAttribute("stroke-width").equals("2.2"))
                .toList();
    }

    List<Element> areas() {
        return all("path").stream()
                .filter(path -> !path.getAttribute("fill-opacity").isEmpty())
                .toList();
    }

    static List<Point> points(String path) {
        List<Double> numbers = numbers(path);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < numbers.size(); i += 2) {
            points.add(new Point(numbers.get(i), numbers.get(i + 1)));
        }
        return points;
    }

    static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        Matcher m = NUMBER.matcher(text);
        while (m.find()) {
            numbers.add(Double.parseDouble(m.group()));
        }
        return numbers;
    }

    /** The value of an abscissa, by the two outer ticks below the chart: as a reader with a ruler would read it. */
    double valueAtX(double x) {
        List<Text> ticks = ticks(true);
        return read(x, ticks.get(0), ticks.get(ticks.size() - 1), true);
    }

    double valueAtY(double y) {
        List<Text> ticks = ticks(false);
        return read(y, ticks.get(0), ticks.get(ticks.size() - 1), false);
    }

    /** How much a unit of the picture is on an axis. */
    double perUnit(boolean horizontal) {
        return Math.abs(horizontal ? valueAtX(1) - valueAtX(0) : valueAtY(1) - valueAtY(0));
    }

    private static double read(double at, Text first, Text last, boolean horizontal) {
        double from = horizontal ? first.x : first.y - Sheet.SMALL * 0.35;
        double to = horizontal ? last.x : last.y - Sheet.SMALL * 0.35;
        double low = value(first);
        return low + (at - from) / (to - from) * (value(last) - low);
    }

    private static double value(Text tick) {
        return Double.parseDouble(tick.words.replace('−', '-'));
    }

    /** Tick labels are the numbers in small type: centred below, set right beside. */
    List<Text> ticks(boolean horizontal) {
        return all("text").stream()
                .filter(text -> text.getAttribute("text-anchor").equals(horizontal ? "middle" : "end"))
                .filter(text -> text.getTextContent().matches("−?[0-9]+(\\.[0-9]+)?"))
                .map(Drawn::text)
                .toList();
    }
}
