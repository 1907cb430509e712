package evenwater.examples.household;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MolarMass;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.substance.LevelTeaspoon;
import java.util.ArrayList;
import java.util.List;

/** The sodium in words that people can picture, beside published values. */
final class SodiumSection {

    private static final double GLASS_LITRES = 0.25;

    private final Stages stages;

    SodiumSection(Stages stages) {
        this.stages = stages;
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
        if (stages.isLowerBound(Ion.SODIUM)) {
            page.say("The source was not measured for sodium: whatever it holds comes on top (≥).");
        }
        int shown = houseTap();
        Bounds<AmountConcentration> sodium = stages.bounds(shown, water -> water.total(Ion.SODIUM));
        page.gap()
                .say("Published values for drinking water, beside the " + least() + Page.number(milligrams(shown))
                        + " mg/L of " + (shown == 0 ? "the source" : "the water behind stage " + shown)
                        + ", where it is highest:");
        for (String[] row : Resource.rows("guidelines.csv")) {
            double low = Double.parseDouble(row[0]);
            double high = Double.parseDouble(row[1]);
            String range = low == high ? row[0] : row[0] + " to " + row[1];
            page.item(range + " mg/L: " + row[2] + "; " + row[3] + "; " + row[4] + ". This water is "
                    + compared(sodium, low, high) + ".");
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
    private String compared(Bounds<AmountConcentration> sodium, double low, double high) {
        double least = sodium.low().in(Ion.SODIUM.milligramPerLitre());
        double most = stages.isLowerBound(Ion.SODIUM)
                ? Double.POSITIVE_INFINITY
                : sodium.high().in(Ion.SODIUM.milligramPerLitre());
        if (least > high) {
            return "above it";
        }
        if (most < low) {
            return "below it";
        }
        return least >= low && most <= high ? "within it" : "below or above it: the report cannot tell";
    }

    private String least() {
        return stages.isLowerBound(Ion.SODIUM) ? "≥ " : "";
    }

    private double milligrams(int stage) {
        return stages.water(stage).total(Ion.SODIUM).in(Ion.SODIUM.milligramPerLitre());
    }

    private String[] row(int stage) {
        Bounds<AmountConcentration> bounds = stages.bounds(stage, water -> water.total(Ion.SODIUM));
        double milligrams = bounds.value().in(Ion.SODIUM.milligramPerLitre());
        double saltGramsPerLitre = bounds.value().in(MILLIMOLE_PER_LITRE)
                * Compound.SODIUM_CHLORIDE.molarMass().in(MolarMass.GRAM_PER_MOLE)
                / 1000;
        double litresPerGallon = WaterUnits.volume(1, WaterUnits.US_GALLON).in(WaterUnits.LITRE);
        double gramsPerSpoon =
                Compound.SODIUM_CHLORIDE.teaspoon().orElseThrow().mass().in(WaterUnits.GRAM);
        String least = least();
        return new String[] {
            stage == 0 ? "source" : "behind stage " + stage,
            least + Page.number(milligrams),
            least + Page.number(milligrams * GLASS_LITRES),
            least + Page.number(saltGramsPerLitre),
            least + Page.number(saltGramsPerLitre * litresPerGallon / gramsPerSpoon),
            WaterTable.range(bounds, Ion.SODIUM.milligramPerLitre())
        };
    }
}
