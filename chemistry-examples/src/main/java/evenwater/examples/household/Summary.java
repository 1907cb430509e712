package evenwater.examples.household;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Neutralizer;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;

/** The answer in a few lines, before the reasons. */
final class Summary {

    private final Stages stages;
    private final Speech speech;

    Summary(Stages stages, Speech speech) {
        this.stages = stages;
        this.speech = speech;
    }

    void write(Page page) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {
            "in short",
            "hardness, " + speech.hardness(),
            "alkalinity, " + speech.alkalinity(),
            "sodium, mg/L",
            "pH",
            "µS/cm at 25 °C"
        });
        Conditions conditions = new Conditions(stages);
        for (int stage = 0; stage <= stages.last(); stage++) {
            rows.add(new String[] {
                stage == 0 ? "source" : "behind " + name(stages.treatment(stage)),
                said(stage, Water::hardness, speech.hardness()),
                said(stage, Water::alkalinity, speech.alkalinity()),
                said(stage, water -> water.total(Ion.SODIUM), Ion.SODIUM.milligramPerLitre()),
                said(conditions.pH(stage)),
                said(conditions.conductivity(stage))
            });
        }
        page.gap().table(rows);
        page.say("What that means for plants and fish, and the cautions, stand at the end; the reasons stand between.");
        stages.source()
                .report()
                .conductivity()
                .ifPresent(reading -> page.say("The µS/cm are computed from the ions; the report measured "
                        + reading.toText(Locale.ROOT, 4)
                        + ". Where the two differ by more than some 5 %, look for what was not measured."));
    }

    private static String name(Treatment treatment) {
        if (treatment instanceof Dosing dosing) {
            return dosing.compound().name();
        }
        if (treatment instanceof Neutralizer) {
            return "neutralizer";
        }
        return treatment instanceof Softener ? "softener" : "reverse osmosis";
    }

    private static String said(Optional<Span> span) {
        return span.map(Summary::said).orElse("not known");
    }

    private static String said(Span span) {
        if (span.isGuess()) {
            return "about " + Page.number(span.value());
        }
        String range = span.rangeText();
        return span.isUnknown() ? "not known" : range.isEmpty() ? Page.number(span.value()) : range;
    }

    private <K extends Quantity<K>, Q extends WaterQuantity<K>> String said(
            int stage, Function<Water, Q> result, Unit<K> unit) {
        return said(Span.of(stages.bounds(stage, result), unit));
    }
}
