package evenwater.chemistry.analysis;

import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Finds analytes by the names of the data file {@code analytes.csv}. */
final class AnalyteNames {

    /**
     * A name that was recognised.
     *
     * @param analyte what it names
     * @param basis what the name itself says a mass is expressed as; empty if it does not
     */
    record Match(Analyte analyte, String basis) {}

    private static final String FILE = "analytes.csv";
    private static final Pattern BASIS_IN_NAME =
            Pattern.compile("(?<name>.+?)[\\s,(]+as\\s+(?<basis>[^()\\s]+)\\)?", Pattern.CASE_INSENSITIVE);
    /** No analyte has a longer name, and patterns take their time on long texts. */
    private static final int LONGEST = 100;

    private static final Pattern QUALIFIER =
            Pattern.compile("\\b(?:total|dissolved|filtered|soluble|gesamt|gelöst|filtriert|totale?|dissous)\\b");
    private static final Map<String, Match> BY_NAME = new LinkedHashMap<>();

    static {
        lines().stream().filter(line -> !line.startsWith("#")).forEach(AnalyteNames::enter);
    }

    private AnalyteNames() {}

    private static List<String> lines() {
        try (InputStream in = AnalyteNames.class.getResourceAsStream(FILE)) {
            if (in == null) {
                throw new IllegalStateException(FILE + " is missing beside " + AnalyteNames.class.getName());
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void enter(String line) {
        String[] f = line.split("; ?", -1);
        Analyte analyte = new Analyte(
                f[0],
                Analyte.Kind.valueOf(f[1].toUpperCase(Locale.ROOT).replace(' ', '_')),
                f[2].isEmpty() ? null : Ion.parse(f[2]),
                f[3].isEmpty()
                        ? List.of()
                        : Arrays.stream(f[3].split(", ", -1))
                                .map(Formula::parse)
                                .toList());
        put(f[0], new Match(analyte, ""));
        for (String spelling : f[4].split(", ", -1)) {
            String[] parts = spelling.split(" > ", -1);
            if (!spelling.isEmpty()) {
                put(parts[0], new Match(analyte, parts.length > 1 ? parts[1] : ""));
            }
        }
    }

    private static void put(String name, Match match) {
        Match before = BY_NAME.putIfAbsent(normal(name), match);
        if (before != null && !before.equals(match)) {
            throw new IllegalStateException(FILE + " has " + name + " twice");
        }
    }

    /** Finds the analyte of a name, also with a basis in it ("nitrate as N") or a qualifier ("calcium, dissolved"). */
    static Optional<Match> find(String name) {
        if (name.length() > LONGEST) {
            return Optional.empty();
        }
        Match match = lookUp(name);
        if (match != null) {
            return Optional.of(match);
        }
        Matcher m = BASIS_IN_NAME.matcher(name);
        if (m.matches()) {
            Match of = lookUp(m.group("name"));
            String basis = StatedUnit.plain(m.group("basis"));
            if (of != null && (of.basis().isEmpty() || StatedUnit.same(of.basis(), basis))) {
                return Optional.of(new Match(of.analyte(), basis));
            }
        }
        return Optional.empty();
    }

    private static @Nullable Match lookUp(String name) {
        String normal = normal(name);
        Match match = BY_NAME.get(normal);
        if (match == null) {
            match = BY_NAME.get(normal(QUALIFIER.matcher(normal).replaceAll(" ")));
        }
        int space = normal.indexOf(' ');
        if (match == null && space > 0) { // "calcium Ca2+": two names of one thing
            Match first = BY_NAME.get(normal.substring(0, space));
            Match second = BY_NAME.get(normal.substring(space + 1));
            match = first != null && first.equals(second) ? first : null;
        }
        return match;
    }

    /** Finds a known name that an unknown one may be a slip of, or that stands in it: "sodum", "sodium, ICP". */
    static Optional<String> near(String name) {
        if (name.length() > LONGEST) {
            return Optional.empty();
        }
        String normal = normal(name);
        return slip(normal).or(() -> within(normal.split(" ", -1)));
    }

    /** An analyte that is used and whose name begins the text, or is a word of it that is longer than a symbol. */
    private static Optional<String> within(String[] words) {
        for (int i = 0; i < words.length; i++) {
            Match match = i == 0 || words[i].length() > 3 ? BY_NAME.get(words[i]) : null;
            if (match != null && match.analyte().kind() != Analyte.Kind.UNUSED) {
                return Optional.of(match.analyte().name());
            }
        }
        return Optional.empty();
    }

    private static Optional<String> slip(String normal) {
        int allowed = normal.length() <= 3 ? 0 : normal.length() <= 5 ? 1 : 2;
        String best = null;
        int bestDistance = allowed + 1;
        for (Map.Entry<String, Match> e : BY_NAME.entrySet()) {
            if (e.getKey().length() > 3) {
                int distance = EditDistance.between(normal, e.getKey(), bestDistance);
                if (distance < bestDistance) {
                    bestDistance = distance;
                    best = e.getValue().analyte().name();
                }
            }
        }
        return Optional.ofNullable(best);
    }

    static String normal(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[\\s\\u00a0,()\\[\\]_:]+", " ")
                .replace('₂', '2')
                .replace('₃', '3')
                .replace('₄', '4')
                .replace('²', '2')
                .replace('³', '3')
                .replace('⁺', '+')
                .replace('⁻', '-')
                .strip();
    }
}
