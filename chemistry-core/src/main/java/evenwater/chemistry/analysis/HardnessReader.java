package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.substance.Ion;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
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

    HardnessReader(
            LabReport report, Assumptions assumed, OpenPoints open, List<String> assumptions, List<String> findings) {
        this.report = report;
        this.assumed = assumed;
        this.open = open;
        this.assumptions = assumptions;
        this.findings = findings;
    }

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
            compare(hardness, calcium.middle() + magnesium.middle());
        } else if (calcium != null) {
            totals.put(
                    Ion.MAGNESIUM,
                    rest(hardness, calcium, Objects.requireNonNull(totals.get(Ion.CALCIUM)), "magnesium"));
            measured.add(Ion.MAGNESIUM);
        } else if (magnesium != null) {
            totals.put(
                    Ion.CALCIUM,
                    rest(hardness, magnesium, Objects.requireNonNull(totals.get(Ion.MAGNESIUM)), "calcium"));
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
            totals.put(ion, open.amount(hardness));
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

    private void compare(Entry hardness, double sum) {
        double difference = sum - hardness.middle();
        if (Math.abs(difference) > AGREE * hardness.middle()) {
            String share = hardness.middle() > 0
                    ? String.format(Locale.ROOT, " (%+.1f %%)", 100 * difference / hardness.middle())
                    : "";
            findings.add(String.format(
                    Locale.ROOT,
                    "hardness %s disagrees with calcium and magnesium, which make %.3f mmol/L%s; used these",
                    hardness.stated(),
                    sum,
                    share));
        }
    }

    private OpenPoints.Amount rest(Entry hardness, Entry part, OpenPoints.Amount partAmount, String name) {
        if (part.low() > hardness.high() * (1 + AGREE)) {
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
            findings.add(part.key().name() + " " + part.stated() + " is a little more than the hardness "
                    + hardness.stated() + "; " + name + " counted as 0");
        }
        assumptions.add(name + " taken as hardness less " + part.key().name().replace(" hardness", ""));
        OpenPoints.Amount whole = open.amount(hardness);
        return points -> Math.max(0, whole.at(points) - partAmount.at(points));
    }

    private void share(Entry hardness, Map<Ion, OpenPoints.Amount> totals) {
        assumptions.add("calcium to magnesium " + assumed.calciumToMagnesium()
                + " assumed; the bounds try all calcium and all magnesium");
        OpenPoints.Amount whole = open.amount(hardness);
        OpenPoints.Point calcium = open.point(assumed.calciumToMagnesium().shareOfCalcium());
        totals.put(Ion.CALCIUM, points -> whole.at(points) * calcium.at(points));
        totals.put(Ion.MAGNESIUM, points -> whole.at(points) * (1 - calcium.at(points)));
    }
}
