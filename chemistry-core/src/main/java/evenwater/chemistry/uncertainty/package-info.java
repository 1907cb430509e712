/**
 * From uncertain readings to an uncertain result: any computation, propagated by Monte Carlo or by the law of propagation.
 *
 * <p>Start with {@link evenwater.chemistry.uncertainty.Uncertain}, what is known of an input, then
 * {@link evenwater.chemistry.uncertainty.MonteCarlo} for a result with its interval, and
 * {@link evenwater.chemistry.uncertainty.UncertaintyBudget} for which input it comes from.
 */
@NullMarked
package evenwater.chemistry.uncertainty;

import org.jspecify.annotations.NullMarked;
