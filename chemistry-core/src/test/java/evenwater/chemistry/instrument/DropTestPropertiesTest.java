package evenwater.chemistry.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import javax.measure.Unit;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Laws of counting drops. */
class DropTestPropertiesTest {

    @Provide
    Arbitrary<DropTest<Hardness>> kits() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.05, 40).ofScale(3),
                        Arbitraries.of(Hardness.units()),
                        Arbitraries.doubles().between(0.1, 10).ofScale(2))
                .as((step, unit, times) ->
                        DropTest.hardness(Hardness.of(step, unit)).withSampleTimes(times));
    }

    @Provide
    Arbitrary<Unit<Hardness>> units() {
        return Arbitraries.of(Hardness.units());
    }

    @Property
    void theReadingOfAnyWaterContainsTheTruth(
            @ForAll("kits") DropTest<Hardness> kit,
            @ForAll @DoubleRange(max = 900) @Scale(6) double steps,
            @ForAll("units") Unit<Hardness> unit) {
        Hardness truth = kit.step().multiply(steps).to(unit);
        int drops = kit.readingFor(truth);
        assertTrue(kit.turningAt(drops).contains(truth));
        assertFalse(kit.turningAt(drops + 1).contains(truth));
        assertTrue(drops == 1 || !kit.turningAt(drops - 1).contains(truth));
    }

    @Property
    void theNearestCountContainsTheTruth(
            @ForAll("kits") DropTest<Hardness> kit,
            @ForAll @DoubleRange(max = 900) @Scale(6) double steps,
            @ForAll("units") Unit<Hardness> unit) {
        assertTrue(kit.roundedTo((int) Math.rint(steps))
                .contains(kit.step().multiply(steps).to(unit)));
    }

    @Property
    void alkalinityIsCountedAlike(
            @ForAll @DoubleRange(max = 900) @Scale(6) double degrees,
            @ForAll @DoubleRange(min = 0.1, max = 10) @Scale(2) double times) {
        DropTest<Alkalinity> kit = DropTest.CARBONATE_HARDNESS.withSampleTimes(Math.min(times, 1));
        Alkalinity truth = Alkalinity.of(degrees, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS)
                .to(Alkalinity.MILLIEQUIVALENT_PER_LITRE);
        assertTrue(kit.turningAt(kit.readingFor(truth)).contains(truth));
    }

    @Property
    void countsFollowOnOneAnotherWithoutAGap(
            @ForAll("kits") DropTest<Hardness> kit, @ForAll @IntRange(min = 1, max = 999) int drops) {
        assertEquals(kit.turningAt(drops).most(), kit.turningAt(drops + 1).least());
        assertEquals(kit.roundedTo(drops).most(), kit.roundedTo(drops + 1).least());
        assertTrue(kit.turningAt(drops + 1).isLeastExcluded());
    }

    @Property
    void moreHardnessTakesNoFewerDrops(
            @ForAll("kits") DropTest<Hardness> kit,
            @ForAll @DoubleRange(max = 900) @Scale(6) double one,
            @ForAll @DoubleRange(max = 900) @Scale(6) double other) {
        int ofLess = kit.readingFor(kit.step().multiply(Math.min(one, other)));
        int ofMore = kit.readingFor(kit.step().multiply(Math.max(one, other)));
        assertTrue(ofLess <= ofMore);
    }

    @Property
    void aDoubleSampleHalvesTheRange(
            @ForAll @DoubleRange(min = 0.05, max = 40) @Scale(3) double step,
            @ForAll("units") Unit<Hardness> unit,
            @ForAll @IntRange(min = 1, max = 500) int drops) {
        DropTest<Hardness> kit = DropTest.hardness(Hardness.of(step, unit));
        DropTest<Hardness> twice = kit.withSampleTimes(2);
        assertEquals(kit.step().divide(2), twice.step());
        assertEquals(kit.turningAt(drops).most(), twice.turningAt(2 * drops).most());
        assertEquals(
                kit.turningAt(drops).most().subtract(kit.step().divide(2)).getValue(),
                twice.turningAt(2 * drops).least().getValue(),
                1e-13 * step * drops);
        Hardness truth = kit.step().multiply(drops - 0.25);
        assertEquals(drops, kit.readingFor(truth));
        assertEquals(2 * drops, twice.readingFor(truth));
    }
}
