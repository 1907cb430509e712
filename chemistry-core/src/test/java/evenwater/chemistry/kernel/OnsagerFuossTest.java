package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.LimitingConductivity.CALCIUM;
import static evenwater.chemistry.kernel.LimitingConductivity.CHLORIDE;
import static evenwater.chemistry.kernel.LimitingConductivity.HYDROGEN;
import static evenwater.chemistry.kernel.LimitingConductivity.MAGNESIUM;
import static evenwater.chemistry.kernel.LimitingConductivity.PHOSPHATE;
import static evenwater.chemistry.kernel.LimitingConductivity.POTASSIUM;
import static evenwater.chemistry.kernel.LimitingConductivity.SODIUM;
import static evenwater.chemistry.kernel.LimitingConductivity.SULFATE;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OnsagerFuossTest {

    private static Mixture salt(LimitingConductivity cation, LimitingConductivity anion, double equivalents) {
        return Mixture.of(
                new LimitingConductivity[] {cation, anion},
                equivalents / cation.chargeNumber(),
                -equivalents / anion.chargeNumber());
    }

    /** Onsager's law of a salt with two ions, from its own formula with q. */
    @ParameterizedTest
    @CsvSource({
        "SODIUM, CHLORIDE",
        "POTASSIUM, CHLORIDE",
        "HYDROGEN, CHLORIDE",
        "CALCIUM, CHLORIDE",
        "SODIUM, SULFATE",
        "MAGNESIUM, SULFATE",
        "ALUMINIUM, SULFATE",
        "HYDROGEN, PHOSPHATE"
    })
    void twoIonsObeyTheLimitingLaw(LimitingConductivity cation, LimitingConductivity anion) {
        Mixture mixture = salt(cation, anion, 1e-3);
        double z1 = cation.chargeNumber();
        double z2 = -anion.chargeNumber();
        double l1 = mixture.limiting()[0];
        double l2 = mixture.limiting()[1];
        double q = z1 * z2 / (z1 + z2) * (l1 + l2) / (z2 * l1 + z1 * l2);
        double strength = 1e-3 * (z1 + z2); // Σ z² c
        double permittivity = 8.8541878128e-12 * Mixture.DIELECTRIC_CONSTANT;
        double energy = permittivity * 1.380649e-23 * Mixture.KELVIN;
        double e = 1.602176634e-19;
        double kappa = Math.sqrt(e * e * 6.02214076e26 * strength / energy);
        double relaxation = z1 * z2 * e * e * kappa / (12 * Math.PI * energy) * q / (1 + Math.sqrt(q));
        double drag = 1e4 * e * 96485.33212 * kappa / (6 * Math.PI * Mixture.VISCOSITY);
        double[] expected = {(l1 - z1 * drag) * (1 - relaxation), (l2 - z2 * drag) * (1 - relaxation)};
        assertArrayEquals(expected, mixture.equivalentConductivities(0), 1e-9);
    }

    @Test
    void theSlopeOfASingleChargedSaltIsThatOfTheTextbook() {
        // Λ = Λ0 − (0.2300 Λ0 + 60.65) √c at 25 °C, Robinson and Stokes 1959 (from memory); their constants of water
        // differ by 0.3 %
        double[] l = salt(SODIUM, CHLORIDE, 1e-8).equivalentConductivities(0);
        double limit = 126.39;
        assertEquals(0.2300 * limit + 60.65, (limit - l[0] - l[1]) / 1e-4, 0.3);
    }

    @Test
    void aLoneIonFeelsDragAlone() {
        Mixture lone = Mixture.of(new LimitingConductivity[] {SODIUM}, 0.01);
        // Σ z² c = 0.01: 60.6 √(c/2) / (1 + κa) with κ = 0.2325/Å √(c/2)... = 0.0233/Å and 4 Å
        assertEquals(50.08 - 2.144 / (1 + 4 * 0.02325), lone.equivalentConductivities(4)[0], 0.003);
    }

    @Test
    void ionsOfOneMobilityAndSignDoNotHoldEachOther() {
        Mixture one = Mixture.of(new LimitingConductivity[] {SODIUM}, 0.02);
        Mixture two = Mixture.of(new LimitingConductivity[] {SODIUM, SODIUM}, 0.01, 0.01);
        assertEquals(one.conductivity(), two.conductivity(), 1e-10);
    }

    @Test
    void pureWaterWithoutIonsConductsNothing() {
        assertEquals(
                0,
                Mixture.of(new LimitingConductivity[] {SODIUM, CHLORIDE}, 0, 0).conductivity());
        assertEquals(0, Mixture.of(new LimitingConductivity[0]).conductivity());
    }

    @Test
    void anAbsentIonHasNoConductivityOfItsOwn() {
        double[] l = Mixture.of(new LimitingConductivity[] {SODIUM, HYDROGEN, CHLORIDE}, 0.01, 0, 0.01)
                .equivalentConductivities(4);
        assertEquals(0, l[1]);
        assertTrue(l[0] > 0 && l[2] > 0);
    }

    @Test
    void aNumberThatIsNoneShows() {
        assertEquals(
                Double.NaN,
                Mixture.of(new LimitingConductivity[] {SODIUM, CHLORIDE, POTASSIUM}, 0.01, 0.01, Double.NaN)
                        .conductivity());
    }

    @Test
    void memoryIsAsGoodAsNewForTheNextMixture() {
        ConductivityScratch used = new ConductivityScratch(5);
        Mixture many = Mixture.of(
                new LimitingConductivity[] {SODIUM, CALCIUM, HYDROGEN, SULFATE, CHLORIDE},
                0.01,
                0.02,
                1e-3,
                0.02,
                0.011);
        Mixture few = salt(MAGNESIUM, CHLORIDE, 0.01);
        conductivity(many, used);
        assertEquals(few.conductivity(), conductivity(few, used));
        assertEquals(many.conductivity(), conductivity(many, used));
    }

    private static double conductivity(Mixture mixture, ConductivityScratch scratch) {
        return OnsagerFuoss.microsiemensPerCentimetre(
                mixture.size(),
                mixture.moles(),
                mixture.charge(),
                mixture.limiting(),
                Mixture.KELVIN,
                Mixture.DIELECTRIC_CONSTANT,
                Mixture.VISCOSITY,
                scratch);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({ // 4 (w₊ w₋)^½ w₋^¼, by hand
        "SODIUM, CHLORIDE, 4",
        "CALCIUM, CHLORIDE, 5.656854",
        "SODIUM, SULFATE, 6.727171",
        "MAGNESIUM, SULFATE, 9.513657"
    })
    void chargesKeepIonsApart(LimitingConductivity cation, LimitingConductivity anion, double angstrom) {
        Mixture mixture = salt(cation, anion, 0.01);
        assertEquals(angstrom, OnsagerFuoss.distanceInAngstrom(2, mixture.moles(), mixture.charge()), 1e-6);
    }

    @Test
    void aMixtureLiesBetweenItsSalts() {
        Mixture half =
                Mixture.of(new LimitingConductivity[] {SODIUM, CALCIUM, CHLORIDE, PHOSPHATE}, 0.01, 0.005, 0.02, 0);
        // cations: Σ z² c = 0.03 over Σ |z| c = 0.02
        assertEquals(4 * Math.sqrt(1.5), OnsagerFuoss.distanceInAngstrom(4, half.moles(), half.charge()), 1e-12);
    }

    @Test
    void withoutIonsOfOneSignTheDistanceIsThatOfTheOther() {
        assertEquals(4, OnsagerFuoss.distanceInAngstrom(0, new double[0], new double[0]));
        assertEquals(
                4 * Math.sqrt(2), OnsagerFuoss.distanceInAngstrom(1, new double[] {0.01}, new double[] {2}), 1e-12);
    }
}
