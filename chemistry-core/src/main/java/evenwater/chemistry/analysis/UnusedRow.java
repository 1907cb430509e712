package evenwater.chemistry.analysis;

/**
 * A row of a report that does not go into the water.
 *
 * @param row the row as it was written
 * @param reason why it is not used, in a few words
 */
public record UnusedRow(ReportRow row, String reason) {}
