package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/**
 * A year of an invented household: messages that are lost, repeated, late or garbled, daylight saving, power cuts, holidays, regenerations that fail
 * and salt that runs out; beside {@link BruteForceSoftener}.
 */
class ValveReplayPropertiesTest {

    private static final LocalDateTime START = LocalDateTime.of(2026, 1, 1, 10, 0);
    private static final Duration YEAR = Duration.ofDays(365);
    /** Clocks go forward and back, on the standard time of the year. */
    private static final LocalDateTime SPRING = LocalDateTime.of(2026, 3, 29, 2, 0);

    private static final LocalDateTime AUTUMN = LocalDateTime.of(2026, 10, 25, 2, 0);

    /** One year; the counter is the truth, which no message knows. */
    private static final class Year {
        final Random random;
        final MeteredSoftener softener = new MeteredSoftener()
                .with(ValveSetting.PULSE_NANOLITRES, BruteForceSoftener.PULSE.longValueExact())
                .with(ValveSetting.LONGEST_GAP_SECONDS, BruteForceSoftener.LONGEST_GAP.toSeconds())
                .with(ValveSetting.CAPACITY_NANOLITRES, BruteForceSoftener.CAPACITY.longValueExact());
        final BruteForceSoftener slow;
        LocalDateTime standardTime = START;
        long counter;
        long olderCounter;
        long believedCounter;
        LocalDateTime believed = START;
        LocalDateTime homeFrom = START;
        long adrift;
        double[] learned = {0, 0, 0};
        int days;
        int taught;
        int refused;
        int restarts;
        int started;
        int moved;

        Year(long seed) {
            random = new Random(seed);
            counter = 60_000 + random.nextInt(5000);
            olderCounter = counter;
            believedCounter = counter;
            slow = new BruteForceSoftener(START, BigInteger.valueOf(counter));
            softener.begun(counter & 0xFFFF, seconds(START));
        }

        LocalDateTime wallTime() {
            boolean summer = !standardTime.isBefore(SPRING) && standardTime.isBefore(AUTUMN);
            return (summer ? standardTime.plusHours(1) : standardTime).plusSeconds(adrift);
        }

        static long seconds(LocalDateTime at) {
            return at.toEpochSecond(ZoneOffset.UTC);
        }

        void letTimePass(Duration duration, boolean withUse) {
            standardTime = standardTime.plus(duration);
            int hour = standardTime.getHour();
            double likely = hour < 5 ? 0.02 : hour < 9 || hour > 17 ? 0.3 : 0.1;
            if (withUse && standardTime.isAfter(homeFrom) && random.nextDouble() < likely) {
                counter += random.nextInt(random.nextInt(200) == 0 ? 480 : 250); // at most 0.8 L/s of a minute
            }
            if (random.nextInt(4000) == 0) {
                homeFrom = standardTime.plusDays(random.nextInt(25));
            }
        }

        void live() {
            while (standardTime.isBefore(START.plus(YEAR))) {
                letTimePass(Duration.ofSeconds(60 + random.nextInt(1100)), true);
                double chance = random.nextDouble();
                if (random.nextInt(3000) == 0) {
                    silence();
                }
                if (random.nextInt(2000) == 0) {
                    adrift = random.nextInt(6 * 86_400) - 3 * 86_400; // somebody sets the clock, for better or worse
                }
                if (chance < 0.25) {
                    continue; // lost, with all that it would have said
                }
                // a wrong message right after a changed clock could be believed: nobody knows how much time has passed
                Duration silent = Duration.between(believed, wallTime());
                boolean closely = !silent.isNegative() && silent.toMinutes() < 40;
                if (chance < 0.26) {
                    powerCut();
                } else if (chance < 0.29 && closely && believedCounter > olderCounter) {
                    wrong(olderCounter); // an old message, once more
                } else if (chance < 0.30 && closely) {
                    wrong(counter + 31_000 + random.nextInt(3000)); // 3100 L take 51 minutes at least
                } else {
                    right();
                    if (chance > 0.95) {
                        right(); // repeated
                    }
                }
                olderCounter = chance < 0.6 ? olderCounter : counter;
                valve();
                check();
            }
        }

        void right() {
            message(counter, true, false);
        }

        void wrong(long reading) {
            message(reading, false, false);
            refused++;
            right(); // two wrong ones in a row could agree with each other
        }

        void message(long reading, boolean isTrue, boolean restarted) {
            LocalDateTime at = wallTime();
            int notices = restarted
                    ? softener.restart(reading & 0xFFFF, seconds(at))
                    : softener.step(reading & 0xFFFF, seconds(at));
            assertEquals(!isTrue, (notices & ValveKernel.READING_REFUSED) != 0, () -> "at " + at);
            assertEquals(0, notices & ValveKernel.METER_UNCLEAR);
            believed = isTrue ? at : believed;
            believedCounter = isTrue ? reading : believedCounter;
            assertEquals(slow.isLongGap(at), (notices & ValveKernel.LONG_GAP) != 0);
            moved += notices & ValveKernel.CLOCK_CHANGED;
            slow.message(at, BigInteger.valueOf(reading), isTrue, restarted);
        }

