package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.interpreted;
import static evenwater.chemistry.analysis.Reports.milligrams;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.read;
import static evenwater.chemistry.analysis.Reports.unmeasured;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.Softener;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Detection limits, and limits of what a figure may be. */
class ReportLimitsTest {

    private static final String[] WELL = {
        "nitrate | 4.1 | mg/L | N",
        "hardness | 22 | gr/gal | CaCO3",
        "alkalinity | 9.5 | °dH | ",
        "pH | 7.6 | | ",
        "conductivity | 640 | µS/cm | ",
        "sodium | <2 | mg/L | "
    };

    private static AmountConcentration softenedSodium(Water source) {
        return Softener.withSodium().treat(source).total(Ion.SODIUM).to(Ion.SODIUM.milligramPerLitre());
    }

    @Test
    void sodiumBelowALimitIsAnIntervalThroughTheSoftener() {
        Bounds<AmountConcentration> sodium = interpreted(WELL).bounds(ReportLimitsTest::softenedSodium);
        assertEquals(22 * 7.86412132, sodium.low().getValue(), 1e-6); // nine digits per grain
        assertEquals(22 * 7.86412132 + 1, sodium.value().getValue(), 1e-6);
        assertEquals(22 * 7.86412132 + 2, sodium.high().getValue(), 1e-6);
        assertEquals("174 mg/L Na⁺ (173 to 175 mg/L Na⁺)", sodium.toText(Locale.ROOT, 3));
        assertFalse(sodium.isExact());
    }

    @Test
    void sodiumBelowALimitIsAnIntervalInTheBalance() {
        Interpretation read = interpreted(WELL);
        assertEquals(1, milligrams(Ion.SODIUM, read.water()), 1e-12);
        Bounds<EquivalentConcentration> charge = read.bounds(Water::unmeasuredCharge);
        assertEquals(2 / 22.990, charge.high().getValue() - charge.low().getValue(), 1e-12);
        assertEquals(unmeasured(read.water()), charge.value().getValue(), 0);
        assertTrue(read.isMeasured(Ion.SODIUM));
        assertEquals(List.of("calcium", "magnesium", "potassium", "chloride", "sulfate"), read.notMeasured());
    }

    @Test
    void everyLimitIsAnAssumption() {
        Interpretation read = interpreted(
                "sodium | <2 | mg/L", "calcium | < 0.5 | mg/L as CaCO3", "K | ND (1) | mg/L", "KH | 1 | °dKH");
        assertEquals(
                "given as an interval: sodium <2 mg/L, calcium < 0.5 mg/L as CaCO3, potassium ND (1) mg/L; "
                        + "its middle as best guess, both its ends in the bounds",
                read.assumptions().get(read.assumptions().size() - 1));
        assertEquals(8, read.corners().size());
    }

    @Test
    void limitsOfAlkalinityAndHardnessAreIntervalsToo() {
        Interpretation read = interpreted("alkalinity | <10 | mg/L | CaCO3", "hardness | <2 | °dH");
        Bounds<Alkalinity> alkalinity = read.bounds(Water::alkalinity);
        assertEquals(0, alkalinity.low().getValue(), 0);
        assertEquals(0.0999140739, alkalinity.value().getValue(), 1e-9);
        assertEquals(0.199828148, alkalinity.high().getValue(), 1e-9);
        assertEquals(0, read.bounds(Water::hardness).low().getValue(), 0);
        assertEquals(0.178326230, read.bounds(Water::hardness).value().getValue(), 1e-9);
        assertEquals(0.356652460, read.bounds(Water::hardness).high().getValue(), 1e-9);
    }

    @Test
    void formsOfAlkalinityBelowALimitAreIntervalsToo() {
        Interpretation read =
                interpreted("bicarbonate | 61.016 | mg/L", "carbonate | <6.0008 | mg/L", "hydroxide | <1 | mmol/L");
        Bounds<Alkalinity> alkalinity = read.bounds(Water::alkalinity);
        assertEquals(1, alkalinity.low().getValue(), 1e-12);
        assertEquals(1 + 0.1 + 0.5, alkalinity.value().getValue(), 1e-12);
        assertEquals(1 + 0.2 + 1, alkalinity.high().getValue(), 1e-12);
    }

    @Test
    void notDetectedWithoutALimitIsNotMeasured() {
        Interpretation read = interpreted("sodium | ND | mg/L", "chloride | 30 | mg/L");
        assertFalse(read.isMeasured(Ion.SODIUM));
        assertTrue(read.notMeasured().contains("sodium"));
        assertEquals(
                "not detected, with no limit stated: not counted as zero",
                read.report().unusedRows().get(0).reason());
    }

