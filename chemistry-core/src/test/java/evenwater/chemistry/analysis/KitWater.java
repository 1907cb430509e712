package evenwater.chemistry.analysis;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.water.Water;
import java.util.Random;

/**
 * A random water with the conductivity that the library gives it, and what a kit shows of it.
 *
 * @param water its ions balance
 * @param conductivity at 25 °C, as the bounds have it
 */
record KitWater(Water water, Conductivity conductivity) {

    /** Of the meter, either way. */
    private static final double ERROR = 0.02;

    /** Kinds of water, with the least and the most equivalents in meq/L and what prevails of Ca, Mg, Na, K and of HCO₃, Cl, SO₄, NO₃. */
    private enum Kind {
        NEARLY_PURE(0.02, 0.5, new double[] {1, 1, 1, 1}, new double[] {1, 1, 1, 1}, 5.5, 8),
        SOFT(0.2, 2, new double[] {1, 1, 1, 1}, new double[] {1, 1, 1, 1}, 6, 8),
        HARD(2, 12, new double[] {4, 1, 1, 0.1}, new double[] {3, 1, 1, 0.5}, 6.5, 8.5),
        SOFTENED(1, 20, new double[] {0, 0, 1, 0.1}, new double[] {3, 1, 1, 0.5}, 6.5, 8.5),
        SULFATE(2, 40, new double[] {1, 1, 1, 0.1}, new double[] {0.2, 0.2, 4, 0.1}, 6.5, 8.5),
        ACID(0.1, 10, new double[] {1, 1, 1, 1}, new double[] {0, 1, 1, 1}, 4.5, 5.5),
        NEARLY_WITHOUT_ALKALINITY(0.1, 20, new double[] {1, 1, 1, 1}, new double[] {0.01, 1, 1, 1}, 4.5, 8),
        ALKALINE(1, 20, new double[] {0.2, 0.2, 3, 0.5}, new double[] {3, 1, 1, 0.1}, 8.5, 9.5),
        BRACKISH(10, 45, new double[] {1, 2, 8, 0.3}, new double[] {1, 10, 2, 0.1}, 7, 8.5);

        private final double least;
        private final double most;
        private final double[] cations;
        private final double[] anions;
        private final double leastPH;
        private final double mostPH;

        Kind(double least, double most, double[] cations, double[] anions, double leastPH, double mostPH) {
            this.least = least;
            this.most = most;
            this.cations = cations;
            this.anions = anions;
            this.leastPH = leastPH;
            this.mostPH = mostPH;
        }

        private static double[] shares(double[] prevailing, Random random) {
            double[] shares = prevailing.clone();
            double sum = 0;
            for (int i = 0; i < shares.length; i++) {
                shares[i] *= random.nextInt(5) == 0 ? 0 : random.nextDouble();
                sum += shares[i];
            }
            for (int i = 0; i < shares.length; i++) {
                shares[i] = sum > 0 ? shares[i] / sum : i == 2 ? 1 : 0;
            }
            return shares;
        }

        Water water(Random random) {
            double equivalents = least * Math.pow(most / least, random.nextDouble());
            double[] c = shares(cations, random);
            double[] a = shares(anions, random);
            return Water.builder()
                    .total(Ion.CALCIUM, Amounts.mmol(equivalents * c[0] / 2))
                    .total(Ion.MAGNESIUM, Amounts.mmol(equivalents * c[1] / 2))
                    .total(Ion.SODIUM, Amounts.mmol(equivalents * c[2]))
                    .total(Ion.POTASSIUM, Amounts.mmol(equivalents * c[3]))
                    .total(Ion.CHLORIDE, Amounts.mmol(equivalents * a[1]))
                    .total(Ion.SULFATE, Amounts.mmol(equivalents * a[2] / 2))
                    .total(Ion.NITRATE, Amounts.mmol(equivalents * a[3]))
                    .alkalinity(Amounts.alkalinity(equivalents * a[0]))
                    .measuredPH(leastPH + (mostPH - leastPH) * random.nextDouble())
                    .temperature(Amounts.celsius(random.nextBoolean() ? 25 : 5 + 25 * random.nextDouble()))
                    .build();
        }
    }

    static KitWater random(Random random) {
        Kind[] kinds = Kind.values();
        Kind kind = kinds[random.nextInt(kinds.length)];
        while (true) {
            Water water = kind.water(random);
            try {
                return new KitWater(water, CalculatedConductivity.at25Celsius(water));
            } catch (NoAnswerException noSuchWater) { // such as pH 9.5 without alkalinity
                continue;
            }
        }
    }

    /** Every reading is the truth itself, so that nothing but the composition is open. */
    KitReadings readExactly() {
        double pH = water.measuredPH().orElseThrow();
        return KitReadings.builder()
                .hardness(exactly(water.hardness()))
                .alkalinity(exactly(water.alkalinity()))
                .pH(pH, pH)
                .temperature(water.temperature())
                .conductivity(exactly(conductivity))
                .modelAllowance(0)
                .build();
    }

    private static <Q extends WaterQuantity<Q>> ReadingInterval<Q> exactly(Q value) {
        return new ReadingInterval<>(value, value, false);
    }

    /** Drops are counted or rounded, pH goes in steps of 0.1 or 0.5, a meter shows tens of ppm and is up to 2 % off. */
    KitReadingsBuilder readByKit(Random random) {
        DropTest<Hardness> gh = DropTest.GENERAL_HARDNESS.withSampleTimes(1 + random.nextInt(4));
        DropTest<Alkalinity> kh = DropTest.CARBONATE_HARDNESS.withSampleTimes(1 + random.nextInt(4));
        return random.nextBoolean()
                ? meterAndPH(random)
                        .hardness(gh.roundedTo((int) Math.round(water.hardness().ratioTo(gh.step()))))
                        .alkalinity(
                                kh.roundedTo((int) Math.round(water.alkalinity().ratioTo(kh.step()))))
                : meterAndPH(random)
                        .hardness(gh.turningAt(gh.readingFor(water.hardness())))
                        .alkalinity(kh.turningAt(kh.readingFor(water.alkalinity())));
    }

    /** The same with hardness, alkalinity or both not read. */
    KitReadingsBuilder readInPart(Random random) {
        DropTest<Hardness> gh = DropTest.GENERAL_HARDNESS;
        DropTest<Alkalinity> kh = DropTest.CARBONATE_HARDNESS;
        KitReadingsBuilder read = meterAndPH(random);
        return switch (random.nextInt(3)) {
            case 0 -> read.hardness(gh.turningAt(gh.readingFor(water.hardness())));
            case 1 -> read.alkalinity(kh.turningAt(kh.readingFor(water.alkalinity())));
            default -> read;
        };
    }

    private KitReadingsBuilder meterAndPH(Random random) {
        double step = random.nextBoolean() ? 0.1 : 0.5;
        double pH = Math.round(water.measuredPH().orElseThrow() / step) * step;
        double shown = conductivity
                .multiply(0.5 * (1 + ERROR * (2 * random.nextDouble() - 1)))
                .in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        return KitReadings.builder()
                .pH(pH - step / 2, pH + step / 2)
                .temperature(water.temperature())
                .meter(
                        FactorMeter.SCALE_500,
                        ReadingInterval.ofRounded(KitSamples.ppm(10 * Math.round(shown / 10)), KitSamples.ppm(10)),
                        ERROR)
                .modelAllowance(0);
    }
}
