package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class ConductivityExtremePropertiesTest {

    private static final int AMOUNTS = CompositionRanges.AMOUNTS;

    /** Ranges around a random composition, some of them wide; in eq/L. */
    private static CompositionRanges ranges(Random random, double[] inside) {
        double size = Math.exp(Math.log(1e-4) + random.nextDouble() * Math.log(500));
        double cations = 0;
        double anions = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            inside[i] = random.nextInt(4) == 0 ? 0 : size * random.nextDouble();
            cations += CompositionRanges.isCation(i) ? inside[i] : 0;
            anions += CompositionRanges.isCation(i) ? 0 : inside[i];
        }
        inside[KitQuantity.SODIUM.place()] += Math.max(0, anions - cations);
        inside[KitQuantity.CHLORIDE.place()] += Math.max(0, cations - anions);
        CompositionRanges ranges = new CompositionRanges();
        for (int q = 0; q < ranges.most.length; q++) {
            double value = CompositionRanges.valueOf(inside, q);
            boolean narrow = random.nextInt(3) == 0;
            ranges.least[q] = narrow ? value * (1 - 0.2 * random.nextDouble()) : 0;
            ranges.most[q] = narrow ? value + 0.2 * size * random.nextDouble() : 20 * size;
        }
        return ranges;
    }

    private static void assertWithin(CompositionRanges ranges, double[] z) {
        double balance = 0;
        double gross = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            balance += CompositionRanges.isCation(i) ? z[i] : -z[i];
            gross += z[i];
        }
        assertEquals(0, balance, 1e-13 * gross + 1e-18);
        for (int q = 0; q < ranges.most.length; q++) {
            double value = CompositionRanges.valueOf(z, q);
            assertTrue(value >= ranges.least[q] - 1e-12 * gross, () -> "too little");
            assertTrue(value <= ranges.most[q] + 1e-12 * gross, () -> "too much");
        }
    }

    @Property(tries = 300)
    void exchangesStayWithinTheRangesAndReachTheLargestLinearGain(@ForAll long seed) {
        Random random = new Random(seed);
        double[] inside = new double[AMOUNTS];
        CompositionRanges ranges = ranges(random, inside);
        double[] z = new double[AMOUNTS];
        assertTrue(ranges.writeFirst(z));
        assertWithin(ranges, z);
        double[] gain = random.doubles(AMOUNTS, -1, 1).toArray();
        ranges.raise(z, gain);
        assertWithin(ranges, z);
        double best = 0;
        double there = 0;
        double gross = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            best += gain[i] * z[i];
            there += gain[i] * inside[i];
            gross += z[i];
        }
        assertTrue(best >= there - 1e-12 * gross);
    }

    /** Another search: from random ends of the ranges by random exchanges, so that it knows nothing of derivatives. */
    @Property(tries = 60)
    void noRandomCompositionConductsLessOrMore(
            @ForAll long seed, @ForAll @DoubleRange(min = 4, max = 9.5) double pH, @ForAll boolean wide) {
        Random random = new Random(seed);
        double[] inside = new double[AMOUNTS];
        CompositionRanges ranges = ranges(random, inside);
        CompositionConductivity conductivity = new CompositionConductivity(298.15);
        double least = pH - (wide ? 0.5 : 0.05);
        double most = pH + (wide ? 0.5 : 0.05);
        // as KitKernel.prepare: the pH may ask for more than the ranges have, and ends out of order are no ranges
        int alkalinity = KitQuantity.ALKALINITY.place();
        ranges.least[alkalinity] = Math.max(
                ranges.least[alkalinity], Math.min(ranges.most[alkalinity], conductivity.leastAlkalinity(least)));
        ConductivityExtreme search = new ConductivityExtreme(conductivity, least, most);
        double[] where = new double[AMOUNTS + 1];
        for (int sign = -1; sign <= 1; sign += 2) {
            double extreme = search.find(ranges, sign, where);
            if (Double.isNaN(extreme)) { // the pH asks for more alkalinity than the ranges have
                double[] none = new double[AMOUNTS];
                assertTrue(!ranges.writeFirst(none));
                continue;
            }
            assertWithin(ranges, where);
            assertEquals(extreme, conductivity.of(where, where[AMOUNTS]), 1e-9 * extreme);
            double[] z = new double[AMOUNTS];
            for (int start = 0; start < 6; start++) {
                ranges.writeFirst(z);
                ranges.raise(z, random.doubles(AMOUNTS, -1, 1).toArray());
                double found =
                        climb(ranges, conductivity, sign, z, least + (most - least) * random.nextDouble(), random);
                assertTrue(
                        sign * (found - extreme) <= KitKernel.MARGIN * extreme,
                        "extreme " + extreme + ", found " + found);
            }
        }
    }

    private static double climb(
            CompositionRanges ranges,
            CompositionConductivity conductivity,
            int sign,
            double[] start,
            double pH,
            Random random) {
        double[] z = start.clone();
        double[] next = new double[AMOUNTS];
        double value = conductivity.of(z, pH);
        for (int step = 0; step < 100; step++) {
            int i = random.nextInt(AMOUNTS);
            int j = random.nextInt(AMOUNTS);
            if (i == j) {
                continue;
            }
            ranges.exchange(z, i, j, random.nextBoolean() ? 1 : -1, next);
            double share = random.nextDouble();
            for (int k = 0; k < AMOUNTS; k++) {
                next[k] = z[k] + share * (next[k] - z[k]);
            }
            double found = conductivity.of(next, pH);
            if (sign * found > sign * value) {
                value = found;
                System.arraycopy(next, 0, z, 0, AMOUNTS);
            }
        }
        return value;
    }
}
