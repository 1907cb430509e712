package evenwater.chemistry.aquarium;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.quantity.Volume;

/**
 * One partial water change on the way to another water.
 *
 * @param day on which it is due; 1 for the first
 * @param fraction of the net volume that is changed; no unit, 0 to 1
 * @param volume of the new water, in litres
 * @param water in the tank after it
 * @param before readings before it
 * @param after readings after it
 * @param excesses the limits by which it is too fast, in words; none in a plan
 */
public record ChangeOverStep(
        int day,
        double fraction,
        WaterQuantity<Volume> volume,
        Water water,
        TankReading before,
        TankReading after,
        List<String> excesses) {

    /**
     * Refuses null.
     *
     * @param day see the record
     * @param fraction see the record
     * @param volume see the record
     * @param water see the record
     * @param before see the record
     * @param after see the record
     * @param excesses see the record
     */
    public ChangeOverStep {
        Objects.requireNonNull(volume, "volume");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        excesses = List.copyOf(excesses);
    }

    /**
     * Tells whether the change keeps to all limits.
     *
     * @return true if it is slow enough
     */
    public boolean isGentle() {
        return excesses.isEmpty();
    }

    /** Returns day, fraction, litres and readings, rounded for people. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "day %d: %.1f %%, %.1f L: %s, then %s",
                day,
                100 * fraction,
                volume.in(WaterUnits.LITRE),
                before,
                after);
    }
}
