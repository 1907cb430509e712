package evenwater.chemistry.recipe;

import static evenwater.chemistry.quantity.WaterUnits.GRAM;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.quantity.WaterUnits.MILLILITRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.control.StockSolution;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Recipes worked by hand. Molar masses in g/mol: CaCl₂·2H₂O 147.008, MgSO₄·7H₂O 246.466, NaHCO₃ 84.006, CaSO₄·2H₂O 172.164. */
class RecipeByHandTest {

    private static Map<String, Double> grams(Recipe recipe) {
        return recipe.doses().stream()
                .collect(Collectors.toMap(
                        dose -> dose.compound().name(), dose -> dose.mass().in(GRAM)));
    }

    private static Water dosed(Compound compound, double milligramsPerLitre, Water water) {
        return water.plus(Change.dissolving(
                compound, MassConcentration.of(milligramsPerLitre, MassConcentration.MILLIGRAM_PER_LITRE)));
    }

    /** 1 mmol/L in 60 L are 60 mmol, 60 · 0.147008 = 8.82048 g. */
    @Test
    void oneSaltForOneTarget() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.exactly(hardness(1)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE)
                .solve();
        assertEquals(8.82048, recipe.doses().get(0).mass().in(GRAM), 1e-13);
        assertEquals(1, recipe.doses().size());
        assertEquals(1, hardnessOf(recipe.water()), 1e-15);
        assertTrue(recipe.isMet());
        assertEquals(List.of(), recipe.conflicts());
        // a level teaspoon holds 4.1 g ± 20 %
        assertEquals(8.82048 / 4.1, recipe.doses().get(0).teaspoons().orElseThrow(), 1e-13);
        assertEquals(0.8, hardnessOf(recipe.leastByTeaspoons()), 1e-14);
        assertEquals(1.2, hardnessOf(recipe.mostByTeaspoons()), 1e-14);
        assertEquals(
                "8.82 g of calcium chloride dihydrate (2.15 level teaspoons ± 20 %); hardness exactly 1 mmol/L: met",
                recipe.toString());
    }

    /** 0.75 · 147.008 = 110.256, 0.25 · 246.466 = 61.6165 and 1 · 84.006 mg/L, times 100 L. */
    @Test
    void threeSaltsForHardnessRatioAndAlkalinity() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(100))
                .hardness(Target.exactly(hardness(1)))
                .calciumToMagnesium(Target.exactly(CalciumToMagnesium.byAmount(3)))
                .alkalinity(Target.exactly(alkalinity(1)))
                .shelf(
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE,
                        Compound.SODIUM_BICARBONATE)
                .solve();
        Map<String, Double> grams = grams(recipe);
        assertEquals(11.0256, grams.get("calcium chloride dihydrate"), 1e-12);
        assertEquals(6.16165, grams.get("magnesium sulfate heptahydrate"), 1e-12);
        assertEquals(8.4006, grams.get("sodium bicarbonate"), 1e-12);
        assertEquals(0.25, of(Ion.SULFATE, recipe.water()), 1e-15);
    }

    /** 1 mmol/L of calcium with Cl : SO₄ = 2 : 1 by amount: x of gypsum, 1 − x of chloride, 2 (1 − x) = 2 x, so half and half. */
    @Test
    void theRatioOfChlorideToSulfateSharesTheCalcium() {
        RecipeBuilder builder = Recipe.builder(Water.pure(), litres(10))
                .total(Ion.CALCIUM, Target.exactly(mmol(1)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.CALCIUM_SULFATE_DIHYDRATE)
                .ratio(Target.exactly(IonRatio.byAmount(Ion.CHLORIDE, Ion.SULFATE, 2)));
        Map<String, Double> grams = grams(builder.solve());
        assertEquals(0.5 * 147.008 / 100, grams.get("calcium chloride dihydrate"), 1e-13);
        assertEquals(0.5 * 172.164 / 100, grams.get("calcium sulfate dihydrate"), 1e-13); // S is 32.06, H 1.008
    }

    /** The trade's factors for 1 mg/L of alkalinity as CaCO₃: NaHCO₃ 84/50, Na₂CO₃ 53/50, Ca(OH)₂ 37/50 (textbooks, from memory). */
    @ParameterizedTest
    @CsvSource({
        "sodium bicarbonate, 1.68",
        "sodium carbonate anhydrous, 1.06",
        "calcium hydroxide, 0.74",
        "potassium bicarbonate, 2.00",
    })
    void alkalinityTakesTheFactorsOfTextbooks(String name, double milligrams) {
        Recipe recipe = Recipe.builder(Water.pure(), litres(1000))
                .alkalinity(Target.exactly(Alkalinity.of(1, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE)))
                .shelf(Compound.named(name))
                .solve();
        assertEquals(milligrams, grams(recipe).get(name), 0.005); // half of the last digit
    }

    /** US EPA, EPA-821-R-02-012 (2002), Table 7: NaHCO₃ 96, CaSO₄·2H₂O 60, MgSO₄ 60, KCl 4 mg/L. */
    @Test
    void moderatelyHardReconstitutedWaterGivesItsRecipeBack() {
        Water water = dosed(Compound.SODIUM_BICARBONATE, 96, Water.pure());
        water = dosed(Compound.CALCIUM_SULFATE_DIHYDRATE, 60, water);
        water = dosed(Compound.MAGNESIUM_SULFATE_ANHYDROUS, 60, water);
        water = dosed(Compound.POTASSIUM_CHLORIDE, 4, water);
        RecipeBuilder builder = Recipe.builder(Water.pure(), litres(1000))
                .alkalinity(Target.exactly(water.alkalinity()))
                .shelf(
                        Compound.SODIUM_CHLORIDE,
                        Compound.POTASSIUM_BICARBONATE,
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        Compound.POTASSIUM_CHLORIDE,
                        Compound.MAGNESIUM_SULFATE_ANHYDROUS,
                        Compound.CALCIUM_SULFATE_DIHYDRATE,
                        Compound.SODIUM_BICARBONATE);
        for (Ion ion : List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.POTASSIUM, Ion.CHLORIDE)) {
            builder.total(ion, Target.exactly(water.total(ion)));
        }
        // potassium chloride of potassium bicarbonate and sodium chloride is the same water: least sodium decides
        Map<String, Double> grams = grams(builder.total(Ion.SULFATE, Target.exactly(water.total(Ion.SULFATE)))
                .solve());
        assertEquals(4, grams.size(), grams.toString());
        assertEquals(96, grams.get("sodium bicarbonate"), 1e-10);
        assertEquals(60, grams.get("calcium sulfate dihydrate"), 1e-10);
        assertEquals(60, grams.get("magnesium sulfate anhydrous"), 1e-10);
        assertEquals(4, grams.get("potassium chloride"), 1e-10);
    }

    /** Near 2 mmol/L of hardness, but at most 2 mmol/L of chloride: 1 mmol/L of calcium, half of the wish. */
    @Test
    void aLimitOutranksAWish() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(1))
                .hardness(Target.near(hardness(2)))
                .total(Ion.CHLORIDE, Target.atMost(mmol(2)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE)
                .solve();
        assertEquals(0.147008, recipe.doses().get(0).mass().in(GRAM), 1e-11);
        assertTrue(recipe.isMet());
        Residual<?> wish = recipe.residuals().get(0);
        assertFalse(wish.isMet());
        assertEquals(-0.5, wish.relativeDeviation(), 1e-10);
        assertEquals(0.5, wish.relativeMiss(), 1e-10);
        assertEquals("hardness near 2 mmol/L: -50.0 %", wish.toString());
    }

    /** Each mmol/L of CaCl₂ brings 50 % of the wished hardness and 50 % of the wished chloride too much: the heavier wish is met in full. */
    @ParameterizedTest
    @CsvSource({"3, 1, 2, 4", "1, 3, 1, 2"})
    void ofTwoWishesTheHeavierIsMetInFull(double ofHardness, double ofChloride, double calcium, double chloride) {
        Water water = Recipe.builder(Water.pure(), litres(1))
                .hardness(Target.near(hardness(2), ofHardness))
                .total(Ion.CHLORIDE, Target.near(mmol(2), ofChloride))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE)
                .solve()
                .water();
        assertEquals(calcium, hardnessOf(water), 1e-10);
        assertEquals(chloride, of(Ion.CHLORIDE, water), 1e-10);
    }

    /** Soft tap of 4 mmol/L with pure water to 1 mmol/L: a quarter and three quarters; 15 and 45 of 60 L. */
    @Test
    void twoWatersAreBlendedByHand() {
        Water tap = Water.builder()
                .total(Ion.CALCIUM, mmol(4))
                .alkalinity(alkalinity(5))
                .build();
        Recipe recipe = Recipe.blending(litres(60))
                .source("membrane", Water.pure())
                .source("tap", tap)
                .hardness(Target.exactly(hardness(1)))
                .solve();
        assertEquals(0.75, recipe.shares().get(0).share(), 1e-14);
        assertEquals(15, recipe.shares().get(1).volume().in(LITRE), 1e-12);
        assertEquals(1.25, alkalinityOf(recipe.water()), 1e-14);
        assertEquals("45 L of membrane (75 %), 15 L of tap (25 %); hardness exactly 1 mmol/L: met", recipe.toString());
    }

    /**
     * Tap of 4 mmol/L calcium and 5 meq/L, pure water, and KHCO₃ (100.114 g/mol): 1 mmol/L of hardness is a quarter of tap with 1.25 meq/L,
     * and 2 meq/L take 0.75 mmol/L of KHCO₃, 75.0855 mg/L.
     */
    @Test
    void sharesAndSaltsAreFoundTogether() {
        Water tap = Water.builder()
                .total(Ion.CALCIUM, mmol(4))
                .alkalinity(alkalinity(5))
                .build();
        Recipe recipe = Recipe.blending(litres(100))
                .source("tap", tap)
                .source("membrane", Water.pure())
                .hardness(Target.exactly(hardness(1)))
                .alkalinity(Target.exactly(alkalinity(2)))
                .shelf(Compound.POTASSIUM_BICARBONATE)
                .solve();
        assertEquals(0.25, recipe.shares().get(0).share(), 1e-14);
        assertEquals(7.50855, grams(recipe).get("potassium bicarbonate"), 2e-3); // molar mass to 1e-5
        assertEquals(0.75, of(Ion.POTASSIUM, recipe.water()), 1e-13);
    }

    /** At most 2 mmol/L allows any share of tap to a half; present 0.3 stays, present 0.8 becomes 0.5, and without one the first is wanted most. */
    @Test
    void thePresentRoutineIsLeftNoFurtherThanNeeded() {
        Water tap = Water.builder().total(Ion.CALCIUM, mmol(4)).build();
        RecipeBuilder builder = Recipe.blending(litres(60))
                .source("tap", tap)
                .source("rain", Water.pure())
                .hardness(Target.atMost(hardness(2)));
        assertEquals(0.5, builder.solve().shares().get(0).share(), 1e-10);
        assertEquals(
                0.3, builder.presentShares(0.3, 0.7).solve().shares().get(0).share(), 1e-10);
        assertEquals(
                0.5, builder.presentShares(0.8, 0.2).solve().shares().get(0).share(), 1e-10);
        Recipe three = Recipe.blending(litres(60))
                .source("rain", Water.pure())
                .source("tap", tap)
                .source("membrane", Water.pure())
                .hardness(Target.exactly(hardness(2)))
                .solve();
        assertEquals(
                List.of(0.5, 0.5, 0.0),
                three.shares().stream()
                        .map(s -> Math.rint(s.share() * 1e9) / 1e9)
                        .toList());
    }

    @Test
    void nothingIsDosedWhereTheTargetsAreMetAlready() {
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .alkalinity(alkalinity(3))
                .build();
        Recipe recipe = Recipe.builder(water, litres(60))
                .hardness(Target.exactly(hardness(2)))
                .alkalinity(Target.atLeast(alkalinity(2)))
                .total(Ion.SODIUM, Target.atMost(mmol(1)))
                .shelf(Compound.all().toArray(Compound[]::new))
                .solve();
        assertEquals(List.of(), recipe.doses());
        assertEquals(water, recipe.water());
        assertTrue(recipe.isMet());
        assertTrue(recipe.toString().startsWith("nothing to dose; hardness exactly 2 mmol/L: met"), recipe.toString());
    }

    @Test
    void withoutTargetsOrWithoutAShelfNothingIsDosed() {
        Recipe aimless = Recipe.builder(Water.pure(), litres(60))
                .shelf(Compound.SODIUM_CHLORIDE)
                .solve();
        assertEquals(List.of(), aimless.doses());
        assertTrue(aimless.isMet());
        Recipe bare = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.near(hardness(1)))
                .solve();
        assertEquals(List.of(), bare.doses());
        assertEquals(-1, bare.residuals().get(0).relativeDeviation());
    }

    /** 100 g/L of CaCl₂·2H₂O: 8.82048 g are in 88.2048 mL. */
    @Test
    void aStockIsDosedInMillilitres() {
        StockSolution stock = StockSolution.of(
                Compound.CALCIUM_CHLORIDE_DIHYDRATE, MassConcentration.of(100, MassConcentration.GRAM_PER_LITRE));
        Recipe recipe = Recipe.builder(Water.pure(), litres(60))
                .hardness(Target.exactly(hardness(1)))
                .stock(stock)
                .stock(stock)
                .solve();
        RecipeDose dose = recipe.doses().get(0);
        assertEquals(88.2048, dose.stockVolume().orElseThrow().in(MILLILITRE), 1e-12);
        assertTrue(dose.teaspoons().isEmpty());
        assertEquals(recipe.water(), recipe.mostByTeaspoons());
        assertEquals(
                "8.82 g of calcium chloride dihydrate (88.2 mL of stock with 100 g/L of calcium chloride dihydrate)",
                dose.toString());
    }

    /** Of two ways to the same water the lighter one: 110.978 g/mol of anhydrous CaCl₂ for 147.008 g/mol of dihydrate. */
    @Test
    void amongEqualsTheLeastMassIsDosed() {
        Recipe recipe = Recipe.builder(Water.pure(), litres(1))
                .hardness(Target.exactly(hardness(1)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.CALCIUM_CHLORIDE_ANHYDROUS)
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE)
                .solve();
        assertEquals(Map.of("calcium chloride anhydrous", 0.110978), rounded(grams(recipe)));
    }

    private static Map<String, Double> rounded(Map<String, Double> grams) {
        return grams.entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, e -> Math.rint(e.getValue() * 1e9) / 1e9));
    }

    /** 1 meq/L too much alkalinity takes 1 mmol/L of HCl, 36.458 mg/L pure and 36.458 / 0.37 = 98.535 mg/L of 37 %. */
    @Test
    void anAcidLowersAlkalinity() {
        Water water = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .alkalinity(alkalinity(3))
                .build();
        Recipe recipe = Recipe.builder(water, litres(1000))
                .alkalinity(Target.exactly(alkalinity(2)))
                .shelf(Compound.HYDROCHLORIC_ACID.ofStrength(0.37), Compound.SODIUM_BICARBONATE)
                .solve();
        assertEquals(98.535, recipe.doses().get(0).mass().in(GRAM), 0.001);
        assertEquals(1, of(Ion.CHLORIDE, recipe.water()), 1e-13);
    }

    @Test
    void residualsSpeakTheUnitsOfTheirTargets() {
        Recipe recipe = Recipe.builder(Water.pure(), WaterUnits.volume(1, WaterUnits.US_GALLON))
                .hardness(Target.exactly(Hardness.parse("6 °dH")))
                .total(Ion.NITRATE, Target.atMost(Ion.NITRATE.parseConcentration("10 mg/L N")))
                .ratio(Target.near(IonRatio.byMass(Ion.CHLORIDE, Ion.SULFATE, 1)))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE, Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE)
                .solve();
        assertEquals("hardness", recipe.residuals().get(0).quantity());
        assertEquals(
                6, ((Hardness) recipe.residuals().get(0).reached().orElseThrow()).in(Hardness.GERMAN_DEGREE), 1e-13);
        assertEquals(
                "0 mg/L N", recipe.residuals().get(1).reached().orElseThrow().toString());
        assertTrue(recipe.residuals().get(1).target().value() instanceof AmountConcentration);
        IonRatio reached = (IonRatio) recipe.residuals().get(2).reached().orElseThrow();
        assertEquals(1, reached.ratio(), 1e-12);
        assertTrue(reached.byMass());
        Water pure = Recipe.builder(Water.pure(), litres(1))
                .ratio(Target.exactly(IonRatio.byMass(Ion.CHLORIDE, Ion.SULFATE, 1)))
                .solve()
                .water();
        assertEquals(Amounts.of(Ion.CHLORIDE, pure), 0);
    }
}
