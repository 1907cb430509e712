package evenwater.chemistry.exchange;

import static evenwater.chemistry.exchange.Feeds.pounds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SaltEfficiencyTest {

    private static SaltEfficiency of(double kilograins, double pounds) {
        return SaltEfficiency.of(
                ExchangeCapacity.of(kilograins, ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT), pounds(pounds));
    }

    /** Arithmetic of the atomic weights: CaCO₃ over 2 NaCl, times 7000 grains in a pound. */
    @Test
    void theLimitIsThatOfTheCharges() {
        assertEquals(5994.1992, new SaltEfficiency(1).perSalt().in(WaterUnits.GRAIN_PER_POUND), 5e-5);
        double perKilograin = 1000 / new SaltEfficiency(1).perSalt().in(WaterUnits.GRAIN_PER_POUND);
        assertEquals(0.166827957, perKilograin, 5e-10);
    }

    /** A trade table (seen on a trade page), and its shares of the limit. */
    @ParameterizedTest(name = "{0} lb, {1} kgr")
    @CsvSource({"6, 20, 3333, 0.556", "8, 24, 3000, 0.500", "10, 27, 2700, 0.450", "15, 30, 2000, 0.334"})
    void theTableOfTheTradeComesOut(double pounds, double kilograins, double grainsPerPound, double share) {
        SaltEfficiency efficiency = of(kilograins, pounds);
        assertEquals(grainsPerPound, efficiency.perSalt().in(WaterUnits.GRAIN_PER_POUND), 0.5);
        assertEquals(share, efficiency.shareOfTheory(), 6e-4);
    }

    @Test
    void standardsAskForTheirNumbers() {
        assertEquals(0.55887, share(EfficiencyStandard.NSF_ANSI_44), 5e-6);
        assertEquals(0.66731, share(EfficiencyStandard.CALIFORNIA_2002), 5e-6);
        assertEquals(0.47546, share(EfficiencyStandard.CALIFORNIA_BY_CLOCK), 5e-6);
        assertEquals(
                0.478571,
                EfficiencyStandard.CALIFORNIA_2000.least().in(WaterUnits.ONE),
                5e-7); // kg CaCO3 per kg of salt
        assertTrue(of(21, 6).meets(EfficiencyStandard.NSF_ANSI_44));
        assertFalse(of(20, 6).meets(EfficiencyStandard.NSF_ANSI_44));
        assertTrue(of(20, 6).meets(EfficiencyStandard.CALIFORNIA_BY_CLOCK));
        assertTrue(of(16, 4).meets(EfficiencyStandard.CALIFORNIA_2002));
        assertEquals("California Health and Safety Code 116785", EfficiencyStandard.CALIFORNIA_2002.source());
    }

    private static double share(EfficiencyStandard standard) {
        return standard.least().ratioTo(new SaltEfficiency(1).perSalt());
    }

    @Test
    void itPrintsBothFigures() {
        assertEquals("3,333 grain/lb, 55.6 % of theory", of(20, 6).toString());
    }

    @Test
    void nonsenseIsRefused() {
        Refused.argument("salt efficiency must not be negative, but was -0.1", () -> new SaltEfficiency(-0.1));
        Refused.argument("salt efficiency must not be negative, but was NaN", () -> new SaltEfficiency(Double.NaN));
        Refused.argument(
                "salt dose must be positive, but was 0 g/L",
                () -> SaltEfficiency.of(
                        ExchangeCapacity.of(1, ExchangeCapacity.EQUIVALENT_PER_LITRE),
                        SaltDose.of(0, SaltDose.GRAM_PER_LITRE)));
    }
}
