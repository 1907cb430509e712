package evenwater.chemistry.control;

import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveSave;
import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveSettings;
import evenwater.chemistry.kernel.ValveState;
import evenwater.chemistry.quantity.WaterQuantity;
import java.time.Duration;
import java.time.LocalTime;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * What the owner of a metered softener decides: the meter, the capacity, the night's window, the limits.
 *
 * <p>What is not stated has the usual value of {@link ValveSetting}. Local plumbing codes may ask for a shorter longest age, for
 * hygiene, and for other hours.
 *
 * <p>Immutable and thread-safe.
 */
public final class SoftenerSettings {

    private final ValveSettings numbers;

    /** Takes a copy: the builder may go on. */
    SoftenerSettings(ValveSettings source) {
        numbers = new ValveSettings();
        for (ValveSetting setting : ValveSetting.values()) {
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

    /**
     * Reads the plain form that {@link #toPlain} writes.
     *
     * @param plain of {@link PlainSoftenerSettings#VERSION}
     * @return the settings, equal to those that were written
     * @throws IllegalArgumentException if a number is missing, unknown, not whole or out of range, or the version is newer; names it
     */
    public static SoftenerSettings from(PlainSoftenerSettings plain) {
        return Objects.requireNonNull(plain, "plain").read();
    }

    /**
     * Returns the settings in whole numbers, for JSON and the like.
     *
     * @return the plain form
     */
    public PlainSoftenerSettings toPlain() {
        return PlainSoftenerSettings.of(numbers);
    }

    ValveSettings numbers() {
        return numbers;
    }

    long value(ValveSetting setting) {
        return numbers.value(setting);
    }

    /**
     * Returns the volume of one pulse.
     *
     * @return to the nanolitre, in litres
     */
    public WaterQuantity<Volume> pulse() {
        return Nanolitres.volume(value(ValveSetting.PULSE_NANOLITRES));
    }

    /**
     * Returns what a full regeneration gives.
     *
     * @return to the nanolitre, in litres
     */
    public WaterQuantity<Volume> capacity() {
        return Nanolitres.volume(value(ValveSetting.CAPACITY_NANOLITRES));
    }

    /**
     * Returns when the night's window opens.
     *
     * @return local time
     */
    public LocalTime nightBegins() {
        return LocalTime.ofSecondOfDay(value(ValveSetting.NIGHT_BEGINS_SECONDS));
    }

    /**
     * Returns how long the night's window is open.
     *
     * @return one minute to one day
     */
    public Duration nightLasts() {
        return Duration.ofSeconds(value(ValveSetting.NIGHT_LASTS_SECONDS));
    }

    /**
     * Takes up a state that was saved under these settings. Tell it {@link SoftenerState#restarted} next.
     *
     * @param saved what {@link SoftenerState#save} gave
     * @return the state
     * @throws UnusableSaveException if the save is torn, damaged, of another version or kind, or made under other settings
     */
    public SoftenerState restore(long[] saved) {
        Objects.requireNonNull(saved, "saved");
        ValveState state = new ValveState();
        Checked.save(ValveSave.read(numbers, state, saved), saved.length);
        return new SoftenerState(this, state, ValveKernel.OK);
    }

    /**
     * Takes up a state that was saved under other settings of the same softener, which were changed on purpose: volumes stay, and the day is not
     * learned from. Tell it {@link SoftenerState#restarted} next.
     *
     * @param saved what {@link SoftenerState#save} gave
     * @return the state
     * @throws UnusableSaveException if the save is torn, damaged or of another version or kind, or its reading too large for the counter
     */
    public SoftenerState restoreUnderNewSettings(long[] saved) {
        Objects.requireNonNull(saved, "saved");
        ValveState state = new ValveState();
        Checked.save(ValveSave.readUnderNewSettings(numbers, state, saved), saved.length);
        return new SoftenerState(this, state, ValveKernel.OK);
    }

    /** Settings are equal if all their numbers are. */
    @Override
    public boolean equals(@Nullable Object object) {
        if (!(object instanceof SoftenerSettings other)) {
            return false;
        }
        boolean same = true;
        for (ValveSetting setting : ValveSetting.values()) {
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
        for (ValveSetting setting : ValveSetting.values()) {
            text.append(separator).append(setting).append(' ').append(value(setting));
            separator = ", ";
        }
        return text.toString();
    }
}
