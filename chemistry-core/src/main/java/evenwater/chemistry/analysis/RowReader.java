package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.CompensatedHardness;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.Unit;

/** Turns one row of text into a reading in the canonical unit of its kind. */
final class RowReader {

    private static final Set<String> NO_UNIT_OF_PH = Set.of(
            "", "-", "ph", "ph units", "ph unit", "units", "unit", "su", "s.u.", "std units", "standard units", "1");
    private static final Pattern WEIGHED = Pattern.compile("(?i)residue|evaporation|180");
    private static final Pattern AT_DEGREES =
            Pattern.compile("(?i) ?[(@]? ?(?:at|@|bei|à)? ?(?<degrees>20|25)(?:[.,]0)? ?(?:°|º|deg)? ?C?\\)?$");
    /** Conductivity at 25 °C over that at 20 °C of natural waters: ISO 7888:1985 (EN 27888), table of correction factors; from memory. */
    private static final double FROM_20_TO_25 = 1.116;

    /** Symbols of the units that weigh CaCO₃ without saying so in the row. */
    private static final Set<String> OF_CALCIUM_CARBONATE = Set.of("mg/L CaCO3", "gpg", "°fH", "°e");

    private final ReportOptions options;
    private final boolean pointsMayGroup;
    private final Consumer<String> notes;

    RowReader(ReportOptions options, boolean pointsMayGroup, Consumer<String> notes) {
        this.options = options;
        this.pointsMayGroup = pointsMayGroup;
        this.notes = notes;
    }

    /** Reads a row of a used analyte; empty, with the reason given to {@code unused}, if it holds nothing that goes on. */
    Optional<Entry> read(ReportRow row, AnalyteNames.Match match, Consumer<String> unused) {
        try {
            ReportNumber number = ReportNumber.read(row.value(), options.decimalSign(), pointsMayGroup);
            return switch (number.kind()) {
                case NOT_MEASURED -> without("no value", unused);
                case NOT_DETECTED -> without("not detected, with no limit stated: not counted as zero", unused);
                case MEASURED, BELOW_LIMIT, RANGE -> entry(row, match, number, unused);
            };
        } catch (UnusableReportException e) {
            throw e;
        } catch (UnreadableTextException e) {
            throw new UnusableReportException(row.line(), row.inOnePhrase() + ": " + e.problem());
        } catch (IllegalArgumentException | ArithmeticException e) {
            throw new UnusableReportException(row.line(), row.inOnePhrase() + ": " + e.getMessage());
        }
    }

    private static Optional<Entry> without(String reason, Consumer<String> unused) {
        unused.accept(reason);
        return Optional.empty();
    }

    private Optional<Entry> entry(
            ReportRow row, AnalyteNames.Match match, ReportNumber number, Consumer<String> unused) {
        Analyte analyte = match.analyte();
        StatedUnit stated = StatedUnit.of(row, match);
        double high = canonical(row, analyte, stated, number.value());
        boolean below = number.kind() == ReportNumber.Kind.BELOW_LIMIT;
        RowLimits.check(analyte.kind(), row, high, below);
        if (below && RowLimits.isOnlyCompared(analyte.kind())) {
            return without("below the limit of the test: no reading to compare with", unused);
        }
        double low = number.low() == number.value() ? high : canonical(row, analyte, stated, number.low());
        if (!below) {
            RowLimits.check(analyte.kind(), row, low, false);
        }
        Optional<RowUncertainty> uncertainty =
                RowUncertainty.read(row.uncertainty(), analyte.kind(), options.decimalSign(), pointsMayGroup);
        if (uncertainty.isPresent() && low != high) {
            throw new UnusableReportException(
                    row.line(),
                    row.inOnePhrase() + ": an interval has its uncertainty in itself, but the row states "
                            + row.uncertainty() + " as well");
        }
        boolean oneNumber = RowLimits.isOneNumber(analyte.kind());
        if (low != high && !below && oneNumber) {
            notes.accept(row.analyte() + " " + row.value() + " taken in the middle");
        }
        if (low != high && !below && oneNumber) {
            low = (low + high) / 2;
            high = low;
        }
        String words = row.value() + " " + stated.unit() + (stated.basis().isEmpty() ? "" : " as " + stated.basis());
        Entry entry = new Entry(new Entry.Key(analyte.kind(), analyte.ion()), low, high, words.strip(), row.line());
        if (uncertainty.isEmpty()) {
            return Optional.of(entry);
        }
        double steps = uncertainty.get().isShare()
                ? uncertainty.get().number() * Math.abs(number.value())
                : uncertainty.get().number();
        // a difference, since a temperature has a zero of its own
        return Optional.of(entry.with(canonical(row, analyte, stated, number.value() + steps) - high));
    }

