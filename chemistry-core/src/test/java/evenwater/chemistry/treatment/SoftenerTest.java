package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.HardnessCount;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SoftenerTest {

    private static final Unit<Hardness> AS_CALCIUM_CARBONATE = Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;

    /** Six exchanged ions, 4 mmol/L of hardness by calcium and magnesium. */
    private static final Water WELL = Water.builder()
            .total(Ion.CALCIUM, mmol(3))
            .total(Ion.MAGNESIUM, mmol(1))
            .total(Ion.STRONTIUM, mmol(0.25))
            .total(Ion.BARIUM, mmol(0.125))
            .total(Ion.IRON_II, mmol(0.0625))
            .total(Ion.MANGANESE_II, mmol(0.03125))
            .total(Ion.SODIUM, mmol(1))
            .total(Ion.POTASSIUM, mmol(0.5))
            .total(Ion.CHLORIDE, mmol(2))
            .alkalinity(alkalinity(5.3))
            .carbon(mmol(6))
            .build();

    private static Water hard(Hardness hardness) {
        double millimoles = hardness.in(Hardness.MILLIMOLE_PER_LITRE);
        return Water.builder()
                .total(Ion.CALCIUM, mmol(0.75 * millimoles))
                .total(Ion.MAGNESIUM, mmol(0.25 * millimoles))
                .build();
    }

    private static double milligramsOf(Ion ion, Water water) {
        return water.total(ion).in(ion.milligramPerLitre());
    }

    static List<Arguments> addedForOneUnit() {
        return List.of( // figures from the atomic weights, to the digits that are printed
                Arguments.of(Softener.withSodium(), AS_CALCIUM_CARBONATE, 0.459404912, 5e-10),
                Arguments.of(Softener.withSodium(), Hardness.GRAIN_PER_US_GALLON, 7.86412132, 5e-9),
                Arguments.of(Softener.withSodium(), Hardness.GERMAN_DEGREE, 8.19944006, 5e-9),
                Arguments.of(Softener.withSodium(), Hardness.MILLIMOLE_PER_LITRE, 45.98, 1e-13), // exact but rounding
                Arguments.of(Softener.withPotassium(), AS_CALCIUM_CARBONATE, 0.781288092, 5e-10),
                Arguments.of(Softener.withPotassium(), Hardness.GRAIN_PER_US_GALLON, 13.3741373, 5e-8));
    }

    @ParameterizedTest(name = "{0}: {2} mg/L for 1 {1}")
    @MethodSource
    void addedForOneUnit(Softener softener, Unit<Hardness> unit, double milligrams, double printed) {
        Water soft = softener.treat(hard(Hardness.of(1, unit)));
        assertEquals(milligrams, milligramsOf(softener.regenerant(), soft), printed);
        assertEquals(hardness(0), soft.hardness());
    }

    @Test
    void twentyTwoGrainsBring173MilligramsOfSodium() {
        Water soft = Softener.withSodium().treat(hard(Hardness.of(22, Hardness.GRAIN_PER_US_GALLON)));
        assertEquals(22 * 7.864, milligramsOf(Ion.SODIUM, soft), 22 * 0.0005); // last digit of the factor
    }

    @Test
    void oneSodiumForOneCalciumIsAnotherAndAWrongNumber() {
        Water hard = Water.builder().total(Ion.CALCIUM, mmol(2)).build();
        Water soft = Softener.withSodium().treat(hard);
        double onePpmForOnePpm = milligramsOf(Ion.CALCIUM, hard); // 80 mg/L
        double oneForOne = 2; // mmol/L
        assertAll(
                () -> assertEquals(mmol(4), soft.total(Ion.SODIUM)),
                () -> assertNotEquals(oneForOne, of(Ion.SODIUM, soft)),
                () -> assertEquals(91.96, milligramsOf(Ion.SODIUM, soft), 1e-13), // 4 · 22.990
                () -> assertTrue(milligramsOf(Ion.SODIUM, soft) - onePpmForOnePpm > 11));
    }

    @Test
    void everyHardnessIonIsExchanged() {
        Water soft = Softener.withSodium().treat(WELL);
        // 2 · (3 + 1 + 0.25 + 0.125 + 0.0625 + 0.03125) in exchange
        assertAll(
                () -> assertEquals(mmol(1 + 8.9375), soft.total(Ion.SODIUM)),
                () -> assertEquals(
                        hardness(0),
                        soft.hardnessForms(HardnessCount.EDTA_TITRATION).total()),
                () -> assertEquals(List.of(Ion.SODIUM, Ion.POTASSIUM, Ion.CHLORIDE), soft.ions()));
    }

    @Test
    void whatIsNotExchangedStaysBitForBit() {
        for (Softener softener : List.of(
                Softener.withSodium(),
                Softener.withPotassium().leaking(hardness(0.3)),
                Softener.withSodium().leaking(hardness(0.1)).bypassFor(hardness(0.7)))) {
            Water soft = softener.treat(WELL);
            assertAll(
                    () -> assertEquals(WELL.alkalinity(), soft.alkalinity()),
                    () -> assertEquals(WELL.unmeasuredCharge(), soft.unmeasuredCharge()),
                    () -> assertEquals(WELL.carbon(), soft.carbon()),
                    () -> assertEquals(WELL.total(Ion.CHLORIDE), soft.total(Ion.CHLORIDE)),
                    () -> assertEquals(WELL.temperature(), soft.temperature()));
        }
    }

    @Test
    void aPotassiumSoftenerLeavesSodiumAlone() {
        Water soft = Softener.withPotassium().treat(WELL);
        assertEquals(mmol(1), soft.total(Ion.SODIUM));
        assertEquals(mmol(0.5 + 8.9375), soft.total(Ion.POTASSIUM));
        assertEquals(Ion.POTASSIUM, Softener.withPotassium().regenerant());
        assertEquals(Ion.SODIUM, Softener.withSodium().regenerant());
    }

    @Test
    void leakageKeepsTheSameShareOfEveryHardnessIon() {
        Water soft = Softener.withSodium().leaking(hardness(1)).treat(WELL); // a quarter of 4 mmol/L
        assertAll(
                () -> assertEquals(mmol(0.75), soft.total(Ion.CALCIUM)),
                () -> assertEquals(mmol(0.25), soft.total(Ion.MAGNESIUM)),
                () -> assertEquals(mmol(0.0625), soft.total(Ion.STRONTIUM)),
                () -> assertEquals(mmol(0.03125), soft.total(Ion.BARIUM)),
                () -> assertEquals(mmol(0.015625), soft.total(Ion.IRON_II)),
                () -> assertEquals(mmol(0.0078125), soft.total(Ion.MANGANESE_II)),
                () -> assertEquals(mmol(1 + 0.75 * 8.9375), soft.total(Ion.SODIUM)));
    }

    @Test
    void aWaterSofterThanTheLeakagePassesUnchanged() {
        Softener softener = Softener.withSodium().leaking(hardness(5));
        assertEquals(WELL, softener.treat(WELL));
        assertEquals(WELL, softener.bypassFor(hardness(4)).treat(WELL));
        assertEquals(0, softener.bypassFor(hardness(4)).bypassShare(WELL));
    }

    @Test
    void aWaterWithoutHardnessPassesUnchanged() {
        Water soft = Water.builder().total(Ion.SODIUM, mmol(3)).build();
        assertEquals(soft, Softener.withSodium().treat(soft));
        assertEquals(soft, Softener.withSodium().bypassFor(hardness(0)).treat(soft));
    }

    @Test
    void theReadingOfPHIsDropped() {
        Water read = Water.builder().total(Ion.CALCIUM, mmol(1)).measuredPH(7.2).build();
        assertEquals(OptionalDouble.empty(), Softener.withSodium().treat(read).measuredPH());
    }

    /** Davis and Cornwell, Introduction to Environmental Engineering, softening example (from memory): 85/280. */
    @Test
    void bypassOfAHouseholdSoftener() {
        Softener softener = Softener.withSodium().bypassFor(Hardness.of(85, AS_CALCIUM_CARBONATE));
        Water raw = hard(Hardness.of(280, AS_CALCIUM_CARBONATE));
        assertEquals(0.30357, softener.bypassShare(raw), 5e-6);
        assertEquals(85, softener.treat(raw).hardness().in(AS_CALCIUM_CARBONATE), 1e-13);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 1, 1.7, 2, 3.9, 4})
    void theTargetIsHit(double target) {
        Softener softener = Softener.withSodium().bypassFor(hardness(target));
        assertEquals(target, hardnessOf(softener.treat(WELL)), 4 * 0x1p-52); // an ulp of the 4 mmol/L that are shared
        assertEquals(target / 4, softener.bypassShare(WELL), 0x1p-52);
    }

    @Test
    void withLeakageLessGoesPastTheResin() {
        Softener softener = Softener.withSodium().leaking(hardness(1)).bypassFor(hardness(1.75));
        assertEquals(0.25, softener.bypassShare(WELL)); // (1.75 − 1) / (4 − 1)
        assertEquals(hardness(1.75), softener.treat(WELL).hardness());
        assertEquals(hardness(1), softener.behindResin(WELL).hardness());
        assertEquals(0, Softener.withSodium().leaking(hardness(1)).bypassShare(WELL));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.1, 0.5, 1, 1.5})
    void sodiumOfTheBlendDoesNotDependOnTheLeakage(double leakage) {
        Water blend = Softener.withSodium()
                .leaking(hardness(leakage))
                .bypassFor(hardness(1.5))
                .treat(WELL);
        // raw minus wanted hardness decides: 2.5/4 of all that can be exchanged
        assertEquals(1 + 8.9375 * 2.5 / 4, of(Ion.SODIUM, blend), 4e-15); // roundings of 9
        assertEquals(1.5, hardnessOf(blend), 1e-15);
    }

    @Test
    void orderOfTheSettingsDoesNotMatter() {
        Water one = Softener.withSodium()
                .leaking(hardness(1))
                .bypassFor(hardness(2))
                .treat(WELL);
        Water other = Softener.withSodium()
                .bypassFor(hardness(2))
                .leaking(hardness(1))
                .treat(WELL);
        assertEquals(one, other);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.7, 3, 6, 7.3, 11.1})
    void aSecondSoftenerOfTheSameTargetHasNothingLeftToDo(double degrees) {
        Softener softener = Softener.withSodium().bypassFor(Hardness.of(degrees, Hardness.GERMAN_DEGREE));
        Water once = softener.treat(WELL);
        Water twice = softener.treat(once);
        assertEquals(hardnessOf(once), hardnessOf(twice), 1e-15);
        assertEquals(of(Ion.SODIUM, once), of(Ion.SODIUM, twice), 1e-14);
        assertEquals(alkalinityOf(once), alkalinityOf(twice));
    }

    @Test
    void itsNameSaysWhatItIsSetTo() {
        assertEquals("softener with sodium", Softener.withSodium().name());
        assertEquals(
                "softener with potassium, leaking 0.5 mmol/L",
                Softener.withPotassium().leaking(hardness(0.5)).name());
        assertEquals(
                "softener with sodium, leaking 1 °fH, bypass for 6 °dH",
                Softener.withSodium()
                        .leaking(Hardness.of(1, Hardness.FRENCH_DEGREE))
                        .bypassFor(Hardness.of(6, Hardness.GERMAN_DEGREE))
                        .name());
        assertEquals(
                "softener with sodium, bypass for 0 mmol/L",
                Softener.withSodium().bypassFor(hardness(0)).name());
    }
}
