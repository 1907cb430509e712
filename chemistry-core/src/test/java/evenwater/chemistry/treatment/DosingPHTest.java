package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pH that a dose of bicarbonate or carbonate leads to, closed to the air. */
class DosingPHTest {

    /** ½ (pK₁ + pK₂) = ½ (6.352 + 10.329) is that of bicarbonate in endless dilution; activities of its salt take something off. */
    private static final double OF_BICARBONATE = 8.341;

    @ParameterizedTest(name = "{0} in a water of pH {1}")
    @CsvSource({
        "sodium bicarbonate, 6.0",
        "sodium bicarbonate, 7.2",
        "sodium bicarbonate, 7.8",
        "potassium bicarbonate, 6.0",
        "potassium bicarbonate, 7.2",
        "potassium bicarbonate, 7.8"
    })
    void bicarbonateRaisesALowPHTowardsItsOwnAndNotBeyond(String name, double raw) {
        double before = raw;
        for (double rise : new double[] {0.5, 1, 2, 5, 10}) {
            double pH = dosed(tap(raw), name, rise);
            assertTrue(pH > before && pH < OF_BICARBONATE, rise + " meq/L lead to pH " + pH);
            before = pH;
        }
    }

    /** So a dose of bicarbonate lowers the pH of a water that has lost its CO₂. */
    @ParameterizedTest(name = "{0} in a water of pH {1}")
    @CsvSource({"sodium bicarbonate, 9.0", "sodium bicarbonate, 9.5", "potassium bicarbonate, 9.5"})
    void bicarbonateLowersAHighPH(String name, double raw) {
        double before = raw;
        for (double rise : new double[] {0.5, 1, 2, 5, 10}) {
            double pH = dosed(tap(raw), name, rise);
            assertTrue(pH < before && pH > 8, rise + " meq/L lead to pH " + pH);
            before = pH;
        }
    }

    /** The same rise of alkalinity by carbonate: half the carbon, which takes up the CO₂ and leads far beyond. */
    @ParameterizedTest(name = "{0} instead of {1}")
    @CsvSource({
        "sodium carbonate anhydrous, sodium bicarbonate",
        "sodium carbonate decahydrate, sodium bicarbonate",
        "potassium carbonate, potassium bicarbonate"
    })
    void carbonateLeadsFarHigher(String carbonate, String bicarbonate) {
        assertTrue(dosed(tap(7.2), carbonate, 1) > 9.2);
        assertTrue(dosed(tap(7.2), bicarbonate, 1) < 7.5);
        assertTrue(dosed(tap(7.2), carbonate, 5) > 10);
        assertTrue(dosed(tap(7.2), bicarbonate, 5) < 7.8);
    }

    /** The salts differ by their cations alone, which pair with carbonate or do not. */
    @ParameterizedTest(name = "{0} and {1}")
    @CsvSource({"sodium bicarbonate, potassium bicarbonate", "sodium carbonate anhydrous, potassium carbonate"})
    void sodiumAndPotassiumLeadToNearlyTheSame(String sodium, String potassium) {
        for (double rise : new double[] {0.5, 2, 5}) {
            assertEquals(dosed(tap(7.2), sodium, rise), dosed(tap(7.2), potassium, rise), 0.02);
        }
    }

    @Test
    void crystalWaterMakesNoDifference() {
        assertEquals(
                dosed(tap(7.2), "sodium carbonate anhydrous", 2),
                dosed(tap(7.2), "sodium carbonate decahydrate", 2),
                1e-9);
    }

    /**
     * Textbooks give pH 8.3 to bicarbonate at any dilution, by ½ (pK₁ + pK₂), and 11.1 to 0.01 mol/L of carbonate, by OH⁻ from
     * x² / (0.01 − x) = 10^−3.67 (Stumm and Morgan, Aquatic Chemistry, and others, from memory). Both are without activities, which the
     * library has: by ½ lg of the coefficient of CO₃²⁻ lower, 0.21 in 0.1 mol/L.
     */
    @ParameterizedTest(name = "{1} mol/L of {0}: {2}")
    @CsvSource({
        "potassium bicarbonate, 0.001, 8.270",
        "potassium bicarbonate, 0.01, 8.249",
        "potassium bicarbonate, 0.1, 8.127",
        "potassium carbonate, 0.01, 11.001"
    })
    void solutionsOfASaltAlone(String name, double molesPerLitre, double pH) {
        double perMole = name.endsWith("bicarbonate") ? 1 : 2;
        assertEquals(pH, dosed(Water.pure(), name, 1000 * molesPerLitre * perMole), 0.001); // computed here
    }

