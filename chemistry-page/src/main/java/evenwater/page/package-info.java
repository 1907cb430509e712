/**
 * A page for teachers: what is asked, what the core answers, and the HTML around it.
 *
 * <p>Start with {@link evenwater.page.LivePage}. Nothing here knows a browser: questions and answers are texts and numbers, so that the
 * page is tested on the JVM and translated for the browser as it is.
 */
@NullMarked
package evenwater.page;

import org.jspecify.annotations.NullMarked;
