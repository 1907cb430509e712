package evenwater.pictures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The colours, as they stand in the files that are written.
 *
 * <p>Contrast by WCAG 2.1 (W3C 2018): relative luminance and contrast ratio; 4.5 for text (1.4.3), 3 for graphics (1.4.11). What people
 * with a colour vision deficiency see by the matrices of G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, IEEE Trans. Vis. Comput.
 * Graph. 15 (2009) 1291, for full severity (from memory), applied to linear RGB; distances in CIELAB (CIE 1976, D65).
 */
class ThemeTest {

    private static final double TEXT = 4.5;
    private static final double GRAPHICS = 3;
    /** A just noticeable difference is some 2.3 (M. Mahy et al. 1994, from memory); lines are thin, so four times that. */
    private static final double APART = 9.2;

    /** Opacity of bars and bands. */
    private static final double PALE = 0.22;

    private static final Map<String, double[][]> DEFICIENCIES = Map.of(
            "none", new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
            "protan",
                    new double[][] {
                        {0.152286, 1.052583, -0.204868},
                        {0.114503, 0.786281, 0.099216},
                        {-0.003882, -0.048116, 1.051998}
                    },
            "deutan",
                    new double[][] {
                        {0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}
                    },
            "tritan",
                    new double[][] {
                        {1.255528, -0.076749, -0.178779},
                        {-0.078411, 0.930809, 0.147602},
                        {0.004733, 0.691367, 0.303900}
                    });

    private static Map<String, Map<String, double[]>> papers() {
        String css = Drawn.of(BalancePicture.of(Samples.LEDGER).toSvg()).content("style");
        int dark = css.indexOf("@media screen and (prefers-color-scheme:dark)");
        assertTrue(dark > 0, css);
        return Map.of("light", colours(css.substring(0, dark)), "dark", colours(css.substring(dark)));
    }

    private static Map<String, double[]> colours(String css) {
        Matcher m = Pattern.compile("\\.ew-([a-z0-9]+)\\{(?:fill|stroke):#([0-9a-f]{6})}")
                .matcher(css);
        Map<String, double[]> colours = new HashMap<>();
        while (m.find()) {
            int rgb = Integer.parseInt(m.group(2), 16);
            colours.put(m.group(1), new double[] {(rgb >> 16) / 255.0, (rgb >> 8 & 255) / 255.0, (rgb & 255) / 255.0});
        }
        return colours;
    }

    @Test
    void theStyleSheetIsWrittenRuleByRule() {
        String css = Drawn.of(BalancePicture.of(Samples.LEDGER).toSvg()).content("style");
        assertEquals(Theme.css(), css);
        String rule = "\\.ew[a-z0-9 -]*\\{[a-z-]+:[^{}]+}\n";
        assertTrue(
                css.matches(
                        "\n(" + rule + ")+@media screen and \\(prefers-color-scheme:dark\\)\\{\n(" + rule + ")+}\n"),
                css);
    }

    private static double linear(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
    }

    private static double luminance(double[] colour) {
        return 0.2126 * linear(colour[0]) + 0.7152 * linear(colour[1]) + 0.0722 * linear(colour[2]);
    }

    private static double contrast(double[] one, double[] other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    @Test
    void blackOnWhiteHasTheContrastThatTheRecommendationStates() {
        assertEquals(21, contrast(new double[3], new double[] {1, 1, 1}), 1e-12); // WCAG 2.1, contrast ratio
    }

    @TestFactory
    Stream<DynamicTest> textStandsOutFromPaperBarsAndBands() {
        return papers().entrySet().stream()
                .map(paper -> DynamicTest.dynamicTest(paper.getKey(), () -> {
                    Map<String, double[]> colours = paper.getValue();
                    for (String text : List.of("ink", "muted")) {
                        assertTrue(contrast(colours.get(text), colours.get("paper")) >= TEXT, text);
                    }
                    for (int i = 0; i < Theme.STYLES; i++) {
                        double[] bar = pale(colours.get("fill" + i), colours.get("paper"));
                        assertTrue(contrast(colours.get("ink"), bar) >= TEXT, "ink on bar " + i);
                    }
                }));
    }

    private static double[] pale(double[] colour, double[] paper) {
        double[] pale = new double[3];
        for (int i = 0; i < 3; i++) {
            pale[i] = PALE * colour[i] + (1 - PALE) * paper[i];
        }
        return pale;
    }

    @TestFactory
    Stream<DynamicTest> linesStandOutFromThePaper() {
        return papers().entrySet().stream()
                .map(paper -> DynamicTest.dynamicTest(paper.getKey(), () -> {
                    Map<String, double[]> colours = paper.getValue();
                    for (int i = 0; i < Theme.STYLES; i++) {
                        assertTrue(contrast(colours.get("line" + i), colours.get("paper")) >= GRAPHICS, "line" + i);
                    }
                    assertTrue(contrast(colours.get("axis"), colours.get("paper")) >= GRAPHICS, "axis");
                }));
    }

    @TestFactory
    Stream<DynamicTest> anyTwoLinesStayApartForEveryEye() {
        return papers().entrySet().stream()
                .flatMap(paper -> DEFICIENCIES.entrySet().stream()
                        .map(eye -> DynamicTest.dynamicTest(paper.getKey() + ", " + eye.getKey(), () -> {
                            for (int i = 0; i < Theme.STYLES; i++) {
                                for (int j = 0; j < i; j++) {
                                    double distance = distance(
                                            lab(paper.getValue().get("line" + i), eye.getValue()),
                                            lab(paper.getValue().get("line" + j), eye.getValue()));
                                    assertTrue(distance >= APART, i + " and " + j + ": " + distance);
                                }
                            }
                        })));
    }

    @Test
    void noTwoLinesHaveTheSameDashes() {
        for (int i = 0; i < Theme.STYLES; i++) {
            for (int j = 0; j < i; j++) {
                assertNotEquals(Theme.dashes(i), Theme.dashes(j));
            }
        }
    }

    private static double[] lab(double[] colour, double[][] eye) {
        double[] seen = new double[3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                seen[i] += eye[i][j] * linear(colour[j]);
            }
            seen[i] = Math.max(0, Math.min(1, seen[i]));
        }
        double x = root((0.4124 * seen[0] + 0.3576 * seen[1] + 0.1805 * seen[2]) / 0.9505);
        double y = root(0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2]);
        double z = root((0.0193 * seen[0] + 0.1192 * seen[1] + 0.9505 * seen[2]) / 1.089);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double ratio) {
        return ratio > 0.008856 ? Math.cbrt(ratio) : 7.787 * ratio + 16 / 116.0;
    }

    private static double distance(double[] one, double[] other) {
        return Math.sqrt(
                Math.pow(one[0] - other[0], 2) + Math.pow(one[1] - other[1], 2) + Math.pow(one[2] - other[2], 2));
    }
}
