package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpMemory.ACCRUED;
import static evenwater.chemistry.kernel.PumpMemory.CARRY;
import static evenwater.chemistry.kernel.PumpMemory.DOSED;
import static evenwater.chemistry.kernel.PumpMemory.DUE;
import static evenwater.chemistry.kernel.PumpMemory.DUE_SINCE;
import static evenwater.chemistry.kernel.PumpMemory.FILLED;
import static evenwater.chemistry.kernel.PumpMemory.FLAGS;
import static evenwater.chemistry.kernel.PumpMemory.GIVEN_TODAY;
import static evenwater.chemistry.kernel.PumpMemory.LEVEL;
import static evenwater.chemistry.kernel.PumpMemory.OWED;
import static evenwater.chemistry.kernel.PumpMemory.PENDING;
import static evenwater.chemistry.kernel.PumpMemory.PENDING_SINCE;
import static evenwater.chemistry.kernel.PumpMemory.PRIMED;
import static evenwater.chemistry.kernel.PumpMemory.PRIMED_SINCE;
import static evenwater.chemistry.kernel.PumpMemory.PURPOSE;
import static evenwater.chemistry.kernel.PumpMemory.SHORT;
import static evenwater.chemistry.kernel.PumpMemory.SHORT_DAY;
import static evenwater.chemistry.kernel.PumpMemory.STEP;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_SUM;

/** One run of a pump: what may still get into the tank, ordering steps, and counting what they moved. */
final class PumpRun {

    private PumpRun() {}

    static long allowed(long[] s, long[] m) {
        long pending = m[PURPOSE] == PumpKernel.PRIMING ? 0 : m[PENDING] * m[STEP];
        return Math.max(0, s[PumpSettings.CAP] - Math.max(m[WINDOW_SUM], m[GIVEN_TODAY]) - pending);
    }

    /** Whole steps above the intake. */
    static long reachable(long[] s, long[] m) {
        return PumpServiceKernel.usable(s, m) / m[STEP];
    }

    static boolean fits(long[] s, long[] m, long steps) {
        return steps <= reachable(s, m);
    }

    static int order(long[] m, int purpose, long steps) {
        m[PumpMemory.RUN]++;
        m[PENDING] = steps;
        m[PURPOSE] = purpose;
        m[PENDING_SINCE] = m[ACCRUED];
        return PumpKernel.RUN;
    }

    /** Takes what a run will give off what is wanted; what is less than a step waits for the next run. */
    static void take(long[] m, long wanted, long volume) {
        long rest = wanted - volume;
        if (rest < m[STEP]) {
            m[CARRY] = rest;
            m[OWED] = 0;
            m[DUE] = 0;
            return;
        }
        long left = volume; // cap or reservoir held the rest back
        left -= takeFrom(m, CARRY, left);
        left -= takeFrom(m, OWED, left);
        takeFrom(m, DUE, left);
    }

    private static long takeFrom(long[] m, int place, long most) {
        long taken = Math.min(m[place], most);
        m[place] -= taken;
        return taken;
    }

    /**
     * The steps that count of a run that is reported with so many: all that were ordered, if more than the cap would be believed to be short on
     * this day of accrued time, so that reports that lie cannot go on for ever.
     */
    static long believed(long[] s, long[] m, long steps) {
        long shortfall = (m[PENDING] - steps) * m[STEP];
        if (shortfall <= 0 || m[PURPOSE] == PumpKernel.PRIMING) {
            return steps;
        }
        long day = m[ACCRUED] / PumpSettings.DAY;
        if (day != m[SHORT_DAY]) {
            m[SHORT_DAY] = day;
            m[SHORT] = 0;
        }
        if (shortfall > s[PumpSettings.CAP] - m[SHORT]) {
            m[FLAGS] |= PumpKernel.SHORT_RUNS;
            return m[PENDING];
        }
        m[SHORT] += shortfall;
        return steps;
    }

    /** Counts a run as having made so many steps, and ends it. */
    static void settle(long[] s, long[] m, long steps) {
        long volume = steps * m[STEP];
        long shortfall = (m[PENDING] - steps) * m[STEP];
        long purpose = m[PURPOSE];
        m[PENDING] = 0;
        m[PURPOSE] = PumpKernel.NO_RUN;
        if (shortfall > 0 && purpose == PumpKernel.DOSE) {
            m[DUE_SINCE] = m[DUE] == 0 ? m[ACCRUED] : m[DUE_SINCE];
            m[DUE] += shortfall;
        }
        if (purpose == PumpKernel.PRIMING) {
            draw(m, volume);
            m[PRIMED] += volume;
        } else {
            dose(m, volume);
        }
        if (purpose >= PumpKernel.PRIMING) {
            prime(s, m, volume);
        }
    }

    static void dose(long[] m, long volume) {
        draw(m, volume);
        m[DOSED] += volume;
        count(m, volume);
    }

    private static void draw(long[] m, long volume) {
        m[LEVEL] -= volume;
        if (m[LEVEL] < 0) {
            m[FILLED] -= m[LEVEL]; // more was in it than anybody said
            m[LEVEL] = 0;
        }
    }

    /** Counts against the cap. */
    static void count(long[] m, long volume) {
        if (volume > 0) {
            m[GIVEN_TODAY] += volume;
            PumpWindow.add(m, volume);
        }
    }

    private static void prime(long[] s, long[] m, long volume) {
        m[PRIMED_SINCE] += volume;
        if (m[PRIMED_SINCE] > s[PumpSettings.TUBE] - m[STEP]) { // full but for less than a step
            m[FLAGS] &= ~PumpKernel.PRIMING_NEEDED;
        }
    }
}
