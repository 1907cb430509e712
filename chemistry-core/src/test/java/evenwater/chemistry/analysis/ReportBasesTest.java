package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.Reports.alkalinity;
import static evenwater.chemistry.analysis.Reports.assertRefused;
import static evenwater.chemistry.analysis.Reports.hardness;
import static evenwater.chemistry.analysis.Reports.millimoles;
import static evenwater.chemistry.analysis.Reports.water;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.substance.Ion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReportBasesTest {

    /** Expected figures carry six digits: half a unit of the last. */
    private static final double SIX_DIGITS = 5e-6;

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # row                          ; ion; mmol/L by hand from the abridged atomic weights
            nitrate;4.1;mg/L;N             | NO3-   | 0.292711
            nitrate;4.1;mg/L;NO3           | NO3-   | 0.0661248
            nitrate;4.1;mg/L;NO3-          | NO3-   | 0.0661248
            nitrate;4.1;mg/L;NO₃⁻          | NO3-   | 0.0661248
            nitrate;4.1;mg/L;no3           | NO3-   | 0.0661248
            nitrate;4.1;mg/L;NO3-N         | NO3-   | 0.292711
            nitrate;4.1;mg/L;as N          | NO3-   | 0.292711
            nitrate;4.1;mg/L as N;         | NO3-   | 0.292711
            nitrate;4.1;mg/L N;            | NO3-   | 0.292711
            nitrate;4.1;mg/L (as N);       | NO3-   | 0.292711
            nitrate;4100;µg/L N;N          | NO3-   | 0.292711
            NO3-N;4.1;mg/L;                | NO3-   | 0.292711
            NO3-N;4.1;mg/L;N               | NO3-   | 0.292711
            NO3-N;4.1;mg/L;-               | NO3-   | 0.292711
            nitrate;0.3;mmol/L;            | NO3-   | 0.3
            nitrate;0.3;mmol/L;N           | NO3-   | 0.3
            nitrate;0.3;meq/L;             | NO3-   | 0.3
            nitrate;300;µmol/L;            | NO3-   | 0.3
            ammonia;1;mg/L;N               | NH4+   | 0.0713929
            ammonia;1;mg/L;NH3             | NH4+   | 0.0587165
            ammonia;1;mg/L;NH4             | NH4+   | 0.0554355
            nitrite;1;mg/L;N               | NO2-   | 0.0713929
            nitrite;1;mg/L;NO2             | NO2-   | 0.0217368
            phosphate;1;mg/L;P             | H2PO4- | 0.0322851
            phosphate;1;mg/L;PO4           | H2PO4- | 0.0105296
            phosphate;1;mg/L;P2O5          | H2PO4- | 0.0140902
            phosphate;1;mg/L;PO4-P         | H2PO4- | 0.0322851
            phosphate;0.1;mmol/L;P         | H2PO4- | 0.1
            silica;10;mg/L;SiO2            | SiO2   | 0.166436
            silica;10;mg/L;Si              | SiO2   | 0.356062
            silica;10;mg/L;SI              | SiO2   | 0.356062
            boron;1;mg/L;                  | B(OH)3 | 0.0925069
            boric acid;1;mg/L;B(OH)3       | B(OH)3 | 0.0161731
            sulfate;96.056;mg/L;           | SO4^2- | 1
            sulfate;2;meq/L;               | SO4^2- | 1
            SO4-S;32.06;mg/L;              | SO4^2- | 1
            calcium;100.086;mg/L;CaCO3     | Ca2+   | 1
            calcium;100.086;mg/L CACO3;    | Ca2+   | 1
            calcium;1;mmol/L;CaCO3         | Ca2+   | 1
            calcium;2;mval/L;              | Ca2+   | 1
            sodium;50.043;mg/L;CaCO3       | Na+    | 1
            sodium;22.99;ppm;              | Na+    | 1
            sodium;22990;ppb;              | Na+    | 1
            sodium;0.02299;g/L;            | Na+    | 1
            sodium;22.99;g/m3;             | Na+    | no
            """)
    void aMassIsReadByItsBasis(String row, String ion, String expected) {
        String[] fields = row.replace(';', '|').split("#", 2);
        if (expected.equals("no")) {
            assertRefused(
                    1,
                    "sodium '22.99 g/m3': unknown unit, expected one of "
                            + "g/L, mg/L, µg/L, kg/L, kg/m³, mg/m³, gr/gal(US), lb/gal(US)",
                    fields[0]);
            return;
        }
        double millimoles = Double.parseDouble(expected);
        assertEquals(millimoles, millimoles(Ion.parse(ion), water(fields[0])), millimoles * SIX_DIGITS);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            nitrate   | it may be as N (0.571 mmol/L) or as NO₃⁻ (0.129 mmol/L): state the basis
            nitrite   | it may be as N (0.571 mmol/L) or as NO₂⁻ (0.174 mmol/L): state the basis
            ammonia   | it may be as N (0.571 mmol/L) or as NH₄⁺ (0.443 mmol/L) or as NH₃ (0.47 mmol/L): state the basis
            phosphate | it may be as P (0.258 mmol/L) or as PO₄³⁻ (0.0842 mmol/L) or as P₂O₅ (0.113 mmol/L): state the basis
            silica    | it may be as SiO₂ (0.133 mmol/L) or as Si (0.285 mmol/L): state the basis
            boric acid| it may be as B (0.74 mmol/L) or as B(OH)₃ (0.129 mmol/L): state the basis
            bicarbonate alkalinity | it may be as CaCO₃ (0.16 mmol/L) or as HCO₃⁻ (0.131 mmol/L): state the basis
            """)
    void aBlankBasisIsRefusedWithAllReadings(String analyte, String problem) {
        assertRefused(1, analyte + " '8 mg/L': " + problem, analyte + " | 8 | mg/L | ");
        assertRefused(1, analyte + " '8 ppm': " + problem, analyte + " | 8 | ppm | ");
        assertRefused(1, analyte + " '8 mg/L as n/a': " + problem, analyte + " | 8 | mg/L | n/a");
        assertRefused(1, analyte + " '8000 ppb': " + problem, analyte + " | 8000 | ppb | ");
    }

    @Test
    void aBlankBasisOfAMassPerMassIsRefusedToo() {
        assertRefused(
                1,
                "nitrate '8 mg/kg': it may be as N (in mg/kg) or as NO₃⁻ (in mg/kg): state the basis",
                "nitrate | 8 | mg/kg");
    }

    @Test
    void grainsWithoutABasisMayBeOfCalciumCarbonate() {
        assertRefused(
                1,
                "calcium '10 gpg': it may be as Ca (4.27 mmol/L) or as CaCO₃ (1.71 mmol/L): state the basis",
                "calcium | 10 | gpg");
        assertRefused(
                1,
                "nitrate '10 gr/gal(US)': it may be as N (12.2 mmol/L) or as NO₃⁻ (2.76 mmol/L) or as CaCO₃ (3.42 mmol/L): "
                        + "state the basis",
                "nitrate | 10 | gr/gal(US)");
        assertRefused(
                1,
                "silica '10 gpg': it may be as SiO₂ (2.85 mmol/L) or as Si (6.1 mmol/L): state the basis",
                "silica | 10 | gpg");
        assertRefused(
                1,
                "bicarbonate alkalinity '10 gpg': it may be as CaCO₃ (3.42 mmol/L) or as HCO₃⁻ (2.81 mmol/L): state the basis",
                "bicarbonate alkalinity | 10 | gpg");
        assertEquals(171.180610 / 22.990, millimoles(Ion.SODIUM, water("sodium | 10 | gpg | Na")), 1e-7);
        assertEquals(171.180610 / 50.043, millimoles(Ion.SODIUM, water("sodium | 10 | gpg | CaCO3")), 1e-7);
        assertEquals(171.180610 / 28.085, millimoles(Ion.SILICA, water("silica as Si | 10 | gpg")), 1e-7);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Nitrate (as N);8;mg/L;NO3        | 'Nitrate (as N)' says as N, but the column says as NO3
            NO3-N;8;mg/L;NO3-                | 'NO3-N' says as N, but the column says as NO3-
            NO3-N;8;mg/L NO3;                | 'NO3-N' says as N, but the unit says as NO3
            nitrate;8;mg/L as N;NO3          | the unit says as N, but the column says as NO3
            NO3-N;8;mg/L as N;NO3            | 'NO3-N' says as N, but the unit says as N, but the column says as NO3
            hardness;100;mg/L CaCO3;CaO      | the unit says as CaCO3, but the column says as CaO
            hardness as CaCO3;100;mg/L;CaO   | 'hardness as CaCO3' says as CaCO3, but the column says as CaO
            nitrate as xx;8;mg/L;yy          | 'nitrate as xx' says as xx, but the column says as yy
            """)
    void contradictoryBasesAreRefused(String row, String message) {
        assertRefused(1, message, row.replace(';', '|'));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Nitrate as NO3 | 62.004 | mg/L | NO3-", "Nitrate as NO3 | 62.004 | mg/L NO₃⁻ | no3"})
    void theSameBasisMayBeSpelledTwoWays(String row) {
        assertEquals(1, millimoles(Ion.NITRATE, water(row)), 1e-12);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            phosphate;0.1;mmol/L;P2O5 | phosphate '0.1 mmol/L as P2O5': it may be moles of H₂PO₄⁻ or of P₂O₅: leave the basis out, or state a mass
            sodium;2;mmol/L;CaCO3     | sodium '2 mmol/L as CaCO3': it may be moles of Na⁺ or of CaCO₃: leave the basis out, or state a mass
            phosphate;0.3;meq/L;      | phosphate '0.3 meq/L': its equivalents may count one charge (as H₂PO₄⁻) or three (as PO₄³⁻): state mmol/L or mg/L
            phosphate;0.3;mval/L;     | phosphate '0.3 mval/L': its equivalents may count one charge (as H₂PO₄⁻) or three (as PO₄³⁻): state mmol/L or mg/L
            phosphate;3;mg/L;CaCO3    | phosphate '3 mg/L as CaCO3': its equivalents may count one charge (as H₂PO₄⁻) or three (as PO₄³⁻): state mmol/L or mg/L
            silica;2;meq/L;           | silica '2 meq/L': SiO₂ has no charge and so no equivalents
            calcium;8;mg/L;N          | calcium '8 mg/L as N': Ca²⁺ cannot be expressed as N: they share no element other than hydrogen and oxygen
            calcium;8;mg/L;Xx         | calcium '8 mg/L as Xx': 'Xx' is no element with a standard atomic weight
            calcium;8;mmol/L;Xx       | calcium '8 mmol/L as Xx': 'Xx' is no element with a standard atomic weight
            sodium;8;;                | sodium '8': the unit is missing, such as mg/L or mmol/L
            sodium;8;;Na              | sodium '8 as Na': the unit is missing, such as mg/L or mmol/L
            sodium;8;meq;             | sodium '8 meq': unknown unit, expected one of g/L, mg/L, µg/L, kg/L, kg/m³, mg/m³, gr/gal(US), lb/gal(US)
            sodium;8;eq/kg;           | sodium '8 eq/kg': unknown unit, expected one of eq/L, meq/L, µeq/L, eq/m³
            sodium;8;mmol/kg;         | sodium '8 mmol/kg': unknown unit, expected one of mol/L, mmol/L, µmol/L, nmol/L, mol/m³; a mass such as mg/L needs the substance and the basis: ask the ion to read it
            nitrate;8;°dH;            | nitrate '8 °dH': unknown unit, expected one of g/L, mg/L, µg/L, kg/L, kg/m³, mg/m³, gr/gal(US), lb/gal(US)
            """)
    void whatFitsNoIonIsRefused(String row, String message) {
        assertRefused(1, message, row.replace(';', '|'));
    }

    @Test
    void hardnessAndAlkalinityHaveTheirBasisInTheUnit() {
        double expected = 376.597342; // 22 gpg by the table of scales, nine digits
        assertEquals(22 * 0.171033522, hardness(water("hardness | " + expected + " | mg/L | CaCO3")), 5e-8);
        assertEquals(
                22 * 0.171033522, hardness(water("hardness as CaCO3 | " + expected + " | mg/L CaCO3 | CACO3")), 5e-8);
        assertEquals(22 * 0.171033522, hardness(water("hardness | " + expected + " | mg CaCO3/L | CaCO3")), 5e-8);
        assertEquals(1, hardness(water("hardness | 56.077 | mg/L | CaO")), 1e-12);
        assertEquals(3, alkalinity(water("alkalinity | 183.048 | mg/L | HCO3")), 1e-12);
        assertEquals(3, alkalinity(water("alkalinity as CaCO3 | 150.129 | mg/L")), 1e-12);
    }

    @Test
    void longTextsAreNoBases() {
        String blanks = " ".repeat(40 - "mg/LN".length());
        assertEquals(1, millimoles(Ion.NITRATE, water("nitrate | 14.007 | mg/L" + blanks + "N")), 1e-12);
        assertRefused(
                1,
                "nitrate '1 mg/L" + blanks + " N': unknown unit, expected one of "
                        + "g/L, mg/L, µg/L, kg/L, kg/m³, mg/m³, gr/gal(US), lb/gal(US)",
                "nitrate | 1 | mg/L" + blanks + " N");
        assertEquals("N", StatedUnit.plain("x".repeat(18) + "-N"));
        assertEquals("x".repeat(19) + "-N", StatedUnit.plain("x".repeat(19) + "-N"));
    }

    @Test
    void basesAreComparedByTheirAtoms() {
        assertTrue(StatedUnit.same("NO3", "NO₃⁻"));
        assertFalse(StatedUnit.same("NO3", "N"));
        assertFalse(StatedUnit.same("NO3", "NO2"));
        assertTrue(StatedUnit.same("25 °C", "25 °c"));
        assertFalse(StatedUnit.same("", "CaCO3"));
    }
}
