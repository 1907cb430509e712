package evenwater.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people write and read them: with a point, without grouping, whatever the language of the machine. */
final class PlainNumber {

    private static final int TOLD_DIGITS = 12;

    private PlainNumber() {}

    /** Tells whether a text is {@code [+-]digits[.digits][e[+-]digits]} and a finite number. */
    static boolean isWellFormed(String text) {
        int i = skipSign(text, 0);
        int whole = skipDigits(text, i);
        int end = whole;
        int digits = whole - i;
        if (end < text.length() && text.charAt(end) == '.') {
            end = skipDigits(text, whole + 1);
            digits += end - whole - 1;
        }
        if (digits == 0) {
            return false;
        }
        if (end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E')) {
            int exponent = skipSign(text, end + 1);
            end = skipDigits(text, exponent);
            if (end == exponent) {
                return false;
            }
        }
        return end == text.length() && Double.isFinite(Double.parseDouble(text));
    }

    private static int skipSign(String text, int from) {
        return from < text.length() && (text.charAt(from) == '+' || text.charAt(from) == '-') ? from + 1 : from;
    }

    private static int skipDigits(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i;
    }

    /** Rounds to digits that count, without zeros at the end; very large and small numbers with a power of ten. */
    static String rounded(double value, int significantDigits) {
        if (value == 0) {
            return "0";
        }
        BigDecimal decimal = told(value)
                .round(new MathContext(significantDigits, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        int power = decimal.precision() - decimal.scale() - 1;
        if (power >= -5 && power < 9) {
            return decimal.toPlainString();
        }
        return decimal.movePointLeft(power).stripTrailingZeros().toPlainString() + " × 10^" + power;
    }

    /** Rounds to decimals, as a pH is read. */
    static String withDecimals(double value, int decimals) {
        return told(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** Without the last digits, in which machines differ: a tie such as 32.415 must be a tie on all of them. */
    private static BigDecimal told(double value) {
        return new BigDecimal(value).round(new MathContext(TOLD_DIGITS));
    }
}
