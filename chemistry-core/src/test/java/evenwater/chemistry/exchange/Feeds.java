package evenwater.chemistry.exchange;

import static evenwater.chemistry.testing.Amounts.mmol;

import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Map;

/** Feeds, beds and cycles for tests. */
final class Feeds {

    /** What the trade calls soft: below 1 gpg. */
    static final Hardness END_POINT = Hardness.of(1, Hardness.GRAIN_PER_US_GALLON);

    private Feeds() {}

    /** Calcium to magnesium 2 : 1 by amount, sodium, and chloride; the rest of the anions is alkalinity. */
    static Water feed(double grainsPerGallon, double sodiumInMillimoles) {
        double hardness =
                Hardness.of(grainsPerGallon, Hardness.GRAIN_PER_US_GALLON).in(Hardness.MILLIMOLE_PER_LITRE);
        return Water.builder()
                .total(Ion.CALCIUM, mmol(hardness * 2 / 3))
                .total(Ion.MAGNESIUM, mmol(hardness / 3))
                .total(Ion.SODIUM, mmol(sodiumInMillimoles))
                .total(Ion.CHLORIDE, mmol(1))
                .build();
    }

    /** The feed of the calibration: 10 gpg, 4 mmol/L of sodium, together 371 mg/L as CaCO₃. */
    static Water usual() {
        return feed(10, 4);
    }

    static ResinBed cubicFoot() {
        return ResinBed.of(Resin.gel(), WaterUnits.volume(1, WaterUnits.CUBIC_FOOT));
    }

    static ResinBed cubicFoot(int cells) {
        return ResinBed.of(
                Resin.gel(),
                WaterUnits.volume(1, WaterUnits.CUBIC_FOOT),
                ResinLoading.of(Map.of(Ion.SODIUM, 1.0)),
                cells);
    }

    static SaltDose pounds(double perCubicFoot) {
        return SaltDose.of(perCubicFoot, SaltDose.POUND_PER_CUBIC_FOOT);
    }

    /** The cycle of the calibration: 16 bed volumes per hour, to 1 gpg. */
    static SofteningCycle cycle(Water feed, Regeneration regeneration) {
        ResinBed bed = cubicFoot();
        return SofteningCycle.steady(bed, feed, bed.flow(16), END_POINT, regeneration);
    }

    static FlowRate flow(double bedVolumesPerHour) {
        return cubicFoot().flow(bedVolumesPerHour);
    }
}
