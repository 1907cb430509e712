package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class OnsagerFuossPropertiesTest {

    /** Relative; the field is known to 1e-9 and makes at most a tenth of the conductivity. */
    private static final double SAME = 1e-10;

    @Provide
    Arbitrary<Mixture> mixtures() {
        return Mixture.any(1);
    }

    @Property
    void theOrderOfIonsDoesNotMatter(@ForAll("mixtures") Mixture mixture, @ForAll long seed) {
        int n = mixture.size();
        double[] moles = mixture.moles().clone();
        double[] charge = mixture.charge().clone();
        double[] limiting = mixture.limiting().clone();
        Random random = new Random(seed);
        for (int i = n - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            swap(moles, i, j);
            swap(charge, i, j);
            swap(limiting, i, j);
        }
        same(mixture.conductivity(), new Mixture(moles, charge, limiting));
    }

    private static void swap(double[] values, int i, int j) {
        double kept = values[i];
        values[i] = values[j];
        values[j] = kept;
    }

    @Property
    void anIonInTwoPartsIsTheSame(
            @ForAll("mixtures") Mixture mixture, @ForAll @DoubleRange(max = 1) double share, @ForAll int which) {
        int n = mixture.size();
        int i = Math.floorMod(which, n);
        double[] moles = longer(mixture.moles(), mixture.moles()[i] * share);
        moles[i] -= moles[n];
        same(
                mixture.conductivity(),
                new Mixture(
                        moles,
                        longer(mixture.charge(), mixture.charge()[i]),
                        longer(mixture.limiting(), mixture.limiting()[i])));
    }

    private static double[] longer(double[] values, double last) {
        double[] result = Arrays.copyOf(values, values.length + 1);
        result[values.length] = last;
        return result;
    }

    @Property
    void anIonThatIsNotThereChangesNothing(@ForAll("mixtures") Mixture mixture, @ForAll LimitingConductivity absent) {
        Mixture with = new Mixture(
                longer(mixture.moles(), 0),
                longer(mixture.charge(), absent.chargeNumber()),
                longer(mixture.limiting(), absent.squareCentimetreSiemensPerEquivalent(Mixture.KELVIN)));
        assertEquals(mixture.conductivity(), with.conductivity());
    }

    /** Between neutral waters: where one sign is not there at all, the distance of closest approach jumps. */
    @Property
    void aTraceChangesATrace(@ForAll("mixtures") Mixture mixture, @ForAll LimitingConductivity trace) {
        Mixture base = neutralized(mixture);
        double amount = 1e-9 * base.moles()[0];
        Mixture with = new Mixture(
                longer(base.moles(), amount),
                longer(base.charge(), trace.chargeNumber()),
                longer(base.limiting(), trace.squareCentimetreSiemensPerEquivalent(Mixture.KELVIN)));
        double before = base.conductivity();
        double brought = 1000
                * Math.abs(trace.chargeNumber())
                * amount
                * trace.squareCentimetreSiemensPerEquivalent(Mixture.KELVIN);
        // its own current, and what it does to that of the others: the ionic strength, the distance
        double others = 1e-9 * 20 * before;
        assertEquals(before, with.conductivity(), 2 * brought + others + SAME * before);
    }

    private static Mixture neutralized(Mixture mixture) {
        double charge = 0;
        double gross = 0;
        for (int i = 0; i < mixture.size(); i++) {
            charge += mixture.moles()[i] * mixture.charge()[i];
            gross += mixture.moles()[i] * Math.abs(mixture.charge()[i]);
        }
        Mixture withChloride = new Mixture(
                longer(mixture.moles(), (gross + charge) / 2),
                longer(mixture.charge(), -1),
                longer(mixture.limiting(), 76.31));
        return new Mixture(
                longer(withChloride.moles(), (gross - charge) / 2),
                longer(withChloride.charge(), 1),
                longer(withChloride.limiting(), 73.48));
    }

    @Property
    void ionsInAMixtureConductLessThanAlone(@ForAll("mixtures") Mixture mixture) {
        Mixture neutral = neutralized(mixture).scaled(0.01);
        assertTrue(neutral.conductivity() <= neutral.atInfiniteDilution());
    }

    @Property
    void dilutionBringsTheLimit(@ForAll("mixtures") Mixture mixture) {
        Mixture thin = mixture.scaled(1e-12);
        // what is missing is 2 parts in √(mol/L) or less
        assertEquals(1, thin.conductivity() / thin.atInfiniteDilution(), 1e-5);
    }

    @Property
    void moreOfAllConductsMore(
            @ForAll("mixtures") Mixture mixture, @ForAll @DoubleRange(min = 1.01, max = 2) double factor) {
        Mixture neutral = neutralized(mixture).scaled(0.03);
        assertTrue(neutral.scaled(factor).conductivity() > neutral.conductivity());
    }

    private static void same(double expected, Mixture actual) {
        assertEquals(expected, actual.conductivity(), SAME * Math.abs(expected) + SAME * actual.atInfiniteDilution());
    }
}
