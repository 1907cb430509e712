package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Hardness.FRENCH_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GRAIN_PER_US_GALLON;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.Refusals.assertNullRefused;
import static evenwater.chemistry.quantity.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.AmountOfSubstance;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** The whole of {@code javax.measure.Quantity}, method by method. */
class QuantityContractTest {

    /** Some roundings of a double, each 1.1e-16 relative. */
    private static final double ROUNDING = 1e-15;

    private final Hardness tap = Hardness.of(22, GRAIN_PER_US_GALLON);
    private final WaterQuantity<Volume> twoLitres = WaterUnits.volume(2, WaterUnits.LITRE);

    @Test
    void valueUnitAndScaleAreAsStated() {
        assertEquals(22.0, tap.getValue());
        assertSame(GRAIN_PER_US_GALLON, tap.getUnit());
        assertEquals(Quantity.Scale.ABSOLUTE, tap.getScale());
        assertEquals(22.0, tap.in(GRAIN_PER_US_GALLON));
    }

    @Test
    void toRestatesTheSameAmount() {
        Hardness restated = tap.to(GERMAN_DEGREE);
        assertSame(GERMAN_DEGREE, restated.getUnit());
        // 22 × 0.959104679 °dH/gpg from the reference table, nine digits
        assertEquals(21.1003029, restated.getValue(), 5e-8);
        assertEquals("21.100302942653812 °dH", restated.toString());
    }

    @Test
    void addKeepsTheUnitOfTheFirst() {
        Hardness sum = Hardness.of(10, GERMAN_DEGREE).add(Hardness.of(1, MILLIMOLE_PER_LITRE));
        assertSame(GERMAN_DEGREE, sum.getUnit());
        assertEquals(15.6077, sum.getValue(), 15.6077 * ROUNDING); // M(CaO) = 56.077 g/mol
    }

    @Test
    void subtractKeepsTheUnitOfTheFirstAndMayGoBelowZero() {
        Hardness difference = Hardness.of(5, GERMAN_DEGREE).subtract(Hardness.of(1, MILLIMOLE_PER_LITRE));
        assertSame(GERMAN_DEGREE, difference.getUnit());
        assertEquals(-0.6077, difference.getValue(), 5.6077 * ROUNDING);
    }

    @Test
    void multiplyAndDivideByANumberKeepTheUnit() {
        assertEquals(Hardness.of(66, GRAIN_PER_US_GALLON), tap.multiply(3));
        assertEquals(Hardness.of(11, GRAIN_PER_US_GALLON), tap.multiply(Float.valueOf(0.5f)));
        assertEquals(Hardness.of(11, GRAIN_PER_US_GALLON), tap.divide(2));
        assertEquals(Hardness.of(88, GRAIN_PER_US_GALLON), tap.divide(new BigDecimal("0.25")));
    }

    @Test
    void negateTurnsTheSign() {
        assertEquals(Hardness.of(-22, GRAIN_PER_US_GALLON), tap.negate());
        assertEquals("0 gpg", Hardness.of(0, GRAIN_PER_US_GALLON).negate().toString());
    }

    @Test
    void divisionByZeroIsRefused() {
        assertRefused("divisor of 22 gpg must not be 0", () -> tap.divide(0));
        assertRefused("divisor of 22 gpg must not be 0", () -> tap.divide(-0.0));
        assertRefused("divisor of 22 gpg must not be 0", () -> tap.divide(Integer.valueOf(0)));
        assertRefused("cannot divide by 0 L", () -> tap.divide(WaterUnits.volume(0, WaterUnits.LITRE)));
        assertRefused(
                "cannot divide by 0 °dH", () -> Hardness.of(0, GERMAN_DEGREE).inverse());
        assertRefused("ratio of 22 gpg to 0 °dH is not defined", () -> tap.ratioTo(Hardness.of(0, GERMAN_DEGREE)));
    }

    @Test
    void factorsThatAreNoNumbersAreRefused() {
        assertRefused("factor of 22 gpg must be a finite number, but was NaN", () -> tap.multiply(Double.NaN));
        assertRefused(
                "factor of 22 gpg must be a finite number, but was Infinity",
                () -> tap.multiply(Double.valueOf(Double.POSITIVE_INFINITY)));
        assertRefused(
                "divisor of 22 gpg must be a finite number, but was -Infinity",
                () -> tap.divide(Double.NEGATIVE_INFINITY));
    }

    @Test
    void ratioIsAPlainNumberWhateverTheUnits() {
        assertEquals(2.0, tap.ratioTo(Hardness.of(11, GRAIN_PER_US_GALLON)));
        // 1 mmol/L is 5.6077 °dH
        assertEquals(
                5.6077, Hardness.of(1, MILLIMOLE_PER_LITRE).ratioTo(Hardness.of(1, GERMAN_DEGREE)), 5.6077 * ROUNDING);
        assertRefused(
                "ratio to 1.0E-300 mmol/L of 1.0E300 mmol/L must be a finite number, but was Infinity",
                () -> Hardness.of(1e300, MILLIMOLE_PER_LITRE).ratioTo(Hardness.of(1e-300, MILLIMOLE_PER_LITRE)));
    }

