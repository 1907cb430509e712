/**
 * What is in it: a water as a balance sheet of ions, alkalinity, inorganic carbon and temperature, and the electroneutral changes
 * that a treatment makes to it.
 *
 * <p>Start with {@link evenwater.chemistry.water.Water} and {@link evenwater.chemistry.water.Change}.
 */
@NullMarked
package evenwater.chemistry.water;

import org.jspecify.annotations.NullMarked;
