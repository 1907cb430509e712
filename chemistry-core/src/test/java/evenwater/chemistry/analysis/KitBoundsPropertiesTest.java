package evenwater.chemistry.analysis;

import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.instrument.CalculatedConductivity;
import evenwater.chemistry.instrument.DropTest;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.instrument.ReadingInterval;
import evenwater.chemistry.kernel.KitQuantity;
import evenwater.chemistry.quantity.Alkalinity;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Amounts;
import evenwater.chemistry.water.Water;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** A kit reads a water that is known: what it holds has to lie within the bounds, always. */
class KitBoundsPropertiesTest {

    /** Kinds of water, with the least and the most equivalents in meq/L and what prevails of Ca, Mg, Na, K and of HCO₃, Cl, SO₄, NO₃. */
    private enum Kind {
        NEARLY_PURE(0.02, 0.5, new double[] {1, 1, 1, 1}, new double[] {1, 1, 1, 1}, 5.5, 8),
        SOFT(0.2, 2, new double[] {1, 1, 1, 1}, new double[] {1, 1, 1, 1}, 6, 8),
        HARD(2, 12, new double[] {4, 1, 1, 0.1}, new double[] {3, 1, 1, 0.5}, 6.5, 8.5),
        SOFTENED(1, 20, new double[] {0, 0, 1, 0.1}, new double[] {3, 1, 1, 0.5}, 6.5, 8.5),
        SULFATE(2, 40, new double[] {1, 1, 1, 0.1}, new double[] {0.2, 0.2, 4, 0.1}, 6.5, 8.5),
        ACID(0.1, 10, new double[] {1, 1, 1, 1}, new double[] {0, 1, 1, 1}, 4.5, 5.5),
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

    private static Optional<Conductivity> conductivity(Water water) {
        try {
            return Optional.of(CalculatedConductivity.at25Celsius(water));
        } catch (NoAnswerException noSuchWater) { // such as pH 9.5 without alkalinity
            return Optional.empty();
        }
    }

    private static KitReadings read(Water water, Conductivity conductivity, Random random) {
        DropTest<Hardness> gh = DropTest.GENERAL_HARDNESS.withSampleTimes(1 + random.nextInt(4));
        DropTest<Alkalinity> kh = DropTest.CARBONATE_HARDNESS.withSampleTimes(1 + random.nextInt(4));
        boolean rounds = random.nextBoolean();
        double step = random.nextBoolean() ? 0.1 : 0.5;
        double pH = Math.round(water.measuredPH().orElseThrow() / step) * step;
        double error = 0.02;
        double shown = conductivity
                .multiply(0.5 * (1 + error * (2 * random.nextDouble() - 1)))
                .in(Conductivity.MICROSIEMENS_PER_CENTIMETRE);
        MassConcentration ten = KitSamples.ppm(10);
        return KitReadings.builder()
                .hardness(
                        rounds
                                ? gh.roundedTo((int) Math.round(water.hardness().ratioTo(gh.step())))
                                : gh.turningAt(gh.readingFor(water.hardness())))
                .alkalinity(
                        rounds
                                ? kh.roundedTo(
                                        (int) Math.round(water.alkalinity().ratioTo(kh.step())))
                                : kh.turningAt(kh.readingFor(water.alkalinity())))
                .pH(pH - step / 2, pH + step / 2)
                .temperature(water.temperature())
                .meter(
                        FactorMeter.SCALE_500,
                        ReadingInterval.ofRounded(KitSamples.ppm(10 * Math.round(shown / 10)), ten),
                        error)
                .modelAllowance(0)
                .build();
    }

    @Property(tries = 200)
    void whatAWaterHoldsIsWithinTheBoundsOfItsReadings(@ForAll Kind kind, @ForAll long seed) {
        Random random = new Random(seed);
        Water water = kind.water(random);
        Optional<Conductivity> conductivity = conductivity(water);
        while (conductivity.isEmpty()) {
            water = kind.water(random);
            conductivity = conductivity(water);
        }
        KitBounds bounds = read(water, conductivity.get(), random).bounds();
        for (KitQuantity quantity : KitQuantity.values()) {
            double truth = KitSamples.of(water, quantity);
            double rounding = 1e-9 * truth;
            String text = quantity + " " + truth + " meq/L of " + water + ", " + bounds;
            assertTrue(truth >= KitSamples.least(bounds, quantity) - rounding, text);
            assertTrue(truth <= KitSamples.most(bounds, quantity) + rounding, text);
        }
    }
}
