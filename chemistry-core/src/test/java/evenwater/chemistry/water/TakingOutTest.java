package evenwater.chemistry.water;

import static evenwater.chemistry.testing.Amounts.alkalinity;
import static evenwater.chemistry.testing.Amounts.charge;
import static evenwater.chemistry.testing.Amounts.mmol;
import static evenwater.chemistry.testing.Amounts.of;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.testing.Waters;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a change takes out of a water: all there is leaves exactly zero, more is refused. */
class TakingOutTest {

    private static Water calcium(double millimoles) {
        return Water.builder()
                .total(Ion.CALCIUM, mmol(millimoles))
                .alkalinity(alkalinity(2))
                .carbon(mmol(2.5))
                .build();
    }

    @Test
    void moreThanThereIsIsRefusedWithIonAndBothAmounts() {
        Refused.argument(
                "cannot take 1.5 mmol/L of Ca²⁺ out of a water that holds 1.25 mmol/L",
                () -> calcium(1.25).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(1.5))));
        Refused.argument(
                "cannot take 0.5 mmol/L of Mg²⁺ out of a water that holds 0.0 mmol/L",
                () -> calcium(1).plus(Change.exchanging(Ion.MAGNESIUM, Ion.SODIUM, mmol(0.5))));
        Refused.argument(
                "cannot take 0.5 mmol/L of Pb²⁺ out of a water that holds 0.25 mmol/L",
                () -> Water.builder()
                        .total(Waters.LEAD, mmol(0.25))
                        .build()
                        .plus(Change.exchanging(Waters.LEAD, Ion.SODIUM, mmol(0.5))));
    }

    @Test
    void moreCarbonThanThereIsIsRefused() {
        Refused.argument(
                "cannot take 2.75 mmol/L of inorganic carbon out of a water that holds 2.5 mmol/L",
                () -> calcium(1).plus(Change.of(Map.of(Ion.CARBON_DIOXIDE, mmol(-2.75)))));
    }

    @Test
    void alkalinityMayFallBelowZero() {
        Water acid = calcium(1).plus(Change.of(Map.of(Ion.HYDROGEN, mmol(3), Ion.CHLORIDE, mmol(3))));
        assertEquals(alkalinity(-1), acid.alkalinity());
        assertEquals(charge(0), acid.unmeasuredCharge());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 1.1, 1.7, 2.9, 3.3, 1e-9, 123.456})
    void allThereIsLeavesExactlyZero(double millimoles) {
        List<AmountConcentration> sameAmountInOtherWords = List.of(
                mmol(millimoles),
                mmol(millimoles / 3 * 3),
                mmol(millimoles / 7 * 7),
                mmol(millimoles * 0.1 + millimoles * 0.7 + millimoles * 0.2),
                mmol(millimoles).to(AmountConcentration.MICROMOLE_PER_LITRE),
                mmol(millimoles).to(Ion.CALCIUM.milligramPerLitre()),
                Ion.CALCIUM.amount(Ion.CALCIUM.equivalents(mmol(millimoles))));
        for (AmountConcentration all : sameAmountInOtherWords) {
            Water left = calcium(millimoles).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, all));
            assertEquals(mmol(0), left.total(Ion.CALCIUM), all::toString);
            assertEquals(List.of(Ion.SODIUM), left.ions(), all::toString);
        }
    }

    @Test
    void allCarbonLeavesExactlyZero() {
        Water degassed = Water.builder()
                .carbon(mmol(0.3))
                .build()
                .plus(Change.of(Map.of(Ion.CARBON_DIOXIDE, mmol(-(0.1 + 0.2)))));
        assertEquals(Optional.of(mmol(0)), degassed.carbon());
    }

    @Test
    void aRestBeyondRoundingStays() {
        double most = 1 - 1e-14;
        Water left = calcium(1).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(most)));
        assertEquals(1 - most, of(Ion.CALCIUM, left));
    }

    @Test
    void aRestOfAFewUlpsIsRounding() {
        Water none = calcium(1).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(1 - 4 * 0x1p-52)));
        assertEquals(mmol(0), none.total(Ion.CALCIUM));
        double lessThanThat = 1 - 5 * 0x1p-52;
        Water some = calcium(1).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(lessThanThat)));
        assertEquals(5 * 0x1p-52, of(Ion.CALCIUM, some));
    }

    @Test
    void tooMuchByTheRoundingOfALongCalculationIsAllThereIs() {
        Water left = calcium(1).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(1 + 0.9e-12)));
        assertEquals(mmol(0), left.total(Ion.CALCIUM));
        double tooMuch = 1 + 1.1e-12;
        Refused.argument(
                "cannot take " + tooMuch + " mmol/L of Ca²⁺ out of a water that holds 1.0 mmol/L",
                () -> calcium(1).plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(tooMuch))));
    }

    @Test
    void aTraceThatIsAddedIsNoRoundingRest() {
        Water trace = calcium(1).plus(Change.of(Map.of(Ion.SODIUM, mmol(1e-17), Ion.CHLORIDE, mmol(1e-17))));
        assertEquals(mmol(1e-17), trace.total(Ion.SODIUM));
    }

    @Test
    void takingNothingLeavesTheWater() {
        Water water = calcium(1.7);
        assertEquals(water, water.plus(Change.of(Map.of())));
        assertEquals(water, water.plus(Change.exchanging(Ion.CALCIUM, Ion.SODIUM, mmol(0))));
    }
}
