package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.Beds.CAPACITY;
import static evenwater.chemistry.kernel.Beds.VOID;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;

class BedKernelPropertiesTest {

    private static final double[] CONSTANT = {2.6, 1.7, 1, 1.46};
    private static final int[] CHARGE = {2, 2, 1, 1};
    private static final int IONS = 4;

    /** One flow: which water, how much of it, how fast, which way. */
    record Flow(double[] feed, double bedVolumes, double hours, boolean upward) {}

    @Provide
    Arbitrary<List<Flow>> flows() {
        Arbitrary<double[]> tap = feed(0.006);
        Arbitrary<double[]> brine =
                feed(0.006).map(water -> new double[] {water[0], water[1], water[2] + 1.8, water[3]});
        return Combinators.combine(
                        Arbitraries.frequencyOf(Tuple.of(3, tap), Tuple.of(1, brine)),
                        Arbitraries.doubles().between(0.001, 20).ofScale(3),
                        Arbitraries.doubles().between(0.0001, 2).ofScale(4),
                        Arbitraries.of(true, false))
                .as(Flow::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(60);
    }

    private static Arbitrary<double[]> feed(double most) {
        return Arbitraries.doubles()
                .between(0, most)
                .ofScale(9)
                .list()
                .ofSize(IONS)
                .map(list -> list.stream().mapToDouble(Double::doubleValue).toArray());
    }

    @Provide
    Arbitrary<BedState> beds() {
        Arbitrary<Double> rates = Arbitraries.frequencyOf(
                Tuple.of(3, Arbitraries.doubles().between(0.01, 1000).ofScale(2)),
                Tuple.of(1, Arbitraries.of(0.0, Double.POSITIVE_INFINITY)));
        return Combinators.combine(Arbitraries.integers().between(1, 25), rates, rates)
                .as((cells, film, solid) -> {
                    BedState bed = new BedState(CONSTANT, CHARGE, cells, VOID);
                    bed.rates(film, solid);
                    for (int j = 0; j < cells; j++) {
                        bed.resin(j, j % IONS, CAPACITY);
                        bed.water(j, (j + 1) % IONS, 0.004);
                    }
                    return bed;
                });
    }

    @Property(tries = 400)
    void everyIonIsConservedAndBothPhasesStayNeutral(@ForAll("beds") BedState bed, @ForAll("flows") List<Flow> flows) {
        double[] before = Beds.contents(bed);
        double[] balance = new double[IONS];
        double moved = CAPACITY;
        double[] anions = new double[bed.cells()];
        Arrays.fill(anions, 0.004);
        double[] effluent = new double[IONS];
        for (Flow flow : flows) {
            assertEquals(
                    BedKernel.FLOWED,
                    BedKernel.flow(bed, flow.feed, flow.upward, flow.bedVolumes, flow.hours, effluent));
            for (int i = 0; i < IONS; i++) {
                balance[i] += (flow.feed[i] - effluent[i]) * flow.bedVolumes;
                moved += flow.feed[i] * flow.bedVolumes;
            }
            carry(anions, flow);
            for (int j = 0; j < bed.cells(); j++) {
                double charge = 0;
                double held = 0;
                for (int i = 0; i < IONS; i++) {
                    assertTrue(bed.water(j, i) >= 0 && bed.resin(j, i) >= 0);
                    charge += bed.water(j, i);
                    held += bed.resin(j, i);
                }
                assertEquals(anions[j], charge, 1e-9 * anions[j] + 1e-300);
                assertEquals(CAPACITY, held, 1e-9 * CAPACITY);
            }
        }
        for (int i = 0; i < IONS; i++) {
            assertEquals(before[i] + balance[i], bed.content(i), 1e-9 * moved);
        }
    }

    /** The anions, which a cation resin lets pass, are carried by the water alone. */
    private static void carry(double[] anions, Flow flow) {
        int n = anions.length;
        double renewed = n * flow.bedVolumes;
        double entering = Beds.sum(flow.feed);
        for (int k = 0; k < n; k++) {
            int j = flow.upward ? n - 1 - k : k;
            anions[j] = (VOID * anions[j] + renewed * entering) / (VOID + renewed);
            entering = anions[j];
        }
    }

    /** Whatever the bed held, nothing leaves it that is stronger than the strongest of what is there. */
    @Property(tries = 200)
    void noIonExceedsTheStrengthOfTheWater(@ForAll("beds") BedState bed, @ForAll("flows") List<Flow> flows) {
        double strongest = 0.004;
        List<Double> strengths = new ArrayList<>();
        double[] effluent = new double[IONS];
        for (Flow flow : flows) {
            strongest = Math.max(strongest, Beds.sum(flow.feed));
            BedKernel.flow(bed, flow.feed, flow.upward, flow.bedVolumes, flow.hours, effluent);
            strengths.add(Beds.sum(effluent));
        }
        for (double strength : strengths) {
            assertTrue(strength <= strongest * (1 + 1e-12));
        }
    }

    @Property(tries = 100)
    void aBedInEquilibriumWithItsFeedDoesNothing(@ForAll("feeds") double[] feed, @ForAll("beds") BedState bed) {
        double s = ExchangeEquilibrium.ratioOverWater(CONSTANT, CHARGE, feed, CAPACITY);
        for (int j = 0; j < bed.cells(); j++) {
            for (int i = 0; i < IONS; i++) {
                bed.water(j, i, feed[i]);
                bed.resin(j, i, feed[i] * ExchangeEquilibrium.distribution(CONSTANT[i], CHARGE[i], s));
            }
        }
        double[] effluent = new double[IONS];
        for (int k = 0; k < 20; k++) {
            BedKernel.flow(bed, feed, k % 2 == 0, 7, 0.5, effluent);
        }
        for (int i = 0; i < IONS; i++) {
            assertEquals(feed[i], effluent[i], 1e-12 * Beds.sum(feed));
        }
    }

    @Provide
    Arbitrary<double[]> feeds() {
        return feed(0.006).map(water -> new double[] {water[0] + 1e-5, water[1], water[2], water[3]});
    }
}
