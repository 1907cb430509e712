package evenwater.chemistry.aquarium;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChangeOverTest {

    private static final TankVolume VOLUME = TankVolume.measured(litres(100));

    private static final Water HARD = Water.builder()
            .total(Ion.CALCIUM, mmol(2))
            .total(Ion.MAGNESIUM, mmol(0.5))
            .total(Ion.SODIUM, mmol(1))
            .total(Ion.CHLORIDE, mmol(2))
            .alkalinity(alkalinity(3.5))
            .temperature(celsius(25))
            .build();

    private static final Water SOFT = Water.builder()
            .total(Ion.CALCIUM, mmol(0.4))
            .total(Ion.MAGNESIUM, mmol(0.1))
            .total(Ion.CHLORIDE, mmol(0.4))
            .alkalinity(alkalinity(0.6))
            .temperature(celsius(12))
            .build();

    /** No limit but that of hardness counts. */
    private static ChangeOverLimits hardnessAlone(double degrees) {
        return ChangeOverLimits.hardy()
                .withPH(14)
                .withConductivityShare(1000)
                .withAlkalinity(Alkalinity.of(100, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .withHardness(Hardness.of(degrees, Hardness.GERMAN_DEGREE));
    }

    /** From 2.5 to 0.5 mmol/L by 0.5 in a day: fractions 1/4, 1/3 and 1/2, then half again and again until 5 % are left. */
    @Test
    void eachChangeTakesTheLargestFractionThatKeepsToTheLimit() {
        double degrees = Hardness.of(0.5, Hardness.MILLIMOLE_PER_LITRE).in(Hardness.GERMAN_DEGREE);
        ChangeOverPlan plan =
                ChangeOver.of(VOLUME, HARD, SOFT).within(hardnessAlone(degrees)).plan();
        double[] fractions = {1.0 / 4, 1.0 / 3, 1.0 / 2, 1.0 / 2, 1.0 / 2, 1.0 / 2};
        double[] hardness = {2, 1.5, 1, 0.75, 0.625, 0.5625};
        assertEquals(fractions.length, plan.steps().size());
        for (int i = 0; i < fractions.length; i++) {
            ChangeOverStep step = plan.steps().get(i);
            assertEquals(i + 1, step.day());
            assertEquals(fractions[i], step.fraction(), 1e-8);
            assertEquals(100 * fractions[i], step.volume().in(WaterUnits.LITRE), 1e-6);
            assertEquals(hardness[i], hardnessOf(step.water()), 1e-8);
            assertTrue(step.isGentle());
        }
        assertEquals(0.03125, plan.remainingShare(), 1e-9); // 3/4 · 2/3 · 1/16
        assertEquals(celsius(25), plan.steps().get(5).water().temperature());
    }

    @Test
    void everyStepKeepsToAllLimitsAndUsesOneOfThemUp() {
        ChangeOverLimits limits = ChangeOverLimits.sensitive();
        ChangeOverPlan plan = ChangeOver.of(VOLUME, HARD, SOFT).until(0.02).plan();
        TankReading before = TankReading.of(HARD, GasExchange.OUTDOOR_AIR);
        assertTrue(plan.steps().size() > 8, () -> plan.toString());
        for (ChangeOverStep step : plan.steps()) {
            assertEquals(before, step.before());
            double used = limits.usedBy(step.before(), step.after());
            assertTrue(used <= 1, () -> used + " used on " + step);
            assertTrue(used > 1 - 1e-6 || step.fraction() == 0.5, () -> used + " used on " + step);
            before = step.after();
        }
        assertEquals(before, plan.reached());
        assertTrue(plan.remainingShare() <= 0.02);
        assertEquals(TankReading.of(SOFT.with(celsius(25)), GasExchange.OUTDOOR_AIR), plan.goal());
    }

    /** Half of hard water for soft at once: what is too fast is said with its figures. */
    @Test
    void aGivenChangeIsJudged() {
        ChangeOverStep half = ChangeOver.of(VOLUME, HARD, SOFT).step(0.5);
        assertFalse(half.isGentle());
        assertEquals(1.5, hardnessOf(half.water()), 1e-15);
        assertEquals(
                List.of("hardness", "alkalinity", "conductivity"),
                half.excesses().stream().map(words -> words.split(" ")[0]).toList());
        assertEquals(
                "hardness falls by 5.61 °dH, from 14.02 to 8.412: at most 1 in a day",
                half.excesses().get(0));
        assertTrue(ChangeOver.of(VOLUME, HARD, SOFT).step(0.01).isGentle());
    }

    @Test
    void thePlanGoesUpAsWellAsDown() {
        ChangeOverPlan plan = ChangeOver.of(VOLUME, SOFT, HARD)
                .within(ChangeOverLimits.hardy())
                .everyDays(2)
                .changingAtMost(0.3)
                .until(0.1)
                .aeratedWith(WaterUnits.pressure(800, WaterUnits.MICROATMOSPHERE))
                .plan();
        assertEquals(1, plan.steps().get(0).day());
        assertEquals(3, plan.steps().get(1).day());
        assertTrue(plan.steps().stream().allMatch(step -> step.fraction() <= 0.3 && step.isGentle()));
        assertTrue(plan.remainingShare() <= 0.1);
        String[] lines = plan.toString().split("\n");
        assertEquals(plan.steps().size() + 1, lines.length);
        assertTrue(lines[0].startsWith("day 1: "), lines[0]);
        assertTrue(lines[lines.length - 1].contains(" % of the way left to 14.0 °dH, 9.8 °dKH, "), plan::toString);
    }

    @Test
    void theSameWaterNeedsNoChange() {
        ChangeOverPlan plan = ChangeOver.of(VOLUME, HARD, HARD).plan();
        assertEquals(List.of(), plan.steps());
        assertEquals(0, plan.remainingShare());
        assertEquals(plan.goal(), plan.reached());
    }

    @Test
    void limitsThatForbidTheWayAreNamed() {
        ChangeOver rigid = ChangeOver.of(VOLUME, HARD, SOFT).within(hardnessAlone(0));
        Refused.withoutAnswer(
                "the limits allow no water change on day 1: by one of 1 % hardness falls by 0.112 °dH, from 14.02 to 13.91: at most 0 in a day",
                List.of(), rigid::plan);
        Refused.withoutAnswer(
                "the change-over would take more than 365 changes: 96.7 % of the way are left then",
                List.of(), ChangeOver.of(VOLUME, HARD, SOFT).within(hardnessAlone(0.001))::plan);
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        ChangeOver over = ChangeOver.of(VOLUME, HARD, SOFT);
        Refused.argument(
                "fraction of a water change must be above 0, at most 1, but was 0.0", () -> over.changingAtMost(0));
        Refused.argument("fraction of a water change must be above 0, at most 1, but was 1.5", () -> over.step(1.5));
        Refused.argument(
                "share of the way that may be left must be above 0 and below 1, but was 1.0", () -> over.until(1));
        Refused.argument("days between two changes must be from 1 to 60, but were 0", () -> over.everyDays(0));
        Refused.argument(
                "partial pressure of CO₂ must be above 0 atm, to 10 atm, but was 0 atm",
                () -> over.aeratedWith(WaterUnits.pressure(0, WaterUnits.ATMOSPHERE)));
        Refused.asNull("to", () -> ChangeOver.of(VOLUME, HARD, null));
        Refused.asNull("newLimits", () -> over.within(null));
        Refused.asNull("carbonDioxide", () -> TankReading.of(HARD, null));
    }
}
