package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TankKernelTest {

    @ParameterizedTest(name = "{1} changes of {0}: {2} left")
    @CsvSource({ // textbook dilution (1 − f)ⁿ, by hand
        "0.25, 2, 0.5625",
        "0.5, 10, 0.0009765625",
        "0.1, 3, 0.729",
        "0, 1000, 1",
        "1, 0, 1",
        "1, 1, 0",
        "0.3, 0, 1"
    })
    void repeatedChangesDilute(double fraction, double changes, double left) {
        assertEquals(left, TankKernel.left(fraction, changes), 1e-15);
        assertEquals(left * 8, TankKernel.afterChanges(8, fraction, 0, changes), 1e-14);
    }

    /** q = 1e-12: the terms 1, 1 − q … 1 − 999 q add up to 1000 − 499 500 q. */
    @Test
    void smallChangesDoNotCancel() {
        assertEquals(1000 - 499_500e-12, TankKernel.kept(1e-12, 1000), 1e-12);
        assertEquals(1000, TankKernel.kept(0, 1000));
        assertEquals(1.75, TankKernel.kept(0.5, 3), 1e-15);
        assertEquals(1, TankKernel.kept(1, 3));
        assertEquals(0, TankKernel.kept(0.3, 0));
    }

    @ParameterizedTest(name = "q = {0}, b = {1}")
    @CsvSource({"0.1, 3", "0.25, 0", "0.01, 0.7", "1, 5", "0.9, -2"})
    void tenThousandIterationsEndAtTheSteadyState(double takenAway, double inflow) {
        double iterated = 17;
        for (int i = 1; i <= 10_000; i++) {
            iterated = (1 - takenAway) * iterated + inflow;
            if (i <= 3 || i % 1000 == 0) {
                assertEquals(iterated, TankKernel.afterChanges(17, takenAway, inflow, i), 1e-11);
            }
        }
        assertEquals(iterated, TankKernel.steadyState(takenAway, inflow), 1e-11);
    }

    @ParameterizedTest(name = "q = {0}: {2} changes until {1} of the way")
    @CsvSource({ // ln(1 − x) / ln(1 − q), rounded up: ln 0.1 / ln 0.9 = 21.85
        "0.5, 0.75, 2",
        "0.5, 0.76, 3",
        "0.1, 0.9, 22",
        "1, 0.999, 1",
        "0.2, 0, 0",
        "0.9, 0.001, 1"
    })
    void changesUntilAShareOfTheWay(double takenAway, double share, double changes) {
        assertEquals(changes, TankKernel.changesUntil(takenAway, share));
    }
}
