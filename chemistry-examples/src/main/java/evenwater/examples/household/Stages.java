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
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.Quantity;

/** The water behind each treatment, with the range that the report and the spoons leave open: stage 0 is the source. */
final class Stages {

    private final Interpretation source;
    private final Train train;
    private final Ledger ledger;
    /** By stage and source: a neutralizer takes its time, and every result asks for the same waters. */
    private final Map<Integer, Map<Water, Water>> behind = new HashMap<>();

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

    /** The water that reaches a treatment of the train. */
    Water inFrontOf(Treatment treatment) {
        return water(train.treatments().indexOf(treatment));
    }

    Treatment treatment(int stage) {
        return train.treatments().get(stage - 1);
    }

    Stream<Dosing> doses() {
        return train.treatments().stream().filter(Dosing.class::isInstance).map(Dosing.class::cast);
    }

    /** A result for the water behind a stage, over everything that the report and the spoons leave open. */
    <K extends Quantity<K>, Q extends WaterQuantity<K>> Bounds<Q> bounds(int stage, Function<Water, Q> result) {
        Bounds<Q> bounds = bounds(train, stage, result);
        if (doses().allMatch(dosing -> dosing.least() == dosing)) {
            return bounds;
        }
        Bounds<Q> least = bounds(spooned(stage, result, true), stage, result);
        Bounds<Q> most = bounds(spooned(stage, result, false), stage, result);
        return new Bounds<>(least.low(), bounds.value(), most.high(), bounds.openBelow(), bounds.openAbove());
    }

    /** The house with every spoon at the end that makes a result least or most: doses only add up, so each can be tried alone. */
    private <K extends Quantity<K>, Q extends WaterQuantity<K>> Train spooned(
            int stage, Function<Water, Q> result, boolean least) {
        List<Treatment> treatments = new ArrayList<>(train.treatments());
        for (int i = 0; i < stage; i++) {
            if (treatments.get(i) instanceof Dosing dosing) {
                Q less = result.apply(with(i, dosing.least()).first(stage).treat(source.water()));
                Q more = result.apply(with(i, dosing.most()).first(stage).treat(source.water()));
                boolean raises = less.compareTo(more) <= 0;
                treatments.set(i, raises == least ? dosing.least() : dosing.most());
            }
        }
        return Train.of(treatments);
    }

    private Train with(int index, Treatment other) {
        List<Treatment> treatments = new ArrayList<>(train.treatments());
        treatments.set(index, other);
        return Train.of(treatments);
    }

    private <K extends Quantity<K>, Q extends WaterQuantity<K>> Bounds<Q> bounds(
            Train house, int stage, Function<Water, Q> result) {
        Train before = house.first(stage);
        if (house != train) {
            return source.bounds(water -> result.apply(before.treat(water)));
        }
        Map<Water, Water> known = behind.computeIfAbsent(stage, any -> new HashMap<>());
        return source.bounds(water -> result.apply(known.computeIfAbsent(water, before::treat)));
    }
}
