package evenwater.chemistry.control;

import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveSettings;
import evenwater.chemistry.quantity.FlowRate;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** Builds {@link SoftenerSettings}. Stating something twice replaces it. Not thread-safe. */
public final class SoftenerSettingsBuilder {

    private final ValveSettings numbers = new ValveSettings();

    SoftenerSettingsBuilder(Quantity<Volume> pulse, Quantity<Volume> capacity) {
        volume(ValveSetting.PULSE_NANOLITRES, "volume of one pulse", pulse);
        volume(ValveSetting.CAPACITY_NANOLITRES, "capacity", capacity);
    }

    /**
     * States the width of the meter's cumulative counter; 32 if not stated.
     *
     * @param bits 8 to 32, usually 16 or 32
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder counterBits(int bits) {
        if (numbers.put(ValveSetting.COUNTER_BITS, bits) != ValveKernel.OK) {
            throw new IllegalArgumentException("width of the counter must be from 8 to 32 bits, but was " + bits);
        }
        return this;
    }

    /**
     * States the largest flow that the meter can see: a reading that asks for more is refused; 60 L/min if not stated.
     *
     * @param flow above 0, to 600 L/min
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder largestFlow(Quantity<FlowRate> flow) {
        double litresPerMinute = FlowRate.from(flow).in(FlowRate.LITRE_PER_MINUTE);
        long nanolitresPerSecond = Math.round(litresPerMinute / 60 * Nanolitres.PER_LITRE);
        if (numbers.put(ValveSetting.LARGEST_FLOW_NANOLITRES_PER_SECOND, nanolitresPerSecond) != ValveKernel.OK) {
            throw new IllegalArgumentException("largest flow must be above 0 and at most 600 L/min, but was " + flow);
        }
        return this;
    }

    /**
     * States how much older a reading may be than the clock that comes with it; one minute if not stated.
     *
     * @param delay 0 to one day
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder readingDelay(Duration delay) {
        return time(ValveSetting.READING_DELAY_SECONDS, "delay of a reading", delay);
    }

    /**
     * States the longest time between two readings while the controller runs: a clock that jumps further was changed; 25 hours if not stated,
     * so that a reading a day will do. With frequent readings state less, and less remains unnoticed; after a longer gap the water is
     * counted, if it can have flown in the time that the clock shows, and the time is not credited.
     *
     * @param gap one minute to 30 days
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder longestGap(Duration gap) {
        return time(ValveSetting.LONGEST_GAP_SECONDS, "longest gap between readings", gap);
    }

    /**
     * States after what time without a pulse the meter is called silent; 7 days if not stated.
     *
     * @param silence to 1000 days; zero for never
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder silentAfter(Duration silence) {
        return time(ValveSetting.SILENCE_SECONDS, "time without a pulse", silence);
    }

    /**
     * States the reserve of the first week, which the learned one may pass; 400 L if not stated. A day's use up to this never counts as an outlier.
     *
     * @param reserve 0 to 1000 m³; never more than the capacity counts
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder firstReserve(Quantity<Volume> reserve) {
        return volume(ValveSetting.FIRST_RESERVE_NANOLITRES, "first reserve", reserve);
    }

    /**
     * States the reserve that the learned one does not go below; a quarter of the first reserve if not stated.
     *
     * @param reserve 0, for no such floor, to 1000 m³; never more than the capacity counts
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder leastReserve(Quantity<Volume> reserve) {
        return volume(ValveSetting.LEAST_RESERVE_NANOLITRES, "least reserve", reserve);
    }

    /**
     * Allows to regenerate at any time of day once no more than this is left; not allowed if not stated.
     *
     * @param left 0, for when it is exhausted, to less than the capacity
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder atOnceBelow(Quantity<Volume> left) {
        long capacity = numbers.value(ValveSetting.CAPACITY_NANOLITRES);
        long nanolitres = Nanolitres.of(left);
        if (nanolitres < 0 || nanolitres >= capacity) { // at the capacity one regeneration would follow the other
            throw new IllegalArgumentException("what is left for a regeneration at once must be from 0 L to less than "
                    + Nanolitres.exactly(capacity) + ", but was " + left);
        }
        numbers.put(ValveSetting.AT_ONCE_NANOLITRES, nanolitres);
        return this;
    }

    /**
     * States the night's window; 2:00 and 3 hours if not stated. Days of learning run from its opening to the next.
     *
     * @param begins local time, to the second
     * @param lasts one minute to one day
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder night(LocalTime begins, Duration lasts) {
        Objects.requireNonNull(begins, "begins");
        time(ValveSetting.NIGHT_LASTS_SECONDS, "length of the night's window", lasts);
        numbers.put(ValveSetting.NIGHT_BEGINS_SECONDS, begins.toSecondOfDay());
        return this;
    }

    /**
     * States the age that a regeneration is not to pass, whatever was used; 14 days if not stated (common practice, no source).
     *
     * @param age one to 1000 days; zero for none
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder longestAge(Duration age) {
        Objects.requireNonNull(age, "age");
        if (!age.isZero() && age.compareTo(Duration.ofDays(1)) < 0) {
            throw new IllegalArgumentException(
                    "longest age must be from 1 d to 1000 d, or zero for none, but was " + Spans.exactly(age));
        }
        return time(ValveSetting.LONGEST_AGE_SECONDS, "longest age", age);
    }

    /**
     * States the shortest time from the end of a regeneration, good or failed, to the next; 6 hours if not stated.
     *
     * @param interval 0 to 30 days
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder shortestInterval(Duration interval) {
        return time(ValveSetting.SHORTEST_INTERVAL_SECONDS, "shortest interval", interval);
    }

    /**
     * States the longest time that a regeneration takes; one that does not report its end by then is interrupted; 4 hours if not stated.
     *
     * @param duration one minute to one day
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder longestRegeneration(Duration duration) {
        return time(ValveSetting.LONGEST_REGENERATION_SECONDS, "longest regeneration", duration);
    }

    /**
     * States after how many failed regenerations in a row none starts by itself any more, until a person has acknowledged it; 3 if not stated.
     *
     * @param failures 1 to 1000
     * @return this builder
     * @throws IllegalArgumentException if it is out of range
     */
    public SoftenerSettingsBuilder mostFailures(int failures) {
        if (numbers.put(ValveSetting.MOST_FAILURES, failures) != ValveKernel.OK) {
            throw new IllegalArgumentException("most failures in a row must be from 1 to 1000, but were " + failures);
        }
        return this;
    }

    /**
     * Returns the settings.
     *
     * @return as stated
     */
    public SoftenerSettings build() {
        return new SoftenerSettings(numbers);
    }

    private SoftenerSettingsBuilder volume(ValveSetting setting, String what, Quantity<Volume> volume) {
        long nanolitres = Nanolitres.of(volume);
        if (nanolitres < 0 || numbers.put(setting, nanolitres) != ValveKernel.OK) {
            throw new IllegalArgumentException(what + " must be from "
                    + Nanolitres.exactly(Math.max(0, setting.least())) + " to "
                    + Nanolitres.exactly(setting.most()) + ", but was " + volume);
        }
        return this;
    }

    private SoftenerSettingsBuilder time(ValveSetting setting, String what, Duration time) {
        Objects.requireNonNull(time, what);
        if (numbers.put(setting, time.toSeconds()) != ValveKernel.OK) {
            throw new IllegalArgumentException(what + " must be from " + Spans.text(setting.least()) + " to "
                    + Spans.text(setting.most()) + ", but was " + Spans.exactly(time));
        }
        return this;
    }
}
