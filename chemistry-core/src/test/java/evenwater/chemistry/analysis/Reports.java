package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.function.Executable;

/** Reports in short: rows with bars between the fields, since commas belong to numbers. */
final class Reports {

    private Reports() {}

    /** Rows such as {@code "nitrate | 4.1 | mg/L | N"}; fields at the end may be left out. */
    static List<ReportRow> rows(String... rows) {
        List<ReportRow> read = new ArrayList<>();
        for (String row : rows) {
            String[] fields = (row + " | | |").split("\\|", -1);
            read.add(new ReportRow(read.size() + 1, fields[0], fields[1], fields[2], fields[3]));
        }
        return read;
    }

    static LabReport read(String... rows) {
        return read(ReportOptions.none(), rows);
    }

    static LabReport read(ReportOptions options, String... rows) {
        return LabReport.read(rows(rows), options);
    }

    static Interpretation interpreted(String... rows) {
        return read(rows).interpret();
    }

    static Water water(String... rows) {
        return interpreted(rows).water();
    }

    static double millimoles(Ion ion, Water water) {
        return water.total(ion).in(AmountConcentration.MILLIMOLE_PER_LITRE);
    }

    static double milligrams(Ion ion, Water water) {
        return water.total(ion).in(ion.milligramPerLitre());
    }

    /** Alkalinity in meq/L. */
    static double alkalinity(Water water) {
        return water.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
    }

    /** Hardness in mmol/L. */
    static double hardness(Water water) {
        return water.hardness().in(Hardness.MILLIMOLE_PER_LITRE);
    }

    /** Unmeasured charge in meq/L. */
    static double unmeasured(Water water) {
        return water.unmeasuredCharge().in(EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE);
    }

    /** Asserts that the rows are refused, in the reading or in the conclusion, with this message at this line. */
    static void assertRefused(int line, String message, String... rows) {
        assertRefused(line, message, ReportOptions.none(), rows);
    }

    static void assertRefused(int line, String message, ReportOptions options, String... rows) {
        UnusableReportException refusal = assertThrows(
                UnusableReportException.class, () -> read(options, rows).interpret());
        assertEquals(message, refusal.getMessage());
        assertEquals(line, refusal.line(), message);
    }

    /** Asserts the exact type and the full message of a refusal of arguments. */
    static void assertIllegal(String message, Executable call) {
        Throwable refusal = assertThrows(IllegalArgumentException.class, call);
        assertEquals(IllegalArgumentException.class, refusal.getClass());
        assertEquals(message, refusal.getMessage());
    }

    /** Null is refused by the name of what must not be null. */
    static void assertNullRefused(String name, Executable call) {
        assertEquals(name, assertThrows(NullPointerException.class, call).getMessage());
    }
}
