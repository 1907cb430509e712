package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.WaterUnits.KILOGRAM;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class SoftenerPlanPropertiesTest {

    private static SoftenerPlan plan(double hardness, double use, double resin) {
        Water source = Water.builder().total(Ion.CALCIUM, mmol(hardness)).build();
        return SoftenerPlan.of(source, HouseholdUse.ofDaily(litres(use)), litres(resin))
                .withReserve(0);
    }

    private static SaltDose grams(double dose) {
        return SaltDose.of(dose, SaltDose.GRAM_PER_LITRE);
    }

    @Property
    void harderWaterAndMoreUseShortenTheDaysInProportion(
            @ForAll @DoubleRange(min = 0.5, max = 10) double hardness,
            @ForAll @DoubleRange(min = 50, max = 3000) double use,
            @ForAll @DoubleRange(min = 65, max = 320) double dose) {
        double days = plan(hardness, use, 30).at(grams(dose)).days();
        assertEquals(days / 2, plan(2 * hardness, use, 30).at(grams(dose)).days(), 1e-9 * days);
        assertEquals(days / 2, plan(hardness, 2 * use, 30).at(grams(dose)).days(), 1e-9 * days);
        assertEquals(days * 2, plan(hardness, use, 60).at(grams(dose)).days(), 1e-9 * days);
    }

    @Property
    void theSaltOfAYearIsHardnessOverEfficiency(
            @ForAll @DoubleRange(min = 0.5, max = 10) double hardness,
            @ForAll @DoubleRange(min = 50, max = 3000) double use,
            @ForAll @DoubleRange(min = 65, max = 320) double dose) {
        SoftenerSchedule schedule = plan(hardness, use, 30).at(grams(dose));
        double equivalents = use * 365.25 * hardness * 2e-3;
        double salt = equivalents / schedule.efficiency().shareOfTheory() * 58.44 / 1000;
        assertEquals(salt, schedule.saltPerYear().in(KILOGRAM), 2e-5 * salt);
    }

    @Property
    void theLeastSaltLastsAndNothingTakesLess(
            @ForAll @DoubleRange(min = 0.5, max = 4) double hardness,
            @ForAll @DoubleRange(min = 1, max = 7) double days,
            @ForAll @DoubleRange(min = 0, max = 3) double reserve,
            @ForAll @DoubleRange(min = 65, max = 320) double other) {
        SoftenerPlan plan = plan(hardness, 250, 30).withReserve(reserve);
        SoftenerSchedule chosen = plan.leastSaltFor(days);
        assertTrue(chosen.days() >= days * (1 - 1e-9));
        SoftenerSchedule another;
        try {
            another = plan.at(grams(other));
        } catch (NoAnswerException reserveTakesAll) {
            return;
        }
        assertTrue(another.days() < days
                || another.saltPerYear().in(KILOGRAM) >= chosen.saltPerYear().in(KILOGRAM) * (1 - 1e-12));
    }
}
