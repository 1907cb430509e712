package evenwater.examples.household;

import evenwater.chemistry.analysis.Assumptions;
import evenwater.chemistry.analysis.Interpretation;
import evenwater.chemistry.quantity.NoAnswerException;
import evenwater.chemistry.quantity.WaterQuantity;
import evenwater.chemistry.recipe.Recipe;
import evenwater.chemistry.recipe.RecipeDose;
import evenwater.chemistry.treatment.Dosing;
import evenwater.chemistry.verdict.Parameter;
import evenwater.chemistry.verdict.Requirement;
import evenwater.chemistry.verdict.Requirements;
import java.util.List;

/** The report of a household, for a person. */
final class HouseholdReport {

    /** In µS/cm: no kind of fresh water asks for so much (own rule). */
    private static final double FRESHEST_SALT_WATER = 1500;

    private final String name;
    private final ReportFile file;
    private final Interpretation source;
    private final Assumptions assumptions;
    private final House house;
    private final PlanWish wish;
    private final TankWish tank;
    private final Speech speech;
    private final boolean nothingSaid;
    private final boolean householdReplaced;
    private final boolean recoveryAssumed;

    HouseholdReport(
            String name,
            ReportFile file,
            Interpretation source,
            Assumptions assumptions,
            House house,
            PlanWish wish,
            TankWish tank,
            Speech speech,
            boolean nothingSaid,
            boolean householdReplaced,
            boolean recoveryAssumed) {
        this.name = name;
        this.file = file;
        this.source = source;
        this.assumptions = assumptions;
        this.house = house;
        this.wish = wish;
        this.tank = tank;
        this.speech = speech;
        this.nothingSaid = nothingSaid;
        this.householdReplaced = householdReplaced;
        this.recoveryAssumed = recoveryAssumed;
    }

    /** What to do about it, and how sure that is, or why nobody can say; answers what is dosed. */
    private List<Dosing> recipe(Page page, Requirements kind, Stages stages) {
        if (isSalty(kind)) {
            page.heading(RecipeSection.HEADING)
                    .say("This kind of tank (" + kind.name()
                            + ") holds salt water: mix it from sea salt in pure water, by the table on its bag. No recipe of single "
                            + "salts is given for it.");
            return List.of();
        }
        try {
            Page section = new Page();
            Recipe recipe = Recipes.recipe(stages.water(stages.last()).with(tank.temperature()), kind, tank);
            new RecipeSection(kind, tank, recipe, source, house.train()).write(section);
            page.append(section);
            uncertainty(page, kind, recipe);
            return recipe.doses().stream().map(RecipeDose::dosing).toList();
        } catch (NoAnswerException | IllegalArgumentException e) {
            page.heading(RecipeSection.HEADING).say("There is no recipe: " + e.getMessage() + ".");
            return List.of();
        }
    }

    private static boolean isSalty(Requirements kind) {
        return kind.list().stream().anyMatch(HouseholdReport::asksForSaltWater);
    }

    private static <Q extends WaterQuantity<?>> boolean asksForSaltWater(Requirement<Q> requirement) {
        return requirement.parameter().equals(Parameter.CONDUCTIVITY)
                && requirement
                        .least()
                        .filter(least -> requirement.parameter().number(least) > FRESHEST_SALT_WATER)
                        .isPresent();
    }

    private void uncertainty(Page page, Requirements kind, Recipe recipe) {
        try {
            Page section = new Page();
            new UncertaintySection(kind, tank, recipe, source, assumptions, house.train(), speech).write(section);
            page.append(section);
        } catch (NoAnswerException | IllegalArgumentException e) {
            page.gap().say("How sure that is has no answer: " + e.getMessage() + ".");
        }
    }

    Page page() {
        Stages stages = new Stages(source, house.train());
        Page page = new Page();
        page.title("Household water: " + Page.foreign(name));
        if (nothingSaid) {
            page.say(
                    house.softener().isPresent()
                            ? "No treatment was named, so a sodium softener without leakage is assumed. Say --softener, "
                                    + "--reverse-osmosis, --dose or --no-treatment for your house."
                            : "No treatment was named, and without hardness there is nothing to soften: the source alone.");
        }
        if (householdReplaced) {
            page.say(
                    "Your options name another house: the treatments, people and resin that come with this household are left out.");
        }
        if (recoveryAssumed) {
            page.say(
                    "No recovery was named, so a quarter of what the membrane is fed is taken to pass: --recovery says more.");
        }
        if (!file.passedOver().isEmpty()) {
            page.say("Columns passed over: " + Page.foreign(String.join(", ", file.passedOver())) + ".");
        }
        Trust trust = new Trust(source);
        trust.doubt().ifPresent(page::say);
        new Summary(stages, speech).write(page);
        page.picture("", () -> HouseholdPictures.balance(stages));
        new SourceSection(source, speech, trust).write(page);
        new StageSection(stages, house, speech).write(page);
        page.picture("", () -> HouseholdPictures.saturation(stages));
        new SodiumSection(stages, house).write(page);
        house.softener()
                .ifPresent(softener ->
                        page.picture("", () -> HouseholdPictures.sodium(softener, stages.inFrontOf(softener), speech)));
        house.softener()
                .ifPresent(softener -> new PlanSection(stages.inFrontOf(softener), softener, wish, speech).write(page));
        VerdictSection verdict = new VerdictSection(stages, house, trust, tank);
        verdict.write(page);
        List<Dosing> doses = tank.kind().map(kind -> recipe(page, kind, stages)).orElse(List.of());
        verdict.cautions(page, doses);
        return page;
    }
}
