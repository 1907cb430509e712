package evenwater.examples.household;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.analysis.Acceptance;
import evenwater.chemistry.analysis.AcceptanceCriteria;
import evenwater.chemistry.analysis.HardnessScheme;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.UnusedRow;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.HardnessForms;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Unit;

/** The source: what was measured, what was assumed, whether the ions balance, its hardness. */
final class SourceSection {

    private final Interpretation source;
    private final Speech speech;
    private final Trust trust;

    SourceSection(Interpretation source, Speech speech, Trust trust) {
        this.source = source;
        this.speech = speech;
        this.trust = trust;
    }

    void write(Page page) {
        page.heading("The source water");
        measured(page);
        page.gap().table(new WaterTable(new Stages(source, Train.of())).rows(0));
        hardness(page);
        balance(page);
    }

    private void measured(Page page) {
        LabReport report = source.report();
        page.say("Measured: " + Page.clean(String.join("; ", report.readings())) + ".");
        if (!source.assumptions().isEmpty()) {
            page.gap().say("Assumed:");
            source.assumptions().forEach(assumption -> page.item(Page.clean(assumption)));
        }
        if (!source.findings().isEmpty()) {
            page.gap().say("Readings that disagree:");
            source.findings().forEach(finding -> page.item(Page.clean(finding)));
        }
        if (!report.unusedRows().isEmpty()) {
            page.gap().say("Not used:");
            for (UnusedRow unused : report.unusedRows()) {
                String reading = unused.row().value() + " " + unused.row().unit();
                page.item("line " + unused.row().line() + ", "
                        + Page.foreign(unused.row().analyte() + " " + reading) + ": " + unused.reason());
            }
        }
    }

