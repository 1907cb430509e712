package evenwater.chemistry.control;

import evenwater.chemistry.kernel.RegenerationKernel;
import evenwater.chemistry.kernel.RegenerationSave;
import evenwater.chemistry.kernel.RegenerationSetting;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Objects;

/** What comes into a {@link SoftenerState}, checked, with the reason where it is refused. */
final class Checked {

    private static final ZoneOffset LOCAL = ZoneOffset.UTC; // wall time without a zone, counted as if it were UTC

    private Checked() {}

    static long reading(SoftenerSettings settings, long reading) {
        long bits = settings.value(RegenerationSetting.COUNTER_BITS);
        if (reading < 0 || reading >= 1L << bits) {
            throw new IllegalArgumentException("reading must be from 0 to " + ((1L << bits) - 1) + " of a counter of "
                    + bits + " bits, but was " + reading);
        }
        return reading;
    }

    static long clock(LocalDateTime at) {
        long seconds = Objects.requireNonNull(at, "at").toEpochSecond(LOCAL);
        if (seconds < 0 || seconds > RegenerationKernel.LAST_CLOCK) {
            throw new IllegalArgumentException("time must be in the years 1970 to 9999, but was " + at);
        }
        return seconds;
    }

    static LocalDateTime dateTime(long clock) {
        return LocalDateTime.ofEpochSecond(clock, 0, LOCAL);
    }

    static void save(int status, int length) {
        if (status != RegenerationSave.OK) {
            throw new UnusableSaveException("saved state " + problem(status, length));
        }
    }

    private static String problem(int status, int length) {
        return switch (status) {
            case RegenerationSave.WRONG_LENGTH ->
                "must have " + RegenerationSave.LENGTH + " numbers, but had " + length;
            case RegenerationSave.UNKNOWN_VERSION ->
                "must be of version " + RegenerationSave.VERSION + ", but is of another or none";
            case RegenerationSave.TORN -> "is torn or damaged: its check does not fit its numbers";
            case RegenerationSave.OTHER_SETTINGS ->
                "was made under other settings: restore it under other settings if " + "that is meant";
            default -> "has a number out of its range";
        };
    }
}
