package evenwater.chemistry.worked;

/** Units and formulas in the notation of TeX: {@code mg/L Ca²⁺} reads {@code \mathrm{mg/L\ Ca^{2+}}}. */
final class Notation {

    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻";
    private static final String RAISED_PLAIN = "0123456789+-";
    private static final String LOWERED = "₀₁₂₃₄₅₆₇₈₉";

    private Notation() {}

    static String quantity(String number, String unit) {
        String shown = number(number);
        return unit.isEmpty() ? shown : shown + "\\ " + unit(unit);
    }

    private static String number(String number) {
        int e = number.indexOf('E');
        return e < 0 ? number : number.substring(0, e) + " \\cdot 10^{" + number.substring(e + 1) + "}";
    }

    static String fraction(String over, String under) {
        return "\\frac{" + over + "}{" + under + "}";
    }

    static String unit(String unit) {
        StringBuilder tex = new StringBuilder("\\mathrm{");
        int i = 0;
        while (i < unit.length()) {
            int end = runEnd(unit, i);
            tex.append(part(unit.substring(i, end), i > 0 ? unit.charAt(i - 1) : ' '));
            i = end;
        }
        return tex.append('}').toString();
    }

    /** Superscripts, subscripts and digits are taken together. */
    private static int runEnd(String unit, int start) {
        int kind = kind(unit.charAt(start));
        int end = start + 1;
        while (kind > 0 && end < unit.length() && kind(unit.charAt(end)) == kind) {
            end++;
        }
        return end;
    }

    private static int kind(char c) {
        return RAISED.indexOf(c) >= 0 ? 1 : LOWERED.indexOf(c) >= 0 ? 2 : c >= '0' && c <= '9' ? 3 : 0;
    }

    private static String part(String run, char before) {
        return switch (kind(run.charAt(0))) {
            case 1 -> "^{" + translated(run, RAISED, RAISED_PLAIN) + "}";
            case 2 -> "_{" + translated(run, LOWERED, RAISED_PLAIN) + "}";
            case 3 -> Character.isLetter(before) || before == ')' ? "_{" + run + "}" : run; // CaCO3
            default -> character(run.charAt(0));
        };
    }

    private static String translated(String run, String from, String to) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < run.length(); i++) {
            text.append(to.charAt(from.indexOf(run.charAt(i))));
        }
        return text.toString();
    }

    private static String character(char c) {
        return switch (c) {
            case ' ' -> "\\ ";
            case '°' -> "^\\circ ";
            case 'µ' -> "\\mu ";
            case '%' -> "\\%";
            case '·' -> "\\cdot ";
            default -> String.valueOf(c);
        };
    }
}
