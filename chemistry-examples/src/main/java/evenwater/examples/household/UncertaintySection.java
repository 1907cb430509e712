package evenwater.examples.household;

import evenwater.chemistry.analysis.Assumptions;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.analysis.UncertainReport;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeDose;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.uncertainty.Draw;
import evenwater.chemistry.uncertainty.Uncertain;
import evenwater.chemistry.uncertainty.UncertainResult;
import evenwater.chemistry.verdict.Conformance;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Standing;
import evenwater.chemistry.verdict.Weight;
import evenwater.chemistry.water.Water;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.quantity.Dimensionless;

/** How sure the verdict and the recipe are, given the uncertainty of the readings, of the balance and of the volume. */
final class UncertaintySection {

    /** Of concentrations whose uncertainty nobody states (own rule). */
    private static final double USUAL = 0.05;

    /** Of a dose by a kitchen balance, with the damp that a salt takes up (own rule). */
    private static final double OF_A_DOSE = 0.02;

    /** Of the net volume of a tank or a marked bucket (own rule). */
    private static final double OF_THE_VOLUME = 0.02;

    private static final double ROUNDING = 1e-9;

    private static final Set<Parameter<?>> SHOWN = Set.of(
            Parameter.GENERAL_HARDNESS,
            Parameter.CARBONATE_HARDNESS,
            Parameter.PH,
            Parameter.CONDUCTIVITY,
            Parameter.SODIUM);

    private final Requirements kind;
    private final TankWish wish;
    private final Recipe recipe;
    private final UncertainReport report;
    private final Assumptions assumptions;
    private final Train train;
    private final Speech speech;
    private final Interpretation interpreted;
    private final Water source;
    private final Map<RecipeDose, Uncertain<WaterQuantity<Dimensionless>>> doses = new HashMap<>();
    private final Uncertain<WaterQuantity<Dimensionless>> volume =
            Uncertain.normal(1, OF_THE_VOLUME).named("volume");

    UncertaintySection(
            Requirements kind,
            TankWish wish,
            Recipe recipe,
            Interpretation source,
            Assumptions assumptions,
            Train train,
            Speech speech) {
        this.kind = kind;
        this.wish = wish;
        this.recipe = recipe;
        this.interpreted = source;
        this.source = source.water();
        this.report = source.report().uncertain(wish.usualUncertainty().orElse(USUAL));
        this.assumptions = assumptions;
        this.train = train;
        this.speech = speech;
        recipe.doses()
                .forEach(dose -> doses.put(
                        dose,
                        Uncertain.normal(1, OF_A_DOSE).named(dose.compound().name())));
    }

    void write(Page page) {
        page.gap()
                .say(
                        "How sure is that? " + Draws.NUMBER + " draws of the readings with a standard uncertainty ("
                                + report.inputs().stream().map(Uncertain::name).collect(Collectors.joining(", "))
                                + "; of " + percent(wish.usualUncertainty().orElse(USUAL))
                                + (wish.usualUncertainty().isPresent() ? "" : ", by own rule,")
                                + " where a concentration states none), of doses (" + percent(OF_A_DOSE)
                                + ") and volume ("
                                + percent(OF_THE_VOLUME)
                                + ", both by own rule), each through the whole chain; what a treatment takes out counts as exact. ± is the expanded uncertainty, k = 2.");
        List<Uncertain<?>> inputs = new ArrayList<>(report.inputs());
        Draws before = Draws.of(inputs, this::last);
        inputs.add(volume);
        recipe.doses().forEach(dose -> inputs.add(Objects.requireNonNull(doses.get(dose))));
        Draws after = Draws.of(inputs, this::mixed);
        page.gap().table(rows(before, after));
        page.say(
                "\"Inside\" is the share of the draws that keep the range; it is itself a range where a draw cannot tell, as with a pH "
                        + "that hangs on the CO₂ of the tank, or a conductivity of which nobody measured all ions. The draws leave out the error of the models, some 3 % of a conductivity.");
        page.picture(
                TankFigure.CAPTION,
                () -> new TankFigure(wish.volume(), speech.hardness())
                        .hardness(source, recipe.water(), kind, inputs, this::source, this::mixed));
    }

    private Water source(Draw draw) {
        return report.drawn(draw).interpret(assumptions).water();
    }

    private Water last(Draw draw) {
        return train.treat(source(draw));
    }

    private Water mixed(Draw draw) {
        return Recipes.treated(last(draw), recipe, dose -> factor(dose, draw));
    }

    private double factor(RecipeDose dose, Draw draw) {
        return draw.of(Objects.requireNonNull(doses.get(dose))).in(WaterUnits.ONE)
                / draw.of(volume).in(WaterUnits.ONE);
    }

    private List<String[]> rows(Draws before, Draws after) {
        Conformance first = before.conformance(kind, Evidence.from(interpreted, train));
        Conformance second = after.conformance(kind, Evidence.from(interpreted, Recipes.behind(train, recipe)));
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"", "before", "inside", "after the recipe", "inside", "wanted"});
        for (Requirement<?> requirement : kind.list()) {
            if (requirement.weight() != Weight.FOR_INFORMATION && SHOWN.contains(requirement.parameter())) {
                rows.add(new String[] {
                    requirement.parameter().name(),
                    said(before, requirement.parameter()),
                    inside(first, requirement),
                    said(after, requirement.parameter()),
                    inside(second, requirement),
                    requirement.allowed(Locale.ROOT)
                });
            }
        }
        return rows;
    }

    private static <Q extends WaterQuantity<?>> String said(Draws draws, Parameter<Q> parameter) {
        return draws.result(parameter).map(result -> said(parameter, result)).orElse("");
    }

    /** Without the coverage factor, which stands above the table, and the interval; an uncertainty of rounding alone is none. */
    private static <Q extends WaterQuantity<?>> String said(Parameter<Q> parameter, UncertainResult<Q> result) {
        double value = parameter.number(result.mean());
        boolean isRounding = parameter.number(result.standardUncertainty()) <= ROUNDING * Math.abs(value);
        return isRounding
                ? parameter.of(value).toText(Locale.ROOT, 4)
                : result.toText(Locale.ROOT).replaceFirst(",? \\(k .*", "");
    }

    private static String inside(Conformance conformance, Requirement<?> requirement) {
        double inside = conformance.probability(requirement);
        String least = percent(inside);
        String most = percent(inside + conformance.probability(requirement, Standing.UNDECIDED));
        return least.equals(most) ? least : least.replace(" %", "") + " to " + most;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * share);
    }
}
