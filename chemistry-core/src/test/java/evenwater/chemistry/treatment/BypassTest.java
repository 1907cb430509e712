package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.testing.Waters;
import evenwater.chemistry.water.Water;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BypassTest {

    private static final Water RAW = Water.builder()
            .total(Ion.CALCIUM, mmol(1.5))
            .total(Ion.MAGNESIUM, mmol(0.5))
            .total(Ion.CHLORIDE, mmol(1))
            .alkalinity(alkalinity(3))
            .build();

    private static final Treatment TIGHT = ReverseOsmosis.rejecting(1, 1);
    private static final Treatment MEMBRANE = ReverseOsmosis.rejecting(0.95, 0.98);

    @Test
    void aShareOfRawWaterJoinsTheTreated() {
        Water blend = Bypass.around(TIGHT, 0.25).treat(RAW);
        assertEquals(0.5, hardnessOf(blend));
        assertEquals(alkalinity(0.75), blend.alkalinity());
        assertEquals(0.25, Bypass.around(TIGHT, 0.25).shareOfRaw(RAW));
    }

    @Test
    void aHardnessDecidesTheShare() {
        Bypass bypass = Bypass.around(TIGHT, hardness(0.5));
        assertEquals(0.25, bypass.shareOfRaw(RAW));
        assertEquals(hardness(0.5), bypass.treat(RAW).hardness());
    }

    @Test
    void aroundASoftenerItIsTheSoftenersOwn() {
        Water own = Softener.withSodium().bypassFor(hardness(0.75)).treat(RAW);
        Water around = Bypass.around(Softener.withSodium(), hardness(0.75)).treat(RAW);
        assertEquals(of(Ion.SODIUM, own), of(Ion.SODIUM, around), 1e-15);
        assertEquals(hardnessOf(own), hardnessOf(around), 1e-15);
    }

    @Test
    void aHardnessThatNeitherWaterReachesHasNoAnswer() {
        Refused.withoutAnswer(
                "wanted hardness 3 mmol/L is not between the 0 mmol/L and 2 mmol/L of the two waters",
                List.of(hardness(3), hardness(0), hardness(2)),
                () -> Bypass.around(TIGHT, hardness(3)).treat(RAW));
    }

    @Test
    void itIsNamedAfterWhatItGoesAround() {
        assertEquals(
                "softener with sodium, bypass of 20 %",
                Bypass.around(Softener.withSodium(), 0.2).toString());
        assertEquals(
                "softener with sodium, bypass for 6 °dH",
                Bypass.around(Softener.withSodium(), Hardness.of(6, Hardness.GERMAN_DEGREE))
                        .name());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void aShareIsAPartOfTheWhole(double share) {
        Refused.argument(
                "share of the raw water must be from 0 to 1, but was " + share, () -> Bypass.around(TIGHT, share));
    }

    @Test
    void nullIsNamed() {
        Refused.asNull("treatment", () -> Bypass.around(null, 0.5));
        Refused.asNull("treatment", () -> Bypass.around(null, hardness(1)));
        Refused.asNull("source", () -> Bypass.around(TIGHT, 0.5).treat(null));
    }

    @Provide
    Arbitrary<Water> feeds() {
        return Waters.hard();
    }

    @Provide
    Arbitrary<Double> shares() {
        return Waters.shares();
    }

    @Property
    void theBlendLiesBetweenRawAndTreated(@ForAll("feeds") Water feed, @ForAll("shares") double share) {
        Water treated = MEMBRANE.treat(feed);
        Water blend = Bypass.around(MEMBRANE, share).treat(feed);
        for (Ion ion : feed.ions()) {
            double expected = share * of(ion, feed) + (1 - share) * of(ion, treated);
            assertEquals(expected, of(ion, blend), 1e-13 * (1 + of(ion, feed)), ion::symbol);
        }
    }

    @Property
    void aReachableHardnessIsReached(@ForAll("feeds") Water feed, @ForAll("shares") double share) {
        double treated = hardnessOf(MEMBRANE.treat(feed));
        double wanted = treated + share * (hardnessOf(feed) - treated);
        try {
            Water blend = Bypass.around(MEMBRANE, hardness(wanted)).treat(feed);
            assertEquals(wanted, hardnessOf(blend), 1e-12 * wanted);
        } catch (NoAnswerException e) {
            assertTrue(treated == hardnessOf(feed), e::getMessage);
        }
    }

    @Test
    void aNegativeHardnessIsRefusedAtOnce() {
        Refused.argument(
                "wanted hardness must not be negative, but was -1 mmol/L", () -> Bypass.around(TIGHT, hardness(-1)));
        Refused.argument(
                "wanted hardness must not be negative, but was -1 mmol/L", () -> Blending.reaching(hardness(-1), RAW));
    }
}
