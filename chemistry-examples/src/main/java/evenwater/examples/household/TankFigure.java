package evenwater.examples.household;

import evenwater.chemistry.aquarium.Tank;
import evenwater.chemistry.aquarium.TankCourse;
import evenwater.chemistry.aquarium.TankVolume;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.uncertainty.Draw;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Weight;
import evenwater.chemistry.water.Water;
import evenwater.pictures.Picture;
import evenwater.pictures.TankPicture;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Unit;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/** A tank that holds the source water and gets the water of the recipe, week by week. */
final class TankFigure {

    /** Changed each week (own rule: what many keepers change). */
    private static final double SHARE = 0.25;

    private static final WaterQuantity<Time> WEEK = WaterUnits.time(7, WaterUnits.DAY);
    private static final WaterQuantity<Time> PERIOD = WaterUnits.time(84, WaterUnits.DAY);

    static final String CAPTION =
            "If the tank held the source water and a quarter of it were changed each week for water by "
                    + "this recipe (own rule, nothing evaporating). The draws are those of the table above, fewer of them.";

    private final WaterQuantity<Volume> volume;
    private final Unit<Hardness> unit;

    TankFigure(WaterQuantity<Volume> volume, Unit<Hardness> unit) {
        this.volume = volume;
        this.unit = unit;
    }

    /** Draws the hardness, with the range that the kind of tank asks for. */
    Optional<Picture> hardness(
            Water source,
            Water fill,
            Requirements kind,
            List<Uncertain<?>> inputs,
            Function<Draw, Water> drawnSource,
            Function<Draw, Water> drawnFill) {
        return HouseholdPictures.possibly(() -> {
            List<TankCourse> draws =
                    Draws.fewer(inputs, draw -> course(drawnSource.apply(draw), drawnFill.apply(draw)));
            TankPicture<Hardness> picture = TankPicture.of(
                            "general hardness", unit, Water::hardness, "the tank", course(source, fill))
                    .withDraws(draws, Draws.COVERAGE);
            for (Requirement<?> requirement : kind.list()) {
                if (requirement.parameter() == Parameter.GENERAL_HARDNESS
                        && requirement.weight() != Weight.FOR_INFORMATION) {
                    picture = limited(picture, "least wanted", requirement.least());
                    picture = limited(picture, "most wanted", requirement.most());
                }
            }
            return picture;
        });
    }

    private static TankPicture<Hardness> limited(
            TankPicture<Hardness> picture, String name, Optional<? extends WaterQuantity<?>> limit) {
        return limit.map(value -> picture.withLimit(name, (Hardness) value)).orElse(picture);
    }

    private TankCourse course(Water start, Water fill) {
        return Tank.builder(TankVolume.measured(volume), start)
                .changing(SHARE, WEEK, fill)
                .build()
                .course(PERIOD);
    }
}
