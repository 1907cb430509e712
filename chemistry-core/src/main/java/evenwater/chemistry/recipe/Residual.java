package evenwater.chemistry.recipe;

import evenwater.chemistry.water.Water;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a target came out.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <T> kind of the value
 */
public final class Residual<T> {

    /** A target that is missed by less of its scale is met: what rounding leaves. */
    static final double TOLERANCE = 1e-8;

    /** The same where linear programmes approach a curve. */
    static final double TOLERANCE_OF_CURVES = 1e-6;

    private final Goal<T> goal;
    private final @Nullable T reached;
    private final double deviation;

    private Residual(Goal<T> goal, @Nullable T reached, double deviation) {
        this.goal = goal;
        this.reached = reached;
        this.deviation = deviation;
    }

    static <T> Residual<T> of(Goal<T> goal, Setting setting, Water water) {
        return new Residual<>(
                goal,
                goal.reached().apply(water).orElse(null),
                (goal.ofWater().applyAsDouble(water) - goal.wanted()) / goal.scale(setting.reference()));
    }

    /**
     * Returns what the target speaks of.
     *
     * @return in words, such as "hardness" or "Na⁺"
     */
    public String quantity() {
        return goal.quantity();
    }

    /**
     * Returns the target.
     *
     * @return as it was stated
     */
    public Target<T> target() {
        return goal.target();
    }

    /**
     * Returns what the water has.
     *
     * @return in the unit of the target; empty for a ratio in a water that lacks one of its ions
     */
    public Optional<T> reached() {
        return Optional.ofNullable(reached);
    }

    /**
     * Returns by how much the water is above the value of the target, whatever its aim.
     *
     * @return relative to the value, or where that is 0 and for ratios to the reference concentration (see {@link Recipe}); no unit; negative if
     *     below
     */
    public double relativeDeviation() {
        return deviation;
    }

    /**
     * Returns by how much the target is missed.
     *
     * @return as {@link #relativeDeviation}, without sign, and 0 on the side that the aim allows
     */
    public double relativeMiss() {
        Aim aim = goal.target().aim();
        return Math.max(
                aim.limitsAbove() ? Math.max(0, deviation) : 0, aim.limitsBelow() ? Math.max(0, -deviation) : 0);
    }

    /**
     * Tells whether the target is met.
     *
     * @return true if it is missed by no more than rounding, 1e-8, for a conductivity 1e-6
     */
    public boolean isMet() {
        return relativeMiss() <= (goal.isLinear() ? TOLERANCE : TOLERANCE_OF_CURVES);
    }

    /** Returns the target and what was reached, such as {@code hardness exactly 6 °dH: met} or {@code Na⁺ near 0 mmol/L: +12 %}. */
    @Override
    public String toString() {
        return goal + ": " + (isMet() ? "met" : String.format(Locale.ROOT, "%+.3g %%", 100 * deviation));
    }
}
