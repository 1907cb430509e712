package evenwater.examples.household;

import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.analysis.UnusedRow;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What speaks against a verdict by hardness and alkalinity alone, whatever these are. */
final class Reservations {

    /** Below this there is next to no calcium and magnesium, in German degrees (common practice, no source). */
    private static final double NEXT_TO_NONE = 1;

    /** Water below this that holds much sodium is soft by exchange, in German degrees (common practice, no source). */
    private static final double SOFT = 3;

    /** Ions that harm animals in small amounts. */
    static final List<Ion> TOXIC =
            List.of(Ion.AMMONIUM, Ion.NITRITE, Ion.COPPER_II, Ion.ZINC, Ion.ALUMINIUM, Ion.HYDROGEN_SULFIDE);

    private static final Set<Ion> BASES = Set.of(Ion.HYDROXIDE, Ion.CARBONATE);

    /** Between these most fish live, and plants are not harmed (common practice, no source). */
    private static final double LOWEST_PH = 5.5;

    private static final double HIGHEST_PH = 9.5;

    /** In mg/L (common practice, no source). */
    private static final double MUCH_CARBON_DIOXIDE = 30;

    private final Stages stages;
    private final Conditions conditions;

    Reservations(Stages stages) {
        this.stages = stages;
        this.conditions = new Conditions(stages);
    }

    /** Sentences; none if hardness and alkalinity may be judged. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        List<String> toxic = new ArrayList<>(
                held(stages, TOXIC.stream().filter(this::isTooMuch).toList()));
        toxic.addAll(poisons());
        if (!toxic.isEmpty()) {
            sentences.add("Harmful to animals in such amounts: " + String.join(", ", toxic)
                    + ". Other poisons that the report does not name may be there as well.");
        }
        if (conditions.pH(stages.last()).isPresent()) {
            acidity(sentences);
        } else {
            unknownAcidity(sentences);
        }
        if (stages.doses().anyMatch(dosing -> dosing.most().exceedsSolubility())) {
            sentences.add("Some of a dose stays undissolved: GH and KH are lower than these until it dissolves.");
        }
        minerals(sentences);
        return sentences;
    }

    /** What the computed pH and CO₂ say; low by CO₂ alone is mended by air, so the low end is judged at rest with it. */
    private void acidity(List<String> sentences) {
        Span closed = conditions.pH(stages.last()).orElseThrow();
        if (!(closed.value() <= HIGHEST_PH)) {
            sentences.add("The pH comes out at " + spoken(closed) + ", closed to the air: above " + HIGHEST_PH
                    + " harms most fish, and ammonia turns poisonous. Let it rest with air, and measure the pH before any "
                    + "animal meets this water.");
        }
        conditions
                .pHInAir(stages.last())
                .filter(inAir -> !(inAir.value() >= LOWEST_PH))
                .ifPresent(
                        inAir -> sentences.add(
                                "Even at rest with the open air the pH is " + spoken(inAir) + ": below " + LOWEST_PH
                                        + " harms most fish. Raise the alkalinity, and measure the pH before any animal meets this water."));
        conditions
                .carbonDioxide(stages.last())
                .filter(dissolved -> !(dissolved.value() <= MUCH_CARBON_DIOXIDE))
                .ifPresent(dissolved -> sentences.add("CO₂ " + spoken(dissolved) + " mg/L is more than the "
                        + Page.number(MUCH_CARBON_DIOXIDE)
                        + " mg/L that fish are kept below: aerate the water before animals meet it."));
    }

    private static String spoken(Span span) {
        String range = span.rangeText();
        return Page.number(span.value()) + (range.isEmpty() ? "" : " (" + range + ")");
    }

    private void unknownAcidity(List<String> sentences) {
        strong(
                BASES,
                "Strong bases and carbonates can take the pH above 10, which kills; they can also drop calcium as "
                        + "lime, and GH and KH are then lower than these",
                sentences);
        strong(Set.of(Ion.HYDROGEN), "Acids can take the pH below 5, which kills", sentences);
    }

