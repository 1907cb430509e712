package evenwater.chemistry.exchange;

import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

class ResinBedPropertiesTest {

    @Provide
    Arbitrary<Water> feeds() {
        return Combinators.combine(
                        Arbitraries.doubles().between(6, 40).ofScale(3),
                        Arbitraries.doubles().between(2, 8).ofScale(3))
                .as(Feeds::feed);
    }

    private static ResinBed bed(Resin resin) {
        return ResinBed.of(resin, litres(10), ResinLoading.of(Map.of(Ion.SODIUM, 1.0)), 25);
    }

    private static double bedVolumes(ResinBed bed, Water feed, double flow, double grains) {
        Hardness endPoint = Hardness.of(grains, Hardness.GRAIN_PER_US_GALLON);
        return bed.serviceUntil(feed, bed.flow(flow), endPoint).bedVolumes();
    }

    /** With an end point in the foot of the front: near its top a wide front would last longer. */
    @Property(tries = 60)
    void aStricterEndPointAndAFasterFlowShortenTheRun(
            @ForAll("feeds") Water feed,
            @ForAll @DoubleRange(min = 0.3, max = 1) double grains,
            @ForAll @DoubleRange(min = 4, max = 30) double flow) {
        ResinBed bed = bed(Resin.gel());
        double run = bedVolumes(bed, feed, flow, grains);
        assertTrue(bedVolumes(bed, feed, flow, 0.9 * grains) < run);
        assertTrue(bedVolumes(bed, feed, 1.3 * flow, grains) < run);
    }

    @Property(tries = 60)
    void capacityAndPreferenceLengthenTheRun(
            @ForAll("feeds") Water feed, @ForAll @DoubleRange(min = 1.05, max = 2) double factor) {
        double run = bedVolumes(bed(Resin.gel()), feed, 16, 1);
        Resin larger = Resin.gel().with(ExchangeCapacity.of(2 * factor, ExchangeCapacity.EQUIVALENT_PER_LITRE));
        assertTrue(bedVolumes(bed(larger), feed, 16, 1) > run);
        Resin keener = Resin.gel()
                .with(Selectivity.of(
                        "keener on both",
                        Map.of(
                                Ion.SODIUM, 1.98,
                                Ion.CALCIUM, 5.16 * factor,
                                Ion.MAGNESIUM, 3.29 * factor),
                        SelectivityConvention.PLAIN_RATIO));
        assertTrue(bedVolumes(bed(keener), feed, 16, 1) > run);
    }

    @Property(tries = 40)
    void fastRatesAreEquilibriumAndEquilibriumIsTheBest(@ForAll("feeds") Water feed) {
        ResinBed bed = bed(Resin.gel());
        double best = bedVolumes(bed.with(ExchangeRates.LOCAL_EQUILIBRIUM), feed, 16, 1);
        assertEquals(best, bedVolumes(bed.with(new ExchangeRates(1e9, 1e9)), feed, 16, 1), 1e-5 * best);
        assertTrue(bedVolumes(bed, feed, 16, 1) < best);
    }

    @Property(tries = 40)
    void whatLeavesIsWhatTheBooksSay(
            @ForAll("feeds") Water feed, @ForAll @DoubleRange(min = 20, max = 4000) double volume) {
        ResinBed bed = bed(Resin.gel());
        ServiceRun run = bed.serviceFor(feed, bed.flow(16), litres(volume));
        double entered = hardnessOf(feed) * volume * 2e-3;
        double left = hardnessOf(run.meanWater()) * volume * 2e-3;
        ResinLoading loading = run.bedAfter().loading();
        double held = 20 * (loading.fraction(Ion.CALCIUM) + loading.fraction(Ion.MAGNESIUM));
        double inPores = 10 * 0.38 * 2e-3 * hardnessOf(feed);
        assertTrue(entered - left - held >= -1e-9 * entered, entered + " in, " + left + " out, " + held + " held");
        assertTrue(entered - left - held <= inPores * 1.05 + 1e-9 * entered);
    }
}
