package evenwater.chemistry.worked;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {

    @ParameterizedTest
    @CsvSource({ // rounded by hand, half to even
        "38.15885, 6, 38.1588",
        "38.15895, 6, 38.159",
        "376.59674, 4, 376.6",
        "22, 3, 22",
        "0, 6, 0",
        "4.3e-7, 6, 4.3E-7",
        "0.1, 17, 0.10000000000000001"
    })
    void roundedHalfToEven(double value, int digits, String expected) {
        assertEquals(expected, Numbers.rounded(value, digits));
    }

    @Test
    void neighboursOfATieAreRoundedAlike() { // 1.57 mmol/L of magnesium in mg/L: on the JVM and in a browser they
        // differ in the last digit
        double tie = 38.15885;
        assertEquals("38.1588", Numbers.rounded(Math.nextUp(tie), 6));
        assertEquals("38.1588", Numbers.rounded(Math.nextDown(tie), 6));
    }
}
