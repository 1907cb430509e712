package evenwater.chemistry.exchange;

import static evenwater.chemistry.exchange.Feeds.END_POINT;
import static evenwater.chemistry.exchange.Feeds.cubicFoot;
import static evenwater.chemistry.exchange.Feeds.feed;
import static evenwater.chemistry.exchange.Feeds.pounds;
import static evenwater.chemistry.exchange.Feeds.usual;
import static evenwater.chemistry.testing.Amounts.hardnessOf;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.EquivalentConcentration;
import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ResinBedTest {

    private static final Hardness TWO_GRAINS = Hardness.of(2, Hardness.GRAIN_PER_US_GALLON);

    @Test
    void aNewBedSoftensAndGivesSodiumForIt() {
        ResinBed bed = cubicFoot();
        ServiceRun run = bed.serviceUntil(usual(), bed.flow(16), END_POINT);
        Water soft = run.meanWater();
        double taken = hardnessOf(usual()) - hardnessOf(soft);
        assertEquals(4 + 2 * taken, soft.total(Ion.SODIUM).getValue(), 1e-12);
        assertEquals(usual().alkalinity(), soft.alkalinity());
        assertEquals(1, soft.total(Ion.CHLORIDE).getValue());
        assertTrue(run.meanHardness().compareTo(END_POINT) < 0);
        assertTrue(run.leakage().compareTo(run.meanHardness()) < 0);
        assertTrue(run.lowestHardness().compareTo(run.leakage()) < 0);
        assertEquals(run.bedVolumes(), run.volume().ratioTo(bed.volume()), 1e-12 * run.bedVolumes());
        assertEquals(END_POINT.in(Hardness.MILLIMOLE_PER_LITRE), hardnessOf(run.waterAt(run.volume())), 0.002);
    }

    /** Common practice, no source: the leading edge of hardness is magnesium, at some times its feed; calcium follows. */
    @Test
    void magnesiumLeavesFirst() {
        ResinBed bed = cubicFoot();
        ServiceRun run = bed.serviceFor(usual(), bed.flow(8), bed.volume().multiply(900));
        int magnesium = run.ions().indexOf(Ion.MAGNESIUM);
        int calcium = run.ions().indexOf(Ion.CALCIUM);
        double half = usual().hardness().in(Hardness.MILLIMOLE_PER_LITRE) / 2e3;
        double first = run.effluent().stream()
                .filter(s -> inEquivalents(s.concentrations().get(magnesium)) > half)
                .findFirst()
                .orElseThrow()
                .bedVolumes();
        double second = run.effluent().stream()
                .filter(s -> inEquivalents(s.concentrations().get(calcium)) > half)
                .findFirst()
                .orElseThrow()
                .bedVolumes();
        assertTrue(first < second - 20, first + " and " + second);
        double highest = run.effluent().stream()
                .mapToDouble(s -> inEquivalents(s.concentrations().get(magnesium)))
                .max()
                .orElseThrow();
        double fed = inEquivalents(Ion.MAGNESIUM.equivalents(usual().total(Ion.MAGNESIUM)));
        assertTrue(highest > 1.3 * fed, highest + " of " + fed);
    }

    private static double inEquivalents(EquivalentConcentration c) {
        return c.in(EquivalentConcentration.EQUIVALENT_PER_LITRE);
    }

    @Test
    void theProfileShowsTheFront() {
        ResinBed bed = cubicFoot();
        List<ResinLoading> profile = bed.serviceFor(
                        usual(), bed.flow(16), bed.volume().multiply(300))
                .bedAfter()
                .profile();
        assertEquals(100, profile.size());
        assertTrue(profile.get(0).fraction(Ion.CALCIUM) > 0.7);
        assertTrue(profile.get(99).fraction(Ion.SODIUM) > 0.9);
        for (int i = 1; i < 100; i++) {
            assertTrue(profile.get(i).fraction(Ion.SODIUM) > profile.get(i - 1).fraction(Ion.SODIUM));
        }
    }

    @Test
    void aSpentBedGivesItsFeed() {
        ResinBed bed = cubicFoot(30);
        ServiceRun run = bed.serviceFor(usual(), bed.flow(4), bed.volume().multiply(5000));
        Water last = run.waterAt(run.volume());
        assertEquals(hardnessOf(usual()), hardnessOf(last), 1e-9);
        ResinLoading expected = Resin.gel().loadingIn(usual());
        assertEquals(expected.fraction(Ion.CALCIUM), run.bedAfter().loading().fraction(Ion.CALCIUM), 1e-6);
    }

    @Test
    void everyIonOfTheTableIsExchangedAndTheOthersPass() {
        Water rich = Water.builder()
                .total(Ion.CALCIUM, mmol(1))
                .total(Ion.STRONTIUM, mmol(0.01))
                .total(Ion.BARIUM, mmol(0.001))
                .total(Ion.IRON_II, mmol(0.01))
                .total(Ion.MANGANESE_II, mmol(0.005))
                .total(Ion.AMMONIUM, mmol(0.05))
                .total(Ion.POTASSIUM, mmol(0.1))
                .total(Ion.ALUMINIUM, mmol(0.002))
                .total(Ion.SULFATE, mmol(0.5))
                .total(Ion.SILICA, mmol(0.2))
                .build();
        ResinBed bed = cubicFoot();
        Water soft =
                bed.serviceFor(rich, bed.flow(16), bed.volume().multiply(100)).meanWater();
        for (Ion ion : List.of(Ion.CALCIUM, Ion.STRONTIUM, Ion.BARIUM, Ion.IRON_II, Ion.MANGANESE_II)) {
            assertTrue(soft.total(ion).ratioTo(rich.total(ion)) < 0.01, ion.symbol());
        }
        assertTrue(soft.total(Ion.POTASSIUM).ratioTo(rich.total(Ion.POTASSIUM)) < 1);
        assertEquals(rich.total(Ion.ALUMINIUM), soft.total(Ion.ALUMINIUM));
        assertEquals(rich.total(Ion.SILICA), soft.total(Ion.SILICA));
        Change change = Change.between(rich, soft);
        assertEquals(0, change.unmeasuredCharge().getValue());
    }

    @Test
    void brineThatIsNotRinsedOutIsChloride() {
        ResinBed spent =
                cubicFoot().serviceUntil(usual(), Feeds.flow(16), END_POINT).bedAfter();
        ResinBed hasty = spent.regenerate(Regeneration.coFlow(pounds(10)).withWater(0, 0.2, 0), usual())
                .bedAfter();
        ServiceRun run = hasty.serviceFor(usual(), Feeds.flow(16), litres(100));
        assertTrue(run.meanWater().total(Ion.CHLORIDE).getValue() > 20);
        ResinBed rinsed =
                spent.regenerate(Regeneration.coFlow(pounds(10)), usual()).bedAfter();
        assertEquals(
                1,
                rinsed.serviceFor(usual(), Feeds.flow(16), litres(100))
                        .meanWater()
                        .total(Ion.CHLORIDE)
                        .getValue(),
                1e-3);
    }

    @Test
    void theStrengthOfAFeedThatChangesFollows() {
        ResinBed bed =
                cubicFoot().serviceFor(feed(2, 0.5), Feeds.flow(16), litres(50)).bedAfter();
        ServiceRun run = bed.serviceFor(feed(20, 4), Feeds.flow(16), litres(5));
        Water first = run.effluent().isEmpty() ? Water.pure() : run.waterAt(litres(5));
        assertTrue(first.total(Ion.CHLORIDE).getValue() < 1);
        assertEquals(0, first.netCharge().getValue(), 1e-12);
    }

    @Test
    void potassiumTakesThePlaceOfSodium() {
        ResinBed bed = ResinBed.of(Resin.gel(), litres(20), ResinLoading.of(Map.of(Ion.POTASSIUM, 1.0)), 50);
        Water soft = bed.serviceUntil(usual(), bed.flow(16), END_POINT).meanWater();
        assertTrue(soft.total(Ion.POTASSIUM).getValue() > 3);
        assertTrue(soft.total(Ion.SODIUM).getValue() < 4);
    }

    @Test
    void nonsenseIsRefused() {
        ResinBed bed = cubicFoot();
        Refused.argument("volume of a bed must be positive, but was 0 L", () -> ResinBed.of(Resin.gel(), litres(0)));
        Refused.argument(
                "slices of a bed must be from 1 to 1000, but were 0",
                () -> ResinBed.of(Resin.gel(), litres(1), Resin.gel().loadingIn(usual()), 0));
        Refused.argument(
                "flow through a bed must be positive, but was 0 L/min",
                () -> bed.serviceUntil(usual(), FlowRate.of(0, FlowRate.LITRE_PER_MINUTE), END_POINT));
        Refused.argument(
                "end point must be positive, but was 0 gpg",
                () -> bed.serviceUntil(usual(), bed.flow(16), Hardness.of(0, Hardness.GRAIN_PER_US_GALLON)));
        Refused.argument(
                "throughput must be above 0 and at most 100000 volumes of the bed of 1 ft³, but was 0 L",
                () -> bed.serviceFor(usual(), bed.flow(16), litres(0)));
        Refused.withoutAnswer(
                "a water without cations that the resin exchanges does nothing in a bed",
                List.of(),
                () -> bed.serviceFor(Water.pure(), bed.flow(16), litres(100)));
        Hardness half = Hardness.of(0.5, Hardness.GRAIN_PER_US_GALLON);
        Refused.withoutAnswer(
                "the end point of 1 gpg is not below the hardness of the feed, 0.5 gpg: the bed would never be spent",
                List.of(END_POINT, feed(0.5, 1).hardness().to(half.getUnit())),
                () -> bed.serviceUntil(feed(0.5, 1), bed.flow(16), END_POINT));
        ResinBed small = ResinBed.of(Resin.gel(), litres(2));
        ServiceRun run = small.serviceFor(usual(), small.flow(16), litres(128));
        Refused.argument(
                "throughput must be above 0 and at most the 128 L of the run, but was 129 L",
                () -> run.waterAt(litres(129)));
        Refused.argument(
                "throughput must be above 0 and at most the 128 L of the run, but was 0 L",
                () -> run.waterAt(litres(0)));
    }

    @Test
    void aBedThatLeaksTooMuchSaysSo() {
        ResinBed spent = ResinBed.of(Resin.gel(), litres(20), Resin.gel().loadingIn(usual()), 20);
        Refused.withoutAnswer(
                "the bed leaks more than the end point of 2 gpg from the start: more salt, counter-flow or a higher end point would help",
                List.of(TWO_GRAINS),
                () -> spent.serviceUntil(usual(), spent.flow(16), TWO_GRAINS));
    }

    /** One call of 200 bed volumes is as good as 200 calls of one. */
    @Test
    void singleChargedFrontsAreFollowedToo() {
        Water potassium = Water.builder()
                .total(Ion.POTASSIUM, mmol(5))
                .total(Ion.CHLORIDE, mmol(5))
                .build();
        ResinBed bed = cubicFoot();
        double once = potassiumBehind(
                bed.serviceFor(potassium, bed.flow(16), bed.volume().multiply(300)));
        double mean = 0;
        for (int k = 0; k < 300; k++) {
            ServiceRun run = bed.serviceFor(potassium, bed.flow(16), bed.volume());
            mean += potassiumBehind(run) / 300;
            bed = run.bedAfter();
        }
        assertEquals(mean, once, 0.05 * mean);
    }

    private static double potassiumBehind(ServiceRun run) {
        return run.meanWater().total(Ion.POTASSIUM).getValue();
    }

    @Test
    void anUnrinsedBedIsSaltyFirstAndThenSoft() {
        ResinBed spent =
                cubicFoot().serviceUntil(usual(), Feeds.flow(16), END_POINT).bedAfter();
        ResinBed unrinsed = spent.regenerate(Regeneration.coFlow(pounds(10)).withWater(2.5, 0, 0), usual())
                .bedAfter();
        ServiceRun run = unrinsed.serviceUntil(usual(), Feeds.flow(16), END_POINT);
        assertTrue(run.bedVolumes() > 250, run.bedVolumes() + " bed volumes");
        assertTrue(run.waterAt(unrinsed.volume().divide(4)).total(Ion.CHLORIDE).getValue() > 100);
    }

    @Test
    void whatWouldPassUncountedIsRefused() {
        Selectivity noCalcium = Selectivity.of(
                "no calcium", Map.of(Ion.SODIUM, 1.0, Ion.MAGNESIUM, 1.7), SelectivityConvention.PLAIN_RATIO);
        ResinBed bed = ResinBed.of(Resin.gel().with(noCalcium), litres(10));
        Refused.argument(
                "no selectivity of Ca²⁺ is known to no calcium, only of [Mg²⁺, Na⁺]",
                () -> bed.serviceUntil(usual(), bed.flow(16), END_POINT));
        Refused.argument(
                "a bed in the hydrogen form makes acid of its water and is left out: loading with H⁺ must be 0, but was 1.0",
                () -> ResinBed.of(Resin.gel(), litres(10), ResinLoading.of(Map.of(Ion.HYDROGEN, 1.0)), 10));
        ResinBed usual = cubicFoot();
        Water brine = Water.builder()
                .total(Ion.POTASSIUM, mmol(2000))
                .total(Ion.CHLORIDE, mmol(2000))
                .build();
        Refused.argument(
                "throughput of 100000 ft³ of this water takes 40000000 steps of computation, more than a million: less water or fewer slices would do",
                () -> usual.serviceFor(brine, usual.flow(16), WaterUnits.volume(100_000, WaterUnits.CUBIC_FOOT)));
    }

    @Test
    void bedsPrint() {
        assertEquals("1 ft³ of " + Resin.gel() + ", in 100 slices", cubicFoot().toString());
        assertEquals(WaterUnits.volume(1, WaterUnits.CUBIC_FOOT), cubicFoot().volume());
        assertEquals(16 * 28.316846592, cubicFoot().flow(16).in(FlowRate.LITRE_PER_HOUR), 1e-12);
    }
}
