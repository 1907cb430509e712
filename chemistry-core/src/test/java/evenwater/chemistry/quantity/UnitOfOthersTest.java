package evenwater.chemistry.quantity;

import static evenwater.chemistry.quantity.Hardness.FRENCH_DEGREE;
import static evenwater.chemistry.quantity.Hardness.GERMAN_DEGREE;
import static evenwater.chemistry.quantity.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Optional;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tech.units.indriya.function.AbstractConverter;
import tech.units.indriya.function.ExpConverter;
import tech.units.indriya.function.LogConverter;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.TransformedUnit;
import tech.units.indriya.unit.Units;

/** Our quantities in units of another library, and that library's quantities in ours. */
class UnitOfOthersTest {

    /** Some roundings of a double, each 1.1e-16 relative. */
    private static final double ROUNDING = 1e-15;

    private static final Unit<Hardness> MOLE_PER_LITRE = Unchecked.unit(Units.MOLE.divide(Units.LITRE));
    private static final Unit<Hardness> MILLIMOLE_PER_LITRE =
            Unchecked.unit(MetricPrefix.MILLI(Units.MOLE).divide(Units.LITRE));

    private static List<Kind<?>> all() {
        return Kind.all();
    }

    @Test
    void aForeignUnitOfTheDimensionIsAccepted() {
        Hardness foreign = Hardness.of(2, MILLIMOLE_PER_LITRE);
        assertSame(MILLIMOLE_PER_LITRE, foreign.getUnit());
        assertEquals("2 mmol/l", foreign.toString());
        assertEquals(2.0, foreign.in(MILLIMOLE_PER_LITRE));
        assertEquals(11.2154, foreign.in(GERMAN_DEGREE), 11.2154 * ROUNDING); // 5.6077 °dH per mmol/L
        assertEquals(5607.7, Hardness.of(1, MOLE_PER_LITRE).in(GERMAN_DEGREE), 5607.7 * ROUNDING);
    }

    @Test
    void ourQuantityAnswersInForeignUnits() {
        Hardness hardness = Hardness.of(5.6077, GERMAN_DEGREE);
        assertEquals(1.0, hardness.in(MILLIMOLE_PER_LITRE), ROUNDING);
        assertEquals(0.001, hardness.in(MOLE_PER_LITRE), 0.001 * ROUNDING);
        assertSame(MOLE_PER_LITRE, hardness.to(MOLE_PER_LITRE).getUnit());
    }

    @Test
    void equalForeignUnitsMakeEqualStatements() {
        Unit<Hardness> again = Unchecked.unit(MetricPrefix.MILLI(Units.MOLE).divide(Units.LITRE));
        assertEquals(Hardness.of(2, MILLIMOLE_PER_LITRE), Hardness.of(2, again));
        assertEquals(
                Hardness.of(2, MILLIMOLE_PER_LITRE).hashCode(),
                Hardness.of(2, again).hashCode());
        assertEquals(2.0, Hardness.of(2, MILLIMOLE_PER_LITRE).in(again), 2 * ROUNDING);
        assertNotEquals(Hardness.of(2, MILLIMOLE_PER_LITRE), Hardness.of(2, Hardness.MILLIMOLE_PER_LITRE));
    }

    @Test
    void everydayUnitsOfOthersAreAccepted() {
        // 3.785411784 L and 64.79891 mg are exact
        assertEquals(1.0, WaterUnits.volume(3.785411784, Units.LITRE).in(WaterUnits.US_GALLON), ROUNDING);
        assertEquals(1.0, WaterUnits.mass(0.06479891, Units.GRAM).in(WaterUnits.GRAIN), ROUNDING);
        assertEquals(0.5, WaterUnits.time(30, Units.MINUTE).in(WaterUnits.HOUR), ROUNDING);
        assertEquals(0.05, WaterUnits.share(5, Units.PERCENT).in(WaterUnits.ONE), ROUNDING);
        assertEquals(8000, volumeInLitres(Quantities.getQuantity(8, Units.CUBIC_METRE)), 8000 * ROUNDING);
    }

    private static double volumeInLitres(Quantity<Volume> anyones) {
        return WaterUnits.volume(anyones).in(WaterUnits.LITRE);
    }

    @Test
    void multiplesOfOurUnitsAreUnitsOfTheKind() {
        Unit<Hardness> pair = GERMAN_DEGREE.multiply(2);
        assertEquals(6.0, Hardness.of(3, pair).in(GERMAN_DEGREE), 6 * ROUNDING);
        assertEquals(1.5, Hardness.of(3, GERMAN_DEGREE).in(pair), 1.5 * ROUNDING);
        Unit<Hardness> milli = GERMAN_DEGREE.prefix(MetricPrefix.MILLI);
        assertEquals("7 m°dH", Hardness.of(7, milli).toString());
        assertEquals(0.007, Hardness.of(7, milli).in(GERMAN_DEGREE), 0.007 * ROUNDING);
        assertEquals(0.25, Hardness.of(1, GERMAN_DEGREE.divide(4)).in(GERMAN_DEGREE), ROUNDING);
    }

