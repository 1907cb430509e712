package evenwater.examples.pictures;

import evenwater.chemistry.water.Water;
import evenwater.pictures.CarbonatePicture;
import evenwater.pictures.Picture;

/** The parts of the inorganic carbon of a water against pH. */
public final class CarbonAgainstPH {

    private CarbonAgainstPH() {}

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
        return CarbonatePicture.of(tap);
        // end
    }
}
