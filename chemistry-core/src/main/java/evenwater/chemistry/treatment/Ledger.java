package evenwater.chemistry.treatment;

import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Objects;

/**
 * What every stage of a train did to a water.
 *
 * @param source the water before the first stage
 * @param stages the stages in the order of the flow
 */
public record Ledger(Water source, List<Stage> stages) {

    /**
     * Copies the list and checks that every stage starts where the one before it ends.
     *
     * @param source see the record
     * @param stages see the record
     */
    public Ledger {
        Objects.requireNonNull(source, "source");
        stages = List.copyOf(stages);
        Water before = source;
        for (Stage stage : stages) {
            if (!stage.before().equals(before)) {
                throw new IllegalArgumentException(
                        "stage '" + stage.name() + "' must start with the water behind the one before it");
            }
            before = stage.after();
        }
    }

    /**
     * Returns the water behind the last stage.
     *
     * @return the result; the source if there are no stages
     */
    public Water result() {
        return stages.isEmpty() ? source : stages.get(stages.size() - 1).after();
    }

    /**
     * Returns what went in and out over all stages.
     *
     * @return the difference of result and source
     */
    public Change change() {
        return Change.between(source, result());
    }

    /** Returns a few lines for the source and for every stage, rounded for people. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("source: ")
                .append(Stage.shown(source))
                .append("\n  which has: ")
                .append(WaterCondition.of(source));
        stages.forEach(stage -> text.append('\n').append(stage));
        return text.toString();
    }
}
