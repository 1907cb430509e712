/**
 * A tank over weeks: water changes, evaporation and what lives in it, and how to lead it to another water without haste.
 *
 * <p>Start with {@link evenwater.chemistry.aquarium.Tank}; {@link evenwater.chemistry.aquarium.ChangeOver} plans the way to another water.
 */
@NullMarked
package evenwater.chemistry.aquarium;

import org.jspecify.annotations.NullMarked;
