/**
 * Planning a softener: how much resin, how much salt, how often, and what goes down the drain.
 *
 * <p>Start with {@link evenwater.chemistry.planning.SoftenerPlan}; {@link evenwater.chemistry.planning.ResinSizing} answers the question the other way round.
 */
@NullMarked
package evenwater.chemistry.planning;

import org.jspecify.annotations.NullMarked;
