/** Problem sheets with worked answers, for teachers. */
@NullMarked
package evenwater.lessons;

import org.jspecify.annotations.NullMarked;
