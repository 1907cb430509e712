package evenwater.chemistry.quantity;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The spellings of the units of one kind, and the spellings that could be two units and are refused.
 *
 * <p>Spaces, brackets, carets, the words "as" and "per", capitals, raised and lowered digits and the two micro signs make no
 * difference. An ambiguous spelling is refused in any capitals, unless others than its own make a unit of it.
 */
final class UnitNames<Q extends Quantity<Q>> {

    private final String thing;
    private final Set<Unit<Q>> units = new LinkedHashSet<>();
    private final Map<String, Unit<Q>> bySpelling = new HashMap<>();
    private final Map<String, String> readings = new HashMap<>();
    private @Nullable String foreignHint;

    UnitNames(String thing) {
        this.thing = thing;
    }

    /** Adds a unit under its symbol and other spellings. */
    UnitNames<Q> unit(Unit<Q> unit, String... spellings) {
        units.add(unit);
        enter(unit.getSymbol(), unit); // toString() would wake indriya's format
        for (String spelling : spellings) {
            enter(spelling, unit);
        }
        return this;
    }

    private void enter(String spelling, Unit<Q> unit) {
        Unit<Q> before = bySpelling.putIfAbsent(normal(spelling), unit);
        if (before != null && !before.equals(unit)) {
            throw new IllegalStateException(spelling + " is entered for " + before + " and for " + unit);
        }
    }

    /** Adds a spelling that may mean two things; both are shown when it is met. */
    UnitNames<Q> ambiguous(String bothReadings, String... spellings) {
        for (String spelling : spellings) {
            readings.put(spelling, bothReadings);
            if (!bySpelling.containsKey(normal(spelling))) {
                readings.put(normal(spelling), bothReadings);
            }
        }
        return this;
    }

    /** Adds what to say beside "unknown unit". */
    UnitNames<Q> hint(String hint) {
        foreignHint = hint;
        return this;
    }

    String thing() {
        return thing;
    }

    String example() {
        return units.iterator().next().getSymbol();
    }

    List<Unit<Q>> units() {
        return List.copyOf(units);
    }

    /** Reads the unit that stands in {@code text} from {@code start} to the end. */
    Unit<Q> find(String text, int start) {
        String spelling =
                Objects.requireNonNull(text, "spelling").substring(start).strip();
        String folded = normal(spelling);
        String both = readings.getOrDefault(spelling, readings.get(folded));
        if (both != null) {
            throw new UnreadableTextException(
                    thing, text, "'" + UnreadableTextException.shown(spelling) + "' may be " + both, start);
        }
        Unit<Q> unit = bySpelling.get(folded);
        if (unit == null) {
            String known = units.stream()
                    .map(Unit::getSymbol)
                    .filter(symbol -> !symbol.isEmpty())
                    .collect(Collectors.joining(", "));
            String problem = (spelling.isEmpty() ? "a unit is missing" : "unknown unit") + ", expected one of " + known;
            throw new UnreadableTextException(
                    thing, text, foreignHint == null ? problem : problem + "; " + foreignHint, start);
        }
        return unit;
    }

    /** Folds what people write differently and mean alike; with loops, since a pattern or a stream would wake much of Java. */
    static String normal(String spelling) {
        String lower = spelling.toLowerCase(Locale.ROOT);
        StringBuilder folded = new StringBuilder(lower.length());
        int start = 0;
        for (int i = 0; i <= lower.length(); i++) {
            if (i == lower.length() || isSeparator(lower.charAt(i))) {
                fold(lower.substring(start, i), folded);
                start = i + 1;
            }
        }
        return folded.toString();
    }

    private static void fold(String word, StringBuilder folded) {
        if (word.equals("per")) {
            folded.append('/');
        } else if (!word.equals("as")) {
            for (int i = 0; i < word.length(); i++) {
                folded.append((char) plain(word.charAt(i)));
            }
        }
    }

    private static boolean isSeparator(char c) {
        return switch (c) {
            case '(', ')', '[', ']', '^' -> true;
            case ' ', '\t', '\n', '\u000B', '\f', '\r' -> true;
            case '\u00A0', '\u1680', '\u180E', '\u202F', '\u205F', '\u3000' -> true; // spaces of typography
            default -> c >= '\u2000' && c <= '\u200A';
        };
    }

    private static int plain(int c) {
        return switch (c) {
            case 'µ', 'μ' -> 'u';
            case 'º', '˚' -> '°';
            case '²' -> '2';
            case '³' -> '3';
            case '⁻', '−', '–' -> '-';
            case '·', '⋅' -> '.';
            default -> c >= '₀' && c <= '₉' ? '0' + (c - '₀') : c;
        };
    }
}
