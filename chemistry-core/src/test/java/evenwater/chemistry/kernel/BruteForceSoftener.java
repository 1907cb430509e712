package evenwater.chemistry.kernel;

import java.math.BigInteger;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The same softener kept the long way: lists of days and of draws, big integers, calendar dates, and a meter that never rolls over. It is told
 * which messages are true, so it needs no plausibility. Learns anew from all days each time it is asked.
 */
final class BruteForceSoftener {

    static final LocalTime NIGHT = LocalTime.of(2, 0);
    static final Duration WINDOW = Duration.ofHours(3);
    static final Duration LONGEST_AGE = Duration.ofDays(14);
    static final Duration SHORTEST_INTERVAL = Duration.ofHours(6);
    static final Duration LONGEST_REGENERATION = Duration.ofHours(4);
    static final Duration LONGEST_GAP = Duration.ofHours(1);
    static final BigInteger PULSE = BigInteger.valueOf(100_000_000);
    static final BigInteger CAPACITY = BigInteger.valueOf(1400).multiply(BigInteger.TEN.pow(9));
    static final BigInteger FIRST_RESERVE = BigInteger.valueOf(400).multiply(BigInteger.TEN.pow(9));

    private enum Fate {
        SOFTENED,
        BYPASSED,
        EXHAUSTED
    }

    private record Draw(Fate fate, BigInteger volume) {}

    private static final class Day {
        final LocalDate date;
        final boolean beganInOrder;
        boolean spoiled;
        final List<Draw> draws = new ArrayList<>();

        Day(LocalDate date, boolean beganInOrder) {
            this.date = date;
            this.beganInOrder = beganInOrder;
        }
    }

    private final List<Day> days = new ArrayList<>();
    private final List<Draw> drawn = new ArrayList<>();
    private BigInteger lastCounter;
    private LocalDateTime last;
    private BigInteger capacity = CAPACITY;
    private BigInteger left = CAPACITY;
    private Duration age = Duration.ZERO;
    private Duration sinceEnd = Duration.ofDays(9999);
    private Duration running; // null if no regeneration is under way
    private boolean salt = true;
    private boolean withoutSalt;
    private boolean timedOut;
    private int failedInARow;

    BruteForceSoftener(LocalDateTime at, BigInteger counter) {
        last = at;
        lastCounter = counter;
        days.add(new Day(dateOf(at), false));
    }

    private static LocalDate dateOf(LocalDateTime at) {
        return at.minusSeconds(NIGHT.toSecondOfDay()).toLocalDate();
    }

    private Day today() {
        return days.get(days.size() - 1);
    }

    void message(LocalDateTime at, BigInteger counter, boolean isTrue, boolean restarted) {
        Duration passed = Duration.between(last, at);
        Duration limit = restarted ? Duration.ofDays(1000) : LONGEST_GAP;
        boolean moved = passed.isNegative() || passed.compareTo(limit) > 0;
        LocalDate date = dateOf(at);
        boolean inOrder = !moved && !restarted && date.equals(today().date.plusDays(1));
        if (!date.equals(today().date)) {
            days.add(new Day(date, inOrder));
        } else if (moved || restarted) {
            today().spoiled = true;
        }
        if (isTrue) {
            draw(counter.subtract(lastCounter).multiply(PULSE));
            lastCounter = counter;
        }
        last = at;
        if (!moved) {
            pass(passed);
        }
    }

    /** Before the message is told. */
    boolean isLongGap(LocalDateTime at) {
        return at.isAfter(last.plus(LONGEST_GAP));
    }

    private void draw(BigInteger volume) {
        if (running != null) {
            record(new Draw(Fate.BYPASSED, volume));
            return;
        }
        BigInteger soft = volume.min(left);
        left = left.subtract(soft);
        record(new Draw(Fate.SOFTENED, soft));
        record(new Draw(Fate.EXHAUSTED, volume.subtract(soft)));
    }

    private void record(Draw draw) {
        drawn.add(draw);
        today().draws.add(draw);
    }

    private void pass(Duration passed) {
        age = age.plus(passed);
        sinceEnd = sinceEnd.plus(passed);
        if (running != null) {
            running = running.plus(passed);
            if (running.compareTo(LONGEST_REGENERATION) > 0) {
                end();
                failedInARow++;
                timedOut = true;
                left = BigInteger.ZERO;
            }
        }
    }

