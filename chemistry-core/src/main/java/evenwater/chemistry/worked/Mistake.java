package evenwater.chemistry.worked;

import java.util.Objects;

/**
 * A usual wrong answer, with its arithmetic and the reason why it is wrong.
 *
 * @param name what people do, such as {@code mole for mole}
 * @param step the wrong arithmetic and its result
 * @param right the right number, in the unit of the wrong one
 * @param reason why it is wrong; a sentence without its dot
 */
public record Mistake(String name, Step step, double right, String reason) {

    /**
     * Checks that everything is there.
     *
     * @param name see the record
     * @param step see the record
     * @param right see the record
     * @param reason see the record
     */
    public Mistake {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(step, "step");
        Objects.requireNonNull(reason, "reason");
    }

    static Mistake of(String name, Expression wrong, double right, String unit, String reason) {
        return new Mistake(name, Step.wrong(name, wrong, unit), right, reason);
    }

    /** ppm for ppm is right for CaCO₃ itself, and anything is right of nothing; nobody answers what is no number or of the other sign. */
    boolean isPlausible() {
        return Double.isFinite(step.result())
                && step.result() * Math.signum(right) >= 0
                && Math.abs(step.result() - right) > 5e-3 * Math.abs(right);
    }

    /**
     * Returns how far off the wrong answer is.
     *
     * @return wrong over right; no unit; infinite or NaN where the right answer is 0
     */
    public double ratio() {
        return step.result() / right;
    }
}
