package evenwater.pictures;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes elements, one a line; text is escaped, coordinates have two decimals. */
final class Svg {

    private static final int DECIMALS = 2;

    private static final int REPLACEMENT = 0xFFFD;

    private final StringBuilder text = new StringBuilder();

    /** Begins an element with pairs of names and values. */
    Svg open(String name, String... attributes) {
        tag(name, attributes).append(">\n");
        return this;
    }

    Svg close(String name) {
        text.append("</").append(name).append(">\n");
        return this;
    }

    Svg empty(String name, String... attributes) {
        tag(name, attributes).append("/>\n");
        return this;
    }

    Svg leaf(String name, String content, String... attributes) {
        tag(name, attributes).append('>').append(escaped(content));
        return close(name);
    }

    private StringBuilder tag(String name, String... attributes) {
        text.append('<').append(name);
        for (int i = 0; i < attributes.length; i += 2) {
            text.append(' ')
                    .append(attributes[i])
                    .append("=\"")
                    .append(escaped(attributes[i + 1]))
                    .append('"');
        }
        return text;
    }

    /** Takes what another one wrote. */
    Svg add(Svg other) {
        text.append(other.text);
        return this;
    }

    /** A coordinate: a hundredth of a unit is finer than any screen. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Characters that XML 1.0 cannot hold become the replacement character. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder();
        text.codePoints().forEach(point -> {
            switch (point) {
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '&' -> escaped.append("&amp;");
                case '"' -> escaped.append("&quot;");
                default -> escaped.appendCodePoint(isText(point) ? point : REPLACEMENT);
            }
        });
        return escaped.toString();
    }

    static boolean isText(int point) {
        boolean surrogate = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
        boolean control = point != '\n' && Character.getType(point) == Character.CONTROL;
        return !surrogate && !control && (point & 0xFFFE) != 0xFFFE;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
