package evenwater.chemistry.worked;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as the steps show them: with a decimal point, without grouping. */
final class Numbers {

    private static final MathContext ALL = new MathContext(17, RoundingMode.HALF_EVEN);

    /** Without the digits in which machines differ: a tie such as 38.15885 must be a tie on all of them. */
    private static final MathContext TOLD = new MathContext(12, RoundingMode.HALF_EVEN);

    private Numbers() {}

    static String rounded(double value, int digits) {
        MathContext places = digits >= ALL.getPrecision() ? ALL : new MathContext(digits, RoundingMode.HALF_EVEN);
        BigDecimal number = new BigDecimal(value);
        return exact((digits < TOLD.getPrecision() ? number.round(TOLD) : number).round(places));
    }

    /** Very small and very large numbers with a power of ten, as {@code 4.3E-7}. */
    static String exact(BigDecimal number) {
        if (number.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = number.stripTrailingZeros();
        int exponent = stripped.precision() - stripped.scale() - 1;
        return exponent < -5 || exponent > 12
                ? stripped.movePointLeft(exponent).toPlainString() + "E" + exponent
                : stripped.toPlainString();
    }
}