    private void strong(Set<Ion> ions, String what, List<String> sentences) {
        List<String> names = stages.doses()
                .map(Dosing::compound)
                .filter(compound -> compound.ions().keySet().stream().anyMatch(ions::contains))
                .map(Compound::name)
                .distinct()
                .toList();
        if (!names.isEmpty()) {
            sentences.add("The pH after " + String.join(", ", names) + " is not computed here. " + what
                    + ". Measure the pH before any animal meets this water.");
        }
    }

    private void minerals(List<String> sentences) {
        Span gh = Span.of(stages.bounds(stages.last(), Water::hardness), Hardness.GERMAN_DEGREE);
        Span sodium =
                Span.of(stages.bounds(stages.last(), water -> water.total(Ion.SODIUM)), Ion.SODIUM.milligramPerLitre());
        if (gh.isBelow(SOFT) && sodium.isAbove(TankSection.MUCH_SODIUM)) {
            sentences.add(
                    "This water is soft by exchange, not poor in salt: " + sodium.valueText()
                            + " mg/L of sodium stand in place of calcium and magnesium. It is no water for fish of soft water.");
        } else if (gh.isBelow(NEXT_TO_NONE)) {
            sentences.add("GH " + Page.number(gh.value())
                    + " °dH is next to no calcium and magnesium; animals need some of both, so put them back.");
        }
    }

    /** Whether there is so much of a toxic ion in any case. */
    boolean isTooMuch(Ion ion) {
        Span span = Span.of(stages.bounds(stages.last(), water -> water.total(ion)), ion.milligramPerLitre());
        return limit(ion.name()).filter(limit -> span.low() >= limit).isPresent();
    }

    /** Poisons among the rows that go into no water: those that reach their limit, or whose unit nobody can read. */
    List<String> poisons() {
        return stages.source().report().unusedRows().stream()
                .map(UnusedRow::row)
                .filter(row -> row.value().chars().allMatch(c -> "0123456789.,".indexOf(c) >= 0))
                .filter(row -> limit(row.analyte())
                        .filter(limit -> milligrams(row) >= limit)
                        .isPresent())
                .map(row -> Page.foreign(row.analyte() + " " + row.value() + " " + row.unit()))
                .toList();
    }

    private static double milligrams(ReportRow row) {
        try {
            String unit = row.unit().equalsIgnoreCase("ppm")
                    ? "mg/L"
                    : row.unit().equalsIgnoreCase("ppb") ? "µg/L" : row.unit();
            return MassConcentration.parse(row.value().replace(',', '.') + " " + unit)
                    .in(MassConcentration.MILLIGRAM_PER_LITRE);
        } catch (UnreadableTextException e) {
            return Double.POSITIVE_INFINITY;
        }
    }

    /** From how many mg/L on something is harmful; empty if it is no poison of the table. */
    private static Optional<Double> limit(String analyte) {
        String name = analyte.toLowerCase(Locale.ROOT).strip();
        for (String[] row : Resource.rows("poisons.csv")) {
            for (String beginning : row[0].split(", ", -1)) {
                if (beginning.startsWith("=") ? name.equals(beginning.substring(1)) : name.startsWith(beginning)) {
                    return Optional.of(Double.valueOf(row[1]));
                }
            }
        }
        return Optional.empty();
    }

    /** Which ions the last water holds, with their amounts. */
    static List<String> held(Stages stages, List<Ion> ions) {
        List<String> held = new ArrayList<>();
        for (Ion ion : ions) {
            Span span = Span.of(stages.bounds(stages.last(), water -> water.total(ion)), ion.milligramPerLitre());
            String range = span.rangeText("mg/L");
            if (span.low() <= 0 && span.high() > 0 && Double.isFinite(span.high())) {
                held.add(ion.name() + " below " + Page.number(span.high()) + " mg/L");
            } else if (span.high() >= 0.0005 && !span.isUnknown()) { // else nothing at three decimals
                held.add(ion.name() + " " + (range.isEmpty() ? Page.number(span.value()) + " mg/L" : range));
            }
        }
        return held;
    }
}
