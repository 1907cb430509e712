package evenwater.examples.household;

import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.quantity.WaterUnits;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeDose;
import evenwater.chemistry.recipe.RecipeFinding;
import evenwater.chemistry.recipe.SourceShare;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.treatment.Train;
import evenwater.chemistry.treatment.WaterCondition;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import evenwater.chemistry.verdict.Verdict;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to do to the last water for a kind of tank, and what comes of it. */
final class RecipeSection {

    static final String HEADING = "What to do about it";

    /** What a kitchen balance does not show, in g (own rule). */
    private static final double NEXT_TO_NOTHING = 0.05;

    private final Requirements kind;
    private final TankWish wish;
    private final Recipe recipe;
    private final Interpretation source;
    private final Train house;

    RecipeSection(Requirements kind, TankWish wish, Recipe recipe, Interpretation source, Train house) {
        this.kind = kind;
        this.wish = wish;
        this.recipe = recipe;
        this.source = source;
        this.house = house;
    }

    void write(Page page) {
        page.heading(HEADING);
        page.say("For " + wish.volume() + " of water (net, without gravel and what else stands in it) for "
                + kind.name()
                + (house.treatments().isEmpty() ? ", from the source" : ", from the water behind the last stage")
                + (Recipes.pureShare(recipe) > 0 ? ", pure water" : "") + " and "
                + wish.shelf().stream().map(Compound::name).collect(Collectors.joining(", "))
                + ": as little as keeps the ranges, a tenth away from their ends if it can, hardness and alkalinity as near their middle as that allows, "
                + "with calcium to magnesium from 2 to 5 by amount.");
        page.gap();
        if (!recipe.conflicts().isEmpty()) {
            page.say("THIS DOES NOT KEEP ALL RANGES; the doses are what misses them least:");
            recipe.conflicts().forEach(conflict -> page.item("cannot all be met: " + conflict.words()));
        }
        doses(page);
        Verdict then = kind.judge(wish.readings().apply(Evidence.from(source, Recipes.behind(house, recipe))));
        pH(page, then);
        findings(page);
        spoons(page);
        page.say("Then: " + then.statement(Locale.ROOT));
    }

    private void doses(Page page) {
        boolean blended = Recipes.pureShare(recipe) > 0;
        if (blended) {
            recipe.shares().stream().filter(part -> part.share() > 0).forEach(part -> page.item(part(part)));
        }
        recipe.doses()
                .forEach(dose -> page.item(
                        isNextToNothing(dose)
                                ? "next to nothing of " + dose.compound().name() + ": leave it out"
                                : dose.toString()));
        if (recipe.doses().isEmpty() && !blended) {
            page.item("nothing to dose and nothing to blend");
        }
    }

    private static boolean isNextToNothing(RecipeDose dose) {
        return dose.mass().in(WaterUnits.GRAM) < NEXT_TO_NOTHING;
    }

    private static String part(SourceShare part) {
        return part.volume().toText(Locale.ROOT, 3) + " of " + part.name();
    }

    private void pH(Page page, Verdict then) {
        String closed = pH(recipe.closed());
        String open = recipe.openToAir().map(RecipeSection::pH).orElse("");
        if (!open.isEmpty()) {
            page.say("The pH comes to " + (closed.isEmpty() ? "" : closed + " closed to the air and to ") + open
                    + " at rest with it, at the " + wish.temperature() + " of the tank"
                    + then.findings().stream()
                            .filter(finding -> finding.requirement().parameter() == Parameter.PH)
                            .map(finding ->
                                    "; with the CO₂ that such a tank is taken to hold: " + finding.toText(Locale.ROOT))
                            .findFirst()
                            .orElse("")
                    + ".");
        }
    }

    private static String pH(WaterCondition condition) {
        return condition.pH().isPresent()
                ? String.format(Locale.ROOT, "%.2f", condition.pH().getAsDouble())
                : "";
    }

    /** Cautions stand with all others at the end; which doses drop something together is one sentence here. */
    private void findings(Page page) {
        recipe.findings().stream()
                .filter(finding -> finding.kind() != RecipeFinding.Kind.CAUTION)
                .filter(finding -> finding.kind() != RecipeFinding.Kind.NOT_IN_ONE_BOTTLE)
                .forEach(finding -> page.say(capital(finding.words()) + "."));
        if (recipe.findings().stream().anyMatch(f -> f.kind() == RecipeFinding.Kind.NOT_IN_ONE_BOTTLE)) {
            page.say("Dissolve one after the other in the whole water: calcium drops out where it meets sulfate or "
                    + "bicarbonate concentrated, so they must not share a bottle of stock.");
        }
    }

    private static String capital(String text) {
        return text.startsWith("pH") ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** Level teaspoons instead of a balance. */
    private void spoons(Page page) {
        if (recipe.doses().stream().anyMatch(dose -> dose.teaspoons().isPresent() && !isNextToNothing(dose))) {
            page.say("By level teaspoons instead of a balance: " + spooned(Parameter.GENERAL_HARDNESS) + ", "
                    + spooned(Parameter.CARBONATE_HARDNESS) + ".");
        }
    }

    private <Q extends WaterQuantity<?>> String spooned(Parameter<Q> parameter) {
        double least =
                parameter.number(parameter.seenIn(recipe.leastByTeaspoons()).orElseThrow());
        double most =
                parameter.number(parameter.seenIn(recipe.mostByTeaspoons()).orElseThrow());
        return parameter + " " + Page.number(least) + " to " + Page.number(most) + " " + parameter.unitSymbol();
    }
}
