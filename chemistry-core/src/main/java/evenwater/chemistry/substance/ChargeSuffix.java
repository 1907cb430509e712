package evenwater.chemistry.substance;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The charge at the end of a formula text: where it starts and what it says.
 *
 * @param start index of its first character; the end of the formula if there is none
 * @param number the charge; no unit
 */
record ChargeSuffix(int start, int number) {

    /** No ion carries more. */
    static final int LARGEST = 8;

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final String PLUS = "[+⁺]";
    private static final String MINUS = "[-⁻−–]";

    /** Spellings that leave no doubt: raised digits, a caret, brackets, the sign first, repeated signs. */
    private static final Pattern PLAIN = Pattern.compile("(?:"
            + "(?<raised>[⁰¹²³⁴-⁹]*)(?<s1>[⁺⁻])"
            + "|\\^\\{?(?<caret>[0-9]?)(?<s2>[-+−–])\\}?"
            + "|\\^\\{?(?<s3>[-+−–])(?<after>[0-9])\\}?"
            + "|\\((?<round>[0-9]?)(?<s4>[-+−–])\\)"
            + "|(?<s5>[-+−–])(?<last>[0-9])"
            + "|(?<many>\\+{2,8}|-{2,8})"
            + ")\\z");

    /** Digits and one sign, where the digits may be a count, a charge or both. */
    private static final Pattern DIGITS = Pattern.compile("(?<digits>[0-9]*)(?<sign>[-+−–])\\z");

    /** What a digit of the charge follows: an element alone, a square bracket, a count in lowered digits. */
    private static final Pattern BEFORE_CHARGE = Pattern.compile("[A-Z][a-z]?|.*[\\]₀-₉]");

    static ChargeSuffix in(String text, int from, int to) {
        String formula = text.substring(from, to);
        Matcher m = PLAIN.matcher(formula);
        if (m.find() && m.start() > 0) {
            return new ChargeSuffix(from + m.start(), plain(m));
        }
        m = DIGITS.matcher(formula);
        if (m.find() && m.start() > 0) {
            String digits = m.group("digits");
            int ofCharge = digitsOfCharge(formula.substring(0, m.start()), digits);
            int start = m.start() + digits.length() - ofCharge;
            int size = ofCharge == 0 ? 1 : digits.charAt(digits.length() - 1) - '0';
            return new ChargeSuffix(from + start, m.group("sign").matches(PLUS) ? size : -size);
        }
        return new ChargeSuffix(to, 0);
    }

    private static int plain(Matcher m) {
        String many = m.group("many");
        if (many != null) {
            return many.charAt(0) == '+' ? many.length() : -many.length();
        }
        String sign = first(m, "s1", "s2", "s3", "s4", "s5");
        String digits = first(m, "raised", "caret", "after", "round", "last");
        int size = 0;
        for (int i = 0; i < digits.length(); i++) {
            char c = digits.charAt(i);
            size = Math.min(1000, size * 10 + (RAISED.indexOf(c) >= 0 ? RAISED.indexOf(c) : c - '0'));
        }
        size = digits.isEmpty() ? 1 : size;
        return sign.matches(MINUS) ? -size : size;
    }

    private static String first(Matcher m, String... groups) {
        for (String group : groups) {
            if (m.group(group) != null) {
                return m.group(group);
            }
        }
        return "";
    }

    /**
     * Decides how many of the last digits are the charge: 0 or 1.
     *
     * <p>{@code Ca2+}, {@code [Fe(CN)6]4-} and {@code SO₄2-}: the digit is the charge. {@code NO3-}: it is a count. {@code SO42-}:
     * the last one is the charge if it is 2 to 4, since a count of 42 is unusual; {@code C10H12-} keeps a count of 12, since a count
     * of 1 is never written.
     */
    private static int digitsOfCharge(String head, String digits) {
        if (digits.length() == 1) {
            return BEFORE_CHARGE.matcher(head).matches() ? 1 : 0;
        }
        if (digits.isEmpty() || digits.substring(0, digits.length() - 1).equals("1")) {
            return 0;
        }
        char last = digits.charAt(digits.length() - 1);
        return last >= '2' && last <= '4' ? 1 : 0;
    }

    int size() {
        return Math.abs(number);
    }

    /** The charge in raised digits; nothing for a neutral formula. */
    String written() {
        if (number == 0) {
            return "";
        }
        StringBuilder raised = new StringBuilder();
        if (size() > 1) {
            raised.append(RAISED.charAt(size()));
        }
        return raised.append(number > 0 ? '⁺' : '⁻').toString();
    }
}
