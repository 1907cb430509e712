package evenwater.examples.household;

import evenwater.chemistry.equilibrium.GasExchange;
import evenwater.chemistry.equilibrium.Speciation;
import evenwater.chemistry.instrument.DissolvedSolidsMeter;
import evenwater.chemistry.instrument.FactorMeter;
import evenwater.chemistry.quantity.Conductivity;
import evenwater.chemistry.quantity.MassConcentration;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.substance.Ion;
import evenwater.chemistry.treatment.WaterCondition;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.Unit;

/** pH, CO₂, saturation, conductivity and meter readings behind a stage, over everything that the report leaves open. */
final class Conditions {

    /** The factor of most simple meters, and that of the mixture called 442. */
    private static final List<FactorMeter> METERS = List.of(FactorMeter.SCALE_500, FactorMeter.SCALE_700);

    private final Stages stages;

    Conditions(Stages stages) {
        this.stages = stages;
    }

    Optional<Span> pH(int stage) {
        return number(stage, water -> Speciation.of(water).pH());
    }

    /** At rest with the open air, at the temperature of the water. */
    Optional<Span> pHInAir(int stage) {
        return number(
                stage,
                water -> Speciation.of(GasExchange.equilibrated(water, GasExchange.OUTDOOR_AIR))
                        .pH());
    }

    Optional<Span> carbonDioxide(int stage) {
        return span(stage, water -> Speciation.of(water).carbonDioxide(), Ion.CARBON_DIOXIDE.milligramPerLitre());
    }

    Optional<Span> calciteIndex(int stage) {
        return number(
                stage,
                water -> known(WaterCondition.of(water).calciteIndex(), "calcite index of a water without calcium"));
    }

    Optional<Span> conductivity(int stage) {
        return span(stage, Conditions::conductivity, Conductivity.MICROSIEMENS_PER_CENTIMETRE);
    }

    private static Conductivity conductivity(Water water) {
        WaterCondition condition = WaterCondition.of(water);
        return condition.conductivity().orElseThrow(() -> new NoAnswerException(condition.whyUnknown()));
    }

    private Optional<Span> reading(int stage, DissolvedSolidsMeter meter) {
        return span(stage, water -> meter.reading(conductivity(water)), MassConcentration.MILLIGRAM_PER_LITRE);
    }

    private Optional<Span> number(int stage, ToDoubleFunction<Water> result) {
        return span(stage, water -> WaterUnits.share(result.applyAsDouble(water), WaterUnits.ONE), WaterUnits.ONE);
    }

    private static double known(OptionalDouble figure, String what) {
        return figure.orElseThrow(() -> new NoAnswerException(what));
    }

    /** A result with its range; with the best guess alone where a water that the report leaves open has no answer. */
    private <K extends Quantity<K>, Q extends WaterQuantity<K>> Optional<Span> span(
            int stage, Function<Water, Q> result, Unit<K> unit) {
        double value;
        try {
            value = result.apply(stages.water(stage)).in(unit);
        } catch (NoAnswerException | IllegalArgumentException e) {
            return Optional.empty();
        }
        try {
            return Optional.of(Span.of(stages.bounds(stage, result), unit));
        } catch (NoAnswerException | IllegalArgumentException e) {
            return Optional.of(new Span(Double.NEGATIVE_INFINITY, value, Double.POSITIVE_INFINITY));
        }
    }

    /** Writes what is known of the water behind a stage. */
    void write(Page page, int stage) {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"equilibrium and meters", "", "may be"});
        pH(stage).ifPresent(span -> rows.add(row("pH", span)));
        carbonDioxide(stage).ifPresent(span -> rows.add(row("CO₂, mg/L", span)));
        calciteIndex(stage).ifPresent(span -> rows.add(row("saturation index of calcite", span)));
        conductivity(stage).ifPresent(span -> rows.add(row("conductivity at 25 °C, µS/cm", span)));
        for (FactorMeter meter : METERS) {
            reading(stage, meter)
                    .ifPresent(span -> rows.add(row("a \"TDS\" meter of " + meter.scale() + " shows, ppm", span)));
        }
        if (rows.size() > 1) {
            page.gap().table(rows);
        }
        String why = WaterCondition.of(stages.water(stage)).whyUnknown();
        if (!why.isEmpty()) {
            page.say("Not known: " + Page.clean(why) + ".");
        }
    }

    private static String[] row(String name, Span span) {
        return new String[] {name, span.valueText(), span.rangeText()};
    }
}
