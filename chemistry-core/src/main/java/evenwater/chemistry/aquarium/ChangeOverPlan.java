package evenwater.chemistry.aquarium;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The partial changes that lead a tank to another water, and what is left of the way. Immutable and thread-safe. */
public final class ChangeOverPlan {

    private final List<ChangeOverStep> steps;
    private final double remainingShare;
    private final TankReading reached;
    private final TankReading goal;

    ChangeOverPlan(List<ChangeOverStep> steps, double remainingShare, TankReading reached, TankReading goal) {
        this.steps = List.copyOf(steps);
        this.remainingShare = remainingShare;
        this.reached = reached;
        this.goal = goal;
    }

    /**
     * Returns the changes.
     *
     * @return in their order; none if the tank has the water already
     */
    public List<ChangeOverStep> steps() {
        return steps;
    }

    /**
     * Returns what is left of the difference between the two waters after the last change, the same share for everything dissolved.
     *
     * @return no unit; 0 to the tolerance
     */
    public double remainingShare() {
        return remainingShare;
    }

    /**
     * Returns the readings after the last change.
     *
     * @return those of the tank
     */
    public TankReading reached() {
        return reached;
    }

    /**
     * Returns the readings of the water that it leads to.
     *
     * @return those of the new water
     */
    public TankReading goal() {
        return goal;
    }

    /** Returns a line for each change and one for the rest, rounded for people. */
    @Override
    public String toString() {
        String lines = steps.stream().map(step -> step + "\n").collect(Collectors.joining());
        return lines + String.format(Locale.ROOT, "%.1f %% of the way left to %s", 100 * remainingShare, goal);
    }
}
