package evenwater.examples.questions;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import java.util.Locale;

/** What are 22 grains in the degrees that the people in my forum speak? */
public final class GrainsInDegrees {

    private GrainsInDegrees() {}

    /**
     * Prints a hardness in other scales.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Hardness tap = Hardness.parse("22 gpg");
        System.out.println(tap.in(Hardness.GERMAN_DEGREE)); // a plain double
        System.out.println(
                tap.to(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE).toText(Locale.ROOT, 4));

        Alkalinity kh = Alkalinity.parse("9.5 °dKH"); // another type: adding the two does not compile
        System.out.println(kh.to(Alkalinity.MILLIEQUIVALENT_PER_LITRE).toText(Locale.GERMANY, 3));
        // end
    }
}
