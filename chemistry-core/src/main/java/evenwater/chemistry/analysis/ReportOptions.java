package evenwater.chemistry.analysis;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.substance.Formula;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;

/**
 * What the caller knows about a report that its text leaves open.
 *
 * <p>Without an option, whatever may be read in two ways is refused with both readings. Options that contradict each other are refused
 * too, with an {@link UnusableReportException}. Immutable and thread-safe.
 */
public final class ReportOptions {

    private final DecimalSign decimalSign;
    private final Map<String, String> bases;
    private final Map<String, String> units;
    private final Map<String, String> names;
    private final Set<String> ignored;
    private final Optional<MassConcentration> density;

    private ReportOptions(
            DecimalSign decimalSign,
            Map<String, String> bases,
            Map<String, String> units,
            Map<String, String> names,
            Set<String> ignored,
            Optional<MassConcentration> density) {
        this.decimalSign = decimalSign;
        this.bases = bases;
        this.units = units;
        this.names = names;
        this.ignored = ignored;
        this.density = density;
    }

    /**
     * Returns options that settle nothing.
     *
     * @return the strictest reading
     */
    public static ReportOptions none() {
        return new ReportOptions(DecimalSign.UNSTATED, Map.of(), Map.of(), Map.of(), Set.of(), Optional.empty());
    }

    /**
     * Says what a comma in a number means.
     *
     * @param sign the sign of decimals
     * @return the options
     */
    public ReportOptions with(DecimalSign sign) {
        return new ReportOptions(Objects.requireNonNull(sign, "sign"), bases, units, names, ignored, density);
    }

    /**
     * Says what a mass without a basis is expressed as.
     *
     * @param analyte such as "nitrate"
     * @param basis such as "N" or "NO3"
     * @return the options
     * @throws UnusableReportException if the analyte is not known or the basis is no formula
     */
    public ReportOptions basis(String analyte, String basis) {
        return new ReportOptions(
                decimalSign, added(bases, known(analyte), basis(basis)), units, names, ignored, density);
    }

    /**
     * Says what unit is meant where it is missing or may be two.
     *
     * @param analyte such as "hardness"
     * @param unit such as "°fH"
     * @return the options
     * @throws UnusableReportException if the analyte is not known, or not stated in that unit
     */
    public ReportOptions unit(String analyte, String unit) {
        String meant = Objects.requireNonNull(unit, "unit").strip();
        RowReader.refuseUnknownUnit(found(analyte), meant);
        return new ReportOptions(decimalSign, bases, added(units, known(analyte), meant), names, ignored, density);
    }

    /**
     * Says what a name in the report means.
     *
     * @param name as it stands in the report
     * @param analyte a name that is known
     * @return the options
     * @throws UnusableReportException if the analyte is not known
     */
    public ReportOptions naming(String name, String analyte) {
        String normal = AnalyteNames.normal(Objects.requireNonNull(name, "name"));
        refuseBoth(ignored.contains(normal), name);
        return new ReportOptions(decimalSign, bases, units, renamed(normal, analyte), ignored, density);
    }

    /**
     * Leaves rows out.
     *
     * @param name as it stands in the report
     * @return the options
     */
    public ReportOptions ignoring(String name) {
        String normal = AnalyteNames.normal(Objects.requireNonNull(name, "name"));
        refuseBoth(names.containsKey(normal), name);
        Set<String> more = new HashSet<>(ignored);
        more.add(normal);
        return new ReportOptions(decimalSign, bases, units, names, Set.copyOf(more), density);
    }

    /**
     * Says how dense the water is, for readings by mass (mg/kg).
     *
     * @param ofWater such as 0.997 kg/L; 0.5 to 2 kg/L
     * @return the options
     * @throws IllegalArgumentException if no water is so dense
     */
    public ReportOptions density(Quantity<MassConcentration> ofWater) {
        MassConcentration stated = MassConcentration.from(ofWater);
        double kilograms = stated.in(MassConcentration.KILOGRAM_PER_LITRE);
        if (!(kilograms >= 0.5 && kilograms <= 2)) {
            throw new IllegalArgumentException("density of a water must be from 0.5 to 2 kg/L, but was " + stated);
        }
        return new ReportOptions(decimalSign, bases, units, names, ignored, Optional.of(stated));
    }

