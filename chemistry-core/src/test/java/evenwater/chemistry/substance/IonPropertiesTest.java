package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.AmountConcentration.MICROMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentMass.GRAM_PER_EQUIVALENT;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.EquivalentConcentration;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class IonPropertiesTest {

    /** A factor and back: two roundings. */
    private static final double ROUNDING = 4e-16;

    @Provide
    Arbitrary<Ion> charged() {
        return Arbitraries.of(Ion.all()).filter(ion -> ion.chargeNumber() != 0);
    }

    @Property
    void amountOfEquivalentsIsTheAmount(
            @ForAll("charged") Ion ion, @ForAll @Scale(9) @DoubleRange(min = -1e6, max = 1e6) double c) {
        AmountConcentration amount = AmountConcentration.of(c, MILLIMOLE_PER_LITRE);
        assertEquals(c, ion.amount(ion.equivalents(amount)).in(MILLIMOLE_PER_LITRE), ROUNDING * Math.abs(c));
    }

    @Property
    void equivalentsOfAnAmountAreTheEquivalents(
            @ForAll("charged") Ion ion, @ForAll @Scale(9) @DoubleRange(min = -1e6, max = 1e6) double c) {
        EquivalentConcentration equivalents = EquivalentConcentration.of(c, MILLIEQUIVALENT_PER_LITRE);
        assertEquals(c, ion.equivalents(ion.amount(equivalents)).in(MILLIEQUIVALENT_PER_LITRE), ROUNDING * Math.abs(c));
    }

    @Property
    void equivalentsDoNotDependOnTheUnitOfTheAmount(
            @ForAll("charged") Ion ion, @ForAll @Scale(9) @DoubleRange(min = 0, max = 1e6) double c) {
        AmountConcentration amount = AmountConcentration.of(c, MILLIMOLE_PER_LITRE);
        double expected = ion.equivalents(amount).in(MILLIEQUIVALENT_PER_LITRE);
        double restated = ion.equivalents(amount.to(MICROMOLE_PER_LITRE)).in(MILLIEQUIVALENT_PER_LITRE);
        assertEquals(expected, restated, ROUNDING * expected);
    }

    @Property
    void equivalentMassTimesChargesIsTheMolarMass(@ForAll("charged") Ion ion) {
        double gramsPerMole = ion.molarMass().in(GRAM_PER_MOLE);
        assertEquals(
                gramsPerMole,
                ion.equivalentMass().in(GRAM_PER_EQUIVALENT) * Math.abs(ion.chargeNumber()),
                ROUNDING * gramsPerMole);
    }

    @Property
    void symbolReadsBackToTheSameIon(@ForAll("charged") Ion ion) {
        assertSame(ion, Ion.parse(ion.toString()));
    }
}
