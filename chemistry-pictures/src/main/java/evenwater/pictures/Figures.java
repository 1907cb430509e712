package evenwater.pictures;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers for people. */
final class Figures {

    private static final MathContext THREE = new MathContext(3, RoundingMode.HALF_EVEN);
    private static final BigDecimal LEAST = new BigDecimal("0.0001");

    private static final int FEW_DECIMALS = 3;
    private static final char NO_BREAK = '\u00A0';

    private Figures() {}

    /** A number and its unit that stay on one line. */
    static String text(double value, Object unit) {
        return text(value) + NO_BREAK + unit;
    }

    /** Three digits, but no more than three decimals. */
    static String few(double value) {
        BigDecimal number = new BigDecimal(value);
        BigDecimal three = number.round(THREE);
        return plain(
                three.scale() <= FEW_DECIMALS
                        ? three
                        : number.setScale(FEW_DECIMALS, RoundingMode.HALF_EVEN)); // rounded once
    }

    private static String plain(BigDecimal number) {
        String text = number.signum() == 0 ? "0" : number.toPlainString();
        String plain = text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
        return plain.replace('-', '−');
    }

    /** A sentence begins. */
    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Three digits, never with an exponent; below a ten-thousandth, 0. */
    static String text(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(THREE);
        if (rounded.abs().compareTo(LEAST) < 0) {
            return "0";
        }
        return plain(rounded);
    }
}
