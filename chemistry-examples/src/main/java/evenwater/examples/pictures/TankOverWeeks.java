package evenwater.examples.pictures;

import evenwater.chemistry.aquarium.Tank;
import evenwater.chemistry.aquarium.TankCourse;
import evenwater.chemistry.aquarium.TankVolume;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.water.Water;
import evenwater.pictures.Picture;
import evenwater.pictures.TankPicture;
import java.util.List;

/** What topping off with softened water does to a tank, and how sure that is. */
public final class TankOverWeeks {

    private TankOverWeeks() {}

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
        Uncertain<FlowRate> evaporation = Uncertain.normal(
                        FlowRate.of(1.5, FlowRate.LITRE_PER_DAY), FlowRate.of(0.2, FlowRate.LITRE_PER_DAY))
                .named("evaporation");
        Water soft = Softener.withSodium().treat(tap);
        List<TankCourse> draws = MonteCarlo.seeded(42)
                .draws(400)
                .outcomes(List.of(evaporation), draw -> course(tap, draw.of(evaporation), soft));
        return TankPicture.of(
                        "sodium",
                        Ion.SODIUM.milligramPerLitre(),
                        water -> water.total(Ion.SODIUM),
                        "topped off with softened water",
                        course(tap, evaporation.value(), soft))
                .withDraws(draws, 0.95)
                .with("topped off with pure water", course(tap, evaporation.value(), Water.pure()));
        // end
    }

    /** A quarter of the tank is changed for tap water every week; what evaporates is topped off. */
    private static TankCourse course(Water tap, FlowRate evaporation, Water topOff) {
        return Tank.builder(TankVolume.estimatedFrom(WaterUnits.parseVolume("240 L")), tap)
                .changing(0.25, WaterUnits.time(7, WaterUnits.DAY), tap)
                .evaporatingToppedOffWith(evaporation, topOff)
                .build()
                .course(WaterUnits.time(84, WaterUnits.DAY));
    }
}
