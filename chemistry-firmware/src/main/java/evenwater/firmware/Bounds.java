package evenwater.firmware;

import java.util.regex.Pattern;

/** How a proven bound is printed in a comment. */
final class Bounds {

    private static final int DECIMALS = 12;
    private static final Pattern TRAILING_ZEROS = Pattern.compile("0+$");

    private Bounds() {}

    /** Last places of the result, rounded up, so that what is printed is a bound too. */
    static String text(Ratio bound) {
        return TRAILING_ZEROS.matcher(bound.roundedUp(DECIMALS)).replaceFirst("");
    }
}
