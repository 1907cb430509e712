package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.celsius;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of the criteria. */
class AquaticLifeCriteriaPropertiesTest {

    private static final double ROUNDING = 1 + 1e-14;

    @Provide
    Arbitrary<AmmoniaCriterion> ammonia() {
        return Arbitraries.of(AmmoniaCriterion.values());
    }

    @Provide
    Arbitrary<CopperCriterion> copper() {
        return Arbitraries.of(CopperCriterion.values());
    }

    @Property
    void ammoniaIsAllowedLessTheHigherThePHAndNotMoreTheWarmer(
            @ForAll("ammonia") AmmoniaCriterion criterion,
            @ForAll @DoubleRange(min = 6.5, max = 8.9) double pH,
            @ForAll @DoubleRange(min = 0, max = 29) double celsius,
            @ForAll @DoubleRange(min = 0.001, max = 0.1) @Scale(4) double more) {
        double limit = criterion.limit(pH, celsius(celsius)).getValue();
        assertTrue(limit > 0);
        assertTrue(criterion.limit(pH + more, celsius(celsius)).getValue() < limit);
        assertTrue(criterion.limit(pH, celsius(celsius + 10 * more)).getValue() <= limit * ROUNDING);
    }

    @Property
    void theSensitiveAreProtectedMore(
            @ForAll @DoubleRange(min = 6.5, max = 9) double pH,
            @ForAll @DoubleRange(min = 0, max = 30) double celsius) {
        assertTrue(at(AmmoniaCriterion.ACUTE_1999_SALMONIDS_PRESENT, pH, celsius)
                < at(AmmoniaCriterion.ACUTE_1999_SALMONIDS_ABSENT, pH, celsius));
        assertTrue(at(AmmoniaCriterion.CHRONIC_1999_EARLY_STAGES_PRESENT, pH, celsius)
                <= at(AmmoniaCriterion.CHRONIC_1999_EARLY_STAGES_ABSENT, pH, celsius) * ROUNDING);
        assertTrue(at(AmmoniaCriterion.ACUTE_2013_SALMONIDS_PRESENT, pH, celsius)
                <= at(AmmoniaCriterion.ACUTE_2013_SALMONIDS_ABSENT, pH, celsius) * ROUNDING);
        assertTrue(at(AmmoniaCriterion.CHRONIC_2013, pH, celsius)
                < at(AmmoniaCriterion.ACUTE_2013_SALMONIDS_PRESENT, pH, celsius));
        // 2013 replaced 1999 because mussels are more sensitive than fish
        assertTrue(at(AmmoniaCriterion.ACUTE_2013_SALMONIDS_PRESENT, pH, celsius)
                <= at(AmmoniaCriterion.ACUTE_1999_SALMONIDS_PRESENT, pH, celsius) * ROUNDING);
        assertTrue(at(AmmoniaCriterion.CHRONIC_2013, pH, celsius)
                < at(AmmoniaCriterion.CHRONIC_1999_EARLY_STAGES_PRESENT, pH, celsius));
    }

    private static double at(AmmoniaCriterion criterion, double pH, double celsius) {
        return criterion.limit(pH, celsius(celsius)).getValue();
    }

    @Property
    void copperIsAllowedMoreTheHarderTheWater(
            @ForAll("copper") CopperCriterion criterion,
            @ForAll @DoubleRange(min = 25, max = 399) double milligrams,
            @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
        double limit = criterion.limit(asCalciumCarbonate(milligrams)).getValue();
        assertTrue(limit > 0);
        assertTrue(criterion.limit(asCalciumCarbonate(milligrams + more)).getValue() > limit);
        assertTrue(CopperCriterion.CHRONIC_1995
                        .limit(asCalciumCarbonate(milligrams))
                        .getValue()
                < CopperCriterion.ACUTE_1995
                        .limit(asCalciumCarbonate(milligrams))
                        .getValue());
    }

    private static Hardness asCalciumCarbonate(double milligrams) {
        return Hardness.of(milligrams, Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
    }
}
