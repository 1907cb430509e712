package evenwater.chemistry.substance;

import static evenwater.chemistry.quantity.AmountConcentration.MILLIMOLE_PER_LITRE;
import static evenwater.chemistry.quantity.EquivalentConcentration.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.MolarMass.GRAM_PER_MOLE;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.quantity.MassConcentration;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class BasisPropertiesTest {

    /** Each conversion rounds twice; two conversions are compared. */
    private static final double ROUNDING = 1e-15;

    private static final List<String> BASES =
            List.of("N", "P", "P2O5", "S", "SO3", "Si", "Na", "CaO", "MgO", "K2O", "CO2", "C", "B", "CaCO3");

    /** An ion and two units of its amount. */
    record Case(Ion ion, Unit<AmountConcentration> one, Unit<AmountConcentration> other) {

        @Override
        public String toString() {
            return ion + " in " + one + " and " + other;
        }
    }

    @Provide
    Arbitrary<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (Ion ion : Ion.all()) {
            List<Unit<AmountConcentration>> units = units(ion);
            units.forEach(one -> units.forEach(other -> cases.add(new Case(ion, one, other))));
        }
        return Arbitraries.of(cases);
    }

    private static List<Unit<AmountConcentration>> units(Ion ion) {
        List<Unit<AmountConcentration>> units = new ArrayList<>();
        for (Unit<MassConcentration> mass : MassConcentration.units()) {
            units.add(ion.unit(mass, ion.formula()));
            for (String basis : BASES) {
                try {
                    units.add(ion.unit(mass, Formula.parse(basis)));
                } catch (IllegalArgumentException e) {
                    continue; // this ion cannot be expressed so
                }
            }
        }
        return units;
    }

    @Provide
    Arbitrary<Ion> charged() {
        return Arbitraries.of(Ion.all()).filter(ion -> ion.chargeNumber() != 0);
    }

    @Property
    void aConcentrationComesBackFromAnotherBasis(
            @ForAll("cases") Case c, @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e6) double value) {
        AmountConcentration stated = AmountConcentration.of(value, c.one());
        assertEquals(value, stated.to(c.other()).in(c.one()), ROUNDING * value);
    }

    @Property
    void aConcentrationIsTheSameAmountInEveryBasis(
            @ForAll("cases") Case c, @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e6) double value) {
        AmountConcentration stated = AmountConcentration.of(value, c.one());
        double expected = stated.in(MILLIMOLE_PER_LITRE);
        assertEquals(expected, stated.to(c.other()).in(MILLIMOLE_PER_LITRE), ROUNDING * expected);
    }

    @Property
    void textReadsBackToAnEqualConcentration(
            @ForAll("cases") Case c, @ForAll @Scale(9) @DoubleRange(min = -1e6, max = 1e6) double value) {
        AmountConcentration stated = AmountConcentration.of(value, c.one());
        AmountConcentration read = c.ion().parseConcentration(stated.toString());
        assertEquals(stated, read);
        assertEquals(stated.hashCode(), read.hashCode());
        assertEquals(stated.toString(), read.toString());
    }

    @Property
    void oneMillimoleWeighsTheMolarMass(@ForAll("charged") Ion ion) {
        double milligramsPerLitre =
                AmountConcentration.of(1, MILLIMOLE_PER_LITRE).in(ion.milligramPerLitre());
        double expected = ion.molarMass().in(GRAM_PER_MOLE);
        assertEquals(expected, milligramsPerLitre, ROUNDING * expected);
    }

    @Property
    void calciumCarbonateIsHalfItsMassForEachEquivalent(
            @ForAll("charged") Ion ion, @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 1e6) double value) {
        AmountConcentration stated = AmountConcentration.of(value, ion.milligramPerLitreAs(Formula.parse("CaCO3")));
        double expected = value / 50.043;
        assertEquals(expected, ion.equivalents(stated).in(MILLIEQUIVALENT_PER_LITRE), ROUNDING * expected);
    }
}
