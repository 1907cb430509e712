package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The search for the extremes of conductivity beside a costly one, which starts from random compositions at a random pH: by the same
 * derivatives from some of them, by random exchanges that know nothing of derivatives from others.
 *
 * <p>How many cases of each kind: {@code -Dkit.searches}, else 10; {@code -Dkit.seed} says where to start, else every run has its own.
 */
class ConductivityExtremeFuzzTest {

    private static final int COUNT = Integer.getInteger("kit.searches", 10);
    private static final long FIRST_SEED = Long.getLong("kit.seed", System.nanoTime());
    private static final int AMOUNTS = CompositionRanges.AMOUNTS;
    private static final int FOLLOWED = 40;
    private static final int CLIMBED = 20;
    private static final int STEPS = 150;

    /** What the ranges leave open: where the search is weak by its nature. */
    enum Kind {
        /** A third of the ranges are narrow, the rest open; pH from 4 to 10.5. */
        ANY(4, 10.5),
        /** Every sum is read, as by a whole kit. */
        WHOLE_KIT(5, 9.5),
        /** Alkalinity at 0 or hardly above, where the carbonates end within the ranges. */
        HARDLY_ALKALINITY(4, 8),
        /** Neither hardness nor alkalinity is read, in water so basic that pairs of carbonate prevail. */
        OPEN_AND_BASIC(9.3, 10.5);

        private final double least;
        private final double most;

        Kind(double least, double most) {
            this.least = least;
            this.most = most;
        }
    }

    /** The widest miss found, and where. */
    private record Miss(long seed, int sign, double relative) {}

    @ParameterizedTest
    @EnumSource
    void theCostlySearchFindsNoMoreThanTheMarginCovers(Kind kind) {
        Miss worst = LongStream.range(FIRST_SEED, FIRST_SEED + COUNT)
                .parallel()
                .mapToObj(seed -> miss(kind, seed))
                .max(Comparator.comparingDouble(Miss::relative))
                .orElseThrow();
        assertTrue(worst.relative() <= KitKernel.MARGIN, kind + ": " + worst);
    }

    private static Miss miss(Kind kind, long seed) {
        Random random = new Random(seed);
        CompositionConductivity conductivity =
                new CompositionConductivity(random.nextBoolean() ? 298.15 : 278.15 + 25 * random.nextDouble());
        double pH = kind.least + (kind.most - kind.least) * random.nextDouble();
        double step = random.nextInt(4) == 0 ? 1 + 2 * random.nextDouble() : random.nextBoolean() ? 0.5 : 0.1;
        double least = Math.max(3, pH - step / 2);
        double most = Math.min(11, pH + step / 2);
        CompositionRanges ranges = ranges(kind, random);
        int alkalinity = KitQuantity.ALKALINITY.place();
        // as KitKernel.prepare
        ranges.least[alkalinity] = Math.max(
                ranges.least[alkalinity], Math.min(ranges.most[alkalinity], conductivity.leastAlkalinity(least)));
        ConductivityExtreme search = new ConductivityExtreme(conductivity, least, most);
        int sign = random.nextBoolean() ? 1 : -1;
        double extreme = search.find(ranges, sign, new double[AMOUNTS + 1]);
        if (Double.isNaN(extreme)) { // the pH asks for more alkalinity than the ranges have
            assertTrue(!ranges.writeFirst(new double[AMOUNTS]));
            return new Miss(seed, sign, 0);
        }
        double best = costly(ranges, conductivity, sign, least, most, random);
        return new Miss(seed, sign, sign * (best - extreme) / extreme);
    }

