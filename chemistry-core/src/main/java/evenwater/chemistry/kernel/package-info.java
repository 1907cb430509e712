/**
 * Arithmetic on plain doubles, for callers who cannot carry typed quantities (firmware, a browser) and for the rooms above it.
 *
 * <p>Functions are static and pure, allocate nothing and have their unit in their name; the arrays of a solver are made once by the caller. Functions trust the domain that their
 * Javadoc states. Start with {@link evenwater.chemistry.kernel.ExactUnits}, {@link evenwater.chemistry.kernel.AtomicWeights},
 * {@link evenwater.chemistry.kernel.SofteningKernel} and {@link evenwater.chemistry.kernel.SpeciationKernel}.
 */
@NullMarked
package evenwater.chemistry.kernel;

import org.jspecify.annotations.NullMarked;
