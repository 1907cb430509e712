package evenwater.chemistry.analysis;

import java.util.Objects;

/**
 * A row of a report that does not go into the water.
 *
 * @param row the row as it was written
 * @param reason why it is not used, in a few words
 */
public record UnusedRow(ReportRow row, String reason) {

    /**
     * Checks that nothing is null.
     *
     * @param row see the record
     * @param reason see the record
     */
    public UnusedRow {
        Objects.requireNonNull(row, "row");
        Objects.requireNonNull(reason, "reason");
    }
}
