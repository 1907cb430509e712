package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.interpreted;
import static evenwater.chemistry.analysis.Reports.milligrams;
import static evenwater.chemistry.analysis.Reports.read;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One thing may stand in a report twice. */
class ReportDuplicatesTest {

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource(delimiter = '|', textBlock = """
            # two rows                                         | note
            sodium;100;mg/L;      | sodium;100;mg/L;             | sodium is given twice and agrees; used 100 mg/L
            sodium;100;mg/L;      | Na;4.35;mmol/L;              | sodium is given twice and agrees; used 4.35 mmol/L
            sodium;100;mg/L;      | sodium;102;mg/L;             | sodium is given twice and agrees; used 102 mg/L
            sodium;102;mg/L;      | sodium;100;mg/L;             | sodium is given twice and agrees; used 102 mg/L
            nitrate;1;mg/L;N      | nitrate;4.43;mg/L;NO3        | nitrate is given twice and agrees; used 4.43 mg/L as NO3
            hardness;21.1;°dH;    | total hardness;376;mg/L;CaCO3| hardness is given twice and agrees; used 21.1 °dH
            sodium;<2;mg/L;       | sodium;1.5;mg/L;             | sodium is given twice and agrees; used 1.5 mg/L
            sodium;1.5;mg/L;      | sodium;<2;mg/L;              | sodium is given twice and agrees; used 1.5 mg/L
            sodium;<2;mg/L;       | sodium;2.04;mg/L;            | sodium is given twice and agrees; used 2.04 mg/L
            sodium;<5;mg/L;       | sodium;<2;mg/L;              | sodium is given twice and agrees; used <2 mg/L
            sodium;<2;mg/L;       | sodium;<5;mg/L;              | sodium is given twice and agrees; used <2 mg/L
            pH;7.6;;              | pH field;7.5;;               | pH is given twice and agrees; used 7.6
            temperature;20;°C;    | temperature;20.5;°C;         | temperature is given twice and agrees; used 20.5 °C
            alkalinity;-1;meq/L;  | alkalinity;-1.02;meq/L;      | alkalinity is given twice and agrees; used -1 meq/L
            """)
    void readingsThatAgreeMakeOne(String first, String second, String note) {
        assertEquals(
                List.of(note),
                read(first.replace(';', '|'), second.replace(';', '|')).notes());
    }

    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource(delimiter = '|', textBlock = """
            sodium;100;mg/L;      | sodium;102.1;mg/L;    | sodium is 102.1 mg/L here and 100 mg/L in line 1: leave one out
            sodium;<2;mg/L;       | sodium;2.05;mg/L;     | sodium is 2.05 mg/L here and <2 mg/L in line 1: leave one out
            nitrate;4.1;mg/L;N    | nitrate;4.1;mg/L;NO3  | nitrate is 4.1 mg/L as NO3 here and 4.1 mg/L as N in line 1: leave one out
            pH;7.6;;              | pH lab;7.49;;         | pH is 7.49 here and 7.6 in line 1: leave one out
            temperature;15;°C;    | temperature;20;°C;    | temperature is 20 °C here and 15 °C in line 1: leave one out
            temperature;20;°C;    | temp;20.51;°C;        | temperature is 20.51 °C here and 20 °C in line 1: leave one out
            hardness;22;gpg;      | GH;22;°dH;            | hardness is 22 °dH here and 22 gpg in line 1: leave one out
            alkalinity;-1;meq/L;  | alkalinity;1;meq/L;   | alkalinity is 1 meq/L here and -1 meq/L in line 1: leave one out
            """)
    void readingsThatContradictAreRefused(String first, String second, String message) {
        assertRefused(2, message, first.replace(';', '|'), second.replace(';', '|'));
    }

    @Test
    void eachReadingMustAgreeWithAllOthers() {
        assertRefused(
                3,
                "sodium is 103.5 mg/L here and 100 mg/L in line 1: leave one out",
                "sodium | 100 | mg/L",
                "sodium | 101.8 | mg/L",
                "sodium | 103.5 | mg/L");
        Interpretation read = interpreted("sodium | 100 | mg/L", "sodium | 101 | mg/L", "sodium | 101.8 | mg/L");
        assertEquals(
                "sodium is given 3 times and agrees; used 101.8 mg/L",
                read.assumptions().get(0));
        assertEquals(101.8, milligrams(Ion.SODIUM, read.water()), 1e-12 * 100);
    }

    @Test
    void aReadingThatIsUsedTwiceIsOneReading() {
        LabReport report = read("pH | 7.6", "pH | 7.6", "sodium | 1 | mg/L", "KH | 1 | °dKH");
        assertEquals(OptionalDouble.of(7.6), report.pH());
        assertEquals(1, report.interpret().corners().size());
    }

    @Test
    void twoIntervalsLeaveTheirOverlap() {
        for (String[] rows : new String[][] {
            {"calcium | 10-60 | mmol/L", "Ca | 50-200 | mmol/L"}, {"Ca | 50-200 | mmol/L", "calcium | 10-60 | mmol/L"}
        }) {
            Interpretation read = Reports.interpreted(rows);
            Bounds<AmountConcentration> calcium = read.bounds(water -> water.total(Ion.CALCIUM));
            assertEquals(50, calcium.low().getValue(), 0);
            assertEquals(60, calcium.high().getValue(), 0);
        }
        assertEquals(
                List.of("calcium 10-60 mmol/L and 50-200 mmol/L"),
                Reports.read("calcium | 10-60 | mmol/L", "Ca | 50-200 | mmol/L").readings());
        assertEquals(
                List.of("calcium 50-60 mmol/L"),
                Reports.read("calcium | 10-200 | mmol/L", "Ca | 50-60 | mmol/L").readings());
    }
}
