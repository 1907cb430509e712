/**
 * From what people hold to a {@link evenwater.chemistry.water.Water}: laboratory reports and test kits in anyone's units, with every
 * assumption listed.
 *
 * <p>Start with {@link evenwater.chemistry.analysis.LabReport}, which reads rows of text or is built by hand, and
 * {@link evenwater.chemistry.analysis.Interpretation}, what becomes of it;
 * {@link evenwater.chemistry.analysis.KitReadings} bounds what a hobby kit leaves open.
 */
@NullMarked
package evenwater.chemistry.analysis;

import org.jspecify.annotations.NullMarked;
