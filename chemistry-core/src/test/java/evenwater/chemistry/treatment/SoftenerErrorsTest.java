package evenwater.chemistry.treatment;

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

/** What a softener cannot do, in full words and with the numbers. */
class SoftenerErrorsTest {

    private static final Water RAW = Water.builder().total(Ion.CALCIUM, mmol(2)).build();

    @Test
    void itCannotAddHardness() {
        Softener softener = Softener.withSodium().bypassFor(hardness(2.5));
        Refused.withoutAnswer(
                "wanted hardness 2.5 mmol/L is above the 2 mmol/L of the raw water: a softener cannot add hardness",
                List.of(hardness(2.5), hardness(2)),
                () -> softener.treat(RAW));
        Refused.withoutAnswer(
                "wanted hardness 2.5 mmol/L is above the 2 mmol/L of the raw water: a softener cannot add hardness",
                List.of(hardness(2.5), hardness(2)),
                () -> softener.bypassShare(RAW));
    }

    @Test
    void itCannotGoBelowItsLeakage() {
        Refused.withoutAnswer(
                "wanted hardness 0.25 mmol/L is below the 0.5 mmol/L behind the resin: no bypass can reach it",
                List.of(hardness(0.25), hardness(0.5)),
                () -> Softener.withSodium()
                        .leaking(hardness(0.5))
                        .bypassFor(hardness(0.25))
                        .treat(RAW));
    }

    @Test
    void theNumbersAreInTheUnitOfTheWish() {
        Hardness wanted = Hardness.of(6, Hardness.MILLIEQUIVALENT_PER_LITRE);
        Refused.withoutAnswer(
                "wanted hardness 6 meq/L is above the 4 meq/L of the raw water: a softener cannot add hardness",
                List.of(wanted, Hardness.of(4, Hardness.MILLIEQUIVALENT_PER_LITRE)),
                () -> Softener.withSodium().bypassFor(wanted).treat(RAW));
        Hardness low = Hardness.of(1, Hardness.MILLIEQUIVALENT_PER_LITRE);
        Refused.withoutAnswer(
                "wanted hardness 1 meq/L is below the 2 meq/L behind the resin: no bypass can reach it",
                List.of(low, Hardness.of(2, Hardness.MILLIEQUIVALENT_PER_LITRE)),
                () -> Softener.withSodium().leaking(hardness(1)).bypassFor(low).treat(RAW));
    }

    @Test
    void aWishThatMissesTheRangeByRoundingIsGranted() {
        assertEquals(
                2,
                hardnessOf(Softener.withSodium().bypassFor(hardness(2 + 1e-12)).treat(RAW)));
        assertEquals(
                1,
                hardnessOf(Softener.withSodium()
                        .leaking(hardness(1))
                        .bypassFor(hardness(1 - 5e-13))
                        .treat(RAW)));
        Refused.withoutAnswer(
                "wanted hardness 2.000000000003 mmol/L is above the 2 mmol/L of the raw water: "
                        + "a softener cannot add hardness",
                List.of(hardness(2.000000000003), hardness(2)),
                () -> Softener.withSodium().bypassFor(hardness(2.000000000003)).treat(RAW));
        Refused.withoutAnswer(
                "wanted hardness 0.999999999998 mmol/L is below the 1 mmol/L behind the resin: no bypass can reach it",
                List.of(hardness(0.999999999998), hardness(1)),
                () -> Softener.withSodium()
                        .leaking(hardness(1))
                        .bypassFor(hardness(0.999999999998))
                        .treat(RAW));
    }

    @Test
    void settingsAreNotNegative() {
        Refused.argument(
                "leakage of hardness must not be negative, but was -1 °dH",
                () -> Softener.withSodium().leaking(Hardness.of(-1, Hardness.GERMAN_DEGREE)));
        Refused.argument(
                "wanted hardness must not be negative, but was -0.5 gpg",
                () -> Softener.withSodium().bypassFor(Hardness.of(-0.5, Hardness.GRAIN_PER_US_GALLON)));
    }
}