    /** Ranges around a random composition, in eq/L; half of them with one quantity held, as when its bound is looked for. */
    private static CompositionRanges ranges(Kind kind, Random random) {
        double size = Math.exp(Math.log(1e-4) + random.nextDouble() * Math.log(500));
        double[] inside = new double[AMOUNTS];
        double cations = 0;
        double anions = 0;
        for (int i = 0; i < AMOUNTS; i++) {
            boolean scarce = kind == Kind.HARDLY_ALKALINITY && i == KitQuantity.ALKALINITY.place();
            inside[i] = random.nextInt(4) == 0 ? 0 : size * random.nextDouble() * (scarce ? 0.01 : 1);
            cations += CompositionRanges.isCation(i) ? inside[i] : 0;
            anions += CompositionRanges.isCation(i) ? 0 : inside[i];
        }
        inside[KitQuantity.SODIUM.place()] += Math.max(0, anions - cations);
        inside[KitQuantity.CHLORIDE.place()] += Math.max(0, cations - anions);
        CompositionRanges ranges = new CompositionRanges();
        int held = random.nextBoolean() ? random.nextInt(KitQuantity.count()) : -1;
        for (KitQuantity quantity : KitQuantity.values()) {
            int q = quantity.place();
            double value = CompositionRanges.valueOf(inside, q);
            boolean narrow = isRead(kind, quantity, random);
            double width =
                    0.2 * size * (kind == Kind.HARDLY_ALKALINITY && quantity == KitQuantity.ALKALINITY ? 0.1 : 1);
            ranges.least[q] = q == held ? value : narrow ? Math.max(0, value - width * random.nextDouble()) : 0;
            ranges.most[q] = q == held ? value : narrow ? value + width * random.nextDouble() : 20 * size;
        }
        return ranges;
    }

    private static boolean isRead(Kind kind, KitQuantity quantity, Random random) {
        boolean kit = quantity == KitQuantity.HARDNESS || quantity == KitQuantity.ALKALINITY;
        return switch (kind) {
            case ANY -> random.nextInt(3) == 0;
            case WHOLE_KIT, HARDLY_ALKALINITY -> kit || random.nextInt(8) == 0;
            case OPEN_AND_BASIC -> !kit && random.nextInt(8) == 0;
        };
    }

    private static double costly(
            CompositionRanges ranges,
            CompositionConductivity conductivity,
            int sign,
            double least,
            double most,
            Random random) {
        ConductivityAscent ascent = new ConductivityAscent(conductivity, least, most);
        double[] z = new double[AMOUNTS + 1];
        double best = Double.NEGATIVE_INFINITY;
        for (int start = 0; start < FOLLOWED + CLIMBED; start++) {
            ranges.writeFirst(z);
            ranges.raise(z, random.doubles(AMOUNTS, -1, 1).toArray());
            z[AMOUNTS] = least + (most - least) * (random.nextInt(4) == 0 ? random.nextInt(2) : random.nextDouble());
            double value = sign * conductivity.of(z, z[AMOUNTS]);
            double reached = start < FOLLOWED
                    ? ascent.follow(ranges, sign, z, value)
                    : climb(ranges, conductivity, sign, z, value, least, most, random);
            if (!Double.isNaN(reached)) { // the species of a start near 1 eq/L may not be found
                best = Math.max(best, reached);
            }
        }
        return sign * best;
    }

    private static double climb(
            CompositionRanges ranges,
            CompositionConductivity conductivity,
            int sign,
            double[] z,
            double start,
            double least,
            double most,
            Random random) {
        double[] next = new double[AMOUNTS + 1];
        double value = start;
        for (int step = 0; step < STEPS; step++) {
            System.arraycopy(z, 0, next, 0, AMOUNTS + 1);
            int i = random.nextInt(AMOUNTS);
            int j = random.nextInt(AMOUNTS);
            if (i == j) {
                next[AMOUNTS] = least + (most - least) * random.nextDouble();
            } else {
                ranges.exchange(z, i, j, random.nextBoolean() ? 1 : -1, next);
                double share = random.nextInt(4) == 0 ? 1 : random.nextDouble();
                for (int k = 0; k < AMOUNTS; k++) {
                    next[k] = z[k] + share * (next[k] - z[k]);
                }
            }
            double found = sign * conductivity.of(next, next[AMOUNTS]);
            if (found > value) {
                value = found;
                System.arraycopy(next, 0, z, 0, AMOUNTS + 1);
            }
        }
        return value;
    }
}
