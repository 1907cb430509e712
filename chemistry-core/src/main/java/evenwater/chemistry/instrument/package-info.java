/**
 * What a meter or a kit would show: the conductivity of a water and its temperature, dissolved solids by a factor or by the scale of a reference
 * solution, the drops of a test kit.
 *
 * <p>Start with {@link evenwater.chemistry.instrument.CalculatedConductivity},
 * {@link evenwater.chemistry.instrument.ConductivityReading}, {@link evenwater.chemistry.instrument.DissolvedSolidsMeter}
 * and {@link evenwater.chemistry.instrument.DropTest}.
 */
@NullMarked
package evenwater.chemistry.instrument;

import org.jspecify.annotations.NullMarked;
