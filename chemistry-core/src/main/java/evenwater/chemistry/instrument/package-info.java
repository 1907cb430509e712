/**
 * What a meter or a kit would show: a conductivity and its temperature.
 *
 * <p>Start with {@link evenwater.chemistry.instrument.ConductivityReading}.
 */
@NullMarked
package evenwater.chemistry.instrument;

import org.jspecify.annotations.NullMarked;
