/** Constants and functions of the core as C99 for controllers. */
@NullMarked
package evenwater.firmware;

import org.jspecify.annotations.NullMarked;
