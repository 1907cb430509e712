package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * What a laboratory or a test kit measured, before anything is concluded from it.
 *
 * <p>Read it from rows of text with {@link #read}, or build it from quantities with {@link #builder}; then {@link #interpret} makes a
 * water of it. Readings below a detection limit are intervals from 0 to the limit. Immutable and thread-safe.
 */
public final class LabReport {

    /** Units that only these two are stated in. */
    private static final Set<String> HARDNESS_OR_ALKALINITY =
            Set.of("°dh", "dh", "dgh", "°dgh", "°dkh", "dkh", "°f", "°fh", "°e", "°clark", "gpg", "gr/gal");

    private final Map<Entry.Key, Entry> entries;
    private final List<String> notes;
    private final List<UnusedRow> unusedRows;
    private final boolean isDrawn;

    LabReport(Map<Entry.Key, Entry> entries, List<String> notes, List<UnusedRow> unusedRows) {
        this(entries, notes, unusedRows, false);
    }

    private LabReport(Map<Entry.Key, Entry> entries, List<String> notes, List<UnusedRow> unusedRows, boolean isDrawn) {
        this.isDrawn = isDrawn;
        this.entries = entries;
        this.notes = List.copyOf(notes);
        this.unusedRows = List.copyOf(unusedRows);
    }

    /**
     * Returns a builder for a report from quantities.
     *
     * @return an empty builder
     */
    public static LabReportBuilder builder() {
        return new LabReportBuilder();
    }

    /**
     * Reads a report from rows of text.
     *
     * @param rows in any order; names, units and bases as people write them
     * @param options what the caller knows beyond the text
     * @return the report; of several readings of one thing that agree, the one without a detection limit, or else the larger
     * @throws UnusableReportException if a row may be read in two ways, cannot be read, looks like a slip of a known name, or
     *     contradicts another; or if no row can be used
     */
    public static LabReport read(List<ReportRow> rows, ReportOptions options) {
        Objects.requireNonNull(rows, "rows").forEach(row -> Objects.requireNonNull(row, "row"));
        Objects.requireNonNull(options, "options");
        boolean decimalCommas = rows.stream().anyMatch(row -> ReportNumber.needsDecimalComma(row.value()));
        Set<String> notes = new LinkedHashSet<>();
        List<UnusedRow> unused = new ArrayList<>();
        Map<Entry.Key, List<Entry>> entries = new LinkedHashMap<>();
        RowReader reader = new RowReader(options, decimalCommas, notes::add);
        for (ReportRow row : rows) {
            Optional<AnalyteNames.Match> match = match(row, options, unused);
            if (match.isPresent()) {
                reader.read(row, match.get(), reason -> unused.add(new UnusedRow(row, reason)))
                        .ifPresent(entry -> put(entries, entry));
            }
        }
        if (entries.isEmpty()) {
            throw new UnusableReportException(
                    0, "no row with a reading that can be used, such as hardness, alkalinity, calcium or sodium");
        }
        Map<Entry.Key, Entry> used = new LinkedHashMap<>();
        entries.forEach((key, readings) -> used.put(key, preferred(readings, notes)));
        notes.addAll(options.unmatched(rows));
        return new LabReport(used, List.copyOf(notes), unused);
    }

    private static Optional<AnalyteNames.Match> match(ReportRow row, ReportOptions options, List<UnusedRow> unused) {
        if (options.ignores(row.analyte())) {
            unused.add(new UnusedRow(row, "left out as asked"));
            return Optional.empty();
        }
        if (row.analyte().isEmpty() && row.value().isEmpty()) {
            unused.add(new UnusedRow(row, "empty"));
            return Optional.empty();
        }
        if (row.analyte().isEmpty()) {
            throw new UnusableReportException(
                    row.line(), "the name of the analyte is missing beside '" + row.value() + "'");
        }
        Optional<AnalyteNames.Match> match = AnalyteNames.find(options.meant(row.analyte()));
        Optional<Kind> kind = match.map(m -> m.analyte().kind());
        if (match.isEmpty()) {
            Optional<String> near = AnalyteNames.near(row.analyte());
            if (near.isPresent()) {
                throw new UnusableReportException(
                        row.line(),
                        "unknown analyte '" + row.analyte() + "': did you mean " + near.get()
                                + "? Correct it, say what it means, or leave the row out");
            }
            if (HARDNESS_OR_ALKALINITY.contains(row.unit().strip().toLowerCase(Locale.ROOT))) {
                throw new UnusableReportException(
                        row.line(),
                        "unknown analyte '" + row.analyte() + "' in " + row.unit()
                                + ": is it hardness or alkalinity? Say what it means, or leave the row out");
            }
            unused.add(new UnusedRow(row, "name not known"));
        } else if (kind.filter(Kind.AMBIGUOUS::equals).isPresent()) {
            throw new UnusableReportException(
                    row.line(),
                    "'" + row.analyte() + "' may be " + match.get().analyte().name()
                            + ": say what it means, or leave the row out");
        } else if (kind.filter(Kind.UNUSED::equals).isPresent()) {
            unused.add(new UnusedRow(row, "known, goes into no water"));
            return Optional.empty();
        }
        return match;
    }

    private static void put(Map<Entry.Key, List<Entry>> entries, Entry entry) {
        List<Entry> readings = entries.computeIfAbsent(entry.key(), key -> new ArrayList<>());
        for (Entry before : readings) {
            if (!before.agreesWith(entry)) {
                throw new UnusableReportException(
                        entry.line(),
                        entry.key().name() + " is " + entry.stated() + " here and " + before.stated() + " in line "
                                + before.line() + ": leave one out");
            }
        }
        readings.add(entry);
    }

    private static Entry preferred(List<Entry> readings, Set<String> notes) {
        Entry preferred = readings.stream().reduce(Entry::narrowed).orElseThrow();
        if (readings.size() > 1) {
            String times = readings.size() == 2 ? "twice" : readings.size() + " times";
            notes.add(preferred.key().name() + " is given " + times + " and agrees; used " + preferred.stated());
        }
        return preferred;
    }

    /**
     * Concludes what water this is, with the usual assumptions.
     *
     * @return the water, its bounds and everything that was assumed
     * @throws UnusableReportException if readings contradict each other
     */
    public Interpretation interpret() {
        return interpret(Assumptions.usual());
    }

    /**
     * Concludes what water this is.
     *
     * @param assumptions what to assume where nothing was measured
     * @return the water, its bounds and everything that was assumed
     * @throws UnusableReportException if readings contradict each other
     */
    public Interpretation interpret(Assumptions assumptions) {
        return new Interpreter(this, Objects.requireNonNull(assumptions, "assumptions")).interpret();
    }

    /**
     * Returns this report with what is known of its readings, to be drawn: see {@link UncertainReport}.
     *
     * @return the report as inputs of a computation
     * @throws UnusableReportException if readings contradict each other
     */
    public UncertainReport uncertain() {
        interpret(); // a contradiction is one in all draws
        return new UncertainReport(this);
    }

    /**
     * Returns this report to be drawn, with a relative uncertainty for all concentrations that state none and are no intervals: hardness,
     * alkalinity, ions, dissolved solids; not pH, temperature and conductivity.
     *
     * @param share relative standard uncertainty; no unit, 0 to 1
     * @return the report as inputs of a computation
     * @throws IllegalArgumentException if the share is out of range
     * @throws UnusableReportException if readings contradict each other
     */
    public UncertainReport uncertain(double share) {
        Entry.checkedShare(share);
        Map<Entry.Key, Entry> more = new LinkedHashMap<>();
        entries.forEach((key, entry) -> more.put(key, entry.withUsual(share)));
        return new LabReport(more, notes, unusedRows, isDrawn).uncertain();
    }

    /** The same report with other numbers, each reading within its uncertainty. */
    LabReport drawn(Map<Entry.Key, Entry> numbers) {
        return new LabReport(numbers, notes, unusedRows, true);
    }

    /** Whether its readings were drawn each within its uncertainty, so that they may contradict each other by chance. */
    boolean isDrawn() {
        return isDrawn;
    }

    Map<Entry.Key, Entry> entries() {
        return entries;
    }

    /**
     * Returns what the reading of the text took for granted.
     *
     * @return notes in words; possibly empty
     */
    public List<String> notes() {
        return notes;
    }

    /**
     * Returns the rows that do not go into the water.
     *
     * @return rows with reasons, in their order
     */
    public List<UnusedRow> unusedRows() {
        return unusedRows;
    }

    /**
     * Returns what was measured, as it was stated.
     *
     * @return each reading in words, in the order of the report
     */
    public List<String> readings() {
        return entries.values().stream()
                .map(e -> e.key().name() + " " + e.stated())
                .toList();
    }

    /** Returns what was measured, for logs. */
    @Override
    public String toString() {
        return String.join("; ", readings());
    }

    /**
     * Returns the measured pH.
     *
     * @return no unit, the middle of an interval; empty if there is none
     */
    public OptionalDouble pH() {
        Entry entry = entry(Kind.PH);
        return entry == null ? OptionalDouble.empty() : OptionalDouble.of(entry.middle());
    }

    /**
     * Returns the measured total hardness.
     *
     * @return in mmol/L, the middle of an interval; empty if there is none
     */
    public Optional<Hardness> hardness() {
        return Optional.ofNullable(entry(Kind.HARDNESS))
                .map(e -> Hardness.of(e.middle(), Hardness.MILLIMOLE_PER_LITRE));
    }

    /**
     * Returns the measured alkalinity, if it was titrated as such; {@link Interpretation#water} has it in any case.
     *
     * @return in meq/L, the middle of an interval; empty if there is none
     */
    public Optional<Alkalinity> alkalinity() {
        return Optional.ofNullable(entry(Kind.ALKALINITY))
                .map(e -> Alkalinity.of(e.middle(), Alkalinity.MILLIEQUIVALENT_PER_LITRE));
    }

    /**
     * Returns the measured temperature.
     *
     * @return in °C; empty if there is none
     */
    public Optional<WaterQuantity<Temperature>> temperature() {
        return Optional.ofNullable(entry(Kind.TEMPERATURE))
                .map(e -> WaterUnits.temperature(e.high(), WaterUnits.KELVIN).in(WaterUnits.CELSIUS))
                .map(celsius -> WaterUnits.temperature(celsius, WaterUnits.CELSIUS));
    }

    /**
     * Returns the measured conductivity.
     *
     * @return in µS/cm; empty if there is none
     */
    public Optional<Conductivity> conductivity() {
        return Optional.ofNullable(entry(Kind.CONDUCTIVITY))
                .map(e -> Conductivity.of(e.high(), Conductivity.MICROSIEMENS_PER_CENTIMETRE));
    }

    /**
     * Returns the measured dissolved solids.
     *
     * @return in mg/L; empty if there are none
     */
    public Optional<MassConcentration> dissolvedSolids() {
        return Optional.ofNullable(entry(Kind.DISSOLVED_SOLIDS))
                .map(e -> MassConcentration.of(e.high(), MassConcentration.MILLIGRAM_PER_LITRE));
    }

    /**
     * Returns the hardness that the softening trade compensated for iron: a sizing figure, which no water is made of.
     *
     * @return in grains per US gallon; empty if there is none
     */
    public Optional<CompensatedHardness> compensatedHardness() {
        return Optional.ofNullable(entry(Kind.COMPENSATED_HARDNESS))
                .map(e -> CompensatedHardness.of(e.high(), CompensatedHardness.GRAIN_PER_US_GALLON));
    }

    @Nullable
    Entry entry(Kind kind) {
        return entries.values().stream()
                .filter(e -> e.key().kind() == kind)
                .findFirst()
                .orElse(null);
    }

    @Nullable
    Entry entry(Ion ion) {
        return entries.get(new Entry.Key(Kind.ION, ion));
    }

    List<Entry> ions() {
        return entries.values().stream().filter(e -> e.key().kind() == Kind.ION).toList();
    }
}
