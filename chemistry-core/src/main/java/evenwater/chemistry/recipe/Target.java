package evenwater.chemistry.recipe;

import java.util.Objects;

/**
 * A value that the water shall have: exactly, at most, at least, or as near as possible.
 *
 * <p>A range is two targets, at least and at most. Immutable and thread-safe if the value is.
 *
 * @param aim what is asked for
 * @param value the value, such as a hardness of 6 °dH
 * @param weight what missing it counts among the {@linkplain Aim#NEAR near} targets; no unit, above 0 and finite; 1 for the other aims
 * @param <T> kind of the value
 */
public record Target<T>(Aim aim, T value, double weight) {

    /**
     * Checks the parts.
     *
     * @param aim what is asked for
     * @param value the value
     * @param weight what missing it counts
     * @throws IllegalArgumentException if the weight is out of range
     */
    public Target {
        Objects.requireNonNull(aim, "aim");
        Objects.requireNonNull(value, "value");
        if (!(weight > 0 && weight <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "weight of a target near " + value + " must be above 0 and finite, but was " + weight);
        }
        if (aim != Aim.NEAR && weight != 1) {
            throw new IllegalArgumentException(
                    "target of " + aim + " " + value + " must be met and has no weight, but was given " + weight);
        }
    }

    /**
     * Returns a target that must be met.
     *
     * @param value what the water shall have
     * @param <T> kind of the value
     * @return the target
     */
    public static <T> Target<T> exactly(T value) {
        return new Target<>(Aim.EXACTLY, value, 1);
    }

    /**
     * Returns a limit from above that must be kept.
     *
     * @param value the most that the water may have
     * @param <T> kind of the value
     * @return the target
     */
    public static <T> Target<T> atMost(T value) {
        return new Target<>(Aim.AT_MOST, value, 1);
    }

    /**
     * Returns a limit from below that must be kept.
     *
     * @param value the least that the water shall have
     * @param <T> kind of the value
     * @return the target
     */
    public static <T> Target<T> atLeast(T value) {
        return new Target<>(Aim.AT_LEAST, value, 1);
    }

    /**
     * Returns a wish of weight 1.
     *
     * @param value what the water shall come near to
     * @param <T> kind of the value
     * @return the target
     */
    public static <T> Target<T> near(T value) {
        return near(value, 1);
    }

    /**
     * Returns a wish.
     *
     * @param value what the water shall come near to
     * @param weight what missing it counts, relative to the other wishes; no unit, above 0
     * @param <T> kind of the value
     * @return the target
     * @throws IllegalArgumentException if the weight is out of range
     */
    public static <T> Target<T> near(T value, double weight) {
        return new Target<>(Aim.NEAR, value, weight);
    }

    <S> Target<S> of(S sameValue) {
        return new Target<>(aim, sameValue, weight);
    }

    /** Returns the target in words, such as {@code at most 10 mg/L Cl⁻} or {@code near 6 °dH (weight 2)}. */
    @Override
    public String toString() {
        return aim + " " + value + (weight == 1 ? "" : " (weight " + weight + ")");
    }
}
