package evenwater.chemistry.testing;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Texts that a reader has to survive: right ones, nearly right ones and rubbish. The same seed gives the same texts.
 *
 * <p>A reader of ours answers a value or throws its own exception, for each of them.
 */
public final class FuzzTexts {

    /** What breaks readers: digits, signs, other alphabets, spaces of all kinds, halves of characters, controls. */
    private static final String[] PIECES = {
        "0",
        "9",
        "1e400",
        "1e-400",
        "-",
        "+",
        ".",
        ",",
        "e",
        "E",
        "E5",
        "0x1p3",
        "NaN",
        "Infinity",
        "1d",
        "1f",
        "'",
        "\"",
        " ",
        "\t",
        "\n",
        "\r",
        "\u0000",
        "\u00a0",
        "\u2003",
        "\u202f",
        "\u200b",
        "\ufeff",
        "\u202e",
        "\u2028",
        "/",
        " per ",
        " as ",
        "(",
        ")",
        "[",
        "]",
        "^",
        "*",
        "·",
        "⋅",
        "°",
        "º",
        "˚",
        "µ",
        "μ",
        "m",
        "mg",
        "L",
        "l",
        "g",
        "gal",
        "gr",
        "US",
        "ppm",
        "CaCO3",
        "₃",
        "³",
        "²",
        "⁻",
        "−",
        "–",
        "١",
        "९",
        "İ",
        "ı",
        "ß",
        "ﬁ",
        "\u0301",
        "Ω",
        "水",
        "\ud83d\udca7",
        "\ud83d",
        "\udca7",
        "%",
        "$1",
        "\\",
        "{}",
        "<b>",
        "null"
    };

    private final Random random;
    private final List<String> valid;

    /**
     * Creates a generator.
     *
     * @param seed decides all texts
     * @param valid texts that the reader can read, to be spoilt; not empty
     */
    public FuzzTexts(long seed, List<String> valid) {
        this.random = new Random(seed);
        this.valid = List.copyOf(valid);
    }

    /** How many texts a test should try: {@code -Dfuzz.texts}, else 20 000. */
    public static int count() {
        return Integer.getInteger("fuzz.texts", 20_000);
    }

    /** Returns the next text: in ten of them one is right, eight are spoilt, one is rubbish; few are long. */
    public String next() {
        int sort = random.nextInt(10);
        if (sort == 0) {
            return any();
        }
        StringBuilder text = new StringBuilder(sort == 1 ? "" : any());
        int changes = sort == 1 ? random.nextInt(12) : 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            change(text);
        }
        if (random.nextInt(1000) == 0) {
            lengthen(text);
        }
        return text.toString();
    }

    private void change(StringBuilder text) {
        int at = random.nextInt(text.length() + 1);
        switch (random.nextInt(7)) {
            case 0 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(3)));
            case 1, 2 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
            case 3 -> text.insert(at, (char) random.nextInt(Character.MAX_VALUE + 1));
            case 4 -> text.replace(at, Math.min(text.length(), at + 1), PIECES[random.nextInt(PIECES.length)]);
            case 5 -> {
                String other = any();
                text.setLength(at);
                text.append(other, random.nextInt(other.length() + 1), other.length());
            }
            default -> {
                int end = Math.min(text.length(), at + 1);
                String turned = text.substring(at, end);
                boolean up = turned.equals(turned.toLowerCase(Locale.ROOT));
                text.replace(at, end, up ? turned.toUpperCase(Locale.ROOT) : turned.toLowerCase(Locale.ROOT));
            }
        }
    }

    /** Ten thousand characters of one piece somewhere. */
    private void lengthen(StringBuilder text) {
        String piece = PIECES[random.nextInt(PIECES.length)];
        text.insert(random.nextInt(text.length() + 1), piece.repeat(10_000 / piece.length()));
    }

    private String any() {
        return valid.get(random.nextInt(valid.size()));
    }
}
