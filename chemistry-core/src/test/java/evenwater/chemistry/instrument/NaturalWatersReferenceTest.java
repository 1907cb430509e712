package evenwater.chemistry.instrument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.testing.Deviations;
import evenwater.chemistry.testing.NaturalWater;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Measured conductivities of 59 rivers, lakes and wells against those of their ions; sources stand in the file. */
class NaturalWatersReferenceTest {

    private static final List<NaturalWater> ALL = NaturalWater.all();

    private static Deviations of(Predicate<NaturalWater> which) {
        return Deviations.of(
                ALL.stream().filter(which).map(NaturalWater::deviation).toList());
    }

    @Test
    void allTogether() {
        Deviations all = of(water -> true);
        assertEquals(59, all.count());
        assertTrue(all.rms() <= 0.028, "rms " + all.rms()); // their own repeatability and balance: 2.5 to 3 %
        assertEquals(0, all.median(), 0.005);
        assertTrue(all.worst() < 0.07, "worst " + all.worst());
    }

    @Test
    void noClassIsOffAsAWhole() {
        assertEquals(0, of(water -> water.measuredMicrosiemens() < 100).median(), 0.02);
        assertEquals(0, of(NaturalWatersReferenceTest::isUsual).median(), 0.01);
        assertEquals(0, of(water -> water.measuredMicrosiemens() >= 5000).median(), 0.025);
        assertEquals(0, of(water -> water.sulfateShare() > 0.75).median(), 0.02);
    }

    private static boolean isUsual(NaturalWater water) {
        return water.measuredMicrosiemens() >= 100 && water.measuredMicrosiemens() < 5000;
    }

    /** The reason why the estimate of Standard Methods is not the default. */
    @Test
    void theEstimateOfStandardMethodsIsTwiceAsFarOff() {
        Deviations estimate = Deviations.of(
                ALL.stream().map(NaturalWater::deviationOfStandardMethods).toList());
        assertEquals(0.06, estimate.rms(), 0.01);
        assertTrue(estimate.median() < -0.02, "median " + estimate.median());
    }
}
