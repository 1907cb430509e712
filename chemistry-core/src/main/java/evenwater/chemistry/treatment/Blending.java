package evenwater.chemistry.treatment;

import static evenwater.chemistry.quantity.Hardness.MILLIMOLE_PER_LITRE;

import evenwater.chemistry.kernel.SofteningKernel;
import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import javax.measure.Quantity;

/**
 * Blending with another water, by a fixed share or for a hardness.
 *
 * <p>Immutable and thread-safe.
 */
public final class Blending implements Treatment {

    /** Hardnesses that differ by less than this share of themselves are the same but for rounding. */
    private static final double ROUNDING = 1e-12;

    /** The other water for a source. */
    private final UnaryOperator<Water> other;

    private final ToDoubleFunction<Water> share;
    private final boolean wantsHardness;
    private final String name;

    private Blending(UnaryOperator<Water> other, ToDoubleFunction<Water> share, boolean wantsHardness, String name) {
        this.other = other;
        this.share = share;
        this.wantsHardness = wantsHardness;
        this.name = name;
    }

    /**
     * Returns a blend with a fixed share of another water.
     *
     * <p>The other water is one and the same whatever is treated. To blend raw water back behind a treatment, use {@link Bypass}:
     * then both follow the source, and ranges hold.
     *
     * @param other the other water, such as rain
     * @param shareOfOther its volume in the volume of the blend; no unit, 0 to 1
     * @return the treatment
     * @throws IllegalArgumentException if the share is out of range
     */
    public static Blending with(Water other, double shareOfOther) {
        Objects.requireNonNull(other, "other");
        return new Blending(
                source -> other,
                source -> shareOfOther,
                false,
                "blend with " + percent(shareOfOther, "the other") + " of another water");
    }

    /**
     * Returns a blend with as much of another water as a hardness takes.
     *
     * @param hardness calcium and magnesium of the blend; between those of the two waters
     * @param other the other water
     * @return the treatment
     * @throws IllegalArgumentException if the hardness is negative
     */
    public static Blending reaching(Quantity<Hardness> hardness, Water other) {
        Objects.requireNonNull(other, "other");
        Hardness wanted = wanted(hardness);
        return new Blending(
                source -> other,
                source -> shareFor(wanted, source, other),
                true,
                "blend with another water for " + wanted);
    }

    /**
     * Returns a blend with pure water of the same temperature.
     *
     * @param shareOfPure volume of the pure water in the volume of the blend; no unit, 0 to 1
     * @return the treatment
     * @throws IllegalArgumentException if the share is out of range
     */
    public static Blending withPureWater(double shareOfPure) {
        Water pure = Water.pure();
        return new Blending(
                source -> pure.with(source.temperature()),
                source -> shareOfPure,
                false,
                "dilution with " + percent(shareOfPure, "the pure") + " of pure water");
    }

    static Hardness wanted(Quantity<Hardness> hardness) {
        Hardness wanted = Hardness.from(hardness);
        if (wanted.getValue() < 0) {
            throw new IllegalArgumentException("wanted hardness must not be negative, but was " + wanted);
        }
        return wanted;
    }

    static String percent(double share, String which) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("share of " + which + " water must be from 0 to 1, but was " + share);
        }
        return ReverseOsmosis.percent(share);
    }

    /** The share of the other water that makes the wanted hardness. */
    static double shareFor(Hardness wanted, Water source, Water other) {
        double own = source.hardness().in(MILLIMOLE_PER_LITRE);
        double others = other.hardness().in(MILLIMOLE_PER_LITRE);
        double target = wanted.in(MILLIMOLE_PER_LITRE);
        if (own == target) {
            return 0;
        }
        if (target < Math.min(own, others) * (1 - ROUNDING) || target > Math.max(own, others) * (1 + ROUNDING)) {
            Hardness a = source.hardness().to(wanted.getUnit());
            Hardness b = other.hardness().to(wanted.getUnit());
            throw new NoAnswerException(
                    "wanted hardness " + wanted + " is not between the " + Softener.text(a) + " and " + Softener.text(b)
                            + " of the two waters",
                    wanted,
                    a,
                    b);
        }
        double share = SofteningKernel.bypassShare(others, own, target);
        return Math.max(0, Math.min(1, share)); // rounding must not lead out of the range
    }

    /**
     * Returns the share of the other water in the blend.
     *
     * @param source the water that is blended
     * @return volume of the other in the volume of the blend; no unit, 0 to 1
     * @throws NoAnswerException if no share reaches the wanted hardness
     */
    public double shareOfOther(Water source) {
        Objects.requireNonNull(source, "source");
        return share.applyAsDouble(source);
    }

    /**
     * Returns the water that is blended in.
     *
     * @param source the water that is blended
     * @return the other water; pure water has the temperature of the source
     */
    public Water other(Water source) {
        return other.apply(Objects.requireNonNull(source, "source"));
    }

    /**
     * Tells whether the share follows from a wanted hardness.
     *
     * @return false if the share is fixed
     */
    public boolean wantsHardness() {
        return wantsHardness;
    }

    @Override
    public Water treat(Water source) {
        Objects.requireNonNull(source, "source");
        return source.mixedWith(other.apply(source), shareOfOther(source));
    }

    @Override
    public String name() {
        return name;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
