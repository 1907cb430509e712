package evenwater.examples.questions;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** How much raw water must go past the softener for 6 degrees, and what sodium is left? */
public final class BypassForAHardness {

    private BypassForAHardness() {}

    /**
     * Prints the bypass and the sodium of the blend.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        Water source = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(104, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(28, Ion.MAGNESIUM.milligramPerLitre()))
                .build();
        // snippet
        Softener softener = Softener.withSodium().bypassFor(Hardness.parse("6 °dH"));

        System.out.printf(Locale.ROOT, "%.1f %% goes past%n", 100 * softener.bypassShare(source));
        Water blend = softener.treat(source);
        System.out.println(blend.hardness().to(Hardness.GERMAN_DEGREE).toText(Locale.ROOT, 3));
        System.out.println(
                blend.total(Ion.SODIUM).to(Ion.SODIUM.milligramPerLitre()).toText(Locale.ROOT, 4));
        // end
    }
}
