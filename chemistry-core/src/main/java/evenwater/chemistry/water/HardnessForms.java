package evenwater.chemistry.water;

import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.substance.Ion;
import java.util.Objects;

/**
 * The hardness of a water in its forms.
 *
 * <p>Carbonate hardness is meant in the strict sense, min(total hardness, alkalinity) in the same equivalents; what aquarists call
 * carbonate hardness or KH is the alkalinity itself and may exceed the hardness.
 *
 * @param counted which ions {@code total} counts
 * @param total total hardness in mmol/L
 * @param calcium hardness by calcium in mmol/L
 * @param magnesium hardness by magnesium in mmol/L
 * @param carbonate carbonate ("temporary") hardness in mmol/L: min(total, alkalinity), 0 where alkalinity is negative
 * @param nonCarbonate non-carbonate ("permanent") hardness in mmol/L: total − carbonate
 * @see "Standard Methods for the Examination of Water and Wastewater, 2340 A (from memory)"
 */
public record HardnessForms(
        HardnessCount counted,
        Hardness total,
        Hardness calcium,
        Hardness magnesium,
        Hardness carbonate,
        Hardness nonCarbonate) {

    /**
     * Checks that nothing is null.
     *
     * @param counted see the record
     * @param total see the record
     * @param calcium see the record
     * @param magnesium see the record
     * @param carbonate see the record
     * @param nonCarbonate see the record
     */
    public HardnessForms {
        Objects.requireNonNull(counted, "counted");
        Objects.requireNonNull(total, "total");
        Objects.requireNonNull(calcium, "calcium");
        Objects.requireNonNull(magnesium, "magnesium");
        Objects.requireNonNull(carbonate, "carbonate");
        Objects.requireNonNull(nonCarbonate, "nonCarbonate");
    }

    static HardnessForms of(Balance balance, HardnessCount counted) {
        double total = 0;
        for (Ion ion : counted.ions()) {
            total += balance.total(ion);
        }
        double carbonate = Math.max(0, Math.min(total, balance.alkalinity / 2));
        return new HardnessForms(
                counted,
                millimoles(total),
                millimoles(balance.total(Ion.CALCIUM)),
                millimoles(balance.total(Ion.MAGNESIUM)),
                millimoles(carbonate),
                millimoles(total - carbonate));
    }

    private static Hardness millimoles(double value) {
        return Hardness.of(value, MILLIMOLE_PER_LITRE);
    }
}
