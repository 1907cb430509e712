package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.UnreadableTextException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts of concentrations of an ion, with the basis of a mass. */
class ConcentrationTextTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "4.1 mg/L N",
                "4.1 mg/L as N",
                "4.1 mg/L of N",
                "4.1mg/L N",
                " 4.1 mg/L  as  N ",
                "+4.1 mg/l as N",
                "41e-1 mg/L as N",
                "4.1\u00A0mg/L\u00A0N",
                "4.1\u202Fmg/L as\u00A0N",
            })
    void nitrateMayBeStatedAsNitrogen(String text) {
        AmountConcentration read = Ion.NITRATE.parseConcentration(text);
        assertEquals(AmountConcentration.of(4.1, Ion.NITRATE.milligramPerLitreAs(Element.NITROGEN)), read);
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({ // text as read, printed
        "Ca²⁺,  80 mg/L Ca,              80 mg/L Ca",
        "Ca²⁺,  80 mg/L Ca2+,            80 mg/L Ca²⁺",
        "Ca²⁺,  200 mg/L as CaCO3,       200 mg/L CaCO₃",
        "Ca²⁺,  11.7 gr/gal(US) CaCO₃,   11.7 gr/gal(US) CaCO₃",
        "Ca²⁺,  0.1 g/L as CaO,          0.1 g/L CaO",
        "Ca²⁺,  2 mmol/L,                2 mmol/L",
        "Ca²⁺,  2mmol/L,                 2 mmol/L",
        "Ca²⁺,  2e3 µmol/L,              2000 µmol/L",
        "Ca²⁺,  4 meq/L,                 2 mmol/L",
        "Ca²⁺,  4 mval/L,                2 mmol/L",
        "Ca²⁺,  4 MEQ/L,                 2 mmol/L",
        "Ca²⁺,  4 MVAL/L,                2 mmol/L",
        "Ca²⁺,  0.004 eq/L,              2 mmol/L",
        "Ca²⁺,  4eq/L,                   2000 mmol/L",
        "Ca²⁺,  -4 eq/m3,                -2 mmol/L",
        "Na⁺,   4 meq/L,                 4 mmol/L",
        "NO₃⁻,  50 mg/L NO3-,            50 mg/L NO₃⁻",
        "PO₄³⁻, 0.5 mg/L P2O5,           0.5 mg/L P₂O₅",
        "SiO₂,  12 mg/L as SiO2,         12 mg/L SiO₂",
        "Fe²⁺,  0.000001 µg/L Fe,        1.0E-6 µg/L Fe",
        "CO₂,   10 mg/L CO2,             10 mg/L CO₂",
    })
    void textsAreReadAndPrintedAsStated(String symbol, String text, String printed) {
        Ion ion = Ion.parse(symbol);
        AmountConcentration read = ion.parseConcentration(text);
        assertEquals(printed, read.toString());
        assertEquals(read, ion.parseConcentration(printed));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "Ca²⁺,  4 meq/L,             2",
        "SO₄²⁻, 96.056 mg/L SO₄²⁻,   1",
        "NO₃⁻,  14.007 mg/L as N,    1",
        "Na⁺,   50.043 mg/L CaCO3,   1",
    })
    void textsMeanAmounts(String symbol, String text, double millimolesPerLitre) {
        AmountConcentration read = Ion.parse(symbol).parseConcentration(text);
        assertEquals(millimolesPerLitre, read.in(MILLIMOLE_PER_LITRE), 2e-16); // one rounding
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource({
        "NO₃⁻, 50 mg/L,         a mass needs a basis: mg/L as NO₃⁻ or as another formula, 7",
        "NO₃⁻, 50 µg/l,         a mass needs a basis: µg/l as NO₃⁻ or as another formula, 7",
        "Ca²⁺, 10 gpg,          a mass needs a basis: gpg as Ca²⁺ or as another formula, 6",
        "NO₃⁻, 50 mg/L as P,    NO₃⁻ cannot be expressed as P: they share no element other than hydrogen and oxygen, 11",
        "CO₂,  50 mg/L CaCO3,   CO₂ has no charge and so no amount as CaCO₃, 8",
        "CO₂,  2 meq/L,         CO₂ has no charge and so no equivalents, 0",
        "Ca²⁺, 1e308 eq/L,      1.0E308 eq/L is too large for a double in meq/L, 0",
        "Ca²⁺, '',              'expected a number with ''.'', a unit and a basis, such as 4.1 mg/L N', 0",
        "Ca²⁺, abc,             'expected a number with ''.'', a unit and a basis, such as 4.1 mg/L N', 0",
        "Ca²⁺, 4.1,             'expected a number with ''.'', a unit and a basis, such as 4.1 mg/L N', 0",
        "Ca²⁺, 4 mg/L as Ca or, 'expected a number with ''.'', a unit and a basis, such as 4.1 mg/L N', 0",
        "Ca²⁺, −4 mg/L as Ca,   'expected a number with ''.'', a unit and a basis, such as 4.1 mg/L N', 0",
        "Ca²⁺, '4,1 mg/L Ca',   a comma may be a decimal sign or a thousand: use a point and no grouping, 1",
        "Ca²⁺, '4,1 mmol/L',    a comma may be a decimal sign or a thousand: use a point and no grouping, 1",
        "Ca²⁺, mg/L Ca,         'expected a number with ''.'', a unit and a basis, such as 4.1 mg/L N', 0",
    })
    void unreadableConcentrationsAreRefused(String symbol, String text, String problem, int index) {
        Ion ion = Ion.parse(symbol);
        UnreadableTextException e = assertThrows(UnreadableTextException.class, () -> ion.parseConcentration(text));
        assertAll(
                () -> assertEquals(
                        "cannot read concentration of " + ion + " '" + text + "': " + problem + ", at index " + index,
                        e.getMessage()),
                () -> assertEquals(index, e.index()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "cannot read formula 'Xx': 'Xx' is no element with a standard atomic weight, at index 0 | 4.1 mg/L as Xx",
                "cannot read formula 'as': expected an element such as Ca, at index 0 | 4.1 mg/L as",
                "cannot read mass concentration 'mmol/L': unknown unit, expected one of g/L, mg/L, µg/L, kg/L, kg/m³, mg/m³, "
                        + "gr/gal(US), lb/gal(US), at index 0 | 4.1 mmol/L as N",
                "cannot read mass concentration 'mg/kg': 'mg/kg' may be mg/L in dilute water or mg/kg, which needs a density: "
                        + "see MassConcentration.ofMassFraction, at index 0 | 4.1 mg/kg as N",
                "cannot read amount concentration '4.1 ml': unknown unit, expected one of mol/L, mmol/L, µmol/L, nmol/L, mol/m³; "
                        + "a mass such as mg/L needs the substance and the basis: ask the ion to read it, at index 4 | 4.1 ml",
                "cannot read equivalent concentration '1 meq/l2': unknown unit, expected one of eq/L, meq/L, µeq/L, eq/m³, "
                        + "at index 2 | 1 meq/l2",
                "cannot read mass concentration '1e999 g/L': the number is too large, at index 0 | 1e999 mg/L N",
                "cannot read mass concentration '. g/L': expected a number with '.' and a unit such as g/L, at index 0 | . mg/L N",
            })
    void partsThatCannotBeReadAreNamed(String messageAndText) {
        String[] parts = messageAndText.split(" \\| ", -1);
        UnreadableTextException e =
                assertThrows(UnreadableTextException.class, () -> Ion.NITRATE.parseConcentration(parts[1]));
        assertEquals(parts[0], e.getMessage());
    }

    @Test
    void textsMayHave200Characters() {
        String padded = "4.1 mg/L" + " ".repeat(191) + "N";
        assertEquals(200, padded.length());
        assertEquals("4.1 mg/L N", Ion.NITRATE.parseConcentration(padded).toString());
        String longer = padded + " ";
        UnreadableTextException e =
                assertThrows(UnreadableTextException.class, () -> Ion.NITRATE.parseConcentration(longer));
        assertEquals(
                "cannot read concentration of NO₃⁻ '" + padded.substring(0, 60)
                        + "…': expected a number with '.', a unit and a basis, such as 4.1 mg/L N, at index 0",
                e.getMessage());
    }

    @Test
    void aBasisMayNameIonAndElement() {
        assertEquals(Ion.NITRATE.parseConcentration("8 mg/L as N"), Ion.NITRATE.parseConcentration("8 mg/L NO3-N"));
        assertEquals(Ion.AMMONIUM.parseConcentration("0.5 mg/L N"), Ion.AMMONIUM.parseConcentration("0.5 mg/L NH3-N"));
    }
}
