package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The weights against a tank that is simulated in small steps, with its amount and its volume. */
class TankRhythmPropertiesTest {

    private static final int STEPS_OF_AN_INTERVAL = 400;

    /** What comes in: start, change water, level water, daily rate, dose. */
    private record Inflows(double start, double change, double level, double daily, double dose) {
        double[] array() {
            return new double[] {start, change, level, daily, dose};
        }
    }

    @Provide
    Arbitrary<Inflows> inflows() {
        Arbitrary<Double> amount = amount(0, 10);
        return Combinators.combine(amount, amount, amount, amount, amount).as(Inflows::new);
    }

    @Provide
    Arbitrary<Double> fractions() {
        return amount(0, 1);
    }

    @Provide
    Arbitrary<Double> intervals() {
        return amount(0.5, 14);
    }

    /** Shares that evaporate between two changes. */
    @Provide
    Arbitrary<Double> evaporations() {
        return amount(0, 0.6);
    }

    private static Arbitrary<Double> amount(double from, double to) {
        return Arbitraries.doubles().between(from, to).ofScale(6);
    }

    @Property(tries = 200)
    void aToppedOffTankFollowsTheSimulation(
            @ForAll("inflows") Inflows in,
            @ForAll("fractions") double fraction,
            @ForAll("intervals") double interval,
            @ForAll("evaporations") double evaporated) {
        TankRhythm rhythm = TankRhythm.toppedOff(fraction, interval, evaporated / interval);
        double amount = in.start;
        for (int change = 0; change < 5; change++) {
            assertConcentration(amount, rhythm, in, change, 0);
            for (int i = 0; i < STEPS_OF_AN_INTERVAL; i++) {
                double evaporating = evaporated / STEPS_OF_AN_INTERVAL;
                double concentrated = amount / (1 - evaporating); // in what is left of the litre
                amount = concentrated * (1 - evaporating) + evaporating * in.level;
                amount += in.daily * interval / STEPS_OF_AN_INTERVAL;
                if (i == STEPS_OF_AN_INTERVAL / 2 - 1) {
                    assertConcentration(amount, rhythm, in, change, interval / 2);
                }
            }
            assertConcentration(amount, rhythm, in, change, interval);
            amount = amount * (1 - fraction) + fraction * in.change + in.dose;
        }
    }

    @Property(tries = 200)
    void aFallingTankFollowsTheSimulation(
            @ForAll("inflows") Inflows in,
            @ForAll("fractions") double shareOfWhatIsLeft,
            @ForAll("intervals") double interval,
            @ForAll("evaporations") double evaporated) {
        double fraction = shareOfWhatIsLeft * (1 - evaporated);
        TankRhythm rhythm = TankRhythm.falling(fraction, interval, evaporated / interval);
        double amount = in.start;
        for (int change = 0; change < 5; change++) {
            double volume = 1;
            for (int i = 0; i < STEPS_OF_AN_INTERVAL; i++) {
                volume -= evaporated / STEPS_OF_AN_INTERVAL;
                amount += in.daily * interval / STEPS_OF_AN_INTERVAL;
                if (i == STEPS_OF_AN_INTERVAL / 2 - 1) {
                    assertConcentration(amount / volume, rhythm, in, change, interval / 2);
                }
            }
            assertConcentration(amount / volume, rhythm, in, change, interval);
            amount -= fraction * amount / volume;
            volume -= fraction;
            amount += fraction * in.change + (1 - volume - fraction) * in.level + in.dose;
            assertConcentration(amount, rhythm, in, change + 1, 0);
        }
    }

    /** By the midpoint rule, whose error falls with the square of the step. */
    @Property(tries = 200)
    void aDrippingTankFollowsTheSimulation(
            @ForAll("inflows") Inflows in,
            @ForAll("intervals") double days,
            @ForAll("evaporations") double evaporation,
            @ForAll("fractions") double drip) {
        double perDay = 0.001 + drip;
        TankRhythm rhythm = TankRhythm.dripping(perDay, evaporation);
        double step = days / 20_000;
        double amount = in.start;
        for (int i = 0; i < 20_000; i++) {
            double middle = amount + step / 2 * slope(amount, perDay, evaporation, in);
            amount += step * slope(middle, perDay, evaporation, in);
        }
        double[] weights = new double[TankRhythm.INFLOWS];
        rhythm.weights(0, days, weights);
        assertEquals(amount, CompensatedSum.ofProducts(weights, in.array()), 1e-6 * (1 + amount));
    }

