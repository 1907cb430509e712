/**
 * What a meter or a kit would show: a conductivity and its temperature, dissolved solids by a factor or by the scale of a reference
 * solution.
 *
 * <p>Start with {@link evenwater.chemistry.instrument.ConductivityReading} and
 * {@link evenwater.chemistry.instrument.DissolvedSolidsMeter}.
 */
@NullMarked
package evenwater.chemistry.instrument;

import org.jspecify.annotations.NullMarked;
