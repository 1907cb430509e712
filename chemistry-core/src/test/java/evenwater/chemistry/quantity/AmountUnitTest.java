package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Refusals.assertNullRefused;
import static evenwater.chemistry.quantity.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Masses of a basis that are units of amount: "mg/L N". */
class AmountUnitTest {

    /** Some roundings of a double, each 1.1e-16 relative. */
    private static final double ROUNDING = 1e-15;

    @Test
    void aMassOfABasisPerVolumeIsAUnitOfAmount() {
        MolarMass nitrogen = MolarMass.of(14.007, MolarMass.GRAM_PER_MOLE);
        Unit<AmountConcentration> asNitrogen =
                AmountConcentration.ofMass(MassConcentration.MILLIGRAM_PER_LITRE, "N", nitrogen);
        AmountConcentration nitrate = AmountConcentration.of(28.014, asNitrogen);
        assertEquals("28.014 mg/L N", nitrate.toString());
        assertEquals(2.0, nitrate.in(AmountConcentration.MILLIMOLE_PER_LITRE), 2 * ROUNDING);
        assertEquals(asNitrogen, AmountConcentration.ofMass(MassConcentration.MILLIGRAM_PER_LITRE, "N", nitrogen));
        // the other library reads the same size
        double theirs = Quantities.getQuantity(28.014, asNitrogen)
                .to(AmountConcentration.MILLIMOLE_PER_LITRE)
                .getValue()
                .doubleValue();
        assertEquals(2.0, theirs, 2 * ROUNDING);
    }

    @Test
    void theMassUnitOfABasisMayBeForeignOrAMultiple() {
        MolarMass nitrogen = MolarMass.of(14.007, MolarMass.GRAM_PER_MOLE);
        Unit<MassConcentration> gramPerLitre = Unchecked.unit(Units.GRAM.divide(Units.LITRE));
        Unit<MassConcentration> pairOfGrams = MassConcentration.GRAM_PER_LITRE.multiply(2);
        assertEquals(1000 / 14.007, millimoles(gramPerLitre, nitrogen), 72 * ROUNDING);
        assertEquals(2000 / 14.007, millimoles(pairOfGrams, nitrogen), 143 * ROUNDING);
    }

    private static double millimoles(Unit<MassConcentration> massUnit, MolarMass basisPerMole) {
        return AmountConcentration.of(1, AmountConcentration.ofMass(massUnit, "N", basisPerMole))
                .in(AmountConcentration.MILLIMOLE_PER_LITRE);
    }

    @Test
    void aBasisWeighsSomethingAndNotTheWorld() {
        assertRefused("mass of N must be from 0.001 to 100000 g/mol, but was 0 g/mol", () -> ofMass(0));
        assertRefused("mass of N must be from 0.001 to 100000 g/mol, but was 9.0E-4 g/mol", () -> ofMass(0.0009));
        assertRefused("mass of N must be from 0.001 to 100000 g/mol, but was 100001 g/mol", () -> ofMass(100_001));
        assertEquals("mg/L N", ofMass(0.001).toString());
        assertEquals("mg/L N", ofMass(100_000).toString());
        MolarMass nitrogen = MolarMass.of(14.007, MolarMass.GRAM_PER_MOLE);
        assertNullRefused("basis", () -> AmountConcentration.ofMass(MassConcentration.GRAM_PER_LITRE, null, nitrogen));
        assertNullRefused("unit", () -> AmountConcentration.ofMass(null, "N", nitrogen));
        assertNullRefused("quantity", () -> AmountConcentration.ofMass(MassConcentration.GRAM_PER_LITRE, "N", null));
    }

    private static Unit<AmountConcentration> ofMass(double gramsPerMole) {
        return AmountConcentration.ofMass(
                MassConcentration.MILLIGRAM_PER_LITRE, "N", MolarMass.of(gramsPerMole, MolarMass.GRAM_PER_MOLE));
    }
}
