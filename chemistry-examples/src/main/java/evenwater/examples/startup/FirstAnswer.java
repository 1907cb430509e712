package evenwater.examples.startup;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.examples.household.Main;

/** One answer from a cold start, so that a clock outside can tell what it takes: {@code nothing}, {@code conversion}, … */
public final class FirstAnswer {

    private FirstAnswer() {}

    /**
     * Prints one answer.
     *
     * @param args which: {@code nothing}, {@code conversion}, {@code softened}, {@code speciation} or {@code household}, which is the main job
     */
    public static void main(String[] args) {
        String which = args.length == 1 ? args[0] : "";
        switch (which) {
            case "nothing" -> System.out.println(22);
            case "conversion" ->
                System.out.println(Hardness.of(22, Hardness.GRAIN_PER_US_GALLON).in(Hardness.GERMAN_DEGREE));
            case "softened" ->
                System.out.println(Softener.withSodium()
                        .treat(tap())
                        .total(Ion.SODIUM)
                        .in(AmountConcentration.MILLIMOLE_PER_LITRE));
            case "speciation" -> System.out.println(Speciation.of(tap()).pH());
            case "household" -> Main.main(new String[0]);
            default ->
                throw new IllegalArgumentException(
                        "answer must be nothing, conversion, softened, speciation or household, but was '" + which
                                + "'");
        }
    }

    /** An invented tap water with 2 mmol/L of hardness and inorganic carbon, so that its pH can be computed. */
    private static Water tap() {
        return Water.builder()
                .total(Ion.CALCIUM, millimoles(1.5))
                .total(Ion.MAGNESIUM, millimoles(0.5))
                .total(Ion.CHLORIDE, millimoles(1))
                .alkalinity(Alkalinity.of(3, Alkalinity.MILLIEQUIVALENT_PER_LITRE))
                .carbon(millimoles(3.2))
                .build();
    }

    private static AmountConcentration millimoles(double perLitre) {
        return AmountConcentration.of(perLitre, AmountConcentration.MILLIMOLE_PER_LITRE);
    }
}
