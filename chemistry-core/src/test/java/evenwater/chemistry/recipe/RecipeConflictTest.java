package evenwater.chemistry.recipe;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class RecipeConflictTest {

    @Test
    void hardnessFightsALimitOfWhatComesWithIt() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.exactly(Hardness.parse("6 °dH")))
                .total(Ion.CHLORIDE, Target.atMost(Ion.CHLORIDE.parseConcentration("10 mg/L Cl⁻")))
                .alkalinity(Target.exactly(alkalinity(1)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.SODIUM_BICARBONATE)
                .solve();
        assertFalse(recipe.isMet());
        assertEquals(
                List.of(
                        "Cl⁻ at most 10 mg/L Cl⁻ and hardness exactly 6 °dH cannot be met together: calcium chloride dihydrate is the only "
                                + "thing on the shelf that raises hardness; calcium chloride dihydrate raises Cl⁻"),
                recipe.conflicts().stream().map(Conflict::words).toList());
        assertEquals(
                List.of("Cl⁻ at most 10 mg/L Cl⁻", "hardness exactly 6 °dH"),
                recipe.conflicts().get(0).targets());
        assertEquals(
                recipe.conflicts().get(0).words(), recipe.conflicts().get(0).toString());
        assertTrue(recipe.residuals().get(2).isMet()); // alkalinity has nothing to do with it
        // hardness short by all of itself costs 1; chloride over costs 75.9/10 − 1 = 6.6 for that hardness: so chloride
        // is kept
        assertTrue(recipe.residuals().get(1).isMet());
    }

    @Test
    void whatNothingLowersIsSaidSo() {
        Water salty = Water.builder()
                .total(Ion.SODIUM, mmol(5))
                .total(Ion.CHLORIDE, mmol(5))
                .build();
        Recipe recipe = Recipe.builder(salty, litres(60))
                .total(Ion.SODIUM, Target.atMost(mmol(1)))
                .total(Ion.POTASSIUM, Target.atLeast(mmol(1)))
                .shelf(Compound.SODIUM_BICARBONATE)
                .solve();
        assertEquals(
                List.of(
                        "K⁺ at least 1 mmol/L cannot be met: nothing on the shelf raises K⁺",
                        "Na⁺ at most 1 mmol/L cannot be met: nothing on the shelf lowers Na⁺"),
                recipe.conflicts().stream().map(Conflict::toString).toList());
        assertEquals(4, recipe.residuals().get(0).relativeMiss(), 1e-12);
        assertEquals(List.of(), recipe.doses());
    }

    @Test
    void twoStatementsOfOneThingFight() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.exactly(hardness(1)))
                .hardness(Target.exactly(hardness(2)))
                .hardness(Target.atLeast(hardness(0.5)))
                .shelf(Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE)
                .solve();
        assertEquals(1, recipe.conflicts().size());
        assertEquals(
                List.of("hardness exactly 1 mmol/L", "hardness exactly 2 mmol/L"),
                recipe.conflicts().get(0).targets());
        // 1 over 1 is missed by 100 % where 2 is met, 1 under 2 by 50 % where 1 is met
        assertEquals(1, hardnessOf(recipe.water()), 1e-9);
    }

    @Test
    void twoWatersThatAreBothTooHardFightALimit() {
        Recipe recipe = Recipe.blending(litres(60))
                .source("tap", Water.builder().total(Ion.CALCIUM, mmol(4)).build())
                .source("well", Water.builder().total(Ion.CALCIUM, mmol(3)).build())
                .hardness(Target.atMost(hardness(2)))
                .solve();
        assertEquals(
                "hardness at most 2 mmol/L cannot be met: nothing on the shelf lowers hardness",
                recipe.conflicts().get(0).words());
        assertEquals(1, recipe.shares().get(1).share(), 1e-9);
    }

    @Test
    void severalWaysAndARatioAreNamed() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.exactly(hardness(1)))
                .calciumToMagnesium(Target.exactly(CalciumToMagnesium.byAmount(3)))
                .total(Ion.SULFATE, Target.atMost(mmol(0.1)))
                .shelf(
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
                        Compound.CALCIUM_SULFATE_DIHYDRATE)
                .solve();
        assertEquals(
                List.of(
                        "SO₄²⁻ at most 0.1 mmol/L",
                        "hardness exactly 1 mmol/L",
                        "ratio of Ca²⁺ to Mg²⁺ exactly 3 : 1 by amount"),
                recipe.conflicts().get(0).targets());
        assertEquals(
                "SO₄²⁻ at most 0.1 mmol/L, hardness exactly 1 mmol/L and ratio of Ca²⁺ to Mg²⁺ exactly 3 : 1 by amount cannot be met "
                        + "together: calcium chloride dihydrate, calcium sulfate dihydrate and magnesium sulfate heptahydrate raise hardness; "
                        + "calcium sulfate dihydrate and magnesium sulfate heptahydrate raise SO₄²⁻; calcium chloride dihydrate and calcium "
                        + "sulfate dihydrate raise ratio of Ca²⁺ to Mg²⁺; magnesium sulfate heptahydrate lowers ratio of Ca²⁺ to Mg²⁺",
                recipe.conflicts().get(0).words());
    }
}
