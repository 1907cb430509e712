package evenwater.chemistry.substance;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaChargeTest {

    @ParameterizedTest(name = "{0} is {2}")
    @CsvSource({
        // raised digits and sign
        "Ca²⁺,          2, Ca²⁺",
        "Na⁺,           1, Na⁺",
        "Na¹⁺,          1, Na⁺",
        "Cl⁻,          -1, Cl⁻",
        "SO₄²⁻,        -2, SO₄²⁻",
        "PO₄³⁻,        -3, PO₄³⁻",
        "Zr⁴⁺,          4, Zr⁴⁺",
        "V⁵⁺,           5, V⁵⁺",
        "Mn⁷⁺,          7, Mn⁷⁺",
        "Os⁸⁺,          8, Os⁸⁺",
        "Ca₂⁺,          1, Ca₂⁺",
        // a caret, with or without braces, the sign first or last
        "Ca^2+,         2, Ca²⁺",
        "Ca^{2+},       2, Ca²⁺",
        "Ca^+2,         2, Ca²⁺",
        "Ca^{+2},       2, Ca²⁺",
        "Na^+,          1, Na⁺",
        "SO4^2-,       -2, SO₄²⁻",
        "SO4^-2,       -2, SO₄²⁻",
        "SO4^2−,       -2, SO₄²⁻",
        "SO4^–2,       -2, SO₄²⁻",
        "Cl^-,         -1, Cl⁻",
        // brackets around the charge
        "Ca(2+),        2, Ca²⁺",
        "Na(+),         1, Na⁺",
        "SO4(2-),      -2, SO₄²⁻",
        "SO4(2−),      -2, SO₄²⁻",
        // the sign first
        "Ca+2,          2, Ca²⁺",
        "Al+3,          3, Al³⁺",
        "SO4-2,        -2, SO₄²⁻",
        "SO4−2,        -2, SO₄²⁻",
        "SO4–2,        -2, SO₄²⁻",
        "Mn+7,          7, Mn⁷⁺",
        // repeated signs
        "Ca++,          2, Ca²⁺",
        "Al+++,         3, Al³⁺",
        "SO4--,        -2, SO₄²⁻",
        "Os++++++++,    8, Os⁸⁺",
        // one sign
        "Na+,           1, Na⁺",
        "Cl-,          -1, Cl⁻",
        "Cl−,          -1, Cl⁻",
        "Cl–,          -1, Cl⁻",
        "OH-,          -1, OH⁻",
        // a digit behind an element alone or a square bracket is the charge
        "Ca2+,          2, Ca²⁺",
        "Al3+,          3, Al³⁺",
        "N3-,          -3, N³⁻",
        "[SO4]2-,      -2, [SO₄]²⁻",
        "[Fe(CN)6]4-,  -4, [Fe(CN)₆]⁴⁻",
        "[Fe(CN)6]3−,  -3, [Fe(CN)₆]³⁻",
        // a digit behind more than one element is a count
        "NO3-,         -1, NO₃⁻",
        "NH4+,          1, NH₄⁺",
        "HCO3-,        -1, HCO₃⁻",
        "H2PO4-,       -1, H₂PO₄⁻",
        "B(OH)4-,      -1, B(OH)₄⁻",
        "NO3⁻,         -1, NO₃⁻",
        // the last of several digits is the charge if it is 2, 3 or 4
        "SO42-,        -2, SO₄²⁻",
        "SO42−,        -2, SO₄²⁻",
        "PO43-,        -3, PO₄³⁻",
        "P2O74-,       -4, P₂O₇⁴⁻",
        "Fe(CN)64-,    -4, Fe(CN)₆⁴⁻",
        "Hg22+,         2, Hg₂²⁺",
        "C602-,        -2, C₆₀²⁻",
        "C604-,        -4, C₆₀⁴⁻",
        "C61-,         -1, C₆₁⁻",
        "C65-,         -1, C₆₅⁻",
        // a count of 1 is never written, so 12 is a count
        "C10H12-,      -1, C₁₀H₁₂⁻",
        "C14+,          1, C₁₄⁺",
        // a plain digit behind a lowered one is the charge
        "SO₄2-,        -2, SO₄²⁻",
        "Hg₂2+,         2, Hg₂²⁺",
        "C₆₀4−,        -4, C₆₀⁴⁻",
        // neutral
        "CO2,           0, CO₂",
        "CaSO4·2H2O,    0, CaSO₄·2H₂O",
        // the charge of a hydrate stands at its end
        "[Fe(H2O)6]^3+, 3, [Fe(H₂O)₆]³⁺",
        "OH·H2O^-,     -1, OH·H₂O⁻",
    })
    void chargesMayBeWrittenInManyWays(String text, int charge, String canonical) {
        Formula formula = Formula.parse(text);
        assertAll(
                () -> assertEquals(charge, formula.chargeNumber()),
                () -> assertEquals(canonical, formula.toString()),
                () -> assertEquals(formula, Formula.parse(canonical)));
    }

    @Test
    void chargeAddsNoMass() {
        assertEquals(Formula.parse("SO4").molarMass(), Formula.parse("SO4^2-").molarMass());
    }
}
