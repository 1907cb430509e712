package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.ReportNumber.Kind;
import evenwater.chemistry.quantity.UnreadableTextException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReportNumberTest {

    private static final List<String> RUBBISH =
            List.of(("NaN|Infinity|-Infinity|∞|0x10|1d|1f|1_000|½|1/2|٣|４|−5|~5|ca. 5|5 J|5 ± 1|(5)|"
                            + "5 mg/L|five|1e|e5|1e1000|+|+-5|--5|<|<<2|< >2|<=|ND?|ndx|n.d. <2|2018-05-03|1,2,3|1;2|positive|"
                            + "\ud83d\udca7|..5|4 .1")
                    .split("\\|", -1));

    private static final List<String> ABSENT =
            List.of(("| |n/a|N/A|na|-|--|---|–|—|not analysed|Not Analyzed|not tested|not measured|not determined|nm|"
                            + "nt|pending|n.b.|?|.|..|...")
                    .split("\\|", -1));

    private static final List<String> UNDETECTED =
            List.of(("ND|nd|n.d.|n.d|Not Detected|BDL|BQL|<LOD|<LOQ|<MDL|<RL|<DL|< LOD|< LOQ|< MDL|< RL|< DL|"
                            + "none detected|U|n.n.|nn|below detection|below detection limit|trace|Traces")
                    .split("\\|", -1));

    private static final List<String> WITH_COMMAS =
            List.of("3,2|0,250|<0,5|< 0,5|≤0,5|<=0,5|ND<0,5|nd (0,5)|1.250,5|1 250,5|-3,2|,5|1,2500".split("\\|", -1));

    private static final List<String> WITHOUT =
            List.of("|3.2|1,250|<1,250|1,250,000|1,250.5|1 250|12|ND|n/a|Monday, 3 May|3,2 mg/L|a,b|1,|5,25,000"
                    .split("\\|", -1));

    /** What a table says where a number is refused. */
    private static final String NO = "no";

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '"', textBlock = """
            # text      | point     | comma    | unstated
            4.1         | 4.1       | no       | 4.1
            4,1         | no        | 4.1      | 4.1
            22          | 22        | 22       | 22
            1250        | 1250      | 1250     | 1250
            1,250       | 1250      | 1.25     | no
            12,345      | 12345     | 12.345   | no
            123,456     | 123456    | 123.456  | no
            -1,250      | -1250     | -1.25    | no
            1.250       | 1.25      | 1250     | 1.25
            123.456     | 123.456   | 123456   | 123.456
            -1.250      | -1.25     | -1250    | -1.25
            1,250.5     | 1250.5    | no       | 1250.5
            1.250,5     | no        | 1250.5   | 1250.5
            1,250,000   | 1250000   | no       | 1250000
            1.250.000   | no        | 1250000  | 1250000
            1,250,000.5 | 1250000.5 | no       | 1250000.5
            1.250.000,5 | no        | 1250000.5| 1250000.5
            0,250       | no        | 0.25     | 0.25
            0.250       | 0.25      | no       | 0.25
            0,25        | no        | 0.25     | 0.25
            1,2500      | no        | 1.25     | 1.25
            1234,567    | no        | 1234.567 | 1234.567
            1234.567    | 1234.567  | no       | 1234.567
            1234,567,890| no        | no       | no
            1.2,5       | no        | no       | no
            1,2.5       | no        | no       | no
            1,25,000    | no        | no       | no
            1.25.000    | no        | no       | no
            1 250       | 1250      | 1250     | 1250
            1 250 000   | 1250000   | 1250000  | 1250000
            1 250.5     | 1250.5    | no       | 1250.5
            1 250.500   | 1250.5    | no       | 1250.5
            1 250,5     | no        | 1250.5   | 1250.5
            1 250,500   | no        | 1250.5   | 1250.5
            1'250       | 1250      | 1250     | 1250
            1’250.5     | 1250.5    | no       | 1250.5
            -12 345     | -12345    | -12345   | -12345
            1 250'000   | no        | no       | no
            0 250       | no        | no       | no
            1 25        | no        | no       | no
            1 2500      | no        | no       | no
            1  250      | no        | no       | no
            .5          | 0.5       | no       | 0.5
            ,5          | no        | 0.5      | 0.5
            5.          | 5         | no       | 5
            5,          | no        | no       | no
            +5          | 5         | 5        | 5
            -5          | -5        | -5       | -5
            -4,1        | no        | -4.1     | -4.1
            007         | 7         | 7        | 7
            1e3         | 1000      | 1000     | 1000
            1E-3        | 0.001     | 0.001    | 0.001
            2.5e+2      | 250       | no       | 250
            1e-400      | 0         | 0        | 0
            """)
    void aCommaIsWhatTheSettingSays(String text, String point, String comma, String unstated) {
        assertReads(point, text, DecimalSign.POINT);
        assertReads(comma, text, DecimalSign.COMMA);
        assertReads(unstated, text, DecimalSign.UNSTATED);
    }

    private static void assertReads(String expected, String text, DecimalSign sign) {
        if (expected.equals(NO)) {
            assertThrows(UnreadableTextException.class, () -> ReportNumber.read(text, sign, false), sign::toString);
        } else {
            assertEquals(
                    new ReportNumber(Kind.MEASURED, Double.parseDouble(expected)),
                    ReportNumber.read(text, sign, false),
                    sign::toString);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1\u00a0250", "1\u2009250", "1\u202f250", "1 250", "1'250", "1’250"})
    void thinAndUnbreakableSpacesGroupThousands(String text) {
        assertEquals(new ReportNumber(Kind.MEASURED, 1250), ReportNumber.read(text, DecimalSign.UNSTATED, true));
    }

    @Test
    void minusZeroIsZero() {
        assertEquals(new ReportNumber(Kind.MEASURED, 0.0), ReportNumber.read("-0", DecimalSign.UNSTATED, false));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1.250     | UNSTATED | no",
                "-1.250    | UNSTATED | no",
                "1.25      | UNSTATED | 1.25",
                "1.250.000 | UNSTATED | 1250000",
                "1.250     | POINT    | 1.25",
                "1.250     | COMMA    | 1250",
                "0.250     | UNSTATED | 0.25",
                "1 250.500 | UNSTATED | 1250.5"
            })
    void aPointIsDoubtfulBesideDecimalCommas(String text, DecimalSign sign, String expected) {
        if (expected.equals(NO)) {
            assertThrows(UnreadableTextException.class, () -> ReportNumber.read(text, sign, true));
        } else {
            assertEquals(
                    new ReportNumber(Kind.MEASURED, Double.parseDouble(expected)), ReportNumber.read(text, sign, true));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,250  | UNSTATED | false | it may be 1250 or 1.250: say what a comma means",
                "1.250  | UNSTATED | true  | it may be 1250 or 1.250: the report has decimal commas elsewhere",
                "<1,250 | UNSTATED | false | it may be 1250 or 1.250: say what a comma means",
                "3,2    | POINT    | false | the comma groups no thousands; if it marks decimals, use a point or say so",
                "3.2    | COMMA    | false | the point groups no thousands; if it marks decimals, use a comma or say so",
                "1e400  | UNSTATED | false | the number is too large",
                "-1e400 | UNSTATED | false | the number is too large",
                "<1e400 | UNSTATED | false | the number is too large",
                "<0     | UNSTATED | false | a detection limit must be above 0",
                "<-2    | UNSTATED | false | a detection limit must be above 0",
                "<1e-400| UNSTATED | false | a detection limit must be above 0",
                "nd 0   | UNSTATED | false | a detection limit must be above 0",
                ">2     | UNSTATED | false | a reading above the range of the test has no upper end: dilute and repeat, or leave the row out",
                "≥ 2    | UNSTATED | false | a reading above the range of the test has no upper end: dilute and repeat, or leave the row out",
                "4.1.2  | UNSTATED | false | expected a number such as 4.1, <2, 3-5 or ND"
            })
    void aRefusalShowsTheReadings(String text, DecimalSign sign, boolean pointsMayGroup, String problem) {
        UnreadableTextException e =
                assertThrows(UnreadableTextException.class, () -> ReportNumber.read(text, sign, pointsMayGroup));
        assertEquals(problem, e.problem());
        assertEquals("cannot read value '" + text + "': " + problem + ", at index 0", e.getMessage());
    }

    @ParameterizedTest
    @FieldSource("RUBBISH")
    void whatIsNoNumberGivesNone(String text) {
        for (DecimalSign sign : DecimalSign.values()) {
            UnreadableTextException e =
                    assertThrows(UnreadableTextException.class, () -> ReportNumber.read(text, sign, false));
            assertEquals("expected a number such as 4.1, <2, 3-5 or ND", e.problem());
        }
    }

    @Test
    void aNumberHasAtMostSixtyCharacters() {
        String sixty = "0".repeat(59) + "7";
        assertEquals(new ReportNumber(Kind.MEASURED, 7), ReportNumber.read(sixty, DecimalSign.UNSTATED, false));
        UnreadableTextException e = assertThrows(
                UnreadableTextException.class, () -> ReportNumber.read("0" + sixty, DecimalSign.UNSTATED, false));
        assertEquals("expected a number such as 4.1, <2, 3-5 or ND", e.problem());
    }

    @ParameterizedTest
    @FieldSource("ABSENT")
    void whatWasNotMeasuredIsNoNumber(String text) {
        for (DecimalSign sign : DecimalSign.values()) {
            assertEquals(new ReportNumber(Kind.NOT_MEASURED, Double.NaN), ReportNumber.read(text, sign, false));
        }
    }

    @ParameterizedTest
    @FieldSource("UNDETECTED")
    void notDetectedWithoutALimitIsNotZero(String text) {
        assertEquals(
                new ReportNumber(Kind.NOT_DETECTED, Double.NaN), ReportNumber.read(text, DecimalSign.UNSTATED, false));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "<2          | 2",
                "< 2         | 2",
                "≤2          | 2",
                "≤ 2         | 2",
                "<=2         | 2",
                "<= 0.5      | 0.5",
                "<.5         | 0.5",
                "<0,5        | 0.5",
                "<1 250      | 1250",
                "<1,250.5    | 1250.5",
                "<1e-3       | 0.001",
                "ND<0.5      | 0.5",
                "ND < 0.5    | 0.5",
                "nd (<0.5)   | 0.5",
                "ND (0.5)    | 0.5",
                "ND(0.50)    | 0.5",
                "ND 0.5      | 0.5",
                "nd <= 0,5   | 0.5"
            })
    void aNumberBelowALimitKeepsTheLimit(String text, double limit) {
        assertEquals(new ReportNumber(Kind.BELOW_LIMIT, limit), ReportNumber.read(text, DecimalSign.UNSTATED, false));
    }

    @ParameterizedTest
    @EnumSource(DecimalSign.class)
    void aLimitFollowsTheDecimalSign(DecimalSign sign) {
        double expected = sign == DecimalSign.POINT ? 1250 : 1.25;
        if (sign != DecimalSign.UNSTATED) {
            assertEquals(new ReportNumber(Kind.BELOW_LIMIT, expected), ReportNumber.read("<1,250", sign, false));
        } else {
            assertThrows(UnreadableTextException.class, () -> ReportNumber.read("<1,250", sign, false));
        }
    }

    @ParameterizedTest
    @FieldSource("WITH_COMMAS")
    void someNumbersCanOnlyHaveADecimalComma(String text) {
        assertTrue(ReportNumber.needsDecimalComma(text));
    }

    @ParameterizedTest
    @FieldSource("WITHOUT")
    void othersDoNotTell(String text) {
        assertFalse(ReportNumber.needsDecimalComma(text));
    }

    @Test
    void aLongTextTellsNothingOfCommas() {
        assertTrue(ReportNumber.needsDecimalComma("0".repeat(58) + ",5"));
        assertFalse(ReportNumber.needsDecimalComma("0".repeat(59) + ",5"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12-18 | 12 | 18",
                "12 – 18 | 12 | 18",
                "0.5 — 1.25 | 0.5 | 1.25",
                "12 to 18 | 12 | 18",
                "1,5 bis 2,5 | 1.5 | 2.5",
                "7-7 | 7 | 7",
                "0-5 | 0 | 5"
            })
    void aRangeHasTwoEnds(String text, double low, double high) {
        assertEquals(new ReportNumber(Kind.RANGE, low, high), ReportNumber.read(text, DecimalSign.UNSTATED, false));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "18-12 | a range must rise",
                "4.1* | the star stands for a footnote: take it off if the footnote allows",
                "12-18-20 | expected a number such as 4.1, <2, 3-5 or ND",
                "-12-18 | expected a number such as 4.1, <2, 3-5 or ND",
                "12- | expected a number such as 4.1, <2, 3-5 or ND",
                "1,250-1,300 | it may be 1250 or 1.250: say what a comma means",
                "12±1 | expected a number such as 4.1, <2, 3-5 or ND"
            })
    void whatIsNoRangeIsRefused(String text, String problem) {
        UnreadableTextException e =
                assertThrows(UnreadableTextException.class, () -> ReportNumber.read(text, DecimalSign.UNSTATED, false));
        assertEquals(problem, e.problem());
    }
}
