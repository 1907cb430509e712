package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ActivityLawTest {

    private static final double LN_10 = Math.log(10);

    @ParameterizedTest(name = "size {0} Å, charge {1}, I = {2}")
    @CsvSource({ // Kielland 1937, Table 1 (from memory), with his A = 0.5085 and B = 0.3281; printed to two or three
        // digits
        "9, 1, 0.001, 0.967",
        "9, 1, 0.1, 0.83",
        "4.25, 1, 0.01, 0.902",
        "3, 1, 0.1, 0.755",
        "8, 2, 0.005, 0.755",
        "8, 2, 0.05, 0.52",
        "6, 2, 0.01, 0.675",
        "6, 2, 0.1, 0.405",
        "4, 2, 0.05, 0.445"
    })
    void extendedDebyeHueckel(double size, int charge, double ionicStrength, double expected) {
        double lnGamma = ActivityLaw.TRUESDELL_JONES.lnGamma(charge, size, 0, ionicStrength, 0.5085 * LN_10, 0.3281);
        assertEquals(expected, Math.exp(lnGamma), 0.005);
    }

    @ParameterizedTest(name = "{0} chloride, 0.1 mol/kg")
    @CsvSource({ // mean coefficients at 25 °C, Robinson and Stokes 1959, App. 8.10 (from memory); 0.02 is what an ion
        // model reaches
        "SODIUM, 1, 0.1, 0.778",
        "POTASSIUM, 1, 0.1, 0.770",
        "CALCIUM, 2, 0.3, 0.518",
        "MAGNESIUM, 2, 0.3, 0.529"
    })
    void chloridesAtATenthMolal(Species cation, int chlorides, double ionicStrength, double expected) {
        double a = SolventWater.debyeHueckelA(298.15);
        double b = SolventWater.debyeHueckelB(298.15);
        ActivityLaw law = ActivityLaw.TRUESDELL_JONES;
        double ofCation = law.lnGamma(
                cation.chargeNumber(), cation.sizeInAngstrom(), cation.slopeInKilogramPerMole(), ionicStrength, a, b);
        double ofChloride = law.lnGamma(-1, 3.5, 0.015, ionicStrength, a, b);
        assertEquals(expected, Math.exp((ofCation + chlorides * ofChloride) / (1 + chlorides)), 0.02);
    }

    @Test
    void daviesByHand() { // A = 0.509, z = 2, I = 0.1: lg γ = -0.509·4·(0.31623/1.31623 - 0.03) = -0.428075
        assertEquals(-0.428075 * LN_10, ActivityLaw.DAVIES.lnGamma(2, 0, 0, 0.1, 0.509 * LN_10, 0), 2e-5);
    }

    @ParameterizedTest
    @EnumSource
    void allSpeciesAtOnceAreTheSameAsEachAlone(ActivityLaw law) {
        double a = SolventWater.debyeHueckelA(283.15);
        double b = SolventWater.debyeHueckelB(283.15);
        double[] gamma = new double[Species.values().length];
        law.fill(0.04, a, b, gamma, gamma.length);
        for (Species s : Species.values()) {
            double alone =
                    Math.exp(law.lnGamma(s.chargeNumber(), s.sizeInAngstrom(), s.slopeInKilogramPerMole(), 0.04, a, b));
            assertEquals(alone, gamma[s.place()], 1e-14, s::symbol);
        }
    }

    @ParameterizedTest
    @EnumSource
    void pureWaterIsIdeal(ActivityLaw law) {
        double[] gamma = new double[Species.values().length];
        law.fill(0, 1.176, 0.3287, gamma, gamma.length);
        for (Species s : Species.values()) {
            assertEquals(1, gamma[s.place()], s::symbol);
        }
    }
}
