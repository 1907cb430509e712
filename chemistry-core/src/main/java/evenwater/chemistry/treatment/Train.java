package evenwater.chemistry.treatment;

import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Treatments one after the other, in the order in which the water meets them.
 *
 * <p>Immutable and thread-safe.
 */
public final class Train implements Treatment {

    private final List<Treatment> treatments;

    private Train(List<Treatment> treatments) {
        this.treatments = treatments;
    }

    /**
     * Returns a train.
     *
     * @param treatments in the order of the flow; none is a pipe
     * @return the train
     */
    public static Train of(Treatment... treatments) {
        return of(Arrays.asList(Objects.requireNonNull(treatments, "treatments")));
    }

    /**
     * Returns a train.
     *
     * @param treatments in the order of the flow
     * @return the train
     */
    public static Train of(List<Treatment> treatments) {
        Objects.requireNonNull(treatments, "treatments").forEach(one -> Objects.requireNonNull(one, "treatment"));
        return new Train(List.copyOf(treatments));
    }

    /**
     * Returns the treatments.
     *
     * @return in the order of the flow
     */
    public List<Treatment> treatments() {
        return treatments;
    }

    /**
     * Returns the train up to a stage, to ask for a result in the middle.
     *
     * @param stages how many treatments, 0 to all
     * @return a train of the first ones
     * @throws IllegalArgumentException if there are fewer
     */
    public Train first(int stages) {
        if (stages < 0 || stages > treatments.size()) {
            throw new IllegalArgumentException(
                    "stages must be from 0 to " + treatments.size() + ", but were " + stages);
        }
        return new Train(treatments.subList(0, stages));
    }

    /**
     * Runs a water through and keeps the books.
     *
     * @param source water before the first treatment
     * @return every stage with what went in and out
     * @throws NoAnswerException if a treatment cannot do what it was set to
     */
    public Ledger run(Water source) {
        List<Stage> stages = new ArrayList<>();
        Water water = Objects.requireNonNull(source, "source");
        for (Treatment treatment : treatments) {
            Water after = Objects.requireNonNull(treatment.treat(water), () -> "water behind " + treatment.name());
            stages.add(Stage.between(treatment.name(), water, after));
            water = after;
        }
        return new Ledger(source, stages);
    }

    @Override
    public Water treat(Water source) {
        Water water = Objects.requireNonNull(source, "source");
        for (Treatment treatment : treatments) {
            water = Objects.requireNonNull(treatment.treat(water), () -> "water behind " + treatment.name());
        }
        return water;
    }

    @Override
    public String name() {
        return String.join(", then ", treatments.stream().map(Treatment::name).toList());
    }

    /** Returns the name. */
    @Override
    public String toString() {
        return name();
    }
}
