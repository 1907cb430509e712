package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RecipeConductivityTest {

    private static final Water TAP = Water.builder()
            .total(Ion.CALCIUM, mmol(2.4))
            .total(Ion.MAGNESIUM, mmol(0.6))
            .total(Ion.SODIUM, mmol(1))
            .total(Ion.CHLORIDE, mmol(1.5))
            .total(Ion.SULFATE, mmol(0.5))
            .alkalinity(alkalinity(4.5))
            .measuredPH(7.6)
            .build();

    private static Conductivity conductivity(double microsiemens) {
        return Conductivity.of(microsiemens, MICROSIEMENS_PER_CENTIMETRE);
    }

    private static double conductivityOf(Water water) {
        return CalculatedConductivity.at25Celsius(water).in(MICROSIEMENS_PER_CENTIMETRE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 50, 300, 1413, 12880})
    void oneSaltReachesAConductivity(double microsiemens) {
        Recipe recipe = Recipe.builder(Water.pure(), litres(10))
                .conductivity(Target.exactly(conductivity(microsiemens)))
                .shelf(Compound.POTASSIUM_CHLORIDE)
                .solve();
        assertEquals(microsiemens, conductivityOf(recipe.water()), 1e-8 * microsiemens);
        assertTrue(recipe.isMet());
        // the dose that is found brings it back
        Water dosed = Dosing.of(
                        Compound.POTASSIUM_CHLORIDE, recipe.doses().get(0).mass(), litres(10))
                .treat(Water.pure());
        assertEquals(microsiemens, conductivityOf(dosed), 1e-8 * microsiemens);
    }

    @Test
    void aBlendReachesAConductivity() {
        Recipe recipe = Recipe.blending(litres(100))
                .source("tap", TAP)
                .source("membrane", Water.pure())
                .conductivity(Target.exactly(conductivity(250)))
                .solve();
        assertEquals(250, conductivityOf(recipe.water()), 250e-8);
        assertEquals(1, recipe.shares().get(0).share() + recipe.shares().get(1).share(), 1e-12);
    }

    @Test
    void aConductivityIsMetTogetherWithLinearTargets() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(100))
                .hardness(Target.exactly(hardness(1)))
                .alkalinity(Target.exactly(alkalinity(1)))
                .conductivity(Target.exactly(conductivity(400)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.SODIUM_BICARBONATE, Compound.SODIUM_CHLORIDE)
                .solve();
        assertTrue(recipe.isMet(), recipe.toString());
        assertEquals(400, conductivityOf(recipe.water()), 400e-8);
        assertEquals(1, hardnessOf(recipe.water()), 1e-12);
        assertEquals(3, recipe.doses().size());
    }

    @Test
    void aLimitOfConductivityFightsHardness() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(100))
                .hardness(Target.exactly(hardness(2)))
                .conductivity(Target.atMost(conductivity(100)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE)
                .solve();
        assertEquals(
                "conductivity at 25 °C at most 100 µS/cm and hardness exactly 2 mmol/L cannot be met together: calcium chloride dihydrate and "
                        + "magnesium sulfate heptahydrate raise hardness; calcium chloride dihydrate and magnesium sulfate heptahydrate raise "
                        + "conductivity at 25 °C",
                recipe.conflicts().get(0).words());
    }

    /** At 1 mmol/L of calcium the nitrate conducts 248, the chloride 257 µS/cm; gypsum 230, though thin it conducts most. */
    @ParameterizedTest
    @MethodSource
    void aWishForLittleConductivityChoosesTheSalt(List<Compound> shelf, Compound least) {
        Recipe recipe = Recipe.builder(Water.pure(), litres(100))
                .hardness(Target.exactly(hardness(1)))
                .conductivity(Target.near(conductivity(0)))
                .shelf(shelf.toArray(Compound[]::new))
                .solve();
        assertEquals(1, recipe.doses().size(), recipe.toString());
        assertEquals(least, recipe.doses().get(0).compound());
    }

    static Stream<Arguments> aWishForLittleConductivityChoosesTheSalt() {
        return Stream.of(
                Arguments.of(
                        List.of(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.CALCIUM_NITRATE_TETRAHYDRATE),
                        Compound.CALCIUM_NITRATE_TETRAHYDRATE),
                Arguments.of(
                        List.of(
                                Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                                Compound.CALCIUM_NITRATE_TETRAHYDRATE,
                                Compound.CALCIUM_SULFATE_DIHYDRATE),
                        Compound.CALCIUM_SULFATE_DIHYDRATE));
    }

    /** Thin, the sulfate conducts 320, dolomite 362 µS/cm for each mmol/L; with 4 mmol/L the sulfate makes 699, dolomite 492 µS/cm. */
    @Test
    void aSearchThatStartsFromPureWaterWouldChooseTheWrongSalt() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(100))
                .hardness(Target.exactly(hardness(4)))
                .conductivity(Target.near(conductivity(0)))
                .shelf(Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE, Compound.DOLOMITE)
                .solve();
        assertEquals(0.0, of(Ion.SULFATE, recipe.water()), recipe.toString());
        assertTrue(conductivityOf(recipe.water()) < 500, recipe.toString());
    }

    /** Each of five salts alone is a valley of its own: all are tried. */
    @Test
    void ofFiveSaltsTheLeastIsFound() {
        Water water = Water.builder()
                .temperature(celsius(12.912714))
                .total(Ion.SODIUM, mmol(2.936256))
                .total(Ion.AMMONIUM, mmol(0.0037707))
                .total(Ion.STRONTIUM, mmol(0.00107168))
                .total(Ion.IRON_II, mmol(0.009288))
                .total(Ion.CHLORIDE, mmol(0.807204))
                .total(Ion.SULFATE, mmol(0.379113))
                .total(Ion.FLUORIDE, mmol(0.00558858))
                .total(Ion.SILICA, mmol(0.02803962))
                .alkalinity(alkalinity(1.38972748))
                .carbon(mmol(1.223132))
                .build();
        List<Compound> shelf = List.of(
                Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
                Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                Compound.CALCIUM_NITRATE_TETRAHYDRATE,
                Compound.MAGNESIUM_CHLORIDE_HEXAHYDRATE,
                Compound.CALCIUM_SULFATE_DIHYDRATE);
        Recipe all = Recipe.builder(water, litres(10))
                .hardness(Target.exactly(hardness(0.100022)))
                .conductivity(Target.near(conductivity(0)))
                .shelf(shelf.toArray(Compound[]::new))
                .solve();
        for (Compound salt : shelf) {
            Water alone = Recipe.builder(water, litres(10))
                    .hardness(Target.exactly(hardness(0.100022)))
                    .shelf(salt)
                    .solve()
                    .water();
            assertTrue(conductivityOf(all.water()) <= conductivityOf(alone) * (1 + 1e-6), salt + ", not " + all);
        }
    }

    /** A water at 77.7 °C whose calcium sulfate and calcium nitrate conduct nearly alike: the steps went to and fro within rounding. */
    @Test
    void aSearchOnNearlyLevelGroundEnds() {
        Water water = Water.builder()
                .temperature(celsius(77.689541))
                .total(Ion.MAGNESIUM, mmol(0.097466))
                .total(Ion.SODIUM, mmol(1.735132))
                .total(Ion.POTASSIUM, mmol(0.1242698))
                .total(Ion.STRONTIUM, mmol(0.00771462))
                .total(Ion.BARIUM, mmol(1.707868E-4))
                .total(Ion.NITRATE, mmol(0.0278952))
                .total(Ion.FLUORIDE, mmol(0.00934198))
                .total(Ion.DIHYDROGEN_PHOSPHATE, mmol(0.00171016))
                .total(Ion.BORIC_ACID, mmol(0.00655542))
                .alkalinity(alkalinity(0.2132661))
                .carbon(mmol(0.1080724))
                .build();
        Recipe recipe = Recipe.builder(water, litres(10))
                .hardness(Target.exactly(hardness(0.097466 + 0.105866)))
                .conductivity(Target.near(conductivity(0)))
                .shelf(Compound.CALCIUM_SULFATE_DIHYDRATE, Compound.CALCIUM_NITRATE_TETRAHYDRATE)
                .solve();
        assertTrue(recipe.residuals().get(0).isMet(), recipe.toString());
    }

    @Test
    void aMetLimitDosesNothing() {
        Recipe recipe = Recipe.builder(TAP, litres(100))
                .conductivity(Target.atLeast(conductivity(100)))
                .shelf(Compound.SODIUM_CHLORIDE)
                .solve();
        assertEquals(0, recipe.doses().size());
        assertTrue(recipe.isMet());
    }
}
