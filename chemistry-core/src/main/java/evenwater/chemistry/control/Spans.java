package evenwater.chemistry.control;

import java.time.Duration;

/** Spans of time in words. */
final class Spans {

    private static final long MINUTE = 60;
    private static final long HOUR = 60 * MINUTE;
    private static final long DAY = 24 * HOUR;

    private Spans() {}

    /** In days and hours, hours and minutes, or seconds; the small part is left out where it is zero. */
    static String text(long seconds) {
        if (seconds >= DAY) {
            return two(seconds / DAY, "d", seconds % DAY / HOUR, "h");
        }
        if (seconds >= HOUR) {
            return two(seconds / HOUR, "h", seconds % HOUR / MINUTE, "min");
        }
        return seconds >= MINUTE
                ? two(seconds / MINUTE, "min", seconds % MINUTE, "s")
                : seconds + " s"; // also of what an error shows, below zero
    }

    private static String two(long large, String unit, long small, String smallUnit) {
        return large + " " + unit + (small == 0 ? "" : " " + small + " " + smallUnit);
    }

    /** In seconds, for messages of errors. */
    static String exactly(Duration duration) {
        return duration.toSeconds() + " s";
    }
}
