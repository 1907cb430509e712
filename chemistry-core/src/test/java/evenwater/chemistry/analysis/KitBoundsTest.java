package evenwater.chemistry.analysis;

import static evenwater.chemistry.analysis.KitSamples.conductivity;
import static evenwater.chemistry.analysis.KitSamples.kit;
import static evenwater.chemistry.analysis.KitSamples.least;
import static evenwater.chemistry.analysis.KitSamples.milligrams;
import static evenwater.chemistry.analysis.KitSamples.most;
import static evenwater.chemistry.analysis.KitSamples.ppm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.testing.Refused;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class KitBoundsTest {

    /**
     * In meq/L: the search stops where it is within 5e-9 eq/L for each µS/cm of the reading, 0.003 meq/L at 650 µS/cm, and answers any point there;
     * half a unit of the last digit of the expected numbers, 0.0005 meq/L, comes on top.
     */
    private static final double SAME = 0.005;

    @Test
    void ordinaryTapWater() {
        KitBounds bounds = kit(9, 5, 7.2, 7.6, 480).modelAllowance(0.05).build().bounds();
        assertEquals(0, least(bounds, KitQuantity.SODIUM), "potassium may take its place");
        assertEquals(0.611, least(bounds, KitQuantity.SODIUM_AND_POTASSIUM), SAME);
        assertEquals(2.453, most(bounds, KitQuantity.SODIUM_AND_POTASSIUM), SAME);
        assertEquals(2.074, least(bounds, KitQuantity.STRONG_ANIONS), SAME);
        assertEquals(
                Hardness.of(9, Hardness.GERMAN_DEGREE).in(Hardness.MILLIEQUIVALENT_PER_LITRE),
                most(bounds, KitQuantity.HARDNESS),
                1e-9);
        assertEquals(
                Alkalinity.of(4, Alkalinity.DEGREE_OF_CARBONATE_HARDNESS).in(Alkalinity.MILLIEQUIVALENT_PER_LITRE),
                least(bounds, KitQuantity.ALKALINITY),
                1e-9);
        // 9 °dH and all of it calcium or magnesium, to the digits printed here; no search
        assertEquals(64.3, bounds.calcium().most().in(Ion.CALCIUM.milligramPerLitre()), 0.05);
        assertEquals(39, bounds.magnesium().most().in(Ion.MAGNESIUM.milligramPerLitre()), 0.05);
        // SAME as mg/L of sodium, rounded up
        assertEquals(2.453 * 22.99, bounds.sodium().most().in(Ion.SODIUM.milligramPerLitre()), 0.2);
        assertEquals(bounds.sodium(), bounds.total(Ion.SODIUM));
        assertEquals(bounds.sodiumAndPotassium(), bounds.equivalents(KitQuantity.SODIUM_AND_POTASSIUM));
        assertEquals(bounds.strongAnions(), bounds.equivalents(KitQuantity.STRONG_ANIONS));
        assertTrue(
                bounds.toString().startsWith("calcium 0 to 64.3 mg/L Ca²⁺, magnesium 0 to 39 mg/L Mg²⁺, sodium 0 to "),
                bounds.toString());
    }

    /** Softened salty water, or potassium chloride for plants, or a nitrate: the kits see nothing, the meter some. */
    @Test
    void aSaltThatNeitherKitShows() {
        KitBounds bounds = KitReadings.builder()
                .hardness(DropTest.GENERAL_HARDNESS.roundedTo(0))
                .alkalinity(DropTest.CARBONATE_HARDNESS.roundedTo(0))
                .pH(6.5, 7)
                .meter(FactorMeter.SCALE_500, ReadingInterval.ofRounded(ppm(300), ppm(10)), 0.02)
                .modelAllowance(0.05)
                .build()
                .bounds();
        // 600 µS/cm of sodium chloride are 4.9 meq/L, of potassium chloride 4.1, of sodium nitrate 5.2
        assertTrue(least(bounds, KitQuantity.SODIUM_AND_POTASSIUM) < 3.8);
        assertTrue(most(bounds, KitQuantity.SODIUM_AND_POTASSIUM) > 5.4);
        assertEquals(3.640, least(bounds, KitQuantity.SODIUM_AND_POTASSIUM), SAME);
        assertEquals(3.657, least(bounds, KitQuantity.STRONG_ANIONS), SAME);
        // as found: the third digit is within what the search leaves open
        String alkali = bounds.sodiumAndPotassium().least().toText(Locale.ROOT, 3);
        String strong = bounds.strongAnions().least().toText(Locale.ROOT, 3);
        assertEquals(
                List.of(
                        "at least " + alkali
                                + " of sodium or potassium: hardness of at most 0.178 meq/L does not explain the conductivity",
                        "at least " + strong
                                + " of chloride, sulfate or nitrate: alkalinity of at most 0.178 meq/L does not explain the conductivity",
                        "mostly a salt that neither kit shows: of sodium or potassium with chloride, sulfate or nitrate"),
                bounds.findings());
    }

    @Test
    void anUnknownFactorAndAnUnknownCompensationWidenTheBounds() {
        KitReadingsBuilder known =
                kit(9, 5, 7.2, 7.6, 480).meter(FactorMeter.of(0.6), ReadingInterval.ofRounded(ppm(288), ppm(10)), 0.02);
        KitBounds narrow = known.build().bounds();
        KitBounds cold =
                known.perhapsUncompensatedAt(Amounts.celsius(15)).build().bounds();
        KitBounds unknown = kit(9, 5, 7.2, 7.6, 480)
                .meterOfUnknownFactor(ReadingInterval.ofRounded(ppm(288), ppm(10)), 0.02)
                .build()
                .bounds();
        assertTrue(least(unknown, KitQuantity.SODIUM_AND_POTASSIUM) < 0.1);
        assertTrue(least(narrow, KitQuantity.SODIUM_AND_POTASSIUM) > 0.4);
        assertEquals(
                least(narrow, KitQuantity.SODIUM_AND_POTASSIUM), least(cold, KitQuantity.SODIUM_AND_POTASSIUM), SAME);
        assertTrue(most(cold, KitQuantity.SODIUM_AND_POTASSIUM) > most(narrow, KitQuantity.SODIUM_AND_POTASSIUM) + 1);
        assertTrue(
                most(unknown, KitQuantity.SODIUM_AND_POTASSIUM) > most(narrow, KitQuantity.SODIUM_AND_POTASSIUM) + 0.5);
    }

    @Test
    void aTestOfPotassiumGivesSodiumALowerBound() {
        KitBounds bounds = kit(9, 5, 7.2, 7.6, 480)
                .total(Ion.POTASSIUM, milligrams(Ion.POTASSIUM, 2, 4))
                .build()
                .bounds();
        assertTrue(least(bounds, KitQuantity.SODIUM) > 0.3);
    }

    @Test
    void alkalinityMayExceedHardness() {
        KitBounds bounds = kit(1, 9, 7.5, 8, 420).build().bounds();
        assertTrue(least(bounds, KitQuantity.SODIUM_AND_POTASSIUM) > 2.4, bounds.toString()); // 8 °dKH less 1 °dH
    }

    /** Hydroxide alone makes 0.32 meq/L at pH 10.5: an alkalinity of 0 is out. */
    @Test
    void aHighPHNarrowsTheAlkalinity() {
        KitBounds bounds = kit(1, 1, 10.5, 10.8, 100).build().bounds();
        assertEquals(0.32, least(bounds, KitQuantity.ALKALINITY), SAME);
    }

    @Test
    void whatIsNotReadIsOpen() {
        KitBounds bounds = KitReadings.builder()
                .conductivity(ReadingInterval.ofRounded(conductivity(300), conductivity(10)))
                .build()
                .bounds();
        assertEquals(0, least(bounds, KitQuantity.HARDNESS));
        assertEquals(0, least(bounds, KitQuantity.SODIUM_AND_POTASSIUM));
        assertTrue(most(bounds, KitQuantity.ALKALINITY) > 3.5); // 300 µS/cm of sodium bicarbonate
        assertEquals(List.of(), bounds.findings());
    }

    @Test
    void readingsThatContradictEachOtherAreNamed() {
        NoAnswerException hard = assertThrowsExactly(
                NoAnswerException.class,
                () -> kit(20, 3, 7, 7.5, 100).modelAllowance(0.065).build().bounds());
        assertEquals(
                "no water has these readings: hardness more than 19 and at most 20 °dH alone makes at least 566 µS/cm at 25 °C, "
                        + "but the reading is at most 109 µS/cm with the allowance for the model",
                hard.getMessage());
        assertEquals(2, hard.numbers().size());
        NoAnswerException weak = assertThrowsExactly(
                NoAnswerException.class,
                () -> kit(5, 1, 7, 7.5, 1000)
                        .modelAllowance(0.065)
                        .total(Ion.SODIUM, milligrams(Ion.SODIUM, 0, 10))
                        .total(Ion.POTASSIUM, milligrams(Ion.POTASSIUM, 0, 10))
                        .build()
                        .bounds());
        assertEquals(
                "no water has these readings: sodium from 0 to 10 mg/L Na⁺, potassium from 0 to 10 mg/L K⁺, alkalinity from 0 to "
                        + "1 °dKH, hardness more than 4 and at most 5 °dH, pH 7.0 to 7.5 together make at most 318 µS/cm at 25 °C, "
                        + "but the reading is at least 917 µS/cm with the allowance for the model",
                weak.getMessage());
        Refused.withoutAnswer(
                "no water has these readings: the charges of sodium from 0 to 10 mg/L Na⁺, potassium from 0 to 10 mg/L K⁺, "
                        + "alkalinity from 0 to 1 °dKH, chloride from 100 to 110 mg/L Cl⁻, hardness from 0 to 1 °dH cannot balance",
                List.of(),
                () -> kit(1, 1, 7, 7.5, 1000)
                        .total(Ion.SODIUM, milligrams(Ion.SODIUM, 0, 10))
                        .total(Ion.POTASSIUM, milligrams(Ion.POTASSIUM, 0, 10))
                        .total(Ion.CHLORIDE, milligrams(Ion.CHLORIDE, 100, 110))
                        .build()
                        .bounds());
        Refused.withoutAnswer(
                "no water has these readings: at pH 10.8 to 11.0 hydroxide alone is more than alkalinity from 0 to 1 °dKH",
                List.of(),
                () -> kit(1, 1, 10.8, 11, 100).build().bounds());
    }

    @Test
    void anIonThatTheBoundsDoNotKnowIsRefused() {
        KitBounds bounds = kit(9, 5, 7.2, 7.6, 480).build().bounds();
        Refused.argument(
                "a test beside the kit must be of Ca²⁺, Mg²⁺, Na⁺, K⁺, Cl⁻, SO₄²⁻ or NO₃⁻, but was of F⁻",
                () -> bounds.total(Ion.FLUORIDE));
    }
}
