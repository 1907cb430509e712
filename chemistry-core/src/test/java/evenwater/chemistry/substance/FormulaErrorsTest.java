package evenwater.chemistry.substance;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.UnreadableTextException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FormulaErrorsTest {

    @ParameterizedTest(name = "''{0}''")
    @CsvSource({
        // nothing to read
        "'',              expected an element such as Ca, 0",
        "'  ',            expected an element such as Ca, 2",
        "ca,              expected an element such as Ca, 0",
        "2H2O,            expected an element such as Ca, 0",
        "+,               expected an element such as Ca, 0",
        "2+,              expected an element such as Ca, 0",
        "²⁺,              expected an element such as Ca, 0",
        "^2+,             expected an element such as Ca, 0",
        "Ca(),            expected an element such as Ca, 3",
        "Ca(2),           expected an element such as Ca, 3",
        "Ca·,             expected an element such as Ca, 3",
        "Ca·2,            expected an element such as Ca, 4",
        "Ca··H2O,         expected an element such as Ca, 3",
        "CaSO₄·₂H₂O,      expected an element such as Ca, 6",
        // no element
        "Xx,              'Xx' is no element with a standard atomic weight, 0",
        "Zz,              'Zz' is no element with a standard atomic weight, 0",
        "NaXy2,           'Xy' is no element with a standard atomic weight, 2",
        "' Xx',           'Xx' is no element with a standard atomic weight, 1",
        "Tc,              'Tc' is no element with a standard atomic weight, 0",
        "CAlcium,         'Alcium' is no element with a standard atomic weight, 1",
        "NACL,            'A' is no element with a standard atomic weight, 1",
        // brackets
        "Ca(OH,           expected ')', 5",
        "Ca(OH]2,         expected ')', 5",
        "[Ca(OH)2},       expected ']', 8",
        "{Ca,             expected '}', 3",
        "'Ca(OH,)',       expected ')', 5",
        "(Ca·H2O),        expected ')', 3",
        "Ca),             ')' is not expected here, 2",
        "(((((((((((Ca,   groups are nested deeper than 10, 10",
        "[([([([([([(Ca,  groups are nested deeper than 10, 10",
        // counts
        "Ca0,             a count starts with 1 to 9, 2",
        "Ca02,            a count starts with 1 to 9, 2",
        "Ca₀₂,            a count starts with 1 to 9, 2",
        "(OH)0,           a count starts with 1 to 9, 4",
        "C12345,          a count has at most 4 digits, 1",
        "Ca1₂,            'a count has plain or lowered digits, not both', 3",
        "SO₄2,            'a count has plain or lowered digits, not both', 3",
        "SO₄2⁻,           'a count has plain or lowered digits, not both', 3",
        // factors of a part
        "CaSO4·0H2O,      '0' is no factor such as 2 or 0.5, 6",
        "CaSO4·0.0H2O,    '0.0' is no factor such as 2 or 0.5, 6",
        "CaSO4·.5H2O,     '.5' is no factor such as 2 or 0.5, 6",
        "CaSO4·0.H2O,     '0.' is no factor such as 2 or 0.5, 6",
        "CaSO4·0.555H2O,  '0.555' is no factor such as 2 or 0.5, 6",
        "CaSO4·12345H2O,  '12345' is no factor such as 2 or 0.5, 6",
        "CaSO4·1.2.3H2O,  '1.2.3' is no factor such as 2 or 0.5, 6",
        // charges
        "Ca+9,            a charge of 9 is not possible, 2",
        "Ca^9-,           a charge of 9 is not possible, 2",
        "Ca¹⁰⁺,           a charge of 10 is not possible, 2",
        "Ca¹²⁺,           a charge of 12 is not possible, 2",
        "Ca⁹⁹⁹⁹⁹⁹⁹⁹⁹⁹⁹⁺,  a charge of 1000 is not possible, 2",
        "Ca²+,            '²' is not expected here, 2",
        "Ca+++++++++,     '+' is not expected here, 2",
        "Ca++2,           '+' is not expected here, 2",
        "Ca+-,            '+' is not expected here, 2",
        "Ca^²⁺,           '^' is not expected here, 2",
        "Na+Cl-,          '+' is not expected here, 2",
        "Ca^10+,          '^' is not expected here, 2",
        // other characters
        "Na Cl,           ' ' is not expected here, 2",
        "'Na,Cl',         ',' is not expected here, 2",
        "Na€,             '€' is not expected here, 2",
        "Ca\uD83D\uDE00,  '\uD83D\uDE00' is not expected here, 2",
        "'Na\tCl',        ' ' is not expected here, 2",
        "'Ca^2+\u0085',   '^' is not expected here, 2",
    })
    void unreadableTextsAreRefusedWithThePlace(String text, String problem, int index) {
        UnreadableTextException e = assertThrows(UnreadableTextException.class, () -> Formula.parse(text));
        String shown = text.replace('\t', ' ').replace('\u0085', ' ');
        assertAll(
                () -> assertEquals(
                        "cannot read formula '" + shown + "': " + problem + ", at index " + index, e.getMessage()),
                () -> assertEquals(index, e.index()));
    }

    @Test
    void aTextIsNeeded() {
        assertThrows(NullPointerException.class, () -> Formula.parse(null));
    }
}