    private static double slope(double amount, double drip, double evaporation, Inflows in) {
        return drip * (in.change - amount) + evaporation * in.level + in.daily;
    }

    @Property(tries = 200)
    void theEndIsWhatManyChangesLeadTo(
            @ForAll("inflows") Inflows in,
            @ForAll("fractions") double some,
            @ForAll("intervals") double interval,
            @ForAll("evaporations") double evaporated) {
        double fraction = 0.01 + 0.38 * some;
        for (TankRhythm rhythm : new TankRhythm[] {
            TankRhythm.toppedOff(fraction, interval, evaporated / interval),
            TankRhythm.falling(fraction, interval, evaporated / interval)
        }) {
            double[] late = new double[TankRhythm.INFLOWS];
            double[] end = new double[TankRhythm.INFLOWS];
            rhythm.weights(10_000, interval / 3, late);
            rhythm.weights(Double.POSITIVE_INFINITY, interval / 3, end);
            double atTheEnd = CompensatedSum.ofProducts(end, in.array());
            assertEquals(CompensatedSum.ofProducts(late, in.array()), atTheEnd, 1e-12 * (1 + atTheEnd));
            assertEquals(0, end[TankRhythm.START]);
        }
    }

    @Property(tries = 500)
    void nothingIsUsedUpBeforeTheDayOfExhaustionAndItIsAfter(
            @ForAll("inflows") Inflows gain,
            @ForAll("inflows") Inflows loss,
            @ForAll("fractions") double some,
            @ForAll("intervals") double interval,
            @ForAll("evaporations") double evaporated) {
        double[] gains = gain.array();
        double[] losses = {0, 0, 0, loss.daily, loss.dose};
        double fraction = some * (1 - evaporated);
        for (TankRhythm rhythm : new TankRhythm[] {
            TankRhythm.toppedOff(fraction, interval, evaporated / interval),
            TankRhythm.falling(fraction, interval, evaporated / interval),
            TankRhythm.toppedOff(0, Double.POSITIVE_INFINITY, evaporated / interval),
            TankRhythm.dripping(0.01 + fraction, evaporated / interval)
        }) {
            double day = TankExhaustion.day(rhythm, gains, losses);
            double horizon = Math.min(day, 3000);
            for (double x = 0; x < 1; x += 0.0173) {
                double before = content(rhythm, gains, losses, x * horizon);
                assertTrue(before > -1e-9, () -> before + " before day " + day);
            }
            if (day <= 1e6) {
                double after = Math.min(
                        content(rhythm, gains, losses, day + 1e-6 * (1 + day)),
                        contentBeforeChange(rhythm, gains, losses, day));
                assertTrue(after < 1e-9, () -> after + " after day " + day);
            }
        }
    }

    /** What runs out at the very end of an interval is refilled by the change that is due then, so it has to be looked for before. */
    private static double contentBeforeChange(TankRhythm rhythm, double[] gains, double[] losses, double day) {
        double interval = rhythm.intervalInDays();
        double changes = Math.rint(day / interval);
        if (Double.isInfinite(interval) || changes < 1 || Math.abs(day - changes * interval) > 1e-6 * (1 + day)) {
            return Double.POSITIVE_INFINITY;
        }
        double[] weights = new double[TankRhythm.INFLOWS];
        rhythm.weights(changes - 1, interval, weights);
        return CompensatedSum.ofProducts(weights, gains) - CompensatedSum.ofProducts(weights, losses);
    }

    private static double content(TankRhythm rhythm, double[] gains, double[] losses, double day) {
        double[] weights = new double[TankRhythm.INFLOWS];
        rhythm.weights(rhythm.changesBy(day), rhythm.daysSinceChange(day), weights);
        return CompensatedSum.ofProducts(weights, gains) - CompensatedSum.ofProducts(weights, losses);
    }

    private static void assertConcentration(
            double simulated, TankRhythm rhythm, Inflows in, double changes, double since) {
        double[] weights = new double[TankRhythm.INFLOWS];
        rhythm.weights(changes, since, weights);
        double found = CompensatedSum.ofProducts(weights, in.array()) / rhythm.volumeShare(since);
        assertEquals(simulated, found, 1e-10 * (1 + simulated)); // four hundred additions for each interval
    }
}
