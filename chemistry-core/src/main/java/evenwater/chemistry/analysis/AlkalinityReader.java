package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.substance.Ion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Finds the alkalinity from whatever a report says of it. */
final class AlkalinityReader {

    private static final double AGREE = 0.05;
    /** Above it carbonate holds a part that counts: phenolphthalein turns here (Standard Methods 2320, from memory). */
    private static final double CARBONATE_PH = 8.3;

    /** Above it hydroxide holds 0.1 meq/L or more. */
    private static final double HYDROXIDE_PH = 10;

    /** Below it there is mineral acid: methyl orange turns about here (Standard Methods 2310 and 2320, from memory). */
    private static final double ACID_PH = 4.5;

    private static final Map<Kind, Integer> EQUIVALENTS =
            Map.of(Kind.BICARBONATE, 1, Kind.CARBONATE, 2, Kind.HYDROXIDE, 1);

    private final LabReport report;
    private final OpenPoints open;
    private final List<String> assumptions;
    private final List<String> findings;
    /** The least and the most that the pH may be; 7 if nobody measured it. */
    private final double lowPH;

    private final double highPH;

    /**
     * What a report says of the alkalinity.
     *
     * @param amount in meq/L; null if it must close the ion balance
     * @param known whether that is it, or only the least or the most that it may be
     */
    record Reading(OpenPoints.@Nullable Amount amount, Known known) {

        boolean measured() {
            return known == Known.MEASURED;
        }
    }

    /** How much a reading tells. */
    enum Known {
        MEASURED,
        AT_LEAST,
        AT_MOST
    }

    AlkalinityReader(LabReport report, OpenPoints open, List<String> assumptions, List<String> findings) {
        this.report = report;
        this.open = open;
        this.assumptions = assumptions;
        this.findings = findings;
        Entry pH = report.entry(Kind.PH);
        this.lowPH = pH == null ? 7 : pH.low();
        this.highPH = pH == null ? 7 : pH.high();
    }

    Reading read() {
        Reading reading = stated();
        return lowPH < ACID_PH ? inAcid(reading) : reading;
    }

    private Reading stated() {
        Entry alkalinity = report.entry(Kind.ALKALINITY);
        Entry strict = report.entry(Kind.CARBONATE_HARDNESS);
        if (strict != null) {
            refuseAboveHardness(strict);
        }
        List<Entry> forms = new ArrayList<>();
        for (Kind kind : List.of(Kind.BICARBONATE, Kind.CARBONATE, Kind.HYDROXIDE)) {
            Entry entry = report.entry(kind);
            if (entry != null) {
                forms.add(entry);
            }
        }
        boolean withBicarbonate = report.entry(Kind.BICARBONATE) != null;
        if (alkalinity != null) {
            compare(alkalinity, forms, withBicarbonate && !isIncomplete());
            compare("alkalinity " + alkalinity.stated(), alkalinity.high(), strict);
            return new Reading(open.amount(alkalinity), Known.MEASURED);
        }
        if (withBicarbonate || (!forms.isEmpty() && strict == null)) {
            Known known = ofForms(withBicarbonate);
            double high =
                    forms.stream().mapToDouble(e -> equivalents(e) * e.high()).sum();
            compare(forms.get(0).key().name() + " " + forms.get(0).stated(), high, strict);
            return new Reading(sum(forms), known);
        }
        if (strict != null) {
            Known known = isBelowHardness(strict) ? Known.MEASURED : Known.AT_LEAST;
            OpenPoints.Amount amount = open.amount(strict);
            return new Reading(points -> 2 * amount.at(points), known);
        }
        return new Reading(null, Known.AT_LEAST);
    }

    private Known ofForms(boolean withBicarbonate) {
        if (!withBicarbonate) {
            assumptions.add(
                    "bicarbonate not stated: alkalinity taken as carbonate and hydroxide, only its lower bound");
            return Known.AT_LEAST;
        }
        if (isIncomplete()) {
            assumptions.add((report.entry(Kind.CARBONATE) == null ? "carbonate" : "hydroxide") + " not stated at pH "
                    + highPH + ": alkalinity taken as the forms that are, only its lower bound");
            return Known.AT_LEAST;
        }
        assumptions.add("alkalinity taken as the sum of bicarbonate, carbonate and hydroxide as far as stated"
                + (report.entry(Kind.PH) == null ? "; nobody measured whether the pH is below " + CARBONATE_PH : ""));
        return Known.MEASURED;
    }

    /** Whether the pH tells of a form that nobody stated. */
    private boolean isIncomplete() {
        return (highPH > CARBONATE_PH && report.entry(Kind.CARBONATE) == null)
                || (highPH > HYDROXIDE_PH && report.entry(Kind.HYDROXIDE) == null);
    }

