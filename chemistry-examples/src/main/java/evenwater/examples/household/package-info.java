/**
 * The main job: from a water report in anyone's units to the sodium in the tank.
 *
 * <p>{@link evenwater.examples.household.Main} runs it; {@link evenwater.examples.household.HouseholdReport} is what it prints.
 */
@NullMarked
package evenwater.examples.household;

import org.jspecify.annotations.NullMarked;
