package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.grams;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What changes bring: alkalinity, totals and carbon, and the ways to write them. */
class ChangeTest {

    /** Reads "Na+ 1, HCO3- 1" as mmol/L of each. */
    static Map<Ion, AmountConcentration> amounts(String text) {
        Map<Ion, AmountConcentration> amounts = new TreeMap<>();
        for (String part : text.split(", ", -1)) {
            String[] words = part.split(" ", -1);
            amounts.put(Ion.parse(words[0]), mmol(Double.parseDouble(words[1])));
        }
        return amounts;
    }

    /** One way that a species goes into water, and what a water counts of it. */
    @ParameterizedTest(name = "{0}: {1} brings {2} meq, {3} mmol of carbon and {4}")
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = { // alkalinity: charges of the reference forms minus charges of the ions, by hand
                "HCl             | H+ 1, Cl- 1                  | -1 | 0 | Cl- 1             ",
                "H2SO4           | H+ 2, SO4^2- 1               | -2 | 0 | SO4^2- 1          ",
                "NaOH            | Na+ 1, OH- 1                 |  1 | 0 | Na+ 1             ",
                "NaHCO3          | Na+ 1, HCO3- 1               |  1 | 1 | Na+ 1             ",
                "Na2CO3          | Na+ 2, CO3^2- 1              |  2 | 1 | Na+ 2             ",
                "CaCO3           | Ca^2+ 1, CO3^2- 1            |  2 | 1 | Ca^2+ 1           ",
                "Ca(OH)2         | Ca^2+ 1, OH- 2               |  2 | 0 | Ca^2+ 1           ",
                "CO2             | CO2 1                        |  0 | 1 | -                 ",
                "H2CO3           | H+ 1, HCO3- 1                |  0 | 1 | -                 ",
                "CaCl2           | Ca^2+ 1, Cl- 2               |  0 | 0 | Ca^2+ 1, Cl- 2    ",
                "NH4Cl           | NH4+ 1, Cl- 1                |  0 | 0 | NH4+ 1, Cl- 1     ",
                "NH3             | NH3 1                        |  1 | 0 | NH4+ 1            ",
                "H3PO4           | H+ 1, H2PO4- 1               | -1 | 0 | H2PO4- 1          ",
                "KH2PO4          | K+ 1, H2PO4- 1               |  0 | 0 | K+ 1, H2PO4- 1    ",
                "K2HPO4          | K+ 2, HPO4^2- 1              |  1 | 0 | K+ 2, H2PO4- 1    ",
                "K3PO4           | K+ 3, PO4^3- 1               |  2 | 0 | K+ 3, H2PO4- 1    ",
                "H3BO3           | B(OH)3 1                     |  0 | 0 | B(OH)3 1          ",
                "NaB(OH)4        | Na+ 1, B(OH)4- 1             |  1 | 0 | Na+ 1, B(OH)3 1   ",
                "SiO2            | SiO2 1                       |  0 | 0 | SiO2 1            ",
                "NaH3SiO4        | Na+ 1, H3SiO4- 1             |  1 | 0 | Na+ 1, SiO2 1     ",
                "H2S             | H2S 1                        |  0 | 0 | H2S 1             ",
                "NaHS            | Na+ 1, HS- 1                 |  1 | 0 | Na+ 1, H2S 1      ",
                "NaF             | Na+ 1, F- 1                  |  0 | 0 | Na+ 1, F- 1       ",
                "NaNO2           | Na+ 1, NO2- 1                |  0 | 0 | Na+ 1, NO2- 1     ",
                "citric acid     | H+ 1, C6H7O7- 1              | -1 | 0 | C6H7O7- 1         ",
                "trisodium citr. | Na+ 3, C6H5O7^3- 1           |  2 | 0 | Na+ 3, C6H7O7- 1  ",
                "nitrification   | NH4+ -1, NO3- 1, H+ 2        | -2 | 0 | NH4+ -1, NO3- 1   ",
                "denitrification | NO3- -1, HCO3- 1             |  1 | 1 | NO3- -1           ",
                "softening       | Ca^2+ -1, Na+ 2              |  0 | 0 | Ca^2+ -1, Na+ 2   ",
                "degassing       | CO2 -1                       |  0 |-1 | -                 ",
                "calcite falls   | Ca^2+ -1, HCO3- -2, CO2 1    | -2 |-1 | Ca^2+ -1          ",
                "neutralisation  | H+ 1, OH- 1                  |  0 | 0 | -                 ",
                "water           | H2O 5                        |  0 | 0 | -                 "
            })
    void eachSpeciesBringsWhatAWaterCounts(String name, String ions, double equivalents, double carbon, String totals) {
        Change change = Change.of(amounts(ions));
        Map<Ion, AmountConcentration> counted = totals == null ? Map.of() : amounts(totals);
        assertAll(
                () -> assertEquals(alkalinity(equivalents), change.alkalinity()),
                () -> assertEquals(Optional.of(mmol(carbon)), change.carbon()),
                () -> assertEquals(List.copyOf(counted.keySet()), change.ions()),
                () -> counted.forEach((ion, amount) -> assertEquals(amount, change.total(ion))),
                () -> assertEquals(charge(0), change.unmeasuredCharge()),
                () -> assertEquals(charge(0), change.netCharge()));
    }

    @ParameterizedTest(name = "{0} is {1} and {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "K+ 2, HPO4^2- 1        | K+ 1, H2PO4- 1      | K+ 1, OH- 1",
                "K+ 3, PO4^3- 1         | K+ 2, HPO4^2- 1     | K+ 1, OH- 1",
                "Na+ 1, HCO3- 1         | CO2 1               | Na+ 1, OH- 1",
                "Na+ 2, CO3^2- 1        | Na+ 1, HCO3- 1      | Na+ 1, OH- 1",
                "NH4+ 1, Cl- 1          | NH3 1               | H+ 1, Cl- 1",
                "Na+ 1, B(OH)4- 1       | B(OH)3 1            | Na+ 1, OH- 1",
                "Na+ 1, H3SiO4- 1       | SiO2 1              | Na+ 1, OH- 1",
                "Ca^2+ 1, HCO3- 2       | Ca^2+ 1, CO3^2- 1   | CO2 1",
                "Na+ 1, Cl- 1           | Na+ 1, OH- 1        | H+ 1, Cl- 1"
            })
    void oneWaterHasOneWayToBeWritten(String whole, String one, String other) {
        Change sum = Change.of(amounts(one)).plus(Change.of(amounts(other)));
        assertEquals(Change.of(amounts(whole)), sum);
        // with amounts that no double hits: within a few roundings of 0.3
        Change tenths = Change.of(amounts(one))
                .times(0.1)
                .plus(Change.of(amounts(other)).times(0.1));
        Change wholeTenths = Change.of(amounts(whole)).times(0.1);
        for (Ion ion : sum.ions()) {
            assertEquals(of(ion, wholeTenths), of(ion, tenths), 2e-16);
        }
    }

    @Test
    void dissolvingAMassInAVolumeIsDissolvingADose() {
        // 2 mmol of CaCl₂·2H₂O, 147.008 g/mol, in 2 L
        Change change = Change.dissolving(Compound.CALCIUM_CHLORIDE_DIHYDRATE, grams(0.294016), litres(2));
        assertEquals(1, of(Ion.CALCIUM, change), 4e-16); // three roundings of 1
        assertEquals(2, of(Ion.CHLORIDE, change), 8e-16);
        assertEquals(
                change,
                Change.dissolving(
                        Compound.CALCIUM_CHLORIDE_DIHYDRATE,
                        MassConcentration.of(0.147008, MassConcentration.GRAM_PER_LITRE)));
    }

    @Test
    void dissolvingTakesAnyUnits() {
        Change change = Change.dissolving(
                Compound.SODIUM_BICARBONATE,
                WaterUnits.mass(1, WaterUnits.OUNCE),
                WaterUnits.volume(10, WaterUnits.US_GALLON));
        // 28349.523 mg / 37.85411784 L / 84.006 g/mol
        assertEquals(8.91502, of(Ion.SODIUM, change), 5e-6);
        assertEquals(8.91502, change.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 5e-6);
    }

    @Test
    void nothingDissolvedIsNoChange() {
        assertEquals(Change.of(Map.of()), Change.dissolving(Compound.DOLOMITE, grams(0), litres(1)));
    }

    @Test
    void oneCalciumMakesRoomForTwoSodium() {
        Change change = Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(1.5));
        assertEquals(mmol(-1.5), change.total(Ion.CALCIUM));
        assertEquals(mmol(3), change.total(Ion.SODIUM));
        assertEquals(alkalinity(0), change.alkalinity());
    }

    @Test
    void anionsAndAcidsAreExchangedToo() {
        Change dealkalised = Change.exchanging(Ion.BICARBONATE, Ion.CHLORIDE, mmol(2));
        assertEquals(Change.of(amounts("HCO3- -2, Cl- 2")), dealkalised);
        assertEquals(alkalinity(-2), dealkalised.alkalinity());
        Change hydrogenForm = Change.exchanging(Ion.MAGNESIUM, Ion.HYDROGEN, mmol(1));
        assertEquals(Change.of(amounts("Mg^2+ -1, H+ 2")), hydrogenForm);
        assertEquals(alkalinity(-2), hydrogenForm.alkalinity());
        assertEquals(
                mmol(2.0 / 3),
                Change.exchanging(Ion.SODIUM, Ion.ALUMINIUM, mmol(2)).total(Ion.ALUMINIUM));
    }

    @Test
    void aShareOfTheIonsOfAWaterIsExchanged() {
        Water water = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.MAGNESIUM, mmol(1))
                .total(Ion.POTASSIUM, mmol(8))
                .carbon(mmol(3))
                .build();
        Change change = Change.exchanging(
                water, List.of(Ion.MAGNESIUM, Ion.CALCIUM, Ion.BARIUM, Ion.POTASSIUM), Ion.SODIUM, 0.25);
        assertEquals(Change.of(amounts("Ca^2+ -0.5, Mg^2+ -0.25, K+ -2, Na+ 3.5")), change);
        assertEquals(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM), change.ions());
        Change intoDouble = Change.exchanging(water, List.of(Ion.POTASSIUM), Ion.CALCIUM, 0.5);
        assertEquals(Change.of(amounts("K+ -4, Ca^2+ 2")), intoDouble);
    }

    @Test
    void anIonThatIsNamedTwiceLeavesOnce() {
        Water water = Water.builder().total(Ion.CALCIUM, mmol(2)).build();
        Change change = Change.exchanging(water, List.of(Ion.CALCIUM, Ion.CALCIUM), Ion.SODIUM, 1);
        assertEquals(Change.of(amounts("Ca^2+ -2, Na+ 4")), change);
        assertEquals(charge(0), change.netCharge());
    }

    @Test
    void theDifferenceOfTwoWatersMayCarryUnmeasuredCharge() {
        Water before = Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .alkalinity(alkalinity(3))
                .carbon(mmol(3))
                .build();
        Change change = Change.between(before, before.dilutedBy(4));
        assertAll(
                () -> assertEquals(mmol(-1.5), change.total(Ion.CALCIUM)),
                () -> assertEquals(alkalinity(-2.25), change.alkalinity()),
                () -> assertEquals(charge(0.75), change.unmeasuredCharge()),
                () -> assertEquals(Optional.of(mmol(-2.25)), change.carbon()),
                () -> assertEquals(charge(0), change.netCharge()));
    }

    @Test
    void theDifferenceToAnUnknownCarbonIsUnknown() {
        Water unknown = Water.builder().build();
        assertEquals(Optional.empty(), Change.between(Water.pure(), unknown).carbon());
        assertEquals(Optional.empty(), Change.between(unknown, Water.pure()).carbon());
        assertEquals(Optional.empty(), Change.between(unknown, unknown).times(0).carbon());
    }

    @Test
    void changesAddUpAndScale() {
        Change salt = Change.of(amounts("Na+ 1, Cl- 1"));
        Change lime = Change.of(amounts("Ca^2+ 1, OH- 2"));
        assertEquals(
                Change.of(amounts("Na+ 1, Cl- 1, Ca^2+ 2, OH- 4")),
                salt.plus(lime).plus(lime));
        assertEquals(Change.of(amounts("Ca^2+ -2.5, OH- -5")), lime.times(-2.5));
        assertEquals(Change.of(Map.of()), lime.times(0));
        assertEquals(Change.of(Map.of()), salt.plus(salt.times(-1)));
        assertEquals(List.of(), salt.plus(salt.times(-1)).ions());
    }

    @Test
    void theMapOfAmountsIsReadOnceAndItsOrderDoesNotMatter() {
        Map<Ion, AmountConcentration> amounts = new HashMap<>(amounts("Na+ 1, Cl- 1"));
        Change change = Change.of(amounts);
        amounts.put(Ion.SODIUM, mmol(2));
        assertEquals(mmol(1), change.total(Ion.SODIUM));
        assertThrows(UnsupportedOperationException.class, () -> change.ions().clear());
    }
}
