package evenwater.chemistry.treatment;

import evenwater.chemistry.quantity.Hardness;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;

/**
 * Raw water that goes past a treatment and joins the treated water again, by a fixed share or for a hardness.
 *
 * <p>A softener has a bypass of its own; this one goes around anything, such as a membrane or a whole train. Immutable and thread-safe.
 */
public final class Bypass implements Treatment {

    private final Treatment around;
    private final ToDoubleFunction<Both> share;
    private final String name;

    /** The water before and behind the treatment. */
    private record Both(Water raw, Water treated) {}

    private Bypass(Treatment around, ToDoubleFunction<Both> share, String bypass) {
        this.around = Objects.requireNonNull(around, "treatment");
        this.share = share;
        this.name = around.name() + ", " + bypass;
    }

    /**
     * Returns a bypass of a fixed share.
     *
     * @param treatment what the raw water goes past
     * @param shareOfRaw volume of raw water in the volume of the blend; no unit, 0 to 1
     * @return the treatment with its bypass
     * @throws IllegalArgumentException if the share is out of range
     */
    public static Bypass around(Treatment treatment, double shareOfRaw) {
        Objects.requireNonNull(treatment, "treatment");
        String percent = Blending.percent(shareOfRaw, "the raw");
        return new Bypass(treatment, both -> shareOfRaw, "bypass of " + percent);
    }

    /**
     * Returns a bypass of as much as a hardness takes.
     *
     * @param treatment what the raw water goes past
     * @param hardness calcium and magnesium of the blend; between those of raw and treated water
     * @return the treatment with its bypass
     * @throws IllegalArgumentException if the hardness is negative
     */
    public static Bypass around(Treatment treatment, Quantity<Hardness> hardness) {
        Objects.requireNonNull(treatment, "treatment");
        Hardness wanted = Blending.wanted(hardness);
        return new Bypass(treatment, both -> Blending.shareFor(wanted, both.treated, both.raw), "bypass for " + wanted);
    }

    /**
     * Returns what the raw water goes past.
     *
     * @return the treatment without its bypass
     */
    public Treatment treatment() {
        return around;
    }

    /**
     * Returns the share of raw water in the blend.
     *
     * @param source raw water
     * @return volume of raw water in the volume of the blend; no unit, 0 to 1
     * @throws NoAnswerException if no share reaches the wanted hardness, or the treatment has no answer
     */
    public double shareOfRaw(Water source) {
        return share.applyAsDouble(both(source));
    }

    private Both both(Water source) {
        Objects.requireNonNull(source, "source");
        return new Both(source, around.treat(source));
    }

    @Override
    public Water treat(Water source) {
        Both both = both(source);
        return both.treated.mixedWith(both.raw, share.applyAsDouble(both));
    }

    @Override
    public String name() {
        return name;
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name;
    }
}
