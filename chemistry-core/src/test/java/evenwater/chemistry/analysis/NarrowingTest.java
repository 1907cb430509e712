package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.KitSamples.kit;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.AmountConcentration;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import org.junit.jupiter.api.Test;

class NarrowingTest {

    private static final KitReadings TAP = kit(9, 5, 7.2, 7.6, 480).build();

    @Test
    void testsAreRankedByWhatTheyLeaveOnAverage() {
        List<Narrowing> ranked = TAP.narrowings(KitQuantity.SODIUM_AND_POTASSIUM);
        assertEquals(6, ranked.size());
        for (int i = 1; i < ranked.size(); i++) {
            assertTrue(ranked.get(i - 1).meanWidthLeft() <= ranked.get(i).meanWidthLeft());
        }
        assertEquals(ranked.get(0), TAP.mostInformativeTest(KitQuantity.SODIUM_AND_POTASSIUM));
        ranked.forEach(narrowing -> assertTrue(narrowing.meanWidthLeft() <= 1 + 1e-3, narrowing::toString));
    }

    @Test
    void theIonItselfIsTheBestTestOfAnIon() {
        assertEquals(
                ExtraTest.SULFATE, TAP.mostInformativeTest(KitQuantity.SULFATE).test());
        Narrowing sodium = TAP.mostInformativeTest(KitQuantity.SODIUM);
        assertEquals(ExtraTest.SODIUM, sodium.test());
        assertTrue(
                sodium.toString()
                        .matches("a sodium test would narrow sodium from 0 to [0-9.]+ mg/L Na⁺ to [0-9]+ % of that on "
                                + "average, to [0-9.]+ to [0-9.]+ mg/L Na⁺ at worst"),
                sodium::toString);
    }

    /** A test without an error that is wanted itself leaves nothing. */
    @Test
    void aPerfectTestLeavesNothing() {
        ExtraTest perfect = new ExtraTest(Ion.CHLORIDE, 0, AmountConcentration.of(0, Ion.CHLORIDE.milligramPerLitre()));
        assertEquals(0, TAP.narrowing(KitQuantity.CHLORIDE, perfect).meanWidthLeft(), 1e-9);
        double others = TAP.narrowing(KitQuantity.SODIUM_AND_POTASSIUM, perfect).meanWidthLeft();
        double usual = TAP.narrowing(KitQuantity.SODIUM_AND_POTASSIUM, ExtraTest.CHLORIDE)
                .meanWidthLeft();
        assertTrue(others <= usual + 1e-3, others + " " + usual);
    }

    @Test
    void aShareBelowZeroIsRefused() {
        Narrowing any = TAP.narrowing(KitQuantity.CALCIUM, ExtraTest.CALCIUM);
        Refused.argument(
                "mean width left must be 0 or more, but was NaN",
                () -> new Narrowing(any.test(), any.wanted(), any.before(), any.after(), Double.NaN));
    }
}