    @Test
    void hardnessTimesVolumeIsAnAmount() {
        // 10 °dH · 2 L · 0.178326230 mmol/L/°dH = 3.56652460 mmol, nine digits
        assertEquals(0.00356652460, moles(Hardness.of(10, GERMAN_DEGREE).multiply(twoLitres)), 5e-12);
        assertEquals(0.00356652460, moles(twoLitres.multiply(Hardness.of(10, GERMAN_DEGREE))), 5e-12);
        assertEquals(
                0.00356652460,
                moles(Hardness.of(10, GERMAN_DEGREE).multiply(Quantities.getQuantity(2, Units.LITRE))),
                5e-12);
        assertEquals(
                0.00356652460,
                moles(Quantities.getQuantity(2, Units.LITRE).multiply(Hardness.of(10, GERMAN_DEGREE))),
                5e-12);
    }

    private static double moles(Quantity<?> amount) {
        return amount.asType(AmountOfSubstance.class).to(Units.MOLE).getValue().doubleValue();
    }

    @Test
    void hardnessDividedByHardnessIsANumber() {
        Quantity<?> ratio = Hardness.of(10, GERMAN_DEGREE).divide(Hardness.of(10, FRENCH_DEGREE));
        double number = ratio.asType(Dimensionless.class)
                .to(AbstractUnit.ONE)
                .getValue()
                .doubleValue();
        assertEquals(1.78479591, number, 5e-9); // °fH per °dH, reference table
    }

    @Test
    void inverseTurnsTheUnitToo() {
        Quantity<?> inverse = Hardness.of(10, GERMAN_DEGREE).inverse();
        assertEquals(0.1, inverse.getValue().doubleValue());
        assertEquals("1/°dH", inverse.getUnit().toString());
    }

    @Test
    void asTypeAcceptsItsOwnKindOnly() {
        Quantity<Hardness> same = tap.asType(Hardness.class);
        assertSame(tap, same);
        assertSame(twoLitres, twoLitres.asType(Volume.class));
        assertRefused(
                ClassCastException.class,
                "22 gpg is of kind hardness, not alkalinity",
                () -> tap.asType(Alkalinity.class));
        assertRefused(
                ClassCastException.class,
                "2 L is of kind volume, not exchange capacity",
                () -> twoLitres.asType(ExchangeCapacity.class));
    }

    @Test
    void equivalentIsTheSameAmountInAnyUnit() {
        assertTrue(
                Hardness.of(1, MILLIMOLE_PER_LITRE).isEquivalentTo(Hardness.of(2, Hardness.MILLIEQUIVALENT_PER_LITRE)));
        assertFalse(
                Hardness.of(1, MILLIMOLE_PER_LITRE).isEquivalentTo(Hardness.of(1, Hardness.MILLIEQUIVALENT_PER_LITRE)));
        assertTrue(Hardness.of(1, MILLIMOLE_PER_LITRE)
                .isEquivalentTo(Quantities.getQuantity(1000, Unchecked.<Hardness>unit(Units.MOLE.divide(Units.LITRE)))
                        .divide(1e6)));
    }

    @Test
    void systemUnitIsTheCoherentOne() {
        Quantity<Hardness> coherent = Hardness.of(10, GERMAN_DEGREE).toSystemUnit();
        assertEquals(Units.MOLE.divide(Units.CUBIC_METRE), coherent.getUnit());
        assertEquals(1.78326230, coherent.getValue().doubleValue(), 5e-9); // reference table
    }

    @Test
    void codeThatKnowsOnlyTheInterfacesMixesOursAndTheirs() {
        Quantity<Hardness> ours = Hardness.of(10, GERMAN_DEGREE);
        Quantity<Hardness> theirs = Quantities.getQuantity(20, GERMAN_DEGREE);
        assertEquals(15.0, mean(List.of(ours, theirs), GERMAN_DEGREE), 15 * ROUNDING);
        assertEquals(15.0, mean(List.of(theirs, ours), GERMAN_DEGREE), 15 * ROUNDING);
    }

    private static <Q extends Quantity<Q>> double mean(List<Quantity<Q>> quantities, Unit<Q> unit) {
        Quantity<Q> sum = quantities.get(0);
        for (Quantity<Q> next : quantities.subList(1, quantities.size())) {
            sum = sum.add(next);
        }
        return sum.divide(quantities.size()).to(unit).getValue().doubleValue();
    }

    @Test
    void nullIsRefusedByName() {
        assertNullRefused("unit", () -> Hardness.of(1, null));
        assertNullRefused("quantity", () -> Hardness.from(null));
        assertNullRefused("text", () -> Hardness.parse(null));
        assertNullRefused("spelling", () -> Hardness.parseUnit(null));
        assertNullRefused("unit", () -> tap.in(null));
        assertNullRefused("unit", () -> tap.to(null));
        assertNullRefused("quantity", () -> tap.add(null));
        assertNullRefused("quantity", () -> tap.subtract(null));
        assertNullRefused("quantity", () -> tap.ratioTo(null));
        assertNullRefused("quantity", () -> tap.compareTo(null));
        assertNullRefused("quantity", () -> tap.isEquivalentTo(null));
        assertNullRefused("factor", () -> tap.multiply((Number) null));
        assertNullRefused("factor", () -> tap.multiply((Quantity<?>) null));
        assertNullRefused("divisor", () -> tap.divide((Number) null));
        assertNullRefused("divisor", () -> tap.divide((Quantity<?>) null));
        assertNullRefused("type", () -> tap.asType((Class<Hardness>) null));
        assertNullRefused("locale", () -> tap.toText(null, 3));
        assertNullRefused("quantity", () -> WaterUnits.volume(null));
        assertNullRefused("text", () -> WaterUnits.parseTemperature(null));
        assertNullRefused("unit", () -> WaterUnits.ucumCode(null));
    }
}
