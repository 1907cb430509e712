package evenwater.chemistry.control;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A {@link DosingPump} in numbers and texts, for JSON and the like.
 *
 * <p>It is made by {@link DosingPump#toPlain} or by a library for JSON, carries whatever came, also nothing where something was missing, and
 * {@link DosingPump#from(PlainDosingPump)} checks it. No number is above 2⁵³, so none loses digits in a reader that makes doubles of them. Immutable and
 * thread-safe.
 *
 * @param version of this form, {@link #VERSION}
 * @param compound in the stock, by its name in the table of {@link evenwater.chemistry.substance.Compound}
 * @param strength of the compound as it was weighed; mass fraction, no unit, above 0 to 1
 * @param concentration of the stock, number and unit as stated, such as {@code 100 g/L}
 * @param timed whether a step is a millisecond
 * @param numbers whole numbers by names that say their unit: {@code picolitresPerStep}, {@code dailyCapInPicolitres}, {@code dailyDoseInPicolitres},
 *     {@code picolitresPerLitreOfAddedWater}, {@code portionsToMakeUp} (0 to skip what was missed), {@code graceInSeconds},
 *     {@code reservoirInPicolitres}, {@code unusableInPicolitres}, {@code tubeInPicolitres}, {@code warnBelowDays}, {@code driftInThousandths},
 *     {@code confirmWithinInSeconds}; all of them
 * @param portionsInSecondsAfterMidnight times of day of the portions, rising; at most 24; empty without a schedule
 */
public record PlainDosingPump(
        @Nullable Integer version,
        @Nullable String compound,
        @Nullable Double strength,
        @Nullable String concentration,
        @Nullable Boolean timed,
        @Nullable Map<String, @Nullable Number> numbers,
        @Nullable List<@Nullable Number> portionsInSecondsAfterMidnight) {

    /** The version of the form that this library writes, and the newest that it reads. */
    public static final int VERSION = 1;

    /**
     * Takes what came; nothing is checked here.
     *
     * @param version see the record, as the others
     * @param compound name
     * @param strength no unit
     * @param concentration number and unit
     * @param timed by milliseconds
     * @param numbers copied
     * @param portionsInSecondsAfterMidnight in s; copied
     */
    public PlainDosingPump {
        numbers = numbers == null ? null : Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        portionsInSecondsAfterMidnight = portionsInSecondsAfterMidnight == null
                ? null
                : Collections.unmodifiableList(new ArrayList<>(portionsInSecondsAfterMidnight));
    }
}
