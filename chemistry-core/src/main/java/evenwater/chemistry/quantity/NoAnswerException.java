package evenwater.chemistry.quantity;

import java.util.List;
import javax.measure.Quantity;

/**
 * Thrown when well-formed arguments ask for something that does not exist, such as a blend that is harder than both its parts.
 *
 * <p>The message says why in words; the quantities that show it can be read for a message in another language.
 */
public final class NoAnswerException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** Quantities are not serializable by their interface; a deserialized exception keeps its message only. */
    private final transient List<Quantity<?>> numbers;

    /**
     * Creates the exception.
     *
     * @param message why there is no answer, with the numbers and their units, without a final dot
     * @param numbers the quantities that the message speaks of, in its order
     */
    public NoAnswerException(String message, Quantity<?>... numbers) {
        super(message);
        this.numbers = List.of(numbers);
    }

    /**
     * Returns the quantities that show why there is no answer.
     *
     * @return the quantities in the order of the message; possibly empty
     */
    public List<Quantity<?>> numbers() {
        return numbers == null ? List.of() : numbers;
    }
}
