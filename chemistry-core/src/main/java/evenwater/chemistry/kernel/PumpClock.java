package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpMemory.ACCRUED;
import static evenwater.chemistry.kernel.PumpMemory.DAY;
import static evenwater.chemistry.kernel.PumpMemory.FLAGS;
import static evenwater.chemistry.kernel.PumpMemory.GIVEN_TODAY;
import static evenwater.chemistry.kernel.PumpMemory.JUMPED;
import static evenwater.chemistry.kernel.PumpMemory.LOCAL;
import static evenwater.chemistry.kernel.PumpMemory.PENDING;
import static evenwater.chemistry.kernel.PumpMemory.UPTIME;

/** The two clocks of a pump: the wall clock tells when a portion is due, the uptime how much time has certainly passed. */
final class PumpClock {

    /** By how many seconds the wall clock may run away from the uptime between two events before it counts as set. */
    private static final long TOLERANCE = 120;

    private PumpClock() {}

    /** Tells whether an event with these clocks can be taken. */
    static boolean isUsable(long[] m, long local, long uptime) {
        return m[PumpMemory.STEP] >= 1 // of a memory that was never started it is 0
                && local >= 0
                && local <= PumpMemory.LATEST
                && uptime >= 0
                && uptime <= PumpMemory.LATEST
                && m[ACCRUED] <= PumpMemory.LARGEST_TOTAL - 2 * PumpMemory.LATEST;
    }

    /** Takes usable clocks forward; an uptime that fell is a restart that nobody declared. */
    static void advance(long[] s, long[] m, long local, long uptime) {
        if (uptime < m[UPTIME] - 1) {
            restart(s, m, local, uptime, 0);
            return;
        }
        long elapsed = Math.max(0, uptime - m[UPTIME]);
        long jump = local - m[LOCAL] - elapsed;
        if (jump > TOLERANCE || jump < -TOLERANCE) {
            m[FLAGS] |= PumpKernel.CLOCK_CHANGED;
            m[JUMPED] = jump > 0 ? 1 : m[JUMPED];
        }
        m[UPTIME] = Math.max(m[UPTIME], uptime);
        take(m, local, elapsed);
    }

    static void restart(long[] s, long[] m, long local, long uptime, long secondsOff) {
        if (local < m[LOCAL]) {
            m[FLAGS] |= PumpKernel.CLOCK_CHANGED;
        }
        m[UPTIME] = uptime + 1; // the fraction of a second before it must not be credited
        m[JUMPED] = 0;
        take(m, local, secondsOff);
        if (m[PENDING] > 0) {
            m[FLAGS] |= PumpKernel.UNCONFIRMED;
            PumpRun.settle(s, m, m[PENDING]);
        }
    }

    private static void take(long[] m, long local, long elapsed) {
        m[PumpMemory.SEQUENCE]++;
        m[ACCRUED] += elapsed;
        m[LOCAL] = local;
        long day = local / PumpSettings.DAY;
        if (day > m[DAY]) {
            m[GIVEN_TODAY] = 0; // not when it falls: a day that comes again must not give its doses again
        }
        m[DAY] = day;
        PumpWindow.expire(m);
    }
}
