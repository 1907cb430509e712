package evenwater.examples.household;

import java.util.ArrayList;
import java.util.List;

/** A page as text of fixed width; pictures are left out. */
final class PlainText {

    private static final int WIDTH = 100;

    private final StringBuilder text = new StringBuilder();

    private PlainText() {}

    static String of(List<Block> blocks) {
        PlainText plain = new PlainText();
        blocks.forEach(plain::add);
        return plain.text.toString();
    }

    private void add(Block block) {
        if (block instanceof Block.Title title) {
            underlined(title.words(), "=");
        } else if (block instanceof Block.Heading heading) {
            text.append('\n');
            underlined(heading.words(), "-");
        } else if (block instanceof Block.Paragraph paragraph) {
            wrapped("", paragraph.words());
        } else if (block instanceof Block.Item item) {
            wrapped("  - ", item.words());
        } else if (block instanceof Block.Gap) {
            text.append('\n');
        } else if (block instanceof Block.Table table) {
            table(table.rows());
        }
    }

    private void underlined(String words, String line) {
        text.append(words).append('\n').append(line.repeat(words.length())).append('\n');
    }

    /** Broken between words. */
    private void wrapped(String first, String sentence) {
        String indent = " ".repeat(first.length());
        StringBuilder line = new StringBuilder(first);
        for (String word : sentence.split(" ", -1)) {
            if (line.length() + word.length() > WIDTH && line.length() > indent.length()) {
                text.append(line.toString().stripTrailing()).append('\n');
                line.setLength(0);
                line.append(indent);
            }
            line.append(word).append(' ');
        }
        text.append(line.toString().stripTrailing()).append('\n');
    }

    /** The first column is set left, the others right. */
    private void table(List<String[]> rows) {
        int columns = rows.stream().mapToInt(row -> row.length).max().orElse(0);
        int[] widths = new int[columns];
        for (String[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                widths[i] = Math.max(widths[i], row[i].length());
            }
        }
        for (String[] row : rows) {
            List<String> cells = new ArrayList<>();
            for (int i = 0; i < row.length; i++) {
                String blank = " ".repeat(widths[i] - row[i].length());
                cells.add(i == 0 ? row[i] + blank : blank + row[i]);
            }
            text.append("  ").append(String.join("   ", cells).stripTrailing()).append('\n');
        }
    }
}
