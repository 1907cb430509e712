/**
 * What a water does by itself: which species it holds, its pH, what it dissolves or drops, what it gives to the air and takes from it.
 *
 * <p>Start with {@link evenwater.chemistry.equilibrium.Speciation}, then {@link evenwater.chemistry.equilibrium.GasExchange},
 * {@link evenwater.chemistry.equilibrium.MineralEquilibrium} and {@link evenwater.chemistry.equilibrium.CalciumCarbonateIndices}.
 */
@NullMarked
package evenwater.chemistry.equilibrium;

import org.jspecify.annotations.NullMarked;
