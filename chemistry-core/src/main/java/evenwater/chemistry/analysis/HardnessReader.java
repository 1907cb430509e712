package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.HardnessCount;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Finds calcium and magnesium from whatever a report says of them and of hardness. */
final class HardnessReader {

    /** Readings that differ by less are called the same: two titrations of a laboratory. */
    private static final double AGREE = 0.05;

    private final LabReport report;
    private final Assumptions assumed;
    private final OpenPoints open;
    private final List<String> assumptions;
    private final List<String> findings;
    /** From titrations that count calcium and magnesium alone to such that count all that they may. */
    private OpenPoints.@Nullable Point counts;

    HardnessReader(
            LabReport report, Assumptions assumed, OpenPoints open, List<String> assumptions, List<String> findings) {
        this.report = report;
        this.assumed = assumed;
        this.open = open;
        this.assumptions = assumptions;
        this.findings = findings;
    }

    /** What a titration of hardness may count beside calcium and magnesium: iron and manganese unless the laboratory masks them. */
    private static final List<Ion> TITRATED = HardnessCount.EDTA_TITRATION.ions().stream()
            .filter(ion -> !HardnessCount.CALCIUM_AND_MAGNESIUM.ions().contains(ion))
            .toList();

    /** What a titration of calcium in alkali may count beside it. */
    private static final List<Ion> TITRATED_AS_CALCIUM = List.of(Ion.STRONTIUM, Ion.BARIUM);

    /** Adds calcium and magnesium to the totals; returns those of them that were measured. */
    Set<Ion> read(Map<Ion, OpenPoints.Amount> totals) {
        Entry calcium = one(Ion.CALCIUM, Kind.CALCIUM_HARDNESS, totals);
        Entry magnesium = one(Ion.MAGNESIUM, Kind.MAGNESIUM_HARDNESS, totals);
        Entry hardness = report.entry(Kind.HARDNESS);
        Set<Ion> measured = new HashSet<>();
        if (calcium != null) {
            measured.add(Ion.CALCIUM);
        }
        if (magnesium != null) {
            measured.add(Ion.MAGNESIUM);
        }
        if (hardness == null) {
            noteMissing(calcium, magnesium);
        } else if (calcium != null && magnesium != null) {
            compare(hardness, calcium, magnesium);
        } else if (calcium != null) {
            takeRest(Ion.MAGNESIUM, hardness, Ion.CALCIUM, calcium, totals);
            measured.add(Ion.MAGNESIUM);
        } else if (magnesium != null) {
            takeRest(Ion.CALCIUM, hardness, Ion.MAGNESIUM, magnesium, totals);
            measured.add(Ion.CALCIUM);
        } else {
            share(hardness, totals);
        }
        return measured;
    }

    /** The reading of an ion, by its own row or by its hardness. */
    private @Nullable Entry one(Ion ion, Kind kind, Map<Ion, OpenPoints.Amount> totals) {
        Entry own = report.entry(ion);
        Entry hardness = report.entry(kind);
        if (own == null && hardness != null) {
            OpenPoints.Amount whole = open.amount(hardness);
            totals.put(ion, kind == Kind.CALCIUM_HARDNESS ? less(whole, hardness, TITRATED_AS_CALCIUM, totals) : whole);
            return hardness;
        }
        if (own != null && hardness != null && !own.agreesWith(hardness)) {
            findings.add(ion.name() + " " + own.stated() + " and "
                    + hardness.key().name() + " " + hardness.stated() + " disagree; used the first");
        }
        return own;
    }

    private void noteMissing(@Nullable Entry calcium, @Nullable Entry magnesium) {
        if (calcium == null && magnesium == null) {
            assumptions.add("neither hardness nor calcium and magnesium measured: counted as 0");
        } else if (calcium == null || magnesium == null) {
            assumptions.add((calcium == null ? "calcium" : "magnesium")
                    + " not measured: counted as 0, so that hardness is a lower bound");
        }
    }

