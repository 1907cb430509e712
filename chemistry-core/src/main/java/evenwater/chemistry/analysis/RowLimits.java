package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.quantity.Hardness;
import java.util.Optional;

/** What no water has: a figure beyond is a slip of the pen or of the unit. */
final class RowLimits {

    private static final double LARGEST_MOLE_PER_LITRE = 10;
    private static final int LARGEST_MILLISIEMENS_PER_CENTIMETRE = 1000;
    private static final int LARGEST_GRAM_PER_LITRE = 1000;
    private static final double LARGEST_GRAIN_PER_US_GALLON = Hardness.of(
                    1000 * LARGEST_MOLE_PER_LITRE, Hardness.MILLIMOLE_PER_LITRE)
            .in(Hardness.GRAIN_PER_US_GALLON);

    private static final String AMOUNTS = "at most " + LARGEST_MOLE_PER_LITRE + " mol/L";

    private RowLimits() {}

    /** Tells whether a reading goes into no water but is compared with it, so that an upper limit says nothing. */
    static boolean isOnlyCompared(Kind kind) {
        return kind == Kind.CONDUCTIVITY || kind == Kind.DISSOLVED_SOLIDS || kind == Kind.COMPENSATED_HARDNESS;
    }

    /** Tells whether a reading is one number and no interval in what follows: of a range the middle is taken. */
    static boolean isOneNumber(Kind kind) {
        return isOnlyCompared(kind) || kind == Kind.TEMPERATURE;
    }

    static boolean isLiquid(double kelvin) {
        return kelvin >= 273.15 - 1e-9 && kelvin <= 373.15 + 1e-9;
    }

    /** What is allowed of a value in the canonical unit of its kind, if it is beyond that. */
    static Optional<String> exceeded(Kind kind, double value) {
        return switch (kind) {
            case PH -> beyond(value, 14, "from 0 to 14");
            case TEMPERATURE -> isLiquid(value) ? Optional.empty() : Optional.of("from 0 °C to 100 °C");
            case CONDUCTIVITY ->
                beyond(
                        value,
                        LARGEST_MILLISIEMENS_PER_CENTIMETRE * 1000,
                        "at most " + LARGEST_MILLISIEMENS_PER_CENTIMETRE + " mS/cm");
            case DISSOLVED_SOLIDS ->
                beyond(value, LARGEST_GRAM_PER_LITRE * 1000, "at most " + LARGEST_GRAM_PER_LITRE + " g/L");
            case COMPENSATED_HARDNESS -> beyond(value, LARGEST_GRAIN_PER_US_GALLON, AMOUNTS);
            default -> beyond(value, 1000 * LARGEST_MOLE_PER_LITRE, AMOUNTS);
        };
    }

    private static Optional<String> beyond(double value, double largest, String allowed) {
        return Math.abs(value) <= largest ? Optional.empty() : Optional.of(allowed);
    }

    /** Returns an amount that a caller stated, in the canonical unit of its kind; refuses what no water has. */
    static double amount(double value, Entry.Key key, Object stated) {
        if (value < 0) {
            throw new IllegalArgumentException(key.name() + " must not be negative, but was " + stated);
        }
        return ofWater(value, key, stated);
    }

    /** The same of what may be negative. */
    static double ofWater(double value, Entry.Key key, Object stated) {
        exceeded(key.kind(), value).ifPresent(allowed -> {
            throw new IllegalArgumentException(key.name() + " must be " + allowed + ", but was " + stated);
        });
        return value;
    }

    /** Returns a standard uncertainty that a caller stated. */
    static double uncertainty(double value, Entry.Key key, Object stated) {
        if (!(value >= 0 && value <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "standard uncertainty of " + key.name() + " must be a number from 0, but was " + stated);
        }
        return value;
    }

    /** Refuses a value in the canonical unit of its kind. */
    static void check(Kind kind, ReportRow row, double value, boolean below) {
        if (below && (kind == Kind.PH || kind == Kind.TEMPERATURE)) {
            throw problem(row, " must be a number");
        }
        if (value < 0 && kind != Kind.ALKALINITY && kind != Kind.TEMPERATURE) {
            throw problem(row, kind == Kind.PH ? " must be from 0 to 14" : " must not be negative");
        }
        exceeded(kind, value).ifPresent(allowed -> {
            throw problem(row, " must be " + allowed);
        });
    }

    private static UnusableReportException problem(ReportRow row, String must) {
        return new UnusableReportException(
                row.line(), row.analyte() + must + ", but was " + (row.value() + " " + row.unit()).strip());
    }
}