    private void hardness(Page page) {
        HardnessForms forms = source.water().hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM);
        if (Span.of(source.bounds(Water::hardness), speech.hardness()).isUnknown()) {
            page.gap().say("Hardness: not measured. Alkalinity: " + alkalinity() + ".");
            return;
        }
        page.gap()
                .say("Hardness by calcium and magnesium" + (hardnessIsOpen() ? " as far as measured" : "")
                        + ", in all scales: "
                        + Hardness.units().stream()
                                .map(unit -> inUnit(forms.total(), unit))
                                .collect(Collectors.joining(" = "))
                        + ".");
        Unit<Hardness> unit = speech.hardness();
        page.say("Its forms: calcium " + inUnit(forms.calcium(), unit) + ", magnesium "
                + inUnit(forms.magnesium(), unit) + "; " + carbonate(forms, unit));
        HardnessForms titrated = source.water().hardnessForms(HardnessCount.EDTA_TITRATION);
        if (!titrated.total().equals(forms.total())) {
            page.say("With strontium, barium, iron and manganese, as an EDTA titration sees them: "
                    + inUnit(titrated.total(), unit) + ".");
        }
        page.say("Class: " + HardnessScheme.USGS.classOf(forms.total()) + " (USGS), "
                + HardnessScheme.SOFTENING_TRADE.classOf(forms.total()) + " (softening trade), "
                + HardnessScheme.GERMANY.classOf(forms.total()) + " (Germany), "
                + HardnessScheme.AQUARISTS.classOf(forms.total()) + " (aquarists, common practice).");
    }

    private String carbonate(HardnessForms forms, Unit<Hardness> unit) {
        boolean unknown =
                Span.of(source.bounds(Water::alkalinity), speech.alkalinity()).isUnknown();
        return unknown || source.notMeasured().contains("alkalinity")
                ? "carbonate and non-carbonate hardness cannot be told. Alkalinity (the KH of aquarists): "
                        + alkalinity() + "."
                : "carbonate hardness in the strict sense " + inUnit(forms.carbonate(), unit) + ", non-carbonate "
                        + inUnit(forms.nonCarbonate(), unit) + ". Alkalinity (the KH of aquarists): " + alkalinity()
                        + ".";
    }

    private String alkalinity() {
        Span alkalinity = Span.of(source.bounds(Water::alkalinity), speech.alkalinity());
        String unit = speech.alkalinity().toString();
        String range = alkalinity.rangeText(unit);
        if (alkalinity.isUnknown()) {
            return "not measured";
        }
        return source.notMeasured().contains("alkalinity") && !range.isEmpty()
                ? "not measured, " + range
                : Page.number(alkalinity.value()) + " " + unit + (range.isEmpty() ? "" : " (" + range + ")");
    }

    private boolean hardnessIsOpen() {
        return source.bounds(Water::hardness).openAbove();
    }

    private static String inUnit(Hardness hardness, Unit<Hardness> unit) {
        return Page.number(hardness.in(unit)) + " " + unit;
    }

    private void balance(Page page) {
        Water water = source.water();
        IonBalance balance = trust.balance();
        page.gap()
                .say("Ion balance: cations " + Page.number(balance.cations().in(MILLIEQUIVALENT_PER_LITRE))
                        + " meq/L, anions "
                        + Page.number(balance.anions().in(MILLIEQUIVALENT_PER_LITRE)) + " meq/L, difference "
                        + Page.number(balance.difference().in(MILLIEQUIVALENT_PER_LITRE)) + " meq/L ("
                        + Page.number(balance.percentDifference()) + " % of their sum).");
        List<String> missing = trust.missing();
        if (!missing.isEmpty()) {
            page.say(
                    trust.isBroken()
                            ? "NOT accepted: " + String.join(", ", missing)
                                    + (missing.size() == 1 ? " was" : " were")
                                    + " not measured and would make it worse."
                            : "No criterion can judge it, since not everything was measured: "
                                    + String.join(", ", missing) + (missing.size() == 1 ? " is" : " are")
                                    + " missing. The difference is carried along as charge that nobody measured.");
            unmeasured(page, water.unmeasuredCharge());
            return;
        }
        if (trust.criterion().isEmpty()) {
            page.say("No criterion is made for so much salt.");
        }
        for (Acceptance check : checks(water, balance)) {
            page.item(check.criterion() + ": " + value(check) + ", wanted " + limit(check.low()) + " to "
                    + limit(check.high()) + ": " + (check.accepted() ? "accepted" : "NOT accepted") + " ("
                    + check.source() + ").");
        }
        page.say("The difference is carried along as unmeasured charge and never poured into one ion.");
    }

    /** What the missing charge would be if one ion carried it: the range that naming a carrier opens. */
    private static void unmeasured(Page page, EquivalentConcentration charge) {
        if (Math.abs(charge.in(MILLIEQUIVALENT_PER_LITRE)) < 0.0005) {
            return; // nothing at three decimals
        }
        boolean anions = charge.getValue() < 0;
        EquivalentConcentration size = anions ? charge.negate() : charge;
        List<Ion> carriers = anions ? List.of(Ion.CHLORIDE, Ion.SULFATE) : List.of(Ion.SODIUM, Ion.POTASSIUM);
        page.say("It would be "
                + carriers.stream()
                        .map(ion ->
                                Page.number(ion.amount(size).in(ion.milligramPerLitre())) + " mg/L as " + ion.name())
                        .collect(Collectors.joining(", "))
                + "; --carrier says who carries it.");
    }

    private List<Acceptance> checks(Water water, IonBalance balance) {
        List<Acceptance> checks = new ArrayList<>();
        trust.criterion().ifPresent(checks::add);
        MassConcentration residue = water.residueAt180Celsius();
        source.report().conductivity().filter(c -> c.getValue() > 0).ifPresent(conductivity -> {
            checks.add(AcceptanceCriteria.cationsAgainstConductivity(balance, conductivity));
            checks.add(AcceptanceCriteria.anionsAgainstConductivity(balance, conductivity));
            checks.add(AcceptanceCriteria.solidsAgainstConductivity(residue, conductivity));
        });
        source.report()
                .dissolvedSolids()
                .filter(solids -> residue.getValue() > 0)
                .ifPresent(solids -> checks.add(AcceptanceCriteria.measuredSolids(solids, residue)));
        return checks;
    }

    private static String limit(double value) {
        return Double.toString(value).replaceFirst("\\.0$", "");
    }

    private static String value(Acceptance check) {
        return (Page.number(check.value()) + " " + check.unit()).strip();
    }
}
