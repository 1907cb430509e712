package evenwater.examples.questions;

import static evenwater.chemistry.substance.Compound.CALCIUM_CHLORIDE_DIHYDRATE;
import static evenwater.chemistry.substance.Compound.CALCIUM_SULFATE_DIHYDRATE;
import static evenwater.chemistry.substance.Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE;
import static evenwater.chemistry.substance.Compound.POTASSIUM_BICARBONATE;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.Target;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Locale;

/** What must be dosed, and how many grams, teaspoons and millilitres of it? */
public final class RecipeForATank {

    private RecipeForATank() {}

    /**
     * Prints a recipe for pure water.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Recipe recipe = Recipe.builder(Water.pure(), WaterUnits.parseVolume("60 L"))
                .hardness(Target.exactly(Hardness.parse("6 °dH")))
                .alkalinity(Target.near(Alkalinity.parse("3 °dKH")))
                .calciumToMagnesium(Target.exactly(CalciumToMagnesium.byAmount(3)))
                .total(Ion.CHLORIDE, Target.atMost(AmountConcentration.of(20, Ion.CHLORIDE.milligramPerLitre())))
                .shelf(
                        CALCIUM_CHLORIDE_DIHYDRATE,
                        CALCIUM_SULFATE_DIHYDRATE,
                        MAGNESIUM_SULFATE_HEPTAHYDRATE,
                        POTASSIUM_BICARBONATE)
                .solve();

        recipe.doses().forEach(System.out::println);
        System.out.println(recipe.isMet() + ", " + recipe.conflicts());
        System.out.printf(
                Locale.ROOT,
                "pH %.1f at rest with air%n",
                recipe.openToAir().orElseThrow().pH().orElseThrow());
        // end
    }
}
