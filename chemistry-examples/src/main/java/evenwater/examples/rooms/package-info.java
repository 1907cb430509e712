/**
 * One runnable class for each room of the library, small enough to read at a glance; the pages of the guide are taken from them.
 *
 * <p>Start with {@link evenwater.examples.rooms.WaterRoom}.
 */
@NullMarked
package evenwater.examples.rooms;

import org.jspecify.annotations.NullMarked;
