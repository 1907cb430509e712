package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.quantity.MassConcentration.MILLIGRAM_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CalculatedConductivityTest {

    private static double at25(Water water) {
        return CalculatedConductivity.at25Celsius(water).in(MICROSIEMENS_PER_CENTIMETRE);
    }

    private static Water salt(Ion cation, Ion anion, double millimoles) {
        return Water.pure().plus(Change.of(Map.of(cation, mmol(millimoles), anion, mmol(millimoles))));
    }

    /** CRC Handbook (NaCl read in a source that cites it); Standard Methods 2510 for KCl (from memory). */
    @ParameterizedTest
    @CsvSource({"NaCl, 1, 123.68", "NaCl, 10, 1184.5", "KCl, 10, 1412", "NaCl, 100, 10669"})
    void measuredSalts(String name, double millimoles, double measured) {
        Water water = salt(name.equals("KCl") ? Ion.POTASSIUM : Ion.SODIUM, Ion.CHLORIDE, millimoles);
        assertEquals(measured, at25(water), measured * 0.01);
    }

    /** ASTM D1125 and IAPWS (from memory): 0.0550 µS/cm. */
    @Test
    void pureWaterConductsByItsOwnIons() {
        assertEquals(0.0550, at25(Water.pure()), 0.0003);
    }

    /** H. R. Corti et al. and common practice: some 1.1 µS/cm in contact with air (a table of the CRC Handbook has 1.05). */
    @Test
    void theAirAddsAMicrosiemens() {
        double carbon = 0.0163; // 10^-1.468 × 420e-6 and the little HCO₃⁻ of pH 5.6, in mmol/L
        assertEquals(1.1, at25(Water.pure().withCarbon(mmol(carbon))), 0.15);
    }

    /**
     * US EPA 2002, moderately hard reconstituted water. The range of models, 300 to 315 µS/cm, leaves out ion pairs; the estimate of
     * Standard Methods is its lower end.
     */
    @Test
    void reconstitutedWater() {
        Water water = Water.pure();
        for (Map.Entry<String, Double> salt : Map.of("NaHCO3", 96.0, "CaSO4.2H2O", 60.0, "MgSO4", 60.0, "KCl", 4.0)
                .entrySet()) {
            water = water.plus(Change.dissolving(
                    Compound.named(salt.getKey()), MassConcentration.of(salt.getValue(), MILLIGRAM_PER_LITRE)));
        }
        assertEquals(300, CalculatedConductivity.byStandardMethods2510(water).in(MICROSIEMENS_PER_CENTIMETRE), 0.5);
        assertEquals(300, at25(water), 300 * 0.03); // what sets of constants may differ by
    }

    /**
     * Common practice, no source: a level teaspoon of table salt, about 6 g, in a US gallon of water from a membrane raises a meter with the
     * factor 0.7 by about 2120 ppm.
     */
    @Test
    void aTeaspoonOfTableSaltInAGallon() {
        double less = rise(5.7);
        double more = rise(6.2);
        assertTrue(less < 2120 && 2120 < more, () -> less + " to " + more + " ppm");
    }

    private static double rise(double grams) {
        Water membrane = salt(Ion.SODIUM, Ion.CHLORIDE, 0.2)
                .plus(Change.of(Map.of(Ion.SODIUM, mmol(0.1), Ion.BICARBONATE, mmol(0.1))));
        Dosing spoon = Dosing.of(
                Compound.SODIUM_CHLORIDE,
                WaterUnits.mass(grams, WaterUnits.GRAM),
                WaterUnits.volume(1, WaterUnits.US_GALLON));
        double before = ppm(membrane);
        return ppm(spoon.treat(membrane)) - before;
    }

    private static double ppm(Water water) {
        return FactorMeter.SCALE_700
                .reading(CalculatedConductivity.at25Celsius(water))
                .in(MILLIGRAM_PER_LITRE);
    }

    /** Practical Salinity Scale 1978 (from memory): 42.914 mS/cm at 15 °C and salinity 35, 53.06 at 25 °C. */
    @ParameterizedTest
    @CsvSource({"15, 42914", "25, 53060"})
    void seaWaterIsBeyondTheLawAndComesOutThreePercentHigh(double celsius, double measured) {
        Water sea = Water.builder() // Reference Composition, mmol per litre of 1.0233 kg
                .total(Ion.SODIUM, mmol(479.9))
                .total(Ion.MAGNESIUM, mmol(54.05))
                .total(Ion.CALCIUM, mmol(10.52))
                .total(Ion.POTASSIUM, mmol(10.45))
                .total(Ion.CHLORIDE, mmol(558.6))
                .total(Ion.SULFATE, mmol(28.89))
                .alkalinity(alkalinity(2.36))
                .carbon(mmol(2.0))
                .build();
        double ours = CalculatedConductivity.at(sea, celsius(celsius)).in(MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(1.028, ours / measured, 0.004);
    }

    private static Water tap() {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(2))
                .total(Ion.MAGNESIUM, mmol(0.5))
                .total(Ion.SODIUM, mmol(1))
                .total(Ion.CHLORIDE, mmol(1.5))
                .total(Ion.SULFATE, mmol(0.5))
                .temperature(celsius(12))
                .alkalinity(alkalinity(3.5))
                .build();
    }

    /** Computed from totals: carbon as much as alkalinity is a pH of some 8, so both ways nearly agree. */
    @Test
    void withoutCarbonAlkalinityIsBicarbonate() {
        Water unknown = tap();
        assertEquals(at25(unknown.withCarbon(mmol(3.5))), at25(unknown), 1e-9);
        Water read = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .alkalinity(alkalinity(3))
                .measuredPH(8.2)
                .build();
        assertEquals(at25(Speciation.of(read).water()), at25(read), 1e-9);
    }

    /** With CO₂ that a reading at 12 °C tells, whatever the temperature of the cell. */
    @Test
    void aReadingOfThePHBelongsToTheTemperatureOfTheWater() {
        Water read = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .alkalinity(alkalinity(3))
                .temperature(celsius(12))
                .measuredPH(9.5)
                .build();
        Water known = Speciation.of(read).water();
        assertEquals(at25(known), at25(read), 1e-9);
        assertTrue(Math.abs(at25(known) - at25(known.withCarbon(mmol(3)))) > 1);
    }

    @Test
    void acidWithoutCarbonConductsByHydrogen() {
        Water rain = Water.builder()
                .total(Ion.SULFATE, mmol(0.05))
                .alkalinity(alkalinity(-0.1))
                .build();
        // λ0 of H⁺ and ½ SO₄²⁻ at 0.1 meq/L, 1 to 3 % slowed
        assertEquals(0.98 * 0.1 * (349.65 + 80), at25(rain), 0.5);
        Water read = Water.builder()
                .total(Ion.SULFATE, mmol(0.05))
                .alkalinity(alkalinity(-0.1))
                .measuredPH(4.0)
                .build();
        assertEquals(at25(rain), at25(read), 1); // the last digit of a pH of 4.0 is worth more
    }

    @Test
    void waterWarmsAsTheSpeciesAt25DegreesDo() {
        Water water = tap().withCarbon(mmol(3.7));
        double cold = CalculatedConductivity.at(water, celsius(12)).in(MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(CalculatedConductivity.of(Speciation.of(water)).in(MICROSIEMENS_PER_CENTIMETRE), cold, 1e-9);
        // ISO 7888: f25(12 °C) = 1.354
        assertEquals(1.354, at25(water) / cold, 0.02);
    }

    /** Pratt et al. 2001, 0.01 mol/kg at 50 °C, read in the table of the CRC Handbook; a litre of 25 °C then fills 0.9 % more. */
    @Test
    void aLitreExpands() {
        Water water = salt(Ion.POTASSIUM, Ion.CHLORIDE, 9.97);
        double at50 = CalculatedConductivity.at(water, celsius(50)).in(MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(2123.43, at50, 2123.43 * 0.008);
    }

    @Test
    void unmeasuredChargeCarriesNothing() {
        Water lacking = Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .total(Ion.CHLORIDE, mmol(1))
                .alkalinity(alkalinity(1))
                .build();
        double without = at25(lacking);
        double carried = at25(Water.builder()
                .total(Ion.SODIUM, mmol(3))
                .total(Ion.CHLORIDE, mmol(2))
                .alkalinity(alkalinity(1))
                .build());
        assertEquals(76, carried - without, 5);
    }

    /** An own ion has the conductivity of sodium or chloride for each equivalent. */
    @Test
    void ownIonsCountBySignAndCharge() {
        double withPerchlorate = at25(salt(Ion.SODIUM, Waters.PERCHLORATE, 1));
        assertEquals(at25(salt(Ion.SODIUM, Ion.CHLORIDE, 1)), withPerchlorate, 1e-9);
        Water lead = Water.pure().plus(Change.of(Map.of(Waters.LEAD, mmol(0.5), Ion.CHLORIDE, mmol(1))));
        assertEquals(0.97 * (50.08 + 76.31), at25(lead), 2);
        Water urea = Water.pure().plus(Change.of(Map.of(Waters.UREA, mmol(1))));
        assertEquals(at25(Water.pure()), at25(urea), 1e-12);
    }

    /** The example of Standard Methods 2510 A; 482.8 by its formula, see the validation page. */
    @Test
    void theEstimateOfStandardMethods() {
        Water water = Water.builder()
                .total(Ion.CALCIUM, milligrams(55, Ion.CALCIUM))
                .total(Ion.MAGNESIUM, milligrams(12, Ion.MAGNESIUM))
                .total(Ion.SODIUM, milligrams(28, Ion.SODIUM))
                .total(Ion.POTASSIUM, milligrams(3.2, Ion.POTASSIUM))
                .total(Ion.SULFATE, milligrams(77, Ion.SULFATE))
                .total(Ion.CHLORIDE, milligrams(20, Ion.CHLORIDE))
                .alkalinity(alkalinity(170 / 61.016))
                .build();
        double estimate = CalculatedConductivity.byStandardMethods2510(water).in(MICROSIEMENS_PER_CENTIMETRE);
        assertEquals(482.8, estimate, 0.5); // weights and λ0 differ in the fourth digit
    }

    private static AmountConcentration milligrams(double value, Ion ion) {
        return AmountConcentration.of(value, ion.milligramPerLitre());
    }

    @Test
    void theEstimateKnowsMineralAcid() {
        Water acid = Water.builder()
                .total(Ion.CHLORIDE, mmol(1))
                .alkalinity(alkalinity(-1))
                .build();
        double estimate = CalculatedConductivity.byStandardMethods2510(acid).in(MICROSIEMENS_PER_CENTIMETRE);
        double y = Math.pow(10, -0.5 * (Math.sqrt(0.001) / (1 + Math.sqrt(0.001)) - 0.3 * 0.001));
        assertEquals((349.65 + 76.31) * y * y, estimate, 1e-9);
    }

    @Test
    void whatTheLawsDoNotReachIsRefused() {
        Water brine = salt(Ion.SODIUM, Ion.CHLORIDE, 501);
        Refused.withoutAnswer(
                "ionic strength must be at most 500 mmol/L for the conductivity of Standard Methods 2510, but is 501 mmol/L",
                List.of(mmol(501)),
                () -> CalculatedConductivity.byStandardMethods2510(brine));
        Water gypsum = Water.builder() // ½ (4 · 130 + 4 · 130)
                .total(Ion.CALCIUM, mmol(130))
                .total(Ion.SULFATE, mmol(130))
                .build();
        Refused.withoutAnswer(
                "ionic strength must be at most 500 mmol/L for the conductivity of Standard Methods 2510, but is 520 mmol/L",
                List.of(mmol(520)),
                () -> CalculatedConductivity.byStandardMethods2510(gypsum));
        Refused.argument(
                "temperature of a speciation must be from 0 °C to 50 °C, but was 51 °C",
                () -> CalculatedConductivity.at(brine, celsius(51)));
        Refused.asNull("water", () -> CalculatedConductivity.at25Celsius(null));
        Refused.asNull("water", () -> CalculatedConductivity.at(null, celsius(20)));
        Refused.asNull("temperature", () -> CalculatedConductivity.at(brine, null));
        Refused.asNull("speciation", () -> CalculatedConductivity.of(null));
        Refused.asNull("water", () -> CalculatedConductivity.byStandardMethods2510(null));
    }
}
