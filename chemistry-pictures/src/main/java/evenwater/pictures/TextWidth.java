package evenwater.pictures;

import java.util.ArrayList;
import java.util.List;

/**
 * How wide a text may get, without a font at hand: the widths of Helvetica (Adobe font metrics, from memory) and a margin for fonts that
 * are wider, of which DejaVu Sans is the widest that systems fall back to.
 */
final class TextWidth {

    /** In thousandths of the size, from the space to the tilde. */
    private static final int[] WIDTHS = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, //
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, //
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, //
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, //
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, //
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    private static final int NO_BREAK = 0xA0;
    private static final double OTHER = 0.62;
    private static final double WIDE = 1.1;
    private static final int FIRST_WIDE = 0x1100;
    private static final int FIRST_SYMBOL = 0x2000;
    private static final int LAST_SYMBOL = 0x2BFF;
    private static final double MARGIN = 1.2;
    private static final double BOLD = 1.08;
    private static final String ELLIPSIS = "…";

    private TextWidth() {}

    static double of(String text, double size, boolean bold) {
        double widths = text.codePoints().mapToDouble(TextWidth::of).sum();
        return widths * size * MARGIN * (bold ? BOLD : 1);
    }

    private static double of(int point) {
        if (point >= ' ' && point <= '~') {
            return WIDTHS[point - ' '] / 1000.0;
        }
        if (point == NO_BREAK) {
            return WIDTHS[0] / 1000.0;
        }
        boolean symbol = point >= FIRST_SYMBOL && point <= LAST_SYMBOL;
        return (point >= FIRST_WIDE && !symbol) || !Svg.isText(point) ? WIDE : OTHER;
    }

    /** Breaks a text between words; what no line of this width holds, and what comes after the last line, becomes an ellipsis. */
    static List<String> lines(String text, double width, double size, boolean bold, int most) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (of(longer, size, bold) <= width || line.isEmpty()) {
                line = longer;
            } else if (lines.size() == most - 1) {
                line = longer + ELLIPSIS; // cut below
                break;
            } else {
                lines.add(cut(line, width, size, bold));
                line = word;
            }
        }
        lines.add(cut(line, width, size, bold));
        return lines;
    }

    private static String cut(String line, double width, double size, boolean bold) {
        if (of(line, size, bold) <= width) {
            return line;
        }
        int points = line.codePointCount(0, line.length());
        while (points > 0) {
            points--;
            String shorter =
                    line.substring(0, line.offsetByCodePoints(0, points)).stripTrailing() + ELLIPSIS;
            if (of(shorter, size, bold) <= width) {
                return shorter;
            }
        }
        return ELLIPSIS;
    }
}
