package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Changes that cannot be, in full words. */
class ChangeErrorsTest {

    @ParameterizedTest(name = "{0} leave {2} meq/L")
    @CsvSource(
            delimiter = '|',
            value = {
                "Na+ 1                    | {Na⁺=1 mmol/L}                                        |  1.0",
                "SO4^2- 0.5               | {SO₄²⁻=0.5 mmol/L}                                    | -1.0",
                "Ca^2+ -1, Na+ 1          | {Ca²⁺=-1 mmol/L, Na⁺=1 mmol/L}                        | -1.0",
                "Na+ 1, HCO3- 2           | {Na⁺=1 mmol/L, HCO₃⁻=2 mmol/L}                        | -1.0",
                "CO2 3, OH- 0.5           | {CO₂=3 mmol/L, OH⁻=0.5 mmol/L}                        | -0.5",
                "NH4+ -1, NO3- 1, H+ 1    | {NH₄⁺=-1 mmol/L, H⁺=1 mmol/L, NO₃⁻=1 mmol/L}          | -1.0"
            })
    void chargesThatDoNotCancelAreRefusedWithIonsAndRest(String ions, String named, double rest) {
        Refused.argument(
                "charges of a change must cancel, but " + named + " leave " + rest + " meq/L",
                () -> Change.of(ChangeTest.amounts(ions)));
    }

    @Test
    void roundingOfTheCallersAmountsIsNotARestOfCharge() {
        // 2e-12 meq/L are moved in all, so 1e-12 of them is allowed and 3e-12 is not
        assertEquals(
                charge(5e-13).getValue(),
                Change.of(Map.of(Ion.SODIUM, mmol(1 + 5e-13), Ion.CHLORIDE, mmol(1)))
                        .netCharge()
                        .getValue(),
                2e-16); // an ulp of 1
        Refused.argument(
                "charges of a change must cancel, but {Na⁺=1.000000000003 mmol/L, Cl⁻=1 mmol/L} leave "
                        + (1.000000000003 - 1) + " meq/L",
                () -> Change.of(Map.of(Ion.SODIUM, mmol(1.000000000003), Ion.CHLORIDE, mmol(1))));
    }

    @Test
    void ionsOfOppositeChargeAreNotExchanged() {
        Refused.argument(
                "Ca²⁺ cannot be exchanged for Cl⁻: their charges differ in sign",
                () -> Change.exchanging(Ion.CALCIUM, Ion.CHLORIDE, mmol(1)));
        Refused.argument(
                "Na⁺ cannot be exchanged for SiO₂: one of them has no charge",
                () -> Change.exchanging(Ion.SODIUM, Ion.SILICA, mmol(1)));
    }

    @Test
    void whatLeavesIsNotNegative() {
        Refused.argument(
                "amount of Ca²⁺ that leaves must not be negative, but was -1 mmol/L",
                () -> Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(-1)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void theShareThatLeavesIsAPartOfTheWhole(double share) {
        Refused.argument(
                "share of the ions that leave must be from 0 to 1, but was " + share,
                () -> Change.exchanging(Water.pure(), List.of(Ion.CALCIUM), Ion.SODIUM, share));
    }

    @Test
    void aResinExchangesCationsOfTheirOwnForm() {
        Refused.argument(
                "Cl⁻ is no cation that a resin exchanges",
                () -> Change.exchanging(Water.pure(), List.of(Ion.CALCIUM, Ion.CHLORIDE), Ion.SODIUM, 1));
        Refused.argument(
                "SiO₂ is no cation that a resin exchanges",
                () -> Change.exchanging(Water.pure(), List.of(Ion.CALCIUM), Ion.SILICA, 1));
        Refused.argument(
                "H⁺ is no cation that a resin exchanges",
                () -> Change.exchanging(Water.pure(), List.of(Ion.CALCIUM), Ion.HYDROGEN, 1));
        Refused.argument(
                "Na⁺ cannot be exchanged for itself",
                () -> Change.exchanging(Water.pure(), List.of(Ion.CALCIUM, Ion.SODIUM), Ion.SODIUM, 1));
    }

    @Test
    void massAndVolumeOfADoseAreInRange() {
        Refused.argument(
                "mass of potassium chloride must not be negative, but was -1 g",
                () -> Change.dissolving(Compound.POTASSIUM_CHLORIDE, grams(-1), litres(1)));
        Refused.argument(
                "volume of the water must be positive, but was 0 L",
                () -> Change.dissolving(Compound.POTASSIUM_CHLORIDE, grams(1), litres(0)));
        Refused.argument(
                "volume of the water must be positive, but was -2 L",
                () -> Change.dissolving(Compound.POTASSIUM_CHLORIDE, grams(1), litres(-2)));
        Refused.argument(
                "dose of potassium chloride must not be negative, but was -3 g/L",
                () -> Change.dissolving(
                        Compound.POTASSIUM_CHLORIDE, MassConcentration.of(-3, MassConcentration.GRAM_PER_LITRE)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aFactorIsAFiniteNumber(double factor) {
        Refused.argument(
                "factor of a change must be a finite number, but was " + factor,
                () -> Change.of(Map.of()).times(factor));
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("amounts", () -> Change.of(null));
        Refused.asNull("before", () -> Change.between(null, Water.pure()));
        Refused.asNull("after", () -> Change.between(Water.pure(), null));
        Refused.asNull(
                "compound", () -> Change.dissolving(null, MassConcentration.of(1, MassConcentration.GRAM_PER_LITRE)));
        Refused.asNull("out", () -> Change.exchanging(null, Ion.SODIUM, mmol(1)));
        Refused.asNull("in", () -> Change.exchanging(Ion.CALCIUM, null, mmol(1)));
        Refused.asNull("that", () -> Change.of(Map.of()).plus(null));
        Refused.asNull("change", () -> Water.pure().plus(null));
        Refused.asNull("other", () -> Water.pure().mixedWith(null, 0.5));
    }
}