    @Test
    void otherLibrariesConvertPrintAndAddInOurUnits() {
        Quantity<Hardness> theirs = Quantities.getQuantity(10, GERMAN_DEGREE);
        assertEquals("10 °dH", theirs.toString());
        // 1.78479591 °fH/°dH and 0.959104679 °dH/gpg of the reference table, nine digits
        assertEquals(17.8479591, theirs.to(FRENCH_DEGREE).getValue().doubleValue(), 5e-8);
        Quantity<Hardness> sum = theirs.add(Hardness.of(1, Hardness.GRAIN_PER_US_GALLON));
        assertEquals(10.959104679, sum.getValue().doubleValue(), 5e-9);
        assertEquals(Hardness.of(10, GERMAN_DEGREE), Hardness.from(theirs));
        assertEquals(
                Hardness.of(11, GERMAN_DEGREE), Hardness.of(1, GERMAN_DEGREE).add(theirs));
        assertEquals(0, Hardness.of(10, GERMAN_DEGREE).compareTo(theirs));
    }

    @ParameterizedTest
    @MethodSource("all")
    void otherLibrariesConvertBetweenAnyTwoOfOurUnits(Kind<?> kind) {
        assertIndriyaAgrees(kind);
    }

    private static <Q extends Quantity<Q>> void assertIndriyaAgrees(Kind<Q> kind) {
        for (Unit<Q> from : kind.units()) {
            for (Unit<Q> to : kind.units()) {
                double expected = kind.of(300, from).in(to);
                double theirs =
                        Quantities.getQuantity(300, from).to(to).getValue().doubleValue();
                // two ways to round; temperatures lose some digits beside their zero
                assertEquals(expected, theirs, Math.abs(expected) * 1e-14 + 1e-12, from + " to " + to);
                assertTrue(from.isCompatible(to));
                assertEquals(sameScale(from, to), from.isEquivalentTo(to), from + " is " + to);
            }
        }
    }

    private static boolean sameScale(Unit<?> one, Unit<?> other) {
        boolean sameSize =
                PinnedScales.sizes().get(one).compareTo(PinnedScales.sizes().get(other)) == 0;
        boolean sameZero = (one == WaterUnits.CELSIUS) == (other == WaterUnits.CELSIUS);
        return sameSize && sameZero;
    }

    @ParameterizedTest
    @MethodSource("all")
    void ourUnitsHaveTheDimensionAndTheSystemUnitOfTheKind(Kind<?> kind) {
        for (Unit<?> unit : kind.units()) {
            assertEquals(kind.coherentUnit().getDimension(), unit.getDimension(), unit::toString);
            assertEquals(kind.coherentUnit(), unit.getSystemUnit(), unit::toString);
            assertEquals(kind.coherentUnit().getBaseUnits(), unit.getBaseUnits(), unit::toString);
        }
    }

    @Test
    void ourUnitsPrintTheirSymbols() {
        assertEquals("°dH", GERMAN_DEGREE.toString());
        assertEquals("°dH", GERMAN_DEGREE.getSymbol());
        assertEquals("°dH", GERMAN_DEGREE.getName());
        assertEquals("°dH·l", GERMAN_DEGREE.multiply(Units.LITRE).toString());
        assertEquals("°dH·L", GERMAN_DEGREE.multiply(WaterUnits.LITRE).toString());
        assertEquals("°dH/°fH", GERMAN_DEGREE.divide(FRENCH_DEGREE).toString());
    }

    @Test
    void unitsAreEqualWithinAKindByNameAndSize() {
        assertEquals(
                KindScale.unit(Hardness.class, Coherent.MOLE_PER_CUBIC_METRE, "x", "", ratio(1, 2)), scale("x", 1, 2));
        assertNotEquals(scale("x", 1, 2), scale("y", 1, 2));
        assertNotEquals(scale("x", 1, 2), scale("x", 1, 3));
        assertNotEquals(
                KindScale.<Hardness>shiftedUnit(Hardness.class, Coherent.KELVIN, "x", "", ratio(1, 2), 5),
                scale("x", 1, 2));
        assertNotEquals((Object) Alkalinity.MILLIMOLE_PER_LITRE, Hardness.MILLIMOLE_PER_LITRE);
        assertNotEquals((Object) GERMAN_DEGREE, "°dH");
        assertEquals(scale("x", 1, 2).hashCode(), scale("x", 1, 2).hashCode());
    }

    private static Unit<Hardness> scale(String symbol, long num, long den) {
        return KindScale.unit(Hardness.class, Coherent.MOLE_PER_CUBIC_METRE, symbol, "", ratio(num, den));
    }

    private static Definition ratio(long num, long den) {
        return Definition.ONE.times(num, "a", "b").over(den, "c", "d");
    }

