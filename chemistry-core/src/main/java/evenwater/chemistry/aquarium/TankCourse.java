package evenwater.chemistry.aquarium;

import evenwater.chemistry.water.Water;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * The path of a tank: each day, and just before and after each change.
 *
 * <p>Whatever moves linearly has its extremes among these moments; pH and conductivity nearly so. Immutable and thread-safe.
 */
public final class TankCourse {

    private final List<TankMoment> moments;

    TankCourse(List<TankMoment> moments) {
        this.moments = List.copyOf(moments);
    }

    /**
     * Returns the moments.
     *
     * @return in their order; at least the start
     */
    public List<TankMoment> moments() {
        return moments;
    }

    /**
     * Returns the moment at which something is least.
     *
     * @param view a figure of a water, such as {@code w -> w.hardness().in(Hardness.GERMAN_DEGREE)}
     * @return the first of those moments
     */
    public TankMoment least(ToDoubleFunction<Water> view) {
        Objects.requireNonNull(view, "view");
        return moments.stream()
                .min(Comparator.comparingDouble(moment -> view.applyAsDouble(moment.water())))
                .orElseThrow();
    }

    /**
     * Returns the moment at which something is greatest.
     *
     * @param view a figure of a water
     * @return the first of those moments
     */
    public TankMoment greatest(ToDoubleFunction<Water> view) {
        Objects.requireNonNull(view, "view");
        return least(water -> -view.applyAsDouble(water));
    }
}
