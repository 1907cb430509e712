package evenwater.examples.questions;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Stage;
import evenwater.chemistry.water.Water;
import evenwater.chemistry.worked.Mistake;
import evenwater.chemistry.worked.Worked;
import evenwater.chemistry.worked.WorkedSolutions;
import java.util.Locale;

/** How does the sodium behind a softener follow, step by step? */
public final class StepsOfASoftener {

    private StepsOfASoftener() {}

    /**
     * Prints the steps from the hardness to the sodium, and the usual mistakes.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water source = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(104, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(28, Ion.MAGNESIUM.milligramPerLitre()))
                .alkalinity(Alkalinity.of(14.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();
        // snippet
        Worked<Stage> worked = WorkedSolutions.softening(
                Softener.withSodium().leaking(Hardness.parse("0.5 gpg")), source, Hardness.GERMAN_DEGREE);

        worked.steps().forEach(step -> System.out.println(step.title() + ": " + step.calculation(4)));
        for (Mistake mistake : worked.mistakes()) {
            System.out.printf(
                    Locale.ROOT, "wrong, %s: %.2f of it; %s%n", mistake.name(), mistake.ratio(), mistake.reason());
        }
        // end
    }
}
