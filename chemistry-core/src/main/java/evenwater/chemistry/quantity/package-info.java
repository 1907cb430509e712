/**
 * What people speak: value classes for hardness, alkalinity, concentrations and the like, each with the units of its trade.
 *
 * <p>Start with {@link evenwater.chemistry.quantity.Hardness}; every other kind is built alike on
 * {@link evenwater.chemistry.quantity.WaterQuantity}. {@link evenwater.chemistry.quantity.WaterUnits} has the units of volume, mass,
 * temperature and time.
 */
@NullMarked
package evenwater.chemistry.quantity;

import org.jspecify.annotations.NullMarked;
