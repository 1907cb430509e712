package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.carbonOf;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ReferenceSolutionTest {

    private static MassConcentration milligrams(double value) {
        return MassConcentration.of(value, MILLIGRAM_PER_LITRE);
    }

    @Test
    void aSolutionOfOneSaltHasItsIons() {
        Water water = ReferenceSolution.SODIUM_CHLORIDE.water(milligrams(584.4));
        assertEquals(10, of(Ion.SODIUM, water), 1e-12); // 58.44 g/mol
        assertEquals(10, of(Ion.CHLORIDE, water), 1e-12);
        Water potassium = ReferenceSolution.POTASSIUM_CHLORIDE.water(milligrams(745.48));
        assertEquals(10, of(Ion.POTASSIUM, potassium), 1e-12); // 74.548 g/mol
    }

    @Test
    void theMixtureIsMadeByMass() {
        Water water = ReferenceSolution.SULFATE_BICARBONATE_CHLORIDE.water(milligrams(1000));
        double sulfate = 400 / 142.036; // g/mol of Na₂SO₄
        double bicarbonate = 400 / 84.006; // g/mol of NaHCO₃
        double chloride = 200 / 58.44;
        assertEquals(sulfate, of(Ion.SULFATE, water), 1e-12);
        assertEquals(chloride, of(Ion.CHLORIDE, water), 1e-12);
        assertEquals(bicarbonate, alkalinityOf(water), 1e-12);
        assertEquals(bicarbonate, carbonOf(water), 1e-12);
        assertEquals(2 * sulfate + bicarbonate + chloride, of(Ion.SODIUM, water), 1e-12);
        assertEquals(
                Map.of(Compound.SODIUM_SULFATE, 0.4, Compound.SODIUM_BICARBONATE, 0.4, Compound.SODIUM_CHLORIDE, 0.2),
                ReferenceSolution.SULFATE_BICARBONATE_CHLORIDE.massShares());
    }

    @ParameterizedTest
    @EnumSource
    void sharesAddUpToAllThatIsDissolved(ReferenceSolution solution) {
        assertEquals(
                1,
                solution.massShares().values().stream()
                        .mapToDouble(Double::doubleValue)
                        .sum());
        assertEquals(250, solution.water(milligrams(250)).dissolvedSolids().in(MILLIGRAM_PER_LITRE), 1e-11);
        assertEquals(Water.pure(), solution.water(milligrams(0)));
    }

    @Test
    void wordsNameTheSalts() {
        assertEquals("sodium chloride", ReferenceSolution.SODIUM_CHLORIDE.toString());
        assertEquals("potassium chloride", ReferenceSolution.POTASSIUM_CHLORIDE.toString());
        assertEquals(
                "442 (40 % Na₂SO₄, 40 % NaHCO₃, 20 % NaCl)", ReferenceSolution.SULFATE_BICARBONATE_CHLORIDE.toString());
    }

    @Test
    void aConcentrationIsNotNegative() {
        Refused.argument(
                "concentration of the reference solution must not be negative, but was -1 mg/L",
                () -> ReferenceSolution.SODIUM_CHLORIDE.water(milligrams(-1)));
        Refused.asNull("concentration", () -> ReferenceSolution.SODIUM_CHLORIDE.water(null));
    }
}
