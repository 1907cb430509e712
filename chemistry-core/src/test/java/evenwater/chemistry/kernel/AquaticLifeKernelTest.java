package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The published equations at points where they can be worked by hand. */
class AquaticLifeKernelTest {

    private static final double ROUNDING = 1e-14;

    @Test
    void atThePKBothHalvesCountAlike() {
        assertEquals((0.275 + 39.0) / 2, AquaticLifeKernel.acuteAmmonia1999SalmonidsPresent(7.204), 20 * ROUNDING);
        assertEquals((0.411 + 58.4) / 2, AquaticLifeKernel.acuteAmmonia1999SalmonidsAbsent(7.204), 30 * ROUNDING);
        // 25 °C, where the factor of temperature is 1.45
        double chronic = (0.0577 + 2.487) / 2 * 1.45;
        assertEquals(chronic, AquaticLifeKernel.chronicAmmonia1999EarlyStagesPresent(7.688, 25), 2 * ROUNDING);
        assertEquals(chronic, AquaticLifeKernel.chronicAmmonia1999EarlyStagesAbsent(7.688, 25), 2 * ROUNDING);
        // 20 °C, where the power of temperature is 1
        double acute = 0.7249 * (0.0114 + 1.6181) / 2 * 23.12;
        assertEquals(acute, AquaticLifeKernel.acuteAmmonia2013SalmonidsPresent(7.204, 20), 20 * ROUNDING);
        assertEquals(acute, AquaticLifeKernel.acuteAmmonia2013SalmonidsAbsent(7.204, 20), 20 * ROUNDING);
        assertEquals(
                0.8876 * (0.0278 + 1.1994) / 2 * 2.126, AquaticLifeKernel.chronicAmmonia2013(7.688, 20), 2 * ROUNDING);
    }

    @Test
    void inTheColdOtherBranchesHold() {
        assertEquals(
                AquaticLifeKernel.acuteAmmonia1999SalmonidsPresent(7),
                AquaticLifeKernel.acuteAmmonia2013SalmonidsPresent(7, 10));
        assertEquals(
                0.7249 * (0.0114 + 1.6181) / 2 * 51.93,
                AquaticLifeKernel.acuteAmmonia2013SalmonidsAbsent(7.204, 5),
                40 * ROUNDING);
        assertEquals(
                (0.0577 + 2.487) / 2 * 2.85,
                AquaticLifeKernel.chronicAmmonia1999EarlyStagesPresent(7.688, 10),
                4 * ROUNDING);
        // below 7 °C the cold makes no more difference
        double absent = (0.0577 + 2.487) / 2 * 1.45 * Math.pow(10, 0.028 * 18);
        assertEquals(absent, AquaticLifeKernel.chronicAmmonia1999EarlyStagesAbsent(7.688, 0), 10 * ROUNDING);
        assertEquals(AquaticLifeKernel.chronicAmmonia2013(7.688, 7), AquaticLifeKernel.chronicAmmonia2013(7.688, 0));
    }

    @Test
    void warmthHalvesByItsPowerOfTen() {
        double degrees = Math.log10(2) / 0.036;
        assertEquals(
                2,
                AquaticLifeKernel.acuteAmmonia2013SalmonidsAbsent(8, 20)
                        / AquaticLifeKernel.acuteAmmonia2013SalmonidsAbsent(8, 20 + degrees),
                2e-15 * 10);
        degrees = Math.log10(2) / 0.028;
        assertEquals(
                2,
                AquaticLifeKernel.chronicAmmonia2013(8, 10) / AquaticLifeKernel.chronicAmmonia2013(8, 10 + degrees),
                2e-14);
    }

    @Test
    void copperIsAPowerOfHardness() {
        assertEquals(
                Math.pow(2, 0.9422),
                AquaticLifeKernel.acuteCopper1995(200) / AquaticLifeKernel.acuteCopper1995(100),
                ROUNDING);
        assertEquals(
                Math.pow(2, 0.8545),
                AquaticLifeKernel.chronicCopper1995(200) / AquaticLifeKernel.chronicCopper1995(100),
                ROUNDING);
        assertEquals(0.960 * Math.exp(-1.7), AquaticLifeKernel.acuteCopper1995(1), ROUNDING);
        assertEquals(0.960 * Math.exp(-1.702), AquaticLifeKernel.chronicCopper1995(1), ROUNDING);
    }
}
