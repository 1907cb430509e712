/**
 * One runnable class for each picture: prints it as SVG; docs/pictures.md shows them.
 *
 * <p>Start with {@link evenwater.examples.pictures.IonsOfEachStage}.
 */
@NullMarked
package evenwater.examples.pictures;

import org.jspecify.annotations.NullMarked;