    /** 8.341 by the mean of the pK, 11.129 by OH⁻ of 1.362e-3 mol/L and pKw 13.995, once the coefficient of CO₃²⁻ is put back. */
    @ParameterizedTest(name = "{0}, {1} meq/L: {2}")
    @CsvSource({"potassium bicarbonate, 10, 8.341", "potassium carbonate, 20, 11.129"})
    void withoutActivitiesTheyAreThoseOfTheTextbook(String name, double rise, double pH) {
        Speciation salt = Speciation.of(dose(name, rise).treat(Water.pure()));
        assertEquals(pH, salt.pH() - Math.log10(salt.activityCoefficient(Species.CARBONATE)) / 2, 0.02);
    }

    /**
     * The buffer of 0.025 mol/kg of bicarbonate and carbonate each is 10.012 by definition (Staples and Bates 1969). As potassium salts it comes out at
     * that; as sodium salts 0.14 lower, by the doubtful constant of NaCO₃⁻. Doses of some mmol/L do not feel it.
     */
    @Test
    void theCarbonateBuffer() {
        Water potassium = dose("potassium carbonate", 50)
                .treat(dose("potassium bicarbonate", 25).treat(Water.pure()));
        assertEquals(10.012, Speciation.of(potassium).pH(), 0.01);
        Water sodium = dose("sodium carbonate anhydrous", 50)
                .treat(dose("sodium bicarbonate", 25).treat(Water.pure()));
        assertEquals(10.012 - 0.144, Speciation.of(sodium).pH(), 0.002);
    }

    @Test
    void aDoseDropsAMeasuredPHAndTheCarbonStaysUnknown() {
        Water measured = tapWithReading(7.2);
        Water treated = dose("sodium bicarbonate", 1).treat(measured);
        assertEquals(OptionalDouble.empty(), treated.measuredPH());
        assertTrue(treated.carbon().isEmpty());
        assertEquals(2.4, alkalinityOf(treated), 1e-12);
        Refused.withoutAnswer(
                "pH of this water is unknown: it states neither inorganic carbon nor a measured pH (a change or blend drops one)",
                List.of(),
                () -> Speciation.of(treated));
        Water known = Speciation.of(measured).water();
        assertEquals(
                7.420, Speciation.of(dose("sodium bicarbonate", 1).treat(known)).pH(), 0.001);
    }

    @Test
    void aSoftenerAndAMembraneDropItToo() {
        Water measured = tapWithReading(7.2);
        Water known = Speciation.of(measured).water();
        for (Treatment treatment :
                List.of(Softener.withSodium(), ReverseOsmosis.rejecting(0.95, 0.99), Train.of(Softener.withSodium()))) {
            assertTrue(treatment.treat(measured).measuredPH().isEmpty());
            assertTrue(treatment.treat(measured).carbon().isEmpty());
            assertTrue(treatment.treat(known).carbon().isPresent());
        }
        assertEquals(7.2, Speciation.of(Softener.withSodium().treat(known)).pH(), 0.02);
        assertTrue(
                Speciation.of(ReverseOsmosis.rejecting(0.95, 0.99).treat(known)).pH() < 6.2);
    }

    @Test
    void aDoseOfNothingLeavesThePH() {
        Dosing nothing = Dosing.of(Compound.SODIUM_BICARBONATE, grams(0), litres(10));
        assertEquals(7.2, Speciation.of(nothing.treat(tap(7.2))).pH(), 1e-9);
    }

    private static double dosed(Water water, String name, double rise) {
        return Speciation.of(dose(name, rise).treat(water)).pH();
    }

    private static Dosing dose(String name, double rise) {
        return Dosing.raisingAlkalinity(Compound.named(name), alkalinity(rise), litres(1));
    }

    /** A tap of our own invention that knows its carbon. */
    private static Water tap(double pH) {
        return Speciation.of(tapWithReading(pH)).water();
    }

    private static Water tapWithReading(double pH) {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(0.5))
                .total(Ion.MAGNESIUM, mmol(0.2))
                .total(Ion.SODIUM, mmol(0.4))
                .total(Ion.CHLORIDE, mmol(0.4))
                .alkalinity(alkalinity(1.4))
                .temperature(celsius(25))
                .measuredPH(pH)
                .build();
    }
}
