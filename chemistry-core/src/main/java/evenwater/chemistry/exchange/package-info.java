/**
 * Ion exchange resins: what they prefer, what a bed of them lets through, what salt brings back.
 *
 * <p>Start with {@link evenwater.chemistry.exchange.Resin} for equilibrium, {@link evenwater.chemistry.exchange.ResinBed} for service and regeneration,
 * {@link evenwater.chemistry.exchange.SofteningCycle} for what a softener gives again and again, and
 * {@link evenwater.chemistry.exchange.CapacityCurve} for capacity against salt, by the model or by the table of the trade.
 */
@NullMarked
package evenwater.chemistry.exchange;

import org.jspecify.annotations.NullMarked;
