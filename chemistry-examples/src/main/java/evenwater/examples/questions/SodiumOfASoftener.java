package evenwater.examples.questions;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** How much sodium does the softener really add? */
public final class SodiumOfASoftener {

    private SodiumOfASoftener() {}

    /**
     * Prints the sodium that softening adds.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Water source = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(104, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(28, Ion.MAGNESIUM.milligramPerLitre()))
                .alkalinity(Alkalinity.of(14.5, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();

        Water soft = Softener.withSodium().leaking(Hardness.parse("0.5 gpg")).treat(source);

        AmountConcentration sodium = soft.total(Ion.SODIUM);
        System.out.println(sodium.to(Ion.SODIUM.milligramPerLitre()).toText(Locale.ROOT, 4));
        System.out.println(soft.alkalinity().equals(source.alkalinity())); // no acid or base is exchanged
        // end
    }
}
