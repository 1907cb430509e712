package evenwater.examples.plain;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.PlainWater;
import evenwater.chemistry.water.Water;

/** A water as numbers and texts, for any library of JSON, and back. */
public final class PlainForms {

    private PlainForms() {}

    /**
     * Prints what a library of JSON would write.
     *
     * @param args none
     */
    public static void main(String[] args) {
        Water tap = Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(1.5, AmountConcentration.MILLIMOLE_PER_LITRE))
                .alkalinity(Alkalinity.parse("2 meq/L"))
                .measuredPH(7.5)
                .build();

        PlainWater plain = tap.toPlain(); // hand it to a library of JSON as it is
        System.out.println(plain);
        System.out.println(Water.from(plain).equals(tap));
    }
}