    /** Keeps the name with the basis that it may say, such as "nitrate as N". */
    private Map<String, String> renamed(String name, String analyte) {
        String meant = known(analyte);
        String before = names.get(name);
        if (before != null && !known(before).equals(meant)) {
            throw new UnusableReportException(
                    0,
                    "options contradict each other: '" + name + "' cannot be both " + known(before) + " and " + meant);
        }
        Map<String, String> more = new HashMap<>(names);
        more.put(name, analyte);
        return Map.copyOf(more);
    }

    /** Returns what is settled, for logs. */
    @Override
    public String toString() {
        return "decimals by " + decimalSign + ", bases " + bases + ", units " + units + ", names " + names
                + ", left out " + ignored + density.map(d -> ", density " + d).orElse("");
    }

    private static void refuseBoth(boolean both, String name) {
        if (both) {
            throw new UnusableReportException(
                    0, "options contradict each other: '" + name + "' cannot be both named and left out");
        }
    }

    private static Map<String, String> added(Map<String, String> map, String key, String value) {
        Map<String, String> more = new HashMap<>(map);
        String before = more.put(key, value);
        if (before != null && !before.equals(value)) {
            throw new UnusableReportException(
                    0,
                    "options contradict each other: " + key + " cannot be both '" + before + "' and '" + value + "'");
        }
        return Map.copyOf(more);
    }

    private static String basis(String text) {
        String formula = StatedUnit.plain(Objects.requireNonNull(text, "basis").strip());
        try {
            Formula.parse(formula);
        } catch (UnreadableTextException e) {
            throw new UnusableReportException(
                    0, "unknown basis '" + text + "' in an option: expected a formula such as N or NO3");
        }
        return formula;
    }

    private static String known(String analyte) {
        return found(analyte).name();
    }

    private static Analyte found(String analyte) {
        return AnalyteNames.find(Objects.requireNonNull(analyte, "analyte"))
                .orElseThrow(() -> new UnusableReportException(
                        0,
                        "unknown analyte '" + analyte + "' in an option"
                                + AnalyteNames.near(analyte)
                                        .map(n -> ": did you mean " + n + "?")
                                        .orElse("")))
                .analyte();
    }

    DecimalSign decimalSign() {
        return decimalSign;
    }

    Optional<String> basisOf(Analyte analyte) {
        return Optional.ofNullable(bases.get(analyte.name()));
    }

    Optional<String> unitOf(Analyte analyte) {
        return Optional.ofNullable(units.get(analyte.name()));
    }

    /** What a name of the report stands for: itself, unless the caller renamed it. */
    String meant(String name) {
        return names.getOrDefault(AnalyteNames.normal(name), name);
    }

    boolean ignores(String name) {
        return ignored.contains(AnalyteNames.normal(name));
    }

    Optional<MassConcentration> density() {
        return density;
    }

    /** What the options speak of and the rows do not have, in words. */
    List<String> unmatched(List<ReportRow> rows) {
        Set<String> present = new HashSet<>();
        Set<String> analytes = new HashSet<>();
        for (ReportRow row : rows) {
            present.add(AnalyteNames.normal(row.analyte()));
            AnalyteNames.find(meant(row.analyte()))
                    .ifPresent(match -> analytes.add(match.analyte().name()));
        }
        return Stream.of(
                        Stream.concat(names.keySet().stream(), ignored.stream())
                                .filter(name -> !present.contains(name)),
                        Stream.concat(bases.keySet().stream(), units.keySet().stream())
                                .filter(name -> !analytes.contains(name)))
                .flatMap(Function.identity())
                .sorted()
                .distinct()
                .map(name -> "an option speaks of '" + name + "', which the report does not have")
                .toList();
    }
}