    @Test
    void anotherLibrarysQuantityInOurUnitSurvivesSerialization() throws IOException, ClassNotFoundException {
        Quantity<Hardness> theirs = Quantities.getQuantity(10, GERMAN_DEGREE);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(theirs);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            Quantity<Hardness> read = Unchecked.quantity((Quantity<?>) in.readObject());
            assertEquals(theirs, read);
            assertEquals(Hardness.of(10, GERMAN_DEGREE), Hardness.from(read));
            assertEquals(
                    Hardness.of(10, GERMAN_DEGREE).in(FRENCH_DEGREE),
                    Hardness.from(read).in(FRENCH_DEGREE));
        }
    }

    @Test
    void unitsThatAreNoMultipleAreRefused() {
        assertRefused(
                "hardness cannot be stated in °dH+5, which is no multiple of mol/m³",
                () -> Hardness.of(1, GERMAN_DEGREE.shift(5)));
        assertRefused(
                "hardness cannot be stated in [mol/l?], which is no multiple of mol/m³",
                () -> Hardness.of(1, MOLE_PER_LITRE.transform(new LogConverter(10))));
        assertRefused(
                "hardness cannot be stated in [mol/l?], which is no multiple of mol/m³",
                () -> Hardness.of(1, MOLE_PER_LITRE.transform(new ExpConverter(10))));
    }

    @Test
    void productsOfShiftedScalesAreRefused() {
        Unit<Dimensionless> nonsense = Unchecked.unit(Units.CELSIUS.divide(Units.KELVIN));
        assertRefused("cannot convert ℃/K to one", () -> WaterUnits.share(1, nonsense));
    }

    @Test
    void aForeignNumberThatIsNoneIsRefused() {
        Quantity<Hardness> broken = brokenQuantity(Double.NaN);
        assertRefused("hardness must be a finite number, but was NaN °dH", () -> Hardness.from(broken));
        assertRefused(
                "hardness must be a finite number, but was NaN °dH",
                () -> Hardness.of(1, GERMAN_DEGREE).add(broken));
    }

    /** A quantity of a library that lets NaN through; indriya does not. */
    private static Quantity<Hardness> brokenQuantity(double value) {
        return Unchecked.quantity((Quantity<?>) Proxy.newProxyInstance(
                Quantity.class.getClassLoader(),
                new Class<?>[] {Quantity.class},
                (proxy, method, arguments) -> method.getName().equals("getValue") ? (Object) value : GERMAN_DEGREE));
    }

    @Test
    void anyLibrarysMassIsTakenAsStated() {
        Quantity<Mass> theirs = Quantities.getQuantity(3, Units.GRAM);
        assertEquals("3 g", WaterUnits.mass(theirs).toString());
        assertSame(Units.GRAM, WaterUnits.mass(theirs).getUnit());
    }

    @Test
    void theScaleBehindAUnitIsAUnitOfItsKindToo() {
        // indriya hands it out as the parent of the unit
        Unit<Hardness> behind = ((TransformedUnit<Hardness>) GERMAN_DEGREE).getParentUnit();
        assertEquals("3 °dH", Hardness.of(3, behind).toString());
        assertEquals(3.0, Hardness.of(3, behind).in(GERMAN_DEGREE), 3 * ROUNDING);
        assertEquals(6.0, Hardness.of(3, behind.multiply(2)).in(GERMAN_DEGREE), 6 * ROUNDING);
        assertNotEquals(behind, "°dH");
        assertRefused(
                "alkalinity cannot be stated in °dH, a unit of hardness",
                () -> Alkalinity.of(1, Unchecked.unit(behind)));
        assertEquals(Optional.empty(), WaterUnits.ucumCode(behind.multiply(2)));
    }

    @Test
    void aUnitOfNoSizeIsRefused() {
        Unit<Mass> nothing = new TransformedUnit<>("nothing", Units.KILOGRAM, new Zero());
        assertRefused("mass cannot be stated in nothing, which is 0.0 times kg", () -> WaterUnits.mass(1, nothing));
    }

    /** A converter that makes nothing of everything. */
    private static final class Zero extends AbstractConverter {

        private static final long serialVersionUID = 1L;

        @Override
        public boolean isIdentity() {
            return false;
        }

        @Override
        public boolean isLinear() {
            return true;
        }

        @Override
        protected AbstractConverter inverseWhenNotIdentity() {
            return this;
        }

        @Override
        protected Number convertWhenNotIdentity(Number value) {
            return 0.0;
        }

        @Override
        protected boolean canReduceWith(AbstractConverter that) {
            return false;
        }

        @Override
        protected String transformationLiteral() {
            return "x -> 0";
        }

        @Override
        public int compareTo(UnitConverter that) {
            return 0;
        }

        @Override
        public boolean equals(Object that) {
            return that instanceof Zero;
        }

        @Override
        public int hashCode() {
            return 0;
        }
    }
}
