/**
 * One runnable class for each question that a user asks; the snippets of README and guide are taken from them.
 *
 * <p>Start with {@link evenwater.examples.questions.SodiumOfASoftener}.
 */
@NullMarked
package evenwater.examples.questions;

import org.jspecify.annotations.NullMarked;
