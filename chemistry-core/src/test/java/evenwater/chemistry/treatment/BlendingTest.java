package evenwater.chemistry.treatment;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.celsius;
import static evenwater.chemistry.testing.Amounts.hardness;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BlendingTest {

    private static final Water HARD = Water.builder()
            .total(Ion.CALCIUM, mmol(3))
            .total(Ion.MAGNESIUM, mmol(1))
            .carbon(mmol(5))
            .temperature(celsius(10))
            .build();

    private static final Water SOFT = Water.builder()
            .total(Ion.CALCIUM, mmol(0.5))
            .total(Ion.SODIUM, mmol(2))
            .carbon(mmol(1))
            .temperature(celsius(20))
            .build();

    @Test
    void aFixedShareIsABlendOfThatShare() {
        Blending blending = Blending.with(SOFT, 0.25);
        assertEquals(HARD.mixedWith(SOFT, 0.25), blending.treat(HARD));
        assertEquals(0.25, blending.shareOfOther(HARD));
    }

    @ParameterizedTest(name = "{0} mmol/L: share {1}")
    @CsvSource({"4, 0", "3.125, 0.25", "2.25, 0.5", "0.5, 1"})
    void aHardnessDecidesTheShare(double wanted, double share) {
        Blending blending = Blending.reaching(hardness(wanted), SOFT);
        assertEquals(share, blending.shareOfOther(HARD)); // (4 − wanted) / 3.5 in doubles that are exact here
        assertEquals(hardness(wanted), blending.treat(HARD).hardness());
    }

    @Test
    void theHarderWaterMayBeTheOther() {
        Blending blending = Blending.reaching(hardness(3.125), HARD);
        assertEquals(0.75, blending.shareOfOther(SOFT));
        assertEquals(hardness(3.125), blending.treat(SOFT).hardness());
    }

    @Test
    void twoWatersOfTheWantedHardnessNeedNoBlend() {
        assertEquals(0, Blending.reaching(hardness(4), HARD).shareOfOther(HARD));
        assertEquals(HARD, Blending.reaching(hardness(4), HARD).treat(HARD));
    }

    @Test
    void aHardnessOutsideBothIsRefused() {
        Refused.withoutAnswer(
                "wanted hardness 5 mmol/L is not between the 4 mmol/L and 0.5 mmol/L of the two waters",
                List.of(hardness(5), hardness(4), hardness(0.5)),
                () -> Blending.reaching(hardness(5), SOFT).treat(HARD));
        Hardness low = Hardness.of(0.5, Hardness.MILLIEQUIVALENT_PER_LITRE);
        Refused.withoutAnswer(
                "wanted hardness 0.5 meq/L is not between the 1 meq/L and 8 meq/L of the two waters",
                List.of(
                        low,
                        Hardness.of(1, Hardness.MILLIEQUIVALENT_PER_LITRE),
                        Hardness.of(8, Hardness.MILLIEQUIVALENT_PER_LITRE)),
                () -> Blending.reaching(low, HARD).shareOfOther(SOFT));
    }

    @Test
    void aHardnessThatMissesTheRangeByRoundingIsReached() {
        assertEquals(HARD, Blending.reaching(hardness(4 + 3e-12), SOFT).treat(HARD));
        assertEquals(SOFT, Blending.reaching(hardness(0.5 - 4e-13), SOFT).treat(HARD));
        Refused.withoutAnswer(
                "wanted hardness 4.00000000001 mmol/L is not between the 4 mmol/L and 0.5 mmol/L of the two waters",
                List.of(hardness(4.00000000001), hardness(4), hardness(0.5)),
                () -> Blending.reaching(hardness(4.00000000001), SOFT).treat(HARD));
        Refused.withoutAnswer(
                "wanted hardness 0.499999999999 mmol/L is not between the 4 mmol/L and 0.5 mmol/L of the two waters",
                List.of(hardness(0.499999999999), hardness(4), hardness(0.5)),
                () -> Blending.reaching(hardness(0.499999999999), SOFT).treat(HARD));
    }

    @ParameterizedTest
    @ValueSource(doubles = {2.9, 4.7, 7.3, 11.1, 20.3})
    void aSecondBlendForTheSameHardnessHasNothingLeftToDo(double degrees) {
        Blending blending = Blending.reaching(Hardness.of(degrees, Hardness.GERMAN_DEGREE), SOFT);
        Water once = blending.treat(HARD);
        Water twice = blending.treat(once);
        assertEquals(degrees, twice.hardness().in(Hardness.GERMAN_DEGREE), 1e-13); // some roundings of 22 °dH
        assertEquals(hardnessOf(once), hardnessOf(twice), 1e-14);
    }

    @Test
    void pureWaterDilutesWithoutCoolingOrWarming() {
        Water diluted = Blending.withPureWater(0.75).treat(HARD);
        assertEquals(HARD.dilutedBy(4), diluted);
        assertEquals(celsius(10), diluted.temperature());
        assertEquals(alkalinity(2), diluted.alkalinity());
        assertEquals(Water.pure().with(celsius(10)), Blending.withPureWater(1).treat(HARD));
        assertEquals(HARD, Blending.withPureWater(0).treat(HARD));
    }

    @Test
    void itsNameSaysWhatItIsSetTo() {
        assertEquals(
                "blend with 7 % of another water", Blending.with(SOFT, 0.07).name());
        assertEquals(
                "dilution with 33.33 % of pure water",
                Blending.withPureWater(1.0 / 3).name());
        assertEquals(
                "blend with another water for 6 °dH",
                Blending.reaching(Hardness.of(6, Hardness.GERMAN_DEGREE), SOFT).name());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void aShareIsAPartOfTheWhole(double share) {
        Refused.argument(
                "share of the other water must be from 0 to 1, but was " + share, () -> Blending.with(SOFT, share));
        Refused.argument(
                "share of the pure water must be from 0 to 1, but was " + share, () -> Blending.withPureWater(share));
    }

    @Test
    void aBlendNeedsTheOtherWater() {
        Refused.asNull("other", () -> Blending.with(null, 0.5));
        Refused.asNull("other", () -> Blending.reaching(hardness(1), null));
    }
}
