package evenwater.examples.rooms;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.Target;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;

/** The room of recipes: what to do where targets fight. */
public final class RecipeRoom {

    private RecipeRoom() {}

    /**
     * Prints the conflict, and what was reached.
     *
     * @param args not used
     */
    public static void main(String[] args) {
        // snippet
        Recipe recipe = Recipe.builder(Water.pure(), WaterUnits.parseVolume("60 L"))
                .hardness(Target.exactly(Hardness.parse("6 °dH")))
                .total(Ion.CHLORIDE, Target.atMost(AmountConcentration.of(20, Ion.CHLORIDE.milligramPerLitre())))
                .shelf(Compound.CALCIUM_CHLORIDE_DIHYDRATE) // the only salt at hand
                .solve();

        System.out.println(recipe.isMet());
        recipe.conflicts().forEach(System.out::println);
        recipe.residuals().forEach(System.out::println);
        // end
    }
}
