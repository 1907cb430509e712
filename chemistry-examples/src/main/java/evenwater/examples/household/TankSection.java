package evenwater.examples.household;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;

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
        Water water = stages.water(stages.last());
        double gh = water.hardness().in(Hardness.GERMAN_DEGREE);
        boolean measured = !stages.source().notMeasured().contains("alkalinity");
        double kh = measured ? water.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS) : Double.NaN;
        page.heading("In the tank");
        page.say("The water behind the last stage has GH " + Page.number(gh) + " °dH and KH "
                + (measured ? Page.number(kh) + " °dKH" : "unknown, since nobody measured alkalinity")
                + ". All of this section is common practice without a source; pH, ammonia, chlorine and metals are not "
                + "judged, and no water is fit for fish while they are unknown.");
        plants(page, gh, kh);
        fish(page, gh, kh);
    }

    private void plants(Page page, double gh, double kh) {
        page.gap().say("Planted tank:");
        for (String[] row : Resource.rows("communities.csv")) {
            if (row[5].equals("plants")) {
                page.item(row[0] + ": " + verdict(row, gh, kh));
            }
        }
        page.item(
                gh < LITTLE_HARDNESS
                        ? "calcium and magnesium: GH " + Page.number(gh)
                                + " °dH is little; plants want some of both, so put them back"
                        : "calcium and magnesium: enough by GH");
        page.item(sodium());
    }

    private String sodium() {
        Unit<AmountConcentration> milligrams = Ion.SODIUM.milligramPerLitre();
        Bounds<AmountConcentration> sodium = stages.bounds(stages.last(), water -> water.total(Ion.SODIUM));
        String limit = "about " + Page.number(MUCH_SODIUM) + " mg/L";
        if (sodium.low().in(milligrams) > MUCH_SODIUM) {
            return "sodium: " + Page.number(sodium.value().in(milligrams))
                    + " mg/L is above what most keepers of plants accept, " + limit;
        }
        if (stages.isLowerBound(Ion.SODIUM)) {
            return "sodium: not known, since the source was not measured for it; most keepers of plants accept "
                    + limit;
        }
        return sodium.high().in(milligrams) > MUCH_SODIUM
                ? "sodium: the report cannot tell whether it is above what most keepers of plants accept, " + limit
                : "sodium: " + Page.number(sodium.value().in(milligrams)) + " mg/L is no worry for plants";
    }

    private static void fish(Page page, double gh, double kh) {
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

    private static String verdict(String[] row, double gh, double kh) {
        List<String> reasons = new ArrayList<>();
        compare(reasons, "GH", gh, Double.parseDouble(row[1]), Double.parseDouble(row[2]));
        compare(reasons, "KH", kh, Double.parseDouble(row[3]), Double.parseDouble(row[4]));
        return reasons.isEmpty() ? "fits" : String.join(", ", reasons);
    }

    private static void compare(List<String> reasons, String name, double value, double low, double high) {
        if (Double.isNaN(value)) {
            reasons.add(name + " is not known");
        } else if (value < low) {
            reasons.add(name + " " + Page.number(value) + " is below " + Page.number(low));
        } else if (value > high) {
            reasons.add(name + " " + Page.number(value) + " is above " + Page.number(high));
        }
    }
}
