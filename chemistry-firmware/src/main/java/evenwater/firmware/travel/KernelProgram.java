package evenwater.firmware.travel;

import evenwater.chemistry.kernel.ActivityLaw;
import evenwater.chemistry.kernel.Component;
import evenwater.chemistry.kernel.Given;
import evenwater.chemistry.kernel.PumpKernel;
import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpServiceKernel;
import evenwater.chemistry.kernel.PumpSettings;
import evenwater.chemistry.kernel.SavedNumbers;
import evenwater.chemistry.kernel.SofteningKernel;
import evenwater.chemistry.kernel.SpeciationKernel;
import evenwater.chemistry.kernel.SpeciationState;
import evenwater.chemistry.kernel.Species;
import evenwater.chemistry.kernel.TemperatureCompensationKernel;
import evenwater.chemistry.kernel.ValveEvents;
import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveRule;
import evenwater.chemistry.kernel.ValveSave;
import evenwater.chemistry.kernel.ValveSettings;
import evenwater.chemistry.kernel.ValveState;
import java.util.ArrayList;
import java.util.List;

/**
 * Calls the kernel some thousand times and prints what it answers: a line for each number, {@code w} before a whole one and {@code d} before the
 * bits of a double. Bits, since no way of printing decimals has to be trusted then.
 */
public final class KernelProgram {

    private static final int WATERS = 300;
    private static final int EVENTS = 2000;
    private static final int EVENTS_BETWEEN_LINES = 50;

    private final List<String> lines = new ArrayList<>();
    private long seed = 1;

    private KernelProgram() {}

    /**
     * Prints all lines.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        for (String line : lines()) {
            System.out.println(line);
        }
    }

    /**
     * Returns what the program prints.
     *
     * @return lines, each with a letter and a whole number
     */
    public static List<String> lines() {
        KernelProgram program = new KernelProgram();
        program.formulas();
        program.waters();
        program.valve();
        program.pump();
        return List.copyOf(program.lines);
    }

    private void whole(long number) {
        lines.add("w " + number);
    }

    private void real(double number) {
        lines.add("d " + Double.doubleToRawLongBits(number));
    }

    /** The same on all machines: a linear congruence, its upper bits. */
    private double random() {
        seed = seed * 6364136223846793005L + 1442695040888963407L;
        return (seed >>> 11) * 0x1p-53;
    }

    private long random(long below) {
        return (long) (random() * below);
    }

    private void formulas() {
        for (int i = 0; i < WATERS; i++) {
            double raw = 10 * random();
            real(SofteningKernel.leakageFraction(raw, random()));
            real(SofteningKernel.bypassShare(raw + 1, raw * random(), raw));
            real(TemperatureCompensationKernel.naturalWaterFactor(35 * random()));
        }
    }

    private void waters() {
        SpeciationState state = new SpeciationState();
        for (int i = 0; i < WATERS; i++) {
            state.temperature(278.15 + 30 * random());
            state.total(Component.CALCIUM, 0.004 * random());
            state.total(Component.MAGNESIUM, 0.002 * random());
            state.total(Component.SODIUM, 0.005 * random());
            state.total(Component.SULFATE, 0.002 * random());
            double alkalinity = 0.0005 + 0.005 * random();
            whole(SpeciationKernel.solve(
                    state,
                    ActivityLaw.TRUESDELL_JONES,
                    Given.ALKALINITY_AND_CARBON,
                    alkalinity,
                    alkalinity * (1 + 0.3 * random())));
            real(state.molality(Species.HYDROGEN));
            real(state.molality(Species.CARBONATE));
            real(state.molality(Species.CALCIUM));
            real(state.ionicStrength());
        }
    }

    private void valve() {
        ValveSettings settings = new ValveSettings();
        ValveState state = new ValveState();
        long clock = 1_700_000_000;
        long reading = 0;
        ValveKernel.begin(settings, state, reading, clock, 0);
        for (int i = 0; i < EVENTS; i++) {
            clock += random(9000);
            reading += random(800);
            whole(ValveKernel.step(settings, state, reading, clock));
            whole(ValveRule.reason(settings, state));
            if (ValveRule.isToStart(settings, state)) {
                ValveEvents.started(settings, state);
                ValveEvents.finished(settings, state, 1_000_000_000_000L + random(1_000_000_000L));
            }
            if (i % EVENTS_BETWEEN_LINES == 0) {
                long[] save = new long[ValveSave.LENGTH];
                ValveSave.write(settings, state, save);
                whole(save[ValveSave.LENGTH - 1]); // the checksum of all that the state has
                real(state.meanNanolitresPerDay());
            }
        }
    }

    private void pump() {
        long[] s = new long[PumpSettings.LENGTH];
        s[PumpSettings.CAP] = 20_000_000_000L;
        s[PumpSettings.DAILY] = 12_000_000_000L;
        s[PumpSettings.PORTIONS] = 3;
        s[PumpSettings.TIMES] = 8 * 3600;
        s[PumpSettings.TIMES + 1] = 12 * 3600;
        s[PumpSettings.TIMES + 2] = 20 * 3600;
        s[PumpSettings.GRACE] = 7200;
        s[PumpSettings.RESERVOIR] = 1_000_000_000_000L;
        s[PumpSettings.DRIFT_PER_MILLE] = 100;
        s[PumpSettings.CONFIRM_WITHIN] = 900;
        long[] m = new long[PumpMemory.LENGTH];
        long seconds = 1_700_000_000;
        whole(PumpKernel.start(s, m, seconds, 5, 777_777, 1_000_000_000_000L, 0));
        PumpServiceKernel.tubeSeenFull(m);
        for (int i = 0; i < EVENTS; i++) {
            seconds += random(5000);
            int status = PumpKernel.tick(s, m, seconds, seconds - 1_699_999_995);
            whole(status);
            if (status == PumpKernel.RUN) {
                long steps = m[PumpMemory.PENDING] - random(2);
                whole(PumpKernel.dosed(s, m, m[PumpMemory.RUN], steps, seconds, seconds - 1_699_999_995));
            }
            if (i % EVENTS_BETWEEN_LINES == 0) {
                whole(SavedNumbers.checksum(m, m.length));
            }
        }
    }
}
