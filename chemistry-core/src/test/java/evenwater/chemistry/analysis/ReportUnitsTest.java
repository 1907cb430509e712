package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.alkalinity;
import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.hardness;
import static evenwater.chemistry.analysis.Reports.interpreted;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.read;
import static evenwater.chemistry.analysis.Reports.water;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReportUnitsTest {

    /** The factors of the table of scales have nine digits. */
    private static final double NINE_DIGITS = 5e-9;

    private static final String TRADE = " read as grain per US gallon, as the softening trade does";

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            22;gr/gal;CaCO3        | 3.762737484
            22;gpg;                | 3.762737484
            22;gpg;CaCO3           | 3.762737484
            22;grains per gallon;  | 3.762737484
            22;grains/gal;CaCO3    | 3.762737484
            22;gr/US gal;          | 3.762737484
            10;°dH;                | 1.78326230
            10;°fH;                | 0.999140739
            10;°fH;CaCO3           | 0.999140739
            10;°e;                 | 1.42415198
            10;gr/imp gal;CaCO3    | 1.42415198
            100;mg/L;CaCO3         | 0.999140739
            100;ppm CaCO3;         | 0.999140739
            100;mg/L CaCO3;        | 0.999140739
            100;ppm;CaCO3          | 0.999140739
            3;mmol/L;              | 3
            3;meq/L;               | 1.5
            3;mol/m³;              | 3
            """)
    void hardnessHasManyScales(String row, double millimoles) {
        assertEquals(millimoles, hardness(water("hardness | " + row.replace(';', '|'))), millimoles * NINE_DIGITS);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            9.5;°dH;               | 3.38819837
            9.5;dKH;               | 3.38819837
            10;°fH;                | 1.99828148
            10;°e;                 | 2.84830396
            10;gpg;CaCO3           | 3.42067043
            10;gr/gal;CaCO3        | 3.42067043
            100;mg/L;CaCO3         | 1.99828148
            3;meq/L;               | 3
            3;mval/L;              | 3
            3;mmol/L;              | 3
            -1;mmol/L;             | -1
            """)
    void alkalinityHasManyScales(String row, double milliequivalents) {
        assertEquals(
                milliequivalents,
                alkalinity(water("alkalinity | " + row.replace(';', '|'))),
                Math.abs(milliequivalents) * NINE_DIGITS);
    }

    @Test
    void theRowDecidesWhichDegreeAGermanOneIs() {
        Interpretation read = interpreted("hardness | 9.5 | °dH", "alkalinity | 9.5 | °dH");
        assertEquals(9.5 * 0.178326230, hardness(read.water()), 9.5 * NINE_DIGITS);
        assertEquals(9.5 * 0.356652460, alkalinity(read.water()), 9.5 * NINE_DIGITS);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            hardness;22;gr/gal;CaCO3            | hardness in gr/gal
            Total hardness;22;grains per gal;   | Total hardness in grains per gal
            hardness;22;gr/gal CaCO3;           | hardness in gr/gal CaCO3
            alkalinity;10;grain/gal;            | alkalinity in grain/gal
            calcium;10;gr/gal;CaCO3             | calcium in gr/gal
            calcium;10;grains per gallon;CaCO3  | calcium in grains per gallon
            """)
    void aGallonWithoutACountryIsTheTradesAndSaidToBe(String row, String note) {
        assertEquals(List.of(note + TRADE), read(row.replace(';', '|')).notes());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hardness | 22 | gpg",
                "hardness | 22 | gr/US gal",
                "hardness | 22 | gr/imp gal | CaCO3",
                "calcium | 10 | gpg | CaCO3",
                "calcium | 10 | gr/gal(US) | CaCO3",
                "sodium | 5 | gr/gal(US) | Na",
                "hardness | 22 | gr/UK gal"
            })
    void aGallonWithACountryNeedsNoNote(String row) {
        assertEquals(List.of(), read(row).notes());
    }

    @Test
    void grainsOfAnIonAreOnlyReadAsCalciumCarbonate() {
        assertEquals(1.71033522, millimoles(Ion.CALCIUM, water("calcium | 10 | gr/gal | CaCO3")), 1.7 * NINE_DIGITS);
        assertEquals(1.71033522, millimoles(Ion.CALCIUM, water("calcium | 10 | gpg | CaCO3")), 1.7 * NINE_DIGITS);
        assertRefused(
                1,
                "sodium '5 gr/gal': 'gr/gal' may be grains per US gallon (write gr/gal(US)) or per imperial gallon",
                "sodium | 5 | gr/gal");
        assertRefused(
                1,
                "sodium '5 grains per gallon as Na': 'gr/gal' may be grains per US gallon (write gr/gal(US)) "
                        + "or per imperial gallon",
                "sodium | 5 | grains per gallon | Na");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            hardness;376;mg/L;       | 'mg/L' may be mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one
            hardness;376;ppm;        | 'ppm' may be mg/L as CaCO3 (100.086 mg/mmol) or as CaO (56.077 mg/mmol): add one
            hardness;22;gr;          | 'gr' may be grains per US gallon (write gpg) or grams
            hardness;22;gr;CaCO3     | 'gr' may be grains per US gallon (write gpg) or grams
            hardness;22;°F;          | '°F' may be French degrees (write °fH) or degrees Fahrenheit
            hardness;22;°;           | '°' may be German (°dH), French (°fH) or English (°e) degrees
            alkalinity;200;mg/L;     | 'mg/L' may be mg/L as CaCO3 (50.043 mg/meq) or as HCO3 (61.016 mg/meq): add one
            alkalinity;22;°F;        | '°F' may be French degrees (write °fH) or degrees Fahrenheit
            alkalinity;22;degrees;   | 'degrees' may be German (°dKH), French (°fH) or English (°e) degrees
            temperature;77;°;        | '°' may be degrees Celsius (write °C) or Fahrenheit (write °F)
            conductivity;640;µS;     | 'µS' may be µS/cm or µS/m: add the length
            dissolved solids;4;mg/kg;| 'mg/kg' may be mg/L in dilute water or mg/kg, which needs a density: see MassConcentration.ofMassFraction
            dissolved solids;4;lb/gal;| 'lb/gal' may be pounds per US gallon (write lb/gal(US)) or per imperial gallon
            """)
    void aUnitWithTwoReadingsIsRefusedWithBoth(String row, String problem) {
        String[] f = row.split(";", -1);
        String basis = f[3].isEmpty() ? "" : " as " + f[3];
        assertRefused(1, f[0] + " '" + f[1] + " " + f[2] + basis + "': " + problem, row.replace(';', '|'));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            hardness;22;foo;         | hardness '22 foo': unknown unit, expected one of mmol/L, mol/m³, meq/L, mg/L CaCO3, mg/L CaO, °dH, °fH, °e, gpg
            hardness;22;;            | hardness '22': a unit is missing, expected one of mmol/L, mol/m³, meq/L, mg/L CaCO3, mg/L CaO, °dH, °fH, °e, gpg
            hardness;22;°dH;CaCO3    | hardness '22 °dH as CaCO3': unknown unit, expected one of mmol/L, mol/m³, meq/L, mg/L CaCO3, mg/L CaO, °dH, °fH, °e, gpg
            hardness;22;mg/L;Ca      | hardness '22 mg/L as Ca': unknown unit, expected one of mmol/L, mol/m³, meq/L, mg/L CaCO3, mg/L CaO, °dH, °fH, °e, gpg
            KH;10;;                  | KH '10': a unit is missing, expected one of meq/L, mmol/L, mg/L CaCO3, mg/L HCO3, °dKH, °fH, °e, gpg
            conductivity;640;;       | conductivity '640': a unit is missing, expected one of µS/cm, mS/cm, mS/m, S/m
            conductivity;640;µS/cm at 18 °C; | conductivity '640 µS/cm at 18 °C': unknown unit, expected one of µS/cm, mS/cm, mS/m, S/m
            conductivity;640;µS/cm;18 °C | conductivity '640 µS/cm as 18 °C': unknown unit, expected one of µS/cm, mS/cm, mS/m, S/m
            temperature;20;;         | temperature '20': a unit is missing, expected one of °C, °F, K
            temperature;20;°R;       | temperature '20 °R': unknown unit, expected one of °C, °F, K
            """)
    void anUnknownOrMissingUnitIsRefused(String row, String message) {
        assertRefused(1, message, row.replace(';', '|'));
    }

    @Test
    void partsPerMillionAreReadAsMilligramsPerLitreAndSaidToBe() {
        LabReport report =
                read("sodium | 23 | ppm", "nitrate | 4.1 | PPM | N", "chloride | 30 | ppb", "TDS | 400 | ppm");
        assertEquals(
                List.of(
                        "sodium in ppm read as mg/L",
                        "nitrate in ppm read as mg/L",
                        "chloride in ppb read as µg/L",
                        "TDS taken as weighed by a laboratory; what a meter shows is conductivity times a factor",
                        "TDS in ppm read as mg/L"),
                report.notes());
        assertEquals(report.notes(), report.interpret().assumptions().subList(0, 5));
    }

    @ParameterizedTest
    @CsvSource({"mg/kg, 23", "µg/kg, 23000", "ug/kg, 23000", "μg/kg, 23000"})
    void milligramsPerKilogramNeedTheDensity(String unit, double value) {
        assertRefused(
                1,
                "sodium '" + Math.round(value) + " " + unit
                        + "': a reading by mass needs the density of the water: state it as an option",
                "sodium | " + Math.round(value) + " | " + unit);
        ReportOptions options =
                ReportOptions.none().density(MassConcentration.of(1.025, MassConcentration.KILOGRAM_PER_LITRE));
        LabReport report = read(options, "sodium | " + value + " | " + unit);
        assertEquals(
                23 * 1.025 / 22.990, millimoles(Ion.SODIUM, report.interpret().water()), 1e-12);
    }

    @Test
    void moreThanAKilogramPerKilogramIsRefused() {
        ReportOptions options =
                ReportOptions.none().density(MassConcentration.of(1, MassConcentration.KILOGRAM_PER_LITRE));
        assertRefused(
                1,
                "sodium '1000001 mg/kg': mass fraction must be from 0 to 1, but was 1000001 mg/kg",
                options,
                "sodium | 1000001 | mg/kg");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "640 | µS/cm",
                "640 | uS/cm",
                "640 | μS/cm",
                "0.64 | mS/cm",
                "64 | mS/m",
                "640 | µS/cm @25°C",
                "640 | µS/cm @ 25 °C",
                "640 | µS/cm at 25 °C",
                "640 | µS/cm (25 °C)",
                "640 | µS/cm (at 25 °C)",
                "640 | µS/cm 25 C",
                "640 | µS/cm @25",
                "640 | µS/cm | 25 °C",
                "640 | µS/cm | at 25 °C",
                "640 | µS/cm | as 25 °C",
                "640 | µS/cm | -",
                "640 | µmho/cm",
                "640 | µS/cm @25.0 °C",
                "640 | µS/cm @25degC"
            })
    void conductivityIsThatAt25Degrees(String fields) {
        double read = read("conductivity | " + fields)
                .conductivity()
                .orElseThrow()
                .in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(640, read, 1e-12 * 640);
    }

    @ParameterizedTest
    @CsvSource({"25, °C, 25", "77, °F, 25", "298.15, K, 25", "0, °C, 0", "100, °C, 100", "12.5, degC, 12.5", "20, C, 20"
    })
    void temperaturesHaveThreeScales(String value, String unit, double celsius) {
        Interpretation read = interpreted("temperature | " + value + " | " + unit, "sodium | 1 | mmol/L");
        // kelvin and back costs some 1e-13
        assertEquals(celsius, read.water().temperature().in(WaterUnits.CELSIUS), 1e-12 * 300);
        assertTrue(read.assumptions().stream().noneMatch(a -> a.contains("temperature")));
    }

    @Test
    void withoutATemperatureItIs25DegreesAndSaidToBe() {
        Interpretation read = interpreted("sodium | 1 | mmol/L");
        assertEquals(25, read.water().temperature().in(WaterUnits.CELSIUS), 1e-12 * 300);
        assertTrue(read.assumptions().contains("temperature not stated: 25 °C"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-", "pH", "pH units", "units", "SU", "S.U.", "standard units", "1"})
    void pHHasNoUnit(String unit) {
        LabReport report = read("pH | 7.6 | " + unit + " | ");
        assertEquals(OptionalDouble.of(7.6), report.pH());
    }

    @Test
    void whatIsExpressedAsNothingIsNotExpressedAsSomething() {
        assertRefused(1, "pH has no basis, but the row says as N", "pH | 7 | | N");
        assertRefused(1, "temperature has no basis, but the row says as N", "temperature | 7 | °C | N");
        assertRefused(1, "TDS has no basis, but the row says as NaCl", "TDS | 400 | mg/L | NaCl");
        assertRefused(1, "TDS as NaCl has no basis, but the row says as NaCl", "TDS as NaCl | 400 | ppm");
        assertRefused(1, "pH has no unit, but was 7 mg/L", "pH | 7 | mg/L");
    }

    @Test
    void dissolvedSolidsAreAMass() {
        Optional<MassConcentration> solids =
                read("residue at 180 °C | 0.4 | g/L | -").dissolvedSolids();
        assertEquals(400, solids.orElseThrow().in(MassConcentration.MILLIGRAM_PER_LITRE), 1e-12);
        LabReport none = read("sodium | 1 | mmol/L");
        assertEquals(Optional.empty(), none.dissolvedSolids());
        assertEquals(Optional.empty(), none.conductivity());
        assertEquals(Optional.empty(), none.compensatedHardness());
        assertEquals(OptionalDouble.empty(), none.pH());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '!',
            value = {
                "conductivity | 500 | µS/cm at 20 °C",
                "conductivity | 500 | µS/cm | 20 °C",
                "conductivity (20 °C) | 500 | µS/cm",
                "Conductivity at 20°C | 500 | uS/cm",
                "elektrische Leitfähigkeit bei 20 °C | 500 | µS/cm",
                "EC20 | 0.5 | mS/cm"
            })
    void aConductivityAt20DegreesIsTakenTo25(String row) {
        LabReport report = Reports.read(row);
        // ISO 7888:1985, correction factor 1.116 from 20 to 25 °C for natural waters; from memory
        assertEquals(558, report.conductivity().orElseThrow().getValue(), 1e-9);
        assertEquals(
                List.of(row.substring(0, row.indexOf(" |")) + " taken to 25 °C by the factor 1.116 of ISO 7888"),
                report.notes());
    }

    @Test
    void aResidueIsWeighedBeyondDoubt() {
        assertEquals(List.of(), Reports.read("residue at 180 °C | 400 | mg/L").notes());
    }
}
