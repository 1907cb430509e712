/**
 * A tank over weeks.
 *
 * <p>Start with {@link evenwater.chemistry.aquarium.TankVolume}.
 */
@NullMarked
package evenwater.chemistry.aquarium;

import org.jspecify.annotations.NullMarked;
