package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.alkalinity;
import static evenwater.chemistry.analysis.Reports.assertIllegal;
import static evenwater.chemistry.analysis.Reports.assertNullRefused;
import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.hardness;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the caller knows settles what the text leaves open, and nothing else. */
class ReportOptionsTest {

    private static final ReportOptions NONE = ReportOptions.none();

    private static Water water(ReportOptions options, String... rows) {
        return read(options, rows).interpret().water();
    }

    @ParameterizedTest
    @CsvSource({"N, 0.571", "NO3, 0.129", "NO3-N, 0.571", "' as N', 0.571", "n, 0.571"})
    void aBasisSettlesABlankOne(String basis, double millimoles) {
        Water water = water(NONE.basis("NO3", basis), "nitrate | 8 | mg/L");
        assertEquals(millimoles, millimoles(Ion.NITRATE, water), 0.0005); // three digits
    }

    @Test
    void aBasisOfTheRowIsStrongerThanThatOfTheCaller() {
        ReportOptions options = NONE.basis("nitrate", "NO3");
        assertEquals(8 / 14.007, millimoles(Ion.NITRATE, water(options, "nitrate | 8 | mg/L | N")), 1e-12);
        assertEquals(8 / 14.007, millimoles(Ion.NITRATE, water(options, "NO3-N | 8 | mg/L")), 1e-12);
        assertEquals(8, millimoles(Ion.NITRATE, water(options, "nitrate | 8 | mmol/L")), 0);
    }

    @Test
    void theBasisOfOneAnalyteIsNotThatOfAnother() {
        assertRefused(
                1,
                "nitrite '8 mg/L': it may be as N (0.571 mmol/L) or as NO₂⁻ (0.174 mmol/L): state the basis",
                NONE.basis("nitrate", "N"),
                "nitrite | 8 | mg/L");
    }

    @Test
    void aBasisSettlesHardnessAndAlkalinity() {
        ReportOptions options = NONE.basis("hardness", "CaCO3").basis("alkalinity", "CaCO3");
        Water water = water(options, "hardness | 100.086 | mg/L", "alkalinity | 50.043 | ppm");
        assertEquals(1, hardness(water), 1e-12);
        assertEquals(1, alkalinity(water), 1e-12);
        assertEquals(1, hardness(water(NONE.basis("hardness", "CaO"), "hardness | 56.077 | mg/L")), 1e-12);
    }

    @ParameterizedTest(name = "{0} means {1}")
    @CsvSource({"'', °fH", "°F, °fH", "F, °fH", "°, °fH", "degrees, French degree"})
    void aUnitSettlesABlankOrAmbiguousOne(String stated, String unit) {
        Water water = water(NONE.unit("GH", unit), "hardness | 10.0086 | " + stated);
        assertEquals(1, hardness(water), 1e-12);
    }

    @Test
    void aUnitSettlesOtherKindsToo() {
        assertEquals(2, alkalinity(water(NONE.unit("alkalinity", "mg/L CaCO3"), "alkalinity | 100.086 | mg/L")), 1e-12);
        assertEquals(1, millimoles(Ion.SODIUM, water(NONE.unit("sodium", "mg/L"), "sodium | 22.990 | ")), 1e-12);
        assertEquals(
                2 * 17.1180610 / 22.990,
                millimoles(Ion.SODIUM, water(NONE.unit("Na", "gr/gal(US)"), "sodium | 2 | gr/gal | Na")),
                1e-8);
        assertEquals(
                640,
                read(NONE.unit("conductivity", "µS/cm"), "EC | 640 | µS")
                        .conductivity()
                        .orElseThrow()
                        .getValue(),
                1e-12);
        assertEquals(
                25,
                water(NONE.unit("temperature", "°F"), "temperature | 77 | °")
                        .temperature()
                        .getValue(),
                1e-10);
        assertEquals(
                4,
                read(NONE.unit("TDS", "mg/L"), "TDS | 4 | ")
                        .dissolvedSolids()
                        .orElseThrow()
                        .getValue(),
                0);
    }

    @Test
    void unitAndBasisTogetherSettleABareNumber() {
        ReportOptions options = NONE.unit("hardness", "mg/L").basis("hardness", "CaCO3");
        assertEquals(1, hardness(water(options, "hardness | 100.086 | ")), 1e-12);
        assertEquals(1, hardness(water(options, "hardness | 100.086 | | CaCO3")), 1e-12);
        assertRefused(
                1,
                "hardness '100 mg/L': 'mg/L' may be mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one",
                NONE.unit("hardness", "mg/L"),
                "hardness | 100 | mg/L");
    }

