package evenwater.examples.pictures;

import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.ServiceRun;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import evenwater.pictures.BreakthroughPicture;
import evenwater.pictures.Picture;

/** What leaves a bed of resin while water runs through it. */
public final class BreakthroughOfABed {

    private BreakthroughOfABed() {}

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
        Water tap = Waters.tap();
        // snippet
        ResinBed bed = ResinBed.of(Resin.gel(), WaterUnits.parseVolume("25 L")); // new, all sodium
        ServiceRun run = bed.serviceFor(tap, bed.flow(16), WaterUnits.parseVolume("9000 L"));
        return BreakthroughPicture.of(run, WaterUnits.LITRE).endingAt(Hardness.parse("1 gpg"));
        // end
    }
}
