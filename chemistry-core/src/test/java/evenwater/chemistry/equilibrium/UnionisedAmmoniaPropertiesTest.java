package evenwater.chemistry.equilibrium;

import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.AmountConcentration;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of un-ionised ammonia. */
class UnionisedAmmoniaPropertiesTest {

    @Provide
    Arbitrary<UnionisedAmmoniaLimit> limits() {
        return Arbitraries.of(UnionisedAmmoniaLimit.values());
    }

    @Property
    void theFractionIsBetweenNoneAndAllAndRisesWithPHAndWarmth(
            @ForAll @DoubleRange(min = 0, max = 13) double pH,
            @ForAll @DoubleRange(min = 0, max = 49) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
        double fraction = UnionisedAmmonia.fraction(pH, celsius(celsius));
        assertTrue(fraction > 0 && fraction < 1);
        assertTrue(UnionisedAmmonia.fraction(pH + more, celsius(celsius)) > fraction);
        assertTrue(UnionisedAmmonia.fraction(pH, celsius(celsius + more)) > fraction);
    }

    @Property
    void oneMoreOfPHMakesTheRatioOfTheFormsTenfold(
            @ForAll @DoubleRange(min = 4, max = 11) double pH, @ForAll @DoubleRange(min = 0, max = 50) double celsius) {
        double f = UnionisedAmmonia.fraction(pH, celsius(celsius));
        double g = UnionisedAmmonia.fraction(pH + 1, celsius(celsius));
        assertEquals(10, g / (1 - g) / (f / (1 - f)), 1e-11); // 1 − g loses digits where little is ionised
    }

    @Property
    void partAndWholeAreInverse(
            @ForAll @DoubleRange(min = 0, max = 10) double millimoles,
            @ForAll @DoubleRange(min = 0, max = 14) double pH,
            @ForAll @DoubleRange(min = 0, max = 50) double celsius) {
        AmountConcentration part = UnionisedAmmonia.concentration(mmol(millimoles), pH, celsius(celsius));
        assertTrue(part.in(AmountConcentration.MILLIMOLE_PER_LITRE) <= millimoles * (1 + 1e-15));
        assertEquals(
                millimoles,
                UnionisedAmmonia.totalAmmonia(part, pH, celsius(celsius)).in(AmountConcentration.MILLIMOLE_PER_LITRE),
                1e-14 * millimoles);
    }

    @Property
    void aLimitAllowsLessAmmoniaTheHigherThePHAndTheWarmer(
            @ForAll("limits") UnionisedAmmoniaLimit limit,
            @ForAll @DoubleRange(min = 5, max = 9) double pH,
            @ForAll @DoubleRange(min = 0, max = 40) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 1) double more) {
        AmountConcentration total = limit.totalAmmonia(pH, celsius(celsius));
        assertTrue(total.compareTo(limit.concentration()) > 0);
        assertTrue(limit.totalAmmonia(pH + more, celsius(celsius)).compareTo(total) < 0);
        assertTrue(limit.totalAmmonia(pH, celsius(celsius + more)).compareTo(total) < 0);
    }
}
