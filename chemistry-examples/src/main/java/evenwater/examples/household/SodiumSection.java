package evenwater.examples.household;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.substance.LevelTeaspoon;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import java.util.ArrayList;
import java.util.List;

/** The sodium in words that people can picture, beside published values. */
final class SodiumSection {

    private static final double GLASS_LITRES = 0.25;

    private final Stages stages;
    private final House house;

    SodiumSection(Stages stages, House house) {
        this.stages = stages;
        this.house = house;
    }

    void write(Page page) {
        page.heading("The sodium in perspective");
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {
            "", "mg/L", "mg in a 250 mL glass", "as table salt, g/L", "level tsp per US gallon", "may be, mg/L"
        });
        for (int stage = 0; stage <= stages.last(); stage++) {
            rows.add(row(stage));
        }
        page.table(rows);
        LevelTeaspoon spoon = Compound.SODIUM_CHLORIDE.teaspoon().orElseThrow();
        page.say("A level US teaspoon of table salt is taken as " + spoon.mass() + " ± "
                + spoon.relativeUncertainty().to(WaterUnits.PERCENT) + " (" + spoon.source() + ").");
        if (sodium(0).isUnknown()) {
            page.say("The source was not measured for sodium: whatever it holds comes on top (≥).");
        }
        int shown = houseTap();
        Span sodium = sodium(shown);
        String where = shown == 0 ? "the source" : "the water behind stage " + shown;
        page.gap()
                .say("Published values for drinking water, beside "
                        + (isNotMeasured(sodium)
                                ? "a source that was not measured for sodium:"
                                : "the " + sodium.valueText() + " mg/L of " + where + ", where it is highest:"));
        guidelines(page, sodium);
        if (house.usesPotassium()) {
            potassium(page);
        }
    }

    /** A potassium softener gives potassium instead, for which the cautions below are stricter. */
    private void potassium(Page page) {
        Span potassium =
                Span.of(stages.bounds(1, water -> water.total(Ion.POTASSIUM)), Ion.POTASSIUM.milligramPerLitre());
        page.gap()
                .say("The softener gives potassium instead: " + potassium.valueText() + " mg/L behind it, "
                        + potassium.least() + Page.number(potassium.value() * GLASS_LITRES)
                        + " mg in a 250 mL glass. See the caution on kidneys and drugs.");
    }

    private static void guidelines(Page page, Span sodium) {
        for (Requirement<?> published : Requirements.ofDrinkingWater().list()) {
            if (published.parameter() == Parameter.SODIUM) {
                double limit = published.most().orElseThrow().getValue();
                page.item(Page.number(limit) + " mg/L: " + published.meaning() + "; " + published.citation() + "."
                        + (isNotMeasured(sodium) ? "" : " This water is " + compared(sodium, limit, limit) + "."));
            }
        }
    }

    /** The stage whose water is most likely drunk at the tap: the one with most sodium. */
    private int houseTap() {
        int most = 0;
        for (int stage = 1; stage <= stages.last(); stage++) {
            if (milligrams(stage) > milligrams(most)) {
                most = stage;
            }
        }
        return most;
    }

    /** Where the water lies, as far as the report can tell: its sodium may be an interval, or open upwards. */
    private static String compared(Span sodium, double low, double high) {
        if (sodium.isAbove(high)) {
            return "above it";
        }
        if (sodium.isBelow(low)) {
            return "below it";
        }
        return sodium.isWithin(low, high)
                ? (low == high ? "at it" : "within it")
                : "below or above it: the report cannot tell";
    }

    private Span sodium(int stage) {
        return Span.of(stages.bounds(stage, water -> water.total(Ion.SODIUM)), Ion.SODIUM.milligramPerLitre());
    }

    private static boolean isNotMeasured(Span sodium) {
        return sodium.isUnknown() && sodium.value() == 0;
    }

    private double milligrams(int stage) {
        return stages.water(stage).total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre());
    }

    private String[] row(int stage) {
        Bounds<AmountConcentration> bounds = stages.bounds(stage, water -> water.total(Ion.SODIUM));
        double saltGramsPerLitre = bounds.value().in(MILLIMOLE_PER_LITRE)
                * Compound.SODIUM_CHLORIDE.molarMass().in(MolarMass.GRAM_PER_MOLE)
                / 1000;
        double litresPerGallon = WaterUnits.volume(1, WaterUnits.US_GALLON).in(WaterUnits.LITRE);
        double gramsPerSpoon =
                Compound.SODIUM_CHLORIDE.teaspoon().orElseThrow().mass().in(WaterUnits.GRAM);
        Span span = Span.of(bounds, Ion.SODIUM.milligramPerLitre());
        String name = stage == 0 ? "source" : "behind stage " + stage;
        if (isNotMeasured(span)) {
            return new String[] {name, "not measured", "", "", "", ""};
        }
        String least = span.least();
        return new String[] {
            name,
            span.valueText(),
            least + Page.number(span.value() * GLASS_LITRES),
            least + Page.number(saltGramsPerLitre),
            least + Page.number(saltGramsPerLitre * litresPerGallon / gramsPerSpoon),
            span.rangeText()
        };
    }
}
