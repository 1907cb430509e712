package evenwater.chemistry.planning;

import static evenwater.chemistry.quantity.WaterUnits.CUBIC_FOOT;
import static evenwater.chemistry.quantity.WaterUnits.LITRE;
import static evenwater.chemistry.testing.Amounts.litres;
import static evenwater.chemistry.testing.Amounts.mmol;
import static org.junit.jupiter.api.Assertions.assertEquals;

import evenwater.chemistry.quantity.FlowRate;
import evenwater.chemistry.quantity.SaltDose;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.testing.Refused;
import evenwater.chemistry.water.Water;
import java.util.List;
import org.junit.jupiter.api.Test;

class ResinSizingTest {

    private static final SaltDose EIGHT = SaltDose.of(8, SaltDose.POUND_PER_CUBIC_FOOT);
    private static final SoftenerPlan PLAN =
            SoftenerPlan.of(Water.builder().total(Ion.CALCIUM, mmol(3)).build(), HouseholdUse.ofPeople(3), litres(1));

    private static FlowRate perMinute(double litres) {
        return FlowRate.of(litres, FlowRate.LITRE_PER_MINUTE);
    }

    @Test
    void theResinThatLastsLastsSoLong() {
        var resin = ResinSizing.of(PLAN, EIGHT, 7).resinForDays();
        SoftenerPlan sized = SoftenerPlan.of(PLAN.source(), PLAN.use(), resin);
        assertEquals(7, sized.at(EIGHT).days(), 1e-9);
    }

    @Test
    void theLargerOfTheTwoCounts() {
        ResinSizing sizing = ResinSizing.of(PLAN, EIGHT, 7);
        assertEquals(sizing.resinForDays(), sizing.resin(perMinute(1)));
        assertEquals(ResinSizing.resinForPeak(perMinute(400)), sizing.resin(perMinute(400)));
    }

    /** 1 US gpm per cubic foot is 8.0208 bed volumes per hour: 5 and 10 gpm are 40 and 80. */
    @Test
    void flowsAreThoseOfThePractice() {
        var foot = WaterUnits.volume(1, CUBIC_FOOT);
        assertEquals(5, ResinSizing.mostServiceFlow(foot).in(FlowRate.US_GALLON_PER_MINUTE), 0.02);
        assertEquals(10, ResinSizing.mostPeakFlow(foot).in(FlowRate.US_GALLON_PER_MINUTE), 0.03);
        assertEquals(30, ResinSizing.resinForPeak(perMinute(40)).in(LITRE), 1e-9);
    }

    @Test
    void warningsTellWhatIsOutsideOfPractice() {
        var depth = WaterUnits.length(0.8, WaterUnits.METRE);
        assertEquals(List.of(), ResinSizing.warnings(litres(30), depth, perMinute(10), perMinute(30)));
        assertEquals(
                List.of(
                        "a bed of 20 in is shallower than the usual 0.6 m: it leaks early",
                        "a flow of 60.0 bed volumes per hour is above the usual 40: the run gets short and leaks",
                        "a peak of 90.0 bed volumes per hour is above the usual 80: hardness comes through"),
                ResinSizing.warnings(litres(30), WaterUnits.length(20, WaterUnits.INCH), perMinute(30), perMinute(45)));
        assertEquals(
                List.of(
                        "a flow of 2.00 bed volumes per hour is below the usual 8: water finds channels through the bed"),
                ResinSizing.warnings(litres(30), depth, perMinute(1), perMinute(30)));
    }

    @Test
    void nonsenseIsRefused() {
        var depth = WaterUnits.length(0.8, WaterUnits.METRE);
        Refused.argument(
                "days between regenerations must be above 0 and at most 365, but were -1.0",
                () -> ResinSizing.of(PLAN, EIGHT, -1));
        Refused.argument(
                "peak flow must not be negative, but was -1 L/min", () -> ResinSizing.resinForPeak(perMinute(-1)));
        Refused.argument(
                "volume of the resin must be positive, but was -1 L", () -> ResinSizing.mostServiceFlow(litres(-1)));
        Refused.argument(
                "service flow must not be above the peak, but was 30 L/min and 20 L/min",
                () -> ResinSizing.warnings(litres(30), depth, perMinute(30), perMinute(20)));
        Refused.argument(
                "volume and depth of the resin must be positive, but were 0 L and 0.8 m",
                () -> ResinSizing.warnings(litres(0), depth, perMinute(1), perMinute(1)));
    }
}
