package evenwater.chemistry.aquarium;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;

/**
 * A tank at one moment.
 *
 * @param time since the start, in days
 * @param water in the tank
 * @param volume of that water in litres; below the net volume where evaporation has lowered the level
 * @param afterChange whether this is the moment just after a change; the one just before it has the same time
 */
public record TankMoment(WaterQuantity<Time> time, Water water, WaterQuantity<Volume> volume, boolean afterChange) {

    /**
     * Refuses null.
     *
     * @param time see the record
     * @param water see the record
     * @param volume see the record
     * @param afterChange see the record
     */
    public TankMoment {
        Objects.requireNonNull(time, "time");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(volume, "volume");
    }
}
