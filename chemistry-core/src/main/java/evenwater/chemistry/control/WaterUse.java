package evenwater.chemistry.control;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Objects;
import javax.measure.quantity.Volume;

/**
 * What became of the water that a household drew through its softener.
 *
 * @param softened by the resin, while capacity was left
 * @param bypassed hard, during a regeneration
 * @param exhausted hard, through resin that had nothing left
 */
public record WaterUse(
        WaterQuantity<Volume> softened, WaterQuantity<Volume> bypassed, WaterQuantity<Volume> exhausted) {

    /**
     * Checks that nothing is missing.
     *
     * @param softened see the record
     * @param bypassed see the record
     * @param exhausted see the record
     */
    public WaterUse {
        Objects.requireNonNull(softened, "softened");
        Objects.requireNonNull(bypassed, "bypassed");
        Objects.requireNonNull(exhausted, "exhausted");
    }

    /**
     * Returns all water that was drawn.
     *
     * @return the sum of the three, added up in whole nanolitres, in litres
     */
    public WaterQuantity<Volume> total() {
        return Nanolitres.volume(Nanolitres.of(softened) + Nanolitres.of(bypassed) + Nanolitres.of(exhausted));
    }
}
