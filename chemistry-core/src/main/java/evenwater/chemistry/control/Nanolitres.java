package evenwater.chemistry.control;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;

/** Between volumes and the whole nanolitres of the kernel. */
final class Nanolitres {

    static final double PER_LITRE = 1e9;

    private Nanolitres() {}

    /** Rounded to the nearest; a volume beyond a long becomes the largest, which every limit refuses. */
    static long of(Quantity<Volume> volume) {
        return Math.round(WaterUnits.volume(volume).in(WaterUnits.LITRE) * PER_LITRE);
    }

    static WaterQuantity<Volume> volume(long nanolitres) {
        return volume((double) nanolitres); // exact to nine million litres, then to sixteen digits
    }

    static WaterQuantity<Volume> volume(double nanolitres) {
        return WaterUnits.volume(nanolitres / PER_LITRE, WaterUnits.LITRE);
    }

    static String text(long nanolitres) {
        return text((double) nanolitres);
    }

    /** For words: to four digits. */
    static String text(double nanolitres) {
        return volume(nanolitres).toText(Locale.ROOT, 4);
    }

    /** For messages of errors: all digits. */
    static String exactly(long nanolitres) {
        return volume(nanolitres).toString();
    }
}