    @Test
    void aUnitNeverReplacesTheOneOfTheRow() {
        ReportOptions options = NONE.unit("hardness", "°fH").unit("sodium", "mg/L");
        assertEquals(10 * 0.178326230, hardness(water(options, "hardness | 10 | °dH")), 1e-8);
        assertEquals(5, millimoles(Ion.SODIUM, water(options, "sodium | 5 | mmol/L")), 0);
        assertRefused(
                1,
                "hardness '10 foo': unknown unit, expected one of mmol/L, mol/m³, meq/L, mg/L CaCO3, mg/L CaO, °dH, °fH, °e, gpg",
                options,
                "hardness | 10 | foo");
        assertRefused(
                1,
                "sodium '10 foo': unknown unit, expected one of g/L, mg/L, µg/L, kg/L, kg/m³, mg/m³, gr/gal(US), lb/gal(US)",
                options,
                "sodium | 10 | foo");
    }

    @Test
    void namingSaysWhatAnUnknownOrAmbiguousNameMeans() {
        ReportOptions options =
                NONE.naming("Sodum", "sodium").naming("TA", "alkalinity").naming("X5", "nitrate as N");
        LabReport report = read(options, "sodum | 1 | mmol/L", "ta | 2 | meq/L", "x5 | 14.007 | mg/L");
        Water water = report.interpret().water();
        assertEquals(1, millimoles(Ion.SODIUM, water), 0);
        assertEquals(2, alkalinity(water), 0);
        assertEquals(1, millimoles(Ion.NITRATE, water), 1e-12);
        assertEquals(List.of(), report.unusedRows());
    }

    @Test
    void namingMayTurnAKnownNameRound() {
        Water water = water(NONE.naming("carbonate hardness", "KH"), "carbonate hardness | 10 | °dH", "GH | 5 | °dH");
        assertEquals(3.56652460, alkalinity(water), 1e-8);
    }

    @Test
    void ignoringLeavesRowsOut() {
        ReportOptions options = NONE.ignoring("Sodum").ignoring("Hardness (old)");
        LabReport report = read(options, "sodum | rubbish | ?", "hardness old | 1 | °dH", "chloride | 30 | mg/L");
        assertEquals(
                List.of("sodum: left out as asked", "hardness old: left out as asked"),
                report.unusedRows().stream()
                        .map(unused -> unused.row().analyte() + ": " + unused.reason())
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"1,250 | POINT | 1250", "1,250 | COMMA | 1.25", "1.250 | COMMA | 1250", "1.250 | POINT | 1.25"})
    void theDecimalSignSettlesAComma(String value, DecimalSign sign, double milligrams) {
        Water water = water(NONE.with(sign), "sodium | " + value + " | mg/L");
        assertEquals(milligrams / 22.990, millimoles(Ion.SODIUM, water), 1e-12 * milligrams);
    }

    @Test
    void withoutADecimalSignDoubtfulValuesAreRefused() {
        assertRefused(
                1, "sodium '1,250 mg/L': it may be 1250 or 1.250: say what a comma means", "sodium | 1,250 | mg/L");
        assertRefused(
                1,
                "sodium '1.250 mg/L': it may be 1250 or 1.250: the report has decimal commas elsewhere",
                "sodium | 1.250 | mg/L",
                "chloride | 3,2 | mg/L");
        assertRefused(
                1,
                "sodium '3,2 mg/L': the comma groups no thousands; if it marks decimals, use a point or say so",
                NONE.with(DecimalSign.POINT),
                "sodium | 3,2 | mg/L");
        assertEquals(0.32, millimoles(Ion.SODIUM, water(NONE, "sodium | 0,32 | mmol/L")), 0);
    }

    @Test
    void optionsThatContradictEachOtherAreRefused() {
        ReportOptions one = NONE.basis("nitrate", "N")
                .unit("hardness", "°fH")
                .naming("Foo", "sodium")
                .ignoring("bar");
        assertContradiction("nitrate cannot be both 'N' and 'NO3'", () -> one.basis("NO3", "NO3"));
        assertContradiction("hardness cannot be both '°fH' and '°dH'", () -> one.unit("GH", "°dH"));
        assertContradiction("'foo' cannot be both sodium and potassium", () -> one.naming("foo", "potassium"));
        assertContradiction("'Foo' cannot be both named and left out", () -> one.ignoring("Foo"));
        assertContradiction("'Bar' cannot be both named and left out", () -> one.naming("Bar", "sodium"));
        one.basis("nitrate", "N").naming("FOO", "Na").ignoring("Bar"); // the same again does no harm
    }

    private static void assertContradiction(String what, Executable call) {
        assertEquals(
                "options contradict each other: " + what,
                assertThrows(UnusableReportException.class, call).getMessage());
    }

    @Test
    void optionsAreAddedAndNeverChanged() {
        ReportOptions one = NONE.basis("nitrate", "N");
        ReportOptions two =
                NONE.basis("nitrate", "NO3").density(MassConcentration.of(1, MassConcentration.KILOGRAM_PER_LITRE));
        ReportOptions three = two.with(DecimalSign.COMMA)
                .unit("sodium", "mmol/L")
                .naming("y", "silica as Si")
                .ignoring("z");
        assertEquals(8 / 14.007, millimoles(Ion.NITRATE, water(one, "nitrate | 8 | mg/L")), 1e-12);
        assertEquals(8 / 62.004, millimoles(Ion.NITRATE, water(two, "nitrate | 8 | mg/L")), 1e-12);
        Water water = water(three, "nitrate | 8,5 | mg/kg", "sodium | 2,5", "y | 28,085 | mg/L", "z | ? | ?");
        assertEquals(8.5 / 62.004, millimoles(Ion.NITRATE, water), 1e-12);
        assertEquals(2.5, millimoles(Ion.SODIUM, water), 0);
        assertEquals(1, millimoles(Ion.SILICA, water), 1e-12);
    }

