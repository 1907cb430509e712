/**
 * Worked solutions: the steps of a conversion, of softening, blending, dosing, equivalents and carbon dioxide, as data and as text.
 *
 * <p>Start with {@link evenwater.chemistry.worked.WorkedSolutions}. The numbers are those of the rooms that answer: a step whose arithmetic
 * does not lead to the number of the answer cannot be built.
 */
@NullMarked
package evenwater.chemistry.worked;

import org.jspecify.annotations.NullMarked;
