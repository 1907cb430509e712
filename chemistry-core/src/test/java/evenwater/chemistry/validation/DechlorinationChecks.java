package evenwater.chemistry.validation;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.treatment.Dechlorination;
import evenwater.chemistry.treatment.ThiosulfateProduct;
import java.util.List;

/** What chlorine takes of thiosulfate. */
final class DechlorinationChecks {

    private DechlorinationChecks() {}

    static Topic topic() {
        Dechlorination sulfate = ofOneMilligram(ThiosulfateProduct.SULFATE);
        Dechlorination tetrathionate = ofOneMilligram(ThiosulfateProduct.TETRATHIONATE);
        Result upper = dose("thiosulfate-tetrathionate", "ended in tetrathionate", tetrathionate);
        Result acid = new Result(
                "dechlorination-acid",
                "alkalinity that 1 mg/L of Cl₂ takes, ended in sulfate",
                "mg/L CaCO₃",
                -sulfate.change().alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        return new Topic(
                "Dechlorination",
                "",
                List.of(
                        dose("thiosulfate-sulfate", "ended in sulfate", sulfate).computed("0.875078"),
                        upper.computed("7.00062"),
                        upper.printed("7.0", Source.AQUARISTS, Status.COMMON_PRACTICE),
                        acid.computed("1.05874")));
    }

    private static Dechlorination ofOneMilligram(ThiosulfateProduct product) {
        return Dechlorination.ofFreeChlorine(MassConcentration.of(1, MILLIGRAM_PER_LITRE), product)
                .withLeastDose();
    }

    private static Result dose(String id, String ended, Dechlorination treatment) {
        return new Result(
                id,
                "Na₂S₂O₃·5H₂O that 1 mg/L of free chlorine takes, " + ended,
                "mg/L",
                treatment.dose().in(MILLIGRAM_PER_LITRE));
    }
}
