package evenwater.examples.household;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What speaks against a verdict by hardness and alkalinity alone, whatever these are. */
final class Reservations {

    /** Below this there is next to no calcium and magnesium, in German degrees (common practice, no source). */
    private static final double NEXT_TO_NONE = 1;

    /** Water below this that holds much sodium is soft by exchange, in German degrees (common practice, no source). */
    private static final double SOFT = 3;

    /** What harms animals in traces. */
    private static final List<Ion> TOXIC =
            List.of(Ion.AMMONIUM, Ion.NITRITE, Ion.COPPER_II, Ion.ZINC, Ion.ALUMINIUM, Ion.HYDROGEN_SULFIDE);

    /** The same among the rows that go into no water, by parts of their English, German and French names. */
    private static final Pattern POISONS =
            Pattern.compile("(?iU)\\b(?:.*chlor(?!id)|cyanide?|zyanid|lead|blei|plomb|nickel"
                    + "|[ck]admium|silver|silber|argent|mercur|quecksilber|h2s|.*sul(?:f|ph)id|.*chrom|arsen|cobalt|selen|thalli"
                    + "|pesticid|surfactant|phenol|(?:pb|ni|cd|ag|hg|cr|as|cn|se|cl2)$)");

    private static final Pattern SOMETHING = Pattern.compile("[0-9.,]*[1-9][0-9.,]*");
    private static final Set<Ion> BASES = Set.of(Ion.HYDROXIDE, Ion.CARBONATE);

    private final Stages stages;

    Reservations(Stages stages) {
        this.stages = stages;
    }

    /** Sentences; none if hardness and alkalinity may be judged. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        List<String> toxic = held(stages, TOXIC);
        toxic.addAll(poisons());
        if (!toxic.isEmpty()) {
            sentences.add("Harmful to animals, some of it in traces, and not judged here: " + String.join(", ", toxic)
                    + ". Other poisons that the report does not name may be there as well.");
        }
        strong(
                BASES,
                "Strong bases and carbonates can take the pH above 10, which kills; they can also drop calcium as "
                        + "lime, and GH and KH are then lower than these",
                sentences);
        strong(Set.of(Ion.HYDROGEN), "Acids can take the pH below 5, which kills", sentences);
        if (stages.doses().anyMatch(dosing -> dosing.most().exceedsSolubility())) {
            sentences.add("Some of a dose stays undissolved: GH and KH are lower than these until it dissolves.");
        }
        minerals(sentences);
        return sentences;
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

    /** Rows with a number above zero; of what is below a limit a report has dozens. */
    List<String> poisons() {
        return stages.source().report().unusedRows().stream()
                .filter(unused -> SOMETHING.matcher(unused.row().value()).matches())
                .map(unused -> unused.row().analyte())
                .filter(name -> POISONS.matcher(name.toLowerCase(Locale.ROOT)).lookingAt())
                .map(Page::foreign)
                .toList();
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
