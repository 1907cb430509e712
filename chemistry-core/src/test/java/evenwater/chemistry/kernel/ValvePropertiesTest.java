package evenwater.chemistry.kernel;

import static evenwater.chemistry.kernel.MeteredSoftener.DAY;
import static evenwater.chemistry.kernel.MeteredSoftener.LITRE;
import static evenwater.chemistry.kernel.MeteredSoftener.NOON;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Laws of the metered softener under whatever comes: readings, clocks and reports in any order. */
class ValvePropertiesTest {

    private record Input(int kind, long reading, long clock, long volume, boolean yes) {

        int applyTo(ValveSettings settings, ValveState state) {
            return switch (kind) {
                case 0 -> ValveKernel.restart(settings, state, reading, clock);
                case 1 -> ValveEvents.started(settings, state);
                case 2 -> ValveEvents.finished(settings, state, volume);
                case 3 -> ValveEvents.failed(state, yes);
                case 7 -> ValveEvents.failuresAcknowledged(state);
                case 4 -> ValveEvents.salt(state, yes);
                case 5 -> ValveEvents.holiday(state, yes);
                case 6 -> ValveEvents.meterExchanged(settings, state, reading);
                default -> ValveKernel.step(settings, state, reading, clock);
            };
        }
    }

    @Provide
    Arbitrary<ValveSettings> settings() {
        return Arbitraries.longs().map(seed -> {
            Random random = new Random(seed);
            ValveSettings settings = new ValveSettings();
            for (ValveSetting setting : ValveSetting.values()) {
                long range = setting.most() - setting.least() + 1;
                long any = setting.least() + Math.floorMod(random.nextLong(), range);
                settings.put(setting, random.nextInt(4) == 0 ? any : setting.usual());
            }
            return settings;
        });
    }

    @Provide
    Arbitrary<List<Input>> inputs() {
        Arbitrary<Long> readings = Arbitraries.oneOf(
                Arbitraries.longs().between(0, 300), Arbitraries.longs().between(0, 0xFFFF_FFFFL), Arbitraries.longs());
        Arbitrary<Long> clocks = Arbitraries.oneOf(
                Arbitraries.longs().between(NOON, NOON + 2 * DAY),
                Arbitraries.longs().between(NOON, NOON + 2000 * DAY),
                Arbitraries.longs());
        Arbitrary<Long> volumes =
                Arbitraries.oneOf(Arbitraries.longs().between(1, ValveKernel.LARGEST_CAPACITY), Arbitraries.longs());
        return Combinators.combine(
                        Arbitraries.integers().between(0, 15), readings, clocks, volumes, Arbitraries.of(true, false))
                .as(Input::new)
                .list()
                .ofMaxSize(60);
    }

    @Property
    void whateverComesEveryNumberStaysInItsRangeAndASaveGoesOnAlike(
            @ForAll("settings") ValveSettings settings,
            @ForAll("inputs") List<Input> inputs,
            @ForAll @IntRange(max = 60) int saved) {
        ValveState state = new ValveState();
        ValveKernel.begin(settings, state, 0, NOON, 0);
        ValveState twin = new ValveState();
        twin.copyFrom(state);
        long[] save = new long[ValveSave.LENGTH];
        for (int i = 0; i < inputs.size(); i++) {
            if (i == saved) {
                assertEquals(ValveSave.OK, ValveSave.write(settings, twin, save));
                twin = new ValveState();
                assertEquals(ValveSave.OK, ValveSave.read(settings, twin, save));
            }
            ValveState before = new ValveState();
            before.copyFrom(state);
            int noticed = inputs.get(i).applyTo(settings, state);
            assertEquals(noticed, inputs.get(i).applyTo(settings, twin));
            int untouched = ValveKernel.BAD_INPUT | ValveKernel.NOT_BEGUN | ValveKernel.DOES_NOT_FIT;
            assertTrue((noticed & untouched) == 0 || before.isSameAs(state));
            long more = state.count(ValveCount.SEQUENCE) - before.count(ValveCount.SEQUENCE);
            assertEquals(before.isSameAs(state) ? 0 : 1, more); // so that a save tells whether it is newer
            assertInRange(settings, state);
            assertEquals(water(before).add(pulsesBetween(settings, before, state)), water(state));
        }
        assertTrue(twin.isSameAs(state));
    }

    private static void assertInRange(ValveSettings settings, ValveState state) {
        for (ValveCount count : ValveCount.values()) {
            long value = state.count(count);
            assertTrue(value >= 0 && value <= count.most(), () -> count + " " + value);
        }
        long left = state.count(ValveCount.LEFT);
        assertTrue(left <= state.count(ValveCount.CAPACITY));
        assertTrue(left == 0 || state.count(ValveCount.OVERDRAWN) == 0, "hard water while something is left");
        long reserve = UseLearning.reserveNanolitres(settings, state);
        assertTrue(reserve >= 0 && reserve <= state.count(ValveCount.CAPACITY));
        assertTrue(Double.isFinite(state.meanNanolitresPerDay()) && state.meanNanolitresPerDay() >= 0);
        assertTrue(Double.isFinite(state.deviationNanolitresPerDay()) && state.deviationNanolitresPerDay() >= 0);
        boolean due = ValveRule.due(settings, state) != ValveRule.NOT_DUE;
        assertEquals(due, ValveRule.reason(settings, state) != ValveRule.NONE);
        assertTrue(due || ValveRule.hold(settings, state) == ValveRule.NONE);
    }

