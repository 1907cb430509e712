package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.read;
import static evenwater.chemistry.analysis.Reports.water;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.analysis.Analyte.Kind;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

class ReportNamesTest {

    private static final List<String> UNKNOWN =
            List.of(("cesium|krypton|Nx|Nax|xyz|unobtainium|total|dissolved|sum of arsenic and others|"
                            + "nitrogen isotopes|as N|%|iro|sodxm|tdss|our TDS")
                    .split("\\|", -1));

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Calcium                    | calcium
            CALCIUM                    | calcium
            calcium                    | calcium
            Ca                         | calcium
            Ca++                       | calcium
            Ca²⁺                       | calcium
            Calcium (Ca)               | calcium
            Calcium Ca2+               | calcium
            Calcium, dissolved         | calcium
            Dissolved Calcium          | calcium
            Calcium, Total             | calcium
            calcium (filtered)         | calcium
            Kalzium                    | calcium
            magnésium                  | magnesium
            Natrium                    | sodium
            Na⁺                        | sodium
            Kalium                     | potassium
            Eisen                      | iron
            iron(II)                   | iron
            Iron, total                | iron
            manganèse                  | manganese
            aluminum                   | aluminium
            Chlorid                    | chloride
            chlorures                  | chloride
            Sulphate                   | sulfate
            SO₄²⁻                      | sulfate
            SO4--                      | sulfate
            nitrates                   | nitrate
            Nitrat                     | nitrate
            NO₃⁻                       | nitrate
            [NO3]                      | nitrate
            total ammonia              | ammonium
            PO₄³⁻                      | phosphate
            ortho-phosphate            | phosphate
            Kieselsäure                | silica
            Hydrogencarbonat           | bicarbonate
            Alkalinity, Bicarbonate    | bicarbonate alkalinity
            CO₃²⁻                      | carbonate
            Total Hardness             | hardness
            Hardness, Total            | hardness
            total_hardness             | hardness
            GH                         | hardness
            Gesamthärte                | hardness
            Härte                      | hardness
            dureté totale              | hardness
            Hardness (Calcium)         | calcium hardness
            Karbonathärte              | carbonate hardness
            temporary hardness         | carbonate hardness
            KH                         | alkalinity
            Carbonate hardness (KH)    | alkalinity
            Säurekapazität (pH 4.3)    | alkalinity
            Säurekapazität bis pH 4,3  | alkalinity
            TAC                        | alkalinity
            Hardness, compensated      | compensated hardness
            pH-Wert                    | pH
            Leitfähigkeit              | conductivity
            conductivité               | conductivity
            Conductivity at 25 °C      | conductivity
            Specific Conductance @ 25°C| conductivity
            Solids, Total Dissolved    | dissolved solids
            Temp                       | temperature
            température                | temperature
            TDS                        | dissolved solids
            Total dissolved solids     | dissolved solids
            Arsenic                    | arsenic
            Total Coliforms            | coliforms
            Turbidity                  | turbidity
            Dissolved oxygen           | oxygen
            vinyl chloride             | VOC
            Nitrate + Nitrite as N     | nitrogen
            """)
    void laboratoriesSpellAnalytesInManyWays(String spelling, String analyte) {
        assertEquals(
                Optional.of(analyte),
                AnalyteNames.find(spelling).map(match -> match.analyte().name()));
    }

    @Test
    void umlautsMayBeComposedOrNot() {
        assertEquals(
                "hardness",
                AnalyteNames.find("Gesamtha\u0308rte").orElseThrow().analyte().name());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Nitrate (as N)             | nitrate     | N
            Nitrate as N               | nitrate     | N
            NITRATE AS N               | nitrate     | N
            Nitrate, as NO3            | nitrate     | NO3
            nitrate (as no3)           | nitrate     | NO3
            NO3-N                      | nitrate     | N
            NO3-N as N                 | nitrate     | N
            Nitrate Nitrogen           | nitrate     | N
            Nitrate (as NO3-N)         | nitrate     | N
            NH4-N                      | ammonium    | N
            TAN                        | ammonium    | N
            PO4-P                      | phosphate   | P
            Phosphate as P2O5          | phosphate   | P2O5
            Silica as SiO2             | silica      | SiO2
            SILICA (AS SI)             | silica      | Si
            Sulfate-S                  | sulfate     | S
            HARDNESS AS CACO3          | hardness    | CaCO3
            Alkalinity, Total (as CaCO3) | alkalinity | CaCO3
            Calcium as Ca              | calcium     | Ca
            Calcium                    | calcium     | ''
            """)
    void aNameMaySayTheBasis(String spelling, String analyte, String basis) {
        AnalyteNames.Match match = AnalyteNames.find(spelling).orElseThrow();
        assertEquals(analyte, match.analyte().name());
        assertEquals(basis, match.basis());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            sodum                      | sodium
            soduim                     | sodium
            Calcim                     | calcium
            Clacium                    | calcium
            Magnesum                   | magnesium
            Chlorde                    | chloride
            Nitrte                     | nitrate
            hardnes                    | hardness
            alkalinty                  | alkalinity
            conductvity                | conductivity
            arsenc                     | arsenic
            Magnsum                    | magnesium
            Sodium, ICP-MS             | sodium
            Sodium 2018                | sodium
            K (ICP)                    | potassium
            EC at 18 °C                | conductivity
            our own nitrate            | nitrate
            NO3-N as NO3               | nitrate
            Hardness from the tap      | hardness
            """)
    void aNameCloseToAKnownOneIsAskedAbout(String spelling, String meant) {
        assertRefused(
                1,
                "unknown analyte '" + spelling + "': did you mean " + meant
                        + "? Correct it, say what it means, or leave the row out",
                spelling + " | 5 | mg/L",
                "chloride | 5 | mg/L");
    }

    @ParameterizedTest
    @FieldSource("UNKNOWN")
    void anUnknownNameIsListedAsSuch(String spelling) {
        LabReport report = read(spelling + " | 5 | mg/L", "chloride | 5 | mg/L");
        assertEquals(
                List.of(new UnusedRow(new ReportRow(1, spelling, "5", "mg/L", ""), "name not known")),
                report.unusedRows());
    }

    @Test
    void aNameIsAtMostAHundredCharactersLong() {
        String hundred = "sodium" + " ".repeat(88) + "(Na+)x";
        assertEquals(Optional.of("sodium"), AnalyteNames.near(hundred));
        assertEquals(Optional.empty(), AnalyteNames.near(hundred + "x"));
        String known = "nitrate" + " ".repeat(89) + "as N";
        assertEquals("N", AnalyteNames.find(known).orElseThrow().basis());
        assertEquals(Optional.empty(), AnalyteNames.find(" " + known));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            TA               | total alkalinity or alkalinity to phenolphthalein (titre alcalimétrique)
            total carbonate  | carbonate ions alone or all inorganic carbon
            Carbonate, total | carbonate ions alone or all inorganic carbon
            total phosphate  | orthophosphate or all phosphorus after digestion
            """)
    void aNameWithTwoMeaningsIsRefusedWithBoth(String spelling, String both) {
        assertRefused(
                2,
                "'" + spelling + "' may be " + both + ": say what it means, or leave the row out",
                "sodium | 5 | mg/L",
                spelling + " | 100 | mg/L | CaCO3");
    }

    @Test
    void knownRowsThatDoNotMatterAreListed() {
        LabReport report = read(
                "Arsenic | <0.001 | mg/L",
                "Total coliforms | absent | per 100 mL",
                "sodium | 23 | mg/L",
                "Turbidity | 0.3 | NTU",
                "Potassium | n/a | mg/L",
                "Chloride | ND | mg/L");
        assertEquals(
                List.of(
                        "Arsenic: known, goes into no water",
                        "Total coliforms: known, goes into no water",
                        "Turbidity: known, goes into no water",
                        "Potassium: no value",
                        "Chloride: not detected, with no limit stated: not counted as zero"),
                report.unusedRows().stream()
                        .map(unused -> unused.row().analyte() + ": " + unused.reason())
                        .toList());
        assertEquals(
                List.of("calcium", "magnesium", "potassium", "chloride", "sulfate", "alkalinity"),
                report.interpret().notMeasured());
    }

    @Test
    void aNameMustBeThere() {
        assertRefused(2, "the name of the analyte is missing beside '5'", "sodium | 5 | mg/L", " | 5 | mg/L");
    }

    @Test
    void anEmptyRowIsListedAsSuch() {
        LabReport report = read("sodium | 5 | mg/L", " | | mg/L | ");
        assertEquals(List.of(new UnusedRow(new ReportRow(2, "", "", "mg/L", ""), "empty")), report.unusedRows());
    }

    @Test
    void aReportWithoutAUsableRowIsRefused() {
        String message = "no row with a reading that can be used, such as hardness, alkalinity, calcium or sodium";
        assertRefused(0, message);
        assertRefused(0, message, "arsenic | 5 | µg/L", "krypton | 5 | mg/L", "sodium | ND | mg/L", "chloride | n/a");
    }

    @Test
    void everyNameOfTheDataFindsItsAnalyte() {
        List<String> names = List.of("calcium", "iodide", "hydroxide alkalinity", "borate", "hardness class", "sample");
        for (String name : names) {
            assertEquals(name, AnalyteNames.find(name).orElseThrow().analyte().name());
        }
        assertEquals(
                Kind.UNUSED, AnalyteNames.find("sample").orElseThrow().analyte().kind());
        assertNotEquals(
                Kind.UNUSED,
                AnalyteNames.find("hydroxide alkalinity")
                        .orElseThrow()
                        .analyte()
                        .kind());
    }

    @Test
    void twoNamesOfOneThingMustAgree() {
        assertTrue(AnalyteNames.find("calcium magnesium").isEmpty());
        assertTrue(AnalyteNames.find("nitrate NO3-N").isEmpty(), "one of them says as N");
        assertEquals(
                "magnesium",
                AnalyteNames.find("Magnesium: Mg2+").orElseThrow().analyte().name());
    }

    @Test
    void ironAndOtherMetalsAreCountedAsTheirIons() {
        Interpretation read = Reports.interpreted(
                "iron | 5.5845 | mg/L",
                "manganese | 54.938 | µg/L",
                "aluminium | 26.982 | mg/L",
                "zinc | 65.38 | ug/l");
        assertEquals(0.1, millimoles(Ion.IRON_II, read.water()), 1e-15); // molar masses as stated
        assertEquals(0.001, millimoles(Ion.MANGANESE_II, read.water()), 1e-15);
        assertEquals(1, millimoles(Ion.ALUMINIUM, read.water()), 1e-15);
        assertEquals(
                List.of(
                        "iron counted as dissolved Fe²⁺",
                        "manganese counted as dissolved Mn²⁺",
                        "zinc counted as dissolved Zn²⁺",
                        "aluminium counted as dissolved Al³⁺"),
                read.assumptions().stream().filter(a -> a.contains("dissolved")).toList());
    }

    @Test
    void namesOfOneIonMakeOneReading() {
        assertEquals(1, millimoles(Ion.SODIUM, water("Na | 22.990 | mg/L")), 1e-15);
        assertEquals(1, millimoles(Ion.SODIUM, water("natrium | 1 | mmol/L")), 0);
    }

    @ParameterizedTest
    @CsvSource({"Summe, °dH", "tap, gpg", "titration, °fH"})
    void anUnknownNameInAUnitOfHardnessOrAlkalinityIsAskedAbout(String name, String unit) {
        assertRefused(
                1,
                "unknown analyte '" + name + "' in " + unit
                        + ": is it hardness or alkalinity? Say what it means, or leave the row out",
                name + " | 8 | " + unit);
    }

    @Test
    void germanQualifiersMakeNoDifference() {
        LabReport report = Reports.read(
                "Eisen, gesamt | 1 | mg/L",
                "Calcium, gelöst | 40 | mg/L",
                "Ortho-Phosphat | 1 | mg/L | P",
                "Chlorid | 3 | mg/L");
        assertEquals(
                List.of("iron(II) 1 mg/L", "calcium 40 mg/L", "dihydrogen phosphate 1 mg/L as P", "chloride 3 mg/L"),
                report.readings());
        assertRefused(
                1,
                "'Phosphat, gesamt' may be orthophosphate or all phosphorus after digestion: say what it means, or leave the row out",
                "Phosphat, gesamt | 1 | mg/L");
    }
}
