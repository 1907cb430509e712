/**
 * Arithmetic on plain doubles, for callers who cannot carry typed quantities (firmware, a browser) and for the rooms above it.
 *
 * <p>Everything here is static and pure, allocates nothing and has its unit in its name. Functions trust the domain that their
 * Javadoc states. Start with {@link evenwater.chemistry.kernel.ExactUnits}, {@link evenwater.chemistry.kernel.AtomicWeights} and
 * {@link evenwater.chemistry.kernel.SofteningKernel}.
 */
@NullMarked
package evenwater.chemistry.kernel;

import org.jspecify.annotations.NullMarked;
