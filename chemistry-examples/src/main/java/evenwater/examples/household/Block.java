package evenwater.examples.household;

import evenwater.pictures.Picture;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** A part of a page, before anybody knows how it will look. */
sealed interface Block {

    /** The title of the page. */
    record Title(String words) implements Block {}

    /** What a section is about. */
    record Heading(String words) implements Block {}

    /** Some sentences. */
    record Paragraph(String words) implements Block {}

    /** A line of a list. */
    record Item(String words) implements Block {}

    /** Room between lines of text. */
    record Gap() implements Block {}

    /** Rows of cells; the first is the head. */
    record Table(List<String[]> rows) implements Block {}

    /** A picture, drawn where pictures can be seen; empty where the water has no answer for it. */
    record Figure(String caption, Supplier<Optional<Picture>> picture) implements Block {}
}
