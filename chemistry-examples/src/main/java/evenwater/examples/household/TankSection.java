package evenwater.examples.household;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;

/** What the last water means for plants and fish, by ranges that aquarists keep. */
final class TankSection {

    /** Above this many keepers of planted tanks look for other water (common practice, no source). */
    private static final double MUCH_SODIUM = 50;

    /** Below this plants lack calcium or magnesium (common practice, no source). */
    private static final double LITTLE_HARDNESS = 3;

    private final Stages stages;

    TankSection(Stages stages) {
        this.stages = stages;
    }

    void write(Page page) {
        Span gh = Span.of(stages.bounds(stages.last(), Water::hardness), Hardness.GERMAN_DEGREE);
        Span kh = Span.of(stages.bounds(stages.last(), Water::alkalinity), Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        page.heading("In the tank");
        page.say("The water behind the last stage has " + spoken("GH", gh, "°dH", "hardness") + " and "
                + spoken("KH", kh, "°dKH", "alkalinity")
                + ". All of this section is common practice without a source; pH, ammonia, chlorine and metals are not "
                + "judged, and no water is fit for fish while they are unknown.");
        plants(page, gh, kh);
        fish(page, gh, kh);
    }

    private static String spoken(String name, Span span, String unit, String measured) {
        if (span.isUnknown()) {
            return name + " unknown, since nobody measured " + measured;
        }
        String range = span.rangeText(unit);
        return name + " " + (range.isEmpty() ? Page.number(span.value()) + " " + unit : range);
    }

    private void plants(Page page, Span gh, Span kh) {
        page.gap().say("Planted tank:");
        for (String[] row : Resource.rows("communities.csv")) {
            if (row[5].equals("plants")) {
                page.item(row[0] + ": " + verdict(row, gh, kh));
            }
        }
        page.item("calcium and magnesium: " + hardness(gh));
        page.item(sodium());
    }

    private static String hardness(Span gh) {
        if (gh.isBelow(LITTLE_HARDNESS)) {
            return "GH " + Page.number(gh.value()) + " °dH is little; plants want some of both, so put them back";
        }
        return gh.low() >= LITTLE_HARDNESS
                ? "enough by GH"
                : "the report cannot tell whether GH is at least " + Page.number(LITTLE_HARDNESS) + " °dH";
    }

    private String sodium() {
        Span sodium =
                Span.of(stages.bounds(stages.last(), water -> water.total(Ion.SODIUM)), Ion.SODIUM.milligramPerLitre());
        String limit = "about " + Page.number(MUCH_SODIUM) + " mg/L";
        if (sodium.isAbove(MUCH_SODIUM)) {
            return "sodium: " + sodium.valueText() + " mg/L is above what most keepers of plants accept, " + limit;
        }
        if (sodium.isUnknown()) {
            return "sodium: not known, since the source was not measured for it; most keepers of plants accept "
                    + limit;
        }
        return sodium.high() > MUCH_SODIUM
                ? "sodium: the report cannot tell whether it is above what most keepers of plants accept, " + limit
                : "sodium: " + sodium.valueText() + " mg/L is no worry for plants";
    }

    private static void fish(Page page, Span gh, Span kh) {
        List<String> fits = new ArrayList<>();
        List<String> not = new ArrayList<>();
        for (String[] row : Resource.rows("communities.csv")) {
            if (row[5].equals("fish")) {
                String verdict = verdict(row, gh, kh);
                if (verdict.equals("fits")) {
                    fits.add(row[0]);
                } else {
                    not.add(row[0] + ": " + verdict);
                }
            }
        }
        page.gap()
                .say("Fish and shrimp, by GH and KH alone: "
                        + (fits.isEmpty() ? "fits none of these" : "fits " + String.join("; ", fits)) + ".");
        not.forEach(page::item);
    }

    private static String verdict(String[] row, Span gh, Span kh) {
        List<String> reasons = new ArrayList<>();
        compare(reasons, "GH", gh, Double.parseDouble(row[1]), Double.parseDouble(row[2]));
        compare(reasons, "KH", kh, Double.parseDouble(row[3]), Double.parseDouble(row[4]));
        return reasons.isEmpty() ? "fits" : String.join(", ", reasons);
    }

    private static void compare(List<String> reasons, String name, Span span, double low, double high) {
        if (span.isBelow(low)) {
            reasons.add(name + " " + Page.number(span.value()) + " is below " + Page.number(low));
        } else if (span.isAbove(high)) {
            reasons.add(name + " " + span.valueText() + " is above " + Page.number(high));
        } else if (!span.isWithin(low, high)) {
            reasons.add(
                    span.isUnknown()
                            ? name + " is not known"
                            : "the report cannot tell whether " + name + ", " + span.rangeText() + ", is "
                                    + Page.number(low) + " to " + Page.number(high));
        }
    }
}
