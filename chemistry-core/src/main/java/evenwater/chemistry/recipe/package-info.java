/**
 * Recipes: which doses and which shares of waters bring a water to its targets.
 *
 * <p>Start with {@link evenwater.chemistry.recipe.Recipe} and {@link evenwater.chemistry.recipe.Target}.
 */
@NullMarked
package evenwater.chemistry.recipe;

import org.jspecify.annotations.NullMarked;
