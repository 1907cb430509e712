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
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Readings of a report that go into no water, such as chlorine and lead. */
final class OtherReadings {

    /** A number, possibly below a limit; a comma before three digits may group thousands, so it is not read. */
    private static final Pattern READING = Pattern.compile("(< ?)?([0-9]{1,9}(?:[.,][0-9]{1,9})?)");

    private static final Pattern MAY_GROUP = Pattern.compile("[0-9]{1,3},[0-9]{3}");

    /** In English, German and French; what the report calls chlorine or total chlorine is taken as all of it. */
    private static final Set<String> PARTS_OF_CHLORINE =
            Set.of("free", "frei", "libre", "combined", "chloramin", "dioxid", "dioxyd");

    private static final MassConcentration NONE = MassConcentration.of(0, MILLIGRAM_PER_LITRE);

    /** Anything: that it was tested for is all that can be read. */
    private static final Bounds<MassConcentration> UNREADABLE = new Bounds<>(NONE, NONE, NONE, false, true);

    private OtherReadings() {}

    /** By parameter; the highest where a report has several rows. */
    static Map<Parameter<MassConcentration>, Bounds<MassConcentration>> of(LabReport report) {
        Map<Parameter<MassConcentration>, Bounds<MassConcentration>> readings = new LinkedHashMap<>();
        for (UnusedRow unused : report.unusedRows()) {
            parameter(unused.row().analyte())
                    .filter(parameter -> parameter != Parameter.CHLORINE || !isPartOfChlorine(unused.row()))
                    .ifPresent(parameter -> readings.merge(parameter, reading(unused.row()), OtherReadings::higher));
        }
        for (UnusedRow unused : report.unusedRows()) {
            if (parameter(unused.row().analyte())
                            .filter(Parameter.CHLORINE::equals)
                            .isPresent()
                    && isPartOfChlorine(unused.row())) {
                readings.merge(Parameter.CHLORINE, atLeast(reading(unused.row())), OtherReadings::surer);
            }
        }
        return readings;
    }

    /** Free chlorine says nothing of chloramine, nor chloramine or chlorine dioxide of free chlorine. */
    private static boolean isPartOfChlorine(ReportRow row) {
        String name = row.analyte().toLowerCase(Locale.ROOT);
        return PARTS_OF_CHLORINE.stream().anyMatch(name::contains);
    }

    private static Bounds<MassConcentration> atLeast(Bounds<MassConcentration> part) {
        return new Bounds<>(part.low(), part.value(), part.high(), part.openBelow(), true);
    }

    /** The total, unless a part is more: then the report contradicts itself, and the part is not to be forgotten. */
    private static Bounds<MassConcentration> surer(Bounds<MassConcentration> before, Bounds<MassConcentration> part) {
        boolean isMore = before.openAbove()
                ? part.low().compareTo(before.low()) > 0
                : part.low().compareTo(before.high()) > 0;
        return isMore ? part : before;
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
