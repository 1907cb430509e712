package evenwater.chemistry.control;

import evenwater.chemistry.kernel.RegenerationSetting;
import evenwater.chemistry.kernel.RegenerationSettings;
import evenwater.chemistry.quantity.WaterQuantity;
import java.time.Duration;
import java.time.LocalTime;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What the owner of a metered softener decides: the meter, the capacity, the night's window, the limits.
 *
 * <p>What is not stated has the usual value of {@link RegenerationSetting}. Local plumbing codes may ask for a shorter longest age, for
 * hygiene, and for other hours.
 *
 * <p>Immutable and thread-safe.
 */
public final class SoftenerSettings {

    private final RegenerationSettings numbers;

    /** Takes a copy: the builder may go on. */
    SoftenerSettings(RegenerationSettings source) {
        numbers = new RegenerationSettings();
        for (RegenerationSetting setting : RegenerationSetting.values()) {
            numbers.put(setting, source.value(setting));
        }
    }

    /**
     * Starts settings.
     *
     * @param pulse volume of one pulse of the meter; 1 nL to 1000 L, kept to the nearest nanolitre, in which litres and gallons are whole
     * @param capacity volume that a full regeneration gives; above 0 and at most 1000 m³
     * @return a builder
     * @throws IllegalArgumentException if one is out of range
     */
    public static SoftenerSettingsBuilder builder(Quantity<Volume> pulse, Quantity<Volume> capacity) {
        return new SoftenerSettingsBuilder(pulse, capacity);
    }

    RegenerationSettings numbers() {
        return numbers;
    }

    long value(RegenerationSetting setting) {
        return numbers.value(setting);
    }

    /**
     * Returns the volume of one pulse.
     *
     * @return to the nanolitre, in litres
     */
    public WaterQuantity<Volume> pulse() {
        return Nanolitres.volume(value(RegenerationSetting.PULSE_NANOLITRES));
    }

    /**
     * Returns what a full regeneration gives.
     *
     * @return to the nanolitre, in litres
     */
    public WaterQuantity<Volume> capacity() {
        return Nanolitres.volume(value(RegenerationSetting.CAPACITY_NANOLITRES));
    }

    /**
     * Returns when the night's window opens.
     *
     * @return local time
     */
    public LocalTime nightBegins() {
        return LocalTime.ofSecondOfDay(value(RegenerationSetting.NIGHT_BEGINS_SECONDS));
    }

    /**
     * Returns how long the night's window is open.
     *
     * @return one minute to one day
     */
    public Duration nightLasts() {
        return Duration.ofSeconds(value(RegenerationSetting.NIGHT_LASTS_SECONDS));
    }

    /** Settings are equal if all their numbers are. */
    @Override
    public boolean equals(@Nullable Object object) {
        if (!(object instanceof SoftenerSettings other)) {
            return false;
        }
        boolean same = true;
        for (RegenerationSetting setting : RegenerationSetting.values()) {
            same &= value(setting) == other.value(setting);
        }
        return same;
    }

    @Override
    public int hashCode() {
        return Long.hashCode(numbers.fingerprint());
    }

    /** Returns all numbers by their names. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("softener settings");
        String separator = ": ";
        for (RegenerationSetting setting : RegenerationSetting.values()) {
            text.append(separator).append(setting).append(' ').append(value(setting));
            separator = ", ";
        }
        return text.toString();
    }
}
