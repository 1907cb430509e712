/**
 * Pictures of waters and what is done to them, as SVG.
 *
 * <p>Each picture is made of objects of the library and shows their numbers; start with {@link evenwater.pictures.BalancePicture} or
 * {@link evenwater.pictures.SodiumPicture}, and see {@link evenwater.pictures.Picture} for what all of them promise.
 */
@NullMarked
package evenwater.pictures;

import org.jspecify.annotations.NullMarked;
