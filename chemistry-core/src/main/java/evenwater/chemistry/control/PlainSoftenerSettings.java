package evenwater.chemistry.control;

import evenwater.chemistry.kernel.ValveSetting;
import evenwater.chemistry.kernel.ValveSettings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * {@link SoftenerSettings} in whole numbers, for JSON and the like.
 *
 * <p>It is made by {@link SoftenerSettings#toPlain} or by a library for JSON, carries whatever came, also nothing where something was missing, and
 * {@link SoftenerSettings#from(PlainSoftenerSettings)} checks it. No number is above 2⁵³, so none loses digits in a reader that makes doubles of them.
 * Immutable and thread-safe.
 *
 * @param version of this form, {@link #VERSION}
 * @param numbers by the names of {@link ValveSetting}, which say unit, range and meaning; all of them
 */
public record PlainSoftenerSettings(
        @Nullable Integer version, @Nullable Map<String, @Nullable Number> numbers) {

    /** The version of the form that this library writes, and the newest that it reads. */
    public static final int VERSION = 1;

    private static final String WHAT = "plain settings of a softener";

    /**
     * Takes what came; nothing is checked here.
     *
     * @param version see the record, as the other
     * @param numbers copied
     */
    public PlainSoftenerSettings {
        numbers = numbers == null ? null : Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
    }

    static PlainSoftenerSettings of(ValveSettings settings) {
        Map<String, @Nullable Number> numbers = new LinkedHashMap<>();
        for (ValveSetting setting : ValveSetting.values()) {
            numbers.put(setting.name(), settings.value(setting));
        }
        return new PlainSoftenerSettings(VERSION, numbers);
    }

    SoftenerSettings read() {
        PlainNumbers.version(WHAT, version, VERSION);
        PlainNumbers read = new PlainNumbers(WHAT, numbers);
        ValveSettings settings = new ValveSettings();
        List<String> names = new ArrayList<>();
        for (ValveSetting setting : ValveSetting.values()) {
            names.add(setting.name());
            settings.put(setting, read.whole(setting.name(), setting.least(), setting.most()));
        }
        read.refuseOthers(names);
        if (settings.value(ValveSetting.AT_ONCE_NANOLITRES) >= settings.value(ValveSetting.CAPACITY_NANOLITRES)) {
            throw new IllegalArgumentException(
                    WHAT + ": AT_ONCE_NANOLITRES must be below CAPACITY_NANOLITRES, but were "
                            + settings.value(ValveSetting.AT_ONCE_NANOLITRES) + " and "
                            + settings.value(ValveSetting.CAPACITY_NANOLITRES));
        }
        long age = settings.value(ValveSetting.LONGEST_AGE_SECONDS);
        if (age > 0 && age < 86_400) {
            throw new IllegalArgumentException(
                    WHAT + ": LONGEST_AGE_SECONDS must be 0, for none, or 86400 or more, but was " + age);
        }
        return new SoftenerSettings(settings);
    }
}
