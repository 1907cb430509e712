package evenwater.chemistry.control;

import evenwater.chemistry.kernel.PumpMemory;
import evenwater.chemistry.kernel.PumpSettings;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** Between quantities and the whole numbers of the pump's kernel. */
final class PumpUnits {

    private static final double PER_LITRE = 1e12;
    private static final double PER_MILLILITRE = 1e9;

    private PumpUnits() {}

    /** Rounds to whole picolitres; refuses what is out of a range, the ends belonging to it. */
    static long picolitres(String what, Quantity<Volume> volume, long least, long most) {
        WaterQuantity<Volume> stated = WaterUnits.volume(volume);
        double picolitres = Math.rint(stated.in(WaterUnits.LITRE) * PER_LITRE);
        if (!(picolitres >= least && picolitres <= most)) {
            throw new IllegalArgumentException(what + " must be " + range(least, most) + ", but was " + stated);
        }
        return (long) picolitres;
    }

    static long dose(String what, Quantity<Volume> volume) {
        return picolitres(what, volume, 1, PumpSettings.LARGEST_CAP);
    }

    /** Up to 1000 L. */
    static void checkSteps(long steps, long picolitresPerStep) {
        long most = PumpSettings.LARGEST_RESERVOIR / picolitresPerStep;
        if (steps < 0 || steps > most) {
            throw new IllegalArgumentException("steps of a run must be from 0 to " + most + ", but were " + steps);
        }
    }

    static long run(long run) {
        if (run < 1) {
            throw new IllegalArgumentException("number of a run must be 1 or more, but was " + run);
        }
        return run;
    }

    static long microlitres(String what, Quantity<Volume> volume) {
        WaterQuantity<Volume> stated = WaterUnits.volume(volume);
        double microlitres = Math.rint(stated.in(WaterUnits.LITRE) * 1e6);
        if (!(microlitres >= 1 && microlitres <= 1e10)) {
            throw new IllegalArgumentException(what + " must be from 1 µL to 10000 L, but was " + stated);
        }
        return (long) microlitres;
    }

    private static String range(long least, long most) {
        return least == 1 ? "above 0 and at most " + text(most) : "from " + text(least) + " to " + text(most);
    }

    static WaterQuantity<Volume> volume(long picolitres) {
        return WaterUnits.volume(picolitres / PER_MILLILITRE, WaterUnits.MILLILITRE);
    }

    static String text(long picolitres) {
        boolean large = picolitres >= 1e12;
        return WaterUnits.volume(
                        picolitres / (large ? PER_LITRE : PER_MILLILITRE),
                        large ? WaterUnits.LITRE : WaterUnits.MILLILITRE)
                .toText(Locale.ROOT, 6);
    }

    static long local(LocalDateTime now) {
        long seconds = Objects.requireNonNull(now, "now").toEpochSecond(ZoneOffset.UTC);
        if (seconds < 0 || seconds > PumpMemory.LATEST) {
            throw new IllegalArgumentException("local time must be from 1970 to 9999, but was " + now);
        }
        return seconds;
    }

    static long seconds(String what, Duration duration, long least, long most) {
        long seconds = Objects.requireNonNull(duration, what).toSeconds();
        if (seconds < least || seconds > most) {
            throw new IllegalArgumentException(what + " must be from " + Spans.text(least) + " to " + Spans.text(most)
                    + ", but was " + text(duration));
        }
        return seconds;
    }

    /** In seconds, to the last digit. */
    static String text(Duration duration) {
        BigDecimal seconds = BigDecimal.valueOf(duration.getSeconds()).add(BigDecimal.valueOf(duration.getNano(), 9));
        return seconds.stripTrailingZeros().toPlainString() + " s";
    }

    static long uptime(Duration uptime) {
        return seconds("uptime", uptime, 0, PumpMemory.LATEST);
    }
}
