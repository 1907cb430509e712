package evenwater.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlainNumberTest {

    @ParameterizedTest
    @ValueSource(strings = {"22", "22.5", "+1", "-1", ".5", "5.", "1e3", "1E-3", "007"})
    void numbersAsPeopleWriteThem(String text) {
        assertTrue(PlainNumber.isWellFormed(text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "+", ".", "1,5", "1 000", "1e", "e5", "1e+", "--1", "1.2.3", "1f", "1d", "1e999"})
    void whatIsNoNumber(String text) {
        assertFalse(PlainNumber.isWellFormed(text));
    }

    @ParameterizedTest
    @CsvSource({ // rounded by hand, half to even
        "0, 0",
        "-0.0, 0",
        "22, 22",
        "376.59674, 376.6",
        "0.30000000000000004, 0.3",
        "123456, 123500",
        "-1.23456, -1.235",
        "0.00012345678, 0.0001235",
        "0.0000012345678, 1.235 × 10^-6",
        "1.5e9, 1.5 × 10^9",
        "99999, 100000",
        "32.415, 32.42",
        "32.41499999999999, 32.42", // the last digits of a calculation are not counted
        "1e300, 1 × 10^300"
    })
    void roundedToFourDigits(double value, String expected) {
        assertEquals(expected, PlainNumber.rounded(value, 4));
    }

    @ParameterizedTest
    @CsvSource({"7, 7.00", "6.8049, 6.80", "7.995, 8.00", "-0.5, -0.50"}) // 7.995 is 7.99500000000000010658…
    void withTwoDecimals(double value, String expected) {
        assertEquals(expected, PlainNumber.withDecimals(value, 2));
    }
}
