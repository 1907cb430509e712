package evenwater.chemistry.uncertainty;

import evenwater.chemistry.quantity.WaterQuantity;
import java.util.Objects;

/**
 * One possible set of values of the inputs of a computation; the same input has the same value however often it is asked for.
 *
 * <p>Immutable and thread-safe.
 */
public final class Draw {

    private final Inputs inputs;
    private final double[] numbers;

    /** The array is not copied: nobody else keeps it. */
    Draw(Inputs inputs, double[] numbers) {
        this.inputs = inputs;
        this.numbers = numbers;
    }

    /**
     * Returns the value of an input in this draw.
     *
     * @param <Q> type of the value
     * @param input one of the inputs that were declared
     * @return the value in the unit of the input
     * @throws IllegalArgumentException if the input was not declared
     */
    public <Q extends WaterQuantity<?>> Q of(Uncertain<Q> input) {
        return input.unit().value(valueOf(input));
    }

    /**
     * Returns the value of an input in this draw as a plain number.
     *
     * @param input one of the inputs that were declared
     * @return the number in the unit of the input
     * @throws IllegalArgumentException if the input was not declared
     */
    public double valueOf(Uncertain<?> input) {
        return numbers[inputs.placeOf(Objects.requireNonNull(input, "input"))];
    }
}
