package evenwater.chemistry.analysis;

import evenwater.chemistry.analysis.Analyte.Kind;

/** What no water has: a figure beyond is a slip of the pen or of the unit. */
final class RowLimits {

    private static final double LARGEST_MOLE_PER_LITRE = 10;
    private static final int LARGEST_MILLISIEMENS_PER_CENTIMETRE = 1000;
    private static final int LARGEST_GRAM_PER_LITRE = 1000;

    private RowLimits() {}

    /** Tells whether a reading goes into no water but is compared with it, so that an upper limit says nothing. */
    static boolean isOnlyCompared(Kind kind) {
        return kind == Kind.CONDUCTIVITY || kind == Kind.DISSOLVED_SOLIDS || kind == Kind.COMPENSATED_HARDNESS;
    }

    /** Tells whether a reading is one number and no interval in what follows: of a range the middle is taken. */
    static boolean isOneNumber(Kind kind) {
        return isOnlyCompared(kind) || kind == Kind.PH || kind == Kind.TEMPERATURE;
    }

    static boolean isLiquid(double kelvin) {
        return kelvin >= 273.15 - 1e-9 && kelvin <= 373.15 + 1e-9;
    }

    /** The most that a reading of ions, hardness or alkalinity may be, in mmol/L or meq/L of either sign. */
    static final double LARGEST_MILLIMOLE_PER_LITRE = LARGEST_MOLE_PER_LITRE * 1000;

    /** The same in words. */
    static final String ALLOWED = "at most " + LARGEST_MOLE_PER_LITRE + " mol/L";

    /** Refuses a value in the canonical unit of its kind. */
    static void check(Kind kind, ReportRow row, double value, boolean below) {
        if (below && (kind == Kind.PH || kind == Kind.TEMPERATURE)) {
            throw problem(row, " must be a number");
        }
        if (value < 0 && kind != Kind.ALKALINITY && kind != Kind.TEMPERATURE) {
            throw problem(row, kind == Kind.PH ? " must be from 0 to 14" : " must not be negative");
        }
        switch (kind) {
            case PH -> require(value <= 14, row, "from 0 to 14");
            case TEMPERATURE -> require(isLiquid(value), row, "from 0 °C to 100 °C");
            case CONDUCTIVITY ->
                require(
                        value <= LARGEST_MILLISIEMENS_PER_CENTIMETRE * 1000,
                        row,
                        "at most " + LARGEST_MILLISIEMENS_PER_CENTIMETRE + " mS/cm");
            case DISSOLVED_SOLIDS ->
                require(value <= LARGEST_GRAM_PER_LITRE * 1000, row, "at most " + LARGEST_GRAM_PER_LITRE + " g/L");
            default -> require(Math.abs(value) <= LARGEST_MILLIMOLE_PER_LITRE, row, ALLOWED);
        }
    }

    private static void require(boolean holds, ReportRow row, String allowed) {
        if (!holds) {
            throw problem(row, " must be " + allowed);
        }
    }

    private static UnusableReportException problem(ReportRow row, String must) {
        return new UnusableReportException(
                row.line(), row.analyte() + must + ", but was " + (row.value() + " " + row.unit()).strip());
    }
}
