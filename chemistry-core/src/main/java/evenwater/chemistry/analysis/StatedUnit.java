package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.substance.Formula;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The unit of a row, and what its mass is expressed as by the name, the unit or the column, which must not contradict each other.
 *
 * @param unit as it was written, without a basis behind a mass per volume
 * @param basis a formula; empty if nothing says it
 */
record StatedUnit(String unit, String basis) {

    private static final Pattern MASS_AS = Pattern.compile(
            "(?<unit>(?:[mµμu]?g/l|ppm|ppb|mg/kg|gpg))\\s+\\(?(?:as\\s+)?(?<basis>[^\\s()]+)\\)?",
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    private static final Pattern OF_ELEMENT = Pattern.compile(".+-(?<element>N|P|S|Si)", Pattern.CASE_INSENSITIVE);
    private static final Set<String> BLANK = Set.of("-", "--", "–", "—", "n/a");

    /** How formulas are written; in capitals or in small letters alone some of them would be another substance. */
    private static final Map<String, String> BY_CAPITALS = Stream.of(
                    "N", "P", "S", "Si", "B", "Ca", "Mg", "Na", "K", "Cl", "Fe", "Mn", "CaCO3", "CaO", "SiO2", "NO3",
                    "NO2", "NH4", "NH3", "PO4", "P2O5", "SO4", "HCO3", "CO3")
            .collect(Collectors.toUnmodifiableMap(f -> f.toUpperCase(Locale.ROOT), Function.identity()));

    /** Reads the unit of a row and its basis. */
    static StatedUnit of(ReportRow row, AnalyteNames.Match match) {
        Matcher m = MASS_AS.matcher(row.unit());
        boolean withBasis = row.unit().length() <= 40 && m.matches();
        String ofUnit = withBasis ? plain(m.group("basis")) : "";
        String ofName = plain(match.basis());
        String ofColumn = plain(row.as());
        List<String> places = new ArrayList<>();
        add(places, "'" + row.analyte() + "'", ofName);
        add(places, "the unit", ofUnit);
        add(places, "the column", ofColumn);
        String basis = ofColumn.isEmpty() ? (ofUnit.isEmpty() ? ofName : ofUnit) : ofColumn;
        for (String other : List.of(ofName, ofUnit)) {
            if (!other.isEmpty() && !same(basis, other)) {
                throw new UnusableReportException(row.line(), String.join(", but ", places));
            }
        }
        return new StatedUnit(withBasis ? m.group("unit") : row.unit(), basis);
    }

    private static void add(List<String> places, String place, String basis) {
        if (!basis.isEmpty()) {
            places.add(place + " says as " + basis);
        }
    }

    /** The formula in "as N", "NO3-N" or "CACO3"; empty for what people put into empty fields. */
    static String plain(String basis) {
        String text =
                basis.regionMatches(true, 0, "as ", 0, 3) ? basis.substring(3).strip() : basis;
        if (BLANK.contains(text.toLowerCase(Locale.ROOT))) {
            return "";
        }
        Matcher m = OF_ELEMENT.matcher(text);
        String formula = text.length() <= 20 && m.matches() ? m.group("element") : text;
        return BY_CAPITALS.getOrDefault(formula.toUpperCase(Locale.ROOT), formula);
    }

    /** Tells whether two bases are the same atoms, with or without their charge: NO3 and NO₃⁻. */
    static boolean same(String basis, String other) {
        try {
            Formula a = Formula.parse(basis);
            Formula b = Formula.parse(other);
            return a.elements().equals(b.elements())
                    && a.elements().stream().allMatch(element -> a.count(element) == b.count(element));
        } catch (UnreadableTextException e) {
            return basis.equalsIgnoreCase(other);
        }
    }

    /** The unit with its basis, as the units of hardness and alkalinity are spelled. */
    String together() {
        return (unit + " " + basis).strip();
    }

    /** Tells that a unit speaks of gallons and not of whose. */
    boolean isOfSomeGallon() {
        String lower = unit.toLowerCase(Locale.ROOT);
        return lower.contains("gal")
                && Stream.of("us", "u.s.", "uk", "imp", "br").noneMatch(lower::contains);
    }
}
