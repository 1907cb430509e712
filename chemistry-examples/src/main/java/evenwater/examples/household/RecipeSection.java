package evenwater.examples.household;

import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeFinding;
import evenwater.chemistry.recipe.SourceShare;
import evenwater.chemistry.substance.Compound;
import evenwater.chemistry.treatment.WaterCondition;
import evenwater.chemistry.verdict.Evidence;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirements;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to do to the last water for a kind of tank, and what comes of it. */
final class RecipeSection {

    static final String HEADING = "What to do about it";

    private final Requirements kind;
    private final TankWish wish;
    private final Recipe recipe;

    RecipeSection(Requirements kind, TankWish wish, Recipe recipe) {
        this.kind = kind;
        this.wish = wish;
        this.recipe = recipe;
    }

    void write(Page page) {
        page.heading(HEADING);
        page.say(
                "For " + wish.volume() + " of water (net, without gravel and what else stands in it) for " + kind.name()
                        + ", from the water behind the last stage"
                        + (Recipes.pureShare(recipe) > 0 ? ", pure water" : "") + " and "
                        + wish.shelf().stream().map(Compound::name).collect(Collectors.joining(", "))
                        + ": as little as keeps the ranges, a tenth away from their ends if it can, hardness and alkalinity as near their middle as that allows, "
                        + "with calcium to magnesium from 2 to 5 by amount.");
        page.gap();
        doses(page);
        recipe.conflicts().forEach(conflict -> page.item("cannot all be met: " + conflict.words()));
        pH(page);
        findings(page);
        spoons(page);
        page.say("Then: "
                + kind.judge(wish.readings().apply(Evidence.of(recipe.water()))).statement(Locale.ROOT));
    }

    private void doses(Page page) {
        boolean blended = Recipes.pureShare(recipe) > 0;
        if (blended) {
            recipe.shares().stream().filter(part -> part.share() > 0).forEach(part -> page.item(part(part)));
        }
        recipe.doses().forEach(dose -> page.item(dose.toString()));
        if (recipe.doses().isEmpty() && !blended) {
            page.item("nothing to dose and nothing to blend");
        }
    }

    private static String part(SourceShare part) {
        return part.volume().toText(Locale.ROOT, 3) + " of " + part.name();
    }

    private void pH(Page page) {
        String closed = pH(recipe.closed());
        String open = recipe.openToAir().map(RecipeSection::pH).orElse("");
        if (!open.isEmpty()) {
            page.say("The pH comes to " + (closed.isEmpty() ? "" : closed + " closed to the air and to ") + open
                    + " at rest with it, at the " + wish.temperature() + " of the tank.");
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
        if (recipe.doses().stream().anyMatch(dose -> dose.teaspoons().isPresent())) {
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
