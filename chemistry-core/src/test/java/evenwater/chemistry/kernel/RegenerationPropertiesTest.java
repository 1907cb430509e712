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
class RegenerationPropertiesTest {

    private record Input(int kind, long reading, long clock, long volume, boolean yes) {

        int applyTo(RegenerationSettings settings, RegenerationState state) {
            return switch (kind) {
                case 0 -> RegenerationKernel.restart(settings, state, reading, clock);
                case 1 -> RegenerationEvents.started(state);
                case 2 -> RegenerationEvents.finished(state, volume);
                case 3 -> RegenerationEvents.failed(state, yes);
                case 4 -> RegenerationEvents.salt(state, yes);
                case 5 -> RegenerationEvents.holiday(state, yes);
                case 6 -> RegenerationEvents.meterExchanged(settings, state, reading);
                default -> RegenerationKernel.step(settings, state, reading, clock);
            };
        }
    }

    @Provide
    Arbitrary<RegenerationSettings> settings() {
        return Arbitraries.longs().map(seed -> {
            Random random = new Random(seed);
            RegenerationSettings settings = new RegenerationSettings();
            for (RegenerationSetting setting : RegenerationSetting.values()) {
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
        Arbitrary<Long> volumes = Arbitraries.oneOf(
                Arbitraries.longs().between(1, RegenerationKernel.LARGEST_CAPACITY), Arbitraries.longs());
        return Combinators.combine(
                        Arbitraries.integers().between(0, 14), readings, clocks, volumes, Arbitraries.of(true, false))
                .as(Input::new)
                .list()
                .ofMaxSize(60);
    }

    @Property
    void whateverComesEveryNumberStaysInItsRangeAndASaveGoesOnAlike(
            @ForAll("settings") RegenerationSettings settings,
            @ForAll("inputs") List<Input> inputs,
            @ForAll @IntRange(max = 60) int saved) {
        RegenerationState state = new RegenerationState();
        RegenerationKernel.begin(settings, state, 0, NOON, 0);
        RegenerationState twin = new RegenerationState();
        twin.copyFrom(state);
        long[] save = new long[RegenerationSave.LENGTH];
        for (int i = 0; i < inputs.size(); i++) {
            if (i == saved) {
                assertEquals(RegenerationSave.OK, RegenerationSave.write(settings, twin, save));
                twin = new RegenerationState();
                assertEquals(RegenerationSave.OK, RegenerationSave.read(settings, twin, save));
            }
            RegenerationState before = new RegenerationState();
            before.copyFrom(state);
            int noticed = inputs.get(i).applyTo(settings, state);
            assertEquals(noticed, inputs.get(i).applyTo(settings, twin));
            int untouched =
                    RegenerationKernel.BAD_INPUT | RegenerationKernel.NOT_BEGUN | RegenerationKernel.DOES_NOT_FIT;
            assertTrue((noticed & untouched) == 0 || before.isSameAs(state));
            assertInRange(settings, state);
            assertEquals(water(before).add(pulsesBetween(settings, before, state)), water(state));
        }
        assertTrue(twin.isSameAs(state));
    }

    private static void assertInRange(RegenerationSettings settings, RegenerationState state) {
        for (RegenerationCount count : RegenerationCount.values()) {
            long value = state.count(count);
            assertTrue(value >= 0 && value <= count.most(), () -> count + " " + value);
        }
        long left = state.count(RegenerationCount.LEFT);
        assertTrue(left <= state.count(RegenerationCount.CAPACITY));
        assertTrue(left == 0 || state.count(RegenerationCount.OVERDRAWN) == 0, "hard water while something is left");
        long reserve = UseLearning.reserveNanolitres(settings, state);
        assertTrue(reserve >= 0 && reserve <= state.count(RegenerationCount.CAPACITY));
        assertTrue(Double.isFinite(state.meanNanolitresPerDay()) && state.meanNanolitresPerDay() >= 0);
        assertTrue(Double.isFinite(state.deviationNanolitresPerDay()) && state.deviationNanolitresPerDay() >= 0);
        boolean due = RegenerationRule.due(settings, state) != RegenerationRule.NOT_DUE;
        assertEquals(due, RegenerationRule.reason(settings, state) != RegenerationRule.NONE);
        assertTrue(due || RegenerationRule.hold(settings, state) == RegenerationRule.NONE);
    }

    private static BigInteger water(RegenerationState state) {
        return BigInteger.valueOf(state.count(RegenerationCount.TOTAL_SOFTENED))
                .add(BigInteger.valueOf(state.count(RegenerationCount.TOTAL_BYPASSED)))
                .add(BigInteger.valueOf(state.count(RegenerationCount.TOTAL_EXHAUSTED)));
    }

    private static BigInteger pulsesBetween(
            RegenerationSettings settings, RegenerationState before, RegenerationState after) {
        return BigInteger.valueOf(after.count(RegenerationCount.PULSES) - before.count(RegenerationCount.PULSES))
                .multiply(BigInteger.valueOf(settings.value(RegenerationSetting.PULSE_NANOLITRES)));
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
        for (RegenerationCount count : RegenerationCount.values()) {
            // all within one day; the time without a pulse starts with the reading that brought the last one
            assertTrue(count == RegenerationCount.WITHOUT_PULSE || all.count(count) == some.count(count), count::name);
        }
        assertEquals((counter - 65_000) * LITRE, water(some.state).longValueExact());
    }

    @Property
    void moreUseNeverLeavesMore(@ForAll @LongRange(max = 3600) long less, @ForAll @LongRange(max = 3600) long more) {
        MeteredSoftener first = new MeteredSoftener().begun(0);
        MeteredSoftener second = new MeteredSoftener().begun(0);
        first.step(Math.min(less, more), NOON + 3600);
        second.step(Math.max(less, more), NOON + 3600);
        assertTrue(first.count(RegenerationCount.LEFT) >= second.count(RegenerationCount.LEFT));
        assertTrue(RegenerationRule.due(first.settings, first.state)
                <= RegenerationRule.due(second.settings, second.state));
    }

    /** Of days that are not low, in the same order, larger ones teach no smaller mean. */
    @Property
    void aLargerLastDayTeachesNoSmallerMean(
            @ForAll List<@LongRange(min = 80, max = 120) Long> days,
            @ForAll @LongRange(min = 60, max = 500) long one,
            @ForAll @LongRange(min = 60, max = 500) long other) {
        RegenerationState first = new MeteredSoftener().begun(0).state;
        RegenerationState second = new MeteredSoftener().begun(0).state;
        for (long use : days) {
            UseLearning.learn(first, use);
            UseLearning.learn(second, use);
        }
        UseLearning.learn(first, Math.min(one, other));
        UseLearning.learn(second, Math.max(one, other));
        assertTrue(first.meanNanolitresPerDay() <= second.meanNanolitresPerDay());
    }

    @Property
    void theMeanStaysBetweenTheUsesThatWereSeen(@ForAll List<@LongRange(min = 1, max = 1_000_000) Long> days) {
        RegenerationState state = new MeteredSoftener().begun(0).state;
        long least = Long.MAX_VALUE;
        long most = 0;
        for (long use : days) {
            UseLearning.learn(state, use);
            least = Math.min(least, use);
            most = Math.max(most, use);
            // the mean is a weighted mean of uses; each of the rounded steps is off by at most a unit in the last place
            double rounding = days.size() * Math.ulp((double) most);
            assertTrue(state.meanNanolitresPerDay() >= least - rounding);
            assertTrue(state.meanNanolitresPerDay() <= most + rounding);
        }
    }
}
