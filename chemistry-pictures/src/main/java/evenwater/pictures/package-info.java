/** Pictures of waters and what is done to them, as SVG. */
@NullMarked
package evenwater.pictures;

import org.jspecify.annotations.NullMarked;
