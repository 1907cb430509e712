package evenwater.chemistry.exchange;

import static evenwater.chemistry.exchange.Feeds.END_POINT;
import static evenwater.chemistry.exchange.Feeds.cubicFoot;
import static evenwater.chemistry.exchange.Feeds.cycle;
import static evenwater.chemistry.exchange.Feeds.feed;
import static evenwater.chemistry.exchange.Feeds.pounds;
import static evenwater.chemistry.exchange.Feeds.usual;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.ExchangeCapacity;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.water.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The bed model against the table of the trade (common practice; two points of it seen on trade pages): the two rates are calibrated on 6, 10 and 15 lb; all
 * else is the model's own answer, with the rates untouched.
 */
class CapacityReferenceTest {

    private static double kilograins(SofteningCycle cycle) {
        return cycle.capacity().in(ExchangeCapacity.KILOGRAIN_PER_CUBIC_FOOT);
    }

    private static double leakage(SofteningCycle cycle) {
        return cycle.service().leakage().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
    }

    @ParameterizedTest(name = "{0} lb: {1} kgr")
    @CsvSource({"6, 20", "10, 27", "15, 30"})
    void theCalibrationHolds(double pounds, double expected) {
        assertEquals(expected, kilograins(cycle(usual(), Regeneration.coFlow(pounds(pounds)))), 0.035 * expected);
    }

    /** Not calibrated on: the other rows of the table. At 4 lb the trade's 16 to 17 are 10 % above the model. */
    @ParameterizedTest(name = "{0} lb: {1} kgr")
    @CsvSource({"8, 24, 0.05", "20, 33, 0.05", "4, 16.5, 0.15"})
    void theOtherRowsFollow(double pounds, double expected, double tolerance) {
        assertEquals(expected, kilograins(cycle(usual(), Regeneration.coFlow(pounds(pounds)))), tolerance * expected);
    }

    @Test
    void counterFlowTakesMostOfTheLeakageAwayAndHardlyChangesTheCapacity() {
        SofteningCycle down = cycle(usual(), Regeneration.coFlow(pounds(6)));
        SofteningCycle up = cycle(usual(), Regeneration.counterFlow(pounds(6)));
        assertTrue(early(up) < early(down) / 5, early(up) + " of " + early(down));
        assertTrue(leakage(up) < leakage(down));
        assertTrue(up.service().lowestHardness().ratioTo(down.service().lowestHardness()) < 0.1);
        assertTrue(kilograins(up) > kilograins(down));
        assertTrue(kilograins(up) < 1.2 * kilograins(down));
    }

    /** Before the film of the front that comes adds to what the salt left behind. */
    private static double early(SofteningCycle cycle) {
        Water quarter = cycle.service().waterAt(cycle.service().volume().divide(4));
        return quarter.hardness().in(Hardness.MILLIGRAM_PER_LITRE_CALCIUM_CARBONATE);
    }

    /**
     * Curves of resin makers (from memory, good to half of themselves) for total cations as CaCO₃. In the middle of the run the model leaks 0.3 to 0.5 of them: its
     * bed is ideal, without channels or brine that passes by, and the curves may stand for a whole run with its end. Both stand.
     */
    @ParameterizedTest(name = "{0} mg/L of cations, {1} lb: {2} mg/L")
    @CsvSource({
        "250, 6, 3",
        "250, 10, 1.5",
        "250, 15, 1",
        "500, 6, 9",
        "500, 10, 4",
        "500, 15, 2",
        "1000, 6, 25",
        "1000, 10, 13",
        "1000, 15, 7"
    })
    void leakageIsBelowTheCurves(double cations, double pounds, double published) {
        SofteningCycle cycle = cycle(feed(10, sodiumFor(cations)), Regeneration.coFlow(pounds(pounds)));
        double share = leakage(cycle) / published;
        assertTrue(share > 0.3 && share < 0.5, share + " of the curve");
    }

    /** Which way the scale is read moves the answer by some tenths; the rates were calibrated with the plain ratio. */
    @Test
    void byMassActionCapacityAndLeakageAreHigher() {
        Resin resin = Resin.gel().with(Resin.gel().selectivity().with(SelectivityConvention.MASS_ACTION));
        ResinBed bed = ResinBed.of(resin, cubicFoot().volume());
        SofteningCycle plain = cycle(usual(), Regeneration.coFlow(pounds(6)));
        SofteningCycle massAction =
                SofteningCycle.steady(bed, usual(), bed.flow(16), END_POINT, Regeneration.coFlow(pounds(6)));
        assertEquals(1.10, kilograins(massAction) / kilograins(plain), 0.02);
        assertEquals(1.37, leakage(massAction) / leakage(plain), 0.05);
    }

    private static double sodiumFor(double cationsAsCalciumCarbonate) {
        return (cationsAsCalciumCarbonate - 171.18) * 2 / 100.0869;
    }

