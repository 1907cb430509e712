package evenwater.chemistry.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import tech.units.indriya.quantity.Quantities;

/** Laws of every kind whose scales share their zero. */
class QuantityPropertiesTest {

    /**
     * Relative error of one rounding. A conversion rounds twice, the quotient of the scales and the product with the value, so n
     * conversions and m other operations err by at most 2n + m of these, but for terms of their square.
     */
    private static final double ROUNDING = 0x1p-53 * (1 + 1e-10);

    @Provide
    Arbitrary<Statements<?>> statements() {
        return Statements.any();
    }

    @Property
    void aRoundTripLosesAtMostTwoConversions(@ForAll("statements") Statements<?> s) {
        assertRoundTrip(s);
    }

    private static <Q extends Quantity<Q>> void assertRoundTrip(Statements<Q> s) {
        double value = s.a().getValue();
        double back = ours(s, s.a().to(s.unitOfB())).in(s.unitOfA());
        assertEquals(value, back, Math.abs(value) * 4 * ROUNDING);
    }

    @Property
    void toAndInGiveTheSameNumber(@ForAll("statements") Statements<?> s) {
        assertToIsIn(s);
    }

    private static <Q extends Quantity<Q>> void assertToIsIn(Statements<Q> s) {
        Q restated = s.a().to(s.unitOfB());
        assertSame(s.unitOfB(), restated.getUnit());
        assertEquals(s.a().in(s.unitOfB()), restated.getValue().doubleValue());
        assertEquals(s.a().in(s.unitOfB()), ours(s, restated).in(s.unitOfB()));
    }

    @Property
    void theUnitOfTheStatementDoesNotMatter(@ForAll("statements") Statements<?> s) {
        assertIndependentOfUnit(s);
    }

    private static <Q extends Quantity<Q>> void assertIndependentOfUnit(Statements<Q> s) {
        double direct = s.a().in(s.unitOfC());
        double detour = ours(s, s.a().to(s.unitOfB())).in(s.unitOfC());
        assertEquals(direct, detour, Math.abs(direct) * 6 * ROUNDING); // three conversions in all
    }

    @Property
    void additionCommutesInAmount(@ForAll("statements") Statements<?> s) {
        assertCommutes(s);
    }

    private static <Q extends Quantity<Q>> void assertCommutes(Statements<Q> s) {
        double ab = ours(s, s.a().add(s.b())).in(s.unitOfA());
        double ba = ours(s, s.b().add(s.a())).in(s.unitOfA());
        assertEquals(ab, ba, s.sizeInUnitOfA() * 10 * ROUNDING); // at most four conversions, two sums
    }

    @Property
    void additionIsAssociative(@ForAll("statements") Statements<?> s) {
        assertAssociative(s);
    }

    private static <Q extends Quantity<Q>> void assertAssociative(Statements<Q> s) {
        double left = s.a().add(s.b()).add(s.c()).getValue().doubleValue();
        double right = s.a().add(s.b().add(s.c())).getValue().doubleValue();
        assertEquals(left, right, s.sizeInUnitOfA() * 12 * ROUNDING); // at most four conversions, four sums
    }

    @Property
    void subtractionUndoesAddition(@ForAll("statements") Statements<?> s) {
        assertSubtractionUndoes(s);
    }

    private static <Q extends Quantity<Q>> void assertSubtractionUndoes(Statements<Q> s) {
        double back = s.a().add(s.b()).subtract(s.b()).getValue().doubleValue();
        // both conversions of b give the same double; the sums round
        assertEquals(s.a().getValue(), back, s.sizeInUnitOfA() * 2 * ROUNDING);
        assertEquals(0.0, s.a().subtract(s.a()).getValue().doubleValue());
        assertEquals(s.a().add(s.b().negate()), s.a().subtract(s.b()));
    }

    @Property
    void multiplicationDistributesOverAddition(
            @ForAll("statements") Statements<?> s,
            @ForAll @DoubleRange(min = -1e3, max = 1e3) @Scale(6) double factor) {
        assertDistributes(s, factor);
    }

    private static <Q extends Quantity<Q>> void assertDistributes(Statements<Q> s, double factor) {
        double sumFirst = s.a().add(s.b()).multiply(factor).getValue().doubleValue();
        double sumLast =
                s.a().multiply(factor).add(s.b().multiply(factor)).getValue().doubleValue();
        double size = s.sizeInUnitOfA() * Math.abs(factor);
        // two conversions, five products and sums; a product may fall among the subnormal doubles
        assertEquals(sumFirst, sumLast, size * 9 * ROUNDING + 4 * Double.MIN_VALUE);
    }

    @Property
    void divisionUndoesMultiplication(
            @ForAll("statements") Statements<?> s,
            @ForAll @DoubleRange(min = 1e-6, max = 1e6) @Scale(6) double factor) {
        double value = s.a().getValue();
        double back = s.a().multiply(factor).divide(factor).getValue().doubleValue();
        assertEquals(value, back, Math.abs(value) * 2 * ROUNDING);
    }

