package evenwater.chemistry.verdict;

import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.LabReport;
import evenwater.chemistry.analysis.ReportRow;
import evenwater.chemistry.analysis.UnusedRow;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Readings of a report that go into no water, such as chlorine and lead. */
final class OtherReadings {

    /** A number, possibly below a limit; a comma before three digits may group thousands, so it is not read. */
    private static final Pattern READING = Pattern.compile("(< ?)?([0-9]{1,9}(?:[.,][0-9]{1,9})?)");

    private static final Pattern MAY_GROUP = Pattern.compile("[0-9]{1,3},[0-9]{3}");

    private static final MassConcentration NONE = MassConcentration.of(0, MILLIGRAM_PER_LITRE);

    /** Anything: that it was tested for is all that can be read. */
    private static final Bounds<MassConcentration> UNREADABLE = new Bounds<>(NONE, NONE, NONE, false, true);

    private OtherReadings() {}

    /** By parameter; the highest where a report has several rows. */
    static Map<Parameter<MassConcentration>, Bounds<MassConcentration>> of(LabReport report) {
        Map<Parameter<MassConcentration>, Bounds<MassConcentration>> readings = new LinkedHashMap<>();
        for (UnusedRow unused : report.unusedRows()) {
            parameter(unused.row().analyte())
                    .ifPresent(parameter -> readings.merge(parameter, reading(unused.row()), OtherReadings::higher));
        }
        return readings;
    }

    private static Bounds<MassConcentration> higher(Bounds<MassConcentration> a, Bounds<MassConcentration> b) {
        return b.openAbove() || (!a.openAbove() && b.high().compareTo(a.high()) > 0) ? b : a;
    }

    private static Optional<Parameter<MassConcentration>> parameter(String analyte) {
        String name = analyte.toLowerCase(Locale.ROOT).strip();
        return VerdictTables.otherNames().entrySet().stream()
                .filter(entry -> entry.getKey().startsWith("=")
                        ? name.equals(entry.getKey().substring(1))
                        : name.startsWith(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private static Bounds<MassConcentration> reading(ReportRow row) {
        String value = row.value().strip();
        if (value.equalsIgnoreCase("nd") || value.equalsIgnoreCase("not detected")) {
            return new Bounds<>(NONE, NONE, NONE);
        }
        Matcher matcher = READING.matcher(value);
        if (!matcher.matches() || MAY_GROUP.matcher(value).find()) {
            return UNREADABLE;
        }
        try {
            String number = matcher.group(2).replace(',', '.');
            MassConcentration read = MassConcentration.parse(number + " " + unit(row.unit()));
            return matcher.group(1) == null ? new Bounds<>(read, read, read) : new Bounds<>(NONE, read.divide(2), read);
        } catch (UnreadableTextException e) {
            return UNREADABLE;
        }
    }

    /** Parts per million of water are taken as mg/L. */
    private static String unit(String unit) {
        return switch (unit.strip().toLowerCase(Locale.ROOT)) {
            case "ppm" -> "mg/L";
            case "ppb" -> "µg/L";
            default -> unit;
        };
    }
}
