package evenwater.chemistry.aquarium;

import static evenwater.chemistry.quantity.WaterUnits.LITRE;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.jspecify.annotations.Nullable;

/**
 * The volume of a tank by name, and the water that is in it.
 *
 * <p>Glass, gravel, decor and the air above the water make the <em>net</em> volume smaller than the <em>nominal</em> one that a tank is sold by.
 * A dose reckoned for the nominal volume is too strong by {@link #overdose}, a fifth as a rule. Measuring the net volume is better than any
 * estimate: count the litres when the tank is filled. Equal if both volumes are stated alike. Immutable and thread-safe.
 */
public final class TankVolume {

    /** Nominal over net; common practice, no source. */
    private static final double USUAL_RATIO = 1.2;

    /** Of a bed of gravel, what is stone and not water between the stones; common practice, no source. */
    private static final double STONE_IN_GRAVEL = 0.6;

    private static final double MOST_LITRES = 1e9;
    private static final double CUBIC_METRE_IN_LITRES = 1000;

    private final WaterQuantity<Volume> nominal;
    private final WaterQuantity<Volume> net;

    private TankVolume(WaterQuantity<Volume> nominal, WaterQuantity<Volume> net) {
        this.nominal = nominal;
        this.net = net;
    }

    /**
     * Returns a tank of which both volumes are known.
     *
     * @param nominal as it is sold; at least the net one, at most 10⁹ L
     * @param net water in it; above 0 L
     * @return the volumes
     * @throws IllegalArgumentException if one is out of range
     */
    public static TankVolume of(Quantity<Volume> nominal, Quantity<Volume> net) {
        WaterQuantity<Volume> stated = positive(nominal, "nominal");
        WaterQuantity<Volume> water = positive(net, "net");
        if (water.in(LITRE) > stated.in(LITRE) * (1 + 1e-12)) {
            throw new IllegalArgumentException(
                    "net volume of a tank must not be above the nominal " + stated + ", but was " + water);
        }
        return new TankVolume(stated, water);
    }

    /**
     * Returns a tank of which the water was measured, and doses are reckoned for that.
     *
     * @param net water in it; above 0 L, at most 10⁹ L
     * @return the volumes; the nominal one is the same
     * @throws IllegalArgumentException if it is out of range
     */
    public static TankVolume measured(Quantity<Volume> net) {
        WaterQuantity<Volume> water = positive(net, "net");
        return new TankVolume(water, water);
    }

    /**
     * Returns a tank of which the nominal volume alone is known: net = nominal / 1.2 (common practice, no source; measuring is better).
     *
     * @param nominal as it is sold; above 0 L, at most 10⁹ L
     * @return the volumes
     * @throws IllegalArgumentException if it is out of range
     */
    public static TankVolume estimatedFrom(Quantity<Volume> nominal) {
        WaterQuantity<Volume> stated = positive(nominal, "nominal");
        return new TankVolume(stated, WaterUnits.volume(stated.divide(USUAL_RATIO)));
    }

    /**
     * Returns a box of water by its inside dimensions, with nothing in it yet; see {@link #without} and {@link #withoutGravel}.
     *
     * @param length inside; above 0
     * @param width inside; above 0
     * @param waterHeight from the bottom to the surface; above 0
     * @return the volumes; both are length · width · height
     * @throws IllegalArgumentException if one is not positive, or the volume is above 10⁹ L
     */
    public static TankVolume inside(Quantity<Length> length, Quantity<Length> width, Quantity<Length> waterHeight) {
        double cubicMetres = metres(length, "length") * metres(width, "width") * metres(waterHeight, "water height");
        return measured(WaterUnits.volume(cubicMetres * CUBIC_METRE_IN_LITRES, LITRE));
    }

    private static double metres(Quantity<Length> length, String what) {
        WaterQuantity<Length> stated = WaterUnits.length(Objects.requireNonNull(length, what));
        if (!(stated.in(WaterUnits.METRE) > 0)) {
            throw new IllegalArgumentException(what + " of a tank must be positive, but was " + stated);
        }
        return stated.in(WaterUnits.METRE);
    }

    private static WaterQuantity<Volume> positive(Quantity<Volume> volume, String which) {
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(volume, which));
        double litres = stated.in(LITRE);
        if (!(litres > 0 && litres <= MOST_LITRES)) {
            throw new IllegalArgumentException(
                    which + " volume of a tank must be above 0 L, at most 1000000000 L, but was " + stated);
        }
        return stated;
    }

    /**
     * Returns the tank with less water in it.
     *
     * @param displaced volume of decor, wood or rock under water; 0 or more, below the net volume
     * @return the volumes, the nominal one as before
     * @throws IllegalArgumentException if it is out of range
     */
    public TankVolume without(Quantity<Volume> displaced) {
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(displaced, "displaced"));
        return less(stated, stated.in(LITRE), "displaced volume");
    }

    /**
     * Returns the tank with gravel in it, which displaces 0.6 of its bulk (a bed of grains is some 0.4 pores; common practice, no source).
     *
     * @param bulk volume of the gravel with its pores; 0 or more; what it displaces is below the net volume
     * @return the volumes, the nominal one as before
     * @throws IllegalArgumentException if it is out of range
     */
    public TankVolume withoutGravel(Quantity<Volume> bulk) {
        WaterQuantity<Volume> stated = WaterUnits.volume(Objects.requireNonNull(bulk, "bulk"));
        return less(stated, STONE_IN_GRAVEL * stated.in(LITRE), "stone of the gravel");
    }

    private TankVolume less(WaterQuantity<Volume> stated, double litres, String what) {
        double left = net.in(LITRE) - litres;
        if (!(litres >= 0 && left > 0)) {
            throw new IllegalArgumentException(
                    what + " must be from 0 L to below the " + net + " of the tank, but was of " + stated);
        }
        return new TankVolume(nominal, WaterUnits.volume(left, LITRE));
    }

    /**
     * Returns the volume that the tank goes by.
     *
     * @return as stated
     */
    public WaterQuantity<Volume> nominal() {
        return nominal;
    }

    /**
     * Returns the water in the tank, which doses are to be reckoned for.
     *
     * @return as stated, or in litres
     */
    public WaterQuantity<Volume> net() {
        return net;
    }

    /**
     * Returns by how much a dose for the nominal volume is too strong: {@code nominal / net − 1}.
     *
     * @return share of the right dose; no unit, 0 or more
     */
    public double overdose() {
        return nominal.in(LITRE) / net.in(LITRE) - 1;
    }

    double netInLitres() {
        return net.in(LITRE);
    }

    @Override
    public boolean equals(@Nullable Object that) {
        return that instanceof TankVolume v && v.nominal.equals(nominal) && v.net.equals(net);
    }

    @Override
    public int hashCode() {
        return 31 * nominal.hashCode() + net.hashCode();
    }

    /** Returns both volumes, all digits. */
    @Override
    public String toString() {
        return net + " of water in a tank of " + nominal;
    }
}