    @Property
    void negationIsItsOwnInverse(@ForAll("statements") Statements<?> s) {
        assertEquals(s.a(), s.a().negate().negate());
        assertEquals(s.a().multiply(-1), s.a().negate());
    }

    @Property
    void conversionKeepsTheOrder(@ForAll("statements") Statements<?> s) {
        assertMonotonic(s);
    }

    private static <Q extends Quantity<Q>> void assertMonotonic(Statements<Q> s) {
        double low = Math.min(s.a().getValue(), s.b().getValue());
        double high = Math.max(s.a().getValue(), s.b().getValue());
        Unit<Q> unit = s.unitOfA();
        // exact: a product with one and the same positive double never turns an order round
        assertTrue(s.kind().of(low, unit).in(s.unitOfC())
                <= s.kind().of(high, unit).in(s.unitOfC()));
        assertTrue(s.kind().of(low, unit).compareTo(s.kind().of(high, unit)) <= 0);
    }

    @Property
    void theOrderIsAntisymmetric(@ForAll("statements") Statements<?> s) {
        assertAntisymmetric(s);
    }

    private static <Q extends Quantity<Q>> void assertAntisymmetric(Statements<Q> s) {
        assertEquals(Integer.signum(s.a().compareTo(s.b())), -Integer.signum(s.b().compareTo(s.a())));
        assertEquals(s.a().compareTo(s.b()) == 0, s.a().isEquivalentTo(s.b()));
        assertEquals(0, s.a().compareTo(s.kind().of(s.a().getValue(), s.unitOfA())));
    }

    @Property
    void theOrderIsTransitive(@ForAll("statements") Statements<?> s) {
        assertTransitive(s.kind(), s.a(), s.b(), s.c());
    }

    private static <Q extends Quantity<Q>> void assertTransitive(
            Kind<?> kind, WaterQuantity<Q> a, WaterQuantity<?> second, WaterQuantity<?> third) {
        Quantity<Q> b = Unchecked.quantity(second);
        WaterQuantity<Q> c = a.read(Unchecked.quantity(third));
        if (a.compareTo(b) <= 0 && a.read(b).compareTo(c) <= 0) {
            assertTrue(a.compareTo(c) <= 0, kind::name);
        }
        if (a.compareTo(b) == 0) {
            assertEquals(
                    Integer.signum(a.compareTo(c)), Integer.signum(a.read(b).compareTo(c)), kind::name);
        }
    }

    @Property
    void theRatioTheOtherWayIsTheReciprocal(@ForAll("statements") Statements<?> s) {
        Assume.that(s.a().getValue() != 0 && s.b().getValue() != 0);
        assertReciprocal(s);
    }

    private static <Q extends Quantity<Q>> void assertReciprocal(Statements<Q> s) {
        // two quotients and their product round; the amounts are the same doubles both ways
        assertEquals(1.0, s.a().ratioTo(s.b()) * s.b().ratioTo(s.a()), 3 * ROUNDING);
        assertEquals(1.0, s.a().ratioTo(s.a()));
    }

    @Property
    void theRatioCountsHowOftenOneFitsIntoTheOther(@ForAll("statements") Statements<?> s) {
        Assume.that(s.b().getValue() != 0);
        assertRatioTimesDivisor(s);
    }

    private static <Q extends Quantity<Q>> void assertRatioTimesDivisor(Statements<Q> s) {
        double product = ours(s, s.b().multiply(s.a().ratioTo(s.b()))).in(s.unitOfA());
        double value = s.a().getValue();
        assertEquals(
                value, product, Math.abs(value) * 6 * ROUNDING); // two amounts, a quotient, a product, a conversion
    }

    @Property
    void equalStatementsPrintAlikeAndHashAlike(@ForAll("statements") Statements<?> s) {
        assertSameText(s.kind(), s.a().toString(), s);
    }

    private static <Q extends Quantity<Q>> void assertSameText(Kind<?> kind, String text, Statements<Q> s) {
        WaterQuantity<Q> again = s.kind().of(s.a().getValue(), s.unitOfA());
        assertEquals(s.a(), again);
        assertEquals(s.a().hashCode(), again.hashCode());
        assertEquals(text, again.toString());
        assertEquals(s.a().equals(s.b()), text.equals(s.b().toString()), kind::name);
        double next = Math.nextUp(s.a().getValue());
        assertFalse(s.a().equals(s.kind().of(next, s.unitOfA())));
        assertFalse(text.equals(s.kind().of(next, s.unitOfA()).toString()));
    }

    @Property
    void anotherLibrarysQuantityIsTheSameStatement(@ForAll("statements") Statements<?> s) {
        assertAdopted(s);
    }

    private static <Q extends Quantity<Q>> void assertAdopted(Statements<Q> s) {
        Quantity<Q> theirs = Quantities.getQuantity(s.a().getValue(), s.unitOfA());
        assertEquals(s.a(), s.kind().from().apply(theirs));
        assertEquals(0, s.a().compareTo(theirs));
        assertEquals(s.b().add(s.a()), s.b().add(theirs));
    }

    private static <Q extends Quantity<Q>> WaterQuantity<Q> ours(Statements<Q> s, Q quantity) {
        return s.kind().from().apply(quantity);
    }
}
