package evenwater.chemistry.control;

import static evenwater.chemistry.control.Bench.at;
import static evenwater.chemistry.control.Bench.ml;
import static evenwater.chemistry.control.Bench.tick;
import static evenwater.chemistry.control.Bench.up;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import java.time.LocalTime;
import java.util.EnumSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class DosingPumpStateTest {

    @Test
    void aPortionInItsTime() {
        DosingPumpState before = Bench.running();
        assertEquals("nothing is due", tick(before, 7).words());
        PumpAnswer answer = tick(before, 8);
        assertEquals(PumpStatus.RUN, answer.status());
        assertEquals("run 3000 steps: 3 mL of stock with 100 g/L of calcium chloride dihydrate, 0.3 g", answer.words());
        assertEquals(3000, answer.state().stepsToRun());
        assertEquals(ml(3), answer.state().volumeToRun());
        assertEquals(ml(7), answer.state().allowed());
        assertEquals(0, before.stepsToRun()); // the state before is as it was
        DosingPumpState after =
                answer.state().dosed(1, 3000, at(8.01), up(8.01)).state();
        assertEquals(ml(3), after.dosed());
        assertEquals(ml(3), after.dosedInLast24Hours());
        assertEquals(ml(397), after.level());
        assertEquals(ml(0), after.volumeToRun());
        assertEquals("397 mL in the reservoir, 3 mL dosed in the last 24 hours, 0 mL due, []", after.toString());
    }

    @Test
    void everyRefusalHasItsWords() {
        DosingPumpState state = Bench.running();
        assertEquals(
                "waiting for the end of the run of 3000 steps: 3 mL of stock with 100 g/L of calcium chloride dihydrate, "
                        + "0.3 g",
                tick(tick(state, 8).state(), 8.1).words());
        assertEquals("paused by a person", tick(state.paused(), 8).words());
        assertEquals(
                "stopped since a run failed: look at pump and tube, then resume",
                tick(failed(state), 8).words());
        assertEquals(
                "held back by the daily cap of 10 mL: 9.999 mL went into the tank in the last 24 hours, 0 mL are due",
                state.dosedUnordered(9999, at(1), up(1))
                        .doseByHand(ml(0.002), at(2), up(2))
                        .words());
        assertEquals(
                "there may be air in the tube: prime it, or declare it full",
                tick(state.tubeDrained(), 8).words());
        assertEquals(
                "the reservoir has 1 mL within reach of the intake, too little for the run: refill it",
                state.refilled(ml(1)).state().doseByHand(ml(2), at(1), up(1)).words());
        assertEquals(
                "less than a step of 0.001 mL was asked for",
                state.doseByHand(ml(0.0009), at(1), up(1)).words());
        PumpAnswer priming = state.prime(ml(6), false, at(1), up(1));
        assertEquals(PumpStatus.MORE_THAN_ALLOWED, priming.status());
        assertEquals(
                "more was asked for than one event may bring: a priming moves up to 5 mL, added water may be owed up to "
                        + "10 mL",
                priming.words());
        assertEquals("taken", state.refilled(ml(2)).words());
    }

    private static DosingPumpState failed(DosingPumpState state) {
        DosingPumpState run = state.doseByHand(ml(1), at(0.5), up(0.5)).state();
        return run.failed(run.runNumber(), at(1), up(1)).state();
    }

    @Test
    void aReportOfAnotherRunIsSaidAndChangesNothing() {
        DosingPumpState first = tick(Bench.running(), 8).state();
        assertEquals(1, first.runNumber());
        PumpAnswer other = first.dosed(2, 3000, at(8.01), up(8.01));
        assertEquals(PumpStatus.OTHER_RUN, other.status());
        assertEquals("the report is of another run and nothing has changed: under way is number 1", other.words());
        assertEquals(first, other.state());
        DosingPumpState after = first.dosed(1, 3000, at(8.01), up(8.01)).state();
        assertEquals(
                "the report is of another run and nothing has changed: none is under way, the last was number 1",
                after.dosed(1, 0, at(8.02), up(8.02)).words());
    }

    @Test
    void runsThatAreAlwaysReportedShortAreSaid() {
        DosingPumpState state = Bench.running();
        for (int run = 1; run <= 2; run++) {
            state = state.doseByHand(ml(6), at(run), up(run)).state();
            state = state.dosed(run, 0, at(run + 0.1), up(run + 0.1)).state();
        }
        assertEquals(ml(6), state.dosed());
        assertEquals(Set.of(PumpNotice.RUNS_ENDED_SHORT), state.notices());
        assertEquals(
                "runs were reported short by more than the daily cap in a day, so the last count as made in full: look at "
                        + "pump and tube",
                state.words(PumpNotice.RUNS_ENDED_SHORT));
    }

    /** Summer time ends: at 23:59 of the long day more than 24 hours have passed since the dose. */
    @Test
    void aDayOf25HoursIsSaidToBeFull() {
        DosingPumpState state = Bench.running(DosingPump.builder(Bench.STOCK, Bench.MICROLITRE, ml(10), ml(500))
                .build());
        state = state.dosedUnordered(10_000, at(0.1), up(0.1));
        state = state.tick(at(3), up(4)).state();
        assertEquals(
                "held back by the daily cap of 10 mL: 0 mL went into the tank in the last 24 hours, 10 mL on this "
                        + "calendar day, 0 mL are due",
                state.doseByHand(ml(1), at(23.9), up(24.9)).words());
    }

    @Test
    void everyNoticeHasItsWords() {
        DosingPumpState state = tick(Bench.running(), 8).state();
        DosingPumpState all = state.dosed(1, 4000, at(9), up(9))
                .state()
                .refilled(ml(0.001))
                .state()
                .calibrated(PumpCalibration.ofSteps(800, ml(1)))
                .state();
        all = tick(all, 20).state(); // finds the reservoir empty
        all = tick(all, 21.5).state(); // and misses the portion
        all = all.tick(at(100), up(21.6)).state(); // the clock is set
        all = all.paused().failed(1, at(101), up(22.6)).state();
        Set<PumpNotice> expected = EnumSet.allOf(PumpNotice.class);
        expected.remove(PumpNotice.RUN_NOT_CONFIRMED);
        expected.remove(PumpNotice.RUNS_ENDED_SHORT);
        assertEquals(expected, all.notices());
        assertEquals(
                "a run failed; it counts as made in full, and nothing runs until the pump is resumed",
                all.words(PumpNotice.RUN_FAILED));
        assertEquals("paused by a person; portions that pass are let go", all.words(PumpNotice.PAUSED));
        assertEquals("there may be air in the tube", all.words(PumpNotice.PRIMING_NEEDED));
        assertEquals(
                "the reservoir is empty: of 4.001 mL filled in so far 0.001 mL are left",
                all.words(PumpNotice.RESERVOIR_EMPTY));
        assertEquals("the reservoir lasts for 0.00017 d", all.words(PumpNotice.RESERVOIR_LOW));
        assertEquals(
                "the clock was set; the cap went on by the time that truly passed",
                all.words(PumpNotice.CLOCK_CHANGED));
        assertEquals(
                "the pump moved more than was ordered, or without an order; it is counted, also against the cap",
                all.words(PumpNotice.RAN_TOO_LONG));
        assertEquals(
                "the calibration, now 0.00125 mL a step, differs much from the one before: look at the tube",
                all.words(PumpNotice.CALIBRATION_DRIFTED));
        assertEquals(
                "1 portion missed since the start, in whole or in part; 0 mL are to be made up",
                all.words(PumpNotice.PORTIONS_MISSED));
        DosingPumpState lost = state.restarted(at(9), up(0), Duration.ZERO);
        assertEquals(Set.of(PumpNotice.RUN_NOT_CONFIRMED), lost.notices());
        assertEquals(
                "the end of a run was not reported; it counts as made in full",
                lost.words(PumpNotice.RUN_NOT_CONFIRMED));
        assertTrue(PumpNotice.RUN_NOT_CONFIRMED.isNews());
        assertFalse(PumpNotice.RESERVOIR_LOW.isNews());
        assertEquals(Set.of(), lost.acknowledged().notices());
        assertEquals(
                EnumSet.of(
                        PumpNotice.RUN_FAILED,
                        PumpNotice.PAUSED,
                        PumpNotice.PRIMING_NEEDED,
                        PumpNotice.RESERVOIR_EMPTY,
                        PumpNotice.RESERVOIR_LOW),
                all.acknowledged().notices());
        assertFalse(all.resumed(at(102), up(23)).notices().contains(PumpNotice.RUN_FAILED));
    }

    @Test
    void addedWaterGetsItsShare() {
        DosingPumpState state =
                Bench.running(Bench.builder().dosePerLitreOfAddedWater(ml(0.5)).build());
        PumpAnswer taken = state.waterAdded(WaterUnits.volume(4, WaterUnits.LITRE));
        assertEquals(PumpStatus.TAKEN, taken.status());
        assertEquals(ml(2), taken.state().due());
        assertEquals(2000, tick(taken.state(), 1).state().stepsToRun());
        assertEquals(
                PumpStatus.MORE_THAN_ALLOWED,
                state.waterAdded(WaterUnits.volume(21, WaterUnits.LITRE)).status());
        Refused.argument("added water must be from 1 µL to 10000 L, but was 0 mL", () -> state.waterAdded(ml(0)));
        Refused.argument(
                "settings of the pump state no dose for added water",
                () -> Bench.running().waterAdded(ml(1)));
    }

    @Test
    void primingFillsTheTubeFromTheReservoir() {
        DosingPumpState state = Bench.builder().build().start(Bench.MIDNIGHT, Duration.ZERO, ml(400));
        assertEquals(Set.of(PumpNotice.PRIMING_NEEDED), state.notices());
        PumpAnswer run = state.prime(ml(5), false, at(1), up(1));
        assertEquals(5000, run.state().stepsToRun());
        DosingPumpState primed = run.state().dosed(1, 5000, at(1.1), up(1.1)).state();
        assertEquals(ml(5), primed.primed());
        assertEquals(ml(0), primed.dosed());
        assertEquals(ml(395), primed.level());
        assertEquals(Set.of(), primed.notices());
        DosingPumpState intoTank = state.prime(ml(5), true, at(1), up(1))
                .state()
                .dosed(1, 5000, at(1.1), up(1.1))
                .state();
        assertEquals(ml(5), intoTank.dosedInLast24Hours());
    }

    @Test
    void missedPortionsAreMadeUpIfThePolicySaysSo() {
        DosingPumpState state = Bench.running(Bench.builder()
                .missedDoses(MissedDoses.CATCH_UP)
                .catchUpAtMost(2)
                .build());
        DosingPumpState later =
                state.restarted(at(34), up(0), up(34)).tick(at(34), up(0.01)).state();
        assertEquals(ml(6), later.toMakeUp()); // of 8, 20 and 8 o'clock, two
        assertEquals(
                "3 portions missed since the start, in whole or in part; 6 mL are to be made up",
                later.words(PumpNotice.PORTIONS_MISSED));
        PumpAnswer next = later.tick(at(44), up(10.01));
        assertEquals(6000, next.state().stepsToRun());
    }

    @Test
    void theReservoirLastsByItsUse() {
        DosingPumpState state = Bench.running();
        assertEquals(400 / 6.0, state.reservoirLasts().orElseThrow().in(WaterUnits.DAY), 1e-12);
        DosingPumpState idle = Bench.running(DosingPump.builder(Bench.STOCK, Bench.MICROLITRE, ml(10), ml(500))
                .build());
        assertTrue(idle.reservoirLasts().isEmpty());
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        DosingPumpState state = Bench.running();
        Refused.argument(
                "steps of a run must be from 0 to 1000000000, but were -1", () -> state.dosed(1, -1, at(1), up(1)));
        Refused.argument("number of a run must be 1 or more, but was 0", () -> state.failed(0, at(1), up(1)));
        Refused.argument(
                "dose by hand must be above 0 and at most 100 L, but was 0 mL",
                () -> state.doseByHand(ml(0), at(1), up(1)));
        Refused.argument(
                "priming must be above 0 and at most 100 L, but was -1 mL",
                () -> state.prime(ml(-1), true, at(1), up(1)));
        Refused.argument(
                "certainlyOff must be from 0 s to 2932896 d 23 h, but was -1 s",
                () -> state.restarted(at(1), up(1), Duration.ofSeconds(-1)));
        Refused.argument(
                "calibration must be by steps as the pump's is, but was 1 mL a second",
                () -> state.calibrated(PumpCalibration.ofTime(Duration.ofSeconds(1), ml(1))));
        Refused.asNull("calibration", () -> state.calibrated(null));
        Refused.asNull("notice", () -> state.words(null));
    }

    @Test
    void fullTotalsAreSaid() {
        DosingPumpState state = Bench.running();
        for (int i = 0; i < 3999; i++) {
            state = state.dosedUnordered(1_000_000_000, at(1), up(1));
        }
        DosingPumpState full = state;
        Refused.argument(
                "totals of the pump must stay below 4,000,000 L of stock, but are full: start it anew",
                () -> full.dosedUnordered(1, at(1), up(1)));
    }

    @Test
    void aTimedPumpCountsMilliseconds() {
        DosingPump pump = DosingPump.builder(
                        Bench.STOCK, PumpCalibration.ofTime(Duration.ofMinutes(2), ml(90)), ml(10), ml(500))
                .dailyDose(ml(6), LocalTime.of(8, 0))
                .build();
        PumpAnswer answer = tick(Bench.running(pump), 8);
        assertEquals("run 8000 ms: 6 mL of stock with 100 g/L of calcium chloride dihydrate, 0.6 g", answer.words());
    }
}
