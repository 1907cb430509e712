package evenwater.chemistry.aquarium;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ChangeOverPropertiesTest {

    private static final TankVolume VOLUME = TankVolume.estimatedFrom(litres(240));

    /** From peat water of pH 4.5 to hard and brackish. */
    @Provide
    Arbitrary<Water> waters() {
        return Combinators.combine(amount(0.02, 5), amount(0.01, 2), amount(0.05, 30), amount(-0.03, 8))
                .as((calcium, magnesium, sodium, alkalinity) -> Water.builder()
                        .total(Ion.CALCIUM, mmol(calcium))
                        .total(Ion.MAGNESIUM, mmol(magnesium))
                        .total(Ion.SODIUM, mmol(sodium))
                        .total(Ion.CHLORIDE, mmol(sodium))
                        .alkalinity(alkalinity(alkalinity))
                        .temperature(celsius(25))
                        .build())
                .withoutEdgeCases();
    }

    private static Arbitrary<Double> amount(double from, double to) {
        return Arbitraries.doubles().between(from, to).ofScale(6);
    }

    @Property(tries = 40)
    void thePlanGetsThereAndEachStepKeepsToTheLimits(@ForAll("waters") Water from, @ForAll("waters") Water to) {
        ChangeOverLimits limits = ChangeOverLimits.hardy();
        ChangeOverPlan plan = ChangeOver.of(VOLUME, from, to).within(limits).plan();
        double left = 1;
        for (ChangeOverStep step : plan.steps()) {
            assertTrue(limits.usedBy(step.before(), step.after()) <= 1, step::toString);
            assertTrue(step.isGentle() && step.fraction() <= 0.5, step::toString);
            assertEquals(200 * step.fraction(), step.volume().getValue(), 1e-9);
            left *= 1 - step.fraction();
        }
        assertEquals(left, plan.remainingShare(), 1e-12);
        assertTrue(left <= 0.05);
        assertTrue(plan.steps().size() < 200, plan::toString);
    }

    @Property(tries = 40)
    void aChangeIsJudgedByTheLimitsOfTheWaters(
            @ForAll("waters") Water from, @ForAll("waters") Water to, @ForAll("fractions") double fraction) {
        ChangeOverStep step = ChangeOver.of(VOLUME, from, to).step(fraction);
        assertEquals(ChangeOverLimits.sensitive().usedBy(step.before(), step.after()) <= 1, step.isGentle());
        assertEquals(from.mixedWith(to, fraction), step.water());
    }

    @Provide
    Arbitrary<Double> fractions() {
        return amount(0.001, 1);
    }
}
