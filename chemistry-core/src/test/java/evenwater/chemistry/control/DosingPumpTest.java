package evenwater.chemistry.control;

import static evenwater.chemistry.control.Bench.at;
import static evenwater.chemistry.control.Bench.ml;
import static evenwater.chemistry.control.Bench.tick;
import static evenwater.chemistry.control.Bench.up;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrowsExactly;
import static org.junit.jupiter.api.Assertions.assertTrue;

import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.SavedNumbers;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.testing.Refused;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class DosingPumpTest {

    private static final String UNUSABLE = "saved state of the pump cannot be used: ";

    private static void unusable(String why, Executable restoring) {
        assertEquals(
                UNUSABLE + why,
                assertThrowsExactly(UnusableSaveException.class, restoring).getMessage());
    }

    @Test
    void thePumpSaysWhatItIs() {
        DosingPump pump = Bench.builder().build();
        assertEquals(
                "dosing pump for stock with 100 g/L of calcium chloride dihydrate, 6 mL a day by schedule, at most 10 mL",
                pump.toString());
        assertEquals(ml(10), pump.dailyCap());
        assertEquals(ml(6), pump.dailyDose());
        assertEquals(Bench.STOCK, pump.stock());
        assertEquals(MissedDoses.SKIP, pump.missedDoses());
        assertEquals(
                MissedDoses.CATCH_UP,
                Bench.builder().missedDoses(MissedDoses.CATCH_UP).build().missedDoses());
    }

    @Test
    void settingsThatMakeNoSenseAreRefused() {
        DosingPumpBuilder b = Bench.builder();
        LocalTime noon = LocalTime.NOON;
        Refused.argument(
                "daily cap must be above 0 and at most 100 L, but was 0 mL",
                () -> DosingPump.builder(Bench.STOCK, Bench.MICROLITRE, ml(0), ml(1)));
        Refused.argument(
                "reservoir must be above 0 and at most 1,000 L, but was 2000 L",
                () -> DosingPump.builder(
                        Bench.STOCK, Bench.MICROLITRE, ml(1), WaterUnits.volume(2000, WaterUnits.LITRE)));
        Refused.argument(
                "daily dose of stock under the daily cap must be above 0 and at most 10 mL, but was 11 mL",
                () -> b.dailyDose(ml(11), noon));
        Refused.argument(
                "times of the portions must be 1 to 24 different ones, but were [12:00, 12:00]",
                () -> b.dailyDose(ml(1), noon, noon));
        Refused.argument("times of the portions must be 1 to 24 different ones, but were []", () -> b.dailyDose(ml(1)));
        Refused.argument("portions to make up must be from 1 to 24, but were 25", () -> b.catchUpAtMost(25));
        Refused.argument("grace must be from 1 min to 1 d, but was 59 s", () -> b.grace(Duration.ofSeconds(59)));
        Refused.argument(
                "unusable rest of the reservoir must be from 0 mL to 500 mL, but was 500 mL",
                () -> b.unusable(ml(500)));
        Refused.argument("volume of the tube must be from 0 mL to 100 L, but was -1 mL", () -> b.tube(ml(-1)));
        Refused.argument(
                "stock for a litre of added water must be from 0 mL to 100 mL, but was 101 mL",
                () -> b.dosePerLitreOfAddedWater(ml(101)));
        Refused.argument("days of use to warn below must be from 0 to 366, but were -1", () -> b.warnBelowDays(-1));
        Refused.argument(
                "drift of a calibration must be from 0.001 to 1, but was NaN",
                () -> b.noteCalibrationDrift(Double.NaN));
        Refused.argument("time to confirm must be from 1 s to 1 d, but was 0 s", () -> b.confirmWithin(Duration.ZERO));
        Refused.argument(
                "missed doses must be CATCH_UP where portions to make up are stated, but were SKIP with at most 5",
                () -> Bench.builder().catchUpAtMost(5).build());
        Refused.asNull("missed", () -> b.missedDoses(null));
        Refused.asNull("stock", () -> DosingPump.builder(null, Bench.MICROLITRE, ml(1), ml(1)));
    }

    @Test
    void clocksAndLevelsThatMakeNoSenseAreRefused() {
        DosingPump pump = Bench.builder().build();
        Refused.argument(
                "local time must be from 1970 to 9999, but was 1969-12-31T23:59:59",
                () -> pump.start(LocalDateTime.of(1969, 12, 31, 23, 59, 59), Duration.ZERO, ml(1)));
        Refused.argument(
                "uptime must be from 0 s to 2932896 d 23 h, but was -1 s",
                () -> pump.start(Bench.MIDNIGHT, Duration.ofSeconds(-1), ml(1)));
        Refused.argument(
                "level of the reservoir must be from 0 mL to 500 mL, but was 501 mL",
                () -> pump.start(Bench.MIDNIGHT, Duration.ZERO, ml(501)));
        Refused.asNull("now", () -> pump.start(null, Duration.ZERO, ml(1)));
        Refused.asNull("uptime", () -> pump.start(Bench.MIDNIGHT, null, ml(1)));
    }

    @Test
    void aRestoredStateGoesOnAlike() {
        DosingPump pump = Bench.builder().build();
        DosingPumpState state = tick(Bench.running(pump), 8).state();
        DosingPumpState restored = pump.restore(state.save());
        assertEquals(state, restored);
        assertEquals(state.hashCode(), restored.hashCode());
        assertEquals(
                tick(state.dosed(1, 3000, at(8.1), up(8.1)).state(), 20).state(),
                tick(restored.dosed(1, 3000, at(8.1), up(8.1)).state(), 20).state());
        assertNotEquals(state, tick(state, 9).state());
    }

    /** Two places that are written in turn: after a loss of power the one with the larger number is taken. */
    @Test
    void theNewerOfTwoWholeSavesIsKnown() {
        DosingPump pump = Bench.builder().build();
        DosingPumpState first = pump.start(Bench.MIDNIGHT, Duration.ZERO, ml(400));
        assertEquals(1, first.sequence());
        DosingPumpState second = first.tubeSeenFull();
        assertTrue(pump.restore(first.save()).sequence()
                < pump.restore(second.save()).sequence());
        DosingPumpState run = tick(second, 8).state();
        DosingPumpState restarted = pump.restore(run.save()).restarted(at(9), Duration.ZERO, Duration.ZERO);
        assertTrue(run.sequence() > second.sequence());
        assertTrue(restarted.sequence() > run.sequence());
        assertEquals(run.sequence(), run.dosed(9, 1, at(9), up(9)).state().sequence()); // refused
        DosingPump other = DosingPump.builder(Bench.STOCK, Bench.MICROLITRE, ml(4), ml(400))
                .build();
        assertTrue(other.restoreUnderNewSettings(run.save()).sequence() > run.sequence());
    }

    @Test
    void savesThatAreNotWholeAreRefused() {
        DosingPump pump = Bench.builder().build();
        long[] saved = Bench.running(pump).save();
        long[] other = tick(Bench.running(pump), 8).state().save();
        for (int cut = 1; cut < saved.length - 1; cut++) {
            long[] mixed = other.clone();
            System.arraycopy(saved, 0, mixed, 0, cut);
            if (!Arrays.equals(mixed, other)) {
                unusable("it is torn or damaged, its checksum does not fit", () -> pump.restore(mixed));
            }
        }
        unusable("it has 2 numbers instead of 135", () -> pump.restore(new long[2]));
        long[] version = saved.clone();
        version[0]++;
        unusable("it is of another version or kind", () -> pump.restore(version));
        Refused.asNull("saved", () -> pump.restore(null));
        for (int i = 0; i < 2000; i++) {
            long[] flipped = saved.clone();
            Random random = new Random(i);
            flipped[1 + random.nextInt(saved.length - 1)] ^= 1L << random.nextInt(64);
            unusable("it is torn or damaged, its checksum does not fit", () -> pump.restore(flipped));
        }
    }

    @Test
    void aForgedSaveWithNumbersOutOfRangeIsRefused() {
        DosingPump pump = Bench.builder().build();
        long[] saved = Bench.running(pump).save();
        saved[2 + PumpMemory.LEVEL] = -1;
        saved[saved.length - 1] = SavedNumbers.checksum(saved, saved.length - 1);
        unusable("its numbers are out of range", () -> pump.restore(saved));
    }

    @Test
    void aSaveOfOtherSettingsMustBeDeclared() {
        DosingPump old = Bench.builder().build();
        DosingPumpState state = tick(Bench.running(old), 8).state();
        DosingPump pump = DosingPump.builder(Bench.STOCK, Bench.MICROLITRE, ml(4), ml(400))
                .dailyDose(ml(2), LocalTime.of(9, 0))
                .build();
        unusable("it was made under other settings or another calibration", () -> pump.restore(state.save()));
        DosingPumpState taken = pump.restoreUnderNewSettings(state.save());
        assertEquals(ml(3), taken.dosed()); // the run under way
        assertEquals(Set.of(PumpNotice.RUN_NOT_CONFIRMED), taken.notices());
        assertEquals(ml(1), taken.allowed()); // the old doses count under the new cap
        assertEquals(pump.fingerprint(), taken.pump().fingerprint());
        DosingPump small = DosingPump.builder(Bench.STOCK, Bench.MICROLITRE, ml(4), ml(100))
                .build();
        unusable(
                "the reservoir held 397 mL, more than the 100 mL that it can hold now",
                () -> small.restoreUnderNewSettings(state.save()));
    }

    /** 1 mL a second becomes ten times as much: 6 mL are 600 ms and no longer 6000. */
    @Test
    void aSaveOfAnotherCalibrationMustBeDeclaredAndTheNewOneHolds() {
        DosingPump slow = timed(Duration.ofSeconds(100));
        long[] saved = Bench.running(slow).save();
        DosingPump fast = timed(Duration.ofSeconds(10));
        unusable("it was made under other settings or another calibration", () -> fast.restore(saved));
        assertNotEquals(Bench.running(slow), Bench.running(fast));
        DosingPumpState taken = fast.restoreUnderNewSettings(saved).restarted(at(0.01), Duration.ZERO, Duration.ZERO);
        assertEquals(PumpCalibration.ofTime(Duration.ofSeconds(10), ml(100)), taken.calibration());
        assertEquals(Set.of(PumpNotice.CALIBRATION_DRIFTED), taken.notices());
        assertEquals(600, tick(tick(taken, 0.1).state(), 8).state().stepsToRun());
    }

    /** The same pump by steps of 10 µL: 6 mL are 600 steps, and not 6000 as of milliseconds of 1 µL. */
    @Test
    void aTimedPumpMayBecomeOneOfSteps() {
        DosingPumpState timed =
                tick(Bench.running(timed(Duration.ofSeconds(100))), 8).state();
        assertEquals(6000, timed.stepsToRun());
        DosingPump stepped = DosingPump.builder(Bench.STOCK, PumpCalibration.ofSteps(1000, ml(10)), ml(12), ml(500))
                .dailyDose(ml(6), LocalTime.of(8, 0))
                .build();
        DosingPumpState taken = stepped.restoreUnderNewSettings(timed.save()).restarted(at(8.1), up(0), Duration.ZERO);
        assertEquals(PumpCalibration.ofSteps(1000, ml(10)), taken.calibration());
        assertEquals(ml(6), taken.dosed()); // the run under way, in milliseconds
        assertEquals(0, taken.stepsToRun());
        assertEquals(Set.of(PumpNotice.RUN_NOT_CONFIRMED, PumpNotice.CALIBRATION_DRIFTED), taken.notices());
        DosingPumpState before = tick(taken, 9).state();
        assertEquals(600, before.tick(at(32), up(23)).state().stepsToRun());
    }

    @Test
    void aCalibrationDeclaredLaterComesWithTheSave() {
        DosingPump pump = Bench.builder().build();
        PumpCalibration later = PumpCalibration.ofSteps(1000, ml(1.05));
        long[] saved = Bench.running(pump).calibrated(later).state().save();
        assertEquals(later, pump.restore(saved).calibration());
        assertEquals(later, pump.restoreUnderNewSettings(saved).calibration());
    }

    private static DosingPump timed(Duration of100Millilitres) {
        return DosingPump.builder(Bench.STOCK, PumpCalibration.ofTime(of100Millilitres, ml(100)), ml(12), ml(500))
                .dailyDose(ml(6), LocalTime.of(8, 0))
                .build();
    }

    @Test
    void aPumpWhoseStateWasLostDosesNothingForADay() {
        DosingPumpState state = Bench.builder()
                .build()
                .startAfterLoss(Bench.MIDNIGHT, Duration.ZERO, ml(400))
                .tubeSeenFull();
        state = tick(state, 0.1).state();
        assertEquals(ml(0), state.allowed());
        assertEquals(PumpStatus.HELD_BY_CAP, tick(state, 8).status());
        assertEquals(PumpStatus.RUN, tick(tick(state, 8).state(), 32).status());
    }
}
