package evenwater.chemistry.exchange;

import static evenwater.chemistry.exchange.Feeds.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RegenerationTest {

    /** 58.440 and 74.548 g/mol: the ratio of the masses of equal charges, by the atomic weights of 2021. */
    @Test
    void potassiumChlorideOfEqualEquivalentsWeighsMore() {
        Regeneration sodium = Regeneration.coFlow(pounds(10));
        Regeneration potassium = sodium.withPotassiumChloride();
        assertEquals(1.27563313, potassium.dose().ratioTo(sodium.dose()), 5e-9);
        assertEquals(Ion.POTASSIUM, potassium.cation());
        assertEquals(Compound.POTASSIUM_CHLORIDE, potassium.salt());
        assertEquals(potassium.dose(), potassium.withPotassiumChloride().dose());
        assertEquals("12.76 lb/ft³ of potassium chloride, co-flow, brine of 10 %", potassium.toString());
    }

    /** Grams of salt per litre of brine at 20 °C: CRC Handbook (from memory); saturated 0.317 kg/L at 26.4 %. */
    @ParameterizedTest(name = "{0} % is {1} g/L")
    @CsvSource({"10, 107.07, 1e-9", "26, 311.3, 0.05", "5, 51.70, 0.01"})
    void brineHasTheStrengthOfTheTables(double percent, double gramsPerLitre, double tolerance) {
        MassConcentration strength = Regeneration.coFlow(pounds(6))
                .withBrine(WaterUnits.share(percent, WaterUnits.PERCENT))
                .brineStrength();
        assertEquals(gramsPerLitre, strength.in(MassConcentration.GRAM_PER_LITRE), tolerance + 1e-9);
    }

    @Test
    void waterAndTimeAddUp() {
        Regeneration usual = Regeneration.coFlow(SaltDose.of(107.07, SaltDose.GRAM_PER_LITRE));
        assertEquals(2.5 + 1 + 1.5 + 4, usual.bedVolumes(), 1e-9);
        assertEquals(2.5 / 4 * 60, usual.contactTime().in(WaterUnits.MINUTE), 1e-9);
        Regeneration other = usual.withWater(0, 2, 3).withBrineFlow(6);
        assertEquals(6, other.bedVolumes(), 1e-9);
        assertEquals(30, other.contactTime().in(WaterUnits.MINUTE), 1e-9);
        assertEquals(
                1 + 1.5 + 4,
                Regeneration.counterFlow(SaltDose.of(107.07, SaltDose.GRAM_PER_LITRE))
                        .bedVolumes(),
                1e-9);
    }

    /** Common practice, no source: 30 to 75 US gallons of water and at least 20 to 30 minutes of brine for a cubic foot; at 15 lb it is 76.6. */
    @ParameterizedTest
    @CsvSource({"6, 66.6", "10, 71.0", "15, 76.6"})
    void theUsualFiguresAreThoseOfThePractice(double pounds, double gallons) {
        Regeneration usual = Regeneration.coFlow(pounds(pounds));
        assertEquals(
                gallons,
                WaterUnits.volume(usual.bedVolumes(), WaterUnits.CUBIC_FOOT).in(WaterUnits.US_GALLON),
                0.05);
        assertTrue(usual.contactTime().in(WaterUnits.MINUTE) > 30);
    }

    @Test
    void contactMayBeSetInPlaceOfTheFlow() {
        Regeneration usual = Regeneration.coFlow(SaltDose.of(107.07, SaltDose.GRAM_PER_LITRE));
        Regeneration quick = usual.withContact(WaterUnits.time(25, WaterUnits.MINUTE));
        assertEquals(25, quick.contactTime().in(WaterUnits.MINUTE), 1e-9);
        Refused.argument(
                "contact with the brine must be positive, but was 0 min",
                () -> usual.withContact(WaterUnits.time(0, WaterUnits.MINUTE)));
        Refused.argument(
                "flow of the brine must be from 0.1 to 100 bed volumes per hour, but was 150.0",
                () -> usual.withContact(WaterUnits.time(1, WaterUnits.MINUTE)));
    }

    @Test
    void theRinseMayBeSoftenedOrRaw() {
        Regeneration raw = Regeneration.counterFlow(pounds(6)).rinsingSoftened(false);
        assertTrue(raw.parts().stream().noneMatch(Regeneration.Part::softened));
        assertEquals(
                2,
                Regeneration.coFlow(pounds(6)).rinsingSoftened(true).parts().stream()
                        .filter(Regeneration.Part::softened)
                        .count());
    }

    @Test
    void nonsenseIsRefused() {
        Regeneration usual = Regeneration.coFlow(pounds(6));
        Refused.argument(
                "salt dose must be above 0 and at most 1000 g/L of resin, but was 0 lb/ft³",
                () -> Regeneration.coFlow(pounds(0)));
        Refused.argument(
                "salt dose must be above 0 and at most 1000 g/L of resin, but was 1001 g/L",
                () -> usual.with(SaltDose.of(1001, SaltDose.GRAM_PER_LITRE)));
        Refused.argument(
                "brine of sodium chloride must be from 1 % to 26 % by mass, but was 27 %",
                () -> usual.withBrine(WaterUnits.share(27, WaterUnits.PERCENT)));
        Refused.argument(
                "brine of potassium chloride must be from 1 % to 24 % by mass, but was 0.25",
                () -> usual.withPotassiumChloride().withBrine(WaterUnits.share(0.25, WaterUnits.ONE)));
        Refused.argument(
                "flow of the brine must be from 0.1 to 100 bed volumes per hour, but was 0.0",
                () -> usual.withBrineFlow(0));
        Refused.argument("backwash must be from 0 to 100 bed volumes, but was -1.0", () -> usual.withWater(-1, 1, 1));
        Refused.argument(
                "slow rinse must be from 0 to 100 bed volumes, but was NaN", () -> usual.withWater(1, Double.NaN, 1));
        Refused.argument(
                "fast rinse must be from 0 to 100 bed volumes, but was 101.0", () -> usual.withWater(1, 1, 101));
        Refused.asNull("dose", () -> Regeneration.coFlow(null));
    }

    @Test
    void strongPotassiumBrineDoesNotCarryOver() {
        Regeneration strong = Regeneration.coFlow(pounds(6)).withBrine(WaterUnits.share(26, WaterUnits.PERCENT));
        Refused.argument(
                "brine of potassium chloride must be from 1 % to 24 % by mass, but was 26 %",
                strong::withPotassiumChloride);
    }
}
