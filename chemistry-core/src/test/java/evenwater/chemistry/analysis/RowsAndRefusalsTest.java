package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import java.util.Collections;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows as they come in, and messages about them: one short line each. */
class RowsAndRefusalsTest {

    @Test
    void aRowLosesTheBlanksAroundItsFields() {
        assertEquals(
                new ReportRow(1, "sodium", "5 000", "mg/L", "Na"),
                new ReportRow(1, "\ufeff sodium\t", "\u00a05 000\u202f", "\u2003mg/L\n", " Na "));
        assertEquals(new ReportRow(1, "", "", "", ""), new ReportRow(1, " ", "\t", "\u00a0", "\ufeff\ufeff"));
    }

    @Test
    void nothingOfARowIsNull() {
        assertNullRefused("analyte", () -> new ReportRow(1, null, "", "", ""));
        assertNullRefused("value", () -> new ReportRow(1, "", null, "", ""));
        assertNullRefused("unit", () -> new ReportRow(1, "", "", null, ""));
        assertNullRefused("as", () -> new ReportRow(1, "", "", "", null));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "nitrate | 4.1 | mg/L | N  | nitrate '4.1 mg/L as N'",
                "nitrate | 4.1 | mg/L | \"\" | nitrate '4.1 mg/L'",
                "pH      | 4.1 | \"\"   | \"\" | pH '4.1'"
            })
    void aRowIsOnePhraseInMessages(String analyte, String value, String unit, String as, String phrase) {
        assertEquals(phrase, new ReportRow(1, analyte, value, unit, as).inOnePhrase());
    }

    @Test
    void longFieldsAreShortenedInMessages() {
        String sixty = "x".repeat(60);
        assertEquals(
                sixty + " '" + sixty + "… " + sixty + "… as " + sixty + "…'",
                new ReportRow(1, sixty, sixty + "y", sixty + "yz", sixty + "z").inOnePhrase());
    }

    @Test
    void aMessageIsOneShortLine() {
        String text = "a\nb\r\n\tc\u0000d\u0085e\u2028f\u2029g\u007fh";
        assertEquals("a b c d e f g h", new UnusableReportException(3, text).getMessage());
        assertEquals(3, new UnusableReportException(3, text).line());
        assertEquals("x".repeat(400), new UnusableReportException(0, "x".repeat(400)).getMessage());
        assertEquals("x".repeat(400) + "…", new UnusableReportException(0, "x".repeat(401)).getMessage());
    }

    @Test
    void aCharacterIsNotCutInTwo() {
        assertEquals("ab…", UnusableReportException.shortened("ab\ud83d\udca7cd", 3));
        assertEquals("ab\ud83d\udca7…", UnusableReportException.shortened("ab\ud83d\udca7cd", 4));
    }

    @ParameterizedTest
    @CsvSource({
        "sodium, sodium, 0",
        "sodum, sodium, 1",
        "soodium, sodium, 1",
        "sodiun, sodium, 1",
        "soduim, sodium, 1",
        "osdium, sodium, 1",
        "sdoium, sodium, 1",
        "osduim, sodium, 2",
        "natrium, sodium, 3",
        "'', abc, 3",
        "'', ab, 2",
        "ab, abcd, 2",
        "abcd, ab, 2",
        "abcdef, ab, 3",
        "kitten, sitting, 3"
    })
    void slipsOfThePenAreCounted(String a, String b, int distance) {
        assertEquals(distance, EditDistance.between(a, b, 3));
        assertEquals(distance, EditDistance.between(b, a, 3));
        assertEquals(Math.min(1, distance), EditDistance.between(a, b, 1));
    }

    @Test
    void aRowStandsInALine() {
        Refused.argument("line of a row must be 1 or more, but was 0", () -> new ReportRow(0, "a", "1", "", ""));
        Refused.asNull("reason", () -> new UnusedRow(new ReportRow(1, "a", "1", "", ""), null));
    }

    @Test
    void nullInAReportIsNamed() {
        Refused.asNull("row", () -> LabReport.read(Collections.singletonList(null), ReportOptions.none()));
        Interpretation read = Reports.interpreted("sodium | 1 | mmol/L");
        Refused.asNull("result", () -> read.bounds(null));
        Refused.asNull("ion", () -> read.isMeasured(null));
        Refused.argument(
                "HCO₃⁻ has no total of its own: it is counted in inorganic carbon and alkalinity",
                () -> read.isMeasured(Ion.BICARBONATE));
    }

    @Test
    void reportsOptionsAndInterpretationsSayWhatTheyHold() {
        LabReport report = Reports.read("sodium | 1 | mmol/L", "chloride | 1 | mmol/L");
        assertEquals("sodium 1 mmol/L; chloride 1 mmol/L", report.toString());
        Interpretation read = report.interpret();
        assertEquals(
                read.water() + "; assumed: " + read.assumptions() + "; disagreeing: []; not measured: "
                        + read.notMeasured(),
                read.toString());
        assertEquals(
                "decimals by UNSTATED, bases {nitrate=N}, units {}, names {}, left out [x], density 1 kg/L",
                ReportOptions.none()
                        .basis("nitrate", "N")
                        .ignoring("x")
                        .density(MassConcentration.of(1, MassConcentration.KILOGRAM_PER_LITRE))
                        .toString());
    }
}
