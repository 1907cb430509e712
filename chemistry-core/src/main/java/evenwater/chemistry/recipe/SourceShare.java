package evenwater.chemistry.recipe;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Objects;
import javax.measure.quantity.Volume;

/**
 * How much of a water goes into a recipe.
 *
 * @param name what the water was called
 * @param water the water
 * @param share its volume in the volume of the blend; no unit, 0 to 1
 * @param volume how much of it to take
 */
public record SourceShare(String name, Water water, double share, WaterQuantity<Volume> volume) {

    /**
     * Checks the parts.
     *
     * @param name see the record
     * @param water see the record
     * @param share see the record
     * @param volume see the record
     * @throws IllegalArgumentException if the share is out of range
     */
    public SourceShare {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(volume, "volume");
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of " + name + " must be from 0 to 1, but was " + share);
        }
    }

    /** Returns volume, name and share, such as {@code 15 L of tap (25 %)}. */
    @Override
    public String toString() {
        return volume.toText(Locale.ROOT, 4) + " of " + name + " ("
                + WaterUnits.share(100 * share, WaterUnits.PERCENT).toText(Locale.ROOT, 3) + ")";
    }
}
