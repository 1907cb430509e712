package evenwater.chemistry.recipe;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.equilibrium.CalciumCarbonateIndices;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.recipe.RecipeFinding.Kind;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class RecipeFindingsTest {

    private static List<String> words(Recipe recipe, Kind kind) {
        return recipe.findings().stream()
                .filter(finding -> finding.kind() == kind)
                .map(RecipeFinding::toString)
                .toList();
    }

    @Test
    void limestoneDoesNotSimplyDissolve() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.exactly(hardness(1)))
                .shelf(Compound.CALCIUM_CARBONATE)
                .solve();
        assertEquals(
                List.of(
                        "0.1 g/L of calcium carbonate do not simply dissolve: pure water takes up 0.0066 g/kg of CaCO₃; how much more this "
                                + "water takes, if it holds CO₂ or acid, its saturation tells"),
                words(recipe, Kind.DOES_NOT_DISSOLVE));
        assertTrue(words(recipe, Kind.MAY_PRECIPITATE).get(0).startsWith("the water may drop calcite: index +"));
        assertEquals(List.of("calcium carbonate: dust"), words(recipe, Kind.CAUTION));
    }

    @Test
    void gypsumDissolvesSlowlyAndToItsLimit() {
        RecipeBuilder little = Recipe.builder(Water.pure(), litres(60)).shelf(Compound.CALCIUM_SULFATE_DIHYDRATE);
        assertEquals(
                List.of("calcium sulfate dihydrate dissolves slowly: pure water takes up 2.55 g/kg of CaSO₄·2H₂O"),
                words(little.hardness(Target.exactly(hardness(2))).solve(), Kind.DISSOLVES_SLOWLY));
        Recipe much = Recipe.builder(Water.pure(), litres(60))
                .shelf(Compound.CALCIUM_SULFATE_DIHYDRATE)
                .hardness(Target.exactly(hardness(20)))
                .solve();
        assertEquals(1, words(much, Kind.DOES_NOT_DISSOLVE).size());
        assertTrue(words(much, Kind.MAY_PRECIPITATE).get(0).startsWith("the water may drop gypsum: index +0.1"));
    }

    @Test
    void saturationIsToldWithItsAmountClosedAndOpen() {
        Water source = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .alkalinity(alkalinity(2))
                .measuredPH(7.8)
                .build();
        Recipe recipe = Recipe.builder(source, litres(60))
                .hardness(Target.exactly(hardness(3)))
                .alkalinity(Target.exactly(alkalinity(5)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.SODIUM_BICARBONATE)
                .solve();
        assertTrue(recipe.closed().pH().isPresent());
        assertTrue(recipe.openToAir().orElseThrow().pH().getAsDouble()
                > recipe.closed().pH().getAsDouble());
        double milligrams = CalciumCarbonateIndices.of(
                        recipe.closed().speciation().orElseThrow())
                .precipitationPotential()
                .in(MassConcentration.MILLIGRAM_PER_LITRE);
        String closed = String.format(
                Locale.ROOT,
                "the water may drop calcite: index %+.2f closed to the air (%.3g mg/L of CaCO₃ until equilibrium), index ",
                recipe.closed().calciteIndex().getAsDouble(),
                milligrams);
        String words = words(recipe, Kind.MAY_PRECIPITATE).get(0);
        assertTrue(words.startsWith(closed), words);
        assertTrue(words.contains(" in equilibrium with outdoor air ("), words);
        assertTrue(words.contains("a few tenths is usual in hard tanks"), words);
        assertEquals(
                List.of(
                        "calcium chloride dihydrate and sodium bicarbonate must not share a bottle of stock: carbonate drops out"),
                words(recipe, Kind.NOT_IN_ONE_BOTTLE));
        assertEquals(
                List.of(
                        "calcium chloride dihydrate: exothermic, hygroscopic: real content varies, eye irritant",
                        "sodium bicarbonate: none special, raises sodium"),
                words(recipe, Kind.CAUTION));
    }

    @Test
    void withoutCarbonThereIsNoPH() {
        Water source = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .alkalinity(alkalinity(2))
                .build();
        Recipe recipe = Recipe.builder(source, litres(60))
                .hardness(Target.exactly(hardness(1)))
                .solve();
        assertTrue(recipe.closed().pH().isEmpty());
        assertTrue(recipe.openToAir().orElseThrow().pH().isPresent());
        assertEquals(
                List.of(
                        "pH and saturation closed to the air are unknown: pH of this water is unknown: it states neither inorganic carbon nor a "
                                + "measured pH (a change or blend drops one)"),
                words(recipe, Kind.PH_UNKNOWN));
    }

    @Test
    void aSaltTooStrongForTheModelHasNoConditionInAir() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(1))
                .total(Ion.SODIUM, Target.exactly(mmol(3000)))
                .shelf(Compound.SODIUM_CHLORIDE)
                .solve();
        assertTrue(recipe.openToAir().isEmpty());
        assertEquals(1, words(recipe, Kind.PH_UNKNOWN).size());
    }

    @Test
    void bottlesAreKeptApart() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .total(Ion.CALCIUM, Target.exactly(mmol(1)))
                .total(Ion.MAGNESIUM, Target.exactly(mmol(0.5)))
                .total(Ion.DIHYDROGEN_PHOSPHATE, Target.exactly(mmol(0.01)))
                .total(Ion.FLUORIDE, Target.exactly(mmol(0.01)))
                .shelf(
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
                        Compound.POTASSIUM_DIHYDROGEN_PHOSPHATE,
                        Compound.SODIUM_FLUORIDE)
                .solve();
        assertEquals(
                List.of(
                        "calcium chloride dihydrate and magnesium sulfate heptahydrate must not share a bottle of stock: sulfate drops out as gypsum "
                                + "or its like",
                        "calcium chloride dihydrate and potassium dihydrogen phosphate must not share a bottle of stock: phosphate drops out",
                        "calcium chloride dihydrate and sodium fluoride must not share a bottle of stock: fluoride drops out",
                        "magnesium sulfate heptahydrate and potassium dihydrogen phosphate must not share a bottle of stock: phosphate drops out"),
                words(recipe, Kind.NOT_IN_ONE_BOTTLE));
        Recipe acid = Recipe.builder(Water.pure(), litres(60))
                .total(Ion.CHLORIDE, Target.exactly(mmol(1)))
                .total(Ion.SODIUM, Target.exactly(mmol(1)))
                .shelf(Compound.HYDROCHLORIC_ACID, Compound.SODIUM_BICARBONATE)
                .solve();
        assertEquals(
                List.of(
                        "hydrochloric acid and sodium bicarbonate must not share a bottle of stock: acid meets base and CO₂ foams out"),
                words(acid, Kind.NOT_IN_ONE_BOTTLE));
    }

    @Test
    void aStockNearSaturationIsDoubted() {
        StockSolution stock =
                StockSolution.of(Compound.SODIUM_CHLORIDE, MassConcentration.of(300, MassConcentration.GRAM_PER_LITRE));
        Recipe recipe = Recipe.builder(Water.pure(), litres(1))
                .total(Ion.SODIUM, Target.exactly(mmol(1)))
                .stock(stock)
                .solve();
        assertEquals(
                List.of("stock with 300 g/L of sodium chloride is near saturation and may not dissolve at 20 °C"),
                words(recipe, Kind.STOCK_MAY_NOT_DISSOLVE));
    }
}
