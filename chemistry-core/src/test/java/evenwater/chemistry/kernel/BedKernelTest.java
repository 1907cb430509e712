package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.Beds.CALCIUM;
import static evenwater.chemistry.kernel.Beds.MAGNESIUM;
import static evenwater.chemistry.kernel.Beds.SODIUM;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BedKernelTest {

    private static final double[] FEED = {0.0024, 0.0010, 0.0016};
    private static final boolean[] HARDNESS = {true, true, false};

    @ParameterizedTest(name = "{0} BV in {1} h, calcium {2}")
    @CsvSource({
        "0, 1, 0.002", "-1, 1, 0.002", "NaN, 1, 0.002", "Infinity, 1, 0.002",
        "1, 0, 0.002", "1, -1, 0.002", "1, NaN, 0.002", "1, Infinity, 0.002",
        "1, 1, -1e-9", "1, 1, NaN", "1, 1, Infinity"
    })
    void badInputChangesNothing(double bedVolumes, double hours, double calcium) {
        BedState bed = Beds.inSodiumForm(5, 0.005);
        double[] before = Beds.contents(bed);
        assertEquals(
                BedKernel.BAD_INPUT,
                BedKernel.flow(bed, new double[] {calcium, 0, 0.003}, false, bedVolumes, hours, new double[3]));
        assertArrayEquals(before, Beds.contents(bed));
    }

    @Test
    void badRatesAndLoadingsAreSeen() {
        BedState bed = Beds.inSodiumForm(5, 0.005);
        bed.rates(Double.NaN, 1);
        assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(bed, FEED, false, 1, 1, new double[3]));
        bed.rates(1, -1);
        assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(bed, FEED, false, 1, 1, new double[3]));
        bed.rates(1, 1);
        assertEquals(BedKernel.FLOWED, BedKernel.flow(bed, FEED, false, 1, 1, new double[3]));
        bed.resin(2, CALCIUM, Double.NaN);
        assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(bed, FEED, false, 1, 1, new double[3]));
        BedState negative = Beds.inSodiumForm(5, 0.005);
        negative.water(2, CALCIUM, -1e-9);
        assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(negative, FEED, false, 1, 1, new double[3]));
    }

    @Test
    void bedsThatCannotBeAreSeen() {
        double[] k = Beds.CONSTANT;
        int[] z = Beds.CHARGE;
        List<BedState> beds = List.of(
                new BedState(k, z, 0, 0.38),
                new BedState(k, z, -3, 0.38),
                new BedState(k, z, 5, 0),
                new BedState(k, z, 5, Double.NaN),
                new BedState(new double[] {2.6, -1, 1}, z, 5, 0.38),
                new BedState(k, new int[] {2, 3, 1}, 5, 0.38),
                new BedState(k, new int[] {2}, 5, 0.38),
                new BedState(new double[0], new int[0], 5, 0.38));
        for (BedState bed : beds) {
            assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(bed, FEED, false, 1, 1, new double[3]));
        }
        BedState good = Beds.inSodiumForm(5, 0.005);
        assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(good, new double[2], false, 1, 1, new double[3]));
        assertEquals(BedKernel.BAD_INPUT, BedKernel.flow(good, FEED, false, 1, 1, new double[2]));
    }

    @Test
    void pureWaterTakesNothingAlongForLong() {
        BedState bed = Beds.inSodiumForm(10, 0.005);
        double[] effluent = new double[3];
        for (int k = 0; k < 2000; k++) {
            assertEquals(BedKernel.FLOWED, BedKernel.flow(bed, new double[3], false, 1, 0.1, effluent));
        }
        assertTrue(effluent[SODIUM] >= 0 && effluent[SODIUM] < 1e-300);
        assertEquals(2, bed.resin(9, SODIUM), 1e-12);
    }

    @Test
    void upwardIsDownwardWithTheBedTurnedOver() {
        BedState down = Beds.inSodiumForm(30, 0.005);
        BedState up = Beds.inSodiumForm(30, 0.005);
        down.rates(130, 18);
        up.rates(130, 18);
        double[] fromDown = new double[3];
        double[] fromUp = new double[3];
        for (int k = 0; k < 300; k++) {
            BedKernel.flow(down, FEED, false, 2, 0.1, fromDown);
            BedKernel.flow(up, FEED, true, 2, 0.1, fromUp);
            assertArrayEquals(fromDown, fromUp);
        }
        assertEquals(down.resin(3, MAGNESIUM), up.resin(26, MAGNESIUM));
        assertEquals(down.water(3, MAGNESIUM), up.water(26, MAGNESIUM));
    }

    @Test
    void theRunEndsAtTheEndPoint() {
        BedState bed = Beds.inSodiumForm(50, 0.005);
        bed.rates(130, 18);
        BedState before = Beds.inSodiumForm(50, 0.005);
        EffluentCurve curve = new EffluentCurve(3, 2000);
        double[] effluent = new double[3];
        assertEquals(BedRun.ENDED, BedRun.serve(bed, before, FEED, 16, 3, 2000, HARDNESS, 0.0003, effluent, curve));
        int last = curve.count() - 1;
        assertEquals(0.0003, curve.concentration(last, CALCIUM) + curve.concentration(last, MAGNESIUM), 3e-6);
        assertEquals(curve.throughput(), curve.throughput(last));
        double[] contents = Beds.contents(bed);
        for (int i = 0; i < 3; i++) {
            double started = i == SODIUM ? 2 + 0.38 * 0.005 : 0;
            assertEquals(started + FEED[i] * curve.throughput() - curve.sum(i), contents[i], 1e-12);
        }
    }

    @Test
    void aRunThatDoesNotEndSaysWhy() {
        double[] effluent = new double[3];
        EffluentCurve curve = new EffluentCurve(3, 10);
        BedState fresh = Beds.inSodiumForm(10, 0.005);
        assertEquals(
                BedRun.NOT_REACHED,
                BedRun.serve(fresh, Beds.inSodiumForm(10, 0), FEED, 16, 1, 50, HARDNESS, 0.0003, effluent, curve));
        assertEquals(10, curve.count());
        assertEquals(50, curve.throughput(), 1e-12);
        BedState spent = new BedState(Beds.CONSTANT, Beds.CHARGE, 10, Beds.VOID);
        for (int j = 0; j < 10; j++) {
            spent.resin(j, CALCIUM, 2);
            spent.water(j, CALCIUM, 0.005);
        }
        assertEquals(
                BedRun.LEAKS,
                BedRun.serve(spent, Beds.inSodiumForm(10, 0), FEED, 16, 1, 50, HARDNESS, 0.0003, effluent, curve));
        assertEquals(
                BedKernel.BAD_INPUT,
                BedRun.serve(fresh, Beds.inSodiumForm(10, 0), FEED, -1, 1, 50, HARDNESS, 0.0003, effluent, curve));
        assertEquals(BedKernel.BAD_INPUT, BedRun.pass(fresh, FEED, false, 5, 1, 0, effluent, curve));
        assertEquals(BedKernel.BAD_INPUT, BedRun.pass(fresh, FEED, false, Double.NaN, 1, 1, effluent, curve));
        assertEquals(BedRun.ENDED, BedRun.pass(fresh, FEED, false, 0, 1, 1, effluent, curve));
    }

    /** 7 bed volumes at 14 an hour are half an hour, whatever the steps; with rates, time matters. */
    @Test
    void aVolumePassesInEqualSteps() {
        EffluentCurve curve = new EffluentCurve(3, 100);
        BedState bed = Beds.inSodiumForm(20, 0.005);
        bed.rates(130, 18);
        BedState same = Beds.inSodiumForm(20, 0.005);
        same.rates(130, 18);
        double[] effluent = new double[3];
        assertEquals(BedRun.ENDED, BedRun.pass(bed, FEED, false, 7, 14, 1.5, effluent, curve));
        assertEquals(5, curve.count());
        for (int k = 0; k < 5; k++) {
            assertEquals(BedKernel.FLOWED, BedKernel.flow(same, FEED, false, 1.4, 0.1, effluent));
            assertEquals(1.4 * (k + 1), curve.throughput(k), 1e-12);
            for (int i = 0; i < 3; i++) {
                assertEquals(effluent[i], curve.concentration(k, i), 1e-15);
            }
        }
        assertEquals(7, curve.throughput(), 1e-12);
        assertEquals(same.resin(7, CALCIUM), bed.resin(7, CALCIUM), 1e-15);
        double sum = 0;
        for (int k = 0; k < 5; k++) {
            sum += 1.4 * curve.concentration(k, SODIUM);
        }
        assertEquals(sum, curve.sum(SODIUM), 1e-15);
        curve.clear();
        assertEquals(0, curve.count());
        assertEquals(0, curve.sum(SODIUM));
        assertEquals(0, curve.throughput());
    }

    @Test
    void aStepThatFailsEndsTheRun() {
        BedState bed = Beds.inSodiumForm(5, 0.005);
        double[] bad = {Double.NaN, 0, 0.005};
        EffluentCurve curve = new EffluentCurve(3, 10);
        assertEquals(BedKernel.BAD_INPUT, BedRun.pass(bed, bad, false, 5, 1, 1, new double[3], curve));
        assertEquals(0, curve.count());
    }

    /** With a step of a hundredth the end point is met as exactly as the step is short, and the volume tends to a limit. */
    @Test
    void theLastStepIsCut() {
        double[] volumes = new double[3];
        for (int level = 0; level < 3; level++) {
            BedState bed = Beds.inSodiumForm(50, 0.005);
            bed.rates(130, 18);
            double[] effluent = new double[3];
            EffluentCurve curve = new EffluentCurve(3, 20_000);
            double step = 3.7 / (1 << level);
            assertEquals(
                    BedRun.ENDED,
                    BedRun.serve(
                            bed, Beds.inSodiumForm(50, 0), FEED, 16, step, 20_000, HARDNESS, 0.0003, effluent, curve));
            assertEquals(0.0003, effluent[CALCIUM] + effluent[MAGNESIUM], 1e-6);
            volumes[level] = curve.throughput();
        }
        assertEquals(volumes[2], volumes[1], 0.005 * volumes[2]);
        assertEquals(2, (volumes[1] - volumes[0]) / (volumes[2] - volumes[1]), 0.2); // first order in the steps
    }

    /** The search begins far from its end: after brine of 3 eq/L water of 1e-12, and back. */
    @Test
    void theSearchFindsItsWayFromAfar() {
        BedState bed = Beds.inSodiumForm(3, 1e-12);
        double[] effluent = new double[3];
        for (int k = 0; k < 40; k++) {
            double strength = k % 2 == 0 ? 3 : 1e-12;
            double[] feed = {0.1 * strength, 0.1 * strength, 0.8 * strength};
            assertEquals(BedKernel.FLOWED, BedKernel.flow(bed, feed, false, 1e9, 1e9, effluent));
            assertEquals(strength, Beds.sum(effluent), 1e-8); // a billionth of the brine is still between the beads
            assertEquals(2, bed.resin(2, 0) + bed.resin(2, 1) + bed.resin(2, 2), 1e-12);
        }
    }

    @Test
    void aSliceMayNotTakeMoreThanThereIs() {
        BedState bed = Beds.inSodiumForm(3, 1e-12);
        double[] effluent = new double[3];
        for (int k = 0; k < 50; k++) {
            double[] feed = k % 2 == 0 ? new double[] {3, 0, 0} : new double[] {1e-15, 0, 1e-15};
            assertEquals(
                    BedKernel.FLOWED, BedKernel.flow(bed, feed, k % 3 == 0, 1e-6 * Math.pow(4, k % 11), 1, effluent));
            for (int j = 0; j < 3; j++) {
                for (int i = 0; i < 3; i++) {
                    assertTrue(bed.resin(j, i) >= 0 && bed.water(j, i) >= 0);
                }
            }
        }
    }
}
