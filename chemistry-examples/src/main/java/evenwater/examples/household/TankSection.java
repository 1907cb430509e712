package evenwater.examples.household;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.HardnessForms;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the last water means for plants and fish, by ranges that aquarists keep. */
final class TankSection {

    /** Above this many keepers of planted tanks look for other water (common practice, no source). */
    static final double MUCH_SODIUM = 50;

    /** Below this plants lack calcium or magnesium (common practice, no source). */
    private static final double LITTLE_HARDNESS = 3;

    /** Less of the hardness than this share is hardly any (common practice, no source). */
    private static final double HARDLY_ANY = 0.05;

    /** What matters in larger amounts. */
    private static final List<Ion> BURDEN = List.of(
            Ion.NITRATE,
            Ion.SODIUM,
            Ion.POTASSIUM,
            Ion.CHLORIDE,
            Ion.SULFATE,
            Ion.IRON_II,
            Ion.MANGANESE_II,
            Ion.FLUORIDE,
            Ion.BORIC_ACID);

    private static final String FITS = "fits";

    private final Stages stages;
    private final Trust trust;

    TankSection(Stages stages, Trust trust) {
        this.stages = stages;
        this.trust = trust;
    }

    void write(Page page) {
        Span gh = Span.of(stages.bounds(stages.last(), Water::hardness), Hardness.GERMAN_DEGREE);
        Span kh = Span.of(stages.bounds(stages.last(), Water::alkalinity), Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        page.heading("In the tank");
        page.say((stages.last() == 0 ? "The source" : "The water behind the last stage") + " has "
                + spoken("GH", gh, "°dH", "hardness") + " and "
                + spoken("KH", kh, "°dKH", "alkalinity")
                + ". All of this section is common practice without a source; "
                + (new Conditions(stages).pH(stages.last()).isPresent()
                        ? "pH and CO₂ are judged only where they do harm, ammonia, chlorine and metals not at all, "
                        : "pH, ammonia, chlorine and metals are not judged, ")
                + "and no water is fit for fish while they are unknown.");
        trust.doubt().ifPresent(page::say);
        List<String> reservations = new Reservations(stages).sentences();
        if (!reservations.isEmpty()) {
            page.gap().say("DO NOT USE this water for animals before this is settled:");
            reservations.forEach(page::item);
        }
        plants(page, gh, kh, !reservations.isEmpty());
        fish(page, gh, kh, !reservations.isEmpty());
        notJudged(page);
    }

    /** What is in the water and no range here speaks of. */
    private void notJudged(Page page) {
        Reservations reservations = new Reservations(stages);
        List<Ion> traces = Reservations.TOXIC.stream()
                .filter(ion -> !reservations.isTooMuch(ion))
                .toList();
        List<String> burden = new ArrayList<>(Reservations.held(stages, traces));
        burden.addAll(Reservations.held(stages, BURDEN));
        if (!burden.isEmpty()) {
            page.say("Also in it and not judged here: " + String.join(", ", burden) + ".");
        }
    }

    private static String spoken(String name, Span span, String unit, String measured) {
        if (span.isUnknown()) {
            return name + " unknown (no measured " + measured + ")";
        }
        String range = span.rangeText(unit);
        return name + " " + (range.isEmpty() ? Page.number(span.value()) + " " + unit : range);
    }

    private void plants(Page page, Span gh, Span kh, boolean reserved) {
        page.gap().say("Planted tank:");
        for (String[] row : Resource.rows("communities.csv")) {
            if (row[5].equals("plants")) {
                String verdict = verdict(row, gh, kh);
                page.item(row[0] + ": " + (reserved && verdict.equals(FITS) ? "GH and KH would fit" : verdict));
            }
        }
        page.item("calcium and magnesium: " + hardness(gh, stages.water(stages.last())));
        page.item(sodium());
    }

    private String hardness(Span gh, Water water) {
        if (gh.isBelow(LITTLE_HARDNESS)) {
            return "GH " + Page.number(gh.value()) + " °dH is little; plants want some of both, so put them back";
        }
        if (gh.low() < LITTLE_HARDNESS) {
            return "the report cannot tell whether GH is at least " + Page.number(LITTLE_HARDNESS) + " °dH";
        }
        if (Stream.of(Ion.CALCIUM, Ion.MAGNESIUM)
                .anyMatch(ion -> stages.bounds(stages.last(), w -> w.total(ion)).openAbove())) {
            return "enough by GH";
        }
        HardnessForms forms = water.hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM);
        double calcium =
                forms.calcium().in(Hardness.GERMAN_DEGREE) / forms.total().in(Hardness.GERMAN_DEGREE);
        if (calcium < HARDLY_ANY || calcium > 1 - HARDLY_ANY) {
            return "enough by GH, but hardly any " + (calcium < HARDLY_ANY ? "calcium" : "magnesium") + " in it";
        }
        return "enough by GH";
    }

