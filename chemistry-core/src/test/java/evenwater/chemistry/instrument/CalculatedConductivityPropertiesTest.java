package evenwater.chemistry.instrument;

import static evenwater.chemistry.quantity.Alkalinity.MILLIEQUIVALENT_PER_LITRE;
import static evenwater.chemistry.quantity.Conductivity.MICROSIEMENS_PER_CENTIMETRE;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.substance.Formula;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.KnownWaters;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Laws that any meter follows: more salt and more warmth conduct better, sugar does not. */
class CalculatedConductivityPropertiesTest {

    private static final Ion GLUCOSE = Ion.of("glucose", Formula.parse("C6H12O6"));

    @Provide
    Arbitrary<Water> waters() {
        return Arbitraries.oneOf(KnownWaters.balanced(), KnownWaters.analysed());
    }

    /** Of one mole. */
    @Provide
    Arbitrary<Change> salts() {
        return Arbitraries.of(
                salt(Map.of(Ion.SODIUM, 1, Ion.CHLORIDE, 1)),
                salt(Map.of(Ion.POTASSIUM, 1, Ion.CHLORIDE, 1)),
                salt(Map.of(Ion.CALCIUM, 1, Ion.CHLORIDE, 2)),
                salt(Map.of(Ion.CALCIUM, 1, Ion.SULFATE, 1)),
                salt(Map.of(Ion.MAGNESIUM, 1, Ion.SULFATE, 1)),
                salt(Map.of(Ion.SODIUM, 2, Ion.SULFATE, 1)),
                salt(Map.of(Ion.SODIUM, 1, Ion.BICARBONATE, 1)),
                salt(Map.of(Ion.CALCIUM, 1, Ion.NITRATE, 2)));
    }

    private static Change salt(Map<Ion, Integer> numbers) {
        return Change.of(
                numbers.entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, e -> mmol(e.getValue()))));
    }

    @Provide
    Arbitrary<Double> amounts() {
        return KnownWaters.logarithmic(1e-6, 20);
    }

    @Provide
    Arbitrary<Double> temperatures() {
        return KnownWaters.uniform(0, 50);
    }

    private static double at25(Water water) {
        return CalculatedConductivity.at25Celsius(water).in(MICROSIEMENS_PER_CENTIMETRE);
    }

    private static double at(Water water, double degrees) {
        return CalculatedConductivity.at(water, celsius(degrees)).in(MICROSIEMENS_PER_CENTIMETRE);
    }

    @Property
    void aSaltRaisesIt(
            @ForAll("waters") Water water, @ForAll("salts") Change salt, @ForAll("amounts") double millimoles) {
        Assume.that(salt.alkalinity().in(MILLIEQUIVALENT_PER_LITRE) == 0 || isNearNeutral(water));
        assertTrue(at25(water.plus(salt.times(millimoles))) > at25(water));
    }

    /** Elsewhere bicarbonate takes up hydroxide or hydrogen ions, which conduct more than what comes for them. */
    private static boolean isNearNeutral(Water water) {
        double pH = Speciation.of(water).pH();
        return pH > 6 && pH < 9;
    }

    @Property
    void whatHasNoChargeLeavesIt(@ForAll("waters") Water water, @ForAll("amounts") double millimoles) {
        double before = at25(water);
        for (Ion neutral : new Ion[] {Waters.UREA, GLUCOSE}) {
            Water sweet = water.plus(Change.of(Map.of(neutral, mmol(millimoles))));
            assertEquals(before, at25(sweet), 1e-12 * before);
        }
    }

    @Property
    void pureWaterLowersIt(@ForAll("waters") Water water, @ForAll("additions") double more) {
        assertTrue(at25(water.dilutedBy(1 + more)) < at25(water));
        assertTrue(at25(water.concentratedBy(1 + more)) > at25(water));
    }

    @Provide
    Arbitrary<Double> additions() {
        return KnownWaters.logarithmic(1e-6, 1);
    }

    @Property
    void warmthRaisesIt(
            @ForAll("waters") Water water, @ForAll("temperatures") double one, @ForAll("temperatures") double two) {
        double cold = Math.min(one, two);
        double warm = Math.max(one, two);
        assertTrue(cold == warm || at(water, cold) < at(water, warm));
        assertTrue(at(water, 10) < at25(water));
    }

    /** A compensated meter shows the same, whatever the temperature of the water that is known by its carbon. */
    @Property
    void at25DegreesItDoesNotDependOnTheTemperatureOfTheWater(
            @ForAll("waters") Water water, @ForAll("temperatures") double degrees) {
        assertEquals(at25(water), at25(water.with(celsius(degrees))));
        assertEquals(at25(water), at(water, 25));
    }

    /** A blend of two waters may conduct better than either: halved, magnesium sulfate has fewer pairs. */
    @Example
    void aBlendNeedNotLieBetweenItsWaters() {
        Water epsom =
                Water.pure().plus(salt(Map.of(Ion.MAGNESIUM, 1, Ion.SULFATE, 1)).times(20));
        Water table =
                Water.pure().plus(salt(Map.of(Ion.SODIUM, 1, Ion.CHLORIDE, 1)).times(21));
        double blend = at25(epsom.mixedWith(table, 0.5));
        assertTrue(blend > at25(epsom) && blend > at25(table), () -> at25(epsom) + " " + at25(table) + " " + blend);
    }
}
