package evenwater.chemistry.control;

import java.util.Objects;

/**
 * What came of an event: the next state of a pump, and what it is to do.
 *
 * <p>If the status is {@link PumpStatus#RUN}, save the state first; a run that is not saved before a loss of power is forgotten, and with it its
 * place under the cap. {@link DosingPumpState#stepsToRun} says how far to run.
 *
 * @param status what to do, or why nothing
 * @param state the next state
 */
public record PumpAnswer(PumpStatus status, DosingPumpState state) {

    /**
     * Checks the parts.
     *
     * @param status what to do, or why nothing
     * @param state the next state
     */
    public PumpAnswer {
        Objects.requireNonNull(status, "status");
        Objects.requireNonNull(state, "state");
    }

    /**
     * Returns the status in words, with its numbers.
     *
     * @return a sentence without a final dot
     */
    public String words() {
        return PumpWords.of(status, state);
    }
}
