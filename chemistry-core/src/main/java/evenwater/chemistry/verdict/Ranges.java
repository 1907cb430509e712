package evenwater.chemistry.verdict;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Locale;

/** Text of ranges in the usual unit of a parameter. */
final class Ranges {

    static final int DIGITS = 3;

    private Ranges() {}

    /** Such as {@code 4.2 °dH}, {@code 4 to 5 °dH} or {@code 4 °dH or more}. */
    static <Q extends WaterQuantity<?>> String text(Parameter<Q> parameter, Bounds<Q> may, Locale locale) {
        if (may.openBelow() && may.openAbove()) {
            return "about " + one(parameter, may.value(), locale);
        }
        if (may.openAbove()) {
            return one(parameter, may.low(), locale) + " or more";
        }
        if (may.openBelow()) {
            return one(parameter, may.high(), locale) + " or less";
        }
        String from = one(parameter, may.low(), locale);
        String to = one(parameter, may.high(), locale);
        String unit = " " + parameter.unitSymbol();
        return from.equals(to)
                ? to
                : (from.endsWith(unit) ? from.substring(0, from.length() - unit.length()) : from) + " to " + to;
    }

    private static <Q extends WaterQuantity<?>> String one(Parameter<Q> parameter, Q quantity, Locale locale) {
        return parameter.of(parameter.number(quantity)).toText(locale, DIGITS);
    }
}
