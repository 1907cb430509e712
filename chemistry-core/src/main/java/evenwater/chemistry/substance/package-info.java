/**
 * What there is: elements, formulas, the ions and neutral solutes of natural water, and the compounds that people dose.
 *
 * <p>Start with {@link evenwater.chemistry.substance.Ion} and {@link evenwater.chemistry.substance.Compound}. A concentration "as N"
 * or "as CaCO₃" is a unit that an ion makes: {@code NITRATE.milligramPerLitreAs(NITROGEN)}.
 */
@NullMarked
package evenwater.chemistry.substance;

import org.jspecify.annotations.NullMarked;
