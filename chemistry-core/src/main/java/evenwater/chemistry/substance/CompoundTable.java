package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.WaterUnits.GRAM_PER_KILOGRAM;

import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterUnits;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The compounds of the data file {@code compounds.csv}. */
final class CompoundTable {

    private static final String FILE = "compounds.csv";
    private static final Map<String, Compound> ROWS = new LinkedHashMap<>();
    private static final Map<String, Compound> OTHER_NAMES = new LinkedHashMap<>();
    /** All names as the table writes them. */
    private static final List<String> NAMES = new ArrayList<>();

    private static final int SHORTEST_WORD = 4;
    private static final int MOST_NAMES = 6;

    static {
        for (String line : lines()) {
            if (!line.startsWith("#")) {
                read(line.split("; ?", -1));
            }
        }
    }

    private CompoundTable() {}

    private static List<String> lines() {
        try (InputStream in = CompoundTable.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing beside " + CompoundTable.class.getName());
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void read(String[] f) {
        Compound compound = new Compound(
                f[0],
                Formula.parse(f[2]),
                ions(f[3]),
                solubility(f[4], f[5], f[6]),
                teaspoon(f[7], f[8], f[9]),
                f[10],
                1);
        ROWS.put(f[0], compound);
        NAMES.add(f[0]);
        for (String other : f[1].split(", ", -1)) {
            if (!other.isEmpty()) {
                OTHER_NAMES.put(other.toLowerCase(Locale.ROOT), compound);
                NAMES.add(other);
            }
        }
    }

    private static Map<Ion, Integer> ions(String field) {
        Map<Ion, Integer> ions = new LinkedHashMap<>();
        for (String part : field.split(", ", -1)) {
            int space = part.indexOf(' ');
            ions.put(Ion.parse(part.substring(0, space)), Integer.valueOf(part.substring(space + 1)));
        }
        return ions;
    }

    private static @Nullable Solubility solubility(String gramsPerKilogram, String basis, String note) {
        return gramsPerKilogram.isEmpty()
                ? null
                : new Solubility(
                        WaterUnits.share(Double.parseDouble(gramsPerKilogram), GRAM_PER_KILOGRAM),
                        Formula.parse(basis),
                        WaterUnits.temperature(20, WaterUnits.CELSIUS),
                        note);
    }

    private static @Nullable LevelTeaspoon teaspoon(String grams, String relative, String source) {
        return grams.isEmpty()
                ? null
                : new LevelTeaspoon(
                        WaterUnits.mass(Double.parseDouble(grams), WaterUnits.GRAM),
                        WaterUnits.share(Double.parseDouble(relative), WaterUnits.ONE),
                        source);
    }

    static Compound row(String name) {
        Compound compound = ROWS.get(name);
        if (compound == null) {
            throw new IllegalStateException(FILE + " has no row for " + name);
        }
        return compound;
    }

    static List<Compound> all() {
        return List.copyOf(ROWS.values());
    }

    static Compound find(String text) {
        String name = Objects.requireNonNull(text, "nameOrFormula").strip().toLowerCase(Locale.ROOT);
        Compound exact = ROWS.getOrDefault(name, OTHER_NAMES.get(name));
        if (exact != null) {
            return exact;
        }
        Optional<Formula> formula = formula(text);
        List<Compound> found = ROWS.values().stream()
                .filter(c -> c.name().startsWith(name + " ")
                        || formula.filter(c.formula()::hasSameAtomsAs).isPresent())
                .toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        String problem = found.isEmpty()
                ? "unknown" + near(name)
                : "may be " + found.stream().map(Compound::name).collect(Collectors.joining(", "));
        throw new UnreadableTextException("compound", text, problem, 0);
    }

    /** Names that share most words with a text: "epsom salts", "bicarbonate of soda". */
    private static String near(String text) {
        Map<String, Integer> shared = new LinkedHashMap<>();
        for (String name : NAMES) {
            shared.put(name, sharedWords(text, name.toLowerCase(Locale.ROOT)));
        }
        int most = Collections.max(shared.values());
        String names = shared.entrySet().stream()
                .filter(e -> most > 0 && e.getValue() == most)
                .map(Map.Entry::getKey)
                .limit(MOST_NAMES)
                .collect(Collectors.joining(", "));
        return names.isEmpty()
                ? ", expected a name such as gypsum, Epsom salt or calcium chloride dihydrate, or a formula of the table"
                : ": did you mean " + names + "?";
    }

    private static int sharedWords(String text, String name) {
        int shared = 0;
        for (String word : text.split("[^a-z]+", -1)) {
            for (String other : name.split("[^a-z]+", -1)) {
                boolean begins = other.startsWith(word) || word.startsWith(other);
                shared += begins && Math.min(word.length(), other.length()) >= SHORTEST_WORD ? 1 : 0;
            }
        }
        return shared;
    }

    private static Optional<Formula> formula(String text) {
        try {
            return Optional.of(Formula.parse(text));
        } catch (UnreadableTextException e) {
            return Optional.empty();
        }
    }
}
