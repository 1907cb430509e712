package evenwater.examples.pictures;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.pictures.Picture;
import evenwater.pictures.SodiumPicture;

/** Sodium behind a softener against hardness, with published values. */
public final class SodiumAgainstHardness {

    private SodiumAgainstHardness() {}

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
        Softener softener = Softener.withSodium().leaking(Hardness.parse("0.5 gpg"));
        return SodiumPicture.of(softener, tap, Hardness.GRAIN_PER_US_GALLON);
        // end
    }
}
