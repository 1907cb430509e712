package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.of;
import static evenwater.chemistry.testing.Amounts.unmeasuredOf;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Waters that are worked out in print. */
class WaterReferenceTest {

    private static Water milligrams(Map<Ion, Double> milligramsPerLitre, Alkalinity alkalinity) {
        WaterBuilder builder = Water.builder().alkalinity(alkalinity);
        milligramsPerLitre.forEach(
                (ion, mg) -> builder.total(ion, AmountConcentration.of(mg, ion.milligramPerLitre())));
        return builder.build();
    }

    /** Standard Methods 2340 B: 2.497 Ca + 4.118 Mg; the two concentrations are ours. */
    @Test
    void hardnessByCalculation() {
        Water water = milligrams(Map.of(Ion.CALCIUM, 80.0, Ion.MAGNESIUM, 20.0), alkalinity(0));
        Hardness hardness = water.hardness();
        assertAll(
                () -> assertEquals(
                        2.497 * 80 + 4.118 * 20,
                        hardness.in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE),
                        0.0005 * 80 + 0.0005 * 20), // the factors' last digit
                () -> assertEquals(15.81, hardness.in(Hardness.GERMAN_DEGREE), 0.005),
                () -> assertEquals(16.48, hardness.in(Hardness.GRAIN_PER_US_GALLON), 0.005),
                () -> assertEquals(2.8190, hardness.in(Hardness.MILLIMOLE_PER_LITRE), 0.00005));
    }

    /** Standard Methods 2510 A, the mixed water of the conductivity example (from memory). */
    @Test
    void ionBalanceAndIonicStrengthOfAMixedWater() {
        Water water = milligrams(
                Map.of(
                        Ion.CALCIUM, 55.0,
                        Ion.MAGNESIUM, 12.0,
                        Ion.SODIUM, 28.0,
                        Ion.POTASSIUM, 3.2,
                        Ion.SULFATE, 77.0,
                        Ion.CHLORIDE, 20.0),
                Alkalinity.of(170, Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE));
        IonBalance balance = water.ionBalance();
        assertAll(
                () -> assertEquals(
                        5.0319, balance.cations().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE), 5e-5),
                () -> assertEquals(
                        4.9536, balance.anions().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE), 5e-5),
                () -> assertEquals(0.784, balance.percentDifference(), 5e-4),
                () -> assertEquals(-0.0783, unmeasuredOf(water), 1e-4), // both sums rounded
                // 7.6604 by hand from these weights (0.00767 mol/L in print), and half of what nobody measured
                () -> assertEquals(
                        7.6604 + 0.0783 / 2, water.ionicStrength().in(AmountConcentration.MILLIMOLE_PER_LITRE), 1e-4),
                () -> assertEquals(
                        365.2,
                        water.dissolvedSolids().in(MassConcentration.MILLIGRAM_PER_LITRE),
                        1e-9)); // sum of inputs
    }

    /** EPA-821-R-02-012, Table 7, moderately hard water; figures worked from the recipe. */
    @Test
    void reconstitutedModeratelyHardWater() {
        Water water = Water.pure()
                .plus(dose(Compound.SODIUM_BICARBONATE, 96))
                .plus(dose(Compound.CALCIUM_SULFATE_DIHYDRATE, 60))
                .plus(dose(Compound.MAGNESIUM_SULFATE_ANHYDROUS, 60))
                .plus(dose(Compound.POTASSIUM_CHLORIDE, 4));
        assertAll(
                () -> assertEquals(84.77, water.hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE), 0.005),
                () -> assertEquals(
                        57.19, water.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE), 0.005),
                () -> assertEquals(69.73, water.alkalinity().in(Alkalinity.MILLIGRAM_PER_LITRE_BICARBONATE), 0.005),
                () -> assertEquals(13.97, milligrams(Ion.CALCIUM, water), 0.005),
                () -> assertEquals(12.12, milligrams(Ion.MAGNESIUM, water), 0.005),
                () -> assertEquals(26.27, milligrams(Ion.SODIUM, water), 0.005),
                () -> assertEquals(2.10, milligrams(Ion.POTASSIUM, water), 0.005),
                () -> assertEquals(81.36, milligrams(Ion.SULFATE, water), 0.005),
                () -> assertEquals(1.90, milligrams(Ion.CHLORIDE, water), 0.005),
                () -> assertEquals(
                        of(Ion.SODIUM, water), water.carbon().orElseThrow().getValue()));
    }

    /** ASTM D1141-98, Table 1, substitute ocean water (recipe from memory), in mol/L. */
    @Test
    void substituteOceanWater() {
        Water water = Water.pure()
                .plus(dose(Compound.SODIUM_CHLORIDE, 24530))
                .plus(dose(compound("MgCl2", Map.of(Ion.MAGNESIUM, 1, Ion.CHLORIDE, 2)), 5200))
                .plus(dose(Compound.SODIUM_SULFATE, 4090))
                .plus(dose(Compound.CALCIUM_CHLORIDE_ANHYDROUS, 1160))
                .plus(dose(Compound.POTASSIUM_CHLORIDE, 695))
                .plus(dose(Compound.SODIUM_BICARBONATE, 201))
                .plus(dose(Compound.POTASSIUM_BROMIDE, 101))
                .plus(dose(Compound.BORIC_ACID, 27))
                .plus(dose(compound("SrCl2", Map.of(Ion.STRONTIUM, 1, Ion.CHLORIDE, 2)), 25))
                .plus(dose(Compound.SODIUM_FLUORIDE, 3));
        assertAll( // six decimals printed
                () -> assertEquals(479.802, of(Ion.SODIUM, water), 5e-4),
                () -> assertEquals(54.619, of(Ion.MAGNESIUM, water), 5e-4),
                () -> assertEquals(10.453, of(Ion.CALCIUM, water), 5e-4),
                () -> assertEquals(10.172, of(Ion.POTASSIUM, water), 5e-4),
                () -> assertEquals(559.528, of(Ion.CHLORIDE, water), 5e-4),
                () -> assertEquals(28.796, of(Ion.SULFATE, water), 5e-4),
                () -> assertEquals(2.393, water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 5e-4),
                () -> assertEquals(
                        6513,
                        water.hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE),
                        0.5)); // calcium and magnesium, no digit behind the point
    }

    private static Compound compound(String formula, Map<Ion, Integer> ions) {
        return Compound.of(formula, Formula.parse(formula), ions);
    }

    private static Change dose(Compound compound, double milligramsPerLitre) {
        return Change.dissolving(
                compound, MassConcentration.of(milligramsPerLitre, MassConcentration.MILLIGRAM_PER_LITRE));
    }

    private static double milligrams(Ion ion, Water water) {
        return water.total(ion).in(ion.milligramPerLitre());
    }
}
