package evenwater.chemistry.treatment;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Objects;

/**
 * The two streams of a membrane.
 *
 * @param permeate what passes
 * @param concentrate what goes to the drain; with the permeate it holds all of the feed
 * @param adjusted the ions whose passage was adjusted until the permeate was neutral; HCO₃⁻ stands for alkalinity; empty if the
 *     rejections pass equal charges
 */
public record MembraneStreams(Water permeate, Water concentrate, List<Ion> adjusted) {

    /**
     * Copies the list.
     *
     * @param permeate see the record
     * @param concentrate see the record
     * @param adjusted see the record
     */
    public MembraneStreams {
        Objects.requireNonNull(permeate, "permeate");
        Objects.requireNonNull(concentrate, "concentrate");
        adjusted = List.copyOf(adjusted);
    }
}