    boolean isRegenerating() {
        return running != null;
    }

    void start() {
        running = Duration.ZERO;
        withoutSalt = !salt;
        timedOut = false;
        failedInARow = failedInARow >= 3 ? 0 : failedInARow; // then it was started by hand
    }

    boolean hasTimedOut() {
        return timedOut;
    }

    int failedInARow() {
        return failedInARow;
    }

    void acknowledge() {
        failedInARow = 0;
    }

    void finish(BigInteger gives) {
        failedInARow = !withoutSalt ? 0 : timedOut ? failedInARow : failedInARow + 1;
        timedOut = false;
        end();
        if (!withoutSalt) {
            capacity = gives;
            left = gives;
            age = Duration.ZERO;
        }
    }

    void fail(boolean brine) {
        failedInARow++;
        end();
        left = brine ? BigInteger.ZERO : left;
    }

    private void end() {
        running = null;
        sinceEnd = Duration.ZERO;
    }

    void salt(boolean there) {
        salt = there;
        withoutSalt &= !there;
    }

    boolean ranWithoutSalt() {
        return withoutSalt;
    }

    BigInteger left() {
        return left;
    }

    long softened() {
        return sum(drawn, Fate.SOFTENED);
    }

    long bypassed() {
        return sum(drawn, Fate.BYPASSED);
    }

    long exhausted() {
        return sum(drawn, Fate.EXHAUSTED);
    }

    long usedToday() {
        return sum(today().draws, null);
    }

    private static long sum(List<Draw> draws, Fate fate) {
        return draws.stream()
                .filter(draw -> fate == null || draw.fate() == fate)
                .map(Draw::volume)
                .reduce(BigInteger.ZERO, BigInteger::add)
                .longValueExact();
    }

    /** How many days have begun. */
    int dayCount() {
        return days.size();
    }

    /** Uses of the days that were seen from their beginning to their end, in nL. */
    List<Double> wholeDays() {
        List<Double> whole = new ArrayList<>();
        for (int i = 0; i + 1 < days.size(); i++) {
            Day day = days.get(i);
            if (day.beganInOrder && !day.spoiled && days.get(i + 1).beganInOrder) {
                whole.add((double) sum(day.draws, null));
            }
        }
        return whole;
    }

    /** Mean, deviation, and how many days they are from. */
    static double[] learn(List<Double> uses) {
        double m = 0;
        double d = 0;
        int n = 0;
        int lowInARow = 0;
        for (double u : uses) {
            if (u == 0) {
                continue;
            }
            if (n == 0) {
                m = u;
                d = u / 4;
                n = 1;
                continue;
            }
            boolean firstWeek = n < 7;
            lowInARow = !firstWeek && u < 0.2 * m ? lowInARow + 1 : 0;
            if (lowInARow > 0 && lowInARow <= 14) {
                continue;
            }
            n++;
            double cut = firstWeek ? u : Math.min(u, Math.max(4e11, m + 3 * Math.max(d, 0.1 * m)));
            double a = lowInARow > 14 ? 1.0 / 32 : n < 8 ? 1.0 / n : 0.125;
            double off = cut - m;
            m = m + a * off;
            d = d + a * (Math.abs(off) - d);
        }
        return new double[] {m, d, n};
    }

    BigInteger reserve(double[] learned) {
        BigInteger least = learned[2] < 7 ? FIRST_RESERVE : FIRST_RESERVE.divide(BigInteger.valueOf(4));
        BigInteger wanted = BigInteger.valueOf((long) Math.ceil(learned[0] + 2 * learned[1]))
                .max(least);
        return wanted.min(capacity);
    }

    /** At night only; at once never. */
    boolean isToStart(double[] learned) {
        if (running != null || !salt || failedInARow >= 3 || sinceEnd.compareTo(SHORTEST_INTERVAL) < 0) {
            return false;
        }
        LocalDateTime opened = dateOf(last).atTime(NIGHT);
        if (!last.isBefore(opened.plus(WINDOW))) {
            return false;
        }
        Duration ageInTheNextNight = age.minus(Duration.between(opened, last)).plusDays(1);
        return left.signum() == 0
                || left.compareTo(reserve(learned)) < 0
                || ageInTheNextNight.compareTo(LONGEST_AGE) > 0;
    }
}
