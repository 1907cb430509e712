package evenwater.examples.household;

import evenwater.chemistry.planning.HouseholdUse;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.quantity.Volume;

/**
 * What is known of a softener that is to be planned; the rest is assumed, and said to be.
 *
 * @param use water of the household
 * @param resin volume of settled resin
 * @param dose salt of a regeneration, as sodium chloride
 * @param days that the dose must last
 * @param counterFlow whether the brine goes against the service
 */
record PlanWish(
        Optional<HouseholdUse> use,
        Optional<WaterQuantity<Volume>> resin,
        Optional<SaltDose> dose,
        OptionalDouble days,
        boolean counterFlow) {

    /** Nothing is known. */
    static final PlanWish NOTHING =
            new PlanWish(Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), false);

    static PlanWish of(HouseholdUse use, WaterQuantity<Volume> resin) {
        return new PlanWish(Optional.of(use), Optional.of(resin), Optional.empty(), OptionalDouble.empty(), false);
    }
}
