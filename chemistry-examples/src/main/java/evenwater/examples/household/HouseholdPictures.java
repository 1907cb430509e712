package evenwater.examples.household;

import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.exchange.ServiceRun;
import evenwater.chemistry.exchange.SofteningCycle;
import evenwater.chemistry.planning.SoftenerSchedule;
import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import evenwater.pictures.BalancePicture;
import evenwater.pictures.BreakthroughPicture;
import evenwater.pictures.CapacityPicture;
import evenwater.pictures.CarbonatePicture;
import evenwater.pictures.Picture;
import evenwater.pictures.SaturationPicture;
import evenwater.pictures.SodiumPicture;
import java.util.Optional;
import java.util.function.Supplier;
import javax.measure.quantity.Temperature;

/** The pictures of a household; empty where the library has no answer, which the text beside says in words. */
final class HouseholdPictures {

    private static final WaterQuantity<Temperature> COLD = WaterUnits.temperature(5, WaterUnits.CELSIUS);
    private static final WaterQuantity<Temperature> WARM = WaterUnits.temperature(50, WaterUnits.CELSIUS);

    /** How far beyond the planned end a run is shown: far enough to see hardness come. */
    private static final double BEYOND = 1.5;

    private HouseholdPictures() {}

    /** A picture whose water may have no answer. */
    static Optional<Picture> possibly(Supplier<Picture> picture) {
        try {
            return Optional.of(picture.get());
        } catch (NoAnswerException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    static Optional<Picture> balance(Stages stages) {
        return possibly(() -> BalancePicture.of(stages.ledger()));
    }

    static Optional<Picture> carbonate(Water water) {
        return possibly(() -> CarbonatePicture.of(water));
    }

    /** Of all stages that have calcium and a known pH; a membrane leaves too little calcium to scale. */
    static Optional<Picture> saturation(Stages stages) {
        Optional<SaturationPicture> picture = Optional.empty();
        for (int stage = 0; stage <= stages.last(); stage++) {
            Optional<SaturationPicture> before = picture;
            String name = stage == 0 ? "source" : "behind stage " + stage;
            Water water = stages.water(stage);
            try {
                picture = Optional.of(before.map(others -> others.with(name, water))
                        .orElseGet(() -> SaturationPicture.of(name, water, COLD, WARM, WaterUnits.CELSIUS)));
            } catch (NoAnswerException | IllegalArgumentException e) {
                picture = before;
            }
        }
        return picture.map(some -> some);
    }

    static Optional<Picture> sodium(Softener softener, Water raw, Speech speech) {
        return softener.regenerant().equals(Ion.SODIUM)
                ? possibly(() -> SodiumPicture.of(softener, raw, speech.hardness()))
                : Optional.empty();
    }

    static Optional<Picture> capacity(SoftenerSchedule schedule, Optional<SofteningCycle> cycle) {
        return possibly(() -> {
            SaltDose dose = schedule.regeneration().sodiumChlorideDose();
            CapacityPicture picture = CapacityPicture.of(
                            schedule.plan().curve(),
                            SaltDose.POUND_PER_CUBIC_FOOT,
                            ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT)
                    .marking("planned by the table", dose, schedule.capacity());
            return cycle.map(bed -> picture.marking("by the bed", dose, bed.capacity()))
                    .orElse(picture);
        });
    }

    /** The planned run and what would follow it if the valve did not regenerate. */
    static Optional<Picture> breakthrough(
            SofteningCycle cycle, Water raw, double bedVolumesPerHour, Hardness endPoint) {
        return possibly(() -> {
            ResinBed bed = cycle.regeneration().bedAfter();
            ServiceRun run = bed.serviceFor(
                    raw, bed.flow(bedVolumesPerHour), cycle.service().volume().multiply(BEYOND));
            return BreakthroughPicture.of(run, WaterUnits.LITRE).endingAt(endPoint);
        });
    }
}
