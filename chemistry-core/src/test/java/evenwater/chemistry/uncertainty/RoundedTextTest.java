package evenwater.chemistry.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundedTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "118.04   | 9.4     | 118 ± 9 mg/L (k = 2)",
                "1002.7   | 1.83    | 1,002.7 ± 1.8 mg/L (k = 2)",
                "118      | 1.96    | 118.0 ± 2.0 mg/L (k = 2)",
                "118      | 2.96    | 118.0 ± 3.0 mg/L (k = 2)",
                "118      | 9.6     | 118 ± 10 mg/L (k = 2)",
                "118      | 24.4    | 118 ± 24 mg/L (k = 2)",
                "1184     | 244     | 1,180 ± 240 mg/L (k = 2)",
                "1184     | 344     | 1,200 ± 300 mg/L (k = 2)",
                "3        | 9       | 3 ± 9 mg/L (k = 2)",
                "0.3      | 90      | 0 ± 90 mg/L (k = 2)",
                "-0.3     | 90      | 0 ± 90 mg/L (k = 2)",
                "0        | 0.012   | 0.000 ± 0.012 mg/L (k = 2)",
                "-7.25    | 0.04    | -7.25 ± 0.04 mg/L (k = 2)",
                "0.00001  | 0.000002 | 0.0000100 ± 0.0000020 mg/L (k = 2)",
                "1.18e-9  | 9e-11   | (1.18 ± 0.09) × 10⁻⁹ mg/L (k = 2)",
                "1.18e12  | 9e10    | (1.18 ± 0.09) × 10¹² mg/L (k = 2)",
                "1e-12    | 9e10    | (0 ± 9) × 10¹⁰ mg/L (k = 2)",
                "1.5e300  | 1e299   | (1.50 ± 0.10) × 10³⁰⁰ mg/L (k = 2)",
                "118.25   | 0       | 118.25 mg/L, without uncertainty",
                "0        | 0       | 0 mg/L, without uncertainty",
                "1.5e-30  | 0       | 1.5 × 10⁻³⁰ mg/L, without uncertainty",
                "1e-7      | 5e-8    | (1.0 ± 0.5) × 10⁻⁷ mg/L (k = 2)",
                "-2.2e223 | 6e-100  | -2.2 × 10²²³ ± 6 × 10⁻¹⁰⁰ mg/L (k = 2)",
                "118      | 1e-20   | 118 ± 1.0 × 10⁻²⁰ mg/L (k = 2)"
            })
    void valueAndUncertaintyHaveOneDecimal(double value, double expanded, String text) {
        assertEquals(text, RoundedText.of(value, expanded, "mg/L", Locale.ROOT).estimate());
    }

    @Test
    void theIntervalIsRoundedAlike() {
        RoundedText text = RoundedText.of(118.04, 9.4, "mg/L", Locale.ROOT);
        assertEquals("95 % between 110 and 127 mg/L", text.between(0.95, 109.6, 127.1));
        assertEquals("99.9 % between 110 and 127 mg/L", text.between(0.999, 109.6, 127.1));
        assertEquals("50 % between -1 and 0 mg/L", text.between(0.5, -0.7, 0));
        RoundedText small = RoundedText.of(1.18e-9, 9e-11, "", Locale.ROOT);
        assertEquals("95 % between 1.10 × 10⁻⁹ and 1.27 × 10⁻⁹", small.between(0.95, 1.1e-9, 1.27e-9));
    }

    @Test
    void theLocaleHasItsSigns() {
        assertEquals(
                "1.002,7 ± 1,8 mg/L (k = 2)",
                RoundedText.of(1002.7, 1.8, "mg/L", Locale.GERMANY).estimate());
        Uncertain<MassConcentration> x =
                Uncertain.normal(MassConcentration.parse("5 mg/L"), MassConcentration.parse("0.1 mg/L"));
        assertEquals(
                "5,00 ± 0,20 mg/L (k = 2), 95 % between 4,80 and 5,20 mg/L",
                MonteCarlo.seeded(6).propagate(List.of(x), draw -> draw.of(x)).toText(Locale.GERMANY));
        Refused.asNull("locale", () -> RoundedText.of(1, 1, "mg/L", null));
    }

    @Test
    void anyNumbersAreWrittenInAShortLine() {
        Random random = new Random(77);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            double expanded = Math.abs(Double.longBitsToDouble(random.nextLong()));
            if (!Double.isFinite(value) || !Double.isFinite(expanded)) {
                continue;
            }
            String text = RoundedText.of(value, expanded, "mg/L", Locale.ROOT).estimate();
            Assertions.assertTrue(
                    text.matches(
                            "\\(?-?[0-9.,]+( × 10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)? ± [0-9.,]+\\)?( × 10[⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)? mg/L \\(k = 2\\)"),
                    text);
            Assertions.assertTrue(
                    text.length() <= 64, text); // fifteen digits twice, signs, zeros, a power and the unit
        }
    }
}
