package evenwater.examples.household;

import evenwater.chemistry.analysis.Bounds;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.uncertainty.Draw;
import evenwater.chemistry.uncertainty.MonteCarlo;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.verdict.Conformance;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.water.Water;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A water as the uncertainty of what it comes from leaves it: one for each of many draws. */
final class Draws {

    /** The standard error of an uncertainty is 1.6 % of itself, so its first digit stands; JCGM 101 asks for far more where two shall. */
    static final int NUMBER = 2000;

    static final double COVERAGE = 0.95;

    /** Enough for a band in a picture, whose ends are a pixel or two wide. */
    private static final int FEWER = 400;

    /** Any number will do; the same one gives the same answer. */
    private static final long SEED = 1;

    private final List<Water> waters;

    private Draws(List<Water> waters) {
        this.waters = waters;
    }

    static Draws of(List<Uncertain<?>> inputs, Function<Draw, Water> chain) {
        return new Draws(MonteCarlo.seeded(SEED).draws(NUMBER).outcomes(inputs, chain));
    }

    /** Outcomes of fewer draws, the first of the same ones. */
    static <R> List<R> fewer(List<Uncertain<?>> inputs, Function<Draw, R> chain) {
        return MonteCarlo.seeded(SEED).draws(FEWER).outcomes(inputs, chain);
    }

    /** A parameter with its uncertainty; empty if a water does not show it. */
    <Q extends WaterQuantity<?>> Optional<UncertainResult<Q>> result(Parameter<Q> parameter) {
        List<Q> values = waters.parallelStream()
                .map(parameter::seenIn)
                .flatMap(Optional::stream)
                .map(value -> parameter.of(parameter.number(value)))
                .toList();
        return values.size() == waters.size() ? Optional.of(UncertainResult.of(values, COVERAGE)) : Optional.empty();
    }

    /**
     * How often the requirements are kept.
     *
     * @param whole what is known of the water without draws: what it leaves open to one side, such as a conductivity of ions that nobody measured,
     *     stays open in each
     */
    Conformance conformance(Requirements requirements, Evidence whole) {
        return Conformance.of(waters.parallelStream()
                .map(water -> requirements.judge(opened(requirements, Evidence.of(water), whole)))
                .toList());
    }

    private static Evidence opened(Requirements requirements, Evidence drawn, Evidence whole) {
        Evidence opened = drawn;
        for (Requirement<?> requirement : requirements.list()) {
            opened = opened(requirement.parameter(), opened, whole);
        }
        return opened;
    }

    private static <Q extends WaterQuantity<?>> Evidence opened(
            Parameter<Q> parameter, Evidence drawn, Evidence whole) {
        Optional<Bounds<Q>> open = whole.known(parameter).filter(bounds -> bounds.openBelow() || bounds.openAbove());
        Optional<Bounds<Q>> here = drawn.known(parameter);
        if (open.isEmpty() || here.isEmpty()) {
            return drawn;
        }
        Bounds<Q> may = here.get();
        return drawn.with(
                parameter,
                new Bounds<>(
                        may.low(),
                        may.value(),
                        may.high(),
                        open.get().openBelow(),
                        open.get().openAbove()));
    }
}
