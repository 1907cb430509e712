package evenwater.chemistry.aquarium;

import evenwater.chemistry.water.Water;
import java.util.Objects;

/**
 * Where a tank comes to rest: it swings between two waters, or stays at one if both are the same.
 *
 * @param afterChange water just after a change
 * @param beforeChange water just before the next
 */
public record SteadyState(Water afterChange, Water beforeChange) {

    /**
     * Refuses null.
     *
     * @param afterChange see the record
     * @param beforeChange see the record
     */
    public SteadyState {
        Objects.requireNonNull(afterChange, "afterChange");
        Objects.requireNonNull(beforeChange, "beforeChange");
    }
}
