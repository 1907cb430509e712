package evenwater.chemistry.control;

import static evenwater.chemistry.kernel.PumpMemory.DEBT;
import static evenwater.chemistry.kernel.PumpMemory.DUE;
import static evenwater.chemistry.kernel.PumpMemory.FILLED;
import static evenwater.chemistry.kernel.PumpMemory.GIVEN_TODAY;
import static evenwater.chemistry.kernel.PumpMemory.LEVEL;
import static evenwater.chemistry.kernel.PumpMemory.MISSED;
import static evenwater.chemistry.kernel.PumpMemory.OWED;
import static evenwater.chemistry.kernel.PumpMemory.PENDING;
import static evenwater.chemistry.kernel.PumpMemory.RUN;
import static evenwater.chemistry.kernel.PumpMemory.STEP;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_SUM;

import evenwater.chemistry.kernel.PumpServiceKernel;
import evenwater.chemistry.kernel.PumpSettings;
import java.util.Locale;

/** Statuses and notices of a pump in words, with the numbers that they stand on. */
final class PumpWords {

    private PumpWords() {}

    static String of(DosingPumpState state) {
        long[] m = state.memory();
        return PumpUnits.text(m[LEVEL]) + " in the reservoir, " + PumpUnits.text(m[WINDOW_SUM])
                + " dosed in the last 24 hours, " + PumpUnits.text(m[DUE] + m[OWED]) + " due, " + state.notices();
    }

    static String of(PumpStatus status, DosingPumpState state) {
        long[] s = state.pump().settings();
        long[] m = state.memory();
        return switch (status) {
            case TAKEN -> "taken";
            case NOTHING_DUE -> "nothing is due";
            case RUN -> "run " + run(state);
            case AWAITING_END_OF_RUN -> "waiting for the end of the run of " + run(state);
            case PAUSED -> "paused by a person";
            case STOPPED_BY_FAILURE -> "stopped since a run failed: look at pump and tube, then resume";
            case HELD_BY_CAP ->
                "held back by the daily cap of " + PumpUnits.text(s[PumpSettings.CAP]) + ": "
                        + PumpUnits.text(m[WINDOW_SUM]) + " went into the tank in the last 24 hours"
                        + (m[GIVEN_TODAY] > m[WINDOW_SUM]
                                ? ", " + PumpUnits.text(m[GIVEN_TODAY]) + " on this calendar day, "
                                : ", ")
                        + PumpUnits.text(m[DUE] + m[OWED]) + " are due";
            case PRIMING_NEEDED -> "there may be air in the tube: prime it, or declare it full";
            case RESERVOIR_EMPTY ->
                "the reservoir has " + PumpUnits.text(PumpServiceKernel.usable(s, m))
                        + " within reach of the intake, too little for the run: refill it";
            case LESS_THAN_A_STEP -> "less than a step of " + PumpUnits.text(m[STEP]) + " was asked for";
            case MORE_THAN_ALLOWED ->
                "more was asked for than one event may bring: a priming moves up to "
                        + PumpUnits.text(s[PumpSettings.TUBE]) + ", added water may be owed up to "
                        + PumpUnits.text(s[PumpSettings.CAP]);
            case OTHER_RUN ->
                "the report is of another run and nothing has changed: "
                        + (m[PENDING] > 0 ? "under way is number " : "none is under way, the last was number ")
                        + m[RUN];
        };
    }

    private static String run(DosingPumpState state) {
        long[] m = state.memory();
        return m[PENDING] + (state.pump().isTimed() ? " ms" : " steps") + ": " + PumpUnits.text(m[PENDING] * m[STEP])
                + " of " + state.pump().stock() + ", "
                + state.pump().stock().massIn(state.volumeToRun()).toText(Locale.ROOT, 4);
    }

    static String of(PumpNotice notice, DosingPumpState state) {
        long[] m = state.memory();
        return switch (notice) {
            case RUN_NOT_CONFIRMED -> "the end of a run was not reported; it counts as made in full";
            case RUN_FAILED -> "a run failed; it counts as made in full, and nothing runs until the pump is resumed";
            case PAUSED -> "paused by a person; portions that pass are let go";
            case PRIMING_NEEDED -> "there may be air in the tube";
            case RESERVOIR_EMPTY ->
                "the reservoir is empty: of " + PumpUnits.text(m[FILLED]) + " filled in so far "
                        + state.level().toText(Locale.ROOT, 6) + " are left";
            case RESERVOIR_LOW ->
                "the reservoir lasts for "
                        + state.reservoirLasts()
                                .map(time -> time.toText(Locale.ROOT, 2))
                                .orElse("no time");
            case CLOCK_CHANGED -> "the clock was set; the cap went on by the time that truly passed";
            case RAN_TOO_LONG ->
                "the pump moved more than was ordered, or without an order; it is counted, also against the cap";
            case CALIBRATION_DRIFTED ->
                "the calibration, now " + state.calibration() + ", differs much from the one before: look at the tube";
            case PORTIONS_MISSED ->
                m[MISSED] + (m[MISSED] == 1 ? " portion" : " portions")
                        + " missed since the start, in whole or in part; " + PumpUnits.text(m[DEBT])
                        + " are to be made up";
            case RUNS_ENDED_SHORT ->
                "runs were reported short by more than the daily cap in a day, so the last count as made in full: look at "
                        + "pump and tube";
        };
    }
}
