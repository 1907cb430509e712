/**
 * Problem sheets with worked answers, for teachers.
 *
 * <p>Start with {@link evenwater.lessons.ProblemSheet}. Every answer is a worked solution of the library.
 */
@NullMarked
package evenwater.lessons;

import org.jspecify.annotations.NullMarked;