    private String sodium() {
        Span sodium =
                Span.of(stages.bounds(stages.last(), water -> water.total(Ion.SODIUM)), Ion.SODIUM.milligramPerLitre());
        String limit = "about " + Page.number(MUCH_SODIUM) + " mg/L";
        if (sodium.isAbove(MUCH_SODIUM)) {
            return "sodium: " + sodium.valueText() + " mg/L is above what most keepers of plants accept, " + limit;
        }
        if (sodium.isUnknown() && !stages.source().isMeasured(Ion.SODIUM)) {
            return "sodium: not known, since the source was not measured for it; most keepers of plants accept "
                    + limit;
        }
        return sodium.high() > MUCH_SODIUM
                ? "sodium: the report cannot tell whether it is above what most keepers of plants accept, " + limit
                : "sodium: " + sodium.valueText() + " mg/L is no worry for plants";
    }

    private static void fish(Page page, Span gh, Span kh, boolean reserved) {
        List<String> fits = new ArrayList<>();
        List<String> not = new ArrayList<>();
        for (String[] row : Resource.rows("communities.csv")) {
            if (row[5].equals("fish")) {
                String verdict = verdict(row, gh, kh);
                if (verdict.equals(FITS)) {
                    fits.add(row[0] + " (GH " + row[1] + " to " + row[2] + " °dH, KH " + row[3] + " to " + row[4]
                            + " °dKH)");
                } else {
                    not.add(row[0] + ": " + verdict);
                }
            }
        }
        page.gap()
                .say("Fish and shrimp, by GH and KH alone: "
                        + (reserved ? "no verdict before the above is settled. GH and KH would fit " : "fits ")
                        + (fits.isEmpty() ? "none of these" : String.join("; ", fits)) + ".");
        not.forEach(page::item);
    }

    private static String verdict(String[] row, Span gh, Span kh) {
        List<String> reasons = new ArrayList<>();
        compare(reasons, "GH", "°dH", gh, Double.parseDouble(row[1]), Double.parseDouble(row[2]));
        compare(reasons, "KH", "°dKH", kh, Double.parseDouble(row[3]), Double.parseDouble(row[4]));
        return reasons.isEmpty() ? FITS : String.join(", ", reasons);
    }

    private static void compare(List<String> reasons, String name, String unit, Span span, double low, double high) {
        if (span.isBelow(low)) {
            reasons.add(name + " " + Page.number(span.value()) + " is below " + Page.number(low) + " " + unit);
        } else if (span.isAbove(high)) {
            reasons.add(name + " " + span.valueText() + " is above " + Page.number(high) + " " + unit);
        } else if (!span.isWithin(low, high)) {
            reasons.add(
                    span.isUnknown()
                            ? name + " is not known"
                            : "the report cannot tell whether " + name + ", " + span.rangeText(unit) + ", is "
                                    + Page.number(low) + " to " + Page.number(high) + " " + unit);
        }
    }
}
