package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Hardness.FRENCH_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Hardness.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE;
import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.Hardness.MOLE_PER_CUBIC_METRE;
import static evenwater.chemistry.quantity.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a statement is: its numbers, its equality, its order. */
class WaterQuantityTest {

    private static List<Kind<?>> all() {
        return Kind.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void numbersThatAreNoneAreRefusedWithKindAndUnit(Kind<?> kind) {
        assertFiniteOnly(kind);
    }

    private static <Q extends Quantity<Q>> void assertFiniteOnly(Kind<Q> kind) {
        Unit<Q> unit = kind.units().get(0);
        for (double value : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            String name = kind == (Kind<?>) shareKind() ? "dimensionless" : kind.name();
            assertRefused(
                    name + " must be a finite number, but was " + value + " " + unit.getSymbol(),
                    () -> kind.of(value, unit));
        }
    }

    private static Kind<?> shareKind() {
        return Kind.all().stream()
                .filter(kind -> kind.name().equals("share"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void overflowIsRefused() {
        Hardness huge = Hardness.of(1e308, MILLIMOLE_PER_LITRE);
        assertRefused(
                ArithmeticException.class,
                "1.0E308 mmol/L is too large for a double in mg/L CaCO3",
                () -> huge.in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        assertRefused(
                ArithmeticException.class,
                "-1.0E308 mmol/L is too large for a double in mg/L CaCO3",
                () -> huge.negate().to(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        assertRefused(
                ArithmeticException.class,
                "1.0E308 mmol/L is too large for a double in °dH",
                () -> Hardness.of(1, GERMAN_DEGREE).add(huge));
        assertRefused("hardness must be a finite number, but was Infinity mmol/L", () -> huge.add(huge));
        assertRefused(
                "hardness must be a finite number, but was -Infinity mmol/L",
                () -> huge.negate().subtract(huge));
        assertRefused("hardness must be a finite number, but was Infinity mmol/L", () -> huge.multiply(10));
        assertRefused("hardness must be a finite number, but was Infinity mmol/L", () -> huge.divide(1e-5));
    }

    @Test
    void theLargestNumberStillConverts() {
        Hardness largest = Hardness.of(Double.MAX_VALUE, MILLIMOLE_PER_LITRE);
        assertEquals(Double.MAX_VALUE, largest.in(MOLE_PER_CUBIC_METRE));
        assertEquals(-Double.MAX_VALUE, largest.negate().in(MOLE_PER_CUBIC_METRE));
    }

    @Test
    void negativeZeroBecomesZero() {
        Hardness zero = Hardness.of(-0.0, GERMAN_DEGREE);
        assertEquals(0L, Double.doubleToRawLongBits(zero.getValue()));
        assertEquals(Hardness.of(0.0, GERMAN_DEGREE), zero);
        assertEquals("0 °dH", zero.toString());
        assertEquals(
                0L,
                Double.doubleToRawLongBits(
                        Hardness.of(0, GERMAN_DEGREE).multiply(-1).getValue()));
    }

    @Test
    void equalMeansTheSameStatement() {
        Hardness hardness = Hardness.of(7.3, GERMAN_DEGREE);
        assertEquals(hardness, Hardness.of(7.3, GERMAN_DEGREE));
        assertEquals(hardness.hashCode(), Hardness.of(7.3, GERMAN_DEGREE).hashCode());
        Stream.of(
                        Hardness.of(7.4, GERMAN_DEGREE),
                        Hardness.of(7.3, FRENCH_DEGREE),
                        CompensatedHardness.of(7.3, CompensatedHardness.GERMAN_DEGREE),
                        "7.3 °dH",
                        null)
                .forEach(other -> assertNotEquals(hardness, other));
    }

    @Test
    void statementsThatPrintAlikeInTwoKindsAreNotEqual() {
        Hardness hardness = Hardness.of(1, MILLIMOLE_PER_LITRE);
        AmountConcentration amount = AmountConcentration.of(1, AmountConcentration.MILLIMOLE_PER_LITRE);
        assertEquals(hardness.toString(), amount.toString());
        assertNotEquals(hardness, (Object) amount);
        assertNotEquals((Object) amount, hardness);
    }

    @Test
    void hashTellsValuesAndUnitsApart() {
        // not required of a hash, but one that forgets a part would fill hash tables unevenly
        int hash = Hardness.of(7.3, GERMAN_DEGREE).hashCode();
        assertNotEquals(hash, Hardness.of(7.4, GERMAN_DEGREE).hashCode());
        assertNotEquals(hash, Hardness.of(7.3, FRENCH_DEGREE).hashCode());
    }

    @Test
    void oneMillimoleAndTwoMilliequivalentsAreEquivalentAndNotEqual() {
        Hardness millimole = Hardness.of(1, MILLIMOLE_PER_LITRE);
        Hardness milliequivalents = Hardness.of(2, MILLIEQUIVALENT_PER_LITRE);
        assertEquals(0, millimole.compareTo(milliequivalents));
        assertTrue(millimole.isEquivalentTo(milliequivalents));
        assertNotEquals(millimole, milliequivalents);
    }

    @Test
    void unitsOfTheSameSizeAreEquivalentAndNotEqual() {
        assertNotEquals(Hardness.of(1, MILLIMOLE_PER_LITRE), Hardness.of(1, MOLE_PER_CUBIC_METRE));
        assertEquals(0, Hardness.of(1, MILLIMOLE_PER_LITRE).compareTo(Hardness.of(1, MOLE_PER_CUBIC_METRE)));
    }

    @Test
    void orderIsByAmountWhateverTheUnit() {
        Hardness soft = Hardness.of(7, FRENCH_DEGREE); // 0.699 mmol/L
        Hardness middle = Hardness.of(1, MILLIMOLE_PER_LITRE);
        Hardness hard = Hardness.of(6, GERMAN_DEGREE); // 1.07 mmol/L
        assertEquals(
                List.of(soft, middle, hard),
                Stream.of(hard, soft, middle).sorted().toList());
        assertTrue(soft.compareTo(hard) < 0);
        assertTrue(hard.compareTo(soft) > 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {22, 7.3, 1e-300, Double.MIN_VALUE, Double.MAX_VALUE, 0})
    void theStatedUnitGivesTheStatedNumberBack(double value) {
        assertEquals(value, Hardness.of(value, GERMAN_DEGREE).in(GERMAN_DEGREE));
        assertEquals(value, Hardness.of(value, GERMAN_DEGREE).to(GERMAN_DEGREE).getValue());
    }

    @ParameterizedTest
    @MethodSource("all")
    void fromReturnsOursAsItIs(Kind<?> kind) {
        assertFromIsSame(kind);
    }

    private static <Q extends Quantity<Q>> void assertFromIsSame(Kind<Q> kind) {
        if (!kind.name().equals("time")) { // times have no such method
            WaterQuantity<Q> ours = kind.of(3, kind.units().get(0));
            assertSame(ours, kind.from().apply(ours));
        }
    }

    @Test
    void roundDegreesConvertToRoundMilligrams() {
        // one quotient of scales keeps short decimals short
        assertEquals(100.0, Hardness.of(10, FRENCH_DEGREE).in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
        assertEquals(12.0, Hardness.of(1.2, FRENCH_DEGREE).in(MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE));
    }

    @Test
    void massFractionNeedsADensity() {
        MassConcentration seaWater = MassConcentration.ofMassFraction(
                WaterUnits.share(35, WaterUnits.GRAM_PER_KILOGRAM),
                MassConcentration.of(1.025, MassConcentration.KILOGRAM_PER_LITRE));
        // 35 g/kg × 1.025 kg/L = 35.875 g/L
        assertEquals(35_875, seaWater.in(MassConcentration.MILLIGRAM_PER_LITRE), 35_875 * 1e-15);
        assertSame(MassConcentration.MILLIGRAM_PER_LITRE, seaWater.getUnit());
    }

    @Test
    void massFractionRunsFromNothingToAllOfIt() {
        MassConcentration density = MassConcentration.of(1, MassConcentration.KILOGRAM_PER_LITRE);
        assertEquals(
                0,
                MassConcentration.ofMassFraction(WaterUnits.share(0, WaterUnits.ONE), density)
                        .getValue());
        assertEquals(
                1e6,
                MassConcentration.ofMassFraction(WaterUnits.share(100, WaterUnits.PERCENT), density)
                        .getValue());
        assertRefused(
                "mass fraction must be from 0 to 1, but was 101 %",
                () -> MassConcentration.ofMassFraction(WaterUnits.share(101, WaterUnits.PERCENT), density));
        assertRefused(
                "mass fraction must be from 0 to 1, but was -1 mg/kg",
                () -> MassConcentration.ofMassFraction(
                        WaterUnits.share(-1, WaterUnits.MILLIGRAM_PER_KILOGRAM), density));
        assertRefused(
                "density must be positive, but was 0 kg/L",
                () -> MassConcentration.ofMassFraction(WaterUnits.share(1, WaterUnits.PERCENT), density.multiply(0)));
    }

    @Test
    void sizesBeyondADoubleAreComparedInTheirOwnUnits() {
        MassConcentration huge = MassConcentration.of(1.7e308, MassConcentration.KILOGRAM_PER_LITRE);
        MassConcentration less = MassConcentration.of(1e306, MassConcentration.KILOGRAM_PER_LITRE);
        assertTrue(huge.compareTo(less) > 0);
        assertTrue(less.compareTo(huge) < 0);
        assertEquals(0, huge.compareTo(huge.multiply(1)));
        assertEquals(170, huge.ratioTo(less), 170 * 1e-15);
        assertTrue(huge.negate().compareTo(less) < 0);
        MassConcentration tiny = MassConcentration.of(4e-323, MassConcentration.MICROGRAM_PER_LITRE);
        MassConcentration tinier = MassConcentration.of(1e-323, MassConcentration.MICROGRAM_PER_LITRE);
        assertTrue(tiny.compareTo(tinier) > 0);
        assertEquals(4, tiny.ratioTo(tinier));
        assertTrue(tiny.compareTo(MassConcentration.of(0, MassConcentration.MICROGRAM_PER_LITRE)) > 0);
    }

    @Test
    void tinySizesCompareAlikeBothWays() {
        Hardness a = Hardness.of(2.072261515E-315, Hardness.MILLIEQUIVALENT_PER_LITRE);
        Hardness b = Hardness.of(6.05805662E-315, Hardness.GRAIN_PER_US_GALLON);
        assertEquals(Integer.signum(a.compareTo(b)), -Integer.signum(b.compareTo(a)));
    }

    @ParameterizedTest
    @MethodSource("all")
    void anotherValueKeepsKindAndUnit(Kind<?> kind) {
        assertKeepsKindAndUnit(kind);
    }

    private static <Q extends Quantity<Q>> void assertKeepsKindAndUnit(Kind<Q> kind) {
        for (Unit<Q> unit : kind.units()) {
            assertEquals(kind.of(21.5, unit), kind.of(20, unit).withValue(21.5));
            assertSame(
                    kind.of(20, unit).getClass(),
                    kind.of(20, unit).withValue(21.5).getClass());
        }
    }

    @Test
    void anotherValueMustBeOneOfTheKind() {
        assertRefused(
                "hardness must be a finite number, but was NaN °dH",
                () -> Hardness.of(1, GERMAN_DEGREE).withValue(Double.NaN));
        assertRefused(
                "temperature must not be below absolute zero, but was -300 °C",
                () -> WaterUnits.temperature(20, WaterUnits.CELSIUS).withValue(-300));
    }
}
