package evenwater.pictures;

import java.util.Objects;

/**
 * A picture that can be written as SVG 1.1.
 *
 * <p>It is 640 units wide, as high as it needs, and brings its own style: a light one, and a dark one where the reader's device asks for
 * dark. It refers to nothing outside of itself, runs no script, and is the same for the same water in every locale. Lines differ in
 * colour and in dashes, and carry their names. Immutable and thread-safe.
 */
public abstract sealed class Picture
        permits BalancePicture,
                BreakthroughPicture,
                CapacityPicture,
                CarbonatePicture,
                SaturationPicture,
                SodiumPicture,
                TankPicture {

    private static final String ID = "[A-Za-z][A-Za-z0-9-]{0,99}";

    Picture() {}

    /**
     * Returns what the picture shows, as its heading and for those who hear it.
     *
     * @return a few words
     */
    public abstract String title();

    /**
     * Returns what there is to see, with the numbers that matter, for those who hear it.
     *
     * @return sentences
     */
    public abstract String description();

    /**
     * Returns the picture as a file of its own.
     *
     * @return well-formed XML, to be written in UTF-8
     */
    public final String toSvg() {
        return toSvg("picture");
    }

    /**
     * Returns the picture for a page that may hold more of them.
     *
     * @param id by which the page tells its pictures apart: a letter, then up to 99 letters, digits and hyphens
     * @return an element {@code svg}, the same as of {@link #toSvg()} but for the ids
     * @throws IllegalArgumentException if the id is none
     */
    public final String toSvg(String id) {
        if (!Objects.requireNonNull(id, "id").matches(ID)) {
            throw new IllegalArgumentException(
                    "id of a picture must be a letter and then up to 99 letters, digits and hyphens, but was '" + id
                            + "'");
        }
        Sheet sheet = new Sheet(title());
        draw(sheet);
        return sheet.toSvg(id, title(), description());
    }

    abstract void draw(Sheet sheet);

    /** Returns the title and the description. */
    @Override
    public final String toString() {
        return title() + ": " + description();
    }
}
