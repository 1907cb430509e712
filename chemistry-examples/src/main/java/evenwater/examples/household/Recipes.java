package evenwater.examples.household;

import evenwater.chemistry.analysis.CalciumToMagnesium;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeBuilder;
import evenwater.chemistry.recipe.RecipeDose;
import evenwater.chemistry.recipe.SourceShare;
import evenwater.chemistry.recipe.Target;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.water.Water;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** The recipe that makes of a water, with pure water and what is on the shelf, one for a kind of tank. */
final class Recipes {

    /** Between these amounts of calcium for one of magnesium most keepers stay (common practice, no source). */
    private static final CalciumToMagnesium LEAST_RATIO = CalciumToMagnesium.byAmount(2);

    private static final CalciumToMagnesium MOST_RATIO = CalciumToMagnesium.byAmount(5);

    /** How far from the ends of each range the recipe stays if it can (own rule). */
    private static final double GUARD = 0.1;

    private Recipes() {}

    /** The plainest that keeps the ranges: without pure water if it can, away from their ends if it can. */
    static Recipe recipe(Water water, Requirements kind, TankWish wish) {
        Recipe last = keeping(water, kind, wish, true, false);
        return Stream.<Supplier<Recipe>>of(
                        () -> keeping(water, kind.guarded(GUARD), wish, false, true),
                        () -> keeping(water, kind.guarded(GUARD), wish, true, true),
                        () -> keeping(water, kind, wish, true, true))
                .map(Supplier::get)
                .filter(Recipe::isMet)
                .findFirst()
                .orElse(last);
    }

    private static Recipe keeping(
            Water water, Requirements kind, TankWish wish, boolean withPureWater, boolean withRatio) {
        RecipeBuilder builder = Recipe.blending(wish.volume()).source("the water", water);
        if (withPureWater) {
            builder.source("pure water", pure(water));
        }
        if (withRatio) {
            builder.calciumToMagnesium(Target.atLeast(LEAST_RATIO)).calciumToMagnesium(Target.atMost(MOST_RATIO));
        }
        return builder.keeping(kind)
                .shelf(wish.shelf().toArray(Compound[]::new))
                .solve();
    }

    private static Water pure(Water water) {
        return Water.pure().with(water.temperature());
    }

    static double pureShare(Recipe recipe) {
        return recipe.shares().stream().skip(1).mapToDouble(SourceShare::share).sum();
    }

    /** A house and the recipe behind it, weighed as it says. */
    static Treatment behind(Train house, Recipe recipe) {
        return Treatment.of("recipe", water -> treated(house.treat(water), recipe, dose -> 1));
    }

    /** What blending and dosing make of another water. */
    static Water treated(Water water, Recipe recipe, ToDoubleFunction<RecipeDose> factor) {
        Water treated = water.mixedWith(pure(water), pureShare(recipe));
        for (RecipeDose dose : recipe.doses()) {
            treated = treated.plus(dose.dosing().change().times(factor.applyAsDouble(dose)));
        }
        return treated;
    }
}
