package evenwater.chemistry.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.api.Test;

class UncertaintyBudgetTest {

    private static Hardness degrees(double value) {
        return Hardness.of(value, Hardness.GERMAN_DEGREE);
    }

    @Test
    void aStraightLineIsMetExactly() {
        Uncertain<Hardness> a = Uncertain.normal(degrees(8), degrees(0.3)).named("a");
        Uncertain<Hardness> b = Uncertain.between(degrees(3), degrees(5)).named("b");
        UncertaintyBudget<Hardness> budget = UncertaintyBudget.of(
                List.of(a, b), draw -> draw.of(a).multiply(2).subtract(draw.of(b)));
        assertEquals(degrees(12), budget.value());
        double u = Math.sqrt(0.6 * 0.6 + 1.0 / 3);
        assertEquals(u, budget.standardUncertainty().getValue(), 1e-11);
        assertEquals(2 * u, budget.expandedUncertainty().getValue(), 2e-11);
        Contribution<Hardness> first = budget.contributions().get(0);
        Contribution<Hardness> second = budget.contributions().get(1);
        assertEquals(List.of("a", "b"), List.of(first.input(), second.input()));
        assertEquals(2, first.sensitivity(), 1e-11);
        assertEquals(-1, second.sensitivity(), 1e-11);
        assertEquals(0.6, first.contribution().getValue(), 1e-11);
        assertEquals(1, first.share() + second.share(), 1e-15);
        assertEquals(0.36 / (u * u), first.share(), 1e-11);
        assertEquals("12.0 ± 1.7 °dH (k = 2)", budget.toString());
    }

    @Test
    void theSlopeOfACurveIsThatAtTheEstimate() {
        Uncertain<WaterQuantity<Dimensionless>> pH = Uncertain.normal(7, 0.1);
        UncertaintyBudget<WaterQuantity<Dimensionless>> budget =
                UncertaintyBudget.ofNumber(List.of(pH), draw -> Math.pow(10, -draw.valueOf(pH)));
        double slope = -Math.log(10) * 1e-7;
        // a cube of the step of 1e-4 over its width: (ln 10 · 1e-4)²/6 of the slope
        assertEquals(slope, budget.contributions().get(0).sensitivity(), 1e-8 * Math.abs(slope));
        assertEquals("(1.0 ± 0.5) × 10⁻⁷ (k = 2)", budget.toString());
    }

    @Test
    void exactInputsHaveNoShare() {
        Uncertain<Hardness> a = Uncertain.normal(degrees(8), degrees(0.3));
        Uncertain<Hardness> b = Uncertain.exact(degrees(4)).named("b");
        UncertaintyBudget<Hardness> budget =
                UncertaintyBudget.of(List.of(a, b), draw -> draw.of(a).add(draw.of(b)));
        assertEquals(
                new Contribution<>("b", 0, degrees(0), 0),
                budget.contributions().get(1));
        assertEquals(1, budget.contributions().get(0).share());
    }

    @Test
    void theEstimateIsTheExpectationWhereAFloorMovedIt() {
        Uncertain<Hardness> a = Uncertain.normal(degrees(0), degrees(1)).notNegative();
        UncertaintyBudget<Hardness> budget = UncertaintyBudget.of(List.of(a), draw -> draw.of(a));
        assertEquals(a.expectation(), budget.value());
        assertEquals(
                a.standardUncertainty().getValue(), budget.standardUncertainty().getValue(), 1e-12);
    }

    @Test
    void uncertaintiesOfATemperatureAreInKelvin() {
        Uncertain<WaterQuantity<Temperature>> t = Uncertain.normal(
                WaterUnits.temperature(50, WaterUnits.FAHRENHEIT), WaterUnits.temperature(0.5, WaterUnits.KELVIN));
        UncertaintyBudget<WaterQuantity<Temperature>> budget = UncertaintyBudget.of(List.of(t), draw -> draw.of(t));
        assertEquals(0.5, budget.standardUncertainty().in(WaterUnits.KELVIN), 1e-11);
        assertEquals("50.0 ± 1.8 °F (k = 2)", budget.toString());
    }

    @Test
    void aLinearModelOfNormalsIsValidatedInTwoDigits() {
        Uncertain<MassConcentration> a =
                Uncertain.normal(MassConcentration.parse("100 mg/L"), MassConcentration.parse("1 mg/L"));
        UncertaintyBudget<MassConcentration> law = UncertaintyBudget.of(List.of(a), draw -> draw.of(a));
        UncertainResult<MassConcentration> few = MonteCarlo.seeded(1).propagate(List.of(a), draw -> draw.of(a));
        UncertainResult<MassConcentration> many =
                MonteCarlo.seeded(1).draws(1_000_000).propagate(List.of(a), draw -> draw.of(a));
        assertTrue(law.validatedBy(many, 2).isValidated());
        assertTrue(law.validatedBy(many, 2).isConclusive());
        assertEquals("0.05 mg/L", law.validatedBy(few, 2).tolerance().toString());
        assertEquals(false, law.validatedBy(few, 2).isConclusive());
        String text = law.validatedBy(few, 2).toString();
        assertTrue(text.contains("alidated, as far as so few draws tell: ends differ by "), text);
        assertTrue(text.endsWith("tolerance 0.05 mg/L"), text);
        for (int digits : new int[] {0, 3, -1}) {
            Refused.argument(
                    "significant digits must be 1 or 2, but were " + digits, () -> law.validatedBy(few, digits));
        }
    }

    @Test
    void theToleranceIsHalfOfTheLastDigit() { // JCGM 101:2008 7.9.2: u = 0.00035 g, two digits: δ = 0.000005 g
        double[][] cases = {{0.00035, 2, 0.000005}, {0.00035, 1, 0.00005}, {2, 2, 0.05}, {0.996, 2, 0.05}, {10, 1, 5}};
        for (double[] one : cases) {
            Uncertain<WaterQuantity<Dimensionless>> x = Uncertain.normal(0, one[0]);
            UncertaintyBudget<WaterQuantity<Dimensionless>> law =
                    UncertaintyBudget.ofNumber(List.of(x), draw -> draw.valueOf(x));
            UncertainResult<WaterQuantity<Dimensionless>> run =
                    MonteCarlo.seeded(1).propagateNumber(List.of(x), draw -> draw.valueOf(x));
            double tolerance = law.validatedBy(run, (int) one[1]).tolerance().getValue();
            assertEquals(one[2], tolerance, 1e-15);
        }
    }

    @Test
    void coverageFactorsAreThoseOfTheNormal() { // JCGM 100:2008 table G.1
        assertEquals(1.959963984540054, StandardNormal.coverageFactor(0.95), 1e-14);
        assertEquals(1, StandardNormal.coverageFactor(0.6826894921370859), 1e-14);
        assertEquals(2.5758293035489004, StandardNormal.coverageFactor(0.99), 1e-13);
        assertEquals(3, StandardNormal.coverageFactor(0.9973002039367398), 1e-12);
        assertEquals(0.15865525393145707, StandardNormal.cumulative(-1), 1e-15);
    }
}
