package evenwater.chemistry.control;

import evenwater.chemistry.kernel.ValveKernel;
import evenwater.chemistry.kernel.ValveSave;
import evenwater.chemistry.kernel.ValveSetting;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** What comes into a {@link SoftenerState}, checked, with the reason where it is refused. */
final class Checked {

    private static final ZoneOffset LOCAL = ZoneOffset.UTC; // wall time without a zone, counted as if it were UTC

    private Checked() {}

    static long reading(SoftenerSettings settings, long reading) {
        long bits = settings.value(ValveSetting.COUNTER_BITS);
        if (reading < 0 || reading >= 1L << bits) {
            throw new IllegalArgumentException("reading must be from 0 to " + ((1L << bits) - 1) + " of a counter of "
                    + bits + " bits, but was " + reading);
        }
        return reading;
    }

    static long capacity(SoftenerSettings settings, Quantity<Volume> capacity) {
        long nanolitres = Nanolitres.of(capacity);
        long above = Math.max(0, settings.value(ValveSetting.AT_ONCE_NANOLITRES));
        if (nanolitres <= above || nanolitres > ValveKernel.LARGEST_CAPACITY) {
            String reason = above == 0 ? "" : ", from which one is due at once,";
            throw new IllegalArgumentException("capacity must be above " + Nanolitres.exactly(above) + reason
                    + " and at most " + Nanolitres.exactly(ValveKernel.LARGEST_CAPACITY) + ", but was "
                    + capacity);
        }
        return nanolitres;
    }

    static long clock(LocalDateTime at) {
        long seconds = Objects.requireNonNull(at, "at").toEpochSecond(LOCAL);
        if (seconds < 0 || seconds > ValveKernel.LAST_CLOCK) {
            throw new IllegalArgumentException("time must be in the years 1970 to 9999, but was " + at);
        }
        return seconds;
    }

    static LocalDateTime dateTime(long clock) {
        return LocalDateTime.ofEpochSecond(clock, 0, LOCAL);
    }

    static void save(int status, int length) {
        if (status != ValveSave.OK) {
            throw new UnusableSaveException("saved state " + problem(status, length));
        }
    }

    private static String problem(int status, int length) {
        return switch (status) {
            case ValveSave.WRONG_LENGTH -> "must have " + ValveSave.LENGTH + " numbers, but had " + length;
            case ValveSave.OTHER_VERSION -> "is of another version or kind";
            case ValveSave.TORN -> "is torn or damaged: its check does not fit its numbers";
            case ValveSave.OTHER_SETTINGS ->
                "was made under other settings: restore it under new settings if that is meant";
            default -> "has a number out of its range";
        };
    }
}
