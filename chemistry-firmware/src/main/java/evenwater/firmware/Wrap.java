package evenwater.firmware;

import java.util.List;

/** Breaks lines of C that are too long to read. */
final class Wrap {

    private static final int WIDTH = 120;
    private static final List<String> AFTER = List.of(", ", " = ", "(");
    private static final List<String> SIGNS = List.of(" + ", " - ", " <= ", " >= ", " == ", " != ", " < ", " > ");
    private static final List<String> BEFORE = List.of(" && ", " || ", " ? ", " : ");

    private Wrap() {}

    static String code(String text) {
        StringBuilder out = new StringBuilder();
        for (String line : text.split("\n", -1)) {
            boolean isCode = !line.strip().startsWith("*") && !line.strip().startsWith("/*") && !line.startsWith("#");
            out.append(isCode ? broken(line) : line).append('\n');
        }
        out.setLength(out.length() - 1);
        return out.toString();
    }

    private static String broken(String line) {
        String indent = " ".repeat(line.length() - line.stripLeading().length() + 8);
        StringBuilder out = new StringBuilder();
        String rest = line;
        while (rest.length() > WIDTH) {
            int place = place(rest);
            if (place <= indent.length()) {
                break;
            }
            out.append(rest.substring(0, place).stripTrailing()).append('\n');
            rest = indent + rest.substring(place).stripLeading();
        }
        return out.append(rest).toString();
    }

    private static int place(String line) {
        String head = line.substring(0, WIDTH);
        int logical = BEFORE.stream().mapToInt(head::lastIndexOf).max().orElse(-1);
        if (logical > WIDTH / 3) {
            return logical + 1;
        }
        int sign = SIGNS.stream().mapToInt(head::lastIndexOf).max().orElse(-1);
        if (sign > WIDTH / 2) {
            return sign + 1;
        }
        for (String after : AFTER) {
            int place = head.lastIndexOf(after);
            if (place > 0) {
                return place + after.length();
            }
        }
        return -1;
    }
}
