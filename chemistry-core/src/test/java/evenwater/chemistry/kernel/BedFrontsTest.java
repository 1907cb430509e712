package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.Beds.CALCIUM;
import static evenwater.chemistry.kernel.Beds.CAPACITY;
import static evenwater.chemistry.kernel.Beds.CHARGE;
import static evenwater.chemistry.kernel.Beds.CONSTANT;
import static evenwater.chemistry.kernel.Beds.MAGNESIUM;
import static evenwater.chemistry.kernel.Beds.SODIUM;
import static evenwater.chemistry.kernel.Beds.VOID;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * A bed in equilibrium with the water against the theory of shocks: a front moves so fast as the mass balance across it says, the same for
 * every ion that changes there (Rankine and Hugoniot; F. Helfferich and G. Klein, Multicomponent Chromatography, 1970, from memory).
 */
class BedFrontsTest {

    private static final double[] FEED = {0.0024, 0.0010, 0.0016};
    private static final double STRENGTH = 0.0050;

    /** What stands between the sodium that leaves first and the feed: magnesium, pushed ahead by calcium. */
    private static final double PLATEAU = plateau();

    private static double[] held(double[] water) {
        double s = ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, water, CAPACITY);
        double[] held = new double[3];
        for (int i = 0; i < 3; i++) {
            held[i] = ExchangeEquilibrium.distribution(CONSTANT[i], CHARGE[i], s) * water[i];
        }
        return held;
    }

    private static double heldOnPlateau(double magnesium) {
        return held(new double[] {0, magnesium, STRENGTH - magnesium})[MAGNESIUM];
    }

    /** Across the second front calcium and magnesium must ask for the same speed. */
    private static double plateau() {
        double[] resin = held(FEED);
        double slope = resin[CALCIUM] / FEED[CALCIUM];
        double low = FEED[MAGNESIUM];
        double high = STRENGTH;
        for (int k = 0; k < 200; k++) {
            double middle = (low + high) / 2;
            double error = heldOnPlateau(middle) - resin[MAGNESIUM] - slope * (middle - FEED[MAGNESIUM]);
            if (error > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static double theoryFirst() {
        return VOID + heldOnPlateau(PLATEAU) / PLATEAU;
    }

    private static double theorySecond() {
        return VOID + held(FEED)[CALCIUM] / FEED[CALCIUM];
    }

    private record Fronts(double first, double second, double highest) {}

    private static Fronts fronts(int cells) {
        BedState bed = Beds.inSodiumForm(cells, STRENGTH);
        double step = theorySecond() / (2 * cells);
        double[] effluent = new double[3];
        double first = 0;
        double second = 0;
        double highest = 0;
        double magnesium = 0;
        double calcium = 0;
        for (int k = 1; second == 0; k++) {
            assertEquals(BedKernel.FLOWED, BedKernel.flow(bed, FEED, false, step, 1, effluent));
            if (first == 0 && effluent[MAGNESIUM] > PLATEAU / 2) {
                first = step * (k - (effluent[MAGNESIUM] - PLATEAU / 2) / (effluent[MAGNESIUM] - magnesium));
            }
            if (effluent[CALCIUM] > FEED[CALCIUM] / 2) {
                second = step * (k - (effluent[CALCIUM] - FEED[CALCIUM] / 2) / (effluent[CALCIUM] - calcium));
            }
            magnesium = effluent[MAGNESIUM];
            calcium = effluent[CALCIUM];
            highest = Math.max(highest, magnesium);
        }
        return new Fronts(first, second, highest);
    }

    @Test
    void frontsStandWhereTheMassBalancePutsThem() {
        Fronts fine = fronts(800);
        assertEquals(theoryFirst(), fine.first, 1e-3 * theoryFirst());
        assertEquals(theorySecond(), fine.second, 1e-3 * theorySecond());
        assertEquals(PLATEAU, fine.highest, 1e-6 * PLATEAU);
    }

    /** First order, once the front of magnesium has left that of calcium behind. */
    @Test
    void theErrorOfTheSecondFrontHalvesWithTheCells() {
        double before = fronts(200).second / theorySecond() - 1;
        for (int cells = 400; cells <= 800; cells *= 2) {
            double error = fronts(cells).second / theorySecond() - 1;
            assertEquals(2, before / error, 0.02, cells + " cells");
            before = error;
        }
    }

    /** Common practice, no source: magnesium leaves first, and above its feed. */
    @Test
    void magnesiumLeavesFirstAndAboveItsFeed() {
        assertTrue(theoryFirst() < theorySecond());
        assertTrue(PLATEAU > 2 * FEED[MAGNESIUM], PLATEAU + " eq/L");
        assertTrue(fronts(100).highest > 2 * FEED[MAGNESIUM]);
    }

    @Test
    void aSpentBedIsInEquilibriumWithItsFeed() {
        BedState bed = Beds.inSodiumForm(40, STRENGTH);
        double[] effluent = new double[3];
        for (int k = 0; k < 400; k++) {
            assertEquals(BedKernel.FLOWED, BedKernel.flow(bed, FEED, false, 10, 1, effluent));
        }
        double[] held = held(FEED);
        for (int i = 0; i < 3; i++) {
            assertEquals(FEED[i], effluent[i], 1e-12 * STRENGTH);
            assertEquals(held[i], bed.resin(39, i), 1e-9 * CAPACITY);
        }
        assertTrue(held[SODIUM] < held[CALCIUM]);
    }
}
