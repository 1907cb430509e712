package evenwater.chemistry.uncertainty;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.util.Locale;
import java.util.Objects;

/** Writes a value, its expanded uncertainty and its interval, all rounded to one decimal and with one power of ten. */
final class RoundedText {

    /** Digits of a double that are worth writing. */
    private static final int DIGITS = 15;

    private static final String K = " (k = 2)";
    private static final int LEAST_PLAIN = -6;
    private static final int MOST_PLAIN = 8;

    private final double value;
    private final double expanded;
    private final String symbol;
    private final Locale locale;
    private final int powerOfTen;
    private final int scale;

    private RoundedText(double value, double expanded, String symbol, Locale locale, int powerOfTen, int scale) {
        this.value = value;
        this.expanded = expanded;
        this.symbol = symbol.isEmpty() ? "" : " " + symbol;
        this.locale = locale;
        this.powerOfTen = powerOfTen;
        this.scale = scale;
    }

    static RoundedText of(double value, double expanded, String symbol, Locale locale) {
        Objects.requireNonNull(locale, "locale");
        int magnitude = roundedExponent(Math.max(Math.abs(value), expanded));
        int power = magnitude < LEAST_PLAIN || magnitude > MOST_PLAIN ? magnitude : 0;
        int digits = firstDigit(expanded) <= 2 ? 2 : 1;
        int scale = expanded == 0 ? Integer.MAX_VALUE : digits - 1 - exponent(expanded) + power;
        return new RoundedText(value, expanded, symbol, locale, power, scale);
    }

    /** {@code 118 ± 9 mg/L (k = 2)}. */
    String estimate() {
        if (expanded == 0) {
            return withPower(rounded(value)) + symbol + ", without uncertainty";
        }
        if (value != 0 && exponent(expanded) < exponent(value) - DIGITS) {
            RoundedText own = of(0, expanded, "", locale);
            String part = own.withPower(own.format(own.shifted(expanded).setScale(own.scale, RoundingMode.HALF_UP)));
            return withPower(rounded(value)) + " ± " + part + symbol + K;
        }
        String both = rounded(value) + " ± " + format(shifted(expanded).setScale(scale, RoundingMode.HALF_UP));
        return withPower(powerOfTen == 0 ? both : "(" + both + ")") + symbol + K;
    }

    /** {@code 95 % between 110 and 127 mg/L}. */
    String between(double coverage, double low, double high) {
        BigDecimal percent = BigDecimal.valueOf(coverage).movePointRight(2).stripTrailingZeros();
        return format(percent.setScale(Math.max(0, percent.scale()))) + " % between " + withPower(rounded(low))
                + " and " + withPower(rounded(high)) + symbol;
    }

    private String withPower(String mantissa) {
        return powerOfTen == 0 ? mantissa : mantissa + " × 10" + superscript(powerOfTen);
    }

    /** To the decimal of the uncertainty, but no more digits than a double has. */
    private String rounded(double number) {
        BigDecimal shifted = shifted(number);
        if (shifted.signum() == 0) {
            return format(BigDecimal.ZERO.setScale(scale == Integer.MAX_VALUE ? 0 : Math.max(0, scale)));
        }
        int own = DIGITS - shifted.precision() + shifted.scale();
        BigDecimal rounded = shifted.setScale(Math.min(scale, own), RoundingMode.HALF_UP);
        return format(scale > own ? stripped(rounded) : rounded);
    }

    private static BigDecimal stripped(BigDecimal number) {
        return number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
    }

    private BigDecimal shifted(double number) {
        return new BigDecimal(number).movePointLeft(powerOfTen);
    }

    private String format(BigDecimal number) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setMinimumFractionDigits(Math.max(0, number.scale()));
        format.setMaximumFractionDigits(Math.max(0, number.scale()));
        return format.format(number);
    }

    /** The power of ten of the first digit; 0 of 0. */
    private static int exponent(double number) {
        return exponent(new BigDecimal(number));
    }

    /** The same of a number such as 9.9999e-8, which is 1e-7 in all digits that are shown. */
    private static int roundedExponent(double number) {
        return exponent(new BigDecimal(number).round(new MathContext(3)));
    }

    private static int exponent(BigDecimal number) {
        return number.signum() == 0 ? 0 : number.precision() - number.scale() - 1;
    }

    private static int firstDigit(double number) {
        return new BigDecimal(number)
                .round(new MathContext(1, RoundingMode.DOWN))
                .unscaledValue()
                .intValue();
    }

    private static String superscript(int number) {
        StringBuilder text = new StringBuilder();
        for (char c : Integer.toString(number).toCharArray()) {
            text.append(c == '-' ? '⁻' : "⁰¹²³⁴⁵⁶⁷⁸⁹".charAt(c - '0'));
        }
        return text.toString();
    }
}
