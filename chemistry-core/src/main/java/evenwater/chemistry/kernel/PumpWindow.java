package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.PumpMemory.ACCRUED;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_COUNT;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_HEAD;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_SIZE;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_SUM;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_TIMES;
import static evenwater.chemistry.kernel.PumpMemory.WINDOW_VOLUMES;

/**
 * What went into the tank within the last 24 hours of accrued time: a ring of entries with the time of the end of a run and its volume.
 *
 * <p>An entry counts until more than 86 400 s have accrued since the end of its run. Accrued time is never ahead of the true one by a whole
 * second, so a run that is ordered later begins more than 24 hours after the end of that one. Entries of one half hour are added up and
 * take the time of the latest, which only makes them count for longer; so there are at most 49 at a time.
 */
final class PumpWindow {

    private static final long LENGTH = PumpSettings.DAY;
    private static final long CELL = 1800;

    private PumpWindow() {}

    static void add(long[] m, long volume) {
        long now = m[ACCRUED];
        int count = (int) m[WINDOW_COUNT];
        int newest = place(m, count - 1);
        if (count == 0 || (m[WINDOW_TIMES + newest] / CELL != now / CELL && count < WINDOW_SIZE)) {
            newest = place(m, count);
            m[WINDOW_COUNT]++;
            m[WINDOW_VOLUMES + newest] = 0;
        }
        m[WINDOW_TIMES + newest] = now;
        m[WINDOW_VOLUMES + newest] += volume;
        m[WINDOW_SUM] += volume;
    }

    static void expire(long[] m) {
        while (m[WINDOW_COUNT] > 0 && m[ACCRUED] - m[WINDOW_TIMES + (int) m[WINDOW_HEAD]] > LENGTH) {
            int head = (int) m[WINDOW_HEAD];
            m[WINDOW_SUM] -= m[WINDOW_VOLUMES + head];
            m[WINDOW_HEAD] = head == WINDOW_SIZE - 1 ? 0 : head + 1L;
            m[WINDOW_COUNT]--;
        }
    }

    private static int place(long[] m, int index) {
        int place = (int) m[WINDOW_HEAD] + index;
        return place >= WINDOW_SIZE ? place - WINDOW_SIZE : Math.max(place, 0);
    }

    static boolean isUsable(long[] m) {
        if (m[WINDOW_HEAD] < 0
                || m[WINDOW_HEAD] >= WINDOW_SIZE
                || m[WINDOW_COUNT] < 0
                || m[WINDOW_COUNT] > WINDOW_SIZE) {
            return false;
        }
        long sum = 0;
        long before = 0;
        for (int i = 0; i < m[WINDOW_COUNT]; i++) {
            long time = m[WINDOW_TIMES + place(m, i)];
            long volume = m[WINDOW_VOLUMES + place(m, i)];
            if (time < before || time > m[ACCRUED] || volume < 0 || volume > PumpMemory.LARGEST_TOTAL - sum) {
                return false;
            }
            before = time;
            sum += volume;
        }
        return sum == m[WINDOW_SUM];
    }
}
