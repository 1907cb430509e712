/**
 * What a house does to water: softening, blending, diluting, reverse osmosis and dosing, one after the other, with the ledger of what
 * went in and out.
 *
 * <p>Start with {@link evenwater.chemistry.treatment.Softener} and {@link evenwater.chemistry.treatment.Train}.
 */
@NullMarked
package evenwater.chemistry.treatment;

import org.jspecify.annotations.NullMarked;