    @Test
    void anOptionForAnUnknownAnalyteIsRefused() {
        for (String message : List.of(
                assertThrows(UnusableReportException.class, () -> NONE.basis("nitrte", "N"))
                        .getMessage(),
                assertThrows(UnusableReportException.class, () -> NONE.unit("nitrte", "mg/L"))
                        .getMessage(),
                assertThrows(UnusableReportException.class, () -> NONE.naming("x", "nitrte"))
                        .getMessage())) {
            assertEquals("unknown analyte 'nitrte' in an option: did you mean nitrate?", message);
        }
        UnusableReportException e = assertThrows(UnusableReportException.class, () -> NONE.unit("xyz", "mg/L"));
        assertEquals("unknown analyte 'xyz' in an option", e.getMessage());
        assertEquals(0, e.line());
    }

    @Test
    void aDensityIsThatOfAWater() {
        assertIllegal(
                "density of a water must be from 0.5 to 2 kg/L, but was 0 kg/L",
                () -> NONE.density(MassConcentration.of(0, MassConcentration.KILOGRAM_PER_LITRE)));
        assertIllegal(
                "density of a water must be from 0.5 to 2 kg/L, but was 998 kg/L",
                () -> NONE.density(MassConcentration.of(998, MassConcentration.KILOGRAM_PER_LITRE)));
    }

    @Test
    void aUnitOfAnOptionMustBeOne() {
        for (String analyte : List.of(
                "hardness", "compensated hardness", "alkalinity", "conductivity", "temperature", "TDS", "sodium")) {
            UnusableReportException e =
                    assertThrows(UnusableReportException.class, () -> NONE.unit(analyte, "bananas"), analyte);
            assertTrue(e.getMessage().startsWith("unit 'bananas' of "), e.getMessage());
            assertTrue(e.getMessage().contains(" in an option: unknown unit"), e.getMessage());
        }
        for (String unit : List.of("mg/L", "ppm", "mg/kg", "gr/gal", "meq/L", "mmol/L")) {
            NONE.unit("sodium", unit); // or it throws
        }
        assertThrows(UnusableReportException.class, () -> NONE.unit("sodium", "bananameq/L"));
        assertThrows(UnusableReportException.class, () -> NONE.unit("sodium", "bananamol/L"));
        assertEquals(
                "no unit to settle for pH",
                assertThrows(UnusableReportException.class, () -> NONE.unit("pH", "mg/L"))
                        .getMessage());
    }

    @Test
    void nullIsRefusedByName() {
        assertNullRefused("sign", () -> NONE.with(null));
        assertNullRefused("analyte", () -> NONE.basis(null, "N"));
        assertNullRefused("basis", () -> NONE.basis("nitrate", null));
        assertNullRefused("analyte", () -> NONE.unit(null, "mg/L"));
        assertNullRefused("unit", () -> NONE.unit("nitrate", null));
        assertNullRefused("name", () -> NONE.naming(null, "nitrate"));
        assertNullRefused("analyte", () -> NONE.naming("x", null));
        assertNullRefused("name", () -> NONE.ignoring(null));
        assertNullRefused("quantity", () -> NONE.density(null));
        assertNullRefused("rows", () -> LabReport.read(null, NONE));
        assertNullRefused("options", () -> LabReport.read(List.of(), null));
        assertNullRefused("assumptions", () -> read("pH | 7").interpret(null));
    }

    @Test
    void whatAnOptionDecidedIsListed() {
        LabReport report =
                read(NONE.basis("nitrate", "N").unit("hardness", "°fH"), "nitrate | 8 | mg/L", "hardness | 20");
        assertEquals(List.of("nitrate taken as N, as asked", "hardness taken in °fH, as asked"), report.notes());
    }

    @Test
    void anOptionThatSettlesNothingIsListed() {
        LabReport report =
                read(NONE.basis("nitrate", "N").ignoring("Sodum").naming("foo", "calcium"), "hardness | 20 | °dH");
        assertEquals(
                List.of(
                        "an option speaks of 'foo', which the report does not have",
                        "an option speaks of 'nitrate', which the report does not have",
                        "an option speaks of 'sodum', which the report does not have"),
                report.notes());
    }

    @Test
    void aBasisIsAFormula() {
        UnusableReportException e = assertThrows(UnusableReportException.class, () -> NONE.basis("nitrate", "Q"));
        assertEquals("unknown basis 'Q' in an option: expected a formula such as N or NO3", e.getMessage());
    }
}
