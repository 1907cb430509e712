package evenwater.examples.household;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Water;
import java.util.function.Function;

/** The water behind each treatment, with the range that the report leaves open: stage 0 is the source. */
final class Stages {

    private final Interpretation source;
    private final Train train;
    private final Ledger ledger;

    Stages(Interpretation source, Train train) {
        this.source = source;
        this.train = train;
        this.ledger = train.run(source.water());
    }

    Interpretation source() {
        return source;
    }

    Ledger ledger() {
        return ledger;
    }

    int last() {
        return train.treatments().size();
    }

    Water water(int stage) {
        return stage == 0 ? ledger.source() : ledger.stages().get(stage - 1).after();
    }

    Treatment treatment(int stage) {
        return train.treatments().get(stage - 1);
    }

    /** A result for the water behind a stage, over everything that the report leaves open. */
    <Q extends WaterQuantity<Q>> Bounds<Q> bounds(int stage, Function<Water, Q> result) {
        Train before = train.first(stage);
        return source.bounds(water -> result.apply(before.treat(water)));
    }
}
