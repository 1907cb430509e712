package evenwater.examples.pictures;

import evenwater.chemistry.exchange.CapacityCurve;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.pictures.CapacityPicture;
import evenwater.pictures.Picture;

/** The capacity of a resin against the salt of its regeneration. */
public final class CapacityAgainstSalt {

    private CapacityAgainstSalt() {}

    /**
     * Prints the picture as SVG.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        System.out.println(picture().toSvg());
    }

    /**
     * Returns the picture.
     *
     * @return the picture of an invented water
     */
    public static Picture picture() {
        SaltDose dose = SaltDose.parse("8 lb/ft³");
        // snippet
        CapacityCurve trade = CapacityCurve.ofTheTrade();
        return CapacityPicture.of(trade, SaltDose.POUND_PER_CUBIC_FOOT, ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT)
                .marking("planned", dose, trade.capacity(dose));
        // end
    }
}
