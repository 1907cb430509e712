package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.testing.Amounts.alkalinityOf;
import static evenwater.chemistry.testing.Amounts.celsius;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import org.junit.jupiter.api.Test;

class FieldPHSensitivityTest {

    private static final Neutralizer CALCITE = Neutralizer.withCalcite();

    /** The README asks this well: 75 mg/L of sodium behind neutralizer and softener by the field pH, 32 by the laboratory's. */
    @Test
    void theSameWellByFieldAndLaboratory() {
        FieldPHSensitivity of = CALCITE.sensitivityToPH(well(5.9), 0.7);
        assertEquals(5.9, of.stated().rawPH(), 1e-9);
        assertEquals(6.6, of.higher().rawPH(), 1e-9);
        assertEquals(5.2, of.lower().rawPH(), 1e-9);
        assertEquals(75, 6 + sodium(of.stated()), 0.5);
        assertEquals(32, 6 + sodium(of.higher()), 0.5);
    }

    @Test
    void eachReadingIsWhatTheFilterMakesOfThatWater() {
        FieldPHSensitivity of = CALCITE.sensitivityToPH(well(5.9), 0.7);
        Water outlet = CALCITE.treat(well(6.6));
        assertAll(
                () -> assertEquals(
                        CALCITE.dissolved(well(6.6)).in(MILLIMOLE_PER_LITRE),
                        of.higher().dissolved().in(MILLIMOLE_PER_LITRE),
                        1e-9),
                () -> assertEquals(Speciation.of(outlet).pH(), of.higher().outletPH(), 1e-9),
                () -> assertEquals(
                        alkalinityOf(outlet), of.higher().alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE), 1e-9),
                () -> assertEquals(
                        Amounts.hardnessOf(outlet), of.higher().hardness().in(Hardness.MILLIMOLE_PER_LITRE), 1e-9),
                // two sodium for each calcium or magnesium, 22.990 g/mol
                () -> assertEquals(2 * 22.990 * Amounts.hardnessOf(outlet), sodium(of.higher()), 1e-3));
    }

    @Test
    void alkalinityAndIonsOfTheRawWaterStay() {
        FieldPHSensitivity of = CALCITE.sensitivityToPH(well(5.9));
        for (FieldPHSensitivity.Reading reading :
                new FieldPHSensitivity.Reading[] {of.lower(), of.stated(), of.higher()}) {
            double dissolved = reading.dissolved().in(MILLIMOLE_PER_LITRE);
            assertEquals(
                    alkalinityOf(well(5.9)) + 2 * dissolved,
                    reading.alkalinity().in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                    1e-9);
            assertEquals(
                    Amounts.hardnessOf(well(5.9)) + dissolved,
                    reading.hardness().in(Hardness.MILLIMOLE_PER_LITRE),
                    1e-9);
        }
    }

    /** 0.3 lower is twice the CO₂: 10^0.3. */
    @Test
    void unlessStatedItIsATwofoldOfTheCarbonDioxide() {
        FieldPHSensitivity of = CALCITE.sensitivityToPH(well(5.9));
        assertEquals(0.3, of.uncertainty());
        assertTrue(of.lower().sodiumOfASoftener().compareTo(of.stated().sodiumOfASoftener()) > 0);
        assertTrue(of.stated().sodiumOfASoftener().compareTo(of.higher().sodiumOfASoftener()) > 0);
        double carbonDioxide = Speciation.of(well(5.6)).carbonDioxide().in(MILLIMOLE_PER_LITRE)
                / Speciation.of(well(5.9)).carbonDioxide().in(MILLIMOLE_PER_LITRE);
        assertEquals(2, carbonDioxide, 0.01);
        assertEquals(110, sodium(of.lower()), 0.5);
        assertEquals(43, sodium(of.higher()), 0.5);
    }

    @Test
    void aWaterThatKnowsItsCarbonHasAPHToo() {
        Water known = Speciation.of(well(5.9)).water();
        FieldPHSensitivity byCarbon = CALCITE.sensitivityToPH(known);
        assertEquals(CALCITE.sensitivityToPH(well(5.9)), byCarbon);
        assertEquals(5.9, byCarbon.stated().rawPH(), 1e-9);
    }

    @Test
    void magnesiaAndAShareCountAsTheFilterIsSet() {
        Neutralizer filter = CALCITE.withMagnesia(0.2).reaching(0.8);
        FieldPHSensitivity of = filter.sensitivityToPH(well(5.9));
        assertEquals(
                filter.dissolved(well(5.9)).in(MILLIMOLE_PER_LITRE),
                of.stated().dissolved().in(MILLIMOLE_PER_LITRE),
                1e-9);
    }

    @Test
    void refusals() {
        Refused.argument(
                "uncertainty of a pH must be above 0, to 2, but was 0.0", () -> CALCITE.sensitivityToPH(well(5.9), 0));
        Refused.argument(
                "uncertainty of a pH must be above 0, to 2, but was NaN",
                () -> CALCITE.sensitivityToPH(well(5.9), Double.NaN));
        Refused.argument(
                "uncertainty of a pH must be above 0, to 2, but was 2.1",
                () -> CALCITE.sensitivityToPH(well(5.9), 2.1));
        FieldPHSensitivity.Reading one = CALCITE.sensitivityToPH(well(5.9)).stated();
        Refused.argument(
                "uncertainty of a pH must be above 0, to 2, but was -1.0",
                () -> new FieldPHSensitivity(-1, one, one, one));
        assertThrows(
                NoAnswerException.class, () -> CALCITE.toPH(7.6).sensitivityToPH(well(5.9))); // out of reach at pH 5.6
        Water unknown = Water.builder()
                .total(Ion.SODIUM, Amounts.mmol(1))
                .alkalinity(Amounts.alkalinity(1))
                .build();
        assertThrows(NoAnswerException.class, () -> CALCITE.sensitivityToPH(unknown));
    }

    private static double sodium(FieldPHSensitivity.Reading reading) {
        return reading.sodiumOfASoftener().in(Ion.SODIUM.milligramPerLitre());
    }

    /** The well of the README, of our own invention. */
    private static Water well(double pH) {
        return Water.builder()
                .total(Ion.CALCIUM, AmountConcentration.of(8, Ion.CALCIUM.milligramPerLitre()))
                .total(Ion.MAGNESIUM, AmountConcentration.of(2, Ion.MAGNESIUM.milligramPerLitre()))
                .total(Ion.SODIUM, AmountConcentration.of(6, Ion.SODIUM.milligramPerLitre()))
                .alkalinity(Alkalinity.of(20, Alkalinity.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE))
                .temperature(celsius(11))
                .measuredPH(pH)
                .build();
    }
}