    @Test
    void sodiumInTheFeedRaisesLeakageAndCostsCapacity() {
        SofteningCycle little = cycle(feed(10, 1), Regeneration.coFlow(pounds(10)));
        SofteningCycle much = cycle(feed(10, 15), Regeneration.coFlow(pounds(10)));
        assertTrue(leakage(much) > 3 * leakage(little), leakage(much) + " of " + leakage(little));
        assertTrue(kilograins(much) < 0.95 * kilograins(little));
    }

    @Test
    void fasterFlowShortensTheRun() {
        ResinBed bed = cubicFoot();
        double before = Double.POSITIVE_INFINITY;
        for (double flow : new double[] {8, 16, 40, 80}) {
            SofteningCycle cycle =
                    SofteningCycle.steady(bed, usual(), bed.flow(flow), END_POINT, Regeneration.coFlow(pounds(10)));
            assertTrue(cycle.service().bedVolumes() < before);
            before = cycle.service().bedVolumes();
        }
    }

    /** Common practice, no source: hard feeds give less capacity for the same salt, soft ones more, by some percent. */
    @Test
    void halfAndDoubleHardnessMoveTheCapacity() {
        double half = kilograins(cycle(feed(5, 4), Regeneration.coFlow(pounds(10))));
        double usual = kilograins(cycle(usual(), Regeneration.coFlow(pounds(10))));
        double twice = kilograins(cycle(feed(20, 4), Regeneration.coFlow(pounds(10))));
        assertTrue(half > usual && half < 1.15 * usual, half + " and " + usual);
        assertTrue(twice < usual && twice > 0.85 * usual, twice + " and " + usual);
    }

    @Test
    void moreSaltGivesMoreCapacityAndLessForEachPound() {
        double capacity = 0;
        double efficiency = 1;
        for (double pounds : new double[] {4, 6, 8, 10, 15, 20}) {
            SofteningCycle cycle = cycle(usual(), Regeneration.coFlow(pounds(pounds)));
            assertTrue(kilograins(cycle) > capacity);
            assertTrue(cycle.efficiency().shareOfTheory() < efficiency);
            capacity = kilograins(cycle);
            efficiency = cycle.efficiency().shareOfTheory();
        }
    }

    /** What a bed gives with potassium is the model's own answer: some tenth more, since potassium pushes calcium out more strongly. */
    @Test
    void potassiumChlorideOfEqualChargesWorksAsWell() {
        SofteningCycle sodium = cycle(usual(), Regeneration.coFlow(pounds(10)));
        SofteningCycle potassium =
                cycle(usual(), Regeneration.coFlow(pounds(10)).withPotassiumChloride());
        assertTrue(potassium.service().meanWater().total(Ion.POTASSIUM).getValue() > 3);
        assertEquals(1.1, kilograins(potassium) / kilograins(sodium), 0.05);
    }

    /** What equilibrium alone would give is some tens of percent more: what is missing is the time that ions take. */
    @Test
    void equilibriumAloneGivesTooMuch() {
        ResinBed bed = cubicFoot().with(ExchangeRates.LOCAL_EQUILIBRIUM);
        SofteningCycle ideal =
                SofteningCycle.steady(bed, usual(), bed.flow(16), END_POINT, Regeneration.coFlow(pounds(10)));
        assertTrue(kilograins(ideal) > 1.25 * kilograins(cycle(usual(), Regeneration.coFlow(pounds(10)))));
    }

    @Test
    void theFirstCycleOfANewBedGivesMore() {
        ResinBed bed = cubicFoot();
        SofteningCycle steady = cycle(usual(), Regeneration.coFlow(pounds(6)));
        ServiceRun first = bed.serviceUntil(usual(), bed.flow(16), END_POINT);
        assertTrue(first.bedVolumes() > 1.3 * steady.service().bedVolumes());
    }

    @Test
    void theSteadyCycleDoesNotDependOnTheBedAtTheStart() {
        ResinBed spent = ResinBed.of(
                        Resin.gel(), cubicFoot().volume(), Resin.gel().loadingIn(usual()), 100)
                .regenerate(Regeneration.coFlow(pounds(20)), usual())
                .bedAfter();
        SofteningCycle fromSpent =
                SofteningCycle.steady(spent, usual(), spent.flow(16), END_POINT, Regeneration.coFlow(pounds(6)));
        assertEquals(kilograins(cycle(usual(), Regeneration.coFlow(pounds(6)))), kilograins(fromSpent), 1e-3);
    }

    @Test
    void moreSlicesChangeLittle() {
        double coarse = kilograins(cycle(usual(), Regeneration.coFlow(pounds(10))));
        ResinBed fine = cubicFoot(200);
        SofteningCycle cycle =
                SofteningCycle.steady(fine, usual(), fine.flow(16), END_POINT, Regeneration.coFlow(pounds(10)));
        assertEquals(1, kilograins(cycle) / coarse, 0.015);
    }
}