    /** A titration of alkalinity shows nothing in mineral acid; what shows something there contradicts the pH. */
    private Reading inAcid(Reading reading) {
        OpenPoints.Amount amount = reading.amount();
        if (amount == null && highPH >= ACID_PH) {
            return reading;
        }
        if (amount == null) {
            double acid = 1000 * Math.pow(10, -highPH);
            assumptions.add(String.format(
                    Locale.ROOT,
                    "alkalinity not measured: taken as -%.3f meq/L, the H⁺ of pH %s; acid of metals and HSO₄⁻ makes it less",
                    acid,
                    highPH));
            return new Reading(points -> -acid, Known.AT_MOST);
        }
        double[] points = open.nominal();
        Arrays.fill(points, 0);
        double least = amount.at(points);
        if (least > 0 && highPH < ACID_PH) {
            findings.add(String.format(
                    Locale.ROOT,
                    "alkalinity of %.3f meq/L disagrees with pH %s, at which there is none",
                    least,
                    highPH));
        }
        if (least != 0) {
            return reading;
        }
        assumptions.add("pH " + lowPH + " means mineral acid: no alkalinity is only its upper bound");
        return new Reading(amount, Known.AT_MOST);
    }

    private OpenPoints.Amount sum(List<Entry> forms) {
        List<OpenPoints.Amount> parts = new ArrayList<>();
        for (Entry entry : forms) {
            OpenPoints.Amount amount = open.amount(entry);
            int equivalents = equivalents(entry);
            parts.add(points -> equivalents * amount.at(points));
        }
        return points -> parts.stream().mapToDouble(part -> part.at(points)).sum();
    }

    private static int equivalents(Entry form) {
        return Objects.requireNonNull(EQUIVALENTS.get(form.key().kind()));
    }

    /** Without bicarbonate the other forms are a part, which disagrees only if it is more than the whole. */
    private void compare(Entry alkalinity, List<Entry> forms, boolean complete) {
        double least = forms.stream().mapToDouble(e -> equivalents(e) * e.low()).sum();
        double most = forms.stream().mapToDouble(e -> equivalents(e) * e.high()).sum();
        double wanted = Math.max(0, alkalinity.high()); // mineral acid leaves no bicarbonate
        boolean tooMuch = least > wanted * (1 + AGREE);
        boolean tooLittle = complete && most < Math.max(0, alkalinity.low()) * (1 - AGREE);
        if (!forms.isEmpty() && (tooMuch || tooLittle)) {
            findings.add(String.format(
                    Locale.ROOT,
                    "alkalinity %s disagrees with bicarbonate and carbonate, which make %.3f meq/L; used the first",
                    alkalinity.stated(),
                    (least + most) / 2));
        }
    }

    private void compare(String stated, double milliequivalents, @Nullable Entry strict) {
        if (strict == null) {
            return;
        }
        double smaller = Math.min(milliequivalents / 2, leastHardness());
        if (strict.high() < smaller * (1 - AGREE)) {
            findings.add(stated + " disagrees with the carbonate hardness " + strict.stated()
                    + ", which is the smaller of alkalinity and hardness; used the first");
        }
        if (2 * strict.low() > milliequivalents + AGREE * Math.abs(milliequivalents)) {
            findings.add(stated + " disagrees with the carbonate hardness " + strict.stated()
                    + ", which is never more; used the first");
        }
    }

    /** Carbonate hardness in the strict sense is the smaller of hardness and alkalinity. */
    private boolean isBelowHardness(Entry strict) {
        boolean below = strict.high() < 0.999 * leastHardness();
        assumptions.add(
                below
                        ? "alkalinity taken from the carbonate hardness, which is below the hardness"
                        : "alkalinity taken as the carbonate hardness, which is only its lower bound");
        return below;
    }

    private void refuseAboveHardness(Entry strict) {
        Entry hardness = report.entry(Kind.HARDNESS);
        if (hardness != null && !report.isDrawn() && strict.low() > hardness.high() * (1 + AGREE)) {
            throw new UnusableReportException(
                    Math.max(strict.line(), hardness.line()),
                    "carbonate hardness " + strict.stated() + " is more than the hardness " + hardness.stated()
                            + ": as a part of it it cannot be; if it is the KH of a kit, call it KH");
        }
    }

    /** The least that the hardness may be, in mmol/L; 0 if nothing tells. */
    private double leastHardness() {
        Entry hardness = report.entry(Kind.HARDNESS);
        if (hardness != null) {
            return hardness.low();
        }
        Entry calcium = report.entry(Ion.CALCIUM);
        Entry magnesium = report.entry(Ion.MAGNESIUM);
        return calcium == null || magnesium == null ? 0 : calcium.low() + magnesium.low();
    }
}
