package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Ion;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hardness, ion balance, ionic strength and dissolved solids: what is computed from the balance sheet. */
class WaterViewsTest {

    private static WaterBuilder earths() {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.MAGNESIUM, mmol(1))
                .total(Ion.STRONTIUM, mmol(0.25))
                .total(Ion.BARIUM, mmol(0.125))
                .total(Ion.IRON_II, mmol(0.0625))
                .total(Ion.MANGANESE_II, mmol(0.03125))
                .total(Ion.ZINC, mmol(8));
    }

    @ParameterizedTest(name = "{0}: {1} mmol/L")
    @CsvSource({"CALCIUM_AND_MAGNESIUM, 3", "ALKALINE_EARTHS, 3.375", "EDTA_TITRATION, 3.46875"})
    void totalHardnessCountsWhatItIsToldTo(HardnessCount counted, double expected) {
        HardnessForms forms = earths().build().hardnessForms(counted);
        assertAll(
                () -> assertEquals(counted, forms.counted()),
                () -> assertEquals(hardness(expected), forms.total()),
                () -> assertEquals(hardness(2), forms.calcium()),
                () -> assertEquals(hardness(1), forms.magnesium()));
    }

    @Test
    void hardnessWithoutFurtherWordsIsCalciumAndMagnesium() {
        assertEquals(hardness(3), earths().build().hardness());
    }

    @Test
    void countedIonsAreInTheirOrderAndFixed() {
        assertEquals(List.of(Ion.CALCIUM, Ion.MAGNESIUM), HardnessCount.CALCIUM_AND_MAGNESIUM.ions());
        assertEquals(
                List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM), HardnessCount.ALKALINE_EARTHS.ions());
        assertEquals(
                List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Ion.MANGANESE_II),
                HardnessCount.EDTA_TITRATION.ions());
        assertThrows(
                UnsupportedOperationException.class,
                () -> HardnessCount.EDTA_TITRATION.ions().clear());
    }

    @ParameterizedTest(name = "hardness 3 mmol/L, alkalinity {0} meq/L")
    @CsvSource({ // min(total, alkalinity / 2) in mmol/L
        " 4,  2, 1",
        " 6,  3, 0",
        "10,  3, 0", // more alkalinity than hardness: a bicarbonate water
        " 0,  0, 3",
        "-1,  0, 3"
    })
    void carbonateHardnessInTheStrictSenseNeverExceedsHardness(double alkalinity, double carbonate, double rest) {
        HardnessForms forms =
                earths().alkalinity(alkalinity(alkalinity)).build().hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM);
        assertEquals(hardness(carbonate), forms.carbonate());
        assertEquals(hardness(rest), forms.nonCarbonate());
    }

    @Test
    void whatAquaristsCallCarbonateHardnessIsTheAlkalinity() {
        // 10 °dKH of soda in soft water: the kit reads KH 10 and GH 3
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(3 * 0.178326230))
                .alkalinity(Alkalinity.of(10, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS))
                .build();
        HardnessForms forms = water.hardnessForms(HardnessCount.CALCIUM_AND_MAGNESIUM);
        assertEquals(10, water.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS), 1e-14); // to meq/L and back
        assertEquals(3, forms.carbonate().in(Hardness.GERMAN_DEGREE), 1e-8); // digits of the factor
        assertEquals(hardness(0), forms.nonCarbonate());
    }

    @Test
    void ionBalanceSumsBothSides() {
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(2)) // 4
                .total(Ion.SODIUM, mmol(1)) // 1
                .total(Ion.CHLORIDE, mmol(1.5)) // 1.5
                .total(Ion.SULFATE, mmol(0.5)) // 1
                .total(Ion.SILICA, mmol(7))
                .alkalinity(alkalinity(2.25))
                .build();
        IonBalance balance = water.ionBalance();
        assertAll(
                () -> assertEquals(charge(5), balance.cations()),
                () -> assertEquals(charge(4.75), balance.anions()),
                () -> assertEquals(charge(0.25), balance.difference()),
                () -> assertEquals(charge(-0.25), water.unmeasuredCharge()),
                () -> assertEquals(100 * (0.25 / 9.75), balance.percentDifference()));
    }

    @Test
    void mineralAcidStandsAmongTheCations() {
        IonBalance balance = Water.builder()
                .total(Ion.SULFATE, mmol(1))
                .alkalinity(alkalinity(-1.5))
                .build()
                .ionBalance();
        assertEquals(charge(1.5), balance.cations());
        assertEquals(charge(2), balance.anions());
    }

    @Test
    void pureWaterBalances() {
        assertEquals(0, Water.pure().ionBalance().percentDifference());
        assertEquals(charge(0), Water.pure().ionBalance().difference());
    }

    @Test
    void ionicStrengthIsHalfTheSumOfSquaredChargesTimesAmounts() {
        // ½ (4 · 2 Ca + 1 Na + 9 · 0.1 Al + 4 · 0.5 SO₄ + 1.5 Cl + 2.75 alkalinity + 0.05 unmeasured), silica none
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.SODIUM, mmol(1))
                .total(Ion.ALUMINIUM, mmol(0.1))
                .total(Ion.SULFATE, mmol(0.5))
                .total(Ion.CHLORIDE, mmol(1.5))
                .total(Ion.SILICA, mmol(0.5))
                .alkalinity(alkalinity(2.75))
                .build();
        assertEquals(8.1, water.ionicStrength().in(MILLIMOLE_PER_LITRE), 2e-15); // sums of 16
    }

    @Test
    void acidAndMissingAnionsCountInIonicStrength() {
        assertEquals(mmol(1), Water.builder().alkalinity(alkalinity(-1)).build().ionicStrength());
        assertEquals(mmol(0), Water.pure().ionicStrength());
    }

    private static Water bicarbonate() {
        return Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(100, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.SILICA, AmountConcentration.of(12, Ion.SILICA.milligramPerLitre()))
                .total(Ion.CHLORIDE, AmountConcentration.of(30, Ion.CHLORIDE.milligramPerLitre()))
                .alkalinity(alkalinity(4))
                .carbon(mmol(5))
                .build();
    }

    @Test
    void dissolvedSolidsAreAllMassesWithAlkalinityAsBicarbonate() {
        // 100 + 12 + 30 + 4 · 61.016, the molar mass by the abridged weights
        assertEquals(386.064, bicarbonate().dissolvedSolids().in(MILLIGRAM_PER_LITRE), 1e-12); // some roundings of 386
    }

    @Test
    void residueHoldsBicarbonateAsCarbonate() {
        // 100 + 12 + 30 + 4 · 60.008 / 2
        assertEquals(262.016, bicarbonate().residueAt180Celsius().in(MILLIGRAM_PER_LITRE), 1e-12);
    }

    @Test
    void residueByTheRuleOfStandardMethodsIsTheSameWithinItsOwnRounding() {
        MassConcentration residue = bicarbonate().residueAt180Celsius();
        double byRule = 100 + 12 + 30 + 0.6 * 4 * 50.043;
        // 0.6 stands for 60.008 / 100.086 = 0.59957 and so is 0.00043 of 200 mg/L as CaCO₃ too much
        assertEquals(byRule, residue.in(MILLIGRAM_PER_LITRE), 0.00044 * 4 * 50.043);
    }

    @Test
    void acidAddsNoMass() {
        Water acid = Water.builder().alkalinity(alkalinity(-2)).build();
        assertEquals(MassConcentration.of(0, MILLIGRAM_PER_LITRE), acid.dissolvedSolids());
        assertEquals(MassConcentration.of(0, MILLIGRAM_PER_LITRE), acid.residueAt180Celsius());
    }
}
