package evenwater.firmware;

import com.github.javaparser.ast.nodeTypes.NodeWithJavadoc;
import com.github.javaparser.javadoc.Javadoc;
import com.github.javaparser.javadoc.JavadocBlockTag;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The kernel's Javadoc as comments of C: the names are C's, the characters ASCII, since old compilers read nothing else. */
final class Comments {

    private static final int WIDTH = 100;
    private static final Pattern INLINE = Pattern.compile("\\{@(\\w+)\\s+([^}]*)}");
    private static final Map<Character, String> ASCII = Map.ofEntries(
            Map.entry('−', "-"),
            Map.entry('–', "-"),
            Map.entry('×', "*"),
            Map.entry('·', "*"),
            Map.entry('µ', "u"),
            Map.entry('°', "deg "),
            Map.entry('Σ', "sum "),
            Map.entry('α', "alpha"),
            Map.entry('κ', "kappa"),
            Map.entry('λ', "lambda"),
            Map.entry('₂', "2"),
            Map.entry('₃', "3"),
            Map.entry('…', "..."));
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹⁻⁺";
    private static final String RAISED_ASCII = "0123456789-+";

    private final Kernel kernel;
    private final Functions functions;

    Comments(Kernel kernel, Functions functions) {
        this.kernel = kernel;
        this.functions = functions;
    }

    /** The description alone, in one comment; empty without Javadoc. */
    String of(String owner, NodeWithJavadoc<?> node, String indent) {
        return node.getJavadoc()
                .map(javadoc -> block(paragraphs(owner, javadoc.getDescription().toText()), indent))
                .orElse("");
    }

    /** Description, parameters and answer of a function that callers see. */
    String of(Function function) {
        Javadoc javadoc = ((NodeWithJavadoc<?>) function.java)
                .getJavadoc()
                .orElseThrow(() -> new UnsupportedJavaException(function.owner, function.java, "without Javadoc this"));
        List<String> text = paragraphs(function.owner, javadoc.getDescription().toText());
        List<String> lines = new ArrayList<>();
        for (JavadocBlockTag tag : javadoc.getBlockTags()) {
            String content = plain(function.owner, tag.getContent().toText());
            switch (tag.getType()) {
                case PARAM -> lines.add(parameter(function, tag.getName().orElse("")) + ": " + content);
                case RETURN -> lines.add((function.role == Function.Role.QUERY ? "result: " : "returns: ") + content);
                default ->
                    throw new UnsupportedJavaException(function.owner, function.java, "the tag " + tag.getTagName());
            }
        }
        if (function.role == Function.Role.QUERY) {
            lines.add("returns: EW_OK, or EW_NULL_POINTER or EW_OUT_OF_RANGE, then nothing is written");
        }
        if (!lines.isEmpty()) {
            text.add(String.join("\n", lines));
        }
        return block(text, "");
    }

    private static String parameter(Function function, String java) {
        return function.parameters.stream()
                .filter(each -> each.java.equals(java))
                .map(each -> each.c)
                .findFirst()
                .orElse(java);
    }

    private List<String> paragraphs(String owner, String html) {
        List<String> paragraphs = new ArrayList<>();
        for (String part : html.split("<p>", -1)) {
            String text = part.replaceAll("\\s*<li>\\s*", "\n- ").replaceAll("</?[a-z]+>", "");
            List<String> lines = new ArrayList<>();
            for (String line : text.split("\n(?=- )", -1)) {
                lines.add(plain(owner, line));
            }
            paragraphs.add(String.join("\n", lines));
        }
        return paragraphs;
    }

    private String plain(String owner, String text) {
        Matcher tags = INLINE.matcher(text.replaceAll("\\s+", " ").strip());
        String named = tags.replaceAll(tag ->
                Matcher.quoteReplacement(tag.group(1).startsWith("link") ? link(owner, tag.group(2)) : tag.group(2)));
        return ascii(named);
    }

    private String link(String from, String target) {
        String[] parts = target.strip().split(" ", 2);
        if (parts.length == 2) {
            return parts[1];
        }
        String[] names = parts[0].split("#", 2);
        String owner = names[0].isEmpty() ? from : names[0].substring(names[0].lastIndexOf('.') + 1);
        if (!kernel.isClass(owner)) {
            return owner;
        }
        if (names.length == 1) {
            return Names.prefix(owner);
        }
        String member = names[1].replaceAll("\\(.*", "");
        if (kernel.constant(owner, member) != null
                || (kernel.isTable(owner)
                        && kernel.rows(owner).stream()
                                .anyMatch(row -> row.getNameAsString().equals(member)))) {
            return Names.constant(owner, member);
        }
        return functions.all().stream()
                .filter(each ->
                        each.owner.equals(owner) && each.java.getNameAsString().equals(member))
                .map(each -> each.name)
                .findFirst()
                .orElse(Names.snake(member));
    }

    static String ascii(String text) {
        StringBuilder ascii = new StringBuilder();
        boolean wasRaised = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            int raised = RAISED.indexOf(c);
            if (raised >= 0) {
                ascii.append(wasRaised ? "" : "^").append(RAISED_ASCII.charAt(raised));
            } else if (c < 128) {
                ascii.append(c);
            } else if (ASCII.containsKey(c)) {
                ascii.append(ASCII.get(c));
            } else {
                throw new IllegalArgumentException(
                        "comment must have characters with an ASCII form, but has " + c + ": " + text);
            }
            wasRaised = raised >= 0;
        }
        return ascii.toString().replace("*/", "* /");
    }

    /** A comment of several paragraphs; a line break inside one stays. */
    static String block(List<String> paragraphs, String indent) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : paragraphs) {
            if (!lines.isEmpty()) {
                lines.add("");
            }
            for (String line : paragraph.split("\n", -1)) {
                wrap(lines, line, WIDTH - indent.length());
            }
        }
        if (lines.size() == 1) {
            return indent + "/* " + lines.get(0) + " */\n";
        }
        StringBuilder text = new StringBuilder(indent + "/*\n");
        lines.forEach(
                line -> text.append((indent + " * " + line).stripTrailing()).append('\n'));
        return text.append(indent).append(" */\n").toString();
    }

    private static void wrap(List<String> lines, String text, int width) {
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() + word.length() + 1 > width && line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(text.startsWith("- ") ? "  " : "");
            }
            line.append(line.length() == 0 || line.toString().isBlank() ? "" : " ")
                    .append(word);
        }
        lines.add(line.toString());
    }
}
