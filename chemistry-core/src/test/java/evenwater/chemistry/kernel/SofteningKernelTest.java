package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SofteningKernelTest {

    @ParameterizedTest(name = "hardness {0}, leakage {1}")
    @CsvSource({ // f = min(1, leakage / hardness), by hand
        "20, 0, 0",
        "20, 1, 0.05",
        "20, 20, 1",
        "20, 30, 1",
        "0, 0, 0",
        "0, 1, 1",
        "20, -1, 0" // no leakage below none
    })
    void leakageFraction(double hardness, double leakage, double expected) {
        assertEquals(expected, SofteningKernel.leakageFraction(hardness, leakage));
    }

    @ParameterizedTest(name = "raw {0}, soft {1}, target {2}")
    @CsvSource({ // s = (target − soft) / (raw − soft), by hand
        "20, 0, 8, 0.4",
        "20, 4, 8, 0.25",
        "20, 4, 4, 0",
        "20, 4, 20, 1"
    })
    void bypassShare(double raw, double soft, double target, double expected) {
        assertEquals(expected, SofteningKernel.bypassShare(raw, soft, target));
    }

    @Test
    void theBlendOfTheShareHasTheTarget() {
        double share = SofteningKernel.bypassShare(21.1, 0.3, 6);
        assertEquals(6, share * 21.1 + (1 - share) * 0.3, 1e-14); // some roundings of 21.1
    }

    @Test
    void exchangeIsChargeForCharge() {
        // 1.5 mmol/L of calcium, 0.5 of magnesium and 0.1 of iron(III) take 2 × 1.5 + 2 × 0.5 + 3 × 0.1 of sodium
        assertEquals(
                4.3,
                SofteningKernel.singleChargedIonAdded(new double[] {2, 2, 3}, new double[] {1.5, 0.5, 0.1}),
                4.3 * 0x1p-52); // the product 3 × 0.1 and the sum round
        assertEquals(0.0, SofteningKernel.singleChargedIonAdded(new double[0], new double[0]));
    }

    @Test
    void sodiumOfAHardWaterIsTheTextbookFigure() {
        // 1 mg/L of hardness as CaCO₃ gives 2 × 22.990 / 100.086 = 0.4594 mg/L of sodium
        double millimolesOfHardness = 100 / 100.086;
        double sodium = SofteningKernel.singleChargedIonAdded(new double[] {2}, new double[] {millimolesOfHardness});
        assertEquals(45.94, sodium * 22.990, 0.005); // two decimals printed
    }
}
