package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.Alkalinity.DEGREE_OF_CARBONATE_HARDNESS;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class AlkalinityReductionTest {

    /** 8 °dKH under the air of a closed room. */
    private static final Water TANK = GasExchange.equilibrated(
            Water.builder()
                    .total(Ion.CALCIUM, mmol(1.6))
                    .alkalinity(Alkalinity.of(8, DEGREE_OF_CARBONATE_HARDNESS))
                    .build(),
            WaterUnits.pressure(800, WaterUnits.MICROATMOSPHERE));

    private static final AlkalinityReduction TO_THREE =
            AlkalinityReduction.to(Alkalinity.of(3, DEGREE_OF_CARBONATE_HARDNESS));

    @Test
    void everyStepStaysBelowTheLimitAndTheLastReachesTheTarget() {
        List<AcidStep> steps = TO_THREE.plan(TANK);
        assertEquals(3, steps.size());
        double limit = AmountConcentration.of(30, Ion.CARBON_DIOXIDE.milligramPerLitre())
                .in(MILLIMOLE_PER_LITRE);
        for (AcidStep step : steps) {
            assertTrue(step.atOnce().carbonDioxide().in(MILLIMOLE_PER_LITRE) <= limit * (1 + 1e-9));
            assertTrue(Speciation.of(step.aerated()).pH() > step.atOnce().pH());
        }
        Water last = TO_THREE.treat(TANK);
        assertEquals(3, last.alkalinity().in(DEGREE_OF_CARBONATE_HARDNESS), 1e-12);
        assertEquals(steps.get(2).aerated(), last);
    }

    @Test
    void theAcidOfAllStepsIsTheAlkalinityTaken() {
        double acid = TO_THREE.plan(TANK).stream()
                .mapToDouble(step -> step.hydrogen().in(MILLIMOLE_PER_LITRE))
                .sum();
        double taken = Alkalinity.of(5, DEGREE_OF_CARBONATE_HARDNESS).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        assertEquals(taken, acid, 1e-12);
        assertEquals(taken, TO_THREE.treat(TANK).total(Ion.CHLORIDE).in(MILLIMOLE_PER_LITRE), 1e-12);
        assertEquals(
                taken / 2,
                TO_THREE.withSulfuricAcid().treat(TANK).total(Ion.SULFATE).in(MILLIMOLE_PER_LITRE),
                1e-12);
    }

    @Test
    void aDoseThatWouldKillIsRefusedWithItsFigure() {
        NoAnswerException refusal = assertThrowsExactly(NoAnswerException.class, () -> TO_THREE.atOnce(TANK));
        assertEquals(
                "this acid in one dose would make 76.2 mg/L CO₂ at pH 6.1, above the limit of 30 mg/L CO₂: "
                        + "plan it in steps with aeration",
                refusal.getMessage());
        AmountConcentration made = (AmountConcentration) refusal.numbers().get(0);
        assertEquals(80, made.getValue(), 5);
    }

    @Test
    void aSmallDoseMayBeGivenAtOnce() {
        AlkalinityReduction small = AlkalinityReduction.to(Alkalinity.of(7, DEGREE_OF_CARBONATE_HARDNESS));
        assertEquals(1, small.plan(TANK).size());
        assertEquals(7, small.atOnce(TANK).alkalinity().in(DEGREE_OF_CARBONATE_HARDNESS), 1e-12);
    }

    @Test
    void nothingToTakeIsNoStep() {
        AlkalinityReduction none = AlkalinityReduction.to(Alkalinity.of(9, DEGREE_OF_CARBONATE_HARDNESS));
        assertEquals(List.of(), none.plan(TANK));
        assertEquals(TANK, none.treat(TANK));
    }

    @Test
    void refusals() {
        Refused.argument(
                "wanted alkalinity must not be negative, but was -1 °dKH",
                () -> AlkalinityReduction.to(Alkalinity.of(-1, DEGREE_OF_CARBONATE_HARDNESS)));
        Refused.argument(
                "limit of CO₂ must be positive, but was 0 mmol/L", () -> TO_THREE.keepingCarbonDioxideBelow(mmol(0)));
        Water full = GasExchange.injected(TANK, AmountConcentration.of(40, Ion.CARBON_DIOXIDE.milligramPerLitre()));
        Refused.withoutAnswer(
                "CO₂ stays above 30 mg/L CO₂ before any acid: the water holds 40 mg/L CO₂ at pH 6.81; "
                        + "aerate it first or raise the limit",
                List.of(),
                () -> TO_THREE.plan(full));
    }

    @Test
    void names() {
        assertEquals("hydrochloric acid in steps, to an alkalinity of 3 °dKH", TO_THREE.name());
        assertEquals(
                "sulfuric acid in steps, to an alkalinity of 3 °dKH",
                TO_THREE.withSulfuricAcid().toString());
    }
}
