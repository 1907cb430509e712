/**
 * Whether a water suits a kind of tank, or what published values say to people who drink it: requirements as data, and a verdict for each
 * parameter that also knows what nobody measured.
 *
 * <p>Read first: {@link evenwater.chemistry.verdict.Requirements}, {@link evenwater.chemistry.verdict.Evidence},
 * {@link evenwater.chemistry.verdict.Verdict}.
 */
@NullMarked
package evenwater.chemistry.verdict;

import org.jspecify.annotations.NullMarked;
