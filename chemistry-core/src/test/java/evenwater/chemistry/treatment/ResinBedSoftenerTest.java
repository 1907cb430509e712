package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.exchange.Regeneration;
import evenwater.chemistry.exchange.Resin;
import evenwater.chemistry.exchange.ResinBed;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class ResinBedSoftenerTest {

    private static final Hardness END_POINT = Hardness.of(1, Hardness.GRAIN_PER_US_GALLON);
    private static final Water RAW = Water.builder()
            .total(Ion.CALCIUM, mmol(2))
            .total(Ion.MAGNESIUM, mmol(0.8))
            .total(Ion.SODIUM, mmol(0.6))
            .total(Ion.SULFATE, mmol(0.5))
            .build();

    private static ResinBedSoftener softener(ResinBed bed) {
        return ResinBedSoftener.of(bed, bed.flow(16), END_POINT, Regeneration.coFlow(SaltDose.parse("8 lb/ft3")));
    }

    /** With the leakage that the bed computes, the books of the other softener say the same sodium. */
    @Test
    void theBookkeepingAgreesAboutTheSodium() {
        ResinBed bed = ResinBed.of(Resin.gel(), litres(25));
        Water soft = softener(bed).treat(RAW);
        Water booked = Softener.withSodium().leaking(soft.hardness()).treat(RAW);
        assertEquals(booked.total(Ion.SODIUM).getValue(), soft.total(Ion.SODIUM).getValue(), 1e-12);
        assertEquals(RAW.alkalinity(), soft.alkalinity());
        assertTrue(hardnessOf(soft) < END_POINT.in(Hardness.MILLIMOLE_PER_LITRE));
    }

    @Test
    void aBypassGoesAroundIt() {
        ResinBed bed = ResinBed.of(Resin.gel(), litres(25));
        Water blend = Bypass.around(softener(bed), hardness(1)).treat(RAW);
        assertEquals(1, hardnessOf(blend), 1e-12);
    }

    @Test
    void itTakesItsPlaceInATrain() {
        ResinBed bed = ResinBed.of(Resin.gel(), litres(25));
        Ledger ledger = Train.of(List.of(softener(bed))).run(RAW);
        assertEquals(
                "softener of 25 L of resin, 8 lb/ft³ of sodium chloride, co-flow, brine of 10 %",
                ledger.stages().get(0).name());
    }

    @Test
    void nonsenseIsRefused() {
        ResinBed bed = ResinBed.of(Resin.gel(), litres(25));
        Refused.argument(
                "flow and end point of a softener must be positive, but were 0 L/min and 1 gpg",
                () -> ResinBedSoftener.of(
                        bed,
                        FlowRate.of(0, FlowRate.LITRE_PER_MINUTE),
                        END_POINT,
                        Regeneration.coFlow(SaltDose.parse("8 lb/ft3"))));
    }
}