    @ParameterizedTest
    @ValueSource(strings = {"conductivity | <5 | µS/cm", "TDS | <10 | mg/L", "compensated hardness | <1 | gpg"})
    void anUpperLimitOfWhatIsOnlyComparedSaysNothing(String row) {
        LabReport report = read(row, "sodium | 1 | mg/L");
        assertEquals(
                List.of("below the limit of the test: no reading to compare with"),
                report.unusedRows().stream().map(UnusedRow::reason).toList());
        assertEquals(Optional.empty(), report.conductivity());
        assertEquals(Optional.empty(), report.dissolvedSolids());
        assertEquals(Optional.empty(), report.compensatedHardness());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            pH;15;                 | pH must be from 0 to 14, but was 15
            pH;-0.1;               | pH must be from 0 to 14, but was -0.1
            pH;14.01;              | pH must be from 0 to 14, but was 14.01
            pH;<7;                 | pH must be a number, but was <7
            temperature;<7;°C      | temperature must be a number, but was <7 °C
            temperature;-0.1;°C    | temperature must be from 0 °C to 100 °C, but was -0.1 °C
            temperature;100.1;°C   | temperature must be from 0 °C to 100 °C, but was 100.1 °C
            temperature;31;°F      | temperature must be from 0 °C to 100 °C, but was 31 °F
            temperature;25;K       | temperature must be from 0 °C to 100 °C, but was 25 K
            temperature;-300;°C    | temperature '-300 °C': temperature must not be below absolute zero, but was -300 °C
            sodium;-5;mg/L         | sodium must not be negative, but was -5 mg/L
            hardness;-1;°dH        | hardness must not be negative, but was -1 °dH
            conductivity;-1;µS/cm  | conductivity must not be negative, but was -1 µS/cm
            dissolved solids;-1;mg/L | dissolved solids must not be negative, but was -1 mg/L
            compensated hardness;-1;gpg | compensated hardness must not be negative, but was -1 gpg
            sodium;10.001;mol/L    | sodium must be at most 10.0 mol/L, but was 10.001 mol/L
            sodium;1e300;mg/L      | sodium must be at most 10.0 mol/L, but was 1e300 mg/L
            sodium;<1e300;mg/L     | sodium must be at most 10.0 mol/L, but was <1e300 mg/L
            hardness;1e300;°dH     | hardness must be at most 10.0 mol/L, but was 1e300 °dH
            alkalinity;-1e300;meq/L| alkalinity must be at most 10.0 mol/L, but was -1e300 meq/L
            alkalinity;10001;meq/L | alkalinity must be at most 10.0 mol/L, but was 10001 meq/L
            conductivity;1001;mS/cm| conductivity must be at most 1000 mS/cm, but was 1001 mS/cm
            dissolved solids;1001;g/L | dissolved solids must be at most 1000 g/L, but was 1001 g/L
            conductivity;1e306;S/m | conductivity '1e306 S/m': 1.0E306 S/m is too large for a double in µS/cm
            sodium;1e400;mg/L      | sodium '1e400 mg/L': the number is too large
            sodium;NaN;mg/L        | sodium 'NaN mg/L': expected a number such as 4.1, <2, 3-5 or ND
            sodium;Infinity;mg/L   | sodium 'Infinity mg/L': expected a number such as 4.1, <2, 3-5 or ND
            """)
    void whatNoWaterHasIsRefused(String row, String message) {
        assertRefused(2, message, "chloride | 30 | mg/L", row.replace(';', '|'));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pH | 0",
                "pH | 14",
                "temperature | 0 | °C",
                "temperature | 100 | °C",
                "temperature | 32 | °F",
                "temperature | 373.15 | K",
                "sodium | 0 | mg/L",
                "sodium | 10 | mol/L",
                "conductivity | 1000 | mS/cm",
                "dissolved solids | 1000 | g/L",
                "alkalinity | -10000 | meq/L"
            })
    void theLimitsThemselvesAreRead(String row) {
        assertEquals(List.of(), read(row, "chloride | 30 | mg/L").unusedRows());
    }

    @Test
    void zeroIsAReading() {
        Interpretation read = interpreted("sodium | 0 | mg/L");
        assertTrue(read.isMeasured(Ion.SODIUM));
        assertEquals(0, millimoles(Ion.SODIUM, read.water()), 0);
        assertEquals(1, read.corners().size());
    }

    @Test
    void aRangeGoesIntoTheBounds() {
        Interpretation read =
                Reports.interpreted("nitrate | 12-18 | mg/L | NO3", "pH | 7.2 to 7.8", "hardness | 8-12 | °dH");
        assertEquals(
                "15 mg/L NO₃⁻ (12 to 18 mg/L NO₃⁻)",
                read.bounds(water -> water.total(Ion.NITRATE).to(Ion.NITRATE.milligramPerLitre()))
                        .toText(Locale.ROOT, 4));
        assertEquals(
                "10 °dH (8 to 12 °dH)",
                read.bounds(water -> water.hardness().to(Hardness.GERMAN_DEGREE))
                        .toText(Locale.ROOT, 4));
        assertEquals(7.5, read.report().pH().orElseThrow(), 1e-12);
        assertTrue(
                read.assumptions()
                        .contains(
                                "given as an interval: nitrate 12-18 mg/L as NO3, hardness 8-12 °dH, pH 7.2 to 7.8; its middle as best guess, both its ends in the bounds"),
                () -> read.assumptions().toString());
    }
}
