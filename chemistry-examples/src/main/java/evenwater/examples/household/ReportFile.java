package evenwater.examples.household;

import evenwater.chemistry.analysis.DecimalSign;
import evenwater.chemistry.analysis.ReportRow;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A laboratory report as a file of comma-, semicolon- or tab-separated values.
 *
 * @param rows the rows below the header, as text
 * @param decimalSign what a comma in a number means by the look of the file
 * @param passedOver names of the columns that nothing was read from
 */
record ReportFile(List<ReportRow> rows, DecimalSign decimalSign, List<String> passedOver) {

    private static final List<String> NEEDED = List.of("analyte", "value", "unit");
    private static final String BASIS = "as";
    private static final String UNCERTAINTY = "uncertainty";
    private static final String LIMIT = "limit";

    /** What laboratories call the columns, in small letters. */
    private static final Map<String, List<String>> COLUMNS = Map.of(
            "analyte",
            List.of("analyte", "analytes", "parameter", "parameters", "paramètre", "substance"),
            "value",
            List.of("value", "values", "result", "results", "messwert", "wert", "ergebnis", "résultat", "valeur"),
            "unit",
            List.of("unit", "units", "einheit", "unité"),
            BASIS,
            List.of("as", "basis"),
            UNCERTAINTY,
            List.of(UNCERTAINTY, "standard uncertainty", "unsicherheit", "messunsicherheit", "incertitude"),
            LIMIT,
            List.of(
                    "detection limit",
                    "reporting limit",
                    "mdl",
                    "lod",
                    "loq",
                    "rl",
                    "bestimmungsgrenze",
                    "nachweisgrenze"));

    private static final Set<String> UNDETECTED = Set.of(
            "nd",
            "n.d.",
            "n.d",
            "not detected",
            "none detected",
            "bdl",
            "bql",
            "n.n.",
            "nn",
            "u",
            "below detection",
            "below detection limit",
            "<lod",
            "<loq",
            "<mdl",
            "<rl",
            "<dl",
            "< lod",
            "< loq",
            "< mdl",
            "< rl",
            "< dl");
    static final int LARGEST_BYTES = 10_000_000;
    private static final int MOST_ROWS = 10_000;

    /** Reads a file's bytes; the name is for messages. */
    static ReportFile of(String name, byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            throw new UsageException(name + ": larger than " + LARGEST_BYTES + " bytes, which is no laboratory report");
        }
        String text = decoded(bytes);
        if (text.isBlank()) {
            throw new UsageException(name + ": the file is empty; expected a header line analyte,value,unit,as");
        }
        char separator = separator(text);
        try {
            List<String> passedOver = new ArrayList<>();
            List<ReportRow> rows = rows(name, text, separator, passedOver);
            return new ReportFile(rows, separator == ',' ? DecimalSign.POINT : DecimalSign.UNSTATED, passedOver);
        } catch (CSVException | UncheckedIOException | IllegalStateException e) {
            throw new UsageException(name + ": a quoted field is not closed or is followed by text");
        } catch (IOException e) {
            throw new UsageException(name + ": cannot be read: " + e.getMessage());
        }
    }

    /** UTF-8 or UTF-16 by their marks, else UTF-8, else the code page of Western spreadsheets. */
    private static String decoded(byte[] bytes) {
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            return new String(bytes, StandardCharsets.UTF_16);
        }
        int mark = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        ByteBuffer body = ByteBuffer.wrap(bytes, mark, bytes.length - mark);
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(body).toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, mark, bytes.length - mark, Charset.forName("windows-1252"));
        }
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (bytes.length <= i || (bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /** The separator that the header line uses. */
    private static char separator(String text) {
        String header = text.lines()
                .filter(line -> !line.isBlank() && !line.stripLeading().startsWith("#"))
                .findFirst()
                .orElse("");
        if (header.indexOf(';') >= 0) {
            return ';';
        }
        return header.indexOf('\t') >= 0 ? '\t' : ',';
    }

    private static List<ReportRow> rows(String name, String text, char separator, List<String> passedOver)
            throws IOException {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(separator)
                .setIgnoreEmptyLines(true)
                .setIgnoreSurroundingSpaces(true)
                .setCommentMarker('#')
                .get();
        List<ReportRow> rows = new ArrayList<>();
        Map<String, Integer> columns = Map.of();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                int line = Math.toIntExact(parser.getCurrentLineNumber());
                if (columns.isEmpty()) {
                    columns = columns(name, line, record, passedOver);
                } else if (!isBlank(record)) {
                    rows.add(row(name, line, record, columns));
                }
                if (rows.size() > MOST_ROWS) {
                    throw new UsageException(name + ":" + line + ": more than " + MOST_ROWS + " rows");
                }
            }
        }
        return rows;
    }

    private static Map<String, Integer> columns(String name, int line, CSVRecord header, List<String> passedOver) {
        Map<String, Integer> columns = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            String written = header.get(i).strip();
            String column = column(written.toLowerCase(Locale.ROOT));
            if (columns.put(column, i) != null && !column.isEmpty()) {
                throw new UsageException(name + ":" + line + ": the header has the column " + column + " twice");
            }
            if (!written.isEmpty() && !COLUMNS.containsKey(column)) {
                passedOver.add(written);
            }
        }
        for (String needed : NEEDED) {
            if (!columns.containsKey(needed)) {
                throw new UsageException(name + ":" + line + ": the header has no column '" + needed + "' but "
                        + String.join(", ", header.toList()) + "; expected analyte,value,unit,as");
            }
        }
        columns.put("", header.size());
        return columns;
    }

    private static String column(String written) {
        return COLUMNS.entrySet().stream()
                .filter(e -> e.getValue().contains(written))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(written);
    }

    private static boolean isBlank(CSVRecord record) {
        return record.stream().allMatch(String::isBlank);
    }

    private static ReportRow row(String name, int line, CSVRecord record, Map<String, Integer> columns) {
        int width = columns.getOrDefault("", 0);
        for (int i = width; i < record.size(); i++) {
            if (!record.get(i).isBlank()) {
                throw new UsageException(
                        name + ":" + line + ": " + record.size() + " fields where the header has " + width
                                + "; a number with a decimal comma or grouped thousands must be quoted: "
                                + String.join("|", record.toList()));
            }
        }
        return new ReportRow(
                line,
                field(record, columns.get("analyte")),
                value(field(record, columns.get("value")), field(record, columns.get(LIMIT))),
                field(record, columns.get("unit")),
                field(record, columns.get(BASIS)),
                field(record, columns.get(UNCERTAINTY)));
    }

    /** "ND" beside a column with its limit says as much as "ND <2". */
    private static String value(String value, String limit) {
        boolean stated = limit.chars().anyMatch(Character::isDigit);
        return stated && UNDETECTED.contains(value.strip().toLowerCase(Locale.ROOT)) ? "ND <" + limit.strip() : value;
    }

    private static String field(CSVRecord record, @org.jspecify.annotations.Nullable Integer column) {
        return column == null || column >= record.size() ? "" : record.get(column);
    }
}
