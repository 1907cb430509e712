package evenwater.examples.pictures;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.treatment.ReverseOsmosis;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.water.Water;
import evenwater.pictures.BalancePicture;
import evenwater.pictures.Picture;

/** The ions of a hard well before and after a softener and a membrane. */
public final class IonsOfEachStage {

    private IonsOfEachStage() {}

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
        Water well = Waters.larchLane();
        // snippet
        Train house = Train.of(
                Softener.withSodium().leaking(Hardness.parse("0.5 gpg")), ReverseOsmosis.rejecting(0.95, 0.98));
        return BalancePicture.of(house.run(well));
        // end
    }
}
