package evenwater.chemistry.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.Unit;

/** Reads and writes the text of quantities. */
final class QuantityText {

    /** Makes a quantity of a number and a unit. */
    @FunctionalInterface
    interface Maker<Q extends Quantity<Q>, R> {
        R make(double value, Unit<Q> unit);
    }

    private QuantityText() {}

    /** Reads {@code 22 gpg}: a number with a decimal point, then a spelling of a unit. */
    static <Q extends Quantity<Q>, R> R parse(String text, UnitNames<Q> names, Maker<Q, R> maker) {
        String thing = names.thing();
        int start = skipSpace(Objects.requireNonNull(text, "text"), 0);
        int end = endOfNumber(text, start);
        if (end == start) {
            throw new UnreadableTextException(
                    thing, text, "expected a number with '.' and a unit such as " + names.example(), start);
        }
        if (end < text.length() && text.charAt(end) == ',') {
            throw new UnreadableTextException(
                    thing, text, "a comma may be a decimal sign or a thousand: use a point and no grouping", end);
        }
        double value = Double.parseDouble(text.substring(start, end));
        if (!Double.isFinite(value)) {
            throw new UnreadableTextException(thing, text, "the number is too large", start);
        }
        Unit<Q> unit = names.find(text, skipSpace(text, end));
        try {
            return maker.make(value, unit);
        } catch (IllegalArgumentException e) { // a number that the kind does not have, such as -300 °C
            throw new UnreadableTextException(thing, text, String.valueOf(e.getMessage()), start);
        }
    }

    /** Returns the index behind {@code [+-]digits[.digits][e[+-]digits]}, or {@code start} if there is no such number. */
    static int endOfNumber(String text, int start) {
        int i = start;
        if (i < text.length() && (text.charAt(i) == '+' || text.charAt(i) == '-')) {
            i++;
        }
        int digits = i;
        i = skipDigits(text, i);
        int count = i - digits;
        if (i < text.length() && text.charAt(i) == '.') {
            int fraction = skipDigits(text, i + 1);
            count += fraction - i - 1;
            i = fraction;
        }
        if (count == 0) {
            return start;
        }
        if (i < text.length() && (text.charAt(i) == 'e' || text.charAt(i) == 'E')) {
            int sign =
                    i + 1 < text.length() && (text.charAt(i + 1) == '+' || text.charAt(i + 1) == '-') ? i + 2 : i + 1;
            int exponent = skipDigits(text, sign);
            if (exponent > sign) {
                i = exponent;
            }
        }
        return i;
    }

    private static int skipDigits(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i;
    }

    /** Spaces that do not break a line count too: they stand between number and unit in good typography. */
    private static boolean isSpace(char c) {
        return Character.isWhitespace(c) || Character.isSpaceChar(c);
    }

    static int skipSpace(String text, int from) {
        int i = from;
        while (i < text.length() && isSpace(text.charAt(i))) {
            i++;
        }
        return i;
    }

    /** All digits that tell this double from its neighbours, whole numbers without ".0". */
    static String number(double value) {
        String text = Double.toString(value);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    static String rounded(double value, Locale locale, int significantDigits) {
        if (significantDigits < 1 || significantDigits > 17) {
            throw new IllegalArgumentException(
                    "significant digits must be from 1 to 17, but were " + significantDigits);
        }
        BigDecimal decimal = new BigDecimal(value).round(new MathContext(significantDigits));
        NumberFormat format = NumberFormat.getNumberInstance(Objects.requireNonNull(locale, "locale"));
        format.setMaximumFractionDigits(Math.max(0, decimal.scale()));
        return format.format(decimal);
    }
}
