/** The page for teachers as a program of a browser, and its assembly into one file. */
@NullMarked
package evenwater.page.browser;

import org.jspecify.annotations.NullMarked;
