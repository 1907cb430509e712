package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DosingTest {

    @Test
    void aDoseIsMassPerVolumeAndWhatItBrings() {
        Dosing dosing = Dosing.of(Compound.SODIUM_BICARBONATE, grams(8.4006), litres(50));
        assertAll(
                () -> assertEquals(Compound.SODIUM_BICARBONATE, dosing.compound()),
                // 8.4006 g / 50 L and 84.006 g/mol: 2 mmol/L
                () -> assertEquals(0.168012, dosing.dose().in(MassConcentration.GRAM_PER_LITRE), 1e-16),
                () -> assertEquals(2, of(Ion.SODIUM, dosing.change()), 1e-15),
                () -> assertEquals(2, dosing.change().alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-15));
    }

    @Test
    void treatingAddsTheChangeAndNothingElse() {
        Water source = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .alkalinity(alkalinity(1.5))
                .carbon(mmol(2))
                .build();
        Dosing dosing = Dosing.of(Compound.MAGNESIUM_SULFATE_HEPTAHYDRATE, grams(2.46466), litres(10));
        assertEquals(source.plus(dosing.change()), dosing.treat(source));
        assertEquals(charge(-0.5), dosing.treat(source).unmeasuredCharge());
        assertEquals(alkalinity(1.5), dosing.treat(source).alkalinity());
    }

    @ParameterizedTest(name = "{0}: {1} g in 100 L raise hardness by {2} °dH and alkalinity by {3} °dKH")
    @CsvSource({ // by hand: g / M · n / 100 L over 0.17832623 mmol/L, and over 0.35665246 meq/L
        "gypsum, 3.0701, 1, 0", // 172.164 g/mol
        "calcium chloride dihydrate, 2.6215, 1, 0", // 147.008 g/mol
        "Epsom salt, 4.3951, 1, 0", // 246.466 g/mol
        "baking soda, 2.9961, 0, 1", // 84.006 g/mol
        "calcium carbonate, 1.7848, 1, 1", // 100.086 g/mol
        "dolomite, 1.6442, 1, 1", // 184.399 g/mol, two hardness ions
        "potassium bicarbonate, 3.5706, 0, 1" // 100.114 g/mol
    })
    void recipesOfTheAquariumShelf(String name, double mass, double degrees, double carbonateDegrees) {
        Water water = Dosing.of(Compound.named(name), grams(mass), litres(100)).treat(Water.pure());
        assertEquals(degrees, water.hardness().in(Hardness.GERMAN_DEGREE), 3e-5); // masses to 0.1 mg
        assertEquals(carbonateDegrees, water.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS), 3e-5);
    }

    @ParameterizedTest(name = "{0}: {1} g in 100 L for {2} °dH or {3} °dKH")
    @CsvSource({
        "gypsum, 3.0701, 1, 0",
        "Epsom salt, 13.1854, 3, 0",
        "dolomite, 1.6442, 1, 0",
        "baking soda, 2.9961, 0, 1"
    })
    void aRiseTellsTheMass(String name, double mass, double degrees, double carbonateDegrees) { // the same by hand
        Compound compound = Compound.named(name);
        Dosing dosing = degrees > 0
                ? Dosing.raisingHardness(compound, Hardness.of(degrees, Hardness.GERMAN_DEGREE), litres(100))
                : Dosing.raisingAlkalinity(
                        compound,
                        Alkalinity.of(carbonateDegrees, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS),
                        litres(100));
        assertEquals(mass, dosing.mass().in(WaterUnits.GRAM), 1e-4);
        Water water = dosing.treat(Water.pure());
        double reached = degrees > 0
                ? water.hardness().in(Hardness.GERMAN_DEGREE)
                : water.alkalinity().in(Alkalinity.DEGREE_OF_CARBONATE_HARDNESS);
        assertEquals(degrees + carbonateDegrees, reached, 1e-14);
    }

    @Test
    void aRiseIsNamedByWhatToWeigh() {
        assertEquals(
                "3.07 g of calcium sulfate dihydrate in 100 L",
                Dosing.raisingHardness(
                                Compound.CALCIUM_SULFATE_DIHYDRATE, Hardness.of(1, Hardness.GERMAN_DEGREE), litres(100))
                        .toString());
    }

    @Test
    void anAcidLowersAlkalinityByItsStrength() {
        Compound sold = Compound.HYDROCHLORIC_ACID.ofStrength(0.37);
        // 36.458 g/mol: 1 meq/L in 100 L takes 3.6458 g of HCl, 9.8535 g of the acid as sold
        Dosing dosing = Dosing.raisingAlkalinity(sold, alkalinity(-1), litres(100));
        assertEquals(9.8535, dosing.mass().in(WaterUnits.GRAM), 1e-4);
        assertEquals(-1, dosing.change().alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-14);
        assertEquals("9.854 g of hydrochloric acid 37 % in 100 L", dosing.name());
        assertEquals(
                0.37,
                of(Ion.CHLORIDE, Dosing.of(sold, grams(3.6458), litres(100)).change()),
                1e-6);
    }

    @Test
    void whatDoesNotMoveItCannotRaiseIt() {
        Hardness degree = Hardness.of(1, Hardness.GERMAN_DEGREE);
        Refused.argument(
                "sodium bicarbonate does not move hardness, so it cannot change it by 1 °dH",
                () -> Dosing.raisingHardness(Compound.SODIUM_BICARBONATE, degree, litres(1)));
        Refused.argument(
                "calcium sulfate dihydrate only raises hardness, so it cannot change it by -1 °dH",
                () -> Dosing.raisingHardness(
                        Compound.CALCIUM_SULFATE_DIHYDRATE, Hardness.of(-1, Hardness.GERMAN_DEGREE), litres(1)));
        Refused.argument(
                "hydrochloric acid only lowers alkalinity, so it cannot change it by 1 meq/L",
                () -> Dosing.raisingAlkalinity(Compound.HYDROCHLORIC_ACID, alkalinity(1), litres(1)));
        Refused.argument(
                "sodium chloride does not move alkalinity, so it cannot change it by 0 meq/L",
                () -> Dosing.raisingAlkalinity(Compound.SODIUM_CHLORIDE, alkalinity(0), litres(1)));
        Refused.argument(
                "volume of the water must be positive, but was 0 L",
                () -> Dosing.raisingHardness(Compound.CALCIUM_SULFATE_DIHYDRATE, degree, litres(0)));
    }

    @Test
    void noRiseTakesNothing() {
        assertEquals(
                grams(0),
                Dosing.raisingHardness(Compound.DOLOMITE, Hardness.of(0, Hardness.GERMAN_DEGREE), litres(1))
                        .mass());
    }

    @Test
    void massAndVolumeMayBeInAnyUnits() {
        Dosing dosing = Dosing.of(
                Compound.POTASSIUM_CHLORIDE,
                WaterUnits.mass(500, WaterUnits.MILLIGRAM),
                WaterUnits.volume(2.5, WaterUnits.US_GALLON));
        assertEquals(0.5 / 9.46352946, dosing.dose().in(MassConcentration.GRAM_PER_LITRE), 1e-16);
        assertEquals("500 mg of potassium chloride in 2.5 gal(US)", dosing.name());
    }

    @Test
    void teaspoonsAreAsGoodAsTheirFigure() {
        Dosing dosing = Dosing.teaspoons(Compound.SODIUM_BICARBONATE, 2.5, litres(100));
        assertEquals(
                "2.5 tsp(US) (4.6 g ± 10 % each) of sodium bicarbonate in 100 L",
                dosing.name()); // a figure with its uncertainty, not a promise
        assertEquals(0.115, dosing.dose().in(MassConcentration.GRAM_PER_LITRE), 1e-16);
        Dosing weighed = Dosing.of(Compound.SODIUM_BICARBONATE, grams(11.5), litres(100));
        assertEquals(weighed.change(), dosing.change());
        assertEquals(weighed.treat(Water.pure()), dosing.treat(Water.pure()));
        assertEquals(Compound.SODIUM_BICARBONATE, dosing.compound());
    }

    @Test
    void teaspoonsHoldLessOrMore() {
        Dosing spoons = Dosing.teaspoons(Compound.SODIUM_BICARBONATE, 2, litres(100)); // 4.6 g ± 10 % each
        assertEquals(2 * 4.6 * 0.9, spoons.least().mass().in(WaterUnits.GRAM), 1e-14);
        assertEquals(2 * 4.6 * 1.1, spoons.most().mass().in(WaterUnits.GRAM), 1e-14);
        assertEquals("10.12 g of sodium bicarbonate in 100 L", spoons.most().name());
        assertSame(spoons.least().compound(), spoons.compound());
        Dosing weighed = Dosing.of(Compound.SODIUM_BICARBONATE, WaterUnits.mass(9.2, WaterUnits.GRAM), litres(100));
        assertSame(weighed, weighed.least());
        assertSame(weighed, weighed.most());
    }

    @Test
    void teaspoonsOfWhatNobodyHasMeasuredAreRefused() {
        Refused.argument(
                "mass of a teaspoon of potassium bromide is not known: weigh it",
                () -> Dosing.teaspoons(Compound.POTASSIUM_BROMIDE, 1, litres(1)));
        Refused.argument(
                "teaspoons of sodium bicarbonate must be 0 or more, but were -1.0",
                () -> Dosing.teaspoons(Compound.SODIUM_BICARBONATE, -1, litres(1)));
    }

    @ParameterizedTest(name = "{1} g of {0} in 1 L")
    @CsvSource({
        "gypsum, 3, true",
        "gypsum, 2, false",
        "gypsum, 2.55, false", // just dissolves
        "calcium carbonate, 0.1, true",
        "sodium chloride, 300, false",
        "sodium chloride, 400, true",
        "calcium chloride dihydrate, 900, false", // 745 g of the anhydrous salt are 1303 g of this one
        "calcium chloride dihydrate, 1350, true",
        "sulfuric acid, 5000, false" // mixes in all proportions
    })
    void solubilityIsExceeded(String name, double mass, boolean exceeded) {
        assertEquals(
                exceeded,
                Dosing.of(Compound.named(name), grams(mass), litres(1)).exceedsSolubility());
    }

    @Test
    void massAndVolumeAreInRange() {
        Refused.argument(
                "mass of potassium chloride must not be negative, but was -1 g",
                () -> Dosing.of(Compound.POTASSIUM_CHLORIDE, grams(-1), litres(1)));
        Refused.argument(
                "volume of the water must be positive, but was 0 L",
                () -> Dosing.of(Compound.POTASSIUM_CHLORIDE, grams(1), litres(0)));
    }

    @Test
    void aDoseNeedsAWater() {
        Refused.asNull(
                "source",
                () -> Dosing.of(Compound.POTASSIUM_CHLORIDE, grams(1), litres(1))
                        .treat(null));
    }

    @Test
    void nothingDosedChangesNothing() {
        Dosing nothing = Dosing.of(Compound.DOLOMITE, grams(0), litres(1));
        assertEquals(Water.pure(), nothing.treat(Water.pure()));
        assertEquals(Change.between(Water.pure(), Water.pure()), nothing.change());
    }

    @Test
    void whatIsOutOfRangeIsNamedForWhatItIs() {
        Refused.argument(
                "volume of the water must be positive, but was -10 L",
                () -> Dosing.raisingHardness(Compound.CALCIUM_SULFATE_DIHYDRATE, hardness(1), litres(-10)));
        Refused.argument(
                "teaspoons of sodium bicarbonate must be 0 or more, but were NaN",
                () -> Dosing.teaspoons(Compound.SODIUM_BICARBONATE, Double.NaN, litres(1)));
    }

    @Test
    void aStrengthBelowOneNeverReadsAsAll() {
        assertEquals(
                "hydrochloric acid 99.999 %",
                Compound.HYDROCHLORIC_ACID.ofStrength(0.99999).name());
        assertEquals(
                "hydrochloric acid 31.45 %",
                Compound.HYDROCHLORIC_ACID.ofStrength(0.3145).name());
        assertEquals(
                "reverse osmosis rejecting 99.999 % of single-charged and 100 % of multiple-charged ions",
                ReverseOsmosis.rejecting(0.99999, 1).name());
    }
}