    private static BigInteger water(ValveState state) {
        return BigInteger.valueOf(state.count(ValveCount.TOTAL_SOFTENED))
                .add(BigInteger.valueOf(state.count(ValveCount.TOTAL_BYPASSED)))
                .add(BigInteger.valueOf(state.count(ValveCount.TOTAL_EXHAUSTED)));
    }

    private static BigInteger pulsesBetween(ValveSettings settings, ValveState before, ValveState after) {
        return BigInteger.valueOf(after.count(ValveCount.PULSES) - before.count(ValveCount.PULSES))
                .multiply(BigInteger.valueOf(settings.value(ValveSetting.PULSE_NANOLITRES)));
    }

    /** The same water read at some of the times gives the same water. */
    @Property
    void lostAndRepeatedReadingsGiveTheTotalsOfAllReadings(@ForAll long seed) {
        Random random = new Random(seed);
        MeteredSoftener all = new MeteredSoftener().begun(65_000);
        MeteredSoftener some = new MeteredSoftener().begun(65_000);
        long counter = 65_000;
        long clock = NOON;
        for (int i = 0; i < 500; i++) {
            int seconds = random.nextInt(120);
            clock += seconds;
            counter += random.nextInt(4) == 0 ? random.nextInt(seconds + 1) : 0; // at most the largest flow, 1 L/s
            all.step(counter & 0xFFFF, clock);
            int copies = i == 499 ? 1 : random.nextInt(3);
            for (int j = 0; j < copies; j++) {
                some.step(counter & 0xFFFF, clock);
            }
        }
        for (ValveCount count : ValveCount.values()) {
            // all within one day; the time without a pulse starts with the reading that brought the last one
            boolean mayDiffer = count == ValveCount.WITHOUT_PULSE || count == ValveCount.SEQUENCE;
            assertTrue(mayDiffer || all.count(count) == some.count(count), count::name);
        }
        assertEquals((counter - 65_000) * LITRE, water(some.state).longValueExact());
    }

    @Property
    void moreUseNeverLeavesMore(@ForAll @LongRange(max = 3600) long less, @ForAll @LongRange(max = 3600) long more) {
        MeteredSoftener first = new MeteredSoftener().begun(0);
        MeteredSoftener second = new MeteredSoftener().begun(0);
        first.step(Math.min(less, more), NOON + 3600);
        second.step(Math.max(less, more), NOON + 3600);
        assertTrue(first.count(ValveCount.LEFT) >= second.count(ValveCount.LEFT));
        assertTrue(ValveRule.due(first.settings, first.state) <= ValveRule.due(second.settings, second.state));
    }

    /** Of days that are not low, in the same order, larger ones teach no smaller mean. */
    @Property
    void aLargerLastDayTeachesNoSmallerMean(
            @ForAll List<@LongRange(min = 80, max = 120) Long> days,
            @ForAll @LongRange(min = 60, max = 500) long one,
            @ForAll @LongRange(min = 60, max = 500) long other) {
        MeteredSoftener softener = new MeteredSoftener().with(ValveSetting.FIRST_RESERVE_NANOLITRES, 0);
        ValveState first = softener.begun(0).state;
        ValveState second = new MeteredSoftener().begun(0).state;
        for (long use : days) {
            UseLearning.learn(softener.settings, first, use);
            UseLearning.learn(softener.settings, second, use);
        }
        UseLearning.learn(softener.settings, first, Math.min(one, other));
        UseLearning.learn(softener.settings, second, Math.max(one, other));
        assertTrue(first.meanNanolitresPerDay() <= second.meanNanolitresPerDay());
    }

    @Property
    void theMeanStaysBetweenTheUsesThatWereSeen(@ForAll List<@LongRange(min = 1, max = 1_000_000) Long> days) {
        MeteredSoftener softener = new MeteredSoftener().with(ValveSetting.FIRST_RESERVE_NANOLITRES, 0);
        ValveState state = softener.begun(0).state;
        long least = Long.MAX_VALUE;
        long most = 0;
        for (long use : days) {
            UseLearning.learn(softener.settings, state, use);
            least = Math.min(least, use);
            most = Math.max(most, use);
            // the mean is a weighted mean of uses; each of the rounded steps is off by at most a unit in the last place
            double rounding = days.size() * Math.ulp((double) most);
            assertTrue(state.meanNanolitresPerDay() >= least - rounding);
            assertTrue(state.meanNanolitresPerDay() <= most + rounding);
        }
    }
}
