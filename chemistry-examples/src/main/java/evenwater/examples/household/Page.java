package evenwater.examples.household;

import evenwater.pictures.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** What is to be said to a person: headings, paragraphs, lists, tables and pictures, as text or as a page of HTML. */
final class Page {

    private static final int LONGEST_FOREIGN = 80;

    private final List<Block> blocks = new ArrayList<>();

    Page title(String title) {
        return add(new Block.Title(title));
    }

    Page heading(String heading) {
        return add(new Block.Heading(heading));
    }

    Page say(String sentence) {
        return add(new Block.Paragraph(sentence));
    }

    /** A line of a list. */
    Page item(String sentence) {
        return add(new Block.Item(sentence));
    }

    Page gap() {
        return add(new Block.Gap());
    }

    /** A table; the first column is set left, the others right. The first row is the head. */
    Page table(List<String[]> rows) {
        return add(new Block.Table(List.copyOf(rows)));
    }

    /** A picture with what must be known to read it; drawn only for a page that shows pictures. */
    Page picture(String caption, Supplier<Optional<Picture>> picture) {
        return add(new Block.Figure(caption, picture));
    }

    private Page add(Block block) {
        blocks.add(block);
        return this;
    }

    /** What another page says, behind what this one says. */
    Page append(Page other) {
        blocks.addAll(other.blocks);
        return this;
    }

    List<Block> blocks() {
        return List.copyOf(blocks);
    }

    /** Text from outside: control and direction marks taken out, and no longer than a line bears. */
    static String foreign(String text) {
        String clean = clean(text);
        int points = clean.codePointCount(0, clean.length());
        return points <= LONGEST_FOREIGN
                ? clean
                : clean.substring(0, clean.offsetByCodePoints(0, LONGEST_FOREIGN)) + "…";
    }

    /** Text from outside without control and direction marks, so that it cannot pass for lines of ours. */
    static String clean(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cf}\\u2028\\u2029]+", " ").strip();
    }

    /** A number with about four digits, never in exponents. */
    static String number(double value) {
        double size = Math.abs(value);
        int decimals = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 3;
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0\\.?0*") ? text.substring(1) : text;
    }

    @Override
    public String toString() {
        return PlainText.of(blocks);
    }
}
