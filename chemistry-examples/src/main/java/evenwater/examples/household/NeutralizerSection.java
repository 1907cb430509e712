package evenwater.examples.household;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.FieldPHSensitivity;
import evenwater.chemistry.treatment.Neutralizer;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a neutralizer dissolves, and how much of it hangs on the pH of the raw water. */
final class NeutralizerSection {

    private final Neutralizer filter;
    private final Water raw;
    private final Speech speech;

    NeutralizerSection(Neutralizer filter, Water raw, Speech speech) {
        this.filter = filter;
        this.raw = raw;
        this.speech = speech;
    }

    void write(Page page) {
        filter.warnings(raw).forEach(warning -> page.say(sentence(warning)));
        try {
            table(page, filter.sensitivityToPH(raw));
        } catch (NoAnswerException e) {
            page.say("For a pH 0.3 off there is no answer: " + e.getMessage() + ".");
        }
    }

    static String sentence(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }

    private void table(Page page, FieldPHSensitivity sensitivity) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {
            "if the raw pH is",
            "dissolves, mmol/L",
            "hardness, " + speech.hardness(),
            "alkalinity, " + speech.alkalinity(),
            "pH behind",
            "a softener adds Na⁺, mg/L"
        });
        for (FieldPHSensitivity.Reading reading :
                List.of(sensitivity.lower(), sensitivity.stated(), sensitivity.higher())) {
            rows.add(new String[] {
                Page.number(reading.rawPH()),
                Page.number(reading.dissolved().getValue().doubleValue()),
                Page.number(reading.hardness().in(speech.hardness())),
                Page.number(reading.alkalinity().in(speech.alkalinity())),
                Page.number(reading.outletPH()),
                Page.number(reading.sodiumOfASoftener().in(Ion.SODIUM.milligramPerLitre()))
            });
        }
        page.gap().table(rows).gap();
    }
}
