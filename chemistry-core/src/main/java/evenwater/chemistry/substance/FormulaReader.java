package evenwater.chemistry.substance;

import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Reads one formula text; made for a single use. */
final class FormulaReader {

    private static final int LONGEST = 200;
    private static final int DEEPEST = 10;
    private static final int MOST_DIGITS = 4;
    private static final String OPENING = "([{";
    private static final String CLOSING = ")]}";
    private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

    private final String text;
    private final int end;
    private final ChargeSuffix charge;
    private final StringBuilder written = new StringBuilder();
    private final Deque<Character> open = new ArrayDeque<>();
    private int i;

    FormulaReader(String text) {
        this.text = text;
        if (text.length() > LONGEST) {
            throw problem("longer than " + LONGEST + " characters", LONGEST);
        }
        int start = 0;
        int stop = text.length();
        while (start < stop && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (stop > start && Character.isWhitespace(text.charAt(stop - 1))) {
            stop--;
        }
        this.i = start;
        this.charge = ChargeSuffix.in(text, start, stop);
        this.end = charge.start();
    }

    Formula read() {
        Map<Element, Double> atoms = group();
        while (i < end) { // a part such as ·7H2O
            if (!isDot(text.charAt(i))) {
                throw problem("'" + character() + "' is not expected here", i);
            }
            i++;
            written.append('·');
            double times = coefficient();
            add(atoms, group(), times);
        }
        if (charge.size() > ChargeSuffix.LARGEST) {
            throw problem("a charge of " + charge.size() + " is not possible", end);
        }
        return new Formula(written + charge.written(), atoms, charge.number());
    }

    /** Reads atoms and groups up to a closing bracket, a dot or the end. */
    private Map<Element, Double> group() {
        Map<Element, Double> atoms = new EnumMap<>(Element.class);
        int from = i;
        while (i < end) {
            char c = text.charAt(i);
            if (c >= 'A' && c <= 'Z') {
                Element element = element();
                add(atoms, Map.of(element, 1.0), count());
            } else if (OPENING.indexOf(c) >= 0) {
                add(atoms, bracketed(c), count());
            } else {
                break;
            }
        }
        if (i == from) {
            throw problem("expected an element such as Ca", i);
        }
        return atoms;
    }

    private Map<Element, Double> bracketed(char opening) {
        char closing = CLOSING.charAt(OPENING.indexOf(opening));
        if (open.size() >= DEEPEST) {
            throw problem("groups are nested deeper than " + DEEPEST, i);
        }
        open.push(closing);
        written.append(opening);
        i++;
        Map<Element, Double> inner = group();
        if (i >= end || text.charAt(i) != closing) {
            throw problem("expected '" + closing + "'", i);
        }
        open.pop();
        written.append(closing);
        i++;
        return inner;
    }

    private Element element() {
        int length = 1;
        while (i + length < end && text.charAt(i + length) >= 'a' && text.charAt(i + length) <= 'z') {
            length++;
        }
        Optional<Element> found = Element.withSymbol(text.substring(i, i + length));
        if (found.isEmpty()) {
            throw problem("'" + text.substring(i, i + length) + "' is no element with a standard atomic weight", i);
        }
        written.append(text, i, i + length);
        i += length;
        return found.get();
    }

    /** Reads a count of atoms, plain or lowered digits; 1 if there is none. */
    private double count() {
        int from = i;
        int value = 0;
        while (i < end && digit(text.charAt(i)) >= 0) {
            int digit = digit(text.charAt(i));
            if (isLowered(text.charAt(i)) != isLowered(text.charAt(from))) {
                throw problem("a count has plain or lowered digits, not both", i);
            }
            value = value * 10 + digit;
            written.append(LOWERED.charAt(digit));
            i++;
            if (i - from > MOST_DIGITS) {
                throw problem("a count has at most " + MOST_DIGITS + " digits", from);
            }
        }
        if (i > from && (value == 0 || digit(text.charAt(from)) == 0)) {
            throw problem("a count starts with 1 to 9", from);
        }
        return i == from ? 1 : value;
    }

    /** Reads the factor of a part behind a dot, which may be a decimal such as 0.5; 1 if there is none. */
    private double coefficient() {
        int from = i;
        while (i < end && ((text.charAt(i) >= '0' && text.charAt(i) <= '9') || text.charAt(i) == '.')) {
            i++;
        }
        if (i == from) {
            return 1;
        }
        String number = text.substring(from, i);
        if (!number.matches("[0-9]{1,4}(\\.[0-9]{1,2})?") || !(Double.parseDouble(number) > 0)) {
            throw problem("'" + number + "' is no factor such as 2 or 0.5", from);
        }
        written.append(number);
        return Double.parseDouble(number);
    }

    private static void add(Map<Element, Double> sum, Map<Element, Double> part, double times) {
        part.forEach((element, n) -> sum.merge(element, n * times, Double::sum));
    }

    /** The character at the place of reading, whole and on one line. */
    private String character() {
        int c = text.codePointAt(i);
        return Character.isISOControl(c) ? " " : new String(Character.toChars(c));
    }

    private static int digit(char c) {
        return c >= '0' && c <= '9' ? c - '0' : LOWERED.indexOf(c);
    }

    private static boolean isLowered(char c) {
        return LOWERED.indexOf(c) >= 0;
    }

    private static boolean isDot(char c) {
        return c == '·' || c == '*' || c == '.' || c == '⋅' || c == '•';
    }

    private UnreadableTextException problem(String problem, int index) {
        return new UnreadableTextException("formula", text, problem, index);
    }
}
