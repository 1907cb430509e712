package evenwater.chemistry.treatment;

import evenwater.chemistry.water.Change;
import evenwater.chemistry.water.Water;
import java.util.List;

/**
 * What every stage of a train did to a water.
 *
 * @param source the water before the first stage
 * @param stages the stages in the order of the flow
 */
public record Ledger(Water source, List<Stage> stages) {

    /**
     * Copies the list.
     *
     * @param source see the record
     * @param stages see the record
     */
    public Ledger {
        stages = List.copyOf(stages);
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
}
