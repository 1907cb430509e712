package evenwater.examples.household;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.treatment.Ledger;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.Treatment;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;

/** The water behind each treatment, with the range that the report and the spoons leave open: stage 0 is the source. */
final class Stages {

    private static final int ALL_COMBINATIONS = 4;

    private final Interpretation source;
    private final Train train;
    private final Ledger ledger;
    /** The house with every spoon at its least or most. */
    private final List<Train> spoons;

    Stages(Interpretation source, Train train) {
        this.source = source;
        this.train = train;
        this.ledger = train.run(source.water());
        this.spoons = spoons(train);
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

    Stream<Dosing> doses() {
        return train.treatments().stream().filter(Dosing.class::isInstance).map(Dosing.class::cast);
    }

    /** All combinations of ends of what teaspoons measure; of many teaspoons all at their least and all at their most. */
    private static List<Train> spoons(Train train) {
        List<Integer> uncertain = IntStream.range(0, train.treatments().size())
                .filter(i -> train.treatments().get(i) instanceof Dosing dosing && dosing.least() != dosing)
                .boxed()
                .toList();
        if (uncertain.isEmpty()) {
            return List.of();
        }
        int size = uncertain.size();
        int all = (1 << Math.min(size, ALL_COMBINATIONS)) - 1;
        return IntStream.rangeClosed(0, all)
                .filter(bits -> size <= ALL_COMBINATIONS || bits == 0 || bits == all)
                .mapToObj(bits -> {
                    List<Treatment> treatments = new ArrayList<>(train.treatments());
                    for (int i = 0; i < size; i++) {
                        boolean most = (bits >> Math.min(i, ALL_COMBINATIONS - 1) & 1) == 1;
                        Dosing dosing = (Dosing) treatments.get(uncertain.get(i));
                        treatments.set(uncertain.get(i), most ? dosing.most() : dosing.least());
                    }
                    return Train.of(treatments);
                })
                .toList();
    }

    /** A result for the water behind a stage, over everything that the report and the spoons leave open. */
    <K extends Quantity<K>, Q extends WaterQuantity<K>> Bounds<Q> bounds(int stage, Function<Water, Q> result) {
        Bounds<Q> bounds = bounds(train, stage, result);
        Q low = bounds.low();
        Q high = bounds.high();
        for (Train spoon : spoons) {
            Bounds<Q> with = bounds(spoon, stage, result);
            low = with.low().compareTo(low) < 0 ? with.low() : low;
            high = with.high().compareTo(high) > 0 ? with.high() : high;
        }
        return new Bounds<>(low, bounds.value(), high, bounds.openBelow(), bounds.openAbove());
    }

    private <K extends Quantity<K>, Q extends WaterQuantity<K>> Bounds<Q> bounds(
            Train house, int stage, Function<Water, Q> result) {
        Train before = house.first(stage);
        return source.bounds(water -> result.apply(before.treat(water)));
    }
}
