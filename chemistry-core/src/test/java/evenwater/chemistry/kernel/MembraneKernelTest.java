package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MembraneKernelTest {

    @ParameterizedTest(name = "feed {0}, permeate {1}, recovery {2}")
    @CsvSource({ // (feed − recovery · permeate) / (1 − recovery), by hand
        "10, 0, 0.5, 20",
        "10, 2, 0.5, 18",
        "10, 2, 0, 10",
        "10, 10, 0.75, 10",
        "8, 2, 0.25, 10"
    })
    void concentrateTakesWhatThePermeateLeaves(double feed, double permeate, double recovery, double expected) {
        assertEquals(expected, MembraneKernel.concentrate(feed, permeate, recovery));
    }

    @ParameterizedTest(name = "carbon {0}, of which CO₂ {1}, alkalinity {2}, alkalinity behind {3}")
    @CsvSource({ // D + (C − D) · A_p / A, by hand
        "5, 1, 4, 1, 2", // 1 free, a quarter of 4
        "5, 1, 4, 4, 5", // nothing rejected
        "5, 1, 4, 0, 1", // only the free CO₂ passes
        "4, 0.1, 4, 0, 0.1", // near pH 8.3 some is left
        "3, 0, 4, 2, 1.5", // carbonate: all of it bound
        "5, 5, 0, 0, 5",
        "5, 5, -1, -0.5, 5", // an acid water binds none
        "0, 0, 4, 1, 0"
    })
    void freeCarbonPassesAndBoundCarbonFollowsAlkalinity(
            double carbon, double carbonDioxide, double alkalinity, double behind, double expected) {
        assertEquals(expected, MembraneKernel.permeateCarbon(carbon, carbonDioxide, alkalinity, behind));
    }

    @Test
    void unknownCarbonStaysUnknown() {
        assertEquals(Double.NaN, MembraneKernel.permeateCarbon(Double.NaN, 0, 4, 1));
    }
}