    private double canonical(ReportRow row, Analyte analyte, StatedUnit stated, double value) {
        return switch (analyte.kind()) {
            case ION, BICARBONATE, CARBONATE, HYDROXIDE ->
                new IonRowReader(options, notes, analyte, value).millimolesPerLitre(stated);
            case HARDNESS, CALCIUM_HARDNESS, MAGNESIUM_HARDNESS, CARBONATE_HARDNESS -> {
                refuseAlkalinity(row, analyte, stated);
                yield settled(
                        row,
                        analyte,
                        stated,
                        Hardness::parseUnit,
                        u -> Hardness.of(value, u).in(Hardness.MILLIMOLE_PER_LITRE));
            }
            case COMPENSATED_HARDNESS ->
                settled(
                        row,
                        analyte,
                        stated,
                        CompensatedHardness::parseUnit,
                        u -> CompensatedHardness.of(value, u).in(CompensatedHardness.GRAIN_PER_US_GALLON));
            case ALKALINITY ->
                settled(
                        row,
                        analyte,
                        stated,
                        Alkalinity::parseUnit,
                        u -> Alkalinity.of(value, u).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE));
            case CONDUCTIVITY -> conductivity(row, analyte, value);
            case TEMPERATURE ->
                settled(
                        row,
                        analyte,
                        withoutBasis(row, stated),
                        u -> WaterUnits.parseTemperature("25 " + u).getUnit(),
                        u -> WaterUnits.temperature(value, u).in(WaterUnits.KELVIN));
            case DISSOLVED_SOLIDS ->
                settled(
                        row,
                        analyte,
                        solids(row, stated),
                        MassConcentration::parseUnit,
                        u -> MassConcentration.of(value, u).in(MassConcentration.MILLIGRAM_PER_LITRE));
            case PH -> withoutUnit(row, withoutBasis(row, stated), value);
            case AMBIGUOUS, UNUSED -> throw new IllegalStateException(analyte.name() + " is not used");
        };
    }

    private static double withoutUnit(ReportRow row, StatedUnit stated, double value) {
        if (!NO_UNIT_OF_PH.contains(stated.unit().toLowerCase(Locale.ROOT))) {
            throw new UnusableReportException(row.line(), "pH has no unit, but was " + row.value() + " " + row.unit());
        }
        return value;
    }

    private static StatedUnit withoutBasis(ReportRow row, StatedUnit stated) {
        if (!stated.basis().isEmpty()) {
            throw new UnusableReportException(
                    row.line(), row.analyte() + " has no basis, but the row says as " + stated.basis());
        }
        return stated;
    }

    /** A conductivity is compared at 25 °C; a row may say its temperature in its name, its unit or its last column. */
    private double conductivity(ReportRow row, Analyte analyte, double value) {
        String unit = (row.unit() + " " + StatedUnit.plain(row.as()))
                .replaceAll("\\s+", " ")
                .strip();
        Matcher ofUnit = AT_DEGREES.matcher(unit);
        Matcher ofName = AT_DEGREES.matcher(row.analyte());
        boolean inUnit = ofUnit.find();
        String degrees = inUnit ? ofUnit.group("degrees") : ofName.find() ? ofName.group("degrees") : "";
        if (degrees.isEmpty()) {
            notes.accept(row.analyte() + " without a temperature taken as at 25 °C");
        } else if (degrees.equals("20")) {
            notes.accept(row.analyte() + " taken to 25 °C by the factor " + FROM_20_TO_25 + " of ISO 7888");
        }
        double stated = settled(
                row,
                analyte,
                new StatedUnit(inUnit ? unit.substring(0, ofUnit.start()) : unit, ""),
                Conductivity::parseUnit,
                u -> Conductivity.of(value, u).in(Conductivity.MICROSIEMENS_PER_CENTIMETRE));
        return degrees.equals("20") ? FROM_20_TO_25 * stated : stated;
    }

    /** What a laboratory weighs, or what a meter makes of conductivity; parts per million are read as mg/L. The result says so. */
    private StatedUnit solids(ReportRow row, StatedUnit stated) {
        withoutBasis(row, stated);
        if (!WEIGHED.matcher(row.analyte()).find()) {
            notes.accept(row.analyte()
                    + " taken as weighed by a laboratory; what a meter shows is conductivity times a factor");
        }
        if (stated.unit().equalsIgnoreCase("ppm")) {
            notes.accept(row.analyte() + " in ppm read as mg/L");
            return new StatedUnit("mg/L", "");
        }
        return stated;
    }

    /** Reads a value whose unit includes its basis; an option of the caller settles what is blank or ambiguous. */
    private <Q extends Quantity<Q>> double settled(
            ReportRow row,
            Analyte analyte,
            StatedUnit stated,
            Function<String, Unit<Q>> units,
            ToDoubleFunction<Unit<Q>> read) {
        Unit<Q> unit;
        try {
            unit = withBasis(stated, units);
            if (stated.isOfSomeGallon()) {
                notes.accept(ofTrade(row.analyte(), stated.unit()));
            }
        } catch (UnreadableTextException e) {
            String basis = stated.basis().isEmpty() ? options.basisOf(analyte).orElse("") : stated.basis();
            String other = options.unitOf(analyte).isEmpty() && !basis.equals(stated.basis())
                    ? stated.unit()
                    : settled(options, analyte, e);
            unit = withBasis(new StatedUnit(other, basis), units);
            notes.accept(row.analyte() + " taken in " + unit + ", as asked");
        }
        return read.applyAsDouble(unit);
    }

    /** The unit that the caller settles on where a row has none, or one that may be two; never instead of an unknown one. */
    static String settled(ReportOptions options, Analyte analyte, UnreadableTextException refusal) {
        if (isUnknownUnit(refusal)) {
            throw refusal;
        }
        return options.unitOf(analyte).orElseThrow(() -> refusal);
    }

    /** "mg/L" and "CaCO3" make "mg/L CaCO3"; a unit that weighs CaCO₃ anyway, such as gpg, stays as it is. */
    private static <Q extends Quantity<Q>> Unit<Q> withBasis(StatedUnit stated, Function<String, Unit<Q>> units) {
        try {
            return units.apply(stated.together());
        } catch (UnreadableTextException e) {
            if (!StatedUnit.same(stated.basis(), "CaCO3")) {
                throw e;
            }
            Unit<Q> alone = units.apply(stated.unit()); // shows both readings of an ambiguous one
            if (!OF_CALCIUM_CARBONATE.contains(alone.getSymbol())) {
                throw e;
            }
            return alone;
        }
    }

    /** A laboratory's carbonate hardness in a unit of alkalinity alone is the KH of a kit. */
    private static void refuseAlkalinity(ReportRow row, Analyte analyte, StatedUnit stated) {
        if (analyte.kind() == Kind.CARBONATE_HARDNESS
                && Set.of("dkh", "°dkh").contains(stated.unit().toLowerCase(Locale.ROOT))) {
            throw new UnusableReportException(
                    row.line(),
                    row.inOnePhrase() + ": " + stated.unit()
                            + " is a unit of alkalinity: call it KH if it is that of a kit, or write °dH");
        }
    }

    private static boolean isUnknownUnit(UnreadableTextException refusal) {
        return refusal.problem().startsWith("unknown unit");
    }

    /** Refuses a unit of an option that no row of the analyte could have. */
    static void refuseUnknownUnit(Analyte analyte, String unit) {
        try {
            switch (analyte.kind()) {
                case ION, BICARBONATE, CARBONATE, HYDROXIDE -> IonRowReader.refuseUnknownUnit(unit);
                case HARDNESS, CALCIUM_HARDNESS, MAGNESIUM_HARDNESS, CARBONATE_HARDNESS -> Hardness.parseUnit(unit);
                case COMPENSATED_HARDNESS -> CompensatedHardness.parseUnit(unit);
                case ALKALINITY -> Alkalinity.parseUnit(unit);
                case CONDUCTIVITY -> Conductivity.parseUnit(unit);
                case TEMPERATURE -> WaterUnits.parseTemperature("25 " + unit);
                case DISSOLVED_SOLIDS -> MassConcentration.parseUnit(unit);
                case PH, AMBIGUOUS, UNUSED ->
                    throw new UnusableReportException(0, "no unit to settle for " + analyte.name());
            }
        } catch (UnreadableTextException e) {
            if (!isUnknownUnit(e)) {
                return; // an option may state the basis as well
            }
            throw new UnusableReportException(
                    0, "unit '" + unit + "' of " + analyte.name() + " in an option: " + e.problem());
        }
    }

    static String ofTrade(String analyte, String unit) {
        return analyte + " in " + unit + " read as grain per US gallon, as the softening trade does";
    }
}