    /** The hardness may lie anywhere from the sum to the sum with all that a titration may count. */
    private void compare(Entry hardness, Entry calcium, Entry magnesium) {
        List<Entry> titrated = titrated(TITRATED);
        double others = titrated.stream().mapToDouble(Entry::high).sum();
        double tooMuch = calcium.low() + magnesium.low() - hardness.high();
        double tooLittle = hardness.low() - (calcium.high() + magnesium.high() + others);
        double stated = hardness.middle();
        if (Math.max(tooMuch, tooLittle) > AGREE * stated) {
            double difference = tooMuch > tooLittle ? tooMuch : -tooLittle;
            double sum = calcium.middle() + magnesium.middle();
            String with = others > 0
                    ? String.format(Locale.ROOT, ", with %s up to %.3f mmol/L", names(titrated), sum + others)
                    : "";
            findings.add(String.format(
                    Locale.ROOT,
                    "hardness %s disagrees with calcium and magnesium, which make %.3f mmol/L%s%s; used these",
                    hardness.stated(),
                    sum,
                    with,
                    stated > 0 ? String.format(Locale.ROOT, " (%+.1f %%)", 100 * difference / stated) : ""));
        }
    }

    /** Takes an ion as what its partner leaves of the hardness. */
    private void takeRest(Ion ion, Entry hardness, Ion partner, Entry part, Map<Ion, OpenPoints.Amount> totals) {
        if (part.low() > hardness.high() * (1 + AGREE) && !report.isDrawn()) {
            throw new UnusableReportException(
                    Math.max(part.line(), hardness.line()),
                    String.format(
                            Locale.ROOT,
                            "%s %s is more than the hardness %s (%.3f against %.3f mmol/L): one of them is wrong",
                            part.key().name(),
                            part.stated(),
                            hardness.stated(),
                            part.low(),
                            hardness.high()));
        }
        if (part.low() > hardness.high()) {
            findings.add(part.key().name() + " " + part.stated() + " is " + (report.isDrawn() ? "" : "a little ")
                    + "more than the hardness " + hardness.stated() + "; " + ion.name() + " counted as 0");
        }
        assumptions.add(ion.name() + " taken as hardness less " + partner.name());
        OpenPoints.Amount whole = less(open.amount(hardness), hardness, TITRATED, totals);
        OpenPoints.Amount taken = Objects.requireNonNull(totals.get(partner));
        totals.put(ion, points -> Math.max(0, whole.at(points) - taken.at(points)));
    }

    private void share(Entry hardness, Map<Ion, OpenPoints.Amount> totals) {
        assumptions.add("calcium to magnesium " + assumed.calciumToMagnesium()
                + " assumed; the bounds try all calcium and all magnesium");
        OpenPoints.Amount whole = less(open.amount(hardness), hardness, TITRATED, totals);
        OpenPoints.Point calcium = open.point(assumed.calciumToMagnesium().shareOfCalcium());
        totals.put(Ion.CALCIUM, points -> whole.at(points) * calcium.at(points));
        totals.put(Ion.MAGNESIUM, points -> whole.at(points) * (1 - calcium.at(points)));
    }

    /** A hardness by itself, or what is left if its titration counts others of this water as well. */
    private OpenPoints.Amount less(
            OpenPoints.Amount whole, Entry hardness, List<Ion> counted, Map<Ion, OpenPoints.Amount> totals) {
        List<Entry> titrated = titrated(counted);
        if (titrated.isEmpty()) {
            return whole;
        }
        List<OpenPoints.Amount> others = titrated.stream()
                .map(entry -> Objects.requireNonNull(totals.get(entry.key().ion())))
                .toList();
        if (counts == null) {
            counts = open.point(0);
        }
        OpenPoints.Point point = counts;
        assumptions.add(hardness.key().name() + " taken as "
                + (hardness.key().kind() == Kind.HARDNESS ? "calcium and magnesium" : "calcium")
                + " alone; the bounds also try that it counts " + names(titrated) + ", as a titration may");
        return points -> Math.max(
                0,
                whole.at(points)
                        - point.at(points)
                                * others.stream()
                                        .mapToDouble(amount -> amount.at(points))
                                        .sum());
    }

    private static String names(List<Entry> entries) {
        return entries.stream().map(entry -> entry.key().name()).collect(Collectors.joining(", "));
    }

    private List<Entry> titrated(List<Ion> counted) {
        return counted.stream()
                .map(report::entry)
                .filter(Objects::nonNull)
                .filter(entry -> entry.high() > 0)
                .toList();
    }
}
