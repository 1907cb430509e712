package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Laws of blending to a hardness. */
class BlendingPropertiesTest {

    /** Relative rounding of a few operations. */
    private static final double ROUNDING = 1e-14;

    @Provide
    Arbitrary<Water> waters() {
        return Waters.any();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    private static double between(Water a, Water b, double part) {
        return hardnessOf(a) + part * (hardnessOf(b) - hardnessOf(a));
    }

    @Property
    void aBlendHitsItsHardness(@ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double part) {
        double target = between(a, b, part);
        double size = hardnessOf(a) + hardnessOf(b);
        Blending blending = Blending.reaching(hardness(target), b);
        double share = blending.shareOfOther(a);
        assertTrue(share >= 0 && share <= 1);
        assertEquals(target, hardnessOf(blending.treat(a)), ROUNDING * size);
        assertEquals(target, hardnessOf(Blending.reaching(hardness(target), a).treat(b)), ROUNDING * size);
        // by a target in another unit
        Hardness degrees = hardness(target).to(Hardness.GERMAN_DEGREE);
        assertEquals(target, hardnessOf(Blending.reaching(degrees, b).treat(a)), ROUNDING * size);
    }

    @Property
    void bothWaysOfBlendingShareTheVolume(
            @ForAll("waters") Water a,
            @ForAll("waters") Water b,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) @Scale(4) double part) {
        double difference = Math.abs(hardnessOf(a) - hardnessOf(b));
        if (difference < 0.1) {
            return; // no share that rounding does not blur
        }
        Hardness target = hardness(between(a, b, part));
        double shareOfB = Blending.reaching(target, b).shareOfOther(a);
        double shareOfA = Blending.reaching(target, a).shareOfOther(b);
        assertEquals(1, shareOfA + shareOfB, ROUNDING * (hardnessOf(a) + hardnessOf(b)) / difference);
        assertEquals(part, shareOfB, ROUNDING * (hardnessOf(a) + hardnessOf(b)) / difference);
    }

    @Property
    void aHardnessOutsideBothHasNoAnswer(
            @ForAll("waters") Water a,
            @ForAll("waters") Water b,
            @ForAll @DoubleRange(min = 0.001, max = 10) @Scale(4) double beyond) {
        Hardness above = hardness(Math.max(hardnessOf(a), hardnessOf(b)) + beyond);
        NoAnswerException refusal = assertThrows(
                NoAnswerException.class, () -> Blending.reaching(above, b).treat(a));
        assertEquals(List.of(above, a.hardness(), b.hardness()), refusal.numbers());
        double least = Math.min(hardnessOf(a), hardnessOf(b));
        if (least <= beyond) {
            return; // there is no hardness below
        }
        Hardness below = hardness(least - beyond);
        assertThrows(NoAnswerException.class, () -> Blending.reaching(below, b).treat(a));
    }

    @Property
    void aFixedShareIsThatOfTheWater(
            @ForAll("waters") Water a, @ForAll("waters") Water b, @ForAll("shares") double share) {
        assertEquals(a.mixedWith(b, share), Blending.with(b, share).treat(a));
        assertEquals(share, Blending.with(b, share).shareOfOther(a));
    }

    @Property
    void pureWaterTakesItsShareFromEveryField(@ForAll("waters") Water water, @ForAll("shares") double share) {
        Water diluted = Blending.withPureWater(share).treat(water);
        assertEquals(water.temperature(), diluted.temperature());
        assertEquals((1 - share) * hardnessOf(water), hardnessOf(diluted), ROUNDING * hardnessOf(water));
        assertEquals(
                (1 - share) * water.alkalinity().getValue(),
                diluted.alkalinity().getValue(),
                ROUNDING * Math.abs(water.alkalinity().getValue()));
    }

    @Property
    void aBlendWithItselfStaysAsItIs(@ForAll("waters") Water water, @ForAll("shares") double share) {
        Water unread = water.plus(Change.of(Map.of()));
        assertEquals(unread, Blending.with(unread, share).treat(unread));
        assertEquals(unread, Blending.reaching(unread.hardness(), unread).treat(unread));
    }
}