        /** Up to a day without messages, of which nobody knows; the household goes on. */
        void silence() {
            for (int quarters = random.nextInt(96); quarters > 0; quarters--) {
                letTimePass(Duration.ofMinutes(15), true);
            }
            right();
        }

        void powerCut() {
            long[] save = new long[ValveSave.LENGTH];
            ValveSave.write(softener.settings, softener.state, save);
            if (random.nextInt(30) > 0) { // mostly a short one: only the memory is lost
                ValveState restored = new ValveState();
                assertEquals(ValveSave.OK, ValveSave.read(softener.settings, restored, save));
                softener.state.copyFrom(restored);
                right();
                return;
            }
            letTimePass(Duration.ofMinutes(random.nextInt(20 * 24 * 60)), false);
            counter += random.nextInt(500);
            ValveSave.read(softener.settings, softener.state, save);
            message(counter, true, true);
            restarts++;
        }

        void valve() {
            if (random.nextInt(3000) == 0) {
                boolean missing = softener.count(ValveCount.SALT_MISSING) == 0 && random.nextBoolean();
                ValveEvents.salt(softener.state, missing);
                slow.salt(!missing);
            }
            if (softener.isToStart()) {
                assertEquals(ValveKernel.OK, ValveEvents.started(softener.settings, softener.state));
                slow.start();
                started++;
            } else if (slow.hasTimedOut() && random.nextInt(4) == 0) {
                long gives = (1000 + random.nextInt(500)) * MeteredSoftener.LITRE;
                int status = ValveEvents.finished(softener.settings, softener.state, gives);
                assertEquals(slow.ranWithoutSalt() ? ValveKernel.WITHOUT_SALT : ValveKernel.FINISHED_LATE, status);
                slow.finish(BigInteger.valueOf(gives));
            } else if (slow.failedInARow() >= 3 && random.nextInt(10) == 0) {
                if (random.nextBoolean()) {
                    ValveEvents.failuresAcknowledged(softener.state);
                    slow.acknowledge();
                } else if (!slow.isRegenerating()) {
                    assertEquals(ValveKernel.OK, ValveEvents.started(softener.settings, softener.state));
                    slow.start();
                }
            } else if (slow.isRegenerating() && random.nextInt(8) == 0) {
                long gives = (1000 + random.nextInt(500)) * MeteredSoftener.LITRE;
                switch (random.nextInt(12)) {
                    case 0, 2 -> fail(false);
                    case 1, 3 -> fail(true);
                    default -> {
                        ValveEvents.finished(softener.settings, softener.state, gives);
                        slow.finish(BigInteger.valueOf(gives));
                    }
                }
            }
        }

        void fail(boolean brine) {
            assertEquals(ValveKernel.OK, ValveEvents.failed(softener.state, brine));
            slow.fail(brine);
        }

        void check() {
            assertEquals(slow.left(), BigInteger.valueOf(softener.count(ValveCount.LEFT)));
            assertEquals(slow.failedInARow(), softener.count(ValveCount.FAILURES));
            assertEquals(slow.isRegenerating(), softener.count(ValveCount.REGENERATING) == 1);
            if (slow.dayCount() != days) {
                days = slow.dayCount();
                List<Double> uses = slow.wholeDays();
                taught = uses.size();
                learned = BruteForceSoftener.learn(uses);
                if (days % 40 == 0) {
                    checkSums();
                }
            }
            assertEquals(learned[0], softener.state.meanNanolitresPerDay());
            assertEquals(learned[1], softener.state.deviationNanolitresPerDay());
            assertEquals(slow.reserve(learned), BigInteger.valueOf(softener.reserve()));
            assertEquals(slow.isToStart(learned), softener.isToStart(), () -> "at " + wallTime());
        }

        void checkSums() {
            assertEquals(slow.softened(), softener.count(ValveCount.TOTAL_SOFTENED));
            assertEquals(slow.bypassed(), softener.count(ValveCount.TOTAL_BYPASSED));
            assertEquals(slow.exhausted(), softener.count(ValveCount.TOTAL_EXHAUSTED));
            assertEquals(
                    slow.usedToday(),
                    softener.count(ValveCount.TODAY_SOFTENED)
                            + softener.count(ValveCount.TODAY_BYPASSED)
                            + softener.count(ValveCount.TODAY_EXHAUSTED));
        }
    }

    @Property(tries = 5)
    void aRandomYearComesOutAsInTheLongWay(@ForAll long seed) {
        Year year = new Year(seed);
        long first = year.counter;
        year.live();
        year.right();
        year.checkSums();
        assertEquals(year.counter - first, year.softener.count(ValveCount.PULSES));
        // what a year is to hold
        assertTrue(year.counter - first > 65_536, () -> "pulses: " + (year.counter - first));
        assertTrue(year.refused > 300, () -> "refused: " + year.refused);
        assertTrue(year.restarts > 0, () -> "restarts: " + year.restarts);
        assertTrue(year.started > 12, () -> "regenerations: " + year.started);
        assertTrue(year.taught > 60, () -> "days: " + year.taught);
        assertTrue(year.moved > 0, () -> "clock changes: " + year.moved);
    }
}
