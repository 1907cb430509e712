package evenwater.examples.household;

import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;

import evenwater.chemistry.analysis.Acceptance;
import evenwater.chemistry.analysis.AcceptanceCriteria;
import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.HardnessScheme;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.UnusedRow;
import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.HardnessForms;
import evenwater.chemistry.water.IonBalance;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;

/** The source: what was measured, what was assumed, whether the ions balance, its hardness. */
final class SourceSection {

    private static final Map<HardnessScheme, String> SCHEMES = Map.of(
            HardnessScheme.USGS, "USGS",
            HardnessScheme.SOFTENING_TRADE, "softening trade",
            HardnessScheme.GERMANY, "Germany",
            HardnessScheme.AQUARISTS, "aquarists, common practice");

    /** In the last class of every scheme. */
    private static final Hardness HARDEST = Hardness.of(1000, Hardness.MILLIMOLE_PER_LITRE);

    /** Natural waters lie within 6.3 % of the conductivity of their ions. */
    private static final double MOST_OVER_MEASURED = 1.07;

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
        Stages untreated = new Stages(source, Train.of());
        page.gap().table(new WaterTable(untreated).rows(0));
        new Conditions(untreated).write(page, 0);
        page.picture("", () -> HouseholdPictures.carbonate(source.water()));
        hardness(page);
        balance(page);
    }

    private void measured(Page page) {
        LabReport report = source.report();
        page.say("Measured: " + report.readings().stream().map(Page::foreign).collect(Collectors.joining("; ")) + ".");
        if (!source.assumptions().isEmpty()) {
            page.gap().say("Assumed:");
            source.assumptions().forEach(assumption -> page.item(Page.clean(assumption)));
        }
        if (!source.findings().isEmpty()) {
            page.gap().say("Readings that disagree:");
            source.findings().forEach(finding -> page.item(Page.clean(finding)));
        }
        if (!report.unusedRows().isEmpty()) {
            page.gap().say("No part of the water:");
            for (UnusedRow unused : report.unusedRows()) {
                String reading = unused.row().value() + " " + unused.row().unit();
                page.item("line " + unused.row().line() + ", "
                        + Page.foreign(unused.row().analyte() + " " + reading) + ": " + unused.reason());
            }
        }
    }

    private void hardness(Page page) {
        Bounds<Hardness> bounds = source.bounds(Water::hardness);
        Unit<Hardness> unit = speech.hardness();
        Span span = Span.of(bounds, unit);
        if (span.isUnknown()) {
            page.gap().say("Hardness: not measured. Alkalinity: " + alkalinity() + ".");
            return;
        }
        String range = span.rangeText(unit.toString());
        page.gap()
                .say("Hardness by calcium and magnesium" + (bounds.openAbove() ? " as far as measured" : "")
                        + ", in all scales: "
                        + Hardness.units().stream()
                                .map(scale -> inUnit(bounds.value(), scale))
                                .collect(Collectors.joining(" = "))
                        + (range.isEmpty() ? "" : "; it may be " + range) + ".");
        page.say("Its forms: calcium " + form(HardnessForms::calcium) + ", magnesium " + form(HardnessForms::magnesium)
                + "; " + carbonate());
        Hardness titrated =
                source.water().hardnessForms(HardnessCount.EDTA_TITRATION).total();
        if (source.report().hardness().isEmpty() && !titrated.equals(bounds.value())) {
            page.say("With strontium, barium, iron and manganese, as an EDTA titration sees them: "
                    + inUnit(titrated, unit) + ".");
        }
        page.say("Class: "
                + Stream.of(
                                HardnessScheme.USGS,
                                HardnessScheme.SOFTENING_TRADE,
                                HardnessScheme.GERMANY,
                                HardnessScheme.AQUARISTS)
                        .map(scheme -> classOf(scheme, bounds) + " (" + SCHEMES.get(scheme) + ")")
                        .collect(Collectors.joining(", "))
                + ".");
    }

    /** The class, or from which to which where the report leaves it open. */
    private static String classOf(HardnessScheme scheme, Bounds<Hardness> hardness) {
        String least = scheme.classOf(hardness.low());
        String most = scheme.classOf(hardness.openAbove() ? HARDEST : hardness.high());
        if (least.equals(most)) {
            return least;
        }
        return hardness.openAbove() ? least + " or harder" : least + " to " + most;
    }

    private String form(Function<HardnessForms, Hardness> form) {
        Unit<Hardness> unit = speech.hardness();
        Span span = Span.of(
                source.bounds(water -> form.apply(water.hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM))), unit);
        String range = span.rangeText(unit.toString());
        return Page.number(span.value()) + " " + unit + (range.isEmpty() ? "" : " (" + range + ")");
    }

    private String carbonate() {
        boolean unknown =
                Span.of(source.bounds(Water::alkalinity), speech.alkalinity()).isUnknown();
        return unknown || source.notMeasured().contains("alkalinity")
                ? "carbonate and non-carbonate hardness cannot be told. Alkalinity (the KH of aquarists): "
                        + alkalinity() + "."
                : "carbonate hardness in the strict sense " + form(HardnessForms::carbonate) + ", non-carbonate "
                        + form(HardnessForms::nonCarbonate) + ". Alkalinity (the KH of aquarists): " + alkalinity()
                        + ".";
    }

    private String alkalinity() {
        Span alkalinity = Span.of(source.bounds(Water::alkalinity), speech.alkalinity());
        String unit = speech.alkalinity().toString();
        String range = alkalinity.rangeText(unit);
        if (alkalinity.isUnknown()) {
            return "not measured";
        }
        boolean stated = source.report().readings().stream()
                .anyMatch(reading -> reading.matches("(alkalinity|bicarbonate|carbonate|hydroxide).*"));
        return (stated ? "" : "not measured, taken as ") + Page.number(alkalinity.value()) + " " + unit
                + (range.isEmpty() ? "" : " (" + range + ")");
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
            conductivityOfTheRest(page);
            return;
        }
        if (trust.criterion().isEmpty()) {
            page.say("No criterion is made for so much salt.");
        }
        for (Function<Water, Optional<Acceptance>> judge : checks()) {
            judge.apply(water)
                    .ifPresent(check -> page.item(check.criterion() + ": " + value(check) + ", wanted "
                            + limit(check.low()) + " to " + limit(check.high()) + ": " + verdict(judge) + " ("
                            + check.source() + ")."));
        }
        page.say("The difference is carried along as unmeasured charge and never poured into one ion.");
    }

    /** What the missing charge would be if one ion carried it: the range that naming a carrier opens. */
    private void unmeasured(Page page, EquivalentConcentration charge) {
        if (Math.abs(charge.in(MILLIEQUIVALENT_PER_LITRE)) < 0.0005) {
            return; // nothing at three decimals
        }
        boolean anions = charge.getValue() < 0;
        EquivalentConcentration size = anions ? charge.negate() : charge;
        List<Ion> carriers = anions ? List.of(Ion.CHLORIDE, Ion.SULFATE) : List.of(Ion.SODIUM, Ion.POTASSIUM);
        boolean carbonate = anions && source.bounds(Water::alkalinity).openAbove();
        page.say((carbonate ? "Carbonate that nobody stated is likely part of it, and raises the alkalinity. " : "")
                + "As one ion the charge that nobody measured would be "
                + carriers.stream()
                        .map(ion ->
                                Page.number(ion.amount(size).in(ion.milligramPerLitre())) + " mg/L as " + ion.name())
                        .collect(Collectors.joining(", "))
                + "; --carrier says who carries it.");
    }

    private String verdict(Function<Water, Optional<Acceptance>> judge) {
        return trust.verdict(judge)
                .map(accepted -> accepted ? "accepted" : "NOT accepted")
                .orElse("within the intervals of the report it may be accepted or not");
    }

    private List<Function<Water, Optional<Acceptance>>> checks() {
        List<Function<Water, Optional<Acceptance>>> checks = new ArrayList<>();
        checks.add(Trust::criterion);
        source.report().conductivity().filter(c -> c.getValue() > 0).ifPresent(conductivity -> {
            checks.add(water ->
                    Optional.of(AcceptanceCriteria.cationsAgainstConductivity(water.ionBalance(), conductivity)));
            checks.add(water ->
                    Optional.of(AcceptanceCriteria.anionsAgainstConductivity(water.ionBalance(), conductivity)));
            checks.add(water -> Optional.of(
                    AcceptanceCriteria.solidsAgainstConductivity(water.residueAt180Celsius(), conductivity)));
            checks.add(water -> calculated(() -> AcceptanceCriteria.conductivityByStandardMethods(
                    CalculatedConductivity.byStandardMethods2510(water), conductivity)));
            checks.add(water -> calculated(() ->
                    AcceptanceCriteria.conductivityOfIons(CalculatedConductivity.at25Celsius(water), conductivity)));
        });
        source.report()
                .dissolvedSolids()
                .ifPresent(solids -> checks.add(water -> {
                    MassConcentration residue = water.residueAt180Celsius();
                    return residue.getValue() > 0
                            ? Optional.of(AcceptanceCriteria.measuredSolids(solids, residue))
                            : Optional.empty();
                }));
        return checks;
    }

    /** A check, where its conductivity can be calculated. */
    private static Optional<Acceptance> calculated(Supplier<Acceptance> check) {
        try {
            return Optional.of(check.get());
        } catch (NoAnswerException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    /** What a reading of conductivity tells where not everything was measured: the rest must carry the rest. */
    private void conductivityOfTheRest(Page page) {
        Optional<Span> span = new Conditions(new Stages(source, Train.of())).conductivity(0);
        Optional<Conductivity> measured = source.report().conductivity().filter(c -> c.getValue() > 0);
        if (span.isEmpty() || measured.isEmpty()) {
            return;
        }
        double reading = measured.get().in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        double low = Math.min(span.get().value(), span.get().low());
        page.say("What was measured conducts " + Page.number(span.get().value()) + " µS/cm at 25 °C of the "
                + Page.number(reading) + " that the meter showed: "
                + (low > reading * MOST_OVER_MEASURED
                        ? "that is too much, so a reading is wrong."
                        : "what was not measured carries the rest."));
    }

    private static String limit(double value) {
        return Double.toString(value).replaceFirst("\\.0$", "");
    }

    private static String value(Acceptance check) {
        return (Page.number(check.value()) + " " + check.unit()).strip();
    }
}
