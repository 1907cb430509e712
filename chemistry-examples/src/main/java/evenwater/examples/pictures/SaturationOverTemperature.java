package evenwater.examples.pictures;

import static evenwater.chemistry.quantity.WaterUnits.CELSIUS;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.pictures.Picture;
import evenwater.pictures.SaturationPicture;

/** Whether a water scales when it is heated, before and behind a softener. */
public final class SaturationOverTemperature {

    private SaturationOverTemperature() {}

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
        Water blended = tap.mixedWith(Softener.withSodium().treat(tap), 0.8);
        return SaturationPicture.of(
                        "tap water",
                        tap,
                        WaterUnits.temperature(5, CELSIUS),
                        WaterUnits.temperature(50, CELSIUS),
                        CELSIUS)
                .with("four fifths of it softened", blended);
        // end
    }
}
