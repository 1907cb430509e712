package evenwater.chemistry.validation;

import java.util.List;

/**
 * A table of the page.
 *
 * @param title heading
 * @param introduction a sentence or two about the table
 * @param checks the rows
 */
record Topic(String title, String introduction, List<PublishedCheck> checks) {

    /** Copies the list. */
    Topic {
        checks = List.copyOf(checks);
    }
}
