package evenwater.examples.rooms;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.worked.Step;
import evenwater.chemistry.worked.Worked;
import evenwater.chemistry.worked.WorkedSolutions;

/** The room of worked solutions: a conversion with its chain of factors and its usual mistakes. */
public final class WorkedRoom {

    private WorkedRoom() {}

    /**
     * Prints the steps of a conversion and of a charge.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Worked<Hardness> degrees = WorkedSolutions.conversion(Hardness.parse("22 gpg"), Hardness.GERMAN_DEGREE);
        System.out.println(degrees);

        Worked<EquivalentConcentration> charges =
                WorkedSolutions.equivalents(Ion.CALCIUM, AmountConcentration.of(104, Ion.CALCIUM.milligramPerLitre()));
        for (Step step : charges.steps()) {
            System.out.println(step.title() + ": " + step.calculation(4));
        }
        // end
    }
}
