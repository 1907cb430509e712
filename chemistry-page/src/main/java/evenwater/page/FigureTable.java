package evenwater.page;

import java.util.List;
import java.util.Objects;

/**
 * Figures under a heading.
 *
 * @param title what they have in common
 * @param figures in the order in which they are read
 */
public record FigureTable(String title, List<Figure> figures) {

    /**
     * Copies the list.
     *
     * @param title see the record
     * @param figures see the record
     */
    public FigureTable {
        Objects.requireNonNull(title, "title");
        figures = List.copyOf(figures);
    }
}
