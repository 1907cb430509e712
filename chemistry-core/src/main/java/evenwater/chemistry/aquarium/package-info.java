/**
 * A tank over weeks: water changes, evaporation and what lives in it.
 *
 * <p>Start with {@link evenwater.chemistry.aquarium.Tank}.
 */
@NullMarked
package evenwater.chemistry.aquarium;

import org.jspecify.annotations.NullMarked;
