package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpMemory.ACCRUED;
import static evenwater.chemistry.kernel.PumpMemory.DAY;
import static evenwater.chemistry.kernel.PumpMemory.DEBT;
import static evenwater.chemistry.kernel.PumpMemory.DUE;
import static evenwater.chemistry.kernel.PumpMemory.DUE_SINCE;
import static evenwater.chemistry.kernel.PumpMemory.FLAGS;
import static evenwater.chemistry.kernel.PumpMemory.JUMPED;
import static evenwater.chemistry.kernel.PumpMemory.LOCAL;
import static evenwater.chemistry.kernel.PumpMemory.MISSED;
import static evenwater.chemistry.kernel.PumpMemory.NEXT;
import static evenwater.chemistry.kernel.PumpMemory.SLOT;
import static evenwater.chemistry.kernel.PumpSettings.CATCH_UP;
import static evenwater.chemistry.kernel.PumpSettings.GRACE;
import static evenwater.chemistry.kernel.PumpSettings.PORTIONS;
import static evenwater.chemistry.kernel.PumpSettings.TIMES;

/**
 * When portions are due, and what becomes of those that were missed; own rules.
 *
 * <p>Portions are numbered day × portions + place in the day. When the clock passes one or several, the last of them is due if it is not later
 * than the grace; all others were missed. What was jumped over by setting the clock was not missed: no true time went by. A portion that was
 * looked at does not come again when the clock is set back by up to a day; after a larger setback the schedule goes on from the new time. A
 * pump that starts or is resumed begins with the first portion after that moment.
 */
final class PumpSchedule {

    private PumpSchedule() {}

    static void look(long[] s, long[] m) {
        boolean jumped = m[JUMPED] != 0;
        m[JUMPED] = 0;
        if (s[PORTIONS] > 0 && !isBetweenPortions(m)) {
            pass(s, m, jumped);
        }
        if (m[DUE] > 0 && m[ACCRUED] - m[DUE_SINCE] > s[GRACE]) {
            missWhatIsDue(s, m);
        }
    }

    /** Lets go what is due and all portions up to now; the next one counts. */
    static void letGo(long[] s, long[] m) {
        m[DUE] = 0;
        m[JUMPED] = 0;
        stand(s, m, passed(s, m));
    }

    /** On the day before the next portion; earlier than that the clock was set back, perhaps too far. */
    private static boolean isBetweenPortions(long[] m) {
        return m[LOCAL] < m[NEXT] && m[LOCAL] >= m[NEXT] - PumpSettings.DAY;
    }

    private static void stand(long[] s, long[] m, int passed) {
        long n = s[PORTIONS];
        m[SLOT] = m[DAY] * n + passed - 1;
        if (n > 0) {
            m[NEXT] = passed < n
                    ? m[DAY] * PumpSettings.DAY + s[TIMES + passed]
                    : (m[DAY] + 1) * PumpSettings.DAY + s[TIMES];
        } else {
            m[NEXT] = 0;
        }
    }

    /** How many portions of this day are past. */
    private static int passed(long[] s, long[] m) {
        long second = m[LOCAL] - m[DAY] * PumpSettings.DAY;
        int passed = 0;
        while (passed < s[PORTIONS] && s[TIMES + passed] <= second) {
            passed++;
        }
        return passed;
    }

    private static void pass(long[] s, long[] m, boolean jumped) {
        long n = s[PORTIONS];
        int passed = passed(s, m);
        long slot = m[DAY] * n + passed - 1;
        long before = m[SLOT];
        boolean setBackFar = before - slot > n;
        if (slot <= before && !setBackFar) {
            return;
        }
        stand(s, m, passed);
        if (setBackFar) {
            return;
        }
        if (m[DUE] > 0) {
            missWhatIsDue(s, m);
        }
        int last = passed > 0 ? passed - 1 : (int) n - 1;
        long second = m[LOCAL] - m[DAY] * PumpSettings.DAY;
        long lateness = second - s[TIMES + last] + (passed > 0 ? 0 : PumpSettings.DAY);
        boolean inTime = lateness <= s[GRACE];
        if (!jumped) {
            miss(s, m, slot - before - (inTime ? 1 : 0));
        }
        if (inTime) {
            long portion = PumpSettings.portion(s, last);
            long extra = Math.min(m[DEBT], portion);
            m[DEBT] -= extra;
            m[DUE] = portion + extra;
            m[DUE_SINCE] = m[ACCRUED] - lateness;
        }
    }

    private static void missWhatIsDue(long[] s, long[] m) {
        note(m, 1);
        owe(s, m, m[DUE]);
        m[DUE] = 0;
    }

    private static void miss(long[] s, long[] m, long portions) {
        if (portions > 0 && s[PumpSettings.DAILY] > 0) {
            note(m, portions);
            owe(s, m, Math.min(portions, s[CATCH_UP]) * usualPortion(s));
        }
    }

    private static void note(long[] m, long portions) {
        m[MISSED] = Math.min(m[MISSED] + portions, PumpMemory.LARGEST_TOTAL);
        m[FLAGS] |= PumpKernel.PORTIONS_MISSED;
    }

    private static void owe(long[] s, long[] m, long volume) {
        m[DEBT] = Math.min(m[DEBT] + volume, s[CATCH_UP] * usualPortion(s));
    }

    private static long usualPortion(long[] s) {
        return s[PORTIONS] == 0 ? 0 : s[PumpSettings.DAILY] / s[PORTIONS];
    }
}
