package evenwater.pictures;

import java.util.Collections;
import java.util.List;

/**
 * Colours and dashes.
 *
 * <p>The colours of lines follow the set of M. Okabe and K. Ito, Color Universal Design (2008, from memory), darkened or lightened so
 * that each stands out from its paper by 3 : 1 or more, as WCAG 2.1 asks of graphics (1.4.11), and text by 4.5 : 1 (1.4.3). The rules are
 * written out for both papers, because renderers outside of browsers know no variables of CSS.
 */
final class Theme {

    /** More lines than these cannot be told apart by their dashes. */
    static final int STYLES = 6;

    private static final List<String> DASHES = List.of("", "8 4", "2 3", "10 3 2 3", "14 5", "5 2");

    private static final Paper LIGHT = new Paper(
            "#ffffff",
            "#1f2328",
            "#57606a",
            "#dde2e8",
            List.of("#0072b2", "#b84300", "#00855f", "#a8487c", "#b87a00", "#3d444d"));

    private static final Paper DARK = new Paper(
            "#14181d",
            "#e6edf3",
            "#a3adb8",
            "#2c343d",
            List.of("#56b4e9", "#f08a4b", "#2fbf91", "#e08fbe", "#f0e442", "#d0d7de"));

    private Theme() {}

    private record Paper(String paper, String ink, String muted, String grid, List<String> lines) {

        void write(StringBuilder css) {
            rule(css, "paper", "fill:" + paper);
            rule(css, "ink", "fill:" + ink);
            rule(css, "muted", "fill:" + muted);
            rule(css, "halo", "stroke:" + paper);
            rule(css, "grid", "stroke:" + grid);
            rule(css, "axis", "stroke:" + muted);
            for (int i = 0; i < STYLES; i++) {
                rule(css, "line" + i, "stroke:" + lines.get(i));
                rule(css, "fill" + i, "fill:" + lines.get(i));
            }
        }

        private static void rule(StringBuilder css, String name, String declaration) {
            css.append(".ew-").append(name).append('{').append(declaration).append("}\n");
        }
    }

    static String css() {
        StringBuilder css = new StringBuilder("\n.ew text{font-family:Arial,'Liberation Sans',sans-serif}\n");
        LIGHT.write(css);
        css.append("@media screen and (prefers-color-scheme:dark){\n");
        DARK.write(css);
        return css.append("}\n").toString();
    }

    /** The dashes of a line, as attributes; none for a whole line. */
    static List<String> dashes(int style) {
        String dashes = DASHES.get(style);
        return dashes.isEmpty() ? Collections.emptyList() : List.of("stroke-dasharray", dashes);
    }
}
